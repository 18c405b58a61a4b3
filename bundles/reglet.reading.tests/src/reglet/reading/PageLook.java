package reglet.reading;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** What is drawn on a page, in the page's own coordinates: letters, and rectangles that are filled with the highlighter's colour. */
final class PageLook extends PDFGraphicsStreamEngine {
    private final StringBuilder text = new StringBuilder();
    private final List<Point2D> places = new ArrayList<>();
    private final List<Rectangle2D> highlights = new ArrayList<>();
    private final List<Rectangle2D> path = new ArrayList<>();

    private PageLook(PDPage page) {
        super(page);
    }

    static PageLook of(PDPage page) throws IOException {
        PageLook look = new PageLook(page);
        look.processPage(page);
        return look;
    }

    List<Rectangle2D> highlights() {
        return highlights;
    }

    String text() {
        return text.toString();
    }

    /** Where each letter of a word starts; empty when it isn't there. */
    List<Point2D> letters(String word) {
        int at = text.indexOf(word);
        return at < 0 ? List.of() : places.subList(at, at + word.length());
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        String letter = font.toUnicode(code);
        for (int i = 0; letter != null && i < letter.length(); i++) {
            text.append(letter.charAt(i));
            places.add(new Point2D.Double(matrix.getTranslateX(), matrix.getTranslateY()));
        }
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        Rectangle2D rectangle = new Rectangle2D.Double(p0.getX(), p0.getY(), 0, 0);
        rectangle.add(p1);
        rectangle.add(p2);
        rectangle.add(p3);
        path.add(rectangle);
    }

    @Override
    public void fillPath(int rule) throws IOException {
        float[] colour = getGraphicsState().getNonStrokingColor().getComponents();
        if (colour.length == 3 && colour[0] == 1f && colour[2] < 0.5f) {
            highlights.addAll(path);
        }
        path.clear();
    }

    @Override
    public void strokePath() {
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        path.clear();
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void drawImage(PDImage image) {
    }

    @Override
    public void clip(int rule) {
    }

    @Override
    public void moveTo(float x, float y) {
    }

    @Override
    public void lineTo(float x, float y) {
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Float();
    }

    @Override
    public void closePath() {
    }

    @Override
    public void shadingFill(COSName name) {
    }
}

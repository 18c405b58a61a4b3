package reglet.reading.page;

import java.awt.geom.Area;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

import reglet.reading.page.SheetPage.Rule;

/** Takes the straight lines off a page, and counts what else is drawn; runs only in the process made for it. */
final class PageRules extends PDFGraphicsStreamEngine {
    private static final int MOST = 4_000;
    private static final double SHORTEST = 6;
    private static final double STRAIGHT = 1;

    private static final int MOST_DOTS = 400;
    /** Points: how large a dot in front of an item of a list is drawn. */
    private static final double SMALLEST_DOT = 1.5;
    private static final double LARGEST_DOT = 7;
    /** How much wider than high it is at most, or higher than wide. */
    private static final double ROUND = 1.4;

    private final List<Rule> rules = new ArrayList<>();
    private final List<Rectangle2D> dots = new ArrayList<>();
    private final List<Rule> path = new ArrayList<>();
    /** The path on the page's own space: what fills it is seen within what it was clipped to. */
    private final GeneralPath outline = new GeneralPath();
    private boolean clipping;
    private final PDRectangle crop;
    private Point2D start = new Point2D.Float();
    private Point2D at = new Point2D.Float();
    private int shapes;
    private int pictures;

    private PageRules(PDPage page) {
        super(page);
        this.crop = page.getCropBox();
    }

    /** What is drawn besides text. */
    record Drawn(List<Rule> rules, List<Rectangle2D> dots, int pictures, int shapes) {
    }

    static Drawn of(PDPage page) throws IOException {
        PageRules engine = new PageRules(page);
        engine.processPage(page);
        return new Drawn(List.copyOf(engine.rules), List.copyOf(engine.dots), engine.pictures, engine.shapes);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        side(p0, p1);
        side(p1, p2);
        side(p2, p3);
        side(p3, p0);
        outline.moveTo(p0.getX(), p0.getY());
        outline.lineTo(p1.getX(), p1.getY());
        outline.lineTo(p2.getX(), p2.getY());
        outline.lineTo(p3.getX(), p3.getY());
        outline.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        start = new Point2D.Float(x, y);
        at = start;
        outline.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        Point2D to = new Point2D.Float(x, y);
        side(at, to);
        at = to;
        outline.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        at = new Point2D.Float(x3, y3);
        outline.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return at;
    }

    @Override
    public void closePath() {
        side(at, start);
        at = start;
    }

    private void side(Point2D from, Point2D to) {
        if (path.size() < MOST) {
            Point2D a = shown(from);
            Point2D b = shown(to);
            path.add(new Rule(a.getX(), a.getY(), b.getX(), b.getY()));
        }
    }

    /** A point of the page's own space on the page as it is shown, from the upper left. */
    private Point2D shown(Point2D point) {
        double x = point.getX() - crop.getLowerLeftX();
        double y = point.getY() - crop.getLowerLeftY();
        return switch (getPage().getRotation()) {
            case 90 -> new Point2D.Double(y, x);
            case 180 -> new Point2D.Double(crop.getWidth() - x, y);
            case 270 -> new Point2D.Double(crop.getHeight() - y, crop.getWidth() - x);
            default -> new Point2D.Double(x, crop.getHeight() - y);
        };
    }

    private void drawn() {
        shapes++;
        for (Rule side : path) {
            boolean level = Math.abs(side.y1() - side.y2()) < STRAIGHT && Math.abs(side.x1() - side.x2()) > SHORTEST;
            boolean upright = Math.abs(side.x1() - side.x2()) < STRAIGHT && Math.abs(side.y1() - side.y2()) > SHORTEST;
            if ((level || upright) && rules.size() < MOST) {
                rules.add(side);
            }
        }
        ended();
    }

    /** A band of color may be drawn as a far larger area that is clipped to it. */
    private void filled() {
        Rectangle2D whole = outline.getBounds2D();
        Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
        Rectangle2D seen = whole.createIntersection(clip);
        if (isDot(seen) && dots.size() < MOST_DOTS) {
            Rectangle2D dot = new Rectangle2D.Double();
            dot.setFrameFromDiagonal(shown(new Point2D.Double(seen.getMinX(), seen.getMinY())), shown(new Point2D.Double(seen.getMaxX(),
                seen.getMaxY())));
            dots.add(dot);
        }
        if (!seen.isEmpty() && (seen.getWidth() < whole.getWidth() - STRAIGHT || seen.getHeight() < whole.getHeight() - STRAIGHT)) {
            path.clear();
            side(new Point2D.Double(seen.getMinX(), seen.getMinY()), new Point2D.Double(seen.getMaxX(), seen.getMinY()));
            side(new Point2D.Double(seen.getMinX(), seen.getMaxY()), new Point2D.Double(seen.getMaxX(), seen.getMaxY()));
            side(new Point2D.Double(seen.getMinX(), seen.getMinY()), new Point2D.Double(seen.getMinX(), seen.getMaxY()));
            side(new Point2D.Double(seen.getMaxX(), seen.getMinY()), new Point2D.Double(seen.getMaxX(), seen.getMaxY()));
        }
        drawn();
    }

    private static boolean isDot(Rectangle2D shape) {
        double larger = Math.max(shape.getWidth(), shape.getHeight());
        double smaller = Math.min(shape.getWidth(), shape.getHeight());
        return smaller >= SMALLEST_DOT && larger <= LARGEST_DOT && larger < ROUND * smaller;
    }

    private void ended() {
        if (clipping) {
            // its bounds are enough to see how far a band reaches, however finely it is cut out
            getGraphicsState().intersectClippingPath(new Area(outline.getBounds2D()));
        }
        path.clear();
        outline.reset();
        clipping = false;
    }

    @Override
    public void endPath() {
        ended();
    }

    @Override
    public void strokePath() {
        drawn();
    }

    @Override
    public void fillPath(int windingRule) {
        filled();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        drawn();
    }

    @Override
    public void drawImage(PDImage image) {
        pictures++;
    }

    @Override
    public void clip(int windingRule) {
        // text that is cut away is read all the same
        clipping = true;
    }

    @Override
    public void shadingFill(COSName shading) {
        shapes++;
    }
}

package reglet.drafting;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.util.List;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;

import reglet.drafting.DrawingSheet.Curve;
import reglet.drafting.DrawingSheet.Dots;
import reglet.drafting.DrawingSheet.Mark;
import reglet.drafting.DrawingSheet.Solid;
import reglet.drafting.DrawingSheet.Strokes;
import reglet.drafting.DrawingSheet.Writing;
import reglet.drafting.PdfFonts.Face;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;

/** Drawings as lines and embedded fonts, one to a sheet and to scale, or in a place on a page of another paper. */
public final class DrawingPdf {
    private static final float POINTS = 72 / 25.4f;

    private final PdfContentByte canvas;
    private final PdfFonts fonts;
    private final float left;
    private final float low;

    private DrawingPdf(PdfContentByte canvas, PdfFonts fonts, float left, float low) {
        this.canvas = canvas;
        this.fonts = fonts;
        this.left = left;
        this.low = low;
    }

    /**
     * A file with a sheet and a bookmark for each drawing; the same bytes for the same drawings.
     *
     * @throws IllegalArgumentException if there is no drawing, or if the notes of one don't fit on the paper
     */
    public static byte[] of(List<Drawing> drawings, Frame frame) {
        if (drawings.isEmpty()) {
            throw new IllegalArgumentException("There is no drawing to print.");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Document document = new Document();
        PdfWriter writer = PdfWriter.getInstance(document, out);
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle | (drawings.size() > 1 ? PdfWriter.PageModeUseOutlines : 0));
        document.addTitle(drawings.size() == 1 ? drawings.get(0).title() : "Details");
        document.addSubject(frame.job());
        PdfFonts fonts = new PdfFonts();
        for (int i = 0; i < drawings.size(); i++) {
            DrawingSheet sheet = DrawingFrame.sheet(drawings.get(i), frame.sheet(i, drawings.size()));
            document.setPageSize(new Rectangle((float) sheet.width() * POINTS, (float) sheet.height() * POINTS));
            if (i == 0) {
                document.open();
                writer.getExtraCatalog().put(PdfName.LANG, new PdfString("en-US"));
            } else {
                document.newPage();
            }
            PdfContentByte canvas = writer.getDirectContent();
            new DrawingPdf(canvas, fonts, 0, 0).draw(sheet);
            new PdfOutline(canvas.getRootOutline(), new PdfDestination(PdfDestination.FIT), drawings.get(i).title());
        }
        document.close();
        return SameBytes.pdf(out.toByteArray());
    }

    /**
     * Puts a drawing with a caption into a place on a page. Lengths in points from the lower left corner of the page.
     *
     * @param fonts the fonts of the page's document
     * @throws IllegalArgumentException if the drawing doesn't fit there at any scale
     */
    static void draw(PdfContentByte canvas, PdfFonts fonts, Drawing drawing, float x, float y, float width, float height) {
        new DrawingPdf(canvas, fonts, x, y).draw(DrawingFrame.inset(drawing, width / POINTS, height / POINTS));
    }

    private void draw(DrawingSheet sheet) {
        canvas.saveState();
        canvas.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        sheet.marks().forEach(this::draw);
        canvas.restoreState();
    }

    private void draw(Mark mark) {
        if (mark instanceof Strokes strokes) {
            pen(DrawingSheet.width(strokes.pen()), strokes.stroke());
            strokes.lines().forEach(line -> path(line, strokes.closed()));
            canvas.stroke();
        } else if (mark instanceof Curve curve) {
            pen(DrawingSheet.width(curve.pen()), curve.stroke());
            Point centre = curve.centre();
            double radius = curve.radius();
            canvas.arc(x(centre.x() - radius), y(centre.y() - radius), x(centre.x() + radius), y(centre.y() + radius), (float) curve.from(),
                (float) curve.sweep());
            canvas.stroke();
        } else if (mark instanceof Solid solid) {
            canvas.setColorFill(new Color(DrawingSheet.colour(solid.stroke())));
            path(solid.outline(), true);
            canvas.fill();
        } else if (mark instanceof Dots dots) {
            pen(dots.diameter(), Stroke.SOLID);
            canvas.setLineCap(PdfContentByte.LINE_CAP_ROUND);
            dots.at().forEach(dot -> path(List.of(dot, dot), false));
            canvas.stroke();
        } else {
            write((Writing) mark);
        }
    }

    private void pen(double width, Stroke stroke) {
        List<Double> dashes = DrawingSheet.dashes(stroke);
        boolean dotted = dashes.contains(0.0);
        canvas.setColorStroke(new Color(DrawingSheet.colour(stroke)));
        canvas.setLineWidth((float) (dotted ? Math.max(width, DrawingSheet.DOT) : width) * POINTS);
        canvas.setLineCap(dotted ? PdfContentByte.LINE_CAP_ROUND : PdfContentByte.LINE_CAP_BUTT);
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = dashes.get(i).floatValue() * POINTS;
        }
        canvas.setLineDash(pattern, 0);
    }

    private void path(List<Point> points, boolean closed) {
        for (int i = 0; i < points.size(); i++) {
            if (i == 0) {
                canvas.moveTo(x(points.get(i).x()), y(points.get(i).y()));
            } else {
                canvas.lineTo(x(points.get(i).x()), y(points.get(i).y()));
            }
        }
        if (closed) {
            canvas.closePath();
        }
    }

    private void write(Writing writing) {
        int alignment = writing.anchor() == Anchor.LEFT ? Element.ALIGN_LEFT
            : writing.anchor() == Anchor.RIGHT ? Element.ALIGN_RIGHT : Element.ALIGN_CENTER;
        Phrase phrase = new Phrase(fonts.run(writing.text(), writing.strong() ? Face.SANS_BOLD : Face.SANS,
            (float) writing.fontSize() * POINTS, PdfSheets.INK));
        ColumnText.showTextAligned(canvas, alignment, phrase, x(writing.at().x()), y(writing.at().y()), (float) writing.angle());
    }

    private float x(double millimetres) {
        return left + (float) millimetres * POINTS;
    }

    private float y(double millimetres) {
        return low + (float) millimetres * POINTS;
    }
}

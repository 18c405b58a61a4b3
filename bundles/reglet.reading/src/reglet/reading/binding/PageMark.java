package reglet.reading.binding;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/**
 * The line at the foot of each bound sheet that says which page of the package it is: upright as the page is shown, on a white
 * ground, and of the same size on paper whatever unit the page counts in.
 */
final class PageMark {
    private static final float SIZE = 8;
    private static final float FOOT = 14;
    private static final float PAD = 2.5f;
    private static final float SIDE = 6;

    private PageMark() {
    }

    static void put(PDDocument document, PDPage page, Lettering lettering, String mark) throws IOException {
        String text = lettering.printable(mark);
        PDRectangle box = page.getCropBox();
        int turned = Math.floorMod(page.getRotation(), 360);
        float unit = Math.max(page.getUserUnit(), 1);
        float shown = (turned % 180 == 0 ? box.getWidth() : box.getHeight()) * unit;
        float size = Math.min(SIZE, SIZE * (shown - 2 * SIDE) / lettering.width(text, SIZE));
        float width = lettering.width(text, size);
        float left = (shown - width) / 2;
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
            out.transform(upright(box, turned));
            out.transform(Matrix.getScaleInstance(1 / unit, 1 / unit));
            out.setNonStrokingColor(1f);
            out.addRect(left - PAD, FOOT - PAD, width + 2 * PAD, size + PAD);
            out.fill();
            out.setNonStrokingColor(0f);
            lettering.show(out, text, size, left, FOOT);
        }
    }

    /** From the page as shown, origin at its lower left, to the page's own coordinates. */
    static Matrix upright(PDRectangle box, int turned) {
        return switch (turned) {
            case 90 -> new Matrix(0, 1, -1, 0, box.getUpperRightX(), box.getLowerLeftY());
            case 180 -> new Matrix(-1, 0, 0, -1, box.getUpperRightX(), box.getUpperRightY());
            case 270 -> new Matrix(0, -1, 1, 0, box.getLowerLeftX(), box.getUpperRightY());
            default -> new Matrix(1, 0, 0, 1, box.getLowerLeftX(), box.getLowerLeftY());
        };
    }
}

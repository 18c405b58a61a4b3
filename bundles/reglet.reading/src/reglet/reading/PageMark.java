package reglet.reading;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.util.Matrix;

/** The line at the foot of each bound sheet that says which page of the package it is; upright as the page is shown. */
final class PageMark {
    private static final float SIZE = 8;
    private static final float FOOT = 14;
    private static final float PAD = 2.5f;

    private PageMark() {
    }

    static void put(PDDocument document, PDPage page, String mark) throws IOException {
        PDFont font = new PDType1Font(FontName.HELVETICA);
        String text = printable(font, mark);
        float width = font.getStringWidth(text) / 1000 * SIZE;
        PDRectangle box = page.getCropBox();
        int turned = Math.floorMod(page.getRotation(), 360);
        float shownWidth = turned % 180 == 0 ? box.getWidth() : box.getHeight();
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            out.transform(upright(box, turned));
            float left = (shownWidth - width) / 2;
            out.setNonStrokingColor(1f);
            out.addRect(left - PAD, FOOT - PAD, width + 2 * PAD, SIZE + PAD);
            out.fill();
            out.setNonStrokingColor(0f);
            out.beginText();
            out.setFont(font, SIZE);
            out.newLineAtOffset(left, FOOT);
            out.showText(text);
            out.endText();
        }
    }

    /** From the page as shown, origin at its lower left, to the page's own coordinates. */
    private static Matrix upright(PDRectangle box, int turned) {
        return switch (turned) {
            case 90 -> new Matrix(0, 1, -1, 0, box.getUpperRightX(), box.getLowerLeftY());
            case 180 -> new Matrix(-1, 0, 0, -1, box.getUpperRightX(), box.getUpperRightY());
            case 270 -> new Matrix(0, -1, 1, 0, box.getLowerLeftX(), box.getUpperRightY());
            default -> new Matrix(1, 0, 0, 1, box.getLowerLeftX(), box.getLowerLeftY());
        };
    }

    private static String printable(PDFont font, String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(point -> {
            String one = new String(Character.toChars(point));
            try {
                font.encode(one);
                kept.append(one);
            } catch (IOException | IllegalArgumentException notInFont) {
                kept.append('?');
            }
        });
        return kept.toString();
    }
}

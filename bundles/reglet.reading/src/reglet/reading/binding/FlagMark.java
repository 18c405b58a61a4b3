package reglet.reading.binding;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

import reglet.model.Box;

/**
 * A flag on a bound sheet: a frame round a place of the page as it is shown, a line along its foot to the page's right edge, and a
 * few words there on a white ground, where sheets have a margin.
 */
final class FlagMark {
    private static final float SIZE = 8;
    private static final float PAD = 2.5f;
    private static final float SIDE = 10;
    private static final float LINE = 0.8f;

    private FlagMark() {
    }

    /** @param box in units of the page from the upper left corner of the page as it is shown */
    static void put(PDDocument document, PDPage page, Lettering lettering, Box box, String words) throws IOException {
        String text = lettering.printable(words);
        PDRectangle crop = page.getCropBox();
        int turned = Math.floorMod(page.getRotation(), 360);
        boolean across = turned % 180 == 0;
        float wide = across ? crop.getWidth() : crop.getHeight();
        float high = across ? crop.getHeight() : crop.getWidth();
        float size = SIZE / Math.max(page.getUserUnit(), 1);
        float width = lettering.width(text, size);
        float bottom = high - (float) (box.y() + box.height());
        float left = wide - width - PAD - SIDE;
        float right = (float) (box.x() + box.width());
        float foot = bottom + ((float) box.height() - size) / 2 + PAD / 2;
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
            Matrix upright = PageMark.upright(crop, turned);
            out.transform(upright);
            out.setStrokingColor(0f);
            out.setLineWidth(LINE);
            out.addRect((float) box.x(), bottom, (float) box.width(), (float) box.height());
            if (left - PAD > right) {
                out.moveTo(right, bottom);
                out.lineTo(left - PAD, bottom);
            }
            out.stroke();
            out.setNonStrokingColor(1f);
            out.addRect(left - PAD, foot - PAD, width + 2 * PAD, size + 1.5f * PAD);
            out.fillAndStroke();
            out.setNonStrokingColor(0f);
            lettering.show(out, text, size, left, foot);
        }
    }
}

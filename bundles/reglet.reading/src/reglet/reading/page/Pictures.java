package reglet.reading.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import javax.imageio.ImageIO;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws a page of a sheet; runs only in the process made for it. */
public final class Pictures {
    public static final int LEAST_DPI = 36;
    public static final int MOST_DPI = 200;
    /** A larger page is drawn more coarsely. */
    static final int MOST_DOTS = 6_000_000;
    private static final double POINTS_PER_INCH = 72;

    private Pictures() {
    }

    /** @param page from 1 */
    public static void draw(Path sheet, int page, int dpi, OutputStream out) throws IOException {
        // fonts that a sheet names and doesn't bring are drawn in the library's own
        Pages.useOwnFont();
        try (PDDocument document = Sheets.openToRead(sheet)) {
            if (page < 1 || page > document.getNumberOfPages()) {
                throw new Sheets.Unusable("it has no page " + page);
            }
            PDRectangle crop = document.getPage(page - 1).getCropBox();
            double inches = Math.max(1, crop.getWidth()) / POINTS_PER_INCH * (Math.max(1, crop.getHeight()) / POINTS_PER_INCH);
            double asked = Math.max(LEAST_DPI, Math.min(MOST_DPI, dpi));
            double finest = Math.min(asked, Math.sqrt(MOST_DOTS / inches));
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page - 1, (float) finest, ImageType.RGB);
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
            out.flush();
        }
    }
}

package reglet.reading;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** PDFs that tests make, and what stands in the ones that come back. */
public final class Made {
    private Made() {
    }

    /** Changes a document before it is saved. */
    interface Change {
        void to(PDDocument document) throws IOException;
    }

    /** A letter page for each text, which stands an inch from the left and ten inches up. */
    static byte[] pdf(Change change, String... texts) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (String text : texts) {
                PDPage page = new PDPage(PDRectangle.LETTER);
                document.addPage(page);
                write(document, page, text);
            }
            change.to(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    static byte[] pdf(String... texts) throws IOException {
        return pdf(document -> { }, texts);
    }

    static void write(PDDocument document, PDPage page, String text) throws IOException {
        try (PDPageContentStream out = new PDPageContentStream(document, page, PDPageContentStream.AppendMode.APPEND, false, true)) {
            out.beginText();
            out.setFont(new PDType1Font(FontName.HELVETICA), 12);
            out.newLineAtOffset(72, 720);
            out.showText(text);
            out.endText();
        }
    }

    public static Path file(Path folder, String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    static PackagePlan.Part own(String title, int firstPage, int pages) {
        return PackagePlan.Part.own(title, 1, firstPage, pages);
    }

    static PackagePlan.Part sheet(String title, int pages, Path file) {
        return PackagePlan.Part.of(title, 2, new PackagePlan.Sheet(file, pages),
            title + ", page {page} of " + pages + " · Submittal 04-73-00-01 · Package page {package page}");
    }

    /** A package of one own page and one sheet. */
    static PDDocument bound(Path sheet, int pages) throws IOException {
        return Loader.loadPDF(Child.usual().assemble(
            new PackagePlan("Package", pdf("Cover"), List.of(own("Cover", 1, 1), sheet("Sheet 1", pages, sheet)), List.of())));
    }

    static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ").strip();
    }

    /** Where a piece of text starts on a page as it is shown: "x y" in whole points from the upper left; "" when it isn't there. */
    static String place(PDDocument document, int page, String wanted) throws IOException {
        List<String> found = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                int at = text.indexOf(wanted);
                if (at >= 0) {
                    TextPosition first = positions.get(at);
                    found.add(String.format(Locale.ROOT, "%.0f %.0f", first.getX(), first.getY()));
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return found.isEmpty() ? "" : found.get(0);
    }
}

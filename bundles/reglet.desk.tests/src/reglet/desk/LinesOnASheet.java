package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** A PDF of one page with lines of text, one below the other. */
final class LinesOnASheet {
    private LinesOnASheet() {
    }

    static void write(Path sheet, List<String> lines) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                for (int i = 0; i < lines.size(); i++) {
                    out.beginText();
                    out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 11);
                    out.newLineAtOffset(72, 700 - 20 * i);
                    out.showText(lines.get(i));
                    out.endText();
                }
            }
            document.save(sheet.toFile());
        }
    }
}

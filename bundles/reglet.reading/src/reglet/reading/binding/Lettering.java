package reglet.reading.binding;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The one embedded font of what is added to a package: marks and pages that stand for broken ones. */
final class Lettering {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** Stands for a character that the font doesn't have, so that it is seen to be missing. */
    private static final String MISSING = "\u25A1";

    private final PDFont font;

    Lettering(PDDocument document) throws IOException {
        try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IOException("the font " + FILE + " is missing from the PDF library");
            }
            TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(in));
            // ligatures are looked for by regular expressions at every line, and took most of the time of a package
            letters.setEnableGsub(false);
            font = PDType0Font.load(document, letters, true);
        }
    }

    /** Cuts the font down to the letters shown; nothing more can be shown then. */
    void end() throws IOException {
        font.subset();
    }

    /** The text in characters that the font has. */
    String printable(String text) {
        StringBuilder kept = new StringBuilder();
        text.replaceAll("\\s+", " ").codePoints().forEach(point -> {
            String one = new String(Character.toChars(point));
            kept.append(has(one) ? one : MISSING);
        });
        return kept.toString();
    }

    private boolean has(String one) {
        try {
            font.encode(one);
            return true;
        } catch (IOException | IllegalArgumentException notInFont) {
            return false;
        }
    }

    /** Width in points of a printable text. */
    float width(String printable, float size) throws IOException {
        return font.getStringWidth(printable) / 1000 * size;
    }

    /** Lines of a printable text that aren't wider than so many points; a single longer word gets a line of its own. */
    List<String> lines(String printable, float size, float wide) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : printable.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > wide) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    void show(PDPageContentStream out, String printable, float size, float x, float y) throws IOException {
        out.beginText();
        out.setFont(font, size);
        out.newLineAtOffset(x, y);
        out.showText(printable);
        out.endText();
    }
}

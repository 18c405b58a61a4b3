package reglet.drafting;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

import org.librepdf.openpdf.fonts.Liberation;

import com.lowagie.text.Chunk;
import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;

/** The embedded fonts of one document. Files are read once; each document gets fonts of its own, since it embeds what it uses. */
final class PdfFonts {
    /** Stands for a character that the fonts don't have, so that it is seen to be missing. */
    private static final int MISSING = 0x25A1;
    private static final Pattern RAISED = Pattern.compile("[\u2070-\u2079\u207A\u207B]+");
    private static final Map<Face, byte[]> FILES = new ConcurrentHashMap<>();

    /** The faces in use. */
    enum Face {
        TEXT("LiberationSerif-Regular"), TEXT_BOLD("LiberationSerif-Bold"), TEXT_ITALIC("LiberationSerif-Italic"),
        SANS("LiberationSans-Regular"), SANS_BOLD("LiberationSans-Bold");

        private final String file;

        Face(String file) {
            this.file = file + ".ttf";
        }
    }

    private final Map<Face, BaseFont> fonts = new EnumMap<>(Face.class);

    /** A run of text in a face, with characters that the face lacks made visible. Numbers stay with their units. */
    Chunk run(String text, Face face, float size, Color color) {
        BaseFont font = base(face);
        StringBuilder shown = new StringBuilder();
        raised(text.replaceAll("\\s", " "), font).codePoints()
            .forEach(character -> shown.appendCodePoint(font.charExists(character) ? character : MISSING));
        Chunk chunk = new Chunk(shown.toString(), new Font(font, size, Font.NORMAL, color));
        chunk.setSplitCharacter((start, current, end, characters, chunks) -> breaks(characters, current));
        return chunk;
    }

    /** Raised digits that the font lacks as a power: "10⁻⁶" as "10^-6". */
    private static String raised(String text, BaseFont font) {
        return RAISED.matcher(text).replaceAll(found -> found.group().codePoints().allMatch(font::charExists) ? found.group()
            : "^" + Normalizer.normalize(found.group(), Normalizer.Form.NFKC).replace('\u2212', '-'));
    }

    /** Width of a run in points. */
    float width(String text, Face face, float size) {
        return base(face).getWidthPoint(text, size);
    }

    private static boolean breaks(char[] text, int at) {
        char before = at > 0 ? text[at - 1] : ' ';
        char after = at + 1 < text.length ? text[at + 1] : ' ';
        return switch (text[at]) {
            case ' ' -> !(Character.isDigit(before) && (Character.isLetter(after) || after == '°'));
            case '-' -> Character.isLetter(before) && Character.isLetter(after);
            // Scripts without spaces.
            default -> text[at] >= 0x2E80;
        };
    }

    /** The font file of a face. */
    static byte[] file(Face face) {
        return FILES.computeIfAbsent(face, PdfFonts::read);
    }

    private BaseFont base(Face face) {
        return fonts.computeIfAbsent(face, wanted -> {
            try {
                return BaseFont.createFont(wanted.file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, file(wanted), null);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static byte[] read(Face face) {
        try (InputStream in = Liberation.class.getResourceAsStream("/liberation/" + face.file)) {
            if (in == null) {
                throw new IOException("the font file " + face.file + " is missing from the fonts bundle");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

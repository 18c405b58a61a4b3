package reglet.drafting;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

import org.librepdf.openpdf.fonts.Liberation;

import com.lowagie.text.Chunk;
import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;

import reglet.model.Office;
import reglet.model.Problem;

/** The embedded fonts of one document. Files are read once; each document gets fonts of its own, since it embeds what it uses. */
final class PdfFonts {
    /** Stands for a character that the fonts don't have, so that it is seen to be missing. */
    private static final int MISSING = 0x25A1;
    private static final Pattern RAISED = Pattern.compile("[\u2070-\u2079\u207A\u207B]+");
    private static final Map<Face, byte[]> FILES = new ConcurrentHashMap<>();

    /** The faces in use. */
    enum Face {
        TEXT("LiberationSerif-Regular", Office.Face.REGULAR), TEXT_BOLD("LiberationSerif-Bold", Office.Face.BOLD),
        TEXT_ITALIC("LiberationSerif-Italic", Office.Face.ITALIC), SANS("LiberationSans-Regular", Office.Face.REGULAR),
        SANS_BOLD("LiberationSans-Bold", Office.Face.BOLD);

        private final String file;
        private final Office.Face place;

        Face(String file, Office.Face place) {
            this.file = file + ".ttf";
            this.place = place;
        }
    }

    private final Map<String, BaseFont> fonts = new LinkedHashMap<>();
    private final Office office;

    PdfFonts() {
        this(Office.none());
    }

    /** An office's fonts where it has some, with the regular one for faces that it lacks. */
    PdfFonts(Office office) {
        this.office = office;
    }

    private Optional<Office.Font> own(Face face) {
        return Optional.ofNullable(office.fonts().getOrDefault(face.place, office.fonts().get(Office.Face.REGULAR)));
    }

    /**
     * What an office's fonts can't print of a paper's texts though the usual fonts can.
     *
     * @param printing who prints it: "section 04 73 00 prints"
     */
    Optional<Problem> lacking(List<String> texts, String printing) {
        PdfFonts usual = new PdfFonts();
        for (Face face : Face.values()) {
            Optional<Office.Font> own = own(face);
            if (own.isPresent()) {
                Optional<String> sign = texts.stream().flatMapToInt(String::codePoints)
                    .filter(sought -> !base(face).charExists(sought) && usual.base(face).charExists(sought)).mapToObj(Character::toString)
                    .findFirst();
                if (sign.isPresent()) {
                    return Optional.of(new Problem(office.place(own.get().file()), "has no \"" + sign.get() + "\", which " + printing,
                        "expected a font with all signs of the section"));
                }
            }
        }
        return Optional.empty();
    }

    /** A run of text in a face, with characters that the face lacks made visible. Numbers stay with their units. */
    Chunk run(String text, Face face, float size, Color color) {
        BaseFont font = fitting(face, text);
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
        return fitting(face, text).getWidthPoint(text, size);
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

    /** The office's font, or the usual one for a text with signs that the office's lacks and the usual has. */
    private BaseFont fitting(Face face, String text) {
        BaseFont own = base(face);
        if (own(face).isEmpty()) {
            return own;
        }
        boolean lacking = text.codePoints().anyMatch(sign -> !own.charExists(sign) && !Character.isWhitespace(sign)
            && embedded(face, Optional.empty()).charExists(sign));
        return lacking ? embedded(face, Optional.empty()) : own;
    }

    private BaseFont base(Face face) {
        return embedded(face, own(face));
    }

    private BaseFont embedded(Face face, Optional<Office.Font> own) {
        // By file: a document embeds each once, whatever faces it stands for.
        return fonts.computeIfAbsent(own.map(Office.Font::file).orElse(face.file), wanted -> {
            try {
                BaseFont font = BaseFont.createFont(own.isPresent() ? "own.ttf" : face.file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false,
                    own.map(Office.Font::bytes).orElseGet(() -> file(face)), null);
                // It would list what is used, where PDF/A wants all that the font program holds.
                font.setIncludeCidSet(false);
                return font;
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

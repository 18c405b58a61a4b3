package reglet.reading.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

import reglet.reading.page.SheetPage.Piece;
import reglet.reading.page.SheetPage.Rule;

/** Takes words and lines off the pages of a sheet; runs only in the process made for it. */
public final class Pages {
    /** Data sheets have a few pages; of anything longer the first ones are read. */
    public static final int MOST = 60;
    private static final int PIECES = 150;
    private static final int RULES = 500;
    /** Words of a sheet; a longer one has its first words read. */
    private static final int MOST_PIECES = 40_000;
    private static final int FEW_LETTERS = 8;
    private static final int SHAPES_OF_LETTERS = 60;

    private Pages() {
    }

    /** Hears of the pages, in parts small enough for a frame. */
    public interface Parts {
        void part(SheetPage part) throws IOException;
    }

    public static void read(Path sheet, Parts parts) throws IOException {
        useOwnFont();
        try (PDDocument document = Sheets.openToRead(sheet)) {
            if (document.isEncrypted() && !document.getCurrentAccessPermission().canExtractContent()) {
                throw new Sheets.Unusable("its maker forbids taking text out of it");
            }
            int left = MOST_PIECES;
            for (int i = 0; i < document.getNumberOfPages() && i < MOST; i++) {
                left -= page(document, i, left, parts);
            }
            for (int i = MOST; i < document.getNumberOfPages(); i++) {
                parts.part(new SheetPage(i + 1, 0, 0, false, List.of(), List.of()));
            }
        }
    }

    /** Reading text needs the widths of fonts, and nothing of the machine's own. */
    static void useOwnFont() {
        FontMappers.set(OneFont.ONLY);
    }

    /** @return how many of the words left were used up */
    private static int page(PDDocument document, int index, int left, Parts parts) throws IOException {
        PDPage page = document.getPage(index);
        PageRules.Drawn drawn = PageRules.of(page);
        List<Piece> pieces = Dots.before(PageText.of(document, index), drawn.dots());
        boolean turned = page.getRotation() % 180 != 0;
        PDRectangle crop = page.getCropBox();
        double width = turned ? crop.getHeight() : crop.getWidth();
        double height = turned ? crop.getWidth() : crop.getHeight();
        boolean wordless = pieces.stream().mapToInt(piece -> piece.text().length()).sum() < FEW_LETTERS;
        boolean picture = wordless && (drawn.pictures() > 0 || drawn.shapes() > SHAPES_OF_LETTERS);
        parts.part(new SheetPage(index + 1, width, height, picture, List.of(), List.of()));
        for (int from = 0; from < Math.min(pieces.size(), left); from += PIECES) {
            parts.part(new SheetPage(index + 1, width, height, picture,
                pieces.subList(from, Math.min(Math.min(pieces.size(), left), from + PIECES)), List.of()));
        }
        List<Rule> rules = drawn.rules();
        for (int from = 0; from < rules.size(); from += RULES) {
            parts.part(new SheetPage(index + 1, width, height, picture, List.of(),
                rules.subList(from, Math.min(rules.size(), from + RULES))));
        }
        return Math.min(pieces.size(), left);
    }

    /**
     * The library's own font in place of every font that a sheet names and doesn't bring: only its widths matter here, and those
     * come from the sheet. Otherwise the library would look through all fonts of the machine and write a list of them.
     */
    private static final class OneFont implements FontMapper {
        /** Taking the font apart takes longer than most sheets. */
        private static final OneFont ONLY = new OneFont();

        private TrueTypeFont font;

        private TrueTypeFont font() {
            if (font == null) {
                try (InputStream in = PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
                    font = new TTFParser().parse(new RandomAccessReadBuffer(in));
                } catch (IOException absent) {
                    throw new IllegalStateException("the PDF library lacks its own font", absent);
                }
            }
            return font;
        }

        @Override
        public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
            return new FontMapping<>(font(), true);
        }

        @Override
        public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
            return new FontMapping<>(font(), true);
        }

        @Override
        public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
            return new CIDFontMapping(null, font(), true);
        }
    }
}

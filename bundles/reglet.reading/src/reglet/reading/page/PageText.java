package reglet.reading.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

import reglet.reading.page.SheetPage.Piece;

/** Takes the words off a page; runs only in the process made for it. */
final class PageText extends PDFTextStripper {
    private static final int MOST_LETTERS = 100_000;
    private static final int LONGEST = 200;
    /** Of the size of the letters: closer letters belong to one word, and the same letter again so near is a shadow. */
    private static final double NEAR = 0.17;
    private static final double SAME = 0.12;
    private static final int DOTS = 3;
    /** Side of a square in points: few letters begin in one, and most of their neighbours too. */
    private static final double SIDE = 8;
    /** Squares above each other, and so odd that keys made with it are spread evenly. */
    private static final long ROWS = 1_000_003;

    private final int rotation;
    private final List<Piece> pieces = new ArrayList<>();
    /** The letters drawn so far, by the square of the page in which they begin. */
    private final Map<Long, List<Letter>> drawn = new HashMap<>();
    private final List<Letter> word = new ArrayList<>();
    private boolean spaced;
    private int letters;
    /** The font of the last letter, and whether it is bold. */
    private PDFont font;
    private boolean isBold;

    private record Letter(String text, double x, double y, double width, double size, int turn, boolean bold, boolean hidden) {
        double end() {
            return x + width;
        }
    }

    private static long strip(double along) {
        // the library's rounding down takes several times as long without the second compiler
        long strip = (long) (along / SIDE);
        return strip * SIDE > along ? strip - 1 : strip;
    }

    /** The same for the squares of a page's column and row, and different for squares that are near each other. */
    private static long square(long column, long row) {
        return column * ROWS + row;
    }

    private PageText(PDPage page) {
        this.rotation = page.getRotation();
    }

    static List<Piece> of(PDDocument document, int index) throws IOException {
        PageText text = new PageText(document.getPage(index));
        text.setStartPage(index + 1);
        text.setEndPage(index + 1);
        text.setSuppressDuplicateOverlappingText(false);
        text.getText(document);
        text.flush();
        return text.pieces;
    }

    @Override
    protected void processTextPosition(TextPosition position) {
        String unicode = position.getUnicode();
        double size = Math.abs(position.getFontSizeInPt());
        if (unicode == null || unicode.isEmpty() || size <= 0 || slanted(position) || ++letters > MOST_LETTERS) {
            return;
        }
        boolean blank = unicode.isBlank() || unicode.equals("\u00a0");
        if (blank) {
            flush();
            spaced = true;
            return;
        }
        Letter letter = new Letter(unicode, position.getXDirAdj(), position.getYDirAdj(), position.getWidthDirAdj(), size,
            Math.floorMod((int) position.getDir() - rotation, 360), bold(position),
            getGraphicsState().getTextState().getRenderingMode() == RenderingMode.NEITHER);
        if (isShadow(letter)) {
            return;
        }
        if (!word.isEmpty() && !continues(word.get(word.size() - 1), letter)) {
            flush();
        }
        word.add(letter);
    }

    /** Text across the page, such as a stamp, belongs to no line. */
    private static boolean slanted(TextPosition position) {
        double a = Math.abs(position.getTextMatrix().getScaleX());
        double b = Math.abs(position.getTextMatrix().getShearY());
        return Math.min(a, b) > 0.1 * Math.max(a, b);
    }

    private boolean bold(TextPosition position) {
        if (position.getFont() != font) {
            font = position.getFont();
            String name = font == null ? null : font.getName();
            isBold = name != null && name.toLowerCase(Locale.ROOT).contains("bold");
        }
        return isBold;
    }

    private static boolean continues(Letter last, Letter next) {
        double gap = next.x - last.end();
        return last.turn == next.turn && Math.abs(last.y - next.y) < 0.08 * next.size && Math.abs(last.size - next.size) < 0.1 * next.size
            && gap < NEAR * next.size && gap > -0.5 * next.size && next.x > last.x - SAME * next.size;
    }

    private boolean isShadow(Letter letter) {
        double near = SAME * letter.size;
        for (long column = strip(letter.x - near); column <= strip(letter.x + near); column++) {
            for (long row = strip(letter.y - near); row <= strip(letter.y + near); row++) {
                for (Letter other : drawn.getOrDefault(square(column, row), List.of())) {
                    if (Math.abs(other.x - letter.x) < near && Math.abs(other.y - letter.y) < near && other.turn == letter.turn
                        && other.text.equals(letter.text)) {
                        return true;
                    }
                }
            }
        }
        drawn.computeIfAbsent(square(strip(letter.x), strip(letter.y)), fresh -> new ArrayList<>()).add(letter);
        return false;
    }

    /** Ends a word; dots that lead from a label to a value are a word of their own. */
    private void flush() {
        int from = 0;
        for (int i = 0; i < word.size(); i++) {
            int dots = i;
            while (dots < word.size() && word.get(dots).text.equals(".")) {
                dots++;
            }
            if (dots - i >= DOTS) {
                piece(word.subList(from, i));
                piece(word.subList(i, dots));
                from = dots;
                i = dots - 1;
            }
        }
        piece(word.subList(from, word.size()));
        word.clear();
    }

    private void piece(List<Letter> part) {
        if (part.isEmpty()) {
            return;
        }
        Letter first = part.get(0);
        StringBuilder text = new StringBuilder();
        part.stream().limit(LONGEST).forEach(letter -> text.append(letter.text));
        pieces.add(new Piece(text.toString(), first.x, first.y, part.get(part.size() - 1).end() - first.x, first.size, first.turn, spaced,
            first.bold, first.hidden));
        spaced = false;
    }
}

package reglet.reading.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

import reglet.model.Box;
import reglet.reading.page.SheetPage.Piece;

/** Finds words on the pages of a sheet; runs only in the process made for it. */
public final class Finder {
    /** Places found on one sheet. */
    public static final int MOST = 200;
    private static final char NO_BREAK = '\u00a0';
    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");
    /** Of the size of the letters: how far they reach above and below their line. */
    private static final double ABOVE = 0.78;
    private static final double BELOW = 0.24;

    /**
     * A place where some words stand.
     *
     * @param words as they were asked for
     * @param page  counted from 1
     * @param box   on the page as it is shown, origin at its upper left
     */
    public record Sighting(String words, int page, Box box) {
    }

    private Finder() {
    }

    /** All places where some words stand whole: "CB-12" is not found in "CB-125", nor in "CB-12-L". */
    public static List<Sighting> find(Path sheet, List<String> words) throws IOException {
        Pages.useOwnFont();
        List<Sighting> found = new ArrayList<>();
        try (PDDocument document = Sheets.openToRead(sheet)) {
            for (int i = 0; i < Math.min(document.getNumberOfPages(), Pages.MOST); i++) {
                List<Piece> pieces = PageText.of(document, i).stream().map(Finder::squeezed).toList();
                PDPage page = document.getPage(i);
                PDRectangle crop = page.getCropBox();
                boolean lies = page.getRotation() % 180 != 0;
                double wide = lies ? crop.getHeight() : crop.getWidth();
                double high = lies ? crop.getWidth() : crop.getHeight();
                for (String asked : words) {
                    String wanted = squeezed(asked);
                    for (int start = 0; start < pieces.size() && !wanted.isEmpty() && found.size() < MOST; start++) {
                        Box box = at(pieces, start, wanted, wide, high);
                        if (box != null) {
                            found.add(new Sighting(asked, i + 1, box));
                        }
                    }
                }
            }
        }
        return found;
    }

    private static String squeezed(String text) {
        boolean blanks = text.chars().anyMatch(letter -> Character.isWhitespace(letter) || letter == NO_BREAK);
        return (blanks ? BLANKS.matcher(text).replaceAll("") : text).toLowerCase(Locale.ROOT);
    }

    private static Piece squeezed(Piece piece) {
        String text = squeezed(piece.text());
        return text.equals(piece.text()) ? piece : new Piece(text, piece.x(), piece.y(), piece.width(), piece.size(), piece.turn(),
            piece.spaced(), piece.bold(), piece.hidden());
    }

    /** Where the words stand that begin within a piece; null when they don't. */
    private static Box at(List<Piece> pieces, int start, String wanted, double wide, double high) {
        Piece first = pieces.get(start);
        String line = first.text();
        if (line.indexOf(wanted.charAt(0)) < 0) {
            return null;
        }
        int own = line.length();
        int last = start;
        while (line.length() < own + wanted.length() + 1 && last + 1 < pieces.size() && follows(pieces.get(last), pieces.get(last + 1))) {
            line += pieces.get(++last).text();
        }
        int from = line.indexOf(wanted);
        if (from < 0 || from >= own || !isWhole(pieces, start, line, from, from + wanted.length())) {
            return null;
        }
        double left = first.x() + first.width() * from / own;
        double right = first.end();
        int end = from + wanted.length();
        int before = 0;
        for (int i = start; i <= last && before < end; i++) {
            int length = pieces.get(i).text().length();
            right = pieces.get(i).x() + pieces.get(i).width() * Math.min(1.0, (end - before) / (double) Math.max(1, length));
            before += length;
        }
        return shown(first, left, right - left, wide, high);
    }

    private static boolean follows(Piece one, Piece next) {
        return one.turn() == next.turn() && Math.abs(one.y() - next.y()) < 0.3 * one.size() && next.x() >= one.x()
            && next.x() - one.end() < one.size();
    }

    /** Letters and digits that go on without a blank belong to another word. */
    private static boolean isWhole(List<Piece> pieces, int start, String line, int from, int end) {
        if (from > 0 && goesOn(line.charAt(from - 1), from > 1 ? line.charAt(from - 2) : ' ')) {
            return false;
        }
        int at = 0;
        int piece = start;
        while (at < end) {
            at += pieces.get(piece++).text().length();
        }
        // the words end with a piece, which a blank or a gap follows
        if (at == end) {
            return true;
        }
        return !goesOn(line.charAt(end), end + 1 < line.length() ? line.charAt(end + 1) : ' ');
    }

    private static boolean goesOn(char next, char afterwards) {
        return Character.isLetterOrDigit(next) || (next == '-' || next == '/') && Character.isLetterOrDigit(afterwards);
    }

    /** From the page turned so that the words read upright to the page as it is shown. */
    private static Box shown(Piece piece, double left, double length, double wide, double high) {
        double above = ABOVE * piece.size();
        double thick = (ABOVE + BELOW) * piece.size();
        return switch (piece.turn()) {
            case 90 -> new Box(piece.y() - above, high - left - length, thick, length);
            case 180 -> new Box(wide - left - length, high - piece.y() - thick + above, length, thick);
            case 270 -> new Box(wide - piece.y() - thick + above, left, thick, length);
            default -> new Box(left, piece.y() - above, length, thick);
        };
    }
}

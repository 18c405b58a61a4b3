package reglet.reading.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import reglet.reading.page.SheetPage.Piece;

/**
 * Words that stand together, and where. Raised and lowered letters are already read: exponents and degree signs are in the text,
 * marks of footnotes are not.
 *
 * @param starts where in the text each piece starts
 */
public record Cell(String text, List<Piece> pieces, List<Integer> starts, double y, double size, double low) {
    /** "DP−V", "E−96": some programs set each hyphen as a minus. */
    private static final Pattern MINUS_IN_NAME = Pattern.compile("(?<=\\p{L}|\\p{Lu}\\d{1,4})[−‐](?=[\\p{L}\\d])");
    private static final Pattern UNIT_BEFORE_POWER = Pattern.compile("(?i)(?:^|.*[^a-z])(?:in|ft|yd|mm|cm|m|s)\\.?$", Pattern.DOTALL);
    private static final Pattern MARK = Pattern.compile("(?<=\\S)\\s*[*†‡§]+(?=\\s|$|[,;)])");
    /** A raised figure of the font's own is a power after a unit alone. */
    private static final Pattern RAISED = Pattern.compile("(?i)(?<![a-z⁻⁰-⁹²³]|[^a-z](?:in|ft|yd|mm|cm|m|s))"
        + "(?:(?<![^a-z](?:in|ft|yd)\\.)[²³]|[¹⁴⁵⁶⁷⁸⁹])+(?![⁰-⁹²³/⁄])");
    private static final Pattern RAISED_AFTER_WORD = Pattern.compile("(?i)(?<=[a-z])(?<!(?:^|[^a-z])(?:in|ft|yd|mm|cm|m|s))[¹²³⁴⁵⁶⁷⁸⁹]+");

    private static final Pattern KEPT = Pattern.compile("(?is).*(?:\\b(?:self"
        + "|non|air|water|vapor|wet|dry|cold|hot|high|low|two|one|double|pre)|\\d)-");

    static Cell of(List<Piece> pieces, double y, double size) {
        StringBuilder text = new StringBuilder();
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean raised = isRaised(piece, y, size) || isNumerator(pieces, i, size) || i > 0 && Layout.isMark(piece, pieces.get(i - 1));
            if (i > 0 && !raised && Layout.blank(pieces.get(i - 1), piece)) {
                text.append(' ');
            }
            starts.add(text.length());
            text.append(raised ? raised(text.toString(), plain(piece.text()), i + 1 < pieces.size() ? pieces.get(i + 1).text() : "")
                : plain(piece.text()));
        }
        // cleaning keeps the length, so that places still fit
        return new Cell(clean(text.toString()), List.copyOf(pieces), List.copyOf(starts), y, size, y);
    }

    /** Whether letters stand higher than the words of some size beside them; the higher, the less small they need to be. */
    public static boolean isRaised(Piece piece, double y, double size) {
        double rise = (y - piece.y()) / size;
        return piece.size() < 0.8 * size && rise > 0.05 || piece.size() < 0.87 * size && rise > 0.2;
    }

    /** Whether a figure stands higher than those before it and the stroke behind it: the upper one of a fraction. */
    private static boolean isNumerator(List<Piece> pieces, int i, double size) {
        return i > 0 && i + 1 < pieces.size() && pieces.get(i).text().matches("\\d{1,2}") && pieces.get(i + 1).text().matches("[/⁄].*")
            && pieces.get(i).y() < pieces.get(i - 1).y() - 0.2 * size && pieces.get(i).y() < pieces.get(i + 1).y() - 0.2 * size;
    }

    private static String raised(String before, String text, String next) {
        if (text.matches("[23]") && UNIT_BEFORE_POWER.matcher(before).matches()) {
            return text.equals("2") ? "²" : "³";
        }
        if (text.matches("[oO0°º]") && before.matches("(?s).*\\d\\s?")) {
            return "°";
        }
        if (before.endsWith("10") && text.matches("[-−–]\\d")) {
            return "⁻" + "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(text.charAt(1) - '0');
        }
        if (next.startsWith("/") || next.startsWith("⁄")) {
            // a fraction of small figures may stand right behind a word: "at least³/₄ inch"
            return (before.matches("(?s).*\\d") ? "-" : before.matches("(?s).*\\p{Ll}") ? " " : "") + text;
        }
        return text.matches("st|nd|rd|th") ? text : "";
    }

    /** Ligatures, blanks and look-alikes as the letters they stand for. */
    private static String plain(String text) {
        return MINUS_IN_NAME.matcher(text).replaceAll("-").replace("\u00a0", " ").replace("ﬁ", "fi").replace("ﬂ", "fl")
            .replace("ﬀ", "ff").replace("ﬃ", "ffi").replace("ﬄ", "ffl")
            .replace('º', '°').replace('˚', '°').replace('μ', 'µ').replace('″', '"').replace('”', '"').replace('“', '"')
            .replace('′', '\'').replace('’', '\'').replace('⁄', '/').replace('‑', '-').replace('\u00ad', '-').replace("®", "")
            .replace("™", "");
    }

    private static String clean(String text) {
        String marks = MARK.matcher(text).replaceAll(match -> " ".repeat(match.end() - match.start()));
        String raised = RAISED.matcher(marks).replaceAll(match -> " ".repeat(match.end() - match.start()));
        return RAISED_AFTER_WORD.matcher(raised).replaceAll(match -> " ".repeat(match.end() - match.start())).stripTrailing();
    }

    public double left() {
        double left = pieces.isEmpty() ? 0 : pieces.get(0).x();
        for (Piece piece : pieces) {
            left = Math.min(left, piece.x());
        }
        return left;
    }

    public double right() {
        double right = pieces.isEmpty() ? 0 : pieces.get(0).end();
        for (Piece piece : pieces) {
            right = Math.max(right, piece.end());
        }
        return right;
    }

    public double top() {
        return y - 0.8 * size;
    }

    public double bottom() {
        return low + 0.25 * size;
    }

    public double middle() {
        return (left() + right()) / 2;
    }

    public boolean bold() {
        return pieces.get(0).bold();
    }

    public boolean hidden() {
        return pieces.stream().anyMatch(Piece::hidden);
    }

    /** Part of the cell, by places in its text; it holds every piece that the part touches. */
    public Cell part(int from, int to) {
        List<Piece> within = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            // a cell with other words than its own may be shorter
            int end = Math.min(text.length(), i + 1 < starts.size() ? starts.get(i + 1) : text.length());
            while (end > starts.get(i) && text.charAt(end - 1) == ' ') {
                end--;
            }
            if (starts.get(i) < to && end > from) {
                within.add(pieces.get(i));
                at.add(Math.max(0, starts.get(i) - from));
            }
        }
        leaveNextColumn(within, at);
        double tall = within.stream().mapToDouble(Piece::size).max().orElse(size);
        double first = within.stream().filter(piece -> piece.size() > 0.8 * tall).mapToDouble(Piece::y).min().orElse(y);
        double last = within.stream().filter(piece -> piece.size() > 0.8 * tall).mapToDouble(Piece::y).max().orElse(low);
        return within.isEmpty() ? this : new Cell(text.substring(from, to).strip(), within, at, first, size, last);
    }

    /** Words that go on at the head of the next column stand where they began. */
    private void leaveNextColumn(List<Piece> within, List<Integer> at) {
        for (int i = 1; i < within.size(); i++) {
            if (within.get(i).y() < within.get(i - 1).y() - size) {
                within.subList(i, within.size()).clear();
                at.subList(i, at.size()).clear();
            }
        }
    }

    /** The same place with other words. */
    public Cell named(String words) {
        return new Cell(words.strip(), pieces, starts, y, size, low);
    }

    /** This cell with the one below it in the same column. */
    public Cell with(Cell below) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(below.pieces);
        List<Integer> at = new ArrayList<>(starts);
        // "self-" above "furring" keeps its hyphen
        boolean kept = KEPT.matcher(text).matches() && below.text.matches("(?s)\\p{Ll}.*");
        boolean word = !kept && text.endsWith("-") && below.text.matches("(?s)\\p{Ll}.*");
        // a designation keeps its hyphen: "SF-" above "340P"
        String joint = word || kept || text.matches("(?s).*[\\p{L}\\d]-") && below.text.matches("(?s)\\d.*") ? "" : " ";
        String start = word ? text.substring(0, text.length() - 1) : text;
        below.starts.forEach(place -> at.add(start.length() + joint.length() + place));
        return new Cell(start + joint + below.text, all, at, Math.min(y, below.y), size, Math.max(low, below.low));
    }
}

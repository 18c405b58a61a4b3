package reglet.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import reglet.reading.Layout.Line;

/** What the headings of a page say of the rows below them: under "Packaging" a thickness is not the product's. */
final class Topics {
    private static final int MOST_WORDS = 5;
    /** Points by which labels may be set in below their heading, or out. */
    private static final double SET_IN = 40;
    private static final double SET_OUT = 6;
    private static final Pattern ELSEWHERE = Pattern.compile("(?:(?:.* )?(?:on|to|for|over) )?(?:roof|roofing|floor|ceiling)|"
        + "(?:.* )?(?:packaging|packing|package|pallet|carton|shipping|delivery"
        + "|storage|warranty|ordering|liner|fabric|geotextile|filter|bag|pail|cartridge|coverage|accessory|primer|safety|freight)"
        + "(?: (?:data|information|detail|dimension|size|property|only|and .*))?");

    private final List<Heading> headings = new ArrayList<>();

    private record Heading(double left, double y, boolean elsewhere) {
    }

    void page() {
        headings.clear();
    }

    /** Notes the headings in a row: a few words without figures, alone or bold. */
    void row(Line row) {
        for (Cell cell : row.cells()) {
            boolean words = cell.text().matches("[^\\d:=]*\\p{L}[^\\d:=]*:?\\s*") && cell.text().strip().split("\\s+").length <= MOST_WORDS;
            if (words && (cell.bold() || row.cells().size() == 1)) {
                headings.add(new Heading(cell.left(), cell.y(), ELSEWHERE.matcher(Labels.plain(cell.text())).matches()));
            }
        }
    }

    /** Whether a label stands under a heading that is about something else than the product. */
    boolean elsewhere(Cell label) {
        Heading last = null;
        for (Heading heading : headings) {
            boolean above = heading.left >= label.left() - SET_IN && heading.left <= label.left() + SET_OUT
                && heading.y < Math.max(label.y(), label.low()) - 1;
            last = above ? heading : last;
        }
        return last != null && last.elsewhere;
    }
}

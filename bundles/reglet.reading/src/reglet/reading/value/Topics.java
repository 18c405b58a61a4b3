package reglet.reading.value;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.words.Plain;

/** What the headings of a page say of the rows below them: under "Packaging" a thickness is not the product's. */
public final class Topics {
    private static final int MOST_WORDS = 5;
    /** Points by which labels may be set in below their heading, or out. */
    /** Size of letters above which words of more than one are no heading within a sheet. */
    private static final double TITLE = 13;
    private static final double SET_IN = 40;
    private static final double SET_OUT = 6;
    /** "Sister products", "Other Halden flashings": what else the maker has. */
    private static final Pattern OTHERS = Pattern.compile("(?:(?:our|the) )?(?:sister|related|companion|similar) .*|"
        + "(?:our |the )?other (?!(?:.* )?"
        + "(?:property|data|test|result|information|characteristic|requirement|value|use|feature|note|consideration|performance)\\b).*"
        + "|(?:.* )?(?:product|of the) (?:family|line)|.* from the same maker");
    private static final Pattern COVERAGE = Pattern.compile("(?:.* )?coverage(?: .*)?");
    private static final Pattern ELSEWHERE = Pattern.compile("(?:(?:.* )?(?:on|to|for|over) )?(?:roof|roofing|floor|ceiling)|"
        + "(?:.* )?(?:packaging|packing|package|pallet|carton|shipping|delivery"
        + "|storage|shelf life|warranty|ordering|liner|fabric|geotextile|filter|bag|pail|cartridge|coverage"
        + "|accessory|primer|safety|freight|yield)"
        + "(?: (?:data|information|detail|dimension|size|property|only|and .*))?");

    /** "Thickness and coverage" is about both. */
    private static final Pattern ALSO_HERE = Pattern.compile("(?:.* )?(?:thickness|film|build|application|performance|size|dimension"
        + "|weight) (?:and|or) .*");

    private final List<Heading> headings = new ArrayList<>();

    /** A heading; {@code coverage}: of how far a pail goes, where running text also says what dries on the wall. */
    private record Heading(double left, double y, boolean elsewhere, boolean coverage) {
    }

    void page() {
        headings.clear();
    }

    /** Whether a heading is about something else than the product. */
    public static boolean isElsewhere(String heading) {
        return ELSEWHERE.matcher(Plain.of(heading)).matches();
    }

    /** Whether a title is of what else the maker has. */
    static boolean isOfOthers(String title) {
        return OTHERS.matcher(Plain.of(title)).matches();
    }

    /** Notes the headings in a row: a few words without figures, alone or bold. */
    void row(Line row) {
        for (Cell cell : row.cells()) {
            String text = cell.text().replaceFirst("^\\d{1,2}(?:\\.\\d{1,2})*\\.?\\s+(?=\\p{Lu})", "");
            boolean words = text.matches("[^\\d:=]*\\p{L}[^\\d:=]*:?\\s*") && text.strip().split("\\s+").length <= MOST_WORDS;
            // a bold label of a row of figures heads nothing
            boolean figured = row.cells().stream().anyMatch(other -> other.left() > cell.right()
                && other.text().matches("[^\\p{L}]*\\d.*"));
            if (words && (cell.bold() && !figured || row.cells().size() == 1)) {
                // "Expansion joint accessory" in large letters is what the sheet is about
                boolean titled = cell.size() > TITLE && text.contains(" ");
                headings.add(new Heading(cell.left(), cell.y(), OTHERS.matcher(Plain.of(text)).matches() || !titled && ELSEWHERE.matcher(
                    Plain.of(text)).matches() && !ALSO_HERE.matcher(Plain.of(text)).matches(),
                        COVERAGE.matcher(Plain.of(text)).matches()));
            }
        }
    }

    /** Whether a label, or a sentence, stands under a heading that is about something else than the product. */
    boolean elsewhere(Cell label, boolean running) {
        Heading last = null;
        for (Heading heading : headings) {
            boolean above = heading.left >= label.left() - SET_IN && heading.left <= label.left() + SET_OUT
                && heading.y < Math.max(label.y(), label.low()) - 1;
            last = above ? heading : last;
        }
        return last != null && last.elsewhere && !(running && last.coverage);
    }
}

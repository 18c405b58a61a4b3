package reglet.reading.text;

import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Sentence;

/** The headings of a page that name models, or stand above tables of them, and which models the text below each is about. */
final class Headings {
    /** A few words without a stop: "3.2 Oxbow QM-16:", "66X Expanded flange", "Installation". */
    private static final Pattern HEADING = Pattern.compile("(?:\\d+(?:\\.\\d+)*\\.?\\s+)?(?:\\S+\\s+){0,5}\\S*[^\\s.;,]");
    /** "2. " before "Build-up of MU-2". */
    private static final Pattern NUMBER = Pattern.compile("\\s*(?:\\d{1,2}[.)]\\s*)?");
    private static final int RUN_IN = 3;
    /** Words of a heading in bold letters at most, which may say more of what it is of: "RS Series staples – for wood framing". */
    private static final int LONGEST_HEADING = 14;

    private final Layout layout;
    private final Told told;
    private final boolean parted;
    private final Map<Sentence, Set<String>> tabled;

    Headings(Layout layout, Told told) {
        this.layout = layout;
        this.told = told;
        // one heading with a model's name may be the sheet's own title, with several each is of its own
        this.parted = layout.sentences().stream().filter(this::isHeading).map(one -> told.headed(one.cell().text())).filter(models ->
            !models.isEmpty()).count() > 1;
        this.tabled = parted || !told.isOfSeveral() ? Map.of() : tables();
    }

    /**
     * The models that a sentence and those behind it stand below a heading of; none for all of them.
     *
     * @param headed those of the sentence before it
     */
    Set<String> from(Sentence sentence, Set<String> headed) {
        if (isHeading(sentence)) {
            return parted ? told.headed(sentence.cell().text()) : tabled.getOrDefault(sentence, Set.of());
        }
        return !parted && !headed.isEmpty() && isBelowTable(sentence, headed) ? Set.of() : headed;
    }

    /** The models that each of several headings has a table of: "Metal styles" above EF-50 and EZ-50, "Vinyl styles" above PV-50. */
    private Map<Sentence, Set<String>> tables() {
        List<Line> lines = layout.lines();
        List<Sentence> headings = layout.sentences().stream().filter(one -> one.cell().bold() && isHeading(one)).toList();
        Map<Sentence, Set<String>> tabled = new IdentityHashMap<>();
        Set<String> all = new LinkedHashSet<>();
        Sentence heading = null;
        for (Line line : lines) {
            for (Sentence one : headings) {
                heading = line.y() == one.cell().y() && line.left() == one.cell().left() ? one : heading;
            }
            String model = told.model(line);
            if (!model.isEmpty() && heading != null) {
                if (!all.add(model)) {
                    // a second table of the same models
                    return Map.of();
                }
                tabled.computeIfAbsent(heading, one -> new LinkedHashSet<>()).add(model);
            }
        }
        return tabled.size() < 2 ? Map.of() : tabled;
    }

    /** What stands below a table may be said of anything. */
    private boolean isBelowTable(Sentence sentence, Set<String> models) {
        return layout.lines().stream().anyMatch(line -> line.y() < sentence.cell().y() && models.contains(told.model(line)));
    }

    /** Whether a sentence is a heading: a few words on a line of their own, or very few before others, and not above a column. */
    private boolean isHeading(Sentence sentence) {
        Cell cell = sentence.cell();
        boolean runIn = cell.text().strip().split("\\s+").length <= RUN_IN;
        // "Wire: 16 gauge, .0625 in." and "• Zinc electroplated" say something of what the heading above them names
        boolean heads = (HEADING.matcher(cell.text()).matches() || isBold(cell)) && !cell.text().contains(": ") && !Titles.ITEM
            .matcher(cell.text()).lookingAt();
        String number = sentence.before();
        // a name of two lines beside the middle of its row heads nothing
        boolean row = layout.lines().stream().anyMatch(line -> line.cells().size() > 1 && Math.abs(line.y() - cell.y()) < cell.size());
        return NUMBER.matcher(number).matches() && heads && !row && layout.lines().stream().anyMatch(line -> line.cells().size() == 1
            && Math.abs(line.y() - cell.y()) < cell.size() / 4 && (number.isBlank() ? line.left() == cell.left() : line.left() < cell
                .left() && line.right() >= cell.right() - 1) && (runIn || line.text().strip().length() <= cell.text().strip().length()
                    + number.length() + 1));
    }

    private static boolean isBold(Cell cell) {
        return cell.bold() && !cell.text().strip().endsWith(".") && cell.text().strip().split("\\s+").length <= LONGEST_HEADING;
    }
}

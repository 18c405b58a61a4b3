package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.reading.page.Layout.Line;
import reglet.reading.words.UnitSpelling;

/** Lines put together to the rows of tables: a cell may be broken over several lines. */
public final class Rows {
    /** Of the size of the letters: lines nearer than this may be one row. */
    private static final double TIGHT = 1.42;
    /** As TIGHT, where the words tell that the lower line goes on with a label. */
    private static final double SPACED = 1.6;
    private static final int MOST_LINES = 5;
    private static final double WOVEN = 0.75;
    /** Of the gaps within a stretch of lines: a gap that sets it apart from others. */
    private static final double APART = 1.3;
    /** Of the size of the lower letters: lines of one heading are no further apart. */
    private static final double LED = 1.3;
    private static final double ALIKE = 0.7;
    /** A bold title above the headings of columns needs to be larger but a little. */
    private static final double TITLED = 0.9;
    private static final int SPANNED = 3;
    /** Words of a sentence at least. */
    private static final int SENTENCE = 6;
    private static final int FAR = 4;
    private static final double TITLE = 13;
    /** Heads the first column of a table by itself. */
    private static final Pattern ITEMS = Pattern.compile("(?:Item|Part|Model|Style|Product|Profile|Property|Size)(?: [Nn]o\\.?)?");
    private static final Pattern NAME = Pattern.compile("(?s)\\p{L}.*\\p{L}{4}.*");

    /** A standard in brackets at the end of a line. */
    private static final Pattern BRACKETS = Pattern.compile("[^()]{0,30}\\((?:ASTM|ANSI|AAMA|AATCC|ISO|EN)\\s?-?[A-Z]?\\s?-?\\d[^()]*\\)");
    private static final Pattern STANDARD = Pattern.compile("(?:ASTM|ANSI|AAMA|AATCC|ISO|EN)\\s?-?[A-Z]?\\s?-?\\d+");

    private final Layout layout;
    private final List<Line> lines;
    private final Set<Integer> used = new HashSet<>();

    private Rows(Layout layout) {
        this.layout = layout;
        this.lines = layout.lines();
    }

    public static List<Line> of(Layout layout) {
        Rows rows = new Rows(layout);
        List<Line> all = new ArrayList<>();
        for (int i = 0; i < rows.lines.size(); i++) {
            int end = rows.spanned(i);
            if (end > i) {
                all.addAll(rows.labelled(i, end));
                i = end;
            } else if (rows.used.add(i)) {
                all.add(rows.from(i));
            }
        }
        return all;
    }

    /** The last line of three of which the middle one is the label of the other two, each a row of its own; else the first line. */
    private int spanned(int first) {
        if (first + 2 >= lines.size() || used.contains(first)) {
            return first;
        }
        Line label = lines.get(first + 1);
        double size = label.size();
        boolean near = gap(first + 1) < 0.8 * size && gap(first + 2) < 0.8 * size;
        double upper = lines.get(first).y();
        double lower = lines.get(first + 2).y();
        boolean rows = Stream.of(lines.get(first), lines.get(first + 2)).allMatch(line -> line.left() > label.cells().get(0).right()
            // one cell may be ruled off from the other, where the label is not
            && (isWhole(line) || line.cells().size() == 1 && layout.ruledBetween(upper, lower, line.cells().get(0).middle())
                && !layout.ruledBetween(upper, lower, label.cells().get(0).middle())));
        // a unit may stand beside the label, or what holds for both, where neither row has anything
        boolean beside = label.cells().stream().skip(1).allMatch(cell -> under(lines.get(first), cell) == null && under(lines.get(first
            + 2), cell) == null);
        return near && rows && beside ? first + 2 : first;
    }

    private List<Line> labelled(int first, int last) {
        List<Line> all = new ArrayList<>();
        for (int i = first; i <= last; i += 2) {
            List<Cell> cells = new ArrayList<>(lines.get(first + 1).cells());
            cells.addAll(lines.get(i).cells());
            cells.sort(Comparator.comparingDouble(Cell::left));
            all.add(new Line(List.copyOf(cells), lines.get(i).y(), lines.get(i).size()));
        }
        return all;
    }

    private Line from(int first) {
        Line row = lines.get(first);
        int end = Math.max(block(first), woven(first));
        if (end > first) {
            for (int i = first + 1; i <= end; i++) {
                used.add(i);
                row = joined(row, lines.get(i));
            }
            return row;
        }
        double last = row.y();
        int count = 1;
        for (int i = first + 1; i < lines.size() && count < MOST_LINES && lines.get(i).y() >= last
            && lines.get(i).y() - last <= (isShownBy(row.cells().get(0), lines.get(i).cells().get(0)) ? SPACED : TIGHT) * row.size();
            i++) {
            Line next = lines.get(i);
            if (used.contains(i) || !boxed(row, next) && (next.right() < row.left() || next.left() > row.right() + 200)) {
                continue;
            }
            if (!joins(row, next, last, first)) {
                break;
            }
            used.add(i);
            row = joined(row, next);
            last = next.y();
            count++;
        }
        return row;
    }

    /**
     * The last line of a row whose label stands beside the middle of several lines: a stretch set apart above and below, with words
     * in its left column on one line alone. The line itself when there is no such stretch.
     */
    private int block(int first) {
        double size = lines.get(first).size();
        double within = 0;
        int last = first;
        while (last + 1 < lines.size() && last - first < MOST_LINES && gap(last + 1) <= TIGHT * size && alike(lines.get(first),
            lines.get(last + 1))) {
            within = Math.max(within, gap(++last));
        }
        if (last == first || gap(first) < APART * within || gap(last + 1) < APART * within) {
            return first;
        }
        List<Line> stretch = lines.subList(first, last + 1);
        Line labelled = stretch.stream().min(Comparator.comparingDouble(Line::left)).orElseThrow();
        double end = labelled.cells().get(0).right();
        // what stands lower than all lines beside it heads what comes below
        boolean one = labelled != stretch.get(stretch.size() - 1) && stretch.stream().allMatch(line -> line == labelled || line
            .left() > end);
        boolean ruled = stretch.stream().skip(1).anyMatch(line -> line.cells().stream().anyMatch(cell -> layout.ruledBetween(
            stretch.get(0).y() - 0.1 * size, line.y() - 0.5 * size, cell.middle())));
        boolean taken = stretch.stream().anyMatch(line -> used.contains(lines.indexOf(line)) && line != stretch.get(0));
        return one && !ruled && !taken && labelled.cells().get(0).text().matches("(?s).*\\p{L}.*") ? last : first;
    }

    /**
     * The last of three lines of one row whose cells are centred upright: those of two lines stand above and below those of one. The line
     * itself when it is none.
     */
    private int woven(int first) {
        if (first + 2 >= lines.size() || used.contains(first + 1) || used.contains(first + 2)) {
            return first;
        }
        Line row = lines.get(first);
        Line middle = lines.get(first + 1);
        Line below = lines.get(first + 2);
        double size = row.size();
        boolean near = gap(first + 1) < WOVEN * size && gap(first + 2) < WOVEN * size && below.size() > ALIKE * size
            && below.size() < size + 1;
        boolean own = near && !(isWhole(row) && isWhole(below)) && middle.cells().stream().allMatch(cell -> under(row, cell) == null
            && under(below, cell) == null) && below.cells().stream().allMatch(cell -> under(row, cell) != null);
        return own ? first + 2 : first;
    }

    /** How far a line is below the one above it. */
    private double gap(int index) {
        return index <= 0 || index >= lines.size() ? Double.POSITIVE_INFINITY
            : lines.get(index).y() < lines.get(index - 1).y() ? Double.POSITIVE_INFINITY
                : lines.get(index).y() - lines.get(index - 1).y();
    }

    private boolean joins(Line row, Line next, double last, int first) {
        Cell start = next.cells().get(0);
        if (!alike(row, next) || haveOwnStandards(row, next)) {
            return false;
        }
        if (row.cells().size() == 1 && next.cells().size() == 1 && (layout.between(start.middle(), next.y())
            .length == 0 || next.text().contains(": ") || row.text().matches(".*: .*|[^\\p{Ll}]*\\p{L}[^\\p{Ll}]*"))) {
            return false;
        }
        if (row.cells().size() == 1 && (headsText(row.cells().get(0), next) || next.cells().size() > 1 && isSentence(row.text()))) {
            return false;
        }
        if (next.cells().size() > row.cells().size() && next.cells().stream().allMatch(cell -> UnitSpelling.isUnit(cell.text()))) {
            // units of columns, ruled off below what heads two of them
            return !isWhole(row);
        }
        for (Cell cell : next.cells()) {
            if (layout.ruledBetween(last - 0.1 * row.size(), next.y() - 0.5 * next.size(), cell.middle())) {
                return false;
            }
        }
        if (runsOn(row, next)) {
            return false;
        }
        if (row.cells().size() > 1 && next.cells().size() == 1 && (closes(under(row, start), start) || completes(row.cells().get(0), start,
            next.y() - last))) {
            return true;
        }
        if (row.cells().size() > 1 && next.cells().stream().allMatch(cell -> under(row, cell) != null && under(row, cell).text()
            .endsWith("±"))) {
            return true;
        }
        if (row.cells().size() == 1 && row.cells().get(0).bold() && next.cells().size() > 2 && ITEMS.matcher(start.text()).matches()
            && !ITEMS.matcher(row.text()).matches()) {
            // "Rolls" above "Item | Width | Case"
            return false;
        }
        if (row.cells().size() == 1 && next.cells().size() > 2 && next.y() - last > LED * next.size() && Character.isUpperCase(next.text()
            .charAt(0))) {
            // the title of a table without a rule above its headings
            return false;
        }
        if (boxed(row, next)) {
            return !(isWhole(row) && isWhole(next)) && !areApart(row, next) && !isSpanning(row, next) && !isSpanning(next, row)
                && !isOfRows(row, next);
        }
        boolean further = row.cells().size() > 2 && next.cells().size() < row.cells().size() && isSetApart(first);
        return (further || isLoose(first)) && !isWhole(next) && !areLabelled(row, next) && next.cells().stream().allMatch(cell -> under(row,
            cell) != null);
    }

    /** Whether a bold line stands above one line of plain words. */
    private static boolean headsText(Cell bold, Line next) {
        return bold.bold() && next.cells().size() == 1 && !next.cells().get(0).bold() && next.left() < bold.right();
    }

    private static boolean isSentence(String text) {
        return text.endsWith(".") && text.split("\\s+").length >= SENTENCE;
    }

    /** Whether a line of its own runs from below a label far past the value beside it: what comes next, and no further words of either. */
    private static boolean runsOn(Line row, Line next) {
        return row.cells().size() == 2 && next.cells().size() == 1 && next.left() < row.cells().get(0).right() && next.right() > row
            .right() + FAR * row.size() && row.cells().get(0).text().endsWith(":");
    }

    /** "A)" below "Permeance (ASTM E96, Method": brackets that are opened in one line and closed in the next. */
    private static boolean closes(Cell above, Cell below) {
        return above != null && open(above.text()) > 0 && open(below.text()) < 0 && Math.abs(above.left() - below.left()) < below.size();
    }

    /** "(ASTM E96)" or "24 h (ASTM C67)" right below a label, which ends with a comma where what follows isn't all in brackets. */
    private static boolean completes(Cell label, Cell below, double gap) {
        boolean goesOn = isShownBy(label, below);
        boolean near = gap <= (goesOn ? SPACED : LED) * below.size() && Math.abs(label.left() - below.left()) < 1
            && below.size() > label.size() - 1;
        return near && (goesOn || BRACKETS.matcher(below.text()).matches()) && (below.text().startsWith("(") || label.text().endsWith(","));
    }

    /** "Ember and flame intrusion," above "ASTM E2886". */
    private static boolean isShownBy(Cell label, Cell below) {
        return label.text().endsWith(",") && STANDARD.matcher(below.text()).matches();
    }

    private static long open(String text) {
        return text.chars().filter(letter -> letter == '(').count() - text.chars().filter(letter -> letter == ')').count();
    }

    /** Whether a line may be of one row with the one below it: a title in larger letters is no part of what stands below. */
    private static boolean alike(Line line, Line below) {
        if (line.cells().size() > 1) {
            // letters of a figure may stand beside a title
            return below.size() > ALIKE * line.cells().get(0).size() || line.cells().get(0).size() < TITLE
                || !NAME.matcher(line.cells().get(0).text()).matches();
        }
        return below.size() > (below.cells().size() > 1 && line.text().matches("[^\\d:]{3,40}")
            && line.cells().get(0).bold() ? TITLED : ALIKE) * line.size();
    }

    /** Whether the same two level rules enclose both. */
    private boolean boxed(Line row, Line next) {
        double[] box = layout.between(next.cells().get(0).middle(), next.y());
        return box.length == 2 && row.y() > box[0] && box[1] - box[0] < MOST_LINES * 1.5 * row.size() + 12;
    }

    /** Whether what is enclosed are rows of one line each: a label and a value in each of them, and a number in some. */
    private boolean isOfRows(Line row, Line next) {
        double[] box = layout.between(next.cells().get(0).middle(), next.y());
        // a heading may stand above them in the same box
        List<Line> within = lines.stream().filter(line -> line.y() > box[0] && line.y() < box[1] && line.cells().size() > 1).toList();
        return within.size() >= SPANNED && within.stream().anyMatch(Rows::isWhole) && within.stream().allMatch(line -> line.cells().size()
            == 2 && Math.abs(line.left() - row.left()) < 1 && Math.abs(line.cells().get(1).left() - row.cells().get(row.cells().size() - 1)
                .left()) < 1 && Character.isUpperCase(line.text().charAt(0)));
    }

    /** Whether a line says something by itself: words and, in another cell, a number. */
    private static boolean isWhole(Line line) {
        return line.cells().size() > 1 && line.cells().stream().skip(1).anyMatch(cell -> cell.text()
            .matches("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d.*"));
    }

    /** Whether two lines in one box are rows of their own: "Material | PVC" above "Leg | 3 in.", or "Content: 7 %" above "Coat: clear". */
    private static boolean areApart(Line row, Line next) {
        boolean labels = row.cells().size() == 2 && next.cells().size() == 2 && (isWhole(row) || isWhole(next))
            && Character.isUpperCase(row.text().charAt(0)) && Character.isUpperCase(next.text().charAt(0));
        return labels || areLabelled(row, next);
    }

    /** Whether two lines of as many cells each name a standard in the same column: "ASTM D146 | 19 lbf/in" above "ASTM E2556 | Type I". */
    private static boolean haveOwnStandards(Line row, Line next) {
        return row.cells().size() > 2 && next.cells().size() == row.cells().size() && Character.isUpperCase(next.text().charAt(0))
            && next.cells().stream().filter(cell -> STANDARD.matcher(cell.text()).lookingAt()).map(cell -> under(row, cell))
                .anyMatch(above -> above != null && STANDARD.matcher(above.text()).lookingAt());
    }

    /** Whether a cell of one line runs across many of another: running text or a title above the headings of columns. */
    private static boolean isSpanning(Line one, Line other) {
        return one.cells().stream().anyMatch(cell -> other.cells().stream().filter(below -> below.left() < cell.right() && below.right()
            > cell.left()).count() >= SPANNED);
    }

    /** Whether each cell of two lines is a label, a colon and a value. */
    private static boolean areLabelled(Line row, Line next) {
        return Stream.concat(row.cells().stream(), next.cells().stream()).allMatch(cell -> cell.text().contains(": "));
    }

    /** Whether rows hereabouts stand further apart than the lines within them. */
    private boolean isLoose(int index) {
        double size = lines.get(index).size();
        int loose = 0;
        int tight = 0;
        for (int i = Math.max(1, index - 6); i < Math.min(lines.size(), index + 8); i++) {
            double gap = lines.get(i).y() - lines.get(i - 1).y();
            loose += gap > 1.5 * size && gap < 4 * size ? 1 : 0;
            tight += gap <= TIGHT * size ? 1 : 0;
        }
        return loose > tight;
    }

    /** Whether a stretch of a few lines that begins here is set apart from what stands above and below it. */
    private boolean isSetApart(int first) {
        double within = 0;
        int last = first;
        while (last + 1 < lines.size() && last - first < MOST_LINES && gap(last + 1) <= TIGHT * lines.get(first).size()) {
            within = Math.max(within, gap(++last));
        }
        return last > first && gap(first) >= APART * within && gap(last + 1) >= APART * within;
    }

    private static Cell under(Line row, Cell cell) {
        for (Cell above : row.cells()) {
            if (Math.min(above.right(), cell.right()) - Math.max(above.left(), cell.left()) > 0.3 * Math.min(above.right() - above.left(),
                cell.right() - cell.left())) {
                return above;
            }
        }
        return null;
    }

    private Line joined(Line row, Line next) {
        List<Cell> cells = new ArrayList<>(row.cells());
        for (Cell cell : next.cells()) {
            Cell above = under(new Line(cells, row.y(), row.size()), cell);
            // a unit may be ruled off below what is measured in it
            if (above != null && (UnitSpelling.isUnit(cell.text()) || !layout.ruledBetween(above.low() - 0.1 * row.size(), cell.y() - 0.5
                * cell.size(), cell.middle()))) {
                cells.set(cells.indexOf(above), above.with(cell));
            } else {
                cells.add(cell);
            }
        }
        cells.sort(Comparator.comparingDouble(Cell::left));
        return new Line(List.copyOf(cells), row.y(), row.size());
    }
}

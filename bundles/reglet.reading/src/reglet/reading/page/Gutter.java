package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Rule;

/**
 * Tells a page's two columns apart, where running text stands beside a table: its lines say nothing of the rows that happen to stand at
 * their height. What is left of the gutter comes first, then what is right of it.
 */
final class Gutter {
    private static final int PROSE = 5;
    private static final int LEAST = 4;
    private static final int STRONG = 6;
    private static final double NEAR = 2.5;
    /** Points that a table or a panel in a column is set in. */
    private static final double INSET = 8;
    private static final double ALIGNED = 0.8;
    private static final double SET_IN = 25;
    private static final int LEAST_WIDE = 2;
    /** Words of a label of a table at most. */
    private static final int LONGEST_LABEL = 7;
    /** Of what stands right of the gutter in rows of a table across it: how much of it are values at least. */
    private static final double VALUED = 0.6;
    /** Rows that stand across both columns, from which on they are a table of their own. */
    private static final int LEAST_ACROSS = 4;
    private static final double GOES_ON = 1.9;
    /** Of the letters' size, how far apart lines of one text are at most. */
    private static final double LEADING = 1.6;
    /** Points that a rule reaches into both columns at least. */
    private static final double ACROSS = 40;
    private static final int LONGEST_HEADING = 45;
    /** Points from the right column at which a line of the left one is broken off at most. */
    private static final double WRAPPED = 70;

    /** "1,300 %", "27 lb/in. (4.7 N/mm)", "none": no item of a numbered list. */
    private static final Pattern VALUE = Pattern.compile("(?!\\d+[.)]\\s)(?:[<>≥≤±+−-]?\\s?\\d.{0,26}"
        + "|\\p{L}{2,12}(?: ?/? ?\\p{L}{2,12})?)");
    /** Letters of the name of a model at the head of a table's column. */
    private static final int SHORT = 16;

    /** Columns of text beside each other, and stretches of a page with columns of their own, are parted so often at most. */
    private static final int DEEPEST = 3;

    private final List<Rule> level;

    private Gutter(List<Rule> level) {
        this.level = level;
    }

    /** @param level level rules of the page: one that crosses what parts two columns ends them */
    static List<Line> apart(List<Line> lines, List<Rule> level) {
        return new Gutter(level).apart(lines, DEEPEST);
    }

    private List<Line> apart(List<Line> lines, int deepest) {
        Optional<List<List<Line>>> tables = deepest == 0 ? Optional.empty() : Beside.apart(lines, level);
        if (tables.isPresent()) {
            return tables.get().stream().flatMap(part -> apart(part, deepest - 1).stream()).toList();
        }
        Optional<Double> gutter = deepest == 0 || lines.size() < LEAST ? Optional.empty() : find(lines);
        return gutter.map(x -> split(lines, x).stream().flatMap(part -> apart(part, deepest - 1).stream()).toList()).orElse(lines);
    }

    private Optional<Double> find(List<Line> lines) {
        double best = 0;
        int most = 0;
        for (Line line : lines) {
            for (Cell cell : line.cells().subList(1, line.cells().size())) {
                double x = cell.left();
                int starts = (int) lines.stream().filter(other -> startsAt(other, x)).count();
                if (starts > most && isBesideProse(lines, x)) {
                    most = starts;
                    best = x;
                }
            }
        }
        return most < LEAST ? Optional.empty() : Optional.of(best);
    }

    private static boolean startsAt(Line line, double x) {
        return line.cells().stream().anyMatch(cell -> cell.left() > x - NEAR && cell.left() < x + INSET);
    }

    private static boolean crosses(Line line, double x) {
        return line.cells().stream().anyMatch(cell -> cell.left() < x - NEAR && cell.right() > x - NEAR);
    }

    /** Whether two columns end at a line: it crosses what parts them, or it is a row of a table that stands across both. */
    private boolean isEnd(List<Line> lines, int index, double x) {
        if (crosses(lines.get(index), x)) {
            return true;
        }
        int from = index;
        int to = index;
        while (isAcross(lines.get(index), x) && from > 0 && to - from < LEAST_ACROSS && isAcross(lines.get(from - 1), x)) {
            from--;
        }
        while (isAcross(lines.get(index), x) && to + 1 < lines.size() && to - from < LEAST_ACROSS && isAcross(lines.get(to + 1), x)) {
            to++;
        }
        return to - from + 1 >= LEAST_ACROSS;
    }

    /** Whether a rule above a line crosses what parts two columns: that of a table as wide as both, or one below a heading. */
    private boolean isRuled(List<Line> lines, int index, double x) {
        double above = lines.get(index - 1).y();
        double below = lines.get(index).y();
        return level.stream().anyMatch(rule -> rule.y1() > above && rule.y1() < below && rule.x1() < x - ACROSS && rule.x2() > x + ACROSS);
    }

    /** Whether a line has several cells on either side, or a label and values, or models, and none where the right column begins. */
    private static boolean isAcross(Line line, double x) {
        long left = line.cells().stream().filter(cell -> cell.left() < x - NEAR).count();
        long right = line.cells().size() - left;
        Cell last = line.cells().get(line.cells().size() - 1);
        if (left > 1 && right == 1 && VALUE.matcher(last.text()).matches()) {
            // a row of three, though its values may begin where the right column does
            return true;
        }
        return right > 0 && !startsAt(line, x) && (left > 1 && right > 1
            || left == 0 && right > 1 && last.text().length() <= SHORT
            || left == 1 && Character.isUpperCase(line.cells().get(0).text().codePointAt(0)) && VALUE.matcher(last.text()).matches());
    }

    private boolean isBesideProse(List<Line> lines, double x) {
        int first = first(lines, x);
        int last = last(lines, x);
        int prose = 0;
        int running = 0;
        int right = 0;
        int both = 0;
        for (int i = first; i <= last; i++) {
            Cell left = lines.get(i).cells().get(0);
            boolean alone = left.right() < x && (lines.get(i).cells().size() == 1 || lines.get(i).cells().get(1).left() > x - NEAR);
            boolean words = alone && left.text().split("\\s+").length >= PROSE;
            prose += words ? 1 : 0;
            running += words && Character.isLowerCase(left.text().charAt(0)) ? 1 : 0;
            boolean here = startsAt(lines.get(i), x);
            right += here ? 1 : 0;
            both += here && left.right() < x ? 1 : 0;
        }
        return prose >= LEAST && running >= 2 && (both < ALIGNED * right || running >= STRONG);
    }

    /** The lines round those that start at a place which no line crosses. */
    private int first(List<Line> lines, double x) {
        int first = start(lines, x);
        while (first > 0 && !isEnd(lines, first - 1, x) && !isRuled(lines, first, x)) {
            first--;
        }
        return first;
    }

    private int last(List<Line> lines, double x) {
        int last = start(lines, x);
        while (last + 1 < lines.size() && !isEnd(lines, last + 1, x) && !isRuled(lines, last + 1, x)) {
            last++;
        }
        while (last > 0 && last + 1 < lines.size() && areHeads(lines.get(last), x) && (isRuled(lines, last + 1, x) || !startsAt(lines.get(
            last), x))) {
            // what heads a table as wide as both columns
            last--;
        }
        boolean table = last + 1 < lines.size() && (isAcross(lines.get(last + 1), x) || lines.get(last + 1).cells().size() > 2);
        while (table && last > 0 && isOfOneTable(lines.get(last), lines.get(last + 1))) {
            // rows of the table across both columns whose last cell is a longer text, and its heading
            last--;
        }
        return last;
    }

    /** Whether a line has short words on both sides. */
    private static boolean areHeads(Line line, double x) {
        return line.left() < x - NEAR && line.right() > x && line.cells().size() > 1 && line.cells().stream().allMatch(cell -> cell.text()
            .length() <= SHORT);
    }

    private static boolean isOfOneTable(Line row, Line next) {
        return row.cells().size() > 2 && next.cells().size() > 2 && Math.abs(row.left() - next.left()) < NEAR
            && Math.abs(row.cells().get(1).left() - next.cells().get(1).left()) < NEAR;
    }

    private int start(List<Line> lines, double x) {
        int best = 0;
        int most = -1;
        for (int i = 0; i < lines.size(); i++) {
            int run = 0;
            for (int j = i; j < lines.size() && !isEnd(lines, j, x) && (j == i || !isRuled(lines, j, x)); j++) {
                run += startsAt(lines.get(j), x) ? 1 : 0;
            }
            if (run > most) {
                most = run;
                best = i;
            }
        }
        return best;
    }

    /** What stands above two columns, the left one, the right one, and what stands below them. */
    private List<List<Line>> split(List<Line> lines, double x) {
        int first = first(lines, x);
        int last = last(lines, x);
        last = aboveTable(lines, first, aboveWide(lines, first, last, x), x);
        int foot = last;
        while (last > first && isLeft(lines.get(last), x)) {
            // what stands below the foot of the column beside it comes after both
            last--;
        }
        boolean table = !isAlone(leftOf(lines, last, x), x);
        while (last < foot && (goesOn(lines, last, table, x) || isWrapped(lines.subList(last + 1, foot + 1), x))) {
            // but for a table's rows, or text, that go on there
            last++;
        }
        while (first < last && isWide(lines.get(first), x)) {
            first++;
        }
        List<Line> lefts = new ArrayList<>();
        List<Line> right = new ArrayList<>();
        for (Line line : lines.subList(first, last + 1)) {
            part(line.cells().stream().filter(cell -> cell.left() < x - NEAR).toList(), lefts);
            part(line.cells().stream().filter(cell -> cell.left() >= x - NEAR).toList(), right);
        }
        return List.of(lines.subList(0, first), lefts, right, lines.subList(last + 1, lines.size()));
    }

    /** Whether the left column goes on below the foot of the right one: with a row of its table, or with a line of its text. */
    private static boolean goesOn(List<Line> lines, int last, boolean table, double x) {
        Line next = lines.get(last + 1);
        Line above = leftOf(lines, last, x);
        double apart = next.y() - above.y();
        boolean text = isAlone(above, x) && Math.abs(above.left() - next.left()) < NEAR && above.size() == next.size()
            && above.cells().get(0).text().split("\\s+").length >= PROSE && apart < LEADING * next.size();
        return text || table && apart < GOES_ON * above.size();
    }

    /** Whether text among some lines is as narrow as the left column: one goes on on the next as it reaches the right one. */
    private static boolean isWrapped(List<Line> below, double x) {
        for (int i = 0; i + 1 < below.size(); i++) {
            Line line = below.get(i);
            Line next = below.get(i + 1);
            if (line.cells().size() == 1 && line.right() > x - WRAPPED && line.text().split("\\s+").length >= PROSE && next.cells()
                .size() == 1 && Math.abs(next.left() - line.left()) < NEAR && Character.isLowerCase(next.text().charAt(0))) {
                return true;
            }
        }
        return false;
    }

    /** The line, at some line or above it, that has something left of a place. */
    private static Line leftOf(List<Line> lines, int last, double x) {
        int at = last;
        while (at > 0 && lines.get(at).left() >= x - NEAR) {
            at--;
        }
        return lines.get(at);
    }

    /** The last line above the rows of a table as wide as both columns, and above its heading. */
    private static int aboveWide(List<Line> lines, int first, int last, double x) {
        int at = last;
        int wide = 0;
        boolean heading = false;
        while (at > first && (isWide(lines.get(at), x) || !heading && isHeading(lines.get(at), x))) {
            heading = !isWide(lines.get(at), x);
            wide += heading ? 0 : 1;
            at--;
        }
        return wide < LEAST_WIDE ? last : at;
    }

    /**
     * The last line above a table at the foot of both columns, one of whose columns may begin where the right column of text does. Its
     * rows have a label and more on the left and values on the right, and between them stand but short words.
     */
    private static int aboveTable(List<Line> lines, int first, int last, double x) {
        int rows = 0;
        int values = 0;
        int rights = 0;
        int top = last + 1;
        // rows below that already ended the columns
        for (int at = last + 1; at < lines.size() && isRow(lines.get(at), x); at++) {
            rows++;
        }
        for (int at = last; at > first && (isRow(lines.get(at), x) || isShort(lines.get(at), x)); at--) {
            if (isRow(lines.get(at), x)) {
                List<Cell> right = lines.get(at).cells().stream().filter(cell -> cell.left() >= x - NEAR).toList();
                rows++;
                rights += right.size();
                values += (int) right.stream().filter(cell -> VALUE.matcher(cell.text()).matches() || cell.text().length() == 1).count();
                top = at;
            }
        }
        return rows >= LEAST_ACROSS && values >= VALUED * rights ? top - 1 : last;
    }

    /** Whether a line has a label and more left of a place, and short words right of it which aren't a label and its value. */
    private static boolean isRow(Line line, double x) {
        List<Cell> right = line.cells().stream().filter(cell -> cell.left() >= x - NEAR).toList();
        boolean list = right.size() == 2 && Character.isUpperCase(right.get(0).text().codePointAt(0)) && right.get(1).text().matches(
            ".*\\d.*");
        return !right.isEmpty() && line.cells().size() - right.size() > 1 && !list && line.cells().stream().skip(1)
            .allMatch(Gutter::isShort) && line.cells().get(0).text().length() < LONGEST_HEADING + SHORT;
    }

    private static boolean isShort(Line line, double x) {
        return line.cells().stream().allMatch(Gutter::isShort) && (isLeft(line, x) || line.left() >= x - NEAR && line.cells().size() > 1);
    }

    private static boolean isShort(Cell cell) {
        return cell.text().split("\\s+").length <= LONGEST_LABEL;
    }

    /** Whether a line has words on both sides and none where the right column begins, or a little in. */
    private static boolean isWide(Line line, double x) {
        return line.left() < x && line.right() > x && line.cells().stream().noneMatch(cell -> cell.left() >= x - NEAR && cell.left() < x
            + SET_IN);
    }

    private static boolean isLeft(Line line, double x) {
        return line.cells().stream().allMatch(cell -> cell.left() < x - NEAR);
    }

    /** Whether not more than one cell of a line stands left of a place: no row of a table. */
    private static boolean isAlone(Line line, double x) {
        return line.cells().stream().filter(cell -> cell.left() < x - NEAR).count() < 2;
    }

    private static boolean isHeading(Line line, double x) {
        return line.cells().size() == 1 && line.right() < x && line.text().length() <= LONGEST_HEADING;
    }

    /** Adds the cells on one side of a line: at their own height, for letters of another size may stand at nearly the same height. */
    static void part(List<Cell> cells, List<Line> to) {
        cells.stream().max(Comparator.comparingDouble(Cell::size)).ifPresent(largest -> to.add(new Line(cells, largest.y(), largest
            .size())));
    }
}

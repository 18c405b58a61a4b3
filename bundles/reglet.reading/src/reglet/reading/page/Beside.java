package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Rule;

/** Tells tables apart that stand beside each other, each ruled for itself: rows of the one say nothing of those at their height. */
final class Beside {
    /** Points that ends of the rules of one table differ by at most. */
    private static final double EVEN = 3;
    /** Points between two tables at least. */
    private static final double GAP = 7;
    private static final int LEAST_RULES = 3;
    private static final int LEAST_ROWS = 2;
    /** Lines of two tables without rules between their rows at least. */
    private static final int LEAST_LINES = 4;
    /** Points of the height that two tables have in common at least. */
    private static final double COMMON = 25;
    /** Points that their titles stand above them at most. */
    private static final double TITLE = 30;

    private Beside() {
    }

    /** A table by its level rules; one that has but a rule below its heading, as dashed ones are no rules, has no bottom. */
    private record Box(double left, double right, double top, double bottom) {
        boolean isOpen() {
            return Double.isInfinite(bottom);
        }

        boolean hasRows(List<Line> lines) {
            return lines.stream().filter(line -> line.y() > top && line.y() < bottom && line.cells().stream().filter(cell -> cell
                .left() > left - EVEN && cell.right() < right + EVEN).count() > 1).count() >= LEAST_ROWS;
        }
    }

    /** Whether a line has nothing beside two tables: a wider one has its labels there, and its columns are headed two by two. */
    private static boolean isWithin(Line line, Box left, Box right) {
        return line.left() > left.left - EVEN && line.right() < right.right + EVEN;
    }

    /** What stands above two tables, the left one, the right one, and what stands below them; empty where none stand so. */
    static Optional<List<List<Line>>> apart(List<Line> lines, List<Rule> level) {
        List<Box> boxes = boxes(level).stream().filter(box -> box.hasRows(lines)).toList();
        for (Box left : boxes) {
            for (Box right : boxes) {
                if (left.isOpen() != right.isOpen() || left.isOpen() && Math.abs(left.top - right.top) > COMMON) {
                    continue;
                }
                double common = Math.min(left.bottom, right.bottom) - Math.max(left.top, right.top);
                if (right.left - left.right >= GAP && common >= COMMON) {
                    Optional<List<List<Line>>> parts = split(lines, level, left, right);
                    if (parts.isPresent()) {
                        return parts;
                    }
                }
            }
        }
        return titled(lines);
    }

    /** Below two titles in one line: a list on one side, and on the other a table whose heading, in bold letters, stands in its first
     * line. */
    private static Optional<List<List<Line>>> titled(List<Line> lines) {
        for (int i = 0; i + LEAST_LINES < lines.size(); i++) {
            List<Cell> titles = lines.get(i).cells();
            if (titles.size() != 2 || !titles.stream().allMatch(Cell::bold)) {
                continue;
            }
            double x = titles.get(1).left() - EVEN;
            List<Cell> list = side(lines.get(i + 1), x, true);
            List<Cell> heads = side(lines.get(i + 1), x, false);
            long rows = lines.subList(i + 1, Math.min(lines.size(), i + 1 + LEAST_LINES)).stream().filter(line -> side(line, x,
                true).size() == 2
                && side(line, x, false).size() == heads.size()).count();
            boolean headed = rows == LEAST_LINES && heads.size() > 1 && heads.stream().allMatch(Cell::bold) && list.stream().noneMatch(
                Cell::bold) && list.get(0).left() < titles.get(0).right() && heads.get(0).left() < titles.get(1).right();
            int last = i;
            while (headed && last + 1 < lines.size() && isFree(lines.get(last + 1), x) && !isTitle(lines.get(last + 1))) {
                last++;
            }
            if (last - i >= LEAST_LINES) {
                return sides(lines, i, last, x);
            }
        }
        return Optional.empty();
    }

    private static List<Cell> side(Line line, double x, boolean left) {
        return line.cells().stream().filter(cell -> left ? cell.right() < x : cell.left() > x).toList();
    }

    private static boolean isTitle(Line line) {
        return line.cells().size() == 1 && line.cells().get(0).bold();
    }

    private static boolean isFree(Line line, double x) {
        return line.cells().stream().noneMatch(cell -> cell.left() < x && cell.right() > x);
    }

    private static Optional<List<List<Line>>> split(List<Line> lines, List<Rule> level, Box left, Box right) {
        double x = (left.right + right.left) / 2;
        double top = Math.min(left.top, right.top);
        double bottom = left.isOpen() ? level.stream().filter(rule -> rule.y1() > top + EVEN && rule.x1() < x && rule.x2() > x)
            .mapToDouble(Rule::y1).min().orElse(left.bottom) : Math.max(left.bottom, right.bottom);
        // the columns on both sides of a cell that spans rows are of one table, whose heading is ruled through
        boolean ruled = level.stream().filter(rule -> rule.x1() < x && rule.x2() > x).anyMatch(rule -> rule.y1() > top + EVEN && rule.y1()
            < bottom - EVEN || Math.abs(rule.x1() - left.left) < EVEN && Math.abs(rule.x2() - right.right) < EVEN && rule.y1() > top
                - TITLE && rule.y1() < bottom + TITLE);
        Predicate<Line> free = line -> isFree(line, x);
        int first = 0;
        while (first < lines.size() && lines.get(first).y() < Math.max(left.top, right.top)) {
            first++;
        }
        int last = first;
        if (ruled || first == lines.size() || !free.test(lines.get(first)) || left.isOpen() && !isWithin(lines.get(first), left, right)) {
            return Optional.empty();
        }
        while (first > 0 && free.test(lines.get(first - 1)) && lines.get(first - 1).y() > top - TITLE) {
            first--;
        }
        while (last + 1 < lines.size() && free.test(lines.get(last + 1)) && lines.get(last + 1).y() < bottom && (!left.isOpen()
            || isWithin(lines.get(last + 1), left, right))) {
            last++;
        }
        while (last > first && isTitle(lines.get(last))) {
            // what it heads stands below both
            last--;
        }
        if (left.isOpen() ? last - first < LEAST_LINES : lines.get(last).y() < Math.min(left.bottom, right.bottom) - TITLE) {
            // something stands across both
            return Optional.empty();
        }
        return sides(lines, first, last, x);
    }

    private static Optional<List<List<Line>>> sides(List<Line> lines, int first, int last, double x) {
        List<Line> lefts = new ArrayList<>();
        List<Line> rights = new ArrayList<>();
        for (Line line : lines.subList(first, last + 1)) {
            Gutter.part(line.cells().stream().filter(cell -> cell.left() < x).toList(), lefts);
            Gutter.part(line.cells().stream().filter(cell -> cell.left() > x).toList(), rights);
        }
        return lefts.isEmpty() || rights.isEmpty() ? Optional.empty()
            : Optional.of(List.of(lines.subList(0, first), lefts, rights, lines.subList(last + 1, lines.size())));
    }

    /** Rules of the same length one below the other. */
    private static List<Box> boxes(List<Rule> level) {
        List<Box> boxes = new ArrayList<>();
        List<Rule> left = new ArrayList<>(level);
        left.sort(Comparator.comparingDouble(Rule::y1));
        while (!left.isEmpty()) {
            Rule first = left.get(0);
            List<Rule> own = left.stream().filter(rule -> Math.abs(rule.x1() - first.x1()) < EVEN && Math.abs(rule.x2() - first.x2())
                < EVEN).toList();
            left.removeAll(own);
            double bottom = own.get(own.size() - 1).y1();
            long rules = own.stream().map(rule -> Math.round(rule.y1())).distinct().count();
            if (rules >= LEAST_RULES || bottom - first.y1() < EVEN) {
                boxes.add(new Box(first.x1(), first.x2(), first.y1(), rules >= LEAST_RULES ? bottom : Double.POSITIVE_INFINITY));
            }
        }
        return boxes;
    }
}

package reglet.reading.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.reading.page.Layout.Line;

/**
 * Takes a narrow column of short lines at the left of a page apart from what stands beside it: key figures in large letters, an address.
 * Its lines stand where they will, and none of them is the label of a row at its height. Nor is a column of text at the right of a table
 * what stands in its rows.
 */
final class Sidebar {
    /** Lines of the narrow column that stand alone, and lines beside it, at least. */
    private static final int LEAST_ALONE = 5;
    private static final int LEAST_BESIDE = 8;
    /** Rows of a table beside a column of text, cells of each, and words of most lines of the text, at least. */
    private static final int LEAST_ROWS = 5;
    private static final int LEAST_CELLS = 3;
    private static final int WORDS = 3;
    /** Points that part it from the rest. */
    private static final double GAP = 20;
    /** Points that part a column of many lines, and how many of them stand alone at least. */
    private static final double CLEAR = 9;
    private static final int LONG = 10;
    /** Words of a line of running text at least. */
    private static final int RUNNING = 8;
    /** Of the page's width, how wide it is at most. */
    private static final double WIDEST = 0.34;

    private Sidebar() {
    }

    static List<Line> apart(List<Line> lines) {
        return edge(lines).map(x -> split(lines, x)).orElseGet(() -> beside(lines));
    }

    /** The same lines, where a narrow column of text stands at the right of a table: below and above it lines may run on. */
    private static List<Line> beside(List<Line> lines) {
        double left = lines.stream().mapToDouble(Line::left).min().orElse(0);
        double right = lines.stream().mapToDouble(Line::right).max().orElse(0);
        List<Double> edges = lines.stream().flatMap(line -> line.cells().stream()).map(Cell::left).filter(x -> x > right - WIDEST * (right
            - left) && x < right - GAP).distinct().sorted().toList();
        for (double x : edges) {
            int from = 0;
            for (int i = 0; i <= lines.size(); i++) {
                if (i == lines.size() || crosses(lines.get(i), x) || i > 0 && lines.get(i).y() < lines.get(i - 1).y()) {
                    List<Line> run = lines.subList(from, i);
                    if (isBesideTable(run, x)) {
                        List<Line> all = new ArrayList<>(lines.subList(0, from));
                        all.addAll(split(run, x));
                        all.addAll(lines.subList(i, lines.size()));
                        return all;
                    }
                    from = i < lines.size() && !crosses(lines.get(i), x) ? i : i + 1;
                }
            }
        }
        return lines;
    }

    private static boolean crosses(Line line, double x) {
        return line.cells().stream().anyMatch(cell -> cell.left() < x && cell.right() > x - GAP);
    }

    /** Whether to the left of a place there are rows of a table, and to the right lines of text at heights of their own. */
    private static boolean isBesideTable(List<Line> lines, double x) {
        List<Line> alone = lines.stream().filter(line -> line.left() >= x).toList();
        List<Line> both = lines.stream().filter(line -> line.left() < x && line.right() >= x).toList();
        List<Line> rows = lines.stream().filter(line -> line.cells().stream().filter(cell -> cell.left() < x).count() >= LEAST_CELLS)
            .toList();
        long text = running(lines, x, WORDS);
        return alone.size() >= LEAST_ALONE && alone.size() > both.size() && rows.size() >= LEAST_ROWS && rows.size() > both.size()
            && 2 * text
            > alone.size() + both.size();
    }

    /** Where what stands beside the narrow column begins; empty where there is none. */
    private static Optional<Double> edge(List<Line> lines) {
        double left = lines.stream().mapToDouble(Line::left).min().orElse(0);
        double right = lines.stream().mapToDouble(Line::right).max().orElse(0);
        return lines.stream().flatMap(line -> line.cells().stream()).map(Cell::left).filter(x -> x > left + GAP && x < left + WIDEST
            * (right - left)).distinct().sorted().filter(x -> parts(lines, x, GAP, 1) || isBesideText(lines, x)).findFirst();
    }

    /** Whether beside the narrow column there is running text, and its lines stand alone though by chance many don't. */
    private static boolean isBesideText(List<Line> lines, double x) {
        long alone = lines.stream().filter(line -> line.right() < x).count();
        return running(lines, x, RUNNING) >= LEAST_BESIDE && alone >= LONG && parts(lines, x, CLEAR, 2);
    }

    /** How many cells from a place on have so many words and more. */
    private static long running(List<Line> lines, double x, int words) {
        return lines.stream().flatMap(line -> line.cells().stream()).filter(cell -> cell.left() >= x && cell.text().split("\\s+").length
            >= words).count();
    }

    /** @param often how many lines may stand beside each that stands alone at most */
    private static boolean parts(List<Line> lines, double x, double gap, int often) {
        int alone = 0;
        int both = 0;
        int beside = 0;
        for (Line line : lines) {
            if (line.cells().stream().anyMatch(cell -> cell.left() < x && cell.right() > x - gap)) {
                return false;
            }
            boolean narrow = line.left() < x;
            boolean wide = line.right() >= x;
            alone += narrow && !wide ? 1 : 0;
            both += narrow && wide ? 1 : 0;
            beside += wide && !narrow ? 1 : 0;
        }
        return alone >= LEAST_ALONE && alone * often > both && beside >= LEAST_BESIDE;
    }

    private static List<Line> split(List<Line> lines, double x) {
        List<Line> all = new ArrayList<>();
        for (boolean narrow : new boolean[] {true, false}) {
            for (Line line : lines) {
                List<Cell> cells = line.cells().stream().filter(cell -> cell.left() < x == narrow).toList();
                if (!cells.isEmpty()) {
                    // the letters beside it may be larger
                    all.add(new Line(List.copyOf(cells), line.y(), cells.stream().mapToDouble(Cell::size).max().orElseThrow()));
                }
            }
        }
        return all;
    }
}

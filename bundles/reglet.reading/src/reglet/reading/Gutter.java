package reglet.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.reading.Layout.Line;

/**
 * Tells a page's two columns apart, where running text stands beside a table: its lines say nothing of the rows that happen to stand at
 * their height. What is left of the gutter comes first, then what is right of it.
 */
final class Gutter {
    private static final int PROSE = 5;
    private static final int LEAST = 4;
    private static final int STRONG = 6;
    private static final double NEAR = 2.5;
    private static final double ALIGNED = 0.8;

    private Gutter() {
    }

    static List<Line> apart(List<Line> lines) {
        Optional<Double> gutter = find(lines);
        return gutter.map(x -> split(lines, x)).orElse(lines);
    }

    private static Optional<Double> find(List<Line> lines) {
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
        return line.cells().stream().anyMatch(cell -> Math.abs(cell.left() - x) < NEAR);
    }

    private static boolean crosses(Line line, double x) {
        return line.cells().stream().anyMatch(cell -> cell.left() < x - NEAR && cell.right() > x - NEAR);
    }

    private static boolean isBesideProse(List<Line> lines, double x) {
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
    private static int first(List<Line> lines, double x) {
        int first = start(lines, x);
        while (first > 0 && !crosses(lines.get(first - 1), x)) {
            first--;
        }
        return first;
    }

    private static int last(List<Line> lines, double x) {
        int last = start(lines, x);
        while (last + 1 < lines.size() && !crosses(lines.get(last + 1), x)) {
            last++;
        }
        return last;
    }

    private static int start(List<Line> lines, double x) {
        int best = 0;
        int most = -1;
        for (int i = 0; i < lines.size(); i++) {
            int run = 0;
            for (int j = i; j < lines.size() && !crosses(lines.get(j), x); j++) {
                run += startsAt(lines.get(j), x) ? 1 : 0;
            }
            if (run > most) {
                most = run;
                best = i;
            }
        }
        return best;
    }

    private static List<Line> split(List<Line> lines, double x) {
        int first = first(lines, x);
        int last = last(lines, x);
        List<Line> left = new ArrayList<>();
        List<Line> right = new ArrayList<>();
        for (Line line : lines.subList(first, last + 1)) {
            part(line, line.cells().stream().filter(cell -> cell.left() < x - NEAR).toList(), left);
            part(line, line.cells().stream().filter(cell -> cell.left() >= x - NEAR).toList(), right);
        }
        List<Line> all = new ArrayList<>(lines.subList(0, first));
        all.addAll(left);
        all.addAll(right);
        all.addAll(lines.subList(last + 1, lines.size()));
        return all;
    }

    private static void part(Line line, List<Cell> cells, List<Line> to) {
        if (!cells.isEmpty()) {
            to.add(new Line(List.copyOf(cells), line.y(), line.size()));
        }
    }
}

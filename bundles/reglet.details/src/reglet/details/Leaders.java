package reglet.details;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Point;

/** Puts the notes of a drawing in a column so that no leader crosses another. */
final class Leaders {
    private static final double EDGE = 1e-6;

    private Leaders() {
    }

    /**
     * Notes one below another, the highest tip first.
     *
     * @param tips  what each component's leader points at
     * @param x     place of the column, right of all tips
     * @param pitch distance of the notes
     */
    static List<Leader> place(Facts facts, Map<String, Point> tips, double x, double pitch) {
        List<String> order = new ArrayList<>(tips.keySet());
        order.sort(Comparator.<String>comparingDouble(key -> -tips.get(key).y()).thenComparing(key -> -tips.get(key).x()));
        double middle = order.stream().mapToDouble(key -> tips.get(key).y()).average().orElse(0);
        double top = middle + pitch * (order.size() - 1) / 2;
        // each exchange of two notes whose leaders cross makes the leaders shorter in sum, so that this ends
        boolean crossed = true;
        while (crossed) {
            crossed = false;
            for (int i = 0; i < order.size(); i++) {
                for (int j = i + 1; j < order.size(); j++) {
                    Point upper = tips.get(order.get(i));
                    Point lower = tips.get(order.get(j));
                    double high = top - i * pitch;
                    double low = top - j * pitch;
                    if (cross(upper, x, high, lower, low) && sum(upper, low, lower, high, x) < sum(upper, high, lower, low, x) - EDGE) {
                        Collections.swap(order, i, j);
                        crossed = true;
                    }
                }
            }
        }
        List<Leader> leaders = new ArrayList<>();
        for (String key : order) {
            leaders.add(new Leader(key, tips.get(key), new Point(x, top - leaders.size() * pitch), key, facts.title(key)));
        }
        return leaders;
    }

    private static double sum(Point a, double aNote, Point b, double bNote, double x) {
        return Math.hypot(x - a.x(), aNote - a.y()) + Math.hypot(x - b.x(), bNote - b.y());
    }

    /** Whether two leaders to the same column cross or touch: the line on which each tip lies decides it. */
    private static boolean cross(Point a, double x, double aNote, Point b, double bNote) {
        Point aEnd = new Point(x, aNote);
        Point bEnd = new Point(x, bNote);
        return side(a, aEnd, b) * side(a, aEnd, bEnd) <= 0 && side(b, bEnd, a) * side(b, bEnd, aEnd) <= 0;
    }

    private static double side(Point from, Point to, Point of) {
        return Math.signum((to.x() - from.x()) * (of.y() - from.y()) - (to.y() - from.y()) * (of.x() - from.x()));
    }
}

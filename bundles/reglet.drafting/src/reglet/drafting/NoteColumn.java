package reglet.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Pushes the notes of a column apart, up and down only, as little as may be. */
final class NoteColumn {
    private NoteColumn() {
    }

    /** Notes that touch and move as one; {@code wish} is the sum of the tops that they would like the first of them to have. */
    private record Cluster(double wish, int notes, double height) {
        double top(double low, double high) {
            return Math.min(high, Math.max(low + height, wish / notes));
        }

        Cluster and(Cluster below) {
            return new Cluster(wish + below.wish + below.notes * height, notes + below.notes, height + below.height);
        }
    }

    /**
     * The tops of notes, in the order given.
     *
     * @param wished  where their tops would be
     * @param heights with the gap that is to stay below each
     * @param low     where the column ends below
     * @param high    where it ends above
     */
    static List<Double> apart(List<Double> wished, List<Double> heights, double low, double high) {
        List<Integer> order = IntStream.range(0, wished.size()).boxed().sorted(Comparator.comparing((Integer note) -> -wished.get(note)))
            .toList();
        List<Cluster> clusters = new ArrayList<>();
        for (int note : order) {
            Cluster cluster = new Cluster(wished.get(note), 1, heights.get(note));
            while (!clusters.isEmpty() && last(clusters).top(low, high) - last(clusters).height() < cluster.top(low, high)) {
                cluster = clusters.remove(clusters.size() - 1).and(cluster);
            }
            clusters.add(cluster);
        }
        List<Double> tops = new ArrayList<>(wished);
        int next = 0;
        for (Cluster cluster : clusters) {
            double top = cluster.top(low, high);
            for (int i = 0; i < cluster.notes(); i++) {
                int note = order.get(next++);
                tops.set(note, top);
                top -= heights.get(note);
            }
        }
        return tops;
    }

    private static Cluster last(List<Cluster> clusters) {
        return clusters.get(clusters.size() - 1);
    }
}

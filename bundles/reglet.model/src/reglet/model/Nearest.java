package reglet.model;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The right word nearest to a wrong one. */
public final class Nearest {
    private Nearest() {
    }

    /** "did you mean 'lath.weight'?", or "" when no word is near enough to be meant. */
    public static String hint(String wrong, Collection<String> right) {
        return of(wrong, right).map(word -> "did you mean '" + word + "'?").orElse("");
    }

    public static Optional<String> of(String wrong, Collection<String> right) {
        int limit = Math.max(2, wrong.length() / 2);
        return right.stream().filter(word -> distance(wrong, word) <= limit)
            .min(Comparator.comparingInt((String word) -> distance(wrong, word)).thenComparing(Comparator.naturalOrder()));
    }

    /** Number of letters to insert, remove, replace or swap with their neighbour (optimal string alignment). */
    private static int distance(String from, String to) {
        int[] beforeLast = new int[to.length() + 1];
        int[] last = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                boolean same = from.charAt(i - 1) == to.charAt(j - 1);
                row[j] = Math.min(last[j - 1] + (same ? 0 : 1), Math.min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[to.length()];
    }
}

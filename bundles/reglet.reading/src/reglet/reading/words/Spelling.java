package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Mends words that are nearly those of the pack: "permeence", "compresive strenght". A word that the pack knows stays as it is. */
final class Spelling {
    private static final int SHORTEST = 6;
    private static final int LONG = 10;

    private Spelling() {
    }

    /**
     * Words with one or two of them mended; empty when nothing, or more than that, is amiss.
     *
     * @param plain in one spelling
     * @param own   the words that may have been meant
     * @param known the words that are nobody's slip
     */
    static Optional<String> mended(String plain, Set<String> own, Set<String> known) {
        List<String> words = new ArrayList<>();
        int slips = 0;
        for (String word : plain.split(" ")) {
            Optional<String> near = word.length() < SHORTEST || known.contains(word) || word.matches(".*\\d.*") ? Optional.empty()
                : near(word, own);
            slips += near.isPresent() ? 1 : 0;
            words.add(near.orElse(word));
        }
        return slips == 0 || slips > 2 ? Optional.empty() : Optional.of(String.join(" ", words));
    }

    /** The only word near another one; one that begins otherwise is none. */
    private static Optional<String> near(String word, Set<String> own) {
        int most = word.length() < LONG ? 1 : 2;
        List<String> near = own.stream().filter(one -> one.charAt(0) == word.charAt(0) && Math.abs(one.length() - word.length()) <= most
            && one.length() >= SHORTEST && distance(one, word) <= most).toList();
        return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
    }

    /** Letters to put in, leave out, change, or turn round with the next, to make one word of another. */
    static int distance(String one, String other) {
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= other.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[one.length()][other.length()];
    }
}

package reglet.workbench;

import java.util.ArrayList;
import java.util.List;

/** Which lines of a text are others than before. */
final class Lines {
    private Lines() {
    }

    /**
     * @param from  first line before that goes
     * @param to    line before behind the last one that goes; {@code from} when none goes
     * @param lines what stands there now
     */
    record Change<T>(int from, int to, List<T> lines) {
    }

    /** The changes from the first to the last: few small ones, or one where most lines are others. */
    static <T> List<Change<T>> changes(List<T> before, List<T> now) {
        int least = Math.min(before.size(), now.size());
        int start = 0;
        while (start < least && before.get(start).equals(now.get(start))) {
            start++;
        }
        int end = 0;
        while (end < least - start && before.get(before.size() - 1 - end).equals(now.get(now.size() - 1 - end))) {
            end++;
        }
        List<T> gone = before.subList(start, before.size() - end);
        List<T> come = now.subList(start, now.size() - end);
        int[][] kept = kept(gone, come);
        if (kept[0][0] * 2 < Math.max(gone.size(), come.size())) {
            return List.of(new Change<>(start, start + gone.size(), List.copyOf(come)));
        }
        List<Change<T>> changes = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < gone.size() || j < come.size()) {
            int from = i;
            int first = j;
            while (!stays(gone, i, come, j) && (i < gone.size() || j < come.size())) {
                if (j == come.size() || i < gone.size() && kept[i + 1][j] >= kept[i][j + 1]) {
                    i++;
                } else {
                    j++;
                }
            }
            if (from < i || first < j) {
                changes.add(new Change<>(start + from, start + i, List.copyOf(come.subList(first, j))));
            }
            while (stays(gone, i, come, j)) {
                i++;
                j++;
            }
        }
        return changes;
    }

    private static <T> boolean stays(List<T> gone, int i, List<T> come, int j) {
        return i < gone.size() && j < come.size() && gone.get(i).equals(come.get(j));
    }

    /** How many lines can stay from two places on, by the place before and the place now. */
    private static <T> int[][] kept(List<T> gone, List<T> come) {
        int[][] kept = new int[gone.size() + 1][come.size() + 1];
        for (int i = gone.size() - 1; i >= 0; i--) {
            for (int j = come.size() - 1; j >= 0; j--) {
                kept[i][j] = gone.get(i).equals(come.get(j)) ? kept[i + 1][j + 1] + 1 : Math.max(kept[i + 1][j], kept[i][j + 1]);
            }
        }
        return kept;
    }
}

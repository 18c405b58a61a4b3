package reglet.drafting;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;

import reglet.model.Kept;
import reglet.model.OnWall;

/** The texts of clauses on wall types that stand as they did: drafting anew fills only those of the wall type that was changed. */
final class Filled {
    /** Above the number of clauses of any pack. */
    private static final int MOST = 5_000;
    /** Forgotten with the wall types that they follow from. */
    private static final Map<OnWall, Kept<String, List<Merge.Use>>> KEPT = Collections.synchronizedMap(new WeakHashMap<>());

    private Filled() {
    }

    /** The texts on a wall type, by clause id. */
    static Kept<String, List<Merge.Use>> of(OnWall wall) {
        return KEPT.computeIfAbsent(wall, unknown -> new Kept<>(MOST));
    }
}

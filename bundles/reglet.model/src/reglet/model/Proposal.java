package reglet.model;

import java.util.List;
import java.util.Map;

/**
 * Options for everything undecided, so that no conflict and no gap is left; or which fixed choices keep that from being.
 *
 * @param picks    by wall type, then by component in the order of the build-up
 * @param cost     cost classes of all picks, added
 * @param optimal  whether it is proved that none is cheaper (a caution counts as two)
 * @param together fixed choices that can't stand together; empty when there are picks, or when even without any nothing stands
 * @param smallest whether it is proved that no smaller set of them is the reason
 * @param left     findings that no choice of options clears
 */
public record Proposal(Map<String, Map<String, Pick>> picks, int cost, boolean optimal, List<Fixed> together, boolean smallest,
        List<Finding> left) {

    /**
     * An option picked.
     *
     * @param because rules that something cheaper, or as cheap, would break; empty when nothing is cheaper
     */
    public record Pick(String option, List<String> because) {
        public Pick {
            because = List.copyOf(because);
        }
    }

    /** A choice that a person made. */
    public record Fixed(String wall, String component, String option) {
    }

    public Proposal {
        picks = Ordered.copy(picks);
        together = List.copyOf(together);
        left = List.copyOf(left);
    }

    /** Whether everything could be filled. */
    public boolean stands() {
        return !picks.isEmpty();
    }
}

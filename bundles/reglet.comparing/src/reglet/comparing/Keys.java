package reglet.comparing;

import java.util.List;

import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.Sequence;
import org.eclipse.jgit.diff.SequenceComparator;

/** A list of keys whose differences are asked for. */
final class Keys extends Sequence {
    private final List<String> keys;

    private Keys(List<String> keys) {
        this.keys = List.copyOf(keys);
    }

    /** The edits that lead from one list to the other, in order. */
    static List<Edit> edits(List<String> before, List<String> after) {
        return List.copyOf(new HistogramDiff().diff(new SequenceComparator<Keys>() {
            @Override
            public boolean equals(Keys a, int ai, Keys b, int bi) {
                return a.keys.get(ai).equals(b.keys.get(bi));
            }

            @Override
            public int hash(Keys seq, int at) {
                return seq.keys.get(at).hashCode();
            }
        }, new Keys(before), new Keys(after)));
    }

    @Override
    public int size() {
        return keys.size();
    }
}

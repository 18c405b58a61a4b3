package reglet.drafting;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.Sequence;
import org.eclipse.jgit.diff.SequenceComparator;
import org.eclipse.jgit.merge.MergeAlgorithm;
import org.eclipse.jgit.merge.MergeChunk;
import org.eclipse.jgit.merge.MergeChunk.ConflictState;
import org.eclipse.jgit.merge.MergeResult;

/** Merges two changes of one text word by word. A slot is one word. Where both changed the same words, those of the first stay. */
final class WordMerge {
    /** A blank belongs to the word before it, so that a word is put in or taken out with its blank. */
    private static final Pattern WORD = Pattern.compile("(?:\\$\\{[^}]*}|[\\p{L}\\p{N}]+(?:[./'’-][\\p{L}\\p{N}]+)*|\\S)\\s*|\\s+");

    private WordMerge() {
    }

    /**
     * A merged text.
     *
     * @param conflicts how many times both changed the same words
     */
    record Merged(String text, int conflicts) {
    }

    /** Merges what {@code first} and {@code second} made of {@code base}. */
    static Merged merge(String base, String first, String second) {
        List<Words> texts = List.of(new Words(words(base)), new Words(words(first)), new Words(words(second)));
        MergeResult<Words> result = new MergeAlgorithm(new HistogramDiff()).merge(new Same(), texts.get(0), texts.get(1), texts.get(2));
        StringBuilder text = new StringBuilder();
        int conflicts = 0;
        for (MergeChunk chunk : result) {
            ConflictState state = chunk.getConflictState();
            if (state == ConflictState.FIRST_CONFLICTING_RANGE) {
                conflicts++;
            }
            if (state == ConflictState.FIRST_CONFLICTING_RANGE || state == ConflictState.NO_CONFLICT) {
                texts.get(chunk.getSequenceIndex()).list().subList(chunk.getBegin(), chunk.getEnd()).forEach(text::append);
            }
        }
        return new Merged(text.toString(), conflicts);
    }

    private static List<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group).toList();
    }

    private static final class Words extends Sequence {
        private final List<String> list;

        Words(List<String> list) {
            this.list = list;
        }

        List<String> list() {
            return list;
        }

        @Override
        public int size() {
            return list.size();
        }
    }

    private static final class Same extends SequenceComparator<Words> {
        @Override
        public boolean equals(Words a, int ai, Words b, int bi) {
            return a.list().get(ai).equals(b.list().get(bi));
        }

        @Override
        public int hash(Words words, int at) {
            return words.list().get(at).hashCode();
        }
    }
}

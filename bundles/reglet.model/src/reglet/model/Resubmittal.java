package reglet.model;

import java.util.List;
import java.util.Optional;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;

/**
 * What a resubmittal changes against the one before it.
 *
 * @param last    id of the submittal before
 * @param now     id of the resubmittal
 * @param changes one for each requirement that either of them has a row for, in the order of the resubmittal and then of the last
 */
public record Resubmittal(String last, String now, List<Change> changes) {

    public Resubmittal {
        changes = List.copyOf(changes);
    }

    /** What became of a requirement. */
    public enum Kind {
        /** It was not met and is now. */
        MENDED("mended"),
        /** It was met and is no more. */
        LOST("lost"),
        /** It was not met and still is not. */
        STILL_OPEN("still open"),
        /** It is met as before, by another value. */
        CHANGED("changed"),
        /** It is met as before, by the same value. */
        SAME("same"),
        /** Only the resubmittal has it. */
        ADDED("added"),
        /** Only the last one had it: what was shown is shown no more. */
        DROPPED("dropped");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** A requirement of a wall type in both comparisons. */
    public record Change(String wall, String property, Kind kind, Optional<Row> before, Optional<Row> after) {
    }

    /** Whether everything is met now. */
    public boolean isSettled() {
        return changes.stream().allMatch(change -> change.after().filter(row -> row.result() == Result.MEETS).isPresent());
    }
}

package reglet.model;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * A reviewer's answer to a submittal. The words are the reviewer's; the program chooses none.
 *
 * @param action     the overall action, one of the office's words; "" where none is needed or it isn't decided
 * @param by         who acts; ""
 * @param received   day received
 * @param due        day by which the answer is due
 * @param returned   day of the answer; empty while the review goes on
 * @param recommends what a consultant recommends to who acts
 * @param remark     a remark on the whole; ""
 * @param notes      notes by row of the comparison, see {@link Comparison.Row#id} and {@link Comparison.Row#place}
 */
public record Review(String action, String by, Optional<LocalDate> received, Optional<LocalDate> due, Optional<LocalDate> returned,
        Optional<Recommendation> recommends, String remark, Map<String, Note> notes, Place at) {

    public Review {
        notes = Ordered.copy(notes);
    }

    /** A consultant's recommendation. */
    public record Recommendation(String action, String by) {
    }

    /** A note on a row. */
    public record Note(String text, Place at) {
    }
}

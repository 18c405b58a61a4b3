package reglet.model;

/**
 * Something in an input that can't be used, said so that a person can mend it.
 *
 * @param at       where it stands
 * @param what     what was found there
 * @param expected what was expected, or what to do
 */
public record Problem(Place at, String what, String expected) {

    /** The line that goes to standard error: {@code FILE:LINE:COLUMN: what is wrong; what was expected}. */
    @Override
    public String toString() {
        return at + ": " + what + (expected.isEmpty() ? "" : "; " + expected);
    }
}

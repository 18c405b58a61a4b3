package reglet.worksheets;

/**
 * A straight joint across an elevation, with what makes it due.
 *
 * @param at     m from the left edge for a vertical joint, from the base for a horizontal one
 * @param reason why a joint is due there
 */
public record JointLine(double at, Reason reason) {

    /** What makes a joint due. */
    public enum Reason implements Worded {
        BACKING_JOINT("backing joint"), FLOOR_LINE("floor line"), DEFLECTION_TRACK("deflection track"),
        SUBSTRATE_CHANGE("substrate change"), OTHER_CLADDING("other cladding"), DESIGNER("designer's layout");

        private final String text;

        Reason(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }
    }
}

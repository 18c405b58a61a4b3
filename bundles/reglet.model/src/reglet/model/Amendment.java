package reglet.model;

import java.util.List;

/**
 * One thing that a jurisdiction asks otherwise than the pack.
 *
 * @param what   what is done
 * @param target what it is done to: the id of a table or rule, or the path of a property
 * @param words  the change in words: "earth: 6 in instead of 4 in"; ""
 * @param basis  where the jurisdiction says so; names the jurisdiction
 */
public record Amendment(What what, String target, String words, List<Basis> basis, Place at) {

    /** What an amendment does. */
    public enum What {
        TABLE("changes the table"), USUAL("changes the usual value of"), RULE("changes the rule"), STRIKE("strikes the rule"),
        ADD("adds the rule");

        private final String text;

        What(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Amendment {
        basis = List.copyOf(basis);
    }

    /** "strikes the rule top_vent.embers". */
    public String text() {
        return what.text() + " " + target + (words.isEmpty() ? "" : ", " + words);
    }
}

package reglet.model;

import java.util.List;
import java.util.Map;

/**
 * A check.
 *
 * @param id        "lath.weight"; also the file name; never reused
 * @param kind      conflict or caution; gaps are computed
 * @param each      how often it is looked at
 * @param subject   for meetings, the subject id ("opening"); else ""
 * @param component the component that a finding points at; "" for none
 * @param when      expression that says whether it applies; "" for always
 * @param let       named intermediate expressions in order
 * @param holds     the expression that must be true
 * @param says      the finding in words, with facts and lets in braces: "{lath.weight} is too light; {required} is the least."
 * @param fix       what to do about it, in words
 * @param basis     at least one
 * @param examples  facts with the stated result; run by the build
 * @param since     pack version that brought it
 */
public record Rule(String id, Finding.Kind kind, Scope each, String subject, String component, String when, Map<String, String> let,
        String holds, String says, String fix, List<Basis> basis, List<Example> examples, String since, Place at) {

    public Rule {
        let = Ordered.copy(let);
        basis = List.copyOf(basis);
        examples = List.copyOf(examples);
    }

    /** The same rule with other bases. */
    public Rule with(List<Basis> others) {
        return new Rule(id, kind, each, subject, component, when, let, holds, says, fix, others, examples, since, at);
    }

    /** The five results of looking at a rule. */
    public enum Result {
        HOLDS("holds"), BREAKS("breaks"), GAP("gap"), ERROR("error"), DOES_NOT_APPLY("does not apply");

        private final String text;

        Result(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** Facts by expression name ("lath.weight") and the result that they must give. */
    public record Example(Map<String, Stated> facts, Result result, Place at) {
        public Example {
            facts = Ordered.copy(facts);
        }
    }
}

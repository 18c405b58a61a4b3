package reglet.model;

import java.util.List;
import java.util.Map;

/**
 * What a rule reports, as data.
 *
 * @param rule      rule id, or "COMPONENT.decided" for a component that is needed and undecided
 * @param kind      conflict, gap or caution
 * @param scope     how the rule is looked at
 * @param wall      wall type id; "" outside a wall
 * @param meeting   id of the meeting; "" outside one
 * @param component component that it points at; ""
 * @param options   the accepted options that it was seen with, by component id
 * @param at        place of the choice or fact in the job
 * @param says      the finding in one sentence with its values
 * @param fix       what to do
 * @param facts     the values read, by expression name
 * @param missing   names of the facts that are missing
 * @param basis     where the rule comes from
 */
public record Finding(String rule, Kind kind, Scope scope, String wall, String meeting, String component, Map<String, String> options,
        Place at, String says, String fix, Map<String, Value> facts, List<String> missing, List<Basis> basis) {

    public enum Kind {
        CONFLICT("conflict"), GAP("gap"), CAUTION("caution");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Finding {
        options = Ordered.copy(options);
        facts = Ordered.copy(facts);
        missing = List.copyOf(missing);
        basis = List.copyOf(basis);
    }

    /** What stays the same while a job is edited: rule, wall and meeting. */
    public String key() {
        return rule + " " + wall + (meeting.isEmpty() ? "" : "/" + meeting);
    }
}

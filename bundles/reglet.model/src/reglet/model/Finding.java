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
 * @param statement the finding in one sentence with its values
 * @param advice    what to do
 * @param facts     the values read, by expression name
 * @param missing   names of the facts that are missing
 * @param basis     where the rule comes from
 * @param alternates numbers of the alternates that it comes with, the fewest that bring it; none when it stands in the base
 */
public record Finding(String rule, Kind kind, Scope scope, String wall, String meeting, String component, Map<String, String> options,
        Place at, Wording statement, Wording advice, Map<String, Value> facts, List<String> missing, List<Basis> basis,
        List<Integer> alternates) {

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
        alternates = List.copyOf(alternates);
    }

    /** A finding in the base. */
    public Finding(String rule, Kind kind, Scope scope, String wall, String meeting, String component, Map<String, String> options,
            Place at, Wording statement, Wording advice, Map<String, Value> facts, List<String> missing, List<Basis> basis) {
        this(rule, kind, scope, wall, meeting, component, options, at, statement, advice, facts, missing, basis, List.of());
    }

    /** A finding in the base whose sentences hold no values. */
    public Finding(String rule, Kind kind, Scope scope, String wall, String meeting, String component, Map<String, String> options,
            Place at, String says, String fix, Map<String, Value> facts, List<String> missing, List<Basis> basis) {
        this(rule, kind, scope, wall, meeting, component, options, at, Wording.of(says), Wording.of(fix), facts, missing, basis);
    }

    /** The finding in one sentence with its values as they were written. */
    public String says() {
        return statement.text();
    }

    /** What to do, with the values as they were written. */
    public String fix() {
        return advice.text();
    }

    /** The same finding as one that comes with alternates, and says so; the same where there are none. */
    public Finding with(List<Integer> numbers) {
        return numbers.isEmpty() ? this : new Finding(rule, kind, scope, wall, meeting, component, options, at,
            statement.behind(lead(numbers)), advice, facts, missing, basis, numbers);
    }

    private static String lead(List<Integer> numbers) {
        return Alternate.names(numbers) + (numbers.size() == 1 ? ": " : " together: ");
    }

    /** What it says without the names of the alternates that bring it. */
    public String plain() {
        return alternates.isEmpty() ? says() : says().substring(lead(alternates).length());
    }

    /** What stays the same while a job is edited: rule, wall, meeting and alternates. */
    public String key() {
        return place() + (alternates.isEmpty() ? "" : " alternate " + String.join("+", alternates.stream().map(String::valueOf).toList()));
    }

    /** Rule, wall and meeting, whatever brings it. */
    public String place() {
        return rule + " " + wall + (meeting.isEmpty() ? "" : "/" + meeting);
    }
}

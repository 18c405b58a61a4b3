package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a rule came out at one place.
 *
 * @param rule    rule id
 * @param wall    wall type id; "" outside a wall
 * @param meeting meeting id; ""
 * @param options the accepted options that it was looked at with, by component id
 * @param when    whether the rule applies; empty when that can't be told
 * @param facts   the values read, by expression name
 * @param let     the intermediate values
 * @param result  one of the five results
 * @param missing names of the facts that are missing
 * @param error   what went wrong; "" unless the result is an error
 */
public record Explanation(String rule, String wall, String meeting, Map<String, String> options, Optional<Boolean> when,
        Map<String, Value> facts, Map<String, Value> let, Rule.Result result, List<String> missing, String error) {

    public Explanation {
        options = Ordered.copy(options);
        facts = Ordered.copy(facts);
        let = Ordered.copy(let);
        missing = List.copyOf(missing);
    }
}

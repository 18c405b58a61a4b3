package reglet.model;

import java.util.List;

/**
 * Two components that touch in the wall.
 *
 * @param first  component id
 * @param second component id
 * @param where  where they touch
 * @param between component that keeps them apart where it is in the wall; "" for none
 * @param rules  ids of the rules that know something of the pair
 */
public record Touching(String first, String second, String where, String between, List<String> rules, List<Basis> basis, Place at) {

    public Touching {
        rules = List.copyOf(rules);
        basis = List.copyOf(basis);
    }
}

package reglet.model;

import java.util.List;
import java.util.Map;

/**
 * The options accepted for a component of a wall type. Several are alternatives: each must pass the rules, and a product
 * complies when it meets one of them whole.
 *
 * @param component component id
 * @param accept    option ids in the order written; at least one
 * @param values    values that a person set over those of the options, by property name
 * @param by        who or what fixed it: "specifier", "RFI 12"; may be ""
 * @param because   the reason given; may be ""
 * @param at        place in the wall's file
 */
public record Choice(String component, List<String> accept, Map<String, Stated> values, String by, String because, Place at) {

    public Choice {
        accept = List.copyOf(accept);
        values = Ordered.copy(values);
    }
}

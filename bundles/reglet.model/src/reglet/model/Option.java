package reglet.model;

import java.util.Map;
import java.util.Optional;

/**
 * An allowed answer for a component.
 *
 * @param id     name in job files: "metal-3.4"
 * @param title  words for people
 * @param values values of properties by property name
 * @param cost   cost class, 0 for nothing; only compared, never a price
 * @param note   what a specifier should know when choosing it; may be ""
 */
public record Option(String id, String title, Map<String, Value> values, int cost, String note, Place at) {

    public Option {
        values = Ordered.copy(values);
    }

    public Optional<Value> value(String property) {
        return Optional.ofNullable(values.get(property));
    }
}

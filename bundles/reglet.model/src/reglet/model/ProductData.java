package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * A product's property values.
 *
 * @param id        file name without ending: "lath-a"
 * @param component component id that the product is for
 * @param name      product name
 * @param maker     maker's name
 * @param model     chosen model; ""
 * @param sheet     path of its sheet relative to the job folder; ""
 */
public record ProductData(String id, String component, String name, String maker, String model, String sheet, List<SheetValue> values,
        Place at) {

    public ProductData {
        values = List.copyOf(values);
    }

    /** The value of a property of this product's component, such as "weight". */
    public Optional<SheetValue> value(String property) {
        return values.stream().filter(value -> value.property().equals(component + "." + property)).findFirst();
    }
}

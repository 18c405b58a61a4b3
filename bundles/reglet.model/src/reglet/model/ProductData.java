package reglet.model;

import java.util.List;
import java.util.Optional;

import reglet.model.SheetReading.Report;

/**
 * A product's property values.
 *
 * @param id        file name without ending: "lath-a"
 * @param component component id that the product is for
 * @param name      product name
 * @param maker     maker's name
 * @param model     chosen model; ""
 * @param sheet     path of its sheet relative to the job folder; ""
 * @param report    what its evaluation report or certificate says of itself, with the conditions of use; empty for none
 */
public record ProductData(String id, String component, String name, String maker, String model, String sheet, List<SheetValue> values,
        Optional<Report> report, Place at) {

    public ProductData {
        values = List.copyOf(values);
    }

    /** A product without a report. */
    public ProductData(String id, String component, String name, String maker, String model, String sheet, List<SheetValue> values,
            Place at) {
        this(id, component, name, maker, model, sheet, values, Optional.empty(), at);
    }

    /** The value of a property of this product's component, such as "weight". */
    public Optional<SheetValue> value(String property) {
        return values.stream().filter(value -> value.property().equals(component + "." + property)).findFirst();
    }
}

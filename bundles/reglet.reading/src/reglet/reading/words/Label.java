package reglet.reading.words;

import java.util.List;
import java.util.Optional;

import reglet.model.Compare;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Unit;
import reglet.reading.words.Citations.Citation;

/**
 * What a label says.
 *
 * @param properties that it may name, in the order of the pack
 * @param quality    from 0 to 1
 * @param unit       the unit that it states for its values; ""
 * @param sense      the sense that it states
 * @param methods    the standards that it names
 */
public record Label(List<Property> properties, double quality, String unit, Optional<Compare> sense, List<Citation> methods) {
    /** A label that names one property and says nothing more. */
    public static Label of(Property property) {
        return new Label(List.of(property), 1, "", Optional.empty(), List.of());
    }

    /** What it names, as far as it is an amount with a unit. */
    public Label amounts() {
        return new Label(properties.stream().filter(property -> property.type().kind() == Kind.QUANTITY && property.type().unit()
            .orElseThrow() != Unit.ONE || property.type().kind() == Kind.RANGE).toList(), quality, unit, sense, methods);
    }
}

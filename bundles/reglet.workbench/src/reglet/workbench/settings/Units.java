package reglet.workbench.settings;

import java.util.Optional;

import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.UnitSystem;
import reglet.model.Value;

/** The units that the person set. What is stored, and what papers say, doesn't change with them. */
public final class Units {

    private Units() {
    }

    /** In which units the window shows quantities now. */
    public static ShownUnits shown() {
        return of(Settings.store().getString(Settings.UNITS));
    }

    static ShownUnits of(String word) {
        return switch (word) {
            case "both" -> ShownUnits.BOTH;
            case "metric" -> new ShownUnits(Optional.of(UnitSystem.SI), false);
            case "inch-pound" -> new ShownUnits(Optional.of(UnitSystem.INCH_POUND), false);
            default -> ShownUnits.AS_WRITTEN;
        };
    }

    /** A value of which nothing more is known. */
    public static String text(Value value) {
        return shown().text(value);
    }

    /** A value of a property, as somebody states it. */
    public static String text(Optional<Property> property, Value value) {
        return shown().text(value, property.map(Sense::stated).orElse(Sense.PLAIN));
    }

    /** A quantity in the units shown first, and in the others in parentheses where there are any. */
    public static String both(Quantity quantity) {
        return new ShownUnits(shown().first(), true).text(quantity);
    }
}

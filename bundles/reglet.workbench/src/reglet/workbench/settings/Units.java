package reglet.workbench.settings;

import java.util.Optional;

import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.Value;

/** Values in the units that the person wants to see first. What governs is always the unit written in the job. */
public final class Units {

    private Units() {
    }

    /** A value in the units shown first. */
    public static String text(Value value) {
        return text(value, system(Settings.store().getString(Settings.UNITS)));
    }

    /** A quantity in the units shown first, and in the others in parentheses where there are any. */
    public static String both(Quantity quantity) {
        return both(quantity, system(Settings.store().getString(Settings.UNITS)));
    }

    static Optional<UnitSystem> system(String word) {
        return word.equals("metric") ? Optional.of(UnitSystem.SI) : word.equals("inch-pound") ? Optional.of(UnitSystem.INCH_POUND)
            : Optional.empty();
    }

    static String text(Value value, Optional<UnitSystem> wanted) {
        if (value instanceof Quantity quantity) {
            return in(quantity, wanted).text();
        }
        if (value instanceof Range range) {
            return new Range(in(range.low(), wanted), in(range.high(), wanted)).text();
        }
        return value.text();
    }

    static String both(Quantity quantity, Optional<UnitSystem> wanted) {
        Quantity first = in(quantity, wanted);
        // back in the unit written where that is the other one
        Optional<Unit> other = first.unit() == quantity.unit() ? quantity.unit().other() : Optional.of(quantity.unit());
        return first.text() + other.map(unit -> " (" + quantity.as(unit).text() + ")").orElse("");
    }

    private static Quantity in(Quantity quantity, Optional<UnitSystem> wanted) {
        Unit unit = quantity.unit();
        boolean same = wanted.isEmpty() || unit.system().isEmpty() || unit.system().equals(wanted);
        return same ? quantity : unit.other().map(quantity::as).orElse(quantity);
    }
}

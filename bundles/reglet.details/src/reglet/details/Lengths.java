package reglet.details;

import reglet.model.Meeting;
import reglet.model.Quantity;
import reglet.model.Unit;
import reglet.model.UnitSystem;

/** Lengths in millimetres as they print in a job's units. */
final class Lengths {
    private static final int PARTS = 16;

    private Lengths() {
    }

    static double mm(Quantity quantity) {
        return quantity.in(Unit.MM);
    }

    /** "4-1/16 in" to the nearest sixteenth, or "103 mm" to the nearest millimetre. */
    static String text(double mm, UnitSystem system) {
        if (system == UnitSystem.SI) {
            return Math.round(mm) + " " + Unit.MM.symbol();
        }
        long parts = Math.round(Quantity.of(mm, Unit.MM).in(Unit.IN) * PARTS);
        long whole = parts / PARTS;
        long over = parts % PARTS;
        int under = PARTS;
        while (over > 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String fraction = over == 0 ? "" : over + "/" + under;
        return (over == 0 ? whole : whole == 0 ? fraction : whole + "-" + fraction) + " " + Unit.IN.symbol();
    }

    /** A length of a meeting as written, or else that of a component. */
    static String stated(Facts facts, Meeting meeting, String fact, String component, String property) {
        return facts.length(meeting, fact).or(() -> facts.length(component, property)).map(Quantity::text).orElse("");
    }

    /** "lap 2 in", so that dimensions beside one another can be told apart; "" without a length. */
    static String named(String name, String length) {
        return length.isEmpty() ? "" : name + " " + length;
    }
}

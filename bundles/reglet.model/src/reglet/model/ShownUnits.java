package reglet.model;

import java.util.Optional;

/**
 * In which units quantities are shown. This is the one place that decides it, for papers and for the window; what is stored stays as it
 * was written.
 *
 * @param first the system shown first; empty for the units written
 * @param both  whether the other unit follows in parentheses
 */
public record ShownUnits(Optional<UnitSystem> first, boolean both) {
    /** As a person wrote them, and nothing else. */
    public static final ShownUnits AS_WRITTEN = new ShownUnits(Optional.empty(), false);
    /** As a person wrote them, the other unit in parentheses: so papers print. */
    public static final ShownUnits BOTH = new ShownUnits(Optional.empty(), true);
    private static final int FIGURES = 3;
    private static final int MOST_FIGURES = 10;
    private static final String TO = " to ";

    /**
     * What a value is a value of, as far as that decides how it is shown.
     *
     * @param usual    the unit that such values are usually given in; empty for none
     * @param required the sense of a requirement, whose converted number is rounded to the strict side, so that whoever builds to it meets
     *                 the requirement too; empty for a fact, whose number is the nearest
     */
    public record Sense(Optional<Unit> usual, Optional<Compare> required) {
        /** A value by itself. */
        public static final Sense PLAIN = new Sense(Optional.empty(), Optional.empty());

        /** What a property requires. */
        public static Sense required(Property property) {
            return new Sense(property.type().unit(), Optional.of(property.compare()));
        }

        /** A fact, or what a sheet states, of a property. */
        public static Sense stated(Property property) {
            return new Sense(property.type().unit(), Optional.empty());
        }

        private Numbers.Side side() {
            return required.map(compare -> switch (compare) {
                case AT_LEAST -> Numbers.Side.UP;
                case AT_MOST -> Numbers.Side.DOWN;
                default -> Numbers.Side.NEAREST;
            }).orElse(Numbers.Side.NEAREST);
        }

        private Optional<Unit> other(Unit unit) {
            return unit.other(usual);
        }
    }

    /** A value as it is shown: "2.5 lb/yd²", "1.36 kg/m² (2.5 lb/yd²)". */
    public String text(Value value, Sense sense) {
        return text(value, sense, TO);
    }

    /** A value of which nothing more is known. */
    public String text(Value value) {
        return text(value, Sense.PLAIN);
    }

    /** As {@link #text(Value, Sense)}, the ends of a range kept apart by other words, such as " and ". */
    public String text(Value value, Sense sense, String between) {
        String alone = alone(value, sense, between);
        String other = both ? beside(value, sense, between) : "";
        return other.isEmpty() ? alone : alone + " (" + other + ")";
    }

    /** A value in the unit shown first, without the other. */
    public String alone(Value value, Sense sense) {
        return alone(value, sense, TO);
    }

    /** A value in the unit that isn't shown first; "" where both systems have the same. */
    public String beside(Value value, Sense sense) {
        return beside(value, sense, TO);
    }

    /** A quantity in the unit shown first. */
    public Quantity turned(Quantity quantity, Sense sense) {
        return turns(quantity) ? sense.other(quantity.unit()).map(unit -> converted(quantity, unit, FIGURES, sense.side())).orElse(quantity)
            : quantity;
    }

    private String alone(Value value, Sense sense, String between) {
        String other = turns(value) ? converted(value, sense, between) : "";
        return other.isEmpty() ? written(value, between) : other;
    }

    private String beside(Value value, Sense sense, String between) {
        String other = converted(value, sense, between);
        return turns(value) && !other.isEmpty() ? written(value, between) : other;
    }

    /** A value with its quantities in the units shown first. */
    public Value turned(Value value, Sense sense) {
        return value instanceof Quantity quantity ? turned(quantity, sense)
            : value instanceof Range range ? new Range(turned(range.low(), sense), turned(range.high(), sense)) : value;
    }

    /** Whether a value is written in the system that isn't shown first. */
    private boolean turns(Value value) {
        Unit unit = value instanceof Quantity quantity ? quantity.unit() : value instanceof Range range ? range.high().unit() : Unit.ONE;
        return first.isPresent() && unit.system().isPresent() && !unit.system().equals(first);
    }

    private static String written(Value value, String between) {
        return value instanceof Range range ? ends(range.low(), range.high(), between) : value.text();
    }

    /** A value in the other unit than the one written; "" where there is none. */
    private String converted(Value value, Sense sense, String between) {
        if (value instanceof Quantity quantity) {
            return sense.other(quantity.unit()).map(unit -> converted(quantity, unit, FIGURES, sense.side()).text()).orElse("");
        }
        return value instanceof Range range ? range(range, sense, between) : "";
    }

    private static String range(Range range, Sense sense, String between) {
        Optional<Unit> low = sense.other(range.low().unit());
        Optional<Unit> high = sense.other(range.high().unit());
        if (low.isEmpty() || high.isEmpty()) {
            return "";
        }
        Numbers.Side up = sense.required().isPresent() ? Numbers.Side.UP : Numbers.Side.NEAREST;
        Numbers.Side down = sense.required().isPresent() ? Numbers.Side.DOWN : Numbers.Side.NEAREST;
        // A narrow range rounded inwards to three figures could turn over; then it takes as many figures as it needs.
        for (int figures = FIGURES; figures < MOST_FIGURES; figures++) {
            Quantity from = converted(range.low(), low.get(), figures, up);
            Quantity to = converted(range.high(), high.get(), figures, down);
            if (low.get() != high.get() || number(from) <= number(to)) {
                return ends(from, to, between);
            }
        }
        return "";
    }

    private static double number(Quantity quantity) {
        return Numbers.number(quantity.amount()).orElseThrow();
    }

    private static String ends(Quantity low, Quantity high, String between) {
        return (low.unit() == high.unit() ? low.amount() : low.text()) + between + high.text();
    }

    private static Quantity converted(Quantity quantity, Unit other, int figures, Numbers.Side side) {
        return new Quantity(quantity.si(), other, Numbers.significant(quantity.in(other), figures, side));
    }
}

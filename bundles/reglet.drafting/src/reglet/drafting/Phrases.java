package reglet.drafting;

import java.util.List;

import reglet.model.Compare;
import reglet.model.Grade;
import reglet.model.Method;
import reglet.model.Numbers;
import reglet.model.Numbers.Side;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WordSet;

/**
 * How requirements and facts print. The unit written in the job governs; the other system stands in parentheses with three
 * significant figures, rounded to the strict side, so that whoever builds to the parentheses meets the requirement too.
 */
public final class Phrases {
    private static final int FIGURES = 3;
    private static final int MOST_FIGURES = 10;

    private Phrases() {
    }

    /** The whole phrase: "at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847". */
    public static String of(Requirement requirement) {
        String method = method(requirement.property().method());
        return required(requirement) + (method.isEmpty() ? "" : ", " + method);
    }

    /** Sense and value without the method: "at least 2.5 lb/yd² (1.36 kg/m²)". */
    public static String required(Requirement requirement) {
        Value value = requirement.value();
        Compare compare = requirement.property().compare();
        if (value instanceof Quantity) {
            return sense(compare) + value(requirement);
        }
        if (value instanceof Range range && compare == Compare.BETWEEN) {
            return "between " + range(range, " and ", Side.UP, Side.DOWN);
        }
        if (value instanceof Grade grade) {
            return grade(grade, compare);
        }
        if (value instanceof WordSet set && compare == Compare.ONE_OF) {
            return "one of " + list(set.words(), "or");
        }
        return value(requirement);
    }

    /** The bare value with its unit: "2.5 lb/yd² (1.36 kg/m²)". */
    public static String value(Requirement requirement) {
        Property property = requirement.property();
        if (property.type().kind() == PropertyType.Kind.FLAG) {
            return requirement.value().text().equals("yes") ? "required" : "not required";
        }
        return requirement.value() instanceof Range range ? range(range, " to ", Side.UP, Side.DOWN)
            : value(requirement.value(), side(property.compare()));
    }

    /** A fact of the job, or what a sheet states: "28 ft (8.53 m)". Nobody builds to it, so the other unit is the nearest. */
    public static String fact(Value value) {
        return value(value, Side.NEAREST);
    }

    /** What the job asks by a fact, in the fact's sense: "at least 5 years", "at least 2 in (50.8 mm)", "vented". */
    static String asked(Property property, Value value) {
        return value instanceof Quantity ? sense(property.compare()) + value(value, side(property.compare()))
            : value instanceof Grade grade ? grade(grade, property.compare()) : fact(value);
    }

    /** "ASTM C847", "ASTM E2925 Annex A2"; "" for none. The edition stands in the references alone. */
    public static String method(Method method) {
        return method.part().isEmpty() ? method.standard() : method.standard() + " " + method.part();
    }

    /** "a", "a and b", "a, b, and c". */
    public static String list(List<String> words, String conjunction) {
        return switch (words.size()) {
            case 0 -> "";
            case 1 -> words.get(0);
            case 2 -> words.get(0) + " " + conjunction + " " + words.get(1);
            default -> String.join(", ", words.subList(0, words.size() - 1)) + ", " + conjunction + " " + words.get(words.size() - 1);
        };
    }

    private static String value(Value value, Side side) {
        if (value instanceof Quantity quantity) {
            return quantity(quantity, side);
        }
        if (value instanceof Range range) {
            return range(range, " to ", Side.NEAREST, Side.NEAREST);
        }
        return value instanceof WordSet set ? list(set.words(), "and") : value.text();
    }

    private static String quantity(Quantity quantity, Side side) {
        return quantity.text()
            + quantity.unit().other().map(other -> " (" + converted(quantity, other, FIGURES, side).text() + ")").orElse("");
    }

    private static String range(Range range, String between, Side lowSide, Side highSide) {
        String written = ends(range.low(), range.high(), between);
        if (range.low().unit().other().isEmpty() || range.high().unit().other().isEmpty()) {
            return written;
        }
        Unit low = range.low().unit().other().get();
        Unit high = range.high().unit().other().get();
        // A narrow range rounded inwards to three figures could turn over; then it takes as many figures as it needs.
        for (int figures = FIGURES; figures < MOST_FIGURES; figures++) {
            Quantity from = converted(range.low(), low, figures, lowSide);
            Quantity to = converted(range.high(), high, figures, highSide);
            if (low != high || number(from) <= number(to)) {
                return written + " (" + ends(from, to, between) + ")";
            }
        }
        return written;
    }

    private static double number(Quantity quantity) {
        return Numbers.number(quantity.amount()).orElseThrow();
    }

    private static String ends(Quantity low, Quantity high, String between) {
        return (low.unit() == high.unit() ? low.amount() : low.text()) + between + high.text();
    }

    private static Quantity converted(Quantity quantity, Unit other, int figures, Side side) {
        return new Quantity(quantity.si(), other, Numbers.significant(quantity.in(other), figures, side));
    }

    private static String grade(Grade grade, Compare compare) {
        boolean best = grade.rank() == grade.scale().size() - 1;
        boolean least = grade.rank() == 0;
        return switch (compare) {
            case AT_LEAST -> best ? grade.text() : grade.text() + " or better";
            case AT_MOST -> least ? grade.text() : grade.text() + " or lower";
            default -> grade.text();
        };
    }

    /** In the trade a bare number is exact, so that sense has no word. */
    private static String sense(Compare compare) {
        return compare == Compare.AT_LEAST || compare == Compare.AT_MOST ? compare.text() + " " : "";
    }

    private static Side side(Compare compare) {
        return switch (compare) {
            case AT_LEAST -> Side.UP;
            case AT_MOST -> Side.DOWN;
            default -> Side.NEAREST;
        };
    }
}

package reglet.drafting;

import java.util.List;

import reglet.model.Compare;
import reglet.model.Day;
import reglet.model.Grade;
import reglet.model.Method;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Value;
import reglet.model.WordSet;

/**
 * How requirements and facts print. The unit written in the job governs; the other system stands in parentheses with three
 * significant figures, rounded to the strict side ({@link ShownUnits}).
 */
public final class Phrases {
    private Phrases() {
    }

    /** The whole phrase: "at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847". */
    public static String of(Requirement requirement) {
        String method = method(requirement.property().method());
        return required(requirement) + (method.isEmpty() ? "" : ", " + method);
    }

    /** Sense and value without the method: "at least 2.5 lb/yd² (1.36 kg/m²)". */
    public static String required(Requirement requirement) {
        return required(requirement, ShownUnits.BOTH);
    }

    /** The same with its quantities in some units. */
    public static String required(Requirement requirement, ShownUnits units) {
        Value value = requirement.value();
        Compare compare = requirement.property().compare();
        if (value instanceof Quantity) {
            return sense(compare) + value(requirement, units);
        }
        if (value instanceof Range range && compare == Compare.BETWEEN) {
            return "between " + units.text(range, Sense.required(requirement.property()), " and ");
        }
        if (value instanceof Grade grade) {
            return grade(grade, compare);
        }
        if (value instanceof Day day) {
            return date(day, compare);
        }
        if (value instanceof WordSet set && compare == Compare.ONE_OF) {
            return "one of " + list(set.words(), "or");
        }
        return value(requirement, units);
    }

    /** The bare value with its unit: "2.5 lb/yd² (1.36 kg/m²)". */
    public static String value(Requirement requirement) {
        return value(requirement, ShownUnits.BOTH);
    }

    private static String value(Requirement requirement, ShownUnits units) {
        Property property = requirement.property();
        if (property.type().kind() == PropertyType.Kind.FLAG) {
            return requirement.value().text().equals("yes") ? "required" : "not required";
        }
        return value(requirement.value(), Sense.required(property), units);
    }

    /** A fact of the job, or what a sheet states: "28 ft (8.53 m)". Nobody builds to it, so the other unit is the nearest. */
    public static String fact(Property property, Value value) {
        return fact(property, value, ShownUnits.BOTH);
    }

    static String fact(Property property, Value value, ShownUnits units) {
        return value(value, Sense.stated(property), units);
    }

    /** What the job asks by a fact, in the fact's sense: "at least 5 years", "at least 2 in (50.8 mm)", "vented". */
    static String asked(Property property, Value value) {
        return value instanceof Quantity ? sense(property.compare()) + value(value, Sense.required(property), ShownUnits.BOTH)
            : value instanceof Grade grade ? grade(grade, property.compare())
            : value instanceof Day day ? date(day, property.compare()) : fact(property, value);
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

    private static String value(Value value, Sense sense, ShownUnits units) {
        return value instanceof WordSet set ? list(set.words(), "and") : units.text(value, sense);
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

    /** A day as ISO 8601 writes it, as all our papers do: no reader takes its month for its day. */
    private static String date(Day day, Compare compare) {
        return switch (compare) {
            case AT_LEAST -> day.text() + " or later";
            case AT_MOST -> day.text() + " or earlier";
            default -> day.text();
        };
    }

    /** In the trade a bare number is exact, so that sense has no word. */
    private static String sense(Compare compare) {
        return compare == Compare.AT_LEAST || compare == Compare.AT_MOST ? compare.text() + " " : "";
    }
}

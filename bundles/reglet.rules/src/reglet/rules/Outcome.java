package reglet.rules;

import java.util.Set;
import java.util.TreeSet;

/** What came of an expression. */
sealed interface Outcome {

    /** A value: Boolean, Double, String, Quantity, Range, Grade or List of String. */
    record Known(Object value) implements Outcome {
    }

    /** Facts that would be needed are not there. */
    record Missing(Set<String> names) implements Outcome {
        public Missing {
            names = Set.copyOf(names);
        }
    }

    /** Facts that would be needed have no meaning here, such as the weight of a lath that is specified by its wire. */
    record Inapplicable(String name) implements Outcome {
    }

    /** It can't be worked out. */
    record Failed(String why) implements Outcome {
    }

    Outcome TRUE = new Known(Boolean.TRUE);
    Outcome FALSE = new Known(Boolean.FALSE);

    default boolean is(boolean value) {
        return this instanceof Known known && known.value().equals(value);
    }

    /** What keeps two expressions from having a value, the graver first: failed, inapplicable, missing. */
    static Outcome worse(Outcome one, Outcome other) {
        if (one instanceof Known || other instanceof Known) {
            return one instanceof Known ? other : one;
        }
        if (one instanceof Failed || other instanceof Failed) {
            return one instanceof Failed ? one : other;
        }
        if (one instanceof Inapplicable || other instanceof Inapplicable) {
            return one instanceof Inapplicable ? one : other;
        }
        Set<String> names = new TreeSet<>(((Missing) one).names());
        names.addAll(((Missing) other).names());
        return new Missing(names);
    }
}

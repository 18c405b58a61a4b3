package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * What values a property takes.
 *
 * @param kind  the kind of value
 * @param unit  for quantities and ranges, the unit that fixes the dimension; else empty
 * @param words for words and sets the words allowed (empty: any), for grades the steps with the least first
 */
public record PropertyType(Kind kind, Optional<Unit> unit, List<String> words) {

    /** The kinds of value; {@code FLAG} is a word that is "yes" or "no" and a truth value in expressions. */
    public enum Kind { QUANTITY, RANGE, WORD, GRADE, SET, FLAG }

    public PropertyType {
        words = List.copyOf(words);
    }
}

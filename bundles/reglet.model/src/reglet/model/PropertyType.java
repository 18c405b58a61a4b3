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
    private static final List<String> FLAG = List.of("yes", "no");

    /** The kinds of value; {@code FLAG} is a word that is "yes" or "no" and a truth value in expressions, {@code DATE} a calendar day. */
    public enum Kind { QUANTITY, RANGE, WORD, GRADE, SET, FLAG, DATE }

    public PropertyType {
        words = List.copyOf(words);
    }

    /** The value that a text means; empty when it is none of this type. */
    public Optional<Value> read(String text) {
        return switch (kind) {
            case QUANTITY -> quantity(text).map(Value.class::cast);
            case RANGE -> range(text).map(Value.class::cast);
            case WORD -> words.isEmpty() && !text.isBlank() || words.contains(text) ? Optional.of(new Word(text)) : Optional.empty();
            case FLAG -> FLAG.contains(text) ? Optional.of(new Word(text)) : Optional.empty();
            case GRADE -> words.contains(text) ? Optional.of(new Grade(text, words)) : Optional.empty();
            case SET -> set(List.of(text.split("\\s*,\\s*"))).map(Value.class::cast);
            case DATE -> Day.parse(text).map(Value.class::cast);
        };
    }

    /** What a person typed as files have it: "Nov 29, 2026" as "2026-11-29"; as it is where nothing else is meant for sure. */
    public String written(String typed) {
        return kind == Kind.DATE ? Dates.meant(typed).map(Day::text).orElse(typed) : typed;
    }

    /** The set of these words; empty when one of them is not allowed. */
    public Optional<WordSet> set(List<String> written) {
        return written.stream().allMatch(word -> words.isEmpty() && !word.isBlank() || words.contains(word))
            ? Optional.of(new WordSet(written)) : Optional.empty();
    }

    private Optional<Quantity> quantity(String text) {
        return Quantity.parse(text).filter(quantity -> quantity.dimension() == unit.orElseThrow().dimension());
    }

    /** "3/8 to 1/2 in": the low end takes the unit of the high one. */
    private Optional<Range> range(String text) {
        int to = text.indexOf(" to ");
        if (to < 0) {
            return quantity(text).map(both -> new Range(both, both));
        }
        String lowText = text.substring(0, to).strip();
        return quantity(text.substring(to + 4).strip()).flatMap(high -> {
            boolean bare = Quantity.parse(lowText).map(low -> low.unit() == Unit.ONE).orElse(false);
            return quantity(bare ? lowText + " " + high.unit().symbol() : lowText).filter(low -> low.si() <= high.si())
                .map(low -> new Range(low, high));
        });
    }
}

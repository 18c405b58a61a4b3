package reglet.store;

import java.util.List;
import java.util.Optional;

import reglet.model.Dimension;
import reglet.model.Grade;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;

/** Reads values as people write them, and says what was expected where one can't be read. */
final class Values {
    private static final List<String> FLAG = List.of("yes", "no");

    private Values() {
    }

    /** The value of a type; empty, with a problem, when the text is none. */
    static Optional<Value> read(Cursor cursor, PropertyType type) {
        return switch (type.kind()) {
            case QUANTITY -> quantity(cursor, cursor.text(), type.unit().orElseThrow()).map(Value.class::cast);
            case RANGE -> range(cursor, type.unit().orElseThrow()).map(Value.class::cast);
            case WORD -> word(cursor, cursor.text(), type.words()).map(Word::new);
            case FLAG -> word(cursor, cursor.text(), FLAG).map(Word::new);
            case GRADE -> word(cursor, cursor.text(), type.words()).map(step -> new Grade(step, type.words()));
            case SET -> set(cursor, type.words());
        };
    }

    private static Optional<Quantity> quantity(Cursor cursor, String text, Unit unit) {
        Optional<Quantity> quantity = Quantity.parse(text);
        if (quantity.isEmpty()) {
            cursor.wrong("\"" + text + "\" is no " + name(unit), expected(unit));
            return Optional.empty();
        }
        if (quantity.get().dimension() != unit.dimension()) {
            cursor.wrong("\"" + text + "\" is " + quantity.get().dimension().withArticle() + " and not " + unit.dimension().withArticle(),
                expected(unit));
            return Optional.empty();
        }
        return quantity;
    }

    private static Optional<Range> range(Cursor cursor, Unit unit) {
        String text = cursor.text();
        int to = text.indexOf(" to ");
        if (to < 0) {
            return quantity(cursor, text, unit).map(both -> new Range(both, both));
        }
        String lowText = text.substring(0, to).strip();
        Optional<Quantity> high = quantity(cursor, text.substring(to + 4).strip(), unit);
        if (high.isEmpty()) {
            return Optional.empty();
        }
        // "3/8 to 1/2 in": the low end takes the unit of the high one
        boolean bare = Quantity.parse(lowText).map(low -> low.unit() == Unit.ONE).orElse(false);
        Optional<Quantity> low = quantity(cursor, bare ? lowText + " " + high.get().unit().symbol() : lowText, unit);
        if (low.isEmpty()) {
            return Optional.empty();
        }
        if (low.get().si() > high.get().si()) {
            cursor.wrong("\"" + text + "\" runs from high to low", "write the smaller value first");
            return Optional.empty();
        }
        return Optional.of(new Range(low.get(), high.get()));
    }

    private static Optional<String> word(Cursor cursor, String text, List<String> allowed) {
        if (!allowed.isEmpty() && !allowed.contains(text)) {
            cursor.problems().unknown(cursor.at(), "unknown word", text, allowed);
            return Optional.empty();
        }
        return text.isBlank() ? Optional.empty() : Optional.of(text);
    }

    private static Optional<Value> set(Cursor cursor, List<String> allowed) {
        List<String> words = cursor.isList() ? cursor.texts() : List.of(cursor.text().split("\\s*,\\s*"));
        List<String> right = words.stream().filter(word -> word(cursor, word, allowed).isPresent()).toList();
        return right.size() == words.size() ? Optional.of(new WordSet(right)) : Optional.empty();
    }

    private static String name(Unit unit) {
        return unit.dimension() == Dimension.COUNT ? "number" : unit.dimension().text();
    }

    private static String expected(Unit unit) {
        return unit == Unit.ONE ? "expected a number" : "expected a number with a unit, such as 1 " + unit.symbol();
    }
}

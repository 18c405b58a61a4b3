package reglet.store;

import java.util.List;
import java.util.Optional;

import reglet.model.Dimension;
import reglet.model.Grade;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
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
        Optional<Value> value = cursor.isList() && type.kind() == Kind.SET ? type.set(cursor.texts()).map(Value.class::cast)
            : type.read(cursor.text());
        if (value.isEmpty()) {
            switch (type.kind()) {
                case QUANTITY -> quantity(cursor, cursor.text(), type.unit().orElseThrow());
                case RANGE -> range(cursor, type.unit().orElseThrow());
                case WORD, GRADE -> word(cursor, cursor.text(), type.words());
                case FLAG -> word(cursor, cursor.text(), FLAG);
                case DATE -> cursor.noDate();
                case SET -> (cursor.isList() ? cursor.texts() : List.of(cursor.text().split("\\s*,\\s*")))
                    .forEach(word -> word(cursor, word, type.words()));
            }
        }
        return value;
    }

    /** Says why a text is no quantity of the unit's dimension; whether it is none. */
    private static boolean quantity(Cursor cursor, String text, Unit unit) {
        Optional<Quantity> quantity = Quantity.parse(text);
        if (quantity.isEmpty()) {
            cursor.wrong("\"" + text + "\" is no " + name(unit), expected(unit));
        } else if (quantity.get().dimension() != unit.dimension()) {
            cursor.wrong("\"" + text + "\" is " + quantity.get().dimension().withArticle() + " and not " + unit.dimension().withArticle(),
                expected(unit));
        }
        return quantity.isEmpty() || quantity.get().dimension() != unit.dimension();
    }

    private static void range(Cursor cursor, Unit unit) {
        String text = cursor.text();
        int to = text.indexOf(" to ");
        if (to < 0) {
            quantity(cursor, text, unit);
            return;
        }
        String low = text.substring(0, to).strip();
        boolean bare = Quantity.parse(low).map(end -> end.unit() == Unit.ONE).orElse(false);
        if (!quantity(cursor, text.substring(to + 4).strip(), unit) && (bare || !quantity(cursor, low, unit))) {
            cursor.wrong("\"" + text + "\" runs from high to low", "write the smaller value first");
        }
    }

    private static void word(Cursor cursor, String text, List<String> allowed) {
        if (!allowed.isEmpty() && !allowed.contains(text)) {
            cursor.problems().unknown(cursor.at(), "unknown word", text, allowed);
        }
    }

    private static String name(Unit unit) {
        return unit.dimension() == Dimension.COUNT ? "number" : unit.dimension().text();
    }

    private static String expected(Unit unit) {
        return unit == Unit.ONE ? "expected a number" : "expected a number with a unit, such as 1 " + unit.symbol();
    }
}

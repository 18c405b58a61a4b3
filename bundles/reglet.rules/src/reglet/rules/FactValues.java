package reglet.rules;

import java.util.List;

import reglet.model.Numbers;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;

/** Between the model's values and those of expressions: a word is a String, a flag a Boolean, a set a list of Strings. */
final class FactValues {

    private FactValues() {
    }

    static Object plain(PropertyType type, Value value) {
        if (type.kind() == Kind.FLAG) {
            return value.text().equals("yes");
        }
        return value instanceof Word word ? word.text() : value instanceof WordSet set ? set.words() : value;
    }

    /** A value of an expression in words. */
    static String text(Object value) {
        if (value instanceof Value known) {
            return known.text();
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        if (value instanceof Double number) {
            return Numbers.significant(number, 3, Numbers.Side.NEAREST);
        }
        return value instanceof List<?> list ? String.join(", ", list.stream().map(String::valueOf).toList()) : String.valueOf(value);
    }

    /** A value of an expression as the model has it, for findings. */
    static Value model(Object value) {
        if (value instanceof Value known) {
            return known;
        }
        return value instanceof List<?> list ? new WordSet(list.stream().map(String::valueOf).toList()) : new Word(text(value));
    }

}

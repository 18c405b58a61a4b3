package reglet.workbench.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A paragraph's text while somebody writes in it: words, and values that are chosen elsewhere. A value is one thing: it can be taken out
 * or put elsewhere, and nothing can be written inside it. Immutable.
 *
 * @param text   as shown, values as they print
 * @param values in the order in which they stand
 */
record ValueText(String text, List<Mark> values) {
    private static final Pattern SLOT = Pattern.compile("\\$\\{([^}\\s]*)}");
    /** Signs that the library's texts have a backslash before, though they mean nothing where they stand. */
    private static final Pattern NEEDLESS = Pattern.compile("\\\\([&!<>\\[\\]])");

    ValueText {
        values = List.copyOf(values);
    }

    /**
     * Where a value stands.
     *
     * @param end  behind it
     * @param name of its slot: "lath.weight", "see.lath", "std.ASTM_C847"
     */
    record Mark(int start, int end, String name) {
        Mark by(int places) {
            return new Mark(start + places, end + places, name);
        }
    }

    /**
     * What writing did.
     *
     * @param caret   where the caret stands afterwards
     * @param refused the value that it would have changed; the text is as before then
     */
    record Written(ValueText text, int caret, Optional<Mark> refused) {
    }

    /** @param prints what the slot of a name prints */
    static ValueText of(String source, UnaryOperator<String> prints) {
        StringBuilder text = new StringBuilder();
        List<Mark> values = new ArrayList<>();
        Matcher slot = SLOT.matcher(source);
        int from = 0;
        while (slot.find()) {
            text.append(plain(source.substring(from, slot.start())));
            String printed = prints.apply(slot.group(1));
            values.add(new Mark(text.length(), text.length() + printed.length(), slot.group(1)));
            text.append(printed);
            from = slot.end();
        }
        return new ValueText(text.append(plain(source.substring(from))).toString(), values);
    }

    private static String plain(String markdown) {
        return NEEDLESS.matcher(markdown).replaceAll("$1");
    }

    /** The text as it is kept: values by the names of their slots. */
    String source() {
        StringBuilder source = new StringBuilder();
        int from = 0;
        for (Mark value : values) {
            source.append(text, from, value.start()).append("${").append(value.name()).append('}');
            from = value.end();
        }
        return source.append(text.substring(from)).toString();
    }

    /**
     * Writes in place of a stretch. A value that the stretch touches goes as a whole when something is taken out; nothing can be written
     * into one.
     */
    Written write(int start, int end, ValueText put) {
        boolean taking = put.text.isEmpty();
        int from = start;
        int to = end;
        for (Mark value : values) {
            boolean within = value.start() < end && start < value.end() && !(start <= value.start() && value.end() <= end);
            if (within && !taking || start == end && value.start() < start && start < value.end()) {
                return new Written(this, start, Optional.of(value));
            }
            if (within) {
                from = Math.min(from, value.start());
                to = Math.max(to, value.end());
            }
        }
        return new Written(replaced(from, to, put), from + put.text.length(), Optional.empty());
    }

    private ValueText replaced(int start, int end, ValueText put) {
        List<Mark> marks = new ArrayList<>();
        values.stream().filter(value -> value.end() <= start).forEach(marks::add);
        put.values.forEach(value -> marks.add(value.by(start)));
        values.stream().filter(value -> value.start() >= end && value.end() > start)
            .forEach(value -> marks.add(value.by(put.text.length() - (end - start))));
        return new ValueText(text.substring(0, start) + put.text + text.substring(end), marks);
    }

    /** A stretch with the values that stand in it as wholes. */
    ValueText part(int start, int end) {
        return new ValueText(text.substring(start, end), values.stream().filter(value -> start <= value.start() && value.end() <= end)
            .map(value -> value.by(-start)).toList());
    }

    /** The value at a place, or beside it. */
    Optional<Mark> at(int place) {
        return values.stream().filter(value -> value.start() <= place && place <= value.end()).findFirst();
    }

    static ValueText words(String text) {
        return new ValueText(text, List.of());
    }
}

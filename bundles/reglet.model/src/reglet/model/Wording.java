package reglet.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A sentence in which values stand, so that it can be said in other units.
 *
 * @param text   the sentence with its values as they were written
 * @param values where they stand, in order
 */
public record Wording(String text, List<Said> values) {
    private static final String NUMBER = "[-−]?\\d+(?:-\\d+/\\d+|/\\d+|(?:,\\d{3})+|\\.\\d+)?";
    /** A number with its unit; of two with one unit both. */
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\w./,-])(?:(?<first>" + NUMBER + ")(?: to | and | or | by ))?(?<last>"
        + NUMBER + ") (?<unit>" + Arrays.stream(Unit.values()).filter(unit -> unit.system().isPresent()).map(Unit::symbol)
            .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote).collect(Collectors.joining("|"))
        + ")(?![\\w/²³·])");
    /** "the 2021 in force" is no length. */
    private static final String YEAR = "(?:19|20)\\d\\d";

    /** A value in a sentence, from one place of the text to another. */
    public record Said(int start, int end, Value value, ShownUnits.Sense sense) {
    }

    public Wording {
        values = List.copyOf(values);
    }

    /** A sentence without values. */
    public static Wording of(String text) {
        return new Wording(text, List.of());
    }

    /** The same behind other words. */
    public Wording behind(String words) {
        return new Wording(words + text, values.stream()
            .map(said -> new Said(said.start + words.length(), said.end + words.length(), said.value, said.sense)).toList());
    }

    /** The sentence with its values in some units. */
    public String in(ShownUnits units) {
        if (units.equals(ShownUnits.AS_WRITTEN)) {
            return text;
        }
        StringBuilder told = new StringBuilder();
        int at = 0;
        for (Said said : values) {
            told.append(text, at, said.start).append(units.text(said.value, said.sense));
            at = said.end;
        }
        return told.append(text, at, text.length()).toString();
    }

    /** Puts a sentence together. */
    public static final class Builder {
        private final StringBuilder text = new StringBuilder();
        private final List<Said> values = new ArrayList<>();

        public Builder words(String words) {
            text.append(words);
            return this;
        }

        /** Words in which amounts with their units are values too: "2 in and more are needed", "at 16 or 24 in". */
        public Builder amounts(String words) {
            int at = 0;
            for (Matcher found = AMOUNT.matcher(words); found.find();) {
                Unit unit = Unit.of(found.group("unit")).orElseThrow();
                if (unit == Unit.IN && found.group("last").matches(YEAR)) {
                    continue;
                }
                at = amount(words, at, found.start("first"), found.end("first"), found.group("first"), unit);
                at = amount(words, at, found.start("last"), found.end("unit"), found.group("last"), unit);
            }
            return words(words.substring(at));
        }

        /** The words from a place on to an amount, and the amount; empty for none. @return the place behind it */
        private int amount(String words, int from, int start, int end, String number, Unit unit) {
            if (number == null) {
                return from;
            }
            words(words.substring(from, start));
            values.add(new Said(text.length(), text.length() + end - start,
                new Quantity(unit.toSi(Numbers.number(number).orElseThrow()), unit, number), ShownUnits.Sense.PLAIN));
            words(words.substring(start, end));
            return end;
        }

        public Builder value(Value value, ShownUnits.Sense sense) {
            int start = text.length();
            text.append(value.text());
            values.add(new Said(start, text.length(), value, sense));
            return this;
        }

        public Wording build() {
            return new Wording(text.toString(), values);
        }
    }
}

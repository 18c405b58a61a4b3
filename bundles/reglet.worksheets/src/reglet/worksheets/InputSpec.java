package reglet.worksheets;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import reglet.model.Basis;
import reglet.model.Unit;

/**
 * What a worksheet asks for under one key.
 *
 * @param key      "height"
 * @param label    words for people
 * @param kind     how the text is read
 * @param unit     of a quantity: the unit it is asked in; any unit of the same dimension is understood
 * @param words    of a word: those it may be
 * @param range    of a quantity: the range in which the formulas hold, or that the trade knows
 * @param usual    the text taken when nothing is typed; "" when there is none
 * @param required whether it must be typed
 * @param help     a sentence; may be ""
 */
public record InputSpec(String key, String label, Kind kind, Optional<Unit> unit, List<String> words, Optional<Limits> range, String usual,
        boolean required, String help) {

    /** How a text is read. */
    public enum Kind {
        /** "3/8 in" */
        QUANTITY("quantity"),
        /** one of the words */
        WORD("word"),
        /** "40 ft x 10 ft; 3 ft x 5 ft x 4": width, height and, when more than one, how many */
        RECTANGLES("rectangles"),
        /** "12 ft backing joint; 24 ft designer's layout": place and reason */
        JOINTS("joints");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** From low to high, both included, in the unit of the input; with where the limits come from. */
    public record Limits(double low, double high, Basis basis) {
    }

    public InputSpec {
        words = List.copyOf(words);
    }

    static InputSpec quantity(String key, String label, Unit unit) {
        return new InputSpec(key, label, Kind.QUANTITY, Optional.of(unit), List.of(), Optional.empty(), "", true, "");
    }

    static InputSpec word(String key, String label, Worded... words) {
        return new InputSpec(key, label, Kind.WORD, Optional.empty(), Arrays.stream(words).map(Worded::text).toList(), Optional.empty(), "",
            true, "");
    }

    static InputSpec yesNo(String key, String label) {
        return new InputSpec(key, label, Kind.WORD, Optional.empty(), List.of("yes", "no"), Optional.empty(), "no", false, "");
    }

    static InputSpec rectangles(String key, String label) {
        return new InputSpec(key, label, Kind.RECTANGLES, Optional.empty(), List.of(), Optional.empty(), "", true, "");
    }

    static InputSpec joints(String key, String label) {
        List<String> reasons = Arrays.stream(JointLine.Reason.values()).map(Worded::text).toList();
        return new InputSpec(key, label, Kind.JOINTS, Optional.empty(), reasons, Optional.empty(), "", false, "");
    }

    InputSpec within(double low, double high, Basis basis) {
        return new InputSpec(key, label, kind, unit, words, Optional.of(new Limits(low, high, basis)), usual, required, help);
    }

    InputSpec usually(String text) {
        return new InputSpec(key, label, kind, unit, words, range, text, false, help);
    }

    InputSpec maybe() {
        return new InputSpec(key, label, kind, unit, words, range, "", false, help);
    }

    InputSpec help(String sentence) {
        return new InputSpec(key, label, kind, unit, words, range, usual, required, sentence);
    }

    /** The range in words with its source: "15 ft to 60 ft (ASCE 7 2016, Figure 30.3-1 (read))"; "" without one. */
    public String rangeText() {
        return range.map(limits -> Sheet.number(limits.low(), unit.orElseThrow()) + " to " + Sheet.number(limits.high(), unit.orElseThrow())
            + "; " + limits.basis().text()).orElse("");
    }
}

package reglet.model;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something that bidders price apart: another version of the work, a sum carried for work not yet known, or a price for each unit.
 *
 * @param number  counted by the job for each kind
 * @param section number of the section that lists it; "" for an alternate, which stands where it changes something
 * @param unit    for a unit price, what is counted: "ft2", "each"; else ""
 * @param state   what the owner decided on it
 */
public record Alternate(int number, Kind kind, String title, String description, String section, String unit, State state, Place at) {

    /** What became of an alternate; allowances and unit prices stay offered. */
    public enum State {
        OFFERED("offered"), ACCEPTED("accepted"), DECLINED("declined");

        private final String text;

        State(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** The kinds, as bidding documents name them. */
    public enum Kind {
        ALTERNATE("alternate"), ALLOWANCE("allowance"), UNIT_PRICE("unit price");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }

        public static List<String> words() {
            return Stream.of(values()).map(Kind::text).toList();
        }
    }

    /** "Alternate No. 1", "Unit Price No. 2". */
    public String name() {
        return Stream.of(kind.text().split(" ")).map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
            .collect(Collectors.joining(" ")) + " No. " + number;
    }

    /** "Alternate No. 1", "Alternates No. 1 and No. 2". */
    public static String names(List<Integer> numbers) {
        List<String> each = numbers.stream().map(number -> "No. " + number).toList();
        int last = each.size() - 1;
        return last == 0 ? "Alternate " + each.get(0)
            : "Alternates " + String.join(", ", each.subList(0, last)) + " and " + each.get(last);
    }

    /** "Alternate No. 1, stainless lath". */
    public String titled() {
        return name() + ", " + title;
    }

    /** Whether it is an alternate, and no allowance or unit price, of this state. */
    public boolean is(State asked) {
        return kind == Kind.ALTERNATE && state == asked;
    }

    /** The same with another state. */
    public Alternate with(State other) {
        return new Alternate(number, kind, title, description, section, unit, other, at);
    }
}

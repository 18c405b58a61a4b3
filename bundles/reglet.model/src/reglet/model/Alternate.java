package reglet.model;

import java.util.List;
import java.util.stream.Stream;

/**
 * Something that bidders price apart: another version of the work, a sum carried for work not yet known, or a price for each unit.
 *
 * @param number  counted by the job for each kind
 * @param section number of the section that lists it; "" for an alternate, which stands where it changes something
 * @param unit    for a unit price, what is counted: "ft2", "each"; else ""
 * @param taken   whether the owner has taken the alternate up
 */
public record Alternate(int number, Kind kind, String title, String description, String section, String unit, boolean taken, Place at) {

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

    /** "Alternate 1". */
    public String name() {
        return kind.text().substring(0, 1).toUpperCase(java.util.Locale.ROOT) + kind.text().substring(1) + " " + number;
    }
}

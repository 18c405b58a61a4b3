package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * What was handed in for register items, and what was answered.
 *
 * @param id        folder name: "04-73-00-01"
 * @param section   section number
 * @param items     ids of the register items that it covers
 * @param products  ids of the product data that it carries
 * @param from      who hands it in
 * @param date      day handed in, as written (ISO 8601); ""
 * @param statement the contractor's statement of review; "" when it was not made
 * @param deviations deviations that the contractor lists; empty for none
 * @param notes     notes
 * @param with      what of our own making goes in by choice: "worksheets", "details"
 * @param replaces  id of the submittal that this one is handed in again for; ""
 * @param encloses papers, colours and substitutions
 * @param review    the reviewer's answer, once there is something of it
 */
public record Submittal(String id, String section, List<String> items, List<String> products, String from, String date, String statement,
        List<String> deviations, String notes, List<String> with,
        String replaces, Enclosures encloses, Optional<Review> review, Place at) {

    /** What may go in by choice. */
    public static final List<String> BY_CHOICE = List.of("worksheets", "details");

    public Submittal {
        items = List.copyOf(items);
        products = List.copyOf(products);
        deviations = List.copyOf(deviations);
        with = List.copyOf(with);
    }
}

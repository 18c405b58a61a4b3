package reglet.model;

import java.util.Optional;

/**
 * A value read from a data sheet, or typed from one.
 *
 * @param property  "lath.weight"
 * @param value     the value
 * @param compare   the sense in which the sheet states it; empty when it states a plain value
 * @param method    standard that the sheet names, as a standard's key ("ASTM C847"); "" when none
 * @param edition   edition that the sheet names; ""
 * @param text      the words of the sheet
 * @param page      page counted from 1
 * @param box       where it stands on the page, when known
 * @param confirmed whether a person confirmed it
 */
public record SheetValue(String property, Value value, Optional<Compare> compare, String method, String edition, String text, int page,
        Optional<Box> box, boolean confirmed) {
}

package reglet.reading.value;

import java.util.List;
import java.util.Optional;

import reglet.model.Compare;
import reglet.reading.words.Citations.Citation;

/**
 * What is known of a value beside its own words.
 *
 * @param unit    that a heading or a cell beside it states; ""
 * @param methods standards that it is shown by
 * @param model   the model that it is of; ""
 * @param sense   that a heading states
 * @param share   how sure such a place on a sheet makes one, from 0 to 1
 */
public record Around(String unit, List<Citation> methods, String model, Optional<Compare> sense, double share) {
    public static Around of(List<Citation> methods, double share) {
        return new Around("", methods, "", Optional.empty(), share);
    }
}

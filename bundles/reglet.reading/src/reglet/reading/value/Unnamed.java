package reglet.reading.value;

import java.util.List;
import java.util.function.Predicate;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.words.Label;

/**
 * A label that no name is in, with what stands beside it.
 *
 * @param take takes the values down as those of what some label names; false where they are none
 */
public record Unnamed(Layout layout, Cell label, List<Cell> values, Predicate<Label> take) {
}

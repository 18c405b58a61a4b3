package reglet.reading.value;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;

/** What a row says of its model in a column whose heading names nothing: "Use" above "Heads, with weep holes". */
public record Described(Layout layout, String model, Cell cell) {
}

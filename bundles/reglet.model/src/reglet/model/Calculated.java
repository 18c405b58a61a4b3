package reglet.model;

import java.util.List;

/**
 * A worksheet with what is drawn beside it.
 *
 * @param charts   curves; may be none
 * @param drawings sections to scale; may be none
 */
public record Calculated(Worksheet worksheet, List<Chart> charts, List<Drawing> drawings) {

    public Calculated {
        charts = List.copyOf(charts);
        drawings = List.copyOf(drawings);
    }
}

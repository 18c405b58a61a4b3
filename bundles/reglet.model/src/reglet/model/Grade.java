package reglet.model;

import java.util.List;

/**
 * A step of an ordered scale.
 *
 * @param text  the step
 * @param scale all steps, the least first
 */
public record Grade(String text, List<String> scale) implements Value {

    public Grade {
        scale = List.copyOf(scale);
        if (!scale.contains(text)) {
            throw new IllegalArgumentException("'" + text + "' is no step of " + scale);
        }
    }

    /** Place on the scale, counted from 0 for the least. */
    public int rank() {
        return scale.indexOf(text);
    }
}

package reglet.model;

import java.util.List;

/** What makers write for a property: "lath.weight" is "weight", "mass per unit area". */
public record Synonym(String property, List<String> labels, Place at) {
    public Synonym {
        labels = List.copyOf(labels);
    }
}

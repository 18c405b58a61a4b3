package reglet.model;

import java.util.List;

/**
 * What makers write for something that the pack names: a property ("lath.weight" is "mass per unit area"), a component ("lath" is
 * "plaster base"), a word of a property ("lath.kind.rib" is "rib lath") or a method ("ASTM E96 Procedure A" is "desiccant method").
 */
public record Synonym(String property, List<String> labels, Place at) {
    public Synonym {
        labels = List.copyOf(labels);
    }
}

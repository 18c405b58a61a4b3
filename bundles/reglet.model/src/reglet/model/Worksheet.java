package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A calculation, as an engineer would hand it in.
 *
 * @param name     "wind"
 * @param title    words for people
 * @param wall     wall type id; "" when it runs alone
 * @param inputs   by key, in the order they are asked for
 * @param steps    in the order calculated
 * @param results  by key
 * @param margin   what is there over what is needed; empty where there is no such ratio
 * @param assumed  every assumption, in sentences
 * @param warnings what a person has to look at
 */
public record Worksheet(String name, String title, String wall, Map<String, Input> inputs, List<Step> steps, Map<String, Amount> results,
        OptionalDouble margin, List<String> assumed, List<String> warnings) {

    public Worksheet {
        inputs = Ordered.copy(inputs);
        steps = List.copyOf(steps);
        results = Ordered.copy(results);
        assumed = List.copyOf(assumed);
        warnings = List.copyOf(warnings);
    }

    /** A value with where it comes from: a file of the job, "typed", or "usual value". */
    public record Input(String label, Value value, String from) {
    }

    /** A number in the SI unit of its dimension, with the unit that people read it in. */
    public record Amount(String label, double si, Unit unit) {
    }

    /**
     * A step.
     *
     * @param symbol       "qh"
     * @param label        "velocity pressure at mean roof height"
     * @param formula      "qh = 0.613 Kz Kzt Kd Ke V²"
     * @param substitution the formula with its numbers
     * @param value        the result
     */
    public record Step(String symbol, String label, String formula, String substitution, Amount value, List<Basis> basis) {
        public Step {
            basis = List.copyOf(basis);
        }
    }
}

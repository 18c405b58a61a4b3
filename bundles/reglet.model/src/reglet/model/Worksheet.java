package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A calculation, as an engineer would hand it in.
 *
 * @param name     "wind"
 * @param title    words for people
 * @param component that it shows to be enough: packages with a product for it carry the worksheet; ""
 * @param wall     wall type id; "" when it runs alone
 * @param meeting  id of the meeting that it is for; ""
 * @param inputs   by key, in the order they are asked for
 * @param steps    in the order calculated
 * @param results  by key
 * @param margin   what is there over what is needed; empty where there is no such ratio
 * @param assumed  every assumption, in sentences
 * @param warnings what a person has to look at
 */
public record Worksheet(String name, String title, String component, String wall, String meeting, Map<String, Input> inputs,
        List<Step> steps, Map<String, Amount> results, OptionalDouble margin, List<String> assumed, List<String> warnings) {

    public Worksheet {
        inputs = Ordered.copy(inputs);
        steps = List.copyOf(steps);
        results = Ordered.copy(results);
        assumed = List.copyOf(assumed);
        warnings = List.copyOf(warnings);
    }

    /** The same worksheet as a pack asked for it. */
    public Worksheet at(Calculation calculation, String newWall, String newMeeting) {
        return new Worksheet(name, calculation.title(), calculation.component(), newWall, newMeeting, inputs, steps, results, margin,
            assumed, warnings);
    }

    /** The same worksheet under another title. */
    public Worksheet titled(String newTitle) {
        return new Worksheet(name, newTitle, component, wall, meeting, inputs, steps, results, margin, assumed, warnings);
    }

    /** What is given for an input, and where it comes from. */
    public record Supplied(Value value, String from) {
    }

    /** A value with where it comes from: a file of the job, "typed", or "usual value". */
    public record Input(String label, Value value, String from) {
    }

    /** A number in the SI unit of its dimension, with the unit that people read it in. */
    public record Amount(String label, double si, Unit unit) {

        /** The amount as people read it, the number to four figures. */
        public Quantity quantity() {
            return new Quantity(si, unit, Numbers.significant(unit.fromSi(si), 4, Numbers.Side.NEAREST));
        }
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

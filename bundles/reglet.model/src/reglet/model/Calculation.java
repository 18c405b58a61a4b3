package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A worksheet that a pack asks for: what its inputs are in a job, and which of its results expressions may read as
 * "worksheets.ID.RESULT".
 *
 * @param id        "wind_corner"; also the file name
 * @param worksheet name of the worksheet: "wind"
 * @param title     words for people, such as "Wind at the corners"
 * @param component that it shows to be enough: packages with a product for it carry the worksheet; "" for none
 * @param order     place among the worksheets of a wall
 * @param each      for each wall type or each meeting of one
 * @param subject   for meetings, the subject id; else ""
 * @param when      expression that says whether it is asked for; "" for always
 * @param inputs    by key of the worksheet; a key that isn't there takes the worksheet's usual value
 * @param results   the results that expressions may read; a result that didn't come has no meaning there
 */
public record Calculation(String id, String worksheet, String title, String component, int order, Scope each, String subject, String when,
        Map<String, Source> inputs, List<Property> results, Place at) {

    /** What the names of all results begin with. */
    public static final String OWNER = "worksheets";

    public Calculation {
        inputs = Ordered.copy(inputs);
        results = List.copyOf(results);
    }

    /** How an input's value is made of its expressions. */
    public enum How {
        /** the value of one expression */
        VALUE,
        /** the sum of an expression over the meetings of a subject */
        SUM,
        /** an item for each meeting of a subject, made of the expressions' values */
        LIST
    }

    /**
     * Where an input's value comes from.
     *
     * @param subject for sums and lists, the subject whose meetings are gone through; else ""
     * @param when    which of them count; "" for all
     * @param parts   expressions; one but for lists
     * @param maybe   whether the worksheet can do without: what isn't stated then takes the worksheet's usual value
     */
    public record Source(How how, String subject, String when, List<String> parts, boolean maybe) {
        public Source {
            parts = List.copyOf(parts);
        }
    }

    /** A result by what follows "worksheets.": "wind_corner.pressure.out". */
    static Optional<Property> result(List<Calculation> calculations, String name) {
        return calculations.stream().filter(calculation -> name.startsWith(calculation.id() + "."))
            .flatMap(calculation -> calculation.results().stream().filter(result -> name.equals(calculation.id() + "." + result.name())))
            .findFirst();
    }
}

package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a submittal carries besides product data.
 *
 * @param papers        certificates and reports
 * @param colours       the colour chosen of a product, by the product's id, in the words of its sheet
 * @param substitutions what is asked for products that are not as specified
 */
public record Enclosures(List<Paper> papers, Map<String, String> colours, List<Substitution> substitutions) {
    public static final Enclosures NONE = new Enclosures(List.of(), Map.of(), List.of());

    /** What a paper may be. */
    public static final List<Evidence> KINDS = List.of(Evidence.EVALUATION_REPORT, Evidence.TEST_REPORT, Evidence.CERTIFICATE,
        Evidence.COMPATIBILITY, Evidence.SHOP_DRAWING, Evidence.CALCULATION);

    public Enclosures {
        papers = List.copyOf(papers);
        colours = Ordered.copy(colours);
        substitutions = List.copyOf(substitutions);
    }

    /**
     * A certificate, report, drawing or calculation by others.
     *
     * @param file      path relative to the job folder
     * @param kind      one of {@link #KINDS}
     * @param component id of the component that it is for; ""
     * @param title     words for contents and divider
     */
    public record Paper(String file, Evidence kind, String component, String title, Place at) {
    }

    /**
     * What is asked for a product that falls short, or that is another than specified. "" where it isn't said yet.
     *
     * @param product   id of the product data
     * @param component id of the component that it takes the place of
     * @param cost      what it changes in the price
     * @param time      what it changes in the schedule
     * @param work      what it changes in the work of others
     * @param reason    why it is asked for
     */
    public record Substitution(String product, String component, String cost, String time, String work, String reason, Place at) {
    }

    /** The substitution asked for with a product. */
    public Optional<Substitution> substitution(String product) {
        return substitutions.stream().filter(asked -> asked.product().equals(product)).findFirst();
    }
}

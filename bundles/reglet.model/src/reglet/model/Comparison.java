package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * Requirements against submitted values.
 *
 * @param submittal id of the submittal
 * @param rows      in the order of products, walls and requirements
 */
public record Comparison(String submittal, List<Row> rows) {

    public Comparison {
        rows = List.copyOf(rows);
    }

    public enum Result {
        MEETS("meets"), FALLS_SHORT("falls short"), NOT_SHOWN("not shown"), DIFFERENT_METHOD("different method"),
        CANNOT_COMPARE("cannot compare");

        private final String text;

        Result(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * One requirement against one product.
     *
     * @param product   id of the product data
     * @param paragraph number of the paragraph that prints the requirement; "" when it is not printed
     * @param submitted the product's value, when its sheet shows one
     * @param result    the result
     * @param shortBy   for a quantity that falls short, by how much in SI
     * @param note      what a person should know: the conversion, the tolerance, that the value is not confirmed
     */
    public record Row(String product, String paragraph, Requirement requirement, Optional<SheetValue> submitted, Result result,
            Optional<ShortBy> shortBy, String note) {

        /** "W1.lath.weight". */
        public String place() {
            return requirement.wall() + "." + requirement.path();
        }

        /** "W1.lath.weight of lath-metal": the place, and the product where there is one. */
        public String id() {
            return product.isEmpty() ? place() : place() + " of " + product;
        }
    }

    /** How far a quantity falls short: in SI, and as a share of what is required. */
    public record ShortBy(double si, Dimension dimension, double ofRequired) {
    }
}

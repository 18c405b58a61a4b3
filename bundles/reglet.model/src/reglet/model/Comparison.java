package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Requirements against submitted values.
 *
 * @param submittal id of the submittal
 * @param rows      in the order of products, walls and requirements
 * @param remarks   sentences on alternates that something was submitted for
 */
public record Comparison(String submittal, List<Row> rows, List<String> remarks) {

    public Comparison {
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
    }

    /** A comparison without remarks. */
    public Comparison(String submittal, List<Row> rows) {
        this(submittal, rows, List.of());
    }

    /**
     * The same comparison, in which no requirement is used that the section does not state.
     *
     * @param unstated why the section does not state them, in a sentence, by requirement
     */
    public Comparison without(Map<Requirement, String> unstated) {
        return new Comparison(submittal, rows.stream()
            .map(row -> Optional.ofNullable(unstated.get(row.requirement())).map(row::unstated).orElse(row)).toList(), remarks);
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

        /** The same row for a requirement that no text of the section states: nothing can be held to it. */
        public Row unstated(String why) {
            String would = result == Result.CANNOT_COMPARE ? "" : " Against the choice it would be \"" + result.text() + "\".";
            return new Row(product, "", requirement, submitted, Result.CANNOT_COMPARE, Optional.empty(), (why + would + " "
                + note).strip());
        }

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

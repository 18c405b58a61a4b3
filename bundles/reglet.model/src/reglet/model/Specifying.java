package reglet.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a product paragraph says what is to be provided.
 *
 * @param how        by what
 * @param product    name of the product on which the design is based, or which alone is accepted; "" when none is named
 * @param maker      who makes it; ""
 * @param comparable whether products of others are accepted that meet the paragraph's requirements
 */
public record Specifying(How how, String product, String maker, boolean comparable) {
    /** By values alone: what holds when a choice says nothing. */
    public static final Specifying PERFORMANCE = new Specifying(How.PERFORMANCE, "", "", true);
    /** What a choice says of it besides its requirements; the names of facts and slots such as {@code lath.specify}. */
    public static final String HOW = "specify";
    public static final String COMPARABLE = "comparable";
    public static final Property PRODUCT = property("product", "product name", PropertyType.Kind.WORD, Evidence.PRODUCT_DATA);
    public static final Property MAKER = property("maker", "maker", PropertyType.Kind.WORD, Evidence.NONE);
    public static final Property STANDARDS = property("standards", "conformity to the standard", PropertyType.Kind.SET,
        Evidence.PRODUCT_DATA);

    /** The methods of specifying. */
    public enum How {
        PERFORMANCE("performance"), REFERENCE_STANDARD("reference standard"), BASIS_OF_DESIGN("basis of design"),
        PROPRIETARY("proprietary");

        private final String text;

        How(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }

        public static List<String> words() {
            return Stream.of(values()).map(How::text).toList();
        }
    }

    /** Whether it has to name a product. */
    public boolean namesProduct() {
        return how == How.BASIS_OF_DESIGN || how == How.PROPRIETARY;
    }

    /** Properties that every component has by the way it is specified, besides those that the pack declares. */
    static Optional<Property> property(String name) {
        return Stream.of(PRODUCT, MAKER, STANDARDS).filter(property -> property.name().equals(name)).findFirst();
    }

    private static Property property(String name, String label, PropertyType.Kind kind, Evidence evidence) {
        return new Property(name, label, new PropertyType(kind, Optional.empty(), List.of()), Compare.EXACTLY, false, Method.NONE,
            evidence, "", Optional.empty(), "", List.of(), Place.of(""));
    }
}

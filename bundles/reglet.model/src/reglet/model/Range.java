package reglet.model;

/**
 * From a low to a high quantity of the same dimension, both included.
 */
public record Range(Quantity low, Quantity high) implements Value {

    public Range {
        if (low.dimension() != high.dimension() || low.si() > high.si()) {
            throw new IllegalArgumentException("a range goes from low to high of one dimension, not from " + low.text() + " to "
                + high.text());
        }
    }

    @Override
    public String text() {
        return low.unit() == high.unit() ? low.amount() + " to " + high.text() : low.text() + " to " + high.text();
    }
}

package reglet.model;

import java.util.Optional;

/**
 * A number with its unit.
 *
 * @param si     the number in the SI unit of the unit's dimension; finite
 * @param unit   the unit it was written in
 * @param amount the number as it was written, such as "3-1/2": printed as it stands, so that no rounding touches it
 */
public record Quantity(double si, Unit unit, String amount) implements Value {

    /** Relative difference below which two quantities are the same: 3/8 in is 9.525 mm and is sold as 9.5 mm. */
    public static final double TOLERANCE = 0.004;

    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be finite, but " + amount + " " + unit.symbol() + " is " + si);
        }
    }

    /** A number of a unit; the amount prints as {@link Numbers#plain}. */
    public static Quantity of(double number, Unit unit) {
        return new Quantity(unit.toSi(number), unit, Numbers.plain(number));
    }

    /** Reads "2.5 lb/yd2", "3-1/2 in", "1 1/2 in", "90%", "-20 °F"; empty when the text is no quantity. */
    public static Optional<Quantity> parse(String text) {
        return Numbers.parse(text);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The number in another unit of the same dimension. */
    public double in(Unit other) {
        if (other.dimension() != dimension()) {
            throw new IllegalArgumentException(text() + " is " + dimension().withArticle() + ", not " + other.dimension().withArticle());
        }
        return other.fromSi(si);
    }

    /** The same quantity written in another unit, rounded to three significant figures. */
    public Quantity as(Unit other) {
        return new Quantity(si, other, Numbers.significant(in(other), 3, Numbers.Side.NEAREST));
    }

    /** -1, 0 or 1, where quantities within {@link #TOLERANCE} of each other are equal; whole days are counted, so that each day tells. */
    public int compareWith(Quantity other) {
        if (other.dimension() != dimension()) {
            throw new IllegalArgumentException("cannot compare " + text() + " with " + other.text());
        }
        return isWholeDays() && other.isWholeDays() ? Double.compare(in(Unit.DAY), other.in(Unit.DAY)) : compareSi(si, other.si);
    }

    private boolean isWholeDays() {
        return unit == Unit.DAY && Math.rint(in(Unit.DAY)) == in(Unit.DAY);
    }

    /** As {@link #compareWith}, for bare numbers in the same unit. */
    public static int compareSi(double a, double b) {
        double scale = Math.max(Math.abs(a), Math.abs(b));
        return Math.abs(a - b) <= TOLERANCE * scale ? 0 : Double.compare(a, b);
    }

    @Override
    public String text() {
        return switch (unit) {
            case PERCENT -> amount + "%";
            case ONE -> amount;
            default -> amount + " " + unit.symbol();
        };
    }
}

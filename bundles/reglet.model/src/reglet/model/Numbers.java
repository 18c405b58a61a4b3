package reglet.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reading and printing of the numbers that people write: whole, decimal, fraction ("3/8") and mixed ("3-1/2", "3 1/2"). */
public final class Numbers {

    /** The side to which a converted value is rounded. */
    public enum Side { NEAREST, UP, DOWN }

    private static final String NUMBER = "[-+−]?(?:\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:[- ]\\d+)?/\\d+|\\d+(?:\\.\\d+)?|\\.\\d+)";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")\\s*(.*)", Pattern.DOTALL);
    private static final Pattern FRACTION = Pattern.compile("([-+]?)(?:(\\d+)[- ])?(\\d+)/(\\d+)");

    private Numbers() {
    }

    /** The pattern of one number, for readers of running text. */
    public static String pattern() {
        return NUMBER;
    }

    static Optional<Quantity> parse(String text) {
        Matcher matcher = QUANTITY.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        return Unit.of(matcher.group(2)).flatMap(unit -> number(matcher.group(1))
            .map(unit::toSi).filter(Double::isFinite)
            .map(si -> new Quantity(si, unit, matcher.group(1).replace('−', '-'))));
    }

    /** The number that a text writes; empty when it is none. */
    public static Optional<Double> number(String written) {
        String text = written.strip().replace('−', '-').replace(",", "");
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            double parts = Double.parseDouble(fraction.group(4));
            if (parts == 0) {
                return Optional.empty();
            }
            double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
            double magnitude = whole + Double.parseDouble(fraction.group(3)) / parts;
            return Optional.of(fraction.group(1).equals("-") ? -magnitude : magnitude);
        }
        try {
            return Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    /** A number as short as it can be written without losing what it says to ten figures. */
    public static String plain(double number) {
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(10, RoundingMode.HALF_EVEN)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    /** A number with so many significant figures, rounded to a side; zeros that say nothing are left out. */
    public static String significant(double number, int figures, Side side) {
        if (number == 0) {
            return "0";
        }
        RoundingMode mode = switch (side) {
            case NEAREST -> RoundingMode.HALF_EVEN;
            case UP -> RoundingMode.CEILING;
            case DOWN -> RoundingMode.FLOOR;
        };
        // Ten figures first: a conversion's last binary digit must not push 12.7 up to 12.8.
        BigDecimal clean = new BigDecimal(number).round(new MathContext(10, RoundingMode.HALF_EVEN));
        BigDecimal rounded = clean.round(new MathContext(figures, mode)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }
}

package reglet.reading.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Property;

/**
 * A thermal resistance as sheets write it, in either system of units: "R-5.0 (RSI 0.88)", "0.88 m²·K/W". The pack asks for it as a bare
 * figure in h·ft²·°F/Btu.
 */
final class ThermalResistance {
    /** How a label or a cell says that a figure is in m²·K/W. */
    static final String METRIC = "m²·K/W";
    /** m²·K/W in one h·ft²·°F/Btu (ASTM C168 and SI 10 give 0.1761). */
    private static final double RSI = 0.1761;
    private static final double ROUNDED = 0.03;
    private static final String METRIC_UNIT = "(?i:m(?:²|2|\\^2)\\s*[·.⋅*•-]?\\s*[°º]?[KC]\\s*/\\s*W)";
    private static final String OURS = "(?i:(?:(?:h(?:rs?|ours?)?|(?:sq\\.?\\s?)?ft\\.?(?:²|2|\\^2)?|sf|[°º]\\s?F|F)\\b?\\s*[·.⋅*•×x-]?"
        + "\\s*){3}/\\s*btu\\b)";
    private static final String FIGURE = "\\d+(?:[.,]\\d+)?";
    private static final Pattern IN_METRIC = Pattern.compile("\\bRSI\\b|" + METRIC_UNIT);
    private static final Pattern IN_OURS = Pattern.compile("\\bR\\b|(?i)\\bR-?\\s?value|" + OURS);
    private static final Pattern METRIC_FIGURE = Pattern.compile("(?:\\bRSI\\b\\W{0,3}(" + FIGURE + ")(?:\\s*" + METRIC_UNIT + ")?|("
        + FIGURE + ")\\s*(?:" + METRIC_UNIT + "|\\bRSI\\b))");
    private static final Pattern OUR_UNIT = Pattern.compile("\\(?\\s*" + OURS + "\\s*\\)?");
    private static final Pattern LETTER = Pattern.compile("\\bR\\s?[-–=:]?\\s?(?=" + FIGURE + ")");
    private static final Pattern TWO = Pattern.compile("\\s*(" + FIGURE + ")\\s*(?:[/|]|[(\\[])\\s*(" + FIGURE + ")\\s*[)\\]]?\\s*");
    private static final Pattern ONE = Pattern.compile("\\s*(" + FIGURE + ")\\s*");

    private static final Pattern UNIT_LAST = Pattern.compile("(?<=[\\p{L}\\d])[\\s,]+(?:" + OURS + "|" + METRIC_UNIT + ")\\s*$");

    private ThermalResistance() {
    }

    /** A label without the unit at its end: "R-value hr·ft²·°F/Btu". */
    static String withoutUnit(String label) {
        return UNIT_LAST.matcher(label).replaceFirst("");
    }

    /** Whether a property is one: its label tells the unit of its bare figures. */
    static boolean is(Property property) {
        return property.label().contains("ft²·°F/Btu");
    }

    /** The unit that a label states for the first figure beside it: {@link #METRIC}, or "" for that of the pack. */
    static String unit(String label) {
        Matcher metric = IN_METRIC.matcher(label);
        Matcher ours = IN_OURS.matcher(label);
        return metric.find() && !(ours.find() && ours.start() < metric.start()) ? METRIC : "";
    }

    /** What a sheet states, without its units, as h·ft²·°F/Btu: of two figures that which is written so. */
    static String figure(String written, String unit) {
        String text = LETTER.matcher(OUR_UNIT.matcher(written).replaceAll(" ")).replaceAll("");
        Matcher metric = METRIC_FIGURE.matcher(text);
        if (metric.find()) {
            String rest = (text.substring(0, metric.start()) + text.substring(metric.end())).replaceAll("[(\\[]\\s*[)\\]]", "")
                .replaceAll("^[\\s(,;/|]+|[\\s),;/|]+$", "");
            return rest.matches(".*\\d.*") ? rest : converted(metric.group(1) == null ? metric.group(2) : metric.group(1));
        }
        Matcher two = TWO.matcher(text);
        if (two.matches() && areSame(number(two.group(1)), number(two.group(2)))) {
            return two.group(1);
        }
        if (two.matches() && areSame(number(two.group(2)), number(two.group(1)))) {
            return two.group(2);
        }
        boolean bare = !unit.isEmpty() && !unit(unit).isEmpty() && ONE.matcher(text).matches();
        return bare ? converted(text) : text;
    }

    /** Whether both are the same resistance, in our unit and in m²·K/W. */
    private static boolean areSame(double ours, double metric) {
        return Math.abs(metric / ours - RSI) < ROUNDED * RSI;
    }

    private static String converted(String metric) {
        return String.format(Locale.ROOT, "%.1f", number(metric) / RSI);
    }

    private static double number(String figure) {
        return Double.parseDouble(figure.strip().replace(',', '.'));
    }
}

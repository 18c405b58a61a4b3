package reglet.reading.words;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "Weight per square yard | 2.5 lb": of which area a weight is that its label tells, and not its unit. */
public final class PerArea {
    private static final Pattern LABEL = Pattern.compile("(?i).*\\bper\\s+(?:(?:sq(?:uare)?\\.?\\s*(?:(?<ft>ft|foot|feet)"
        + "|(?<yd>yds?|yards?)"
        + "|(?<m>m|meter|metre)))|(?<sf>sf|ft²)|(?<sy>sy|yd²)|(?<sm>m²))(?!\\p{L}).*", Pattern.DOTALL);
    private static final Pattern WEIGHT = Pattern.compile("(?i)(?<=[\\d½¼¾⅛⅜⅝⅞⅓⅔]\\s?|^)(lbs?|pounds?|oz|ounces?|kg"
        + "|g)\\b\\.?(?!\\s*(?:[/²]|per\\b))");

    private PerArea() {
    }

    /**
     * @param label what stands beside a value or heads it
     * @param text  a value or a unit
     * @return the text with the area behind each weight: "2.5 lb/yd²"
     */
    public static String of(String label, String text) {
        Matcher area = LABEL.matcher(label);
        if (!area.matches()) {
            return text;
        }
        String per = area.group("ft") != null || area.group("sf") != null ? "ft²" : area.group("yd") != null || area.group("sy") != null
            ? "yd²" : "m²";
        return WEIGHT.matcher(text).replaceAll("$1/" + per);
    }
}

package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Dimension;
import reglet.model.Numbers;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.reading.words.Reading.Read;

/** Reads an amount as a property's is written: in two systems of units, with a tolerance, an average or a limit beside it. */
final class WrittenAmount {
    /** Flame spread and smoke in one: "15 / 280 (Class A)". */
    private static final Pattern INDICES = Pattern.compile("([^\\d/]*\\d+)\\s*/\\s*[^\\d/]*\\d+\\s*(?:\\(.*\\))?");
    /** "0.004 cfm/ft² (0.02 L/s·m²) at 1.57 psf". */
    private static final Pattern MEASURED_AT = Pattern.compile("(?<=\\))\\s*(?:@|at)\\s*[\\d.].*$");
    /** "1 in. ± 1/4 in." */
    private static final Pattern TOLERANCE = Pattern.compile("(?<=[^\\s,])\\s*,?\\s*(?:±|\\+\\s*/\\s*[-−–])\\s*[\\d./]+"
        + "(?:[- ][\\d./]+)?\\s*(?:\""
        + "|%|in\\.?|mm|mils?|psf)?\\s*$");
    /** "< 25 (core)", "5 perms (average)": words in brackets that are no amount. */
    private static final Pattern REMARK = Pattern.compile("(?<=[\\d%\"°\\p{L}.²])\\s+\\((?!min|max|nom|average|avg"
        + "|typ)[\\p{L}][\\p{L}\\s,.-]*\\)\\s*$", Pattern.CASE_INSENSITIVE);
    /** "16.8 MPa average, 15.9 MPa least". */
    private static final Pattern SEVERAL = Pattern.compile("(.*\\d.*\\b(?:average|avg|mean)\\b\\.?)\\s*[,;]\\s*(.*\\d.*)",
        Pattern.CASE_INSENSITIVE);
    /** "93.1 %, 94.4 %, 92.8 %; average 93.4 %". */
    private static final Pattern MEAN_LAST = Pattern.compile("\\d[^;]*\\d[^;]*[;,]\\s*(?:average|avg\\.?|mean)\\s*(?:of\\s*)?(\\d[^;]*)",
        Pattern.CASE_INSENSITIVE);
    /** "3, on units chosen by the architect": a number and a remark. */
    private static final Pattern COUNTED = Pattern.compile("^(\\d{1,3}),\\s+(?:on|at|of|in|per|by|each|one)\\s.*$");
    /** "No. 8-18 x 1-1/4 in.": the number of a screw before its length. */
    private static final Pattern NUMBERED = Pattern.compile("(?i)^(?:no\\.?|#)\\s*\\d+(?:\\s*-\\s*\\d+)?\\s*(?:[x×]\\s*(?=[.\\d])"
        + "|,\\s*(?=0?\\.\\d))");
    /** "17 (0.051 in.)" below "Wire, gauge (diam.)". */
    private static final Pattern GAUGED = Pattern.compile("(?i)^(?:no\\.? ?|#)?\\d{1,2}\\s*\\(\\s*(0?\\.\\d{2,4}"
        + "\\s*(?:in\\b\\.?|\"|inch\\b)[^()]*)"
        + "\\)$");
    /** "+5 °C min. / +40 °C max." */
    private static final Pattern ENDS = Pattern.compile("(?i)(.*\\d.*?)\\s*,?\\s*\\bmin(?:imum|\\.)?\\s*(?:[/,;]|\\bto\\b)\\s*"
        + "(.*\\d.*?)\\s*,?\\s*\\bmax(?:imum"
        + "|\\.)?\\s*");
    /** "Min. 3/8 in., max. 1/2 in.". */
    private static final Pattern LIMITS = Pattern.compile("(?i)\\s*min(?:imum|\\.)?\\s+([^,;/]*\\d[^,;]*?)\\s*[/,;]\\s*max(?:imum"
        + "|\\.)?\\s+([^,;]*\\d[^,;]*)");
    private static final Pattern MIN_MAX = Pattern.compile("(?i)\\bmin.*\\bmax");
    private static final double MEAN = 0.9;
    /** A figure that the sheet itself states says more than one that was worked out of another. */
    private static final double CONVERTED = 0.97;
    private static final double TOLERATED = 0.85;
    private static final Pattern INSIDE = Pattern.compile("[(\\[]([^()\\[\\]]*\\d[^()\\[\\]]*(?:\\([^()]*\\)[^()\\[\\]]*)?)[)\\]]\\s*$");
    private static final Pattern TWO = Pattern.compile("^(.*[a-zA-Z\"%°²³.])\\s*[/;,|]\\s*((?:" + Numbers.pattern() + ").*)$");
    /** "6 in. o.c.", "16 in. (406 mm) on center max.": from middle to middle, as all spacings are. */
    private static final Pattern ON_CENTER = Pattern.compile("(?i)(?<=[\\p{L}\\d\"″).])\\s*,?\\s*\\b(?:o\\.?\\s?/?c(?:\\.|\\b)"
        + "|on cent(?:er|re)s?\\b)");
    /** "1/4 in. per ft" of what falls so much in a foot. */
    private static final Pattern PER_FOOT = Pattern.compile("(?i)\\s*(?:per|/|in|to the|in each) ?"
        + "(?:(?:1 |one |lineal |lin\\.? )?(?:ft|foot)\\b\\.?"
        + "|12 ?in\\.?)");
    private static final Pattern BETWEEN = Pattern.compile("(?i)between\\s+");
    /** "Between 40 and 110 °F", "from 1/4 in. to 1/2 in.". */
    private static final Pattern FROM_TO = Pattern.compile("(?i)(?:from|between)\\s+([^,;]*\\d[^,;]*?)\\s+(?:to|and|through)\\s+"
        + "([-+−–]?\\s?\\.?\\d.*)");
    /** "40° to 110 °F": the degrees of the second. */
    private static final Pattern DEGREES = Pattern.compile("(?<=\\d)\\s?°(?=\\s?(?:to|and|through|-|–|—)\\s?[-+−–]?\\d+\\s?°)");
    /** "Above 40 °F (4 °C) and below 100 °F (38 °C)". */
    private static final Pattern ABOVE_BELOW = Pattern.compile("(?is)(?:above|over|at least|not below|not under|no lower than)\\s+(.*\\d.*)"
        + "\\s+(?:and|but|,)\\s+(?:below|under|not above|not over|at most|no (?:higher|more) than)\\s+(.*\\d.*)");
    private static final Pattern OTHER_UNIT = Pattern.compile("\\s*\\([^()]*\\d[^()]*\\)(?=\\s*(?:to|and|[-–—])\\s[^()]*\\d)");

    private WrittenAmount() {
    }

    /** @param unit the unit that label, column or heading state; "" */
    static Optional<Read> of(Property property, String text, String unit) {
        if (!ThermalResistance.is(property)) {
            return amount(property, text, unit);
        }
        String figure = ThermalResistance.figure(text, unit);
        return amount(property, figure, "").map(read -> text.contains(figure) ? read : read.with(CONVERTED,
            "The sheet states it in m²·K/W."));
    }

    private static Optional<Read> amount(Property property, String text, String unit) {
        Dimension dimension = property.type().unit().orElseThrow().dimension();
        Matcher indices = INDICES.matcher(text);
        if (dimension == Dimension.COUNT && indices.matches()) {
            text = indices.group(1);
        }
        // "3, on units chosen by the architect"
        text = dimension == Dimension.COUNT ? COUNTED.matcher(text).replaceFirst("$1") : text;
        text = NUMBERED.matcher(AmountWords.of(text, dimension)).replaceFirst("");
        text = property.label().endsWith(" in 1 ft") ? PER_FOOT.matcher(text).replaceAll("") : text;
        text = dimension == Dimension.LENGTH ? GAUGED.matcher(ON_CENTER.matcher(text).replaceFirst("")).replaceFirst("$1") : text;
        text = MIN_MAX.matcher(text).find() ? ends(text) : text;
        text = MEASURED_AT.matcher(text).replaceFirst("");
        Matcher tolerance = TOLERANCE.matcher(text);
        if (tolerance.find() && tolerance.start() > 0) {
            return of(property, text.substring(0, tolerance.start()), unit).map(read -> read.with(TOLERATED,
                "The sheet states a tolerance "
                + "with it."));
        }
        text = REMARK.matcher(text).replaceFirst("");
        boolean between = BETWEEN.matcher(text).lookingAt();
        if (ABOVE_BELOW.matcher(text).matches()) {
            text = ABOVE_BELOW.matcher(text).replaceFirst("$1 to $2");
        }
        text = DEGREES.matcher(text).replaceAll("");
        Matcher from = FROM_TO.matcher(text);
        if (from.matches() && (property.type().kind() == Kind.RANGE || !between)) {
            text = from.group(1) + " to " + from.group(2);
        }
        if (between || property.type().kind() == Kind.RANGE) {
            // "between 40 °F (4 °C) and 100 °F (38 °C)"
            text = OTHER_UNIT.matcher(BETWEEN.matcher(text).replaceFirst("")).replaceFirst("");
        }
        Matcher mean = MEAN_LAST.matcher(text);
        if (mean.matches()) {
            // "1-1/8 in. to 2-1/4 in., average 1-3/4 in."
            Optional<Read> whole = of(property, text.substring(0, mean.start(1)).replaceFirst("[;,]\\s*\\p{L}+\\.?\\s*(?:of\\s*)?$",
                ""), unit);
            if (whole.filter(read -> read.value() instanceof Range range && !range.low().equals(range.high())).isPresent()) {
                return whole;
            }
        }
        if (mean.matches()) {
            return of(property, mean.group(1), unit).map(read -> read.with(MEAN, "The sheet states an average of several results."));
        }
        Matcher several = SEVERAL.matcher(text);
        if (several.matches()) {
            boolean second = property.compare() == Compare.AT_MOST && several.group(2).matches("(?i).*max.*");
            return of(property, second ? several.group(2) : several.group(1), unit).map(read -> read.with(MEAN,
                "The sheet states an average "
                + "and a limit."));
        }
        List<Read> all = new ArrayList<>();
        String doubt = "";
        // what follows a value in two systems of units is said of both: "1 in. (25 mm) high min."
        String before = text;
        Optional<Compare> stated = Optional.empty();
        for (Matcher after = SingleAmount.AFTER.matcher(before); after.find() && after.start() > 0; after = SingleAmount.AFTER.matcher(
            before)) {
            stated = after.group(1) != null ? Optional.of(Compare.AT_LEAST) : after.group(2) != null ? Optional.of(Compare.AT_MOST)
                : stated;
            before = before.substring(0, after.start()).strip();
        }
        boolean both = before.endsWith(")");
        for (String part : parts(both ? before : text)) {
            Optional<Read> read = SingleAmount.of(part, dimension, unit, between || property.type().kind() == Kind.RANGE)
                .filter(one -> !between || one.value() instanceof Range);
            if (read.isEmpty() && all.isEmpty() && !isOther(part, dimension)) {
                return Optional.empty();
            }
            if (read.isEmpty() && !isOther(part, dimension)) {
                doubt = "\"" + part + "\" beside the value was not read.";
            }
            read.ifPresent(all::add);
        }
        if (all.isEmpty()) {
            return Optional.empty();
        }
        // "4 months (120 days)": a month is no fixed time
        Read first = all.stream().filter(read -> read.value() instanceof Quantity time && time.unit() == Unit.DAY).findFirst()
            .orElse(all.get(0));
        for (Read other : all) {
            double one = low(first.value());
            double two = low(other.value());
            if (Math.abs(two - one) > 0.06 * Math.max(Math.abs(one), Math.abs(two))
                && dimension != Dimension.TEMPERATURE) {
                return Optional.of(first.with(0.5, "The sheet states " + first.value().text() + " and " + other.value().text()
                    + ", which are not the same."));
            }
        }
        if (both && stated.isPresent()) {
            first = new Read(first.value(), stated, first.quality(), first.doubt());
        }
        if (property.type().kind() == Kind.RANGE && first.value() instanceof Quantity alone) {
            first = new Read(new Range(alone, alone), first.compare(), first.quality() * 0.9, first.doubt());
        }
        return Optional.of(doubt.isEmpty() ? first : first.with(0.8, doubt));
    }

    /** "Min. 3/8 in., max. 1/2 in." as a range. */
    private static String ends(String text) {
        Matcher ends = ENDS.matcher(text);
        Matcher limits = LIMITS.matcher(text);
        return ends.matches() ? ends.group(1) + " to " + ends.group(2) : limits.matches() ? limits.group(1) + " to " + limits.group(2)
            : text;
    }

    /** A value in one unit and, in parentheses or after a stroke, in another. */
    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        Matcher inside = INSIDE.matcher(text);
        // parentheses within a unit, as in ng/(Pa·s·m²), are part of it
        if (inside.find() && !text.substring(0, inside.start()).strip().endsWith("/") && inside.start() > 0) {
            parts.addAll(parts(text.substring(0, inside.start()).strip()));
            parts.addAll(parts(inside.group(1).strip()));
            return parts;
        }
        Matcher two = TWO.matcher(text);
        if (two.matches() && !two.group(1).matches("(?i).*\\b(?:lb|lbs|g|kg|oz)")) {
            parts.add(two.group(1).strip());
            parts.add(two.group(2).strip());
            return parts;
        }
        parts.add(text);
        return parts;
    }

    /** The same thing in a way that isn't compared: a gauge, or an amount of another kind beside the one asked for. */
    private static boolean isOther(String part, Dimension dimension) {
        if (part.matches("(?i)(?:no\\.?\\s*)?\\d+\\s*-?\\s*(?:ga\\.?|gauge|(?:oz|ounces?)\\.?(?: copper)?)")) {
            return true;
        }
        Matcher one = SingleAmount.ONE.matcher(SingleAmount.BEFORE.matcher(part).replaceFirst(""));
        return one.find() && UnitSpelling.of(SingleAmount.BEFORE.matcher(part).replaceFirst("").substring(one.end()), dimension)
            .filter(unit -> unit.dimension() != dimension).isPresent();
    }

    private static double low(Value value) {
        return value instanceof Range range ? range.low().si() : ((Quantity) value).si();
    }
}

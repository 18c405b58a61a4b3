package reglet.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Numbers;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.model.Value;

/**
 * Reads what a sheet writes for a property as a value of its type. A text is read whole or not at all: what is left over may
 * change what it means.
 */
final class Reading {
    private static final String NUMBER = Numbers.pattern();
    private static final String LEAST = "≥|>=|=>|>|at least|not less than|no less than|not below|no lower than|minimum of"
        + "|minimum|min\\.?(?: of)?"
        + "|greater than|more than|above|over|exceeds|exceeding|in excess of|no fewer than|not under|(?:not|no) shorter than"
        + "|(?:not|no) thinner than|(?:not|no) (?:lower|narrower|smaller|closer|nearer) than|pass(?:es)? at";
    private static final String MOST = "≤|<=|=<|<|at most|not more than|no more than|not greater than|no greater than"
        + "|maximum of|maximum|max\\.?(?: of)?"
        + "|less than|below|under|up to|within|not above|not over|(?:not|no) thicker than|(?:not|no) longer than|(?:not|no) wider than"
        + "|(?:not|no) (?:heavier|larger|deeper|later) than|(?:not|no) (?:farther|further)(?: apart)? than|not beyond"
        + "|(?:do|does|shall|must|may|can)? ?not (?:to )?exceed(?:ing)?";
    private static final String ABOUT = "approximately|approx\\.?|about|nominal|nom\\.?|typical|average|avg\\.?|mean|~|≈|±|level|=";
    private static final Pattern BEFORE = Pattern.compile("^(?:(" + LEAST + ")|(" + MOST + ")|(" + ABOUT + "))\\s*",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern AFTER = Pattern.compile("[\\s,;]*(?:(?:\\(\\s*)?(minimum|min\\.?|or more|or greater|or better|and "
        + "above|and up|and over|or above|or over|and rising|or higher|and higher|and warmer|or warmer|as a minimum|at (?:the )?least)|"
        + "(?:\\(\\s*)?(maximum|max\\.?|or less|or below|and below|or under|or lower|or fewer|as a maximum|at (?:the )?most)|"
        + "(?:\\(\\s*)?(nominal|nom\\.?|typical|average|avg\\.?|thick|wide|"
            + "long|high|deep|dia\\.?|diameter|dry|cured|clear|throughout|all|by (?:mass|weight)))"
        + "(?:\\s*\\))?[\\s.]*$", Pattern.CASE_INSENSITIVE);
    /** "1/4 in x 1/4 in" is as long as it is wide. */
    private static final Pattern SQUARE = Pattern.compile("(?i)(\\d.*?)[\\s-]*(?:x|×|\\bby\\b)[\\s-]*\\1[\\s-]*(\\p{L}+\\.?|\")?\\s*");
    /** "(38 mm x 38 mm)" behind a square in other units. */
    private static final Pattern OTHER_SQUARE = Pattern.compile("(?i)(?<=\\S)\\s*\\([\\d.]+[^()]*?\\s(?:x|×|by)\\s[\\d.]+[^()]*\\)\\s*$");
    private static final Pattern TO = Pattern.compile("^\\s*(?:(?:and )?up to|to|through|[-–—−])\\s*(?=[-+−–]?[\\d.])",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern ONE = Pattern.compile("^(" + NUMBER + ")");
    private static final Pattern CONDITION = Pattern.compile("^\\s*(?:@|\\bat\\b|\\bafter\\b|,\\s*(?:average|mean)\\b|\\bwhen\\b|\\b"
        + "of\\b\\s+(?:five|three)).*$",
        Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
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
    /** "No. 8-18 x 1-1/4 in.": the number of a screw before its length. */
    private static final Pattern NUMBERED = Pattern.compile("(?i)^(?:no\\.?|#)\\s*\\d+(?:\\s*-\\s*\\d+)?\\s*[x×]\\s*(?=[.\\d])");
    /** "8 x 1-1/4 in." of a screw's length. */
    private static final Pattern SCREW = Pattern.compile("(?i)^(?:(?:no\\.?|#)\\s*\\d+|(?:[4-9]"
        + "|1[0-4]))(?:\\s*-\\s*\\d+)?\\s*[x×]\\s*(?=[.\\d])");
    /** "+5 °C min. / +40 °C max." */
    private static final Pattern ENDS = Pattern.compile("(?i)(.*\\d.*?)\\s*\\bmin(?:imum|\\.)?\\s*[/,;]\\s*(.*\\d.*?)\\s*\\bmax(?:imum"
        + "|\\.)?\\s*");
    /** An amount with its unit, and behind a comma something else that was seen in the same test. */
    private static final Pattern ASIDE = Pattern.compile("(?s)([^,]*\\d[^,]*?[\\p{L}%²\"°][^,\\d]*),\\s+((?:\\d+(?:\\.\\d+)?\\s?%"
        + "|no|with|\\p{L}+)\\s.*"
        + "|\\p{L}+)");
    private static final Set<String> SIDES = Set.of("longest", "opening");
    private static final double TWO_SIDES = 0.95;
    private static final double FIRST = 0.93;
    private static final double MEAN = 0.9;
    private static final double TOLERATED = 0.85;
    private static final String[] SIGNS = {"½", "1/2", "¼", "1/4", "¾", "3/4", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8", "⅓", "1/3",
        "⅔", "2/3"};
    private static final Pattern BARE_IN_BRACKETS = Pattern.compile("(?<=\\S)\\s*[(\\[][\\d\\s.,x×–-]+[)\\]]\\s*$");
    private static final Pattern SIGN = Pattern.compile("[½¼¾⅛⅜⅝⅞⅓⅔]");
    private static final Pattern SPACED = Pattern.compile("(?<=\\d)\\s+-\\s*(?=\\d+/\\d)");
    private static final Pattern DASHED = Pattern.compile("(?<=\\d)\\s*[–−]\\s*(?=[1357]/(?:2|4|8|16)\\b)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d{1,2}(?!\\d))");
    private static final Pattern INSIDE = Pattern.compile("[(\\[]([^()\\[\\]]*\\d[^()\\[\\]]*(?:\\([^()]*\\)[^()\\[\\]]*)?)[)\\]]\\s*$");
    private static final Pattern TWO = Pattern.compile("^(.*[a-zA-Z\"%°²³.])\\s*[/;,|]\\s*((?:" + NUMBER + ").*)$");
    private static final Pattern LATER = Pattern.compile("^\\s*([^\\d]{1,8}?)\\s*(?:(?:\\band )?\\bup to\\b|\\bto\\b"
        + "|[-–—])\\s*(?=[-+−–]?\\d)");
    private static final Pattern LATER_OR_AND = Pattern.compile("^\\s*([^\\d]{1,8}?)\\s*(?:\\b(?:up )?to\\b|\\band\\b(?:\\s+(?:below|under|up to"
        + "|(?:not|no) (?:above|over|more than|higher than)))?|[-–—])\\s*(?=[-+−–]?\\d)");
    /** "40 °F to 100 °F. Install at mid-range of the movement". */
    private static final Pattern SENTENCE = Pattern.compile("(?<=[\\p{L}\\d%°\")])\\.\\s+(?=\\p{Lu}\\p{Ll}+ \\p{Ll})");
    private static final Pattern BETWEEN = Pattern.compile("(?i)between\\s+");
    /** "Above 40 °F (4 °C) and below 100 °F (38 °C)". */
    private static final Pattern ABOVE_BELOW = Pattern.compile("(?is)(?:above|over|at least|not below|not under|no lower than)\\s+(.*\\d.*)"
        + "\\s+(?:and|but|,)\\s+(?:below|under|not above|not over|at most|no (?:higher|more) than)\\s+(.*\\d.*)");
    private static final Pattern OTHER_UNIT = Pattern.compile("\\s*\\([^()]*\\d[^()]*\\)(?=\\s*(?:to|and|[-–—])\\s[^()]*\\d)");
    private static final Pattern WITH_CONDITION = Pattern.compile("^(.*?)(\\s*(?:@|\\bat\\b|\\bafter\\b|\\bwhen\\b|,|;|\\().*)$",
        Pattern.DOTALL);
    private static final Pattern MISSING = Pattern.compile("(?:n\\s?[/.]?\\s?a\\.?|not (?:tested|applicable|available|determined|"
        + "reported|rated|listed).*|tbd|n\\.?d\\.?|"
        + "to be determined|[-–—\\s]*|see .*|varies.*|contact .*|pending.*|consult .*|\\?+)", Pattern.CASE_INSENSITIVE);

    private final Vocabulary vocabulary;
    private final WordReader words;

    /**
     * A value as a sheet writes it.
     *
     * @param quality from 0 to 1
     * @param doubt   what a person should look at; ""
     */
    record Read(Value value, Optional<Compare> compare, double quality, String doubt) {
        Read with(double factor, String why) {
            return new Read(value, compare, quality * factor, doubt.isEmpty() ? why : doubt);
        }
    }

    Reading(Vocabulary vocabulary, Component component) {
        this.vocabulary = vocabulary;
        this.words = new WordReader(vocabulary, component);
    }

    /** Whether a text says that there is no value. */
    static boolean isMissing(String text) {
        return MISSING.matcher(text.strip()).matches();
    }

    /**
     * @param unit the unit that label, column or heading state; ""
     * @return empty when the text is no value of the property
     */
    Optional<Read> read(Property property, String written, String unit) {
        Kind kind = property.type().kind();
        if (kind != Kind.QUANTITY && kind != Kind.RANGE) {
            return fresh(property, written, unit);
        }
        // what is kept of texts read before is kept for all properties of a type
        String text = property.name().equals("length") ? SCREW.matcher(written.strip()).replaceFirst("") : written;
        boolean told = !unit.isEmpty() || vocabulary.holds(property.type().unit().orElseThrow().dimension(), text);
        String side = isLongerSide(property) ? property.name() : "";
        return !told ? Optional.empty() : vocabulary.amount(property.type(), property.compare(), side, text, unit, () -> fresh(property,
            text, unit))
            .map(read -> end(property, read));
    }

    /** "0 °F to 120 °F" of a property that asks for the lowest temperature alone. */
    private static Read end(Property property, Read read) {
        boolean low = property.name().endsWith("_low");
        boolean one = low || property.name().endsWith("_high");
        if (property.name().equals("longest") && read.value() instanceof Range lengths) {
            // "6 to 20 in." of lengths: the longest is asked for
            return new Read(lengths.high(), read.compare(), read.quality(), read.doubt());
        }
        if (property.type().kind() == Kind.QUANTITY && read.value() instanceof Range && read.compare().isPresent()) {
            // "1/4 in. up to 1/2 in. maximum": the end of a range is its limit
            return new Read(read.value(), Optional.empty(), read.quality(), read.doubt());
        }
        return one && property.type().kind() == Kind.QUANTITY && read.value() instanceof Range range && property.type().unit().orElseThrow()
            .dimension() == Dimension.TEMPERATURE ? new Read(low ? range.low() : range.high(), Optional.empty(), read.quality(),
                read.doubt()) : read;
    }

    /** "1 in. × 1-1/2 in." of a mesh, "1-1/2–6 × 5–22" of stones: the longer side. */
    private Optional<Read> longer(Property property, String text, String unit) {
        String[] sides = isLongerSide(property) ? text.split("\\s+(?:x|×|by)\\s+") : new String[0];
        if (sides.length != 2) {
            return Optional.empty();
        }
        Optional<Read> second = fresh(property, sides[1], unit);
        Optional<Read> first = fresh(property, sides[0], unit).or(() -> second.isEmpty() ? Optional.empty() : fresh(property, sides[0]
            + sides[1].replaceFirst("^.*\\d", ""), unit));
        return first.isEmpty() || second.isEmpty() ? Optional.empty() : Stream.of(first.get(), second.get()).map(read -> end(property,
            read)).max(Comparator.comparingDouble(read -> high(read.value()))).map(read -> read.with(TWO_SIDES, ""));
    }

    /** Whether of two sides the longer one is such a property's. */
    static boolean isLongerSide(Property property) {
        return SIDES.contains(property.name());
    }

    private static double high(Value value) {
        return value instanceof Range range ? range.high().si() : ((Quantity) value).si();
    }

    private Optional<Read> fresh(Property property, String written, String unit) {
        String text = Figures.of(written.strip().replaceAll("^[•·▪:=\\s]+|^'(?=\\d)", ""));
        if (text.isEmpty() || isMissing(text) || text.length() > 160) {
            return Optional.empty();
        }
        Optional<String> first = UnitSpelling.firstOf(unit);
        if (first.isPresent() && property.type().unit().isPresent()) {
            // "0.0625 (1.59)" in "in. (mm)"
            return fresh(property, BARE_IN_BRACKETS.matcher(text).replaceFirst(""), first.get());
        }
        Matcher square = SQUARE.matcher(OTHER_SQUARE.matcher(text).replaceFirst(""));
        if (square.matches()) {
            text = square.group(1) + (square.group(2) == null ? "" : " " + square.group(2));
        }
        if (property.type().kind() != Kind.QUANTITY && property.type().kind() != Kind.RANGE) {
            return words.read(property, text);
        }
        Optional<Read> longer = longer(property, text, unit);
        if (longer.isPresent()) {
            return longer;
        }
        Optional<Read> whole = amount(property, text, unit);
        Matcher sentence = SENTENCE.matcher(text);
        int more = sentence.find() ? sentence.start() : text.indexOf("; ");
        // "25 or less; smoke developed 65"
        if (whole.isPresent() || more > 0) {
            return whole.isPresent() ? whole : amount(property, text.substring(0, more), unit).map(read -> read.with(FIRST, ""));
        }
        Matcher aside = ASIDE.matcher(text);
        // "24 lb/in, 0 % adhesion loss"
        return aside.matches() && Amounts.in(aside.group(2), property, this).isEmpty() ? amount(property, aside.group(1), unit)
            .map(read -> read.with(MEAN, "")) : whole;
    }

    private Optional<Read> amount(Property property, String text, String unit) {
        Dimension dimension = property.type().unit().orElseThrow().dimension();
        Matcher indices = INDICES.matcher(text);
        if (dimension == Dimension.COUNT && indices.matches()) {
            text = indices.group(1);
        }
        text = NUMBERED.matcher(text).replaceFirst("");
        Matcher ends = ENDS.matcher(text);
        if (property.type().kind() == Kind.RANGE && ends.matches()) {
            text = ends.group(1) + " to " + ends.group(2);
        }
        text = MEASURED_AT.matcher(text).replaceFirst("");
        Matcher tolerance = TOLERANCE.matcher(text);
        if (tolerance.find() && tolerance.start() > 0) {
            return amount(property, text.substring(0, tolerance.start()), unit).map(read -> read.with(TOLERATED,
                "The sheet states a tolerance "
                + "with it."));
        }
        text = REMARK.matcher(text).replaceFirst("");
        boolean between = BETWEEN.matcher(text).lookingAt();
        if (ABOVE_BELOW.matcher(text).matches()) {
            text = ABOVE_BELOW.matcher(text).replaceFirst("$1 to $2");
        }
        if (between || property.type().kind() == Kind.RANGE) {
            // "between 40 °F (4 °C) and 100 °F (38 °C)"
            text = OTHER_UNIT.matcher(BETWEEN.matcher(text).replaceFirst("")).replaceFirst("");
        }
        Matcher mean = MEAN_LAST.matcher(text);
        if (mean.matches()) {
            // "1-1/8 in. to 2-1/4 in., average 1-3/4 in."
            Optional<Read> whole = amount(property, text.substring(0, mean.start(1)).replaceFirst("[;,]\\s*\\p{L}+\\.?\\s*(?:of\\s*)?$",
                ""), unit);
            if (whole.filter(read -> read.value() instanceof Range range && !range.low().equals(range.high())).isPresent()) {
                return whole;
            }
        }
        if (mean.matches()) {
            return amount(property, mean.group(1), unit).map(read -> read.with(MEAN, "The sheet states an average of several results."));
        }
        Matcher several = SEVERAL.matcher(text);
        if (several.matches()) {
            boolean second = property.compare() == Compare.AT_MOST && several.group(2).matches("(?i).*max.*");
            return amount(property, second ? several.group(2) : several.group(1), unit).map(read -> read.with(MEAN,
                "The sheet states an average "
                + "and a limit."));
        }
        List<Read> all = new ArrayList<>();
        String doubt = "";
        // what follows a value in two systems of units is said of both
        Matcher after = AFTER.matcher(text);
        boolean both = after.find() && text.substring(0, after.start()).strip().endsWith(")");
        Optional<Compare> stated = !both ? Optional.empty() : after.group(1) != null ? Optional.of(Compare.AT_LEAST)
            : after.group(2) != null ? Optional.of(Compare.AT_MOST) : Optional.empty();
        for (String part : parts(both ? text.substring(0, after.start()).strip() : text)) {
            Optional<Read> read = single(part, dimension, unit, between || property.type().kind() == Kind.RANGE)
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
        Read first = all.stream().filter(read -> read.value instanceof Quantity time && time.unit() == Unit.DAY).findFirst()
            .orElse(all.get(0));
        for (Read other : all) {
            if (Math.abs(low(other.value) - low(first.value)) > 0.06 * Math.max(Math.abs(low(first.value)), Math.abs(low(other.value)))
                && dimension != Dimension.TEMPERATURE) {
                return Optional.of(first.with(0.5, "The sheet states " + first.value.text() + " and " + other.value.text()
                    + ", which are not the same."));
            }
        }
        if (stated.isPresent()) {
            first = new Read(first.value, stated, first.quality, first.doubt);
        }
        if (property.type().kind() == Kind.RANGE && first.value instanceof Quantity alone) {
            first = new Read(new Range(alone, alone), first.compare, first.quality * 0.9, first.doubt);
        }
        return Optional.of(doubt.isEmpty() ? first : first.with(0.8, doubt));
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
        Matcher one = ONE.matcher(BEFORE.matcher(part).replaceFirst(""));
        return one.find() && UnitSpelling.of(BEFORE.matcher(part).replaceFirst("").substring(one.end()), dimension)
            .filter(unit -> unit.dimension() != dimension).isPresent();
    }

    private static double low(Value value) {
        return value instanceof Range range ? range.low().si() : ((Quantity) value).si();
    }

    private Optional<Read> single(String part, Dimension dimension, String hint, boolean range) {
        String text = DECIMAL_COMMA.matcher(fractions(part)).replaceAll(".");
        boolean comma = !text.equals(fractions(part));
        Optional<Compare> sense = Optional.empty();
        Matcher before = BEFORE.matcher(text);
        while (before.find()) {
            sense = before.group(1) != null ? Optional.of(Compare.AT_LEAST) : before.group(2) != null
                ? Optional.of(Compare.AT_MOST) : sense;
            if (before.group(2) != null && before.group(2).equalsIgnoreCase("up to") && dimension == Dimension.TIME) {
                // what a thing stands for up to so long is what it stands
                sense = Optional.empty();
            }
            text = text.substring(before.end());
            before = BEFORE.matcher(text);
        }
        Matcher after = AFTER.matcher(text);
        if (after.find() && after.start() > 0) {
            sense = after.group(1) != null ? Optional.of(Compare.AT_LEAST) : after.group(2) != null ? Optional.of(Compare.AT_MOST) : sense;
            text = text.substring(0, after.start());
        }
        Matcher low = ONE.matcher(text);
        if (!low.find()) {
            return Optional.empty();
        }
        String rest = text.substring(low.end());
        Optional<Double> first = Numbers.number(low.group(1));
        if (first.isEmpty()) {
            return Optional.empty();
        }
        String lowUnit = "";
        Matcher to = TO.matcher(rest);
        if (!to.find()) {
            // "1/2 in – 3/4 in", "-20 °F to 120 °F"
            Matcher later = (range ? LATER_OR_AND : LATER).matcher(rest);
            if (later.find() && UnitSpelling.of(later.group(1), dimension).isPresent()) {
                lowUnit = later.group(1);
                to = Pattern.compile("^").matcher(rest);
                to.find();
                rest = rest.substring(later.end());
                return range(first.get(), low.group(1), lowUnit, rest, dimension, hint, sense, comma);
            }
        } else {
            return range(first.get(), low.group(1), "", rest.substring(to.end()), dimension, hint, sense, comma);
        }
        double quality = comma ? 0.85 : 1;
        String written = rest.strip();
        Optional<Unit> unit = unit(written, dimension, hint);
        if (unit.isEmpty()) {
            Matcher condition = WITH_CONDITION.matcher(written);
            if (condition.matches() && CONDITION.matcher(condition.group(2)).matches()) {
                unit = unit(condition.group(1), dimension, hint);
                quality *= 0.95;
            }
        }
        double share = quality;
        Optional<Compare> stated = sense;
        return unit.filter(found -> found.dimension() == dimension)
            .map(found -> new Read(quantity(first.get(), low.group(1), found), stated, share, ""));
    }

    private static Optional<Unit> unit(String written, Dimension dimension, String hint) {
        if (dimension == Dimension.COUNT) {
            return written.isBlank() ? Optional.of(Unit.ONE) : Optional.empty();
        }
        if (written.isBlank()) {
            return hint.isEmpty() ? Optional.empty() : UnitSpelling.of(hint, dimension);
        }
        return UnitSpelling.of(written, dimension);
    }

    private static Quantity quantity(double number, String written, Unit unit) {
        return new Quantity(unit.toSi(number), unit, written.replace('−', '-').replace(",", ""));
    }

    private Optional<Read> range(double low, String lowWritten, String lowUnit, String rest, Dimension dimension, String hint,
            Optional<Compare> sense, boolean comma) {
        Matcher high = ONE.matcher(rest.strip());
        if (!high.find()) {
            return Optional.empty();
        }
        Optional<Double> second = Numbers.number(high.group(1));
        Optional<Unit> unit = unit(rest.strip().substring(high.end()).strip(), dimension, hint)
            .filter(found -> found.dimension() == dimension);
        Optional<Unit> own = lowUnit.isEmpty() ? unit : UnitSpelling.of(lowUnit, dimension).filter(found -> found.dimension() == dimension);
        if (second.isEmpty() || unit.isEmpty() || own.isEmpty()) {
            return Optional.empty();
        }
        Quantity from = quantity(low, lowWritten, own.get());
        Quantity to = quantity(second.get(), high.group(1), unit.get());
        return from.si() > to.si() ? Optional.empty() : Optional.of(new Read(new Range(from, to), sense, comma ? 0.85 : 1, ""));
    }

    /** "3½" as "3-1/2", "3 1/2" as it is. */
    private static String fractions(String text) {
        String plain = text;
        if (SIGN.matcher(text).find()) {
            for (int i = 0; i < SIGNS.length; i += 2) {
                plain = plain.replaceAll("(?<=\\d)\\s?" + SIGNS[i], "-" + SIGNS[i + 1]).replace(SIGNS[i], SIGNS[i + 1]);
            }
        }
        return DASHED.matcher(SPACED.matcher(plain).replaceAll("-")).replaceAll("-").strip();
    }
}

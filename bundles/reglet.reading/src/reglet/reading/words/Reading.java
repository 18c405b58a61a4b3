package reglet.reading.words;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Value;

/**
 * Reads what a sheet writes for a property as a value of its type. A text is read whole or not at all: what is left over may
 * change what it means.
 */
public final class Reading {
    /** "1/4 in x 1/4 in" is as long as it is wide. */
    private static final Pattern SQUARE = Pattern.compile("(?i)(\\d.*?)[\\s-]*(?:x|×|\\bby\\b)[\\s-]*\\1[\\s-]*(\\p{L}+\\.?|\")?\\s*");
    /** "(38 mm x 38 mm)" behind a square in other units. */
    private static final Pattern OTHER_SQUARE = Pattern.compile("(?i)(?<=\\S)\\s*\\([\\d.]+[^()]*?\\s(?:x|×|by)\\s[\\d.]+[^()]*\\)\\s*$");
    /** "1-1/2 in. square" of a mesh: how long its sides are, and no area. */
    private static final Pattern SQUARE_BEHIND = Pattern.compile("(?i)(?<=\\d\\s?(?:in|in\\.|inch|inches|mm|cm|\"))\\s+(?:square|sq\\.?)"
        + "\\s*$");
    /** "8 x 1-1/4 in." of a screw's length. */
    private static final Pattern SCREW = Pattern.compile("(?i)^(?:(?:no\\.?|#)\\s*\\d+|(?:[4-9]"
        + "|1[0-4]))(?:\\s*-\\s*\\d+)?\\s*[x×]\\s*(?=[.\\d])");
    /** An amount with its unit, and behind a comma something else that was seen in the same test. */
    private static final Pattern ASIDE = Pattern.compile("(?s)([^,]*\\d[^,]*?[\\p{L}%²\"°][^,\\d]*),\\s+((?:\\d+(?:\\.\\d+)?\\s?%"
        + "|no|with|\\p{L}+)\\s.*"
        + "|\\p{L}+)");
    /** "12 dry mils" of a film. */
    private static final Pattern DRY = Pattern.compile("(?i)(?<=\\d)\\s+dry(?=\\s+mils?\\b)");
    private static final Set<String> SIDES = Set.of("longest", "opening");
    private static final double TWO_SIDES = 0.95;
    private static final double FIRST = 0.93;
    private static final double BESIDE = 0.9;
    private static final Pattern BARE_IN_BRACKETS = Pattern.compile("(?<=\\S)\\s*[(\\[][\\d\\s.,x×/⁄½¼¾⅛⅜⅝⅞–-]+[)\\]]"
        + "(?=\\s*(?:(?i:min|max)(?:imum|\\.)?)?\\s*$)");
    /** "40 °F to 100 °F. Install at mid-range of the movement". */
    private static final Pattern SENTENCE = Pattern.compile("(?<=[\\p{L}\\d%°\")])\\.\\s+(?=\\p{Lu}\\p{Ll}+ \\p{Ll})");
    private static final Pattern UNTESTED = Pattern.compile("(?i)\\s*not (?:been )?(?:tested|determined)\\b.*");
    private static final Pattern MISSING = Pattern.compile("(?:n\\s?[/.]?\\s?a\\.?|not (?:tested|applicable|available|determined|"
        + "reported|rated).*|tbd|n\\.?d\\.?|"
        + "to be determined|[-–—\\s]*|see .*|varies.*|contact .*|pending.*|consult .*|\\?+)", Pattern.CASE_INSENSITIVE);

    private final Vocabulary vocabulary;
    private final WordReader words;

    /**
     * A value as a sheet writes it.
     *
     * @param quality from 0 to 1
     * @param doubt   what a person should look at; ""
     */
    public record Read(Value value, Optional<Compare> compare, double quality, String doubt) {
        public Read with(double factor, String why) {
            return new Read(value, compare, quality * factor, doubt.isEmpty() ? why : doubt);
        }
    }

    public Reading(Vocabulary vocabulary, Component component) {
        this.vocabulary = vocabulary;
        this.words = new WordReader(vocabulary, component);
    }

    /** "Staining | not tested" answers whether it has been tested. */
    private static boolean isUntested(Property property, String text) {
        return property.type().kind() == Kind.FLAG && property.name().endsWith("_tested") && UNTESTED.matcher(text).matches();
    }

    /** Whether a text says that there is no value of what a label names. */
    public static boolean isMissing(Label label, String text) {
        return isMissing(text) && label.properties().stream().noneMatch(property -> isUntested(property, text));
    }

    /** Whether a text says that there is no value. */
    public static boolean isMissing(String text) {
        return MISSING.matcher(text.strip()).matches();
    }

    /**
     * @param unit the unit that label, column or heading state; ""
     * @return empty when the text is no value of the property
     */
    public Optional<Read> read(Property property, String written, String unit) {
        Kind kind = property.type().kind();
        if (kind != Kind.QUANTITY && kind != Kind.RANGE) {
            return fresh(property, written, unit);
        }
        // what is kept of texts read before is kept for all properties of a type
        String text = property.name().equals("length") ? SCREW.matcher(written.strip()).replaceFirst("") : property.name().equals("film")
            ? DRY.matcher(written).replaceAll("") : written;
        boolean told = !unit.isEmpty() || vocabulary.holds(property.type().unit().orElseThrow().dimension(), text);
        String side = isLongerSide(property) || ThermalResistance.is(property) ? property.name() : "";
        return !told ? Optional.empty() : vocabulary.amount(property.type(), property.compare(), side, text, unit, () -> fresh(property,
            text, unit))
            .map(read -> end(property, read));
    }

    /** The only one of a property's words, or of yes and no, that a text says by a turn of phrase of the pack. */
    public Optional<Read> turned(Property property, String text) {
        return property.type().kind() == Kind.WORD || property.type().kind() == Kind.FLAG ? words.turned(property, text) : Optional.empty();
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
        String text = AmountWords.whole(Figures.of(written.strip().replaceAll("^[•·▪:=\\s]+|^'(?=\\d)|^\\+\\s*(?=\\d.*%)", "")));
        if (text.isEmpty() || isMissing(text) && !isUntested(property, text) || text.length() > 160) {
            return Optional.empty();
        }
        Optional<String> first = UnitSpelling.firstOf(unit);
        if (first.isPresent() && property.type().unit().isPresent()) {
            // "0.0625 (1.59)" in "in. (mm)"
            return fresh(property, BARE_IN_BRACKETS.matcher(text).replaceFirst(""), first.get());
        }
        if (property.type().unit().filter(one -> one.dimension() == Dimension.LENGTH).isPresent()) {
            text = SQUARE_BEHIND.matcher(text).replaceFirst("");
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
        Optional<Read> whole = WrittenAmount.of(property, text, unit);
        Matcher sentence = SENTENCE.matcher(text);
        // "25 or less; smoke developed 65", "25 mils (0.64 mm): 4 mil film, 21 mil adhesive"
        int more = sentence.find() ? sentence.start() : text.indexOf("; ") > 0 ? text.indexOf("; ") : text.indexOf(": ");
        if (whole.isPresent() || more > 0) {
            return whole.isPresent() ? whole : WrittenAmount.of(property, text.substring(0, more), unit).map(read -> read.with(FIRST, ""));
        }
        Matcher aside = ASIDE.matcher(text);
        // "24 lb/in, 0 % adhesion loss"
        return aside.matches() && Amounts.in(aside.group(2), property, this).isEmpty() ? WrittenAmount.of(property, aside.group(1), unit)
            .map(read -> read.with(BESIDE, "")) : whole;
    }
}

package reglet.reading.words;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Dimension;
import reglet.model.Numbers;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.reading.words.Reading.Read;

/** Reads one amount in one unit, or a range of two: "at least 3/8 in.", "-20 °F to 120 °F". */
final class SingleAmount {
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
    static final Pattern BEFORE = Pattern.compile("^(?:(" + LEAST + ")|(" + MOST + ")|(" + ABOUT + "))\\s*",
        Pattern.CASE_INSENSITIVE);
    static final Pattern AFTER = Pattern.compile("[\\s,;]*(?:(?:\\(\\s*)?(minimum|min\\.?|or more|or greater|or better|or longer|or "
        + "later|or thicker|or deeper|or wider|or heavier|and "
        + "above|and up|and over|or above|or over|and rising|or higher|and higher|and warmer|or warmer|as a minimum|at (?:the )?least)|"
        + "(?:\\(\\s*)?(maximum|max\\.?|or less|or below|and below|or under|or lower|or fewer|or sooner|or thinner|or lighter|as a "
            + "maximum|at (?:the )?most)|"
        + "(?:\\(\\s*)?(nominal|nom\\.?|typical|average|avg\\.?|thick|wide|"
            + "long|high|deep|dia\\.?|diameter|dry|cured|clear|throughout|all|closed|open|hemmed|by (?:mass|weight)|(?:on )?(?:each"
                + "|all|both|either) "
        + "(?:leg|side|way|end|face|edge|wing)s?|all (?:a)?round))"
        + "(?:\\s*\\))?[\\s.]*$", Pattern.CASE_INSENSITIVE);
    private static final Pattern TO = Pattern.compile("^\\s*(?:(?:and )?up to|to|through|[-–—−])\\s*(?=[-+−–]?[\\d.])",
        Pattern.CASE_INSENSITIVE);
    static final Pattern ONE = Pattern.compile("^(" + NUMBER + ")");
    private static final Pattern CONDITION = Pattern.compile("^\\s*(?:@|\\bat\\b|\\bafter\\b|,\\s*(?:average|mean)\\b|\\bwhen\\b|\\b"
        + "of\\b\\s+(?:five|three)).*$",
        Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final String[] SIGNS = {"½", "1/2", "¼", "1/4", "¾", "3/4", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8", "⅓", "1/3",
        "⅔", "2/3"};
    private static final Pattern SIGN = Pattern.compile("[½¼¾⅛⅜⅝⅞⅓⅔]");
    private static final Pattern SPACED = Pattern.compile("(?<=\\d)\\s+-\\s*(?=\\d+/\\d)");
    private static final Pattern DASHED = Pattern.compile("(?<=\\d)\\s*[–−]\\s*(?=[1357]/(?:2|4|8|16)\\b)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d{1,2}(?!\\d))");
    private static final Pattern LATER = Pattern.compile("^\\s*([^\\d]{1,8}?)\\s*(?:(?:\\band )?\\bup to\\b|\\bto\\b"
        + "|[-–—])\\s*(?=[-+−–]?\\d)");
    private static final Pattern LATER_OR_AND = Pattern.compile("^\\s*([^\\d]{1,8}?)\\s*(?:\\b(?:up )?to\\b"
        + "|\\band\\b(?:\\s+(?:below|under|up to"
        + "|(?:not|no) (?:above|over|more than|higher than)))?|[-–—])\\s*(?=[-+−–]?\\d)");
    private static final Pattern WITH_CONDITION = Pattern.compile("^(.*?)(\\s*(?:@|\\bat\\b|\\bafter\\b|\\bwhen\\b|,|;|\\().*)$",
        Pattern.DOTALL);

    private SingleAmount() {
    }

    /** @param hint the unit that a label or heading states; "" */
    static Optional<Read> of(String part, Dimension dimension, String hint, boolean range) {
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
        while (after.find() && after.start() > 0) {
            // "2,100 psi minimum average"
            sense = after.group(1) != null ? Optional.of(Compare.AT_LEAST) : after.group(2) != null ? Optional.of(Compare.AT_MOST) : sense;
            text = text.substring(0, after.start());
            after = AFTER.matcher(text);
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

    private static Optional<Read> range(double low, String lowWritten, String lowUnit, String rest, Dimension dimension, String hint,
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

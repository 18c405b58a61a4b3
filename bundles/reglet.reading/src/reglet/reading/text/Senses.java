package reglet.reading.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Dimension;
import reglet.model.Property;

/** The sense of an amount in running text, as the words before and behind it tell it: "do not lay below 40 °F", "6 in. or closer". */
final class Senses {
    /** "At least three threads, or 3/8 in." */
    private static final Pattern LEAST_OR = Pattern.compile("(?is).*\\b(?:at least|not less than|no less than"
        + "|a minimum of)\\b[^.;\\d]{0,30},?"
        + "\\s+or\\s+");
    /** "Not less than 3 inches, vertical laps 6 inches": the sense goes on. */
    private static final Pattern LEAST = Pattern.compile("(?i)\\b(?:not less than|at least|a minimum of)\\b.*\\d.*(?:,|\\band\\b"
        + "(?! (?:make|lap|run|set|tape|turn|fasten|place|keep|fold|nail)\\b))");
    /** "2 inches, and vertical laps are 6 inches as a minimum": the sense behind holds for both. */
    private static final Pattern BEHIND_ALL = Pattern.compile("(?is)^[.\"]?[^.;]{0,70}?\\b(?:as a minimum|at the least|minimum)\\b.*");
    /** "95 % coverage of the back is needed as a minimum": no other amount stands between. */
    private static final Pattern AS_MINIMUM = Pattern.compile("(?is)^[^.;\\d]{0,70}?\\bas a minimum\\b.*");
    /** "6 in. on center or closer", "3/4 in. thick, at least, between …": the sense right behind an amount. */
    private static final Pattern SENSE_BEHIND = Pattern.compile("(?is)^[\"\\s.]*(?:\\([^)]*\\)\\s*)?(?:on cent(?:er|re)s?|o\\.?\\s?c\\.?"
        + "|thick|wide|apart|(?:of |in )?depth|deep|coverage|cover|contact)?\\s*(?:,\\s*)?(?:(or (?:closer|less|fewer|nearer"
            + "|shallower)|max(?:imum|\\.)|at "
            + "(?:the )?most)|(or more"
        + "|at (?:the )?least(?=\\s*[,.]|$)|least (?:bite|grip|lap|depth|penetration)))(?!\\w).*");
    /** "Do not place mortar when the air is below 40 °F". */
    private static final Pattern FORBIDDEN = Pattern.compile("(?is).*\\b(?:not|never|nor|avoid)\\b.*\\b(?:below|under|beneath|colder than"
        + "|lower than|less than|cooler than)\\s*");
    private static final Pattern DENIED = Pattern.compile("(?is).*\\b(?:no|not|never|nor|none)\\b[^,.;:]*");
    private static final Pattern NEGATED = Pattern.compile("(?i).*\\b(?:not|no|never|nor)\\b.*");
    private static final Pattern KEPT = Pattern.compile("(?i)\\b(?:(?<!without )(?<!no )prim(?:e|er|ed|ing)|unopened"
        + "|shelf life|stor(?:e|ed|es|age|ing)"
        + "|ship(?:ped|ping)|transport\\w*"
        + "|in[- ]service|service|once cured|when cured|after cur(?:e|ing))\\b");
    private static final Pattern APPLIED = Pattern.compile("(?i)\\b(?:appl(?:y|ied|ication|ying)|install\\w*|plac(?:e|ed|ing)|gun(?:ned)?"
        + "|tool(?:ed|ing)?|work|lay|laid|mix(?:ed|ing)?|set|sticks?|bonds?|adheres?|surfaces?|substrates?)\\b");
    /** "A minimum penetration of 3/4 in.", "maximum joint width 1 in.": the sense before the name. */
    private static final Pattern NAMED = Pattern.compile("(?is).*\\b(?:(min(?:imum|\\.))|(max(?:imum"
        + "|\\.)|greatest|largest))\\s+(?:\\p{L}[\\p{L}-]*:?\\s+){1,6}?(?:(?:of|is"
        + "|at|must be|shall be)\\s+)?");

    /** "Mortar must cover 95 % of the back" is asked at least. */
    private static final Pattern MUST = Pattern.compile("(?is).*\\b(?:must|shall)\\b[^.;,]{0,24}");

    /** "Units may be laid on it after 48 hours", "not sooner than 24 hours". */
    private static final Pattern MAY_AFTER = Pattern.compile("(?is).*(?:\\b(?:may|can|could)\\b[^.;,]{0,50}\\bafter"
        + "|\\b(?:may|can|could)\\b[^.;,]{0,24}\\b(?:once|when)\\b[^.;,]{0,40}\\b(?:stood|cured|hardened|aged|set)(?: for)?|\\b(?:not?"
        + "|never) (?:sooner|earlier)"
        + " than|\\b(?:not|never|no \\w+)\\b[^.;,]{0,40}\\b(?:before|until)|\\bat the earliest)\\s+(?:the \\w+ is )?");

    /**
     * "No unit exceeds 36 in. or 720 in²", "no piece has more face than 170 in²", "studs no farther apart than 16 in.", "limited to a
     * saturated weight of 15 psf".
     */
    private static final Pattern NO_MORE = Pattern.compile("(?is).*(?:\\b(?:no|none|never|not)\\b[^.;]{0,50}"
        + "\\b(?:more|greater|larger|bigger|longer|wider|farther|further|deeper|thicker|heavier|higher|taller)"
        + "(?: \\p{L}+){0,2} than|\\b(?:no|none|never|not)\\b[^.;]{0,50}\\bexceeds?\\b[^.;]{0,60}\\bn?or\\b|\\b(?:limited"
            + "|restricted) to\\b[^.;\\d]{0,40})\\s*");

    private Senses() {
    }

    /**
     * The words of an amount, in which a sense that is denied before them is turned round.
     *
     * @param start what the sentence says before them
     */
    static String said(Property property, String start, String written) {
        // "must not be over 15 psf"
        String words = written.replaceFirst("(?i)^(?:not|never) be (?=\\p{L}+ |over|above|under)", "not ");
        if (dimension(property) == Dimension.TIME && NEGATED.matcher(start).matches()) {
            // "don't leave it uncovered for more than 120 days"
            words = words.replaceFirst("(?i)^(?:more|longer|greater) than\\s+|^(?:over|above|beyond)\\s+", "");
        }
        // "no side greater than 36 in."
        return !DENIED.matcher(start).matches() ? words : words.replaceFirst("(?i)^(?:(?:greater|more|longer|larger|wider|thicker|heavier"
            + "|taller) than|over|above|exceed(?:s|ing)?)\\s+", "at most ").replaceFirst("(?i)^(?:less|smaller|shorter|thinner"
        + "|narrower) than\\s+", "at least ");
    }

    /** The sense that stands not with an amount but before or behind it; empty for none. */
    static Optional<Compare> beside(Property property, String start, String behind) {
        boolean least = property.compare() == Compare.AT_LEAST;
        boolean length = least && dimension(property) == Dimension.LENGTH;
        if (length && (LEAST_OR.matcher(start).matches()
            || LEAST.matcher(start).find() || BEHIND_ALL.matcher(behind).matches()) || least && (FORBIDDEN.matcher(start)
                .matches() || AS_MINIMUM.matcher(behind).matches())) {
            return Optional.of(Compare.AT_LEAST);
        }
        if (least && dimension(property) == Dimension.TIME && MAY_AFTER.matcher(start).matches()) {
            return Optional.of(Compare.AT_LEAST);
        }
        if (least && dimension(property) == Dimension.RATIO && MUST.matcher(start).matches()) {
            return Optional.of(Compare.AT_LEAST);
        }
        if ((property.compare() == Compare.AT_MOST || property.compare() == Compare.EXACTLY) && NO_MORE.matcher(start).matches()) {
            return Optional.of(Compare.AT_MOST);
        }
        Matcher after = SENSE_BEHIND.matcher(behind);
        Matcher named = NAMED.matcher(start);
        Compare said = after.matches() ? after.group(1) == null ? Compare.AT_LEAST : Compare.AT_MOST : !named.matches() ? null
            : named.group(1) == null ? Compare.AT_MOST : Compare.AT_LEAST;
        return Optional.ofNullable(said).filter(one -> one == property.compare());
    }

    private static Dimension dimension(Property property) {
        return property.type().unit().orElseThrow().dimension();
    }

    /** Whether the words before an amount, else those behind it, speak of keeping the product or of the finished work, not of the work. */
    static boolean isOfStorage(String before, String behind) {
        int kept = last(KEPT, before);
        return kept >= 0 ? kept > last(APPLIED, before) : last(APPLIED, before) < 0 && last(KEPT, behind) >= 0
            && last(APPLIED, behind) < 0;
    }

    private static int last(Pattern words, String text) {
        return words.matcher(text).results().mapToInt(found -> found.start()).max().orElse(-1);
    }
}

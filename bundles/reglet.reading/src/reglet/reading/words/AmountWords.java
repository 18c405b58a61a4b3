package reglet.reading.words;

import java.util.regex.Pattern;

import reglet.model.Dimension;

/** Words round an amount that makers choose as they like, put into those that amounts are read by. */
final class AmountWords {
    private static final Pattern BRACKETS = Pattern.compile("\\[([^\\[\\]]*)\\]");
    /** "@ 6 in.", "every 6 in.", "a minimum of 1 in.". */
    private static final Pattern BEFORE = Pattern.compile("(?i)^\\s*(?:(?:every|each|at|an?)\\s+|@\\s*)(?=[.\\d½¼¾⅛⅜⅝⅞]"
        + "|(?:least|most|min|max|not|no)\\b|minimum|maximum)(?!least|most)");
    private static final Pattern SENSE = Pattern.compile("(?i)^\\s*(min(?:imum|\\.)?|max(?:imum|\\.)?)\\s*:\\s*");
    private static final Pattern NEVER = Pattern.compile("(?i)^\\s*never\\s+");
    private static final Pattern CIRCA = Pattern.compile("(?i)^\\s*(?:ca\\.?|circa)\\s+(?=[.\\d])");
    /** "1 in+". */
    private static final Pattern MORE = Pattern.compile("(?<=[\\p{L}\"%.])\\s?\\+\\s*$");
    /** "3/8 in. ± 1/32 in. (9.5 mm ± 0.8 mm)": the tolerance once more in other units. */
    private static final Pattern TOLERANCE_TWICE = Pattern.compile("(?<=\\S)\\s*\\([^()±]*±[^()]*\\)");
    private static final Pattern WITHIN = Pattern.compile("(?i)^\\s*within\\s*±\\s*");
    private static final Pattern EQUALS = Pattern.compile("(?<=[\\p{L}\".])\\s+=\\s+(?=[.\\d])");
    private static final Pattern CENTERS = Pattern.compile("(?i)(?<=[\\p{L}\"″).])\\s*,?\\s+(?:c/c|c\\.c\\.|(?:on )?(?:cent(?:er|re)s?"
        + "|ctrs?\\.?)|apart)(?=$|[\\s,(])");
    private static final Pattern LAST = Pattern.compile("(?i)(?<=[\\p{L}\"″).])\\s*,?\\s+(?:overall|total|typ\\.?|overlap|in all"
        + "|or so)\\s*$");
    /** "2.5 lb/yd², less paper". */
    private static final Pattern LESS = Pattern.compile("(?i)\\s*,\\s*(?:less|excl(?:uding|\\.)?|without|not (?:counting"
        + "|including))\\s+(?:the )?"
        + "(?:paper|backing|liner|wire|mesh|face|facer|fabric|flange|coating|zinc)s?\\s*$");
    private static final Pattern OF_TIME = Pattern.compile("(?i)(?<=\\b(?:days|months|weeks))\\s+(?:of |to |in )?(?:outdoor |direct )?"
        + "(?:uv|weather|sun|sunlight|exposure)\\b[^\\d(]*$");
    private static final Pattern CALENDAR = Pattern.compile("(?i)\\bcalendar (?=days?)");
    private static final Pattern OF_WHAT = Pattern.compile("(?i)(?<=%)\\s+of\\s+(?:the )?(?:water|back|area|surface|unit|stone|joint)s?"
        + "(?: width)?\\s*$");
    private static final Pattern LARGER = Pattern.compile("(?i)(?<=%)\\s+(?:larger|oversized?|bigger|wider|greater)(?: than .*)?\\s*$");
    private static final Pattern NOR = Pattern.compile("(?i)(?<=\\d.{1,12})\\s+nor\\s+(?=above|over|more)");
    private static final Pattern FULL_DEGREES = Pattern.compile("(?i)(?<=\\d)\\s?deg(?:rees?|\\.)?(?=\\s?(?:to|and|through|-|–)\\s)");
    private static final Pattern NAMED_DEGREES = Pattern.compile("(?i)(?<=\\d)\\s?deg(?:rees|\\.)?\\s?(f|c)(?:ahrenheit|elsius)?\\b\\.?");
    private static final Pattern THROUGH = Pattern.compile("(?i)(?<=[\\p{L}.\"])\\s+through\\s+(?=[-+−–]?\\.?\\d)");

    private AmountWords() {
    }

    /** Without the words that tell what wasn't weighed or measured. */
    static String whole(String written) {
        return LESS.matcher(written).replaceFirst("");
    }

    static String of(String written, Dimension dimension) {
        String text = BRACKETS.matcher(written).replaceAll("($1)");
        text = TOLERANCE_TWICE.matcher(text).replaceAll("");
        text = NEVER.matcher(SENSE.matcher(BEFORE.matcher(text).replaceFirst("")).replaceFirst("$1 ")).replaceFirst("not ");
        text = WITHIN.matcher(text).replaceFirst("±");
        text = CIRCA.matcher(text).replaceFirst("about ");
        text = MORE.matcher(text).replaceFirst(" or more");
        text = EQUALS.matcher(text).replaceFirst(" / ");
        text = THROUGH.matcher(LAST.matcher(text).replaceFirst("")).replaceFirst(" to ");
        return switch (dimension) {
            case LENGTH -> CENTERS.matcher(text).replaceFirst("");
            case TIME -> CALENDAR.matcher(OF_TIME.matcher(text).replaceFirst("")).replaceFirst("");
            case RATIO -> LARGER.matcher(OF_WHAT.matcher(text).replaceFirst("")).replaceFirst("");
            case TEMPERATURE -> FULL_DEGREES.matcher(NAMED_DEGREES.matcher(NOR.matcher(text).replaceFirst(" and not ")).replaceAll("°$1"))
                .replaceAll("°");
            default -> text;
        };
    }
}

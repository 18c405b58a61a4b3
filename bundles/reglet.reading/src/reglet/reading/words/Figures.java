package reglet.reading.words;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Numbers as people write them: "two weeks", "60-day", "5+ perms", weeks as days, a range with each end in two units as one in one. */
final class Figures {
    private static final Map<String, Integer> WORDS = new LinkedHashMap<>();
    private static final Pattern LEADING;
    private static final Pattern WEEKS = Pattern.compile("(?i)^(\\D*?)(\\d+)\\s*-?\\s*(?:weeks?|wks?)\\b\\.?");
    /** A dash for a minus: "between –20°F and 122°F". */
    private static final Pattern MINUS = Pattern.compile("(?<=^|\\s|\\()[–—](?=\\d)");
    private static final int DAYS = 7;
    /** "5+ perms". */
    private static final Pattern AND_MORE = Pattern.compile("^\\s*(\\d[\\d.,]*)\\s?\\+\\s*(?=\\p{L}|%)");
    /** "-20 °F (-29 °C) to 122 °F (50 °C)". */
    private static final Pattern TWICE = Pattern.compile("^(.*\\d[^()]*?)\\s*\\([^()]*\\d[^()]*\\)\\s*(to|and|through|[-–—])\\s*"
        + "([^()]*\\d[^()]*?)(?:\\s*\\([^()]*\\))?\\s*$");
    /** The mark of a note: "15 perms (1)". */
    private static final Pattern NOTE = Pattern.compile("(?<=[\\p{L}%\"°²])\\s*\\([1-9]\\)\\s*$");

    static {
        String[] words = {"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"};
        for (int i = 0; i < words.length; i++) {
            WORDS.put(words[i], i + 1);
        }
        WORDS.putAll(Map.of("fifteen", 15, "twenty", 20, "thirty", 30, "forty", 40, "forty-five", 45, "sixty", 60, "ninety", 90));
        LEADING = Pattern.compile("(?i)\\b(" + WORDS.keySet().stream().sorted((a, b) -> b.length() - a.length())
            .collect(Collectors.joining("|"))
                + ")\\b(?=[\\s-]*(?:\\(\\d+\\)\\s*)?(?:days?|weeks?|months?|years?|hours?|minutes?|inch|inches|feet|foot|percent|mils?|"
            + "perms?|pounds?)\\b)");
    }

    private Figures() {
    }

    static boolean isNumber(String plain) {
        String word = plain.toLowerCase(Locale.ROOT);
        return WORDS.containsKey(word) || LOWER.containsKey(word) || word.equals(MINUS_SAID);
    }

    /** "One quarter of an inch", "half an inch", "a quarter inch". */
    private static final Pattern PARTS = Pattern.compile("(?i)\\b(?:(an?|one|three)[\\s-]+)?(half|quarters?|eighths?)[\\s-]+(?:of[\\s-]+)?"
        + "(?:an?[\\s-]+)?(?=inch\\b|in\\b)");
    /** "Between minus 20 °F and 120 °F". */
    private static final Pattern BELOW_ZERO = Pattern.compile("(?i)\\bminus\\s+(?=\\d)");
    /** "Minus" in one spelling, in which it looks like several. */
    static final String MINUS_SAID = Plain.of("minus");
    private static final Map<String, String> LOWER = Map.of("half", "2", "quarter", "4", "eighth", "8");

    /** A text with its numbers as figures. */
    static String of(String said) {
        Integer alone = WORDS.get(said.strip().toLowerCase(Locale.ROOT));
        if (alone != null) {
            // "three pull-off tests"
            return alone.toString();
        }
        String written = PARTS.matcher(BELOW_ZERO.matcher(said).replaceAll("-")).replaceAll(part -> (
            "three".equalsIgnoreCase(part.group(1)) ? "3/" : "1/")
            + LOWER.get(part.group(2).toLowerCase(Locale.ROOT).replaceFirst("s$", "")) + " ");
        String text = MINUS.matcher(LEADING.matcher(written).replaceAll(match -> Integer.toString(WORDS.get(match.group(1)
            .toLowerCase(Locale.ROOT))))).replaceAll("-");
        // "two (2) weeks", "60-day", "4-inch"
        text = TWICE.matcher(AND_MORE.matcher(NOTE.matcher(text).replaceFirst("")).replaceFirst("≥ $1 ")).replaceFirst("$1 $2 $3");
        text = text.replaceAll("(\\d+)\\s*\\(\\1\\)", "$1").replaceAll("(?<=\\d)-(?=\\p{L}{2})", " ");
        Matcher weeks = WEEKS.matcher(text);
        return weeks.find() ? weeks.group(1) + Integer.parseInt(weeks.group(2)) * DAYS + " days" + text.substring(weeks.end()) : text;
    }
}

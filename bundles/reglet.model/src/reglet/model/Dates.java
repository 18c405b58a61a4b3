package reglet.model;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates as people and sheets write them: "2026-11-29", "Nov 29, 2026", "29 November 2026", "11/29/2026", "11/29/26". Nothing is guessed:
 * a text that may be several days names none, and is told them.
 */
public final class Dates {
    private static final String NAME = "(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?"
        + "|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\\.?";
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})([-/])(\\d{1,2})\\2(\\d{1,2})");
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4}|\\d{2})");
    private static final Pattern NAME_FIRST = Pattern.compile("(?i)" + NAME + "\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");
    private static final Pattern DAY_FIRST = Pattern.compile("(?i)(\\d{1,2})(?:st|nd|rd|th)?\\s+" + NAME + ",?\\s+(\\d{4})");
    private static final Pattern MONTH = Pattern.compile("(?i)(\\d{4})-(\\d{1,2})|(\\d{1,2})/(\\d{4})|" + NAME + ",?\\s+(\\d{4})");
    private static final Pattern YEAR = Pattern.compile("\\d{4}");
    private static final Pattern WITH_TIME = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[T ]\\d{1,2}:.*");
    private static final int CENTURY = 2000;

    private Dates() {
    }

    /** The one day that a text means; empty when it may be several or is none. */
    public static Optional<Day> meant(String text) {
        List<Day> days = possible(text);
        return days.size() == 1 ? Optional.of(days.get(0)) : Optional.empty();
    }

    /**
     * The days that a text may mean, of numbers between slashes the American order first, each once; empty when it is no date. A year of
     * two figures is one of this century and may stand first or last.
     */
    public static List<Day> possible(String text) {
        String written = text.strip();
        List<Day> days = new ArrayList<>();
        Matcher matcher = YEAR_FIRST.matcher(written);
        if (matcher.matches()) {
            add(days, number(matcher, 1), number(matcher, 3), number(matcher, 4));
        }
        matcher = NAME_FIRST.matcher(written);
        if (matcher.matches()) {
            add(days, number(matcher, 3), named(matcher.group(1)), number(matcher, 2));
        }
        matcher = DAY_FIRST.matcher(written);
        if (matcher.matches()) {
            add(days, number(matcher, 3), named(matcher.group(2)), number(matcher, 1));
        }
        matcher = SLASHES.matcher(written);
        if (matcher.matches()) {
            int first = number(matcher, 1);
            int second = number(matcher, 2);
            int last = number(matcher, 3);
            boolean whole = matcher.group(3).length() == 4;
            add(days, whole ? last : CENTURY + last, first, second);
            add(days, whole ? last : CENTURY + last, second, first);
            if (!whole) {
                add(days, CENTURY + first, second, last);
            }
        }
        return days;
    }

    /**
     * The last day that a date means as American sheets print it: of a month alone its last day, between slashes the month first unless the
     * year has two figures; empty for anything else.
     */
    public static Optional<Day> last(String text) {
        Matcher slashes = SLASHES.matcher(text.strip());
        if (slashes.matches() && slashes.group(3).length() == 2) {
            return meant(text);
        }
        return possible(text).stream().findFirst().or(() -> month(text).map(YearMonth::atEndOfMonth).map(Day::of));
    }

    /** The month that a text names without a day: "2026-11", "11/2026", "November 2026". */
    public static Optional<YearMonth> month(String text) {
        Matcher matcher = MONTH.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String year = matcher.group(1) != null ? matcher.group(1) : matcher.group(4) != null ? matcher.group(4) : matcher.group(6);
        int month = matcher.group(5) != null ? named(matcher.group(5)) : Integer.parseInt(matcher.group(matcher.group(1) != null ? 2 : 3));
        return month >= 1 && month <= 12 ? Optional.of(YearMonth.of(Integer.parseInt(year), month)) : Optional.empty();
    }

    /** What to write in place of a text that is no calendar day as files have it, for the end of a message. */
    public static String expected(String text) {
        String written = text.strip();
        List<Day> days = possible(written);
        if (!days.isEmpty()) {
            return "write " + String.join(" or ", days.stream().map(Day::text).toList()) + (days.size() > 1 ? ", whichever is meant" : "");
        }
        Matcher time = WITH_TIME.matcher(written);
        if (time.matches() && Day.parse(time.group(1)).isPresent()) {
            return "write the day alone: " + time.group(1);
        }
        if (YEAR.matcher(written).matches()) {
            return "a year is no day; write " + written + "-12-31 for its last day, " + written + "-01-01 for its first";
        }
        Optional<YearMonth> month = month(written);
        if (month.isPresent()) {
            return "a month is no day; write " + month.get().atEndOfMonth() + " for its last day, " + month.get().atDay(1)
                + " for its first";
        }
        Matcher day = YEAR_FIRST.matcher(written);
        return (day.matches() ? none(number(day, 1), number(day, 3)) : "") + "expected year, month and day, such as 2026-03-02";
    }

    /** Why there is no such day. */
    private static String none(int year, int month) {
        return year < Day.FIRST_YEAR ? "years run from " + Day.FIRST_YEAR + " to " + Day.LAST_YEAR + "; "
            : month < 1 || month > 12 ? "a year has 12 months; " : LocalDate.of(year, month, 1).getMonth()
            .getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + year + " has " + YearMonth.of(year, month).lengthOfMonth() + " days; ";
    }

    private static void add(List<Day> days, int year, int month, int day) {
        try {
            Day one = new Day(year, month, day);
            if (!days.contains(one)) {
                days.add(one);
            }
        } catch (IllegalArgumentException none) {
            // a text that can't be read so
        }
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private static int named(String name) {
        return MONTHS.indexOf(name.substring(0, 3).toLowerCase(Locale.ROOT)) / 3 + 1;
    }
}

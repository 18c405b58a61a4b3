package reglet.comparing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether an evaluation report or certificate is in force on a day, counted in days. */
public final class Expiry {
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})(?:-(\\d{1,2}))?");
    private static final Pattern AMERICAN = Pattern.compile("(\\d{1,2})/(?:(\\d{1,2})/)?(\\d{4})");
    private static final Pattern NAMED = Pattern.compile("(?i)(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?\\s+(?:(\\d{1,2})"
        + "(?:st|nd|rd|th)?,?\\s+)?(\\d{4})");
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";

    private Expiry() {
    }

    /** The last day that a date as written means: of a month alone its last day; empty for anything else. */
    public static Optional<LocalDate> lastDay(String written) {
        try {
            Matcher iso = ISO.matcher(written.strip());
            if (iso.matches()) {
                return Optional.of(day(iso.group(1), Integer.parseInt(iso.group(2)), iso.group(3)));
            }
            Matcher american = AMERICAN.matcher(written.strip());
            if (american.matches()) {
                return Optional.of(day(american.group(3), Integer.parseInt(american.group(1)), american.group(2)));
            }
            Matcher named = NAMED.matcher(written.strip());
            return named.matches() ? Optional.of(day(named.group(3), MONTHS.indexOf(named.group(1).toLowerCase(Locale.ROOT)) / 3 + 1,
                named.group(2))) : Optional.empty();
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private static LocalDate day(String year, int month, String day) {
        YearMonth of = YearMonth.of(Integer.parseInt(year), month);
        return day == null ? of.atEndOfMonth() : of.atDay(1).withDayOfMonth(Integer.parseInt(day));
    }

    /** Days that it is still in force after a day; below zero when it had ended before; empty when either can't be read as a date. */
    public static OptionalLong daysLeft(String ends, String on) {
        Optional<LocalDate> end = lastDay(ends);
        Optional<LocalDate> day = lastDay(on);
        return end.isPresent() && day.isPresent() ? OptionalLong.of(ChronoUnit.DAYS.between(day.get(), end.get())) : OptionalLong.empty();
    }
}

package reglet.model;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A calendar day without hour or place, in the Gregorian calendar. Its text is the calendar date of ISO 8601-1, clause 5.2.2, in the
 * extended form: "2026-11-29". Nothing here knows today: days are compared with days that a job states.
 *
 * @param year  1583, the first whole year of the calendar, to 9999: ISO 8601 leaves others to agreement
 * @param month from 1
 * @param day   of the month, from 1
 */
public record Day(int year, int month, int day) implements Value, Comparable<Day> {
    static final int FIRST_YEAR = 1583;
    static final int LAST_YEAR = 9999;

    public Day {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new IllegalArgumentException("the year " + year + " is none from " + FIRST_YEAR + " to " + LAST_YEAR);
        }
        try {
            LocalDate.of(year, month, day);
        } catch (DateTimeException none) {
            throw new IllegalArgumentException("there is no day " + year + "-" + month + "-" + day, none);
        }
    }

    public static Day of(LocalDate date) {
        return new Day(date.getYear(), date.getMonthValue(), date.getDayOfMonth());
    }

    /** Reads "2026-11-29" and nothing else; empty when there is no such day. For what people type see {@link Dates}. */
    public static Optional<Day> parse(String text) {
        if (text.length() != 10) {
            return Optional.empty();
        }
        try {
            return Optional.of(of(LocalDate.parse(text)));
        } catch (DateTimeParseException | IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    public LocalDate date() {
        return LocalDate.of(year, month, day);
    }

    /** Days from another day to this one; below zero when this one is the earlier. */
    public long since(Day other) {
        return ChronoUnit.DAYS.between(other.date(), date());
    }

    /**
     * The day so many days later, or earlier for a time below zero.
     *
     * @throws IllegalArgumentException when the time is no whole number of days, or is written in months or years, which have no one length
     */
    public Day plus(Quantity time) {
        double days = time.in(Unit.DAY);
        if (time.unit() == Unit.MONTH || time.unit() == Unit.YEAR || Math.rint(days) != days) {
            throw new IllegalArgumentException("only whole days can be added to a date, and not " + time.text());
        }
        long to = date().toEpochDay() + (long) days;
        if (to < LocalDate.of(FIRST_YEAR, 1, 1).toEpochDay() || to > LocalDate.of(LAST_YEAR, 12, 31).toEpochDay()) {
            throw new IllegalArgumentException(text() + " and " + time.text() + " lead to no year from " + FIRST_YEAR + " to " + LAST_YEAR);
        }
        return of(LocalDate.ofEpochDay(to));
    }

    @Override
    public int compareTo(Day other) {
        return date().compareTo(other.date());
    }

    @Override
    public String text() {
        return date().toString();
    }
}

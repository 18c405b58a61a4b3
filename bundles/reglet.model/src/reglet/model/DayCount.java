package reglet.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;

/**
 * How days are counted back from a date. The date itself is not counted.
 *
 * @param kind working days (Monday to Friday without the days off) or calendar days
 * @param off  days on which nobody works, besides Saturdays and Sundays; no matter for calendar days
 */
public record DayCount(Kind kind, List<LocalDate> off) {

    public DayCount {
        off = List.copyOf(off);
    }

    /** Which days count. */
    public enum Kind {
        WORKING("working"), CALENDAR("calendar");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** The date so many days before another. */
    public LocalDate back(LocalDate from, int days) {
        LocalDate date = from;
        int left = days;
        while (left > 0) {
            date = date.minusDays(1);
            if (counts(date)) {
                left--;
            }
        }
        return date;
    }

    private boolean counts(LocalDate date) {
        return kind == Kind.CALENDAR || date.getDayOfWeek() != DayOfWeek.SATURDAY && date.getDayOfWeek() != DayOfWeek.SUNDAY
            && !off.contains(date);
    }
}

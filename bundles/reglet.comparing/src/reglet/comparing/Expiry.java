package reglet.comparing;

import java.util.Optional;
import java.util.OptionalLong;

import reglet.model.Dates;
import reglet.model.Day;

/** Whether an evaluation report or certificate is in force on a day, counted in days. */
public final class Expiry {

    private Expiry() {
    }

    /** Days that it is still in force after a day; below zero when it had ended before; empty when either can't be read as a date. */
    public static OptionalLong daysLeft(String ends, String on) {
        Optional<Day> end = Dates.last(ends);
        Optional<Day> day = Dates.last(on);
        return end.isPresent() && day.isPresent() ? OptionalLong.of(end.get().since(day.get())) : OptionalLong.empty();
    }
}

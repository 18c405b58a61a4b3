package reglet.reading.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The age at which mortar was tested, in days: what it reaches at 28 days counts more than what it has at 7. */
final class Age {
    /** Tests of mortar and concrete are made at this age where none is told. */
    private static final int USUAL = 28;
    private static final Pattern DAYS = Pattern.compile("(?i)(?<![\\d.])(\\d{1,2})[- ]?(?:days?|d)\\b");

    private Age() {
    }

    /** The age that a label names, 28 days at most; that of 28 days where it names none, or several. */
    static int of(String label) {
        Matcher days = DAYS.matcher(label);
        int age = days.find() ? Integer.parseInt(days.group(1)) : USUAL;
        return days.find() || age == 0 ? USUAL : Math.min(age, USUAL);
    }
}

package reglet.drafting;

import reglet.model.Dates;
import reglet.model.Day;
import reglet.model.ReportCheck;
import reglet.model.SheetReading.Condition;

/** How evaluation reports and their conditions of use are told. */
public final class ReportWords {
    private ReportWords() {
    }

    /** "Report MER-1 ended 2026-03-01, 44 days before the submittal of 2026-04-14." */
    public static String state(ReportCheck check) {
        String report = "Report " + check.report().number();
        if (check.report().ends().isEmpty()) {
            return report + " says no day on which it ends; a person has to check that it is in force.";
        }
        String ends = report + (check.ended() ? " ended " : " ends ") + day(check.report().ends());
        if (check.daysLeft().isEmpty()) {
            return ends + "; how many days that are from the submittal can't be told"
                + (check.on().isEmpty() ? ", which has no date." : ": " + unread(check) + ".");
        }
        long days = Math.abs(check.daysLeft().getAsLong());
        if (days == 0) {
            return ends + ", the day of the submittal.";
        }
        return ends + ", " + days + (days == 1 ? " day" : " days") + (check.ended() ? " before" : " after")
            + " the submittal of " + check.on() + ".";
    }

    /** What a report prints, with the day that it is counted as where it prints it otherwise: "05/2025 (2025-05-31)". */
    private static String day(String written) {
        return Dates.last(written).map(Day::text).filter(day -> !day.equals(written)).map(day -> written + " (" + day + ")")
            .orElse(written);
    }

    /** Of the two days the one that can't be read, and what to write in its place. */
    private static String unread(ReportCheck check) {
        String day = Dates.last(check.report().ends()).isEmpty() ? check.report().ends() : check.on();
        return "\"" + day + "\" is no date; " + Dates.expected(day);
    }

    /** "condition 5.3, page 2, a person has to check: Kept dry." */
    public static String byAPerson(Condition condition) {
        return "condition" + (condition.number().isEmpty() ? "" : " " + condition.number()) + ", page " + condition.page()
            + ", a person has to check: " + condition.text();
    }
}

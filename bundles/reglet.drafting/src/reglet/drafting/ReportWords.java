package reglet.drafting;

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
        String ends = report + (check.ended() ? " ended " : " ends ") + check.report().ends();
        if (check.daysLeft().isEmpty()) {
            return ends + "; how many days that are from the submittal can't be told"
                + (check.on().isEmpty() ? ", which has no date." : ": one of the days can't be read.");
        }
        long days = Math.abs(check.daysLeft().getAsLong());
        return ends + ", " + days + (days == 1 ? " day" : " days") + (check.ended() ? " before" : " after")
            + " the submittal of " + check.on() + ".";
    }

    /** "condition 5.3, page 2, a person has to check: Kept dry." */
    public static String byAPerson(Condition condition) {
        return "condition" + (condition.number().isEmpty() ? "" : " " + condition.number()) + ", page " + condition.page()
            + ", a person has to check: " + condition.text();
    }
}

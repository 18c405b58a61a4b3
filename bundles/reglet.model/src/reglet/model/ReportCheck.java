package reglet.model;

import java.util.List;
import java.util.OptionalLong;

import reglet.model.Comparison.Result;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;

/**
 * An evaluation report or certificate of a product against the day of a submittal and against what a job requires.
 *
 * @param product  id of the product data
 * @param on       the day of the submittal, as written; ""
 * @param daysLeft days that the report is still in force after that day, below zero when it had ended before; empty when either day isn't
 *                 known
 * @param checks   what its conditions of use ask of the walls
 */
public record ReportCheck(String product, Report report, String on, OptionalLong daysLeft, List<ConditionCheck> checks) {

    public ReportCheck {
        checks = List.copyOf(checks);
    }

    /** Whether it had ended before the day of the submittal. */
    public boolean ended() {
        return daysLeft.isPresent() && daysLeft.getAsLong() < 0;
    }

    /** The checks that come from a condition. */
    public List<ConditionCheck> of(Condition condition) {
        return checks.stream().filter(check -> check.condition().equals(condition)).toList();
    }

    /** The conditions that a person has to check, for they ask for nothing, or not only for what the job can be asked. */
    public List<Condition> byAPerson() {
        return report.conditions().stream().filter(condition -> condition.limits().isEmpty() || condition.limits().stream()
            .anyMatch(limit -> of(condition).stream().noneMatch(check -> check.limit().equals(limit)))).toList();
    }

    /** Whether it is in force, as far as that is known, and no condition is known to be broken or left open. */
    public boolean isClean() {
        return !ended() && checks.stream().allMatch(check -> check.result() == Result.MEETS);
    }
}

package reglet.model;

import java.util.Optional;

import reglet.model.Comparison.Result;
import reglet.model.SheetReading.Condition;

/**
 * A condition of use of an evaluation report against what a job requires of a wall type.
 *
 * @param wall        wall type id
 * @param condition   the condition
 * @param limit       what it asks of a property
 * @param requirement what the job requires of that property; empty when it says nothing of it
 * @param result      meets: all that the job allows keeps the condition; not shown: the job says nothing of it
 * @param note        what a person should know; ""
 */
public record ConditionCheck(String wall, Condition condition, SheetValue limit, Optional<Requirement> requirement, Result result,
        String note) {
}

package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.ShortBy;
import reglet.model.Requirement;
import reglet.model.SheetValue;

/** What a submitted value says of a requirement. */
record Verdict(Result result, Optional<ShortBy> shortBy, String note) {

    Verdict(Result result, String note) {
        this(result, Optional.empty(), note);
    }

    /**
     * @param edition the edition of the requirement's method that the job's code lists; "" when that isn't known
     */
    static Verdict of(Requirement requirement, SheetValue submitted, String edition) {
        List<String> notes = new ArrayList<>();
        Verdict values = Amounts.judge(requirement, submitted, notes).orElseGet(() -> Wording.judge(requirement, submitted.value(), notes));
        Result result = requirement.asksNothing() ? values.result()
            : Methods.judge(requirement, submitted, edition, values.result(), notes);
        if (!submitted.confirmed()) {
            notes.add("Read from the sheet and not confirmed by a person.");
        }
        return new Verdict(result, result == Result.FALLS_SHORT ? values.shortBy() : Optional.empty(), String.join(" ", notes));
    }
}

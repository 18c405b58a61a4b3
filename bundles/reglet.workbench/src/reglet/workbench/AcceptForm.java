package reglet.workbench;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;

import reglet.desk.Saving;
import reglet.model.Accepted;
import reglet.model.Finding;
import reglet.model.Place;

/** Accepts a finding with a written reason and a name. */
final class AcceptForm {
    private final Session session;
    private final ReasonForm form;
    private Optional<Finding> finding = Optional.empty();

    /** @param done called when the form is no longer needed */
    AcceptForm(Composite parent, Session session, Runnable done) {
        this.session = session;
        form = new ReasonForm(parent, new ReasonForm.Words("Reason for accepting", "Why it may stay", "Name of who accepts",
            "Who accepts it", "A reason and a name are needed; both print in the register of exceptions.", "Back to the remedies",
            "A&ccept", "Accept the finding"), done, this::accept);
    }

    Composite page() {
        return form.page();
    }

    void ask(Finding asked) {
        finding = Optional.of(asked);
        form.ask(asked.key());
    }

    private void accept(String because, String by, Consumer<String> refused) {
        finding.ifPresent(asked -> {
            Accepted accepted = new Accepted(asked.rule(), asked.wall(), because, by, Place.of(Accepted.FILE));
            session.change("Accepted: " + asked.rule() + (asked.wall().isEmpty() ? "" : " on " + asked.wall()), List.of(Accepted.FILE),
                job -> Saving.accept(job, accepted), refused);
            form.clear();
        });
    }
}

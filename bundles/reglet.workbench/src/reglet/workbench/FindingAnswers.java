package reglet.workbench;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.desk.Saving;
import reglet.model.Accepted;
import reglet.model.Finding;

/** What can be done about the finding in focus: a remedy, or accepting it with a reason; when that is done, taking it back. */
final class FindingAnswers {
    private final Session session;
    private final Composite stack;
    private final RemediesList remedies;
    /** Made when first asked for. */
    private AcceptForm form;
    private final Composite accepted;
    private final Label reason;
    private Optional<Finding> shown = Optional.empty();

    FindingAnswers(Composite parent, Session session) {
        this.session = session;
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(new StackLayout());
        remedies = new RemediesList(stack, session, this::ask);
        accepted = new Composite(stack, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(accepted);
        reason = Ui.named(new Label(accepted, SWT.WRAP), "Why it is accepted");
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(reason, 20), SWT.DEFAULT).applyTo(reason);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END)
            .applyTo(Ui.button(accepted, "&Take back", "Take the acceptance back", this::takeBack));
        top(remedies.page());
    }

    /** Follows the finding in focus. */
    void follow() {
        Optional<Finding> finding = session.focus().finding();
        boolean same = finding.map(Finding::key).equals(shown.map(Finding::key));
        shown = finding;
        Optional<Accepted> entry = session.snapshot().flatMap(now -> finding.filter(now.checked().accepted()::contains)
            .flatMap(found -> now.job().job().accepted().stream().filter(accepts -> accepts.covers(found)).findFirst()));
        remedies.follow(entry.isEmpty());
        if (entry.isPresent()) {
            Accepted accepts = entry.get();
            reason.setText("Accepted by " + accepts.by() + (accepts.wall().isEmpty() ? ", for every wall type" : "") + ":\n"
                + accepts.because());
            accepted.layout();
            top(accepted);
        } else if (!same || ((StackLayout) stack.getLayout()).topControl == accepted) {
            top(remedies.page());
        }
    }

    private void ask() {
        session.focus().finding().ifPresent(finding -> {
            if (form == null) {
                form = new AcceptForm(stack, session, () -> top(remedies.page()));
            }
            top(form.page());
            form.ask(finding);
        });
    }

    private void takeBack() {
        shown.ifPresent(finding -> session.change("Taken back: " + finding.rule() + " on " + finding.wall(), List.of(Accepted.FILE),
            job -> Saving.takeBack(job, finding), refused -> session.say(refused, true)));
    }

    private void top(Composite control) {
        StackLayout layout = (StackLayout) stack.getLayout();
        if (layout.topControl != control) {
            layout.topControl = control;
            stack.layout();
        }
    }
}

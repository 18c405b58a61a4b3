package reglet.workbench;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.ModifyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.Saving;
import reglet.model.Accepted;
import reglet.model.Finding;
import reglet.model.Place;

/** Accepts a finding with a written reason and a name; both are asked for, and neither is guessed. */
final class AcceptForm {
    private final Session session;
    private final Runnable done;
    private final Composite page;
    private final Text because;
    private final Text by;
    private final Label wrong;
    private final Button accept;
    private Optional<Finding> finding = Optional.empty();

    /** @param done called when the form is no longer needed */
    AcceptForm(Composite parent, Session session, Runnable done) {
        this.session = session;
        this.done = done;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(page);
        label("Reason");
        because = Ui.named(new Text(page, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL), "Reason for accepting");
        because.setMessage("Why it may stay");
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(because, 18), SWT.DEFAULT).applyTo(because);
        label("Name");
        by = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), "Name of who accepts");
        by.setMessage("Who accepts it");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(by);
        wrong = Ui.named(new Label(page, SWT.WRAP), "What the form lacks");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 18), SWT.DEFAULT).applyTo(wrong);
        Composite buttons = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).span(2, 1).applyTo(buttons);
        Ui.button(buttons, "&Back", "Back to the remedies", done);
        accept = Ui.button(buttons, "A&ccept", "Accept the finding", this::accept);
        ModifyListener typed = event -> tell();
        because.addModifyListener(typed);
        by.addModifyListener(typed);
        KeyListener keys = KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                done.run();
            }
        });
        because.addKeyListener(keys);
        by.addKeyListener(keys);
        // a reason has lines, so that the Tab key leaves it and Enter does not accept
        because.addTraverseListener(event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
            || event.detail == SWT.TRAVERSE_TAB_PREVIOUS || event.doit);
        by.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> accept()));
    }

    private void label(String words) {
        Label label = new Label(page, SWT.NONE);
        label.setText(words);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(label);
    }

    Composite page() {
        return page;
    }

    /** Asks for the reason of a finding; the name typed last stays. */
    void ask(Finding asked) {
        if (!finding.map(Finding::key).equals(Optional.of(asked.key()))) {
            because.setText("");
        }
        finding = Optional.of(asked);
        tell();
        because.setFocus();
    }

    private void tell() {
        boolean lacks = because.getText().isBlank() || by.getText().isBlank();
        accept.setEnabled(!lacks);
        wrong.setText(lacks ? "A reason and a name are needed; both print in the register of exceptions." : "");
        page.layout();
    }

    private void accept() {
        if (!accept.isEnabled() || finding.isEmpty()) {
            return;
        }
        Finding asked = finding.get();
        Accepted accepted = new Accepted(asked.rule(), asked.wall(), because.getText().strip().replaceAll("\\s*\\R\\s*", " "),
            by.getText().strip(), Place.of(Accepted.FILE));
        session.change("Accepted: " + asked.rule() + (asked.wall().isEmpty() ? "" : " on " + asked.wall()), List.of(Accepted.FILE),
            job -> Saving.accept(job, accepted), refused -> wrong.setText("≠ " + refused));
        because.setText("");
        done.run();
    }
}

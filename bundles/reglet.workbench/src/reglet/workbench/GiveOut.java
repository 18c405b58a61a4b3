package reglet.workbench;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.Issues;
import reglet.model.Issue;

/** A line that gives the job's sections out: kind, name, a note, and whether conflicts may stand. */
final class GiveOut {
    private static final List<Issue.Kind> KINDS = List.of(Issue.Kind.values());
    private final Combo kind;
    private final Text name;
    private final Text note;
    private final Button open;
    private final Refusal refusal;

    GiveOut(Composite page, Consumer<Issues.Request> freeze) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        // in a narrow pane, or with larger text, the line breaks
        RowLayoutFactory.swtDefaults().wrap(true).center(true).margins(0, 0).applyTo(line);
        new Label(line, SWT.NONE).setText("Give out");
        kind = Ui.named(new Combo(line, SWT.READ_ONLY), "Kind of issue");
        KINDS.forEach(some -> kind.add(some.text()));
        kind.select(0);
        name = field(line, "Name of the issue", "Bid set", 14);
        note = field(line, "Note on the issue", "a line about it", 18);
        open = Ui.named(new Button(line, SWT.CHECK), "Though conflicts stand");
        open.setText("&though conflicts stand");
        Ui.button(line, "&Give out", "Give the sections out", () -> freeze.accept(request()));
        name.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> freeze.accept(request())));
        kind.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> name.setMessage(kind() == Issue.Kind.ISSUE ? "Bid set"
            : "the next number")));
        refusal = new Refusal(page, "Giving out, what is wrong");
    }

    private static Text field(Composite line, String name, String hint, int characters) {
        Text field = Ui.named(new Text(line, SWT.BORDER | SWT.SINGLE), name);
        field.setMessage(hint);
        field.setLayoutData(new RowData(Ui.characters(field, characters), SWT.DEFAULT));
        return field;
    }

    private Issue.Kind kind() {
        return KINDS.get(kind.getSelectionIndex());
    }

    private Issues.Request request() {
        refusal.say("");
        return new Issues.Request(name.getText().strip(), kind(), Optional.of(LocalDate.now()), note.getText().strip(),
            open.getSelection());
    }

    /** It was given out. */
    void done() {
        name.setText("");
        note.setText("");
        open.setSelection(false);
    }

    /** Why it can't be given out. */
    void refused(String why) {
        refusal.say(why);
    }
}

package reglet.workbench.alternates;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.AlternateChanges;
import reglet.model.Alternate;
import reglet.workbench.Prose;
import reglet.workbench.Session;
import reglet.workbench.Ui;

/** Title of an alternate and what it changes, typed over the whole width; Enter or leaving a field takes it over, Escape puts it back. */
final class NamesPane {
    private final Session session;
    private final Composite page;
    private final Line title;
    private final Line description;
    private Optional<Alternate> shown = Optional.empty();

    NamesPane(Composite parent, Session session) {
        this.session = session;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(0, 2).applyTo(page);
        title = new Line("title", "Title");
        description = new Line("description", "What it changes");
    }

    void show(Optional<Alternate> alternate) {
        boolean other = !alternate.map(Alternate::number).equals(shown.map(Alternate::number));
        shown = alternate;
        title.show(alternate.map(Alternate::title).orElse(""), other);
        description.show(alternate.map(Alternate::description).orElse(""), other);
        page.setEnabled(alternate.isPresent());
    }

    boolean setFocus() {
        return title.text.setFocus();
    }

    /** A field, and below it why its words can't be taken. */
    private final class Line {
        private final String key;
        private final String name;
        private final Text text;
        private final Label wrong;
        private String value = "";
        private String handed = "";

        Line(String key, String name) {
            this.key = key;
            this.name = name;
            new Label(page, SWT.NONE).setText(name);
            text = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), name);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
            wrong = Ui.named(new Label(page, SWT.WRAP), name + ", what is wrong");
            GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 30), SWT.DEFAULT).exclude(true)
                .applyTo(wrong);
            wrong.setVisible(false);
            text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> take()));
            text.addFocusListener(FocusListener.focusLostAdapter(event -> take()));
            text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
                if (event.keyCode == SWT.ESC) {
                    text.setText(value);
                    explain("");
                }
            }));
        }

        /** @param other whether it is another alternate's; what is typed for the same one stays */
        void show(String now, boolean other) {
            boolean typing = !other && text.isFocusControl() && !text.getText().equals(value) && !text.getText().strip().equals(handed);
            value = now;
            handed = now;
            if (!typing && !text.getText().equals(now)) {
                text.setText(now);
            }
            if (!typing) {
                explain("");
            }
        }

        private void take() {
            String typed = text.getText().strip();
            if (shown.isEmpty() || typed.equals(handed)) {
                return;
            }
            // leaving the field after Enter hands the same words over only once
            handed = typed;
            Alternate one = shown.get();
            session.change(one.name() + ", " + Prose.lower(name) + ": " + typed,
                AlternateChanges.files(session.snapshot().orElseThrow().job().job()), job -> AlternateChanges.name(job, one.number(), key,
                    typed), this::explain);
        }

        private void explain(String why) {
            if (wrong.isDisposed()) {
                return;
            }
            wrong.setText(why.isEmpty() ? "" : "≠ " + why);
            wrong.setVisible(!why.isEmpty());
            ((GridData) wrong.getLayoutData()).exclude = why.isEmpty();
            page.requestLayout();
        }
    }

    Composite page() {
        return page;
    }
}

package reglet.workbench;

import java.util.function.Consumer;

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

/** Asks in place for a written reason and a name; both are needed, and neither is guessed. */
public final class ReasonForm {
    private final Runnable done;
    private final Words words;
    private final Given given;
    private final Composite page;
    private final Text because;
    private final Text by;
    private final Label wrong;
    private final Button accept;
    private Object about = "";

    /**
     * What stands in the form.
     *
     * @param reason name of the field for screen readers
     * @param why    asks for the reason
     * @param name   name of the field for screen readers
     * @param who    asks for the name
     * @param lacks  said while one of both is missing
     * @param back   where the way back leads
     * @param accept label of the button, with its letter
     * @param does   what the button does
     */
    public record Words(String reason, String why, String name, String who, String lacks, String back, String accept, String does) {
    }

    /** Told the reason in one line and the name. */
    public interface Given {
        /** @param refused told why it can't be done */
        void take(String because, String by, Consumer<String> refused);
    }

    /** @param done called when the form is no longer needed */
    public ReasonForm(Composite parent, Words words, Runnable done, Given given) {
        this.words = words;
        this.done = done;
        this.given = given;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(page);
        label("Reason");
        because = Ui.named(new Text(page, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL), words.reason());
        because.setMessage(words.why());
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(because, 18), SWT.DEFAULT).applyTo(because);
        label("Name");
        by = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), words.name());
        by.setMessage(words.who());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(by);
        wrong = Ui.named(new Label(page, SWT.WRAP), "What the form lacks");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 18), SWT.DEFAULT).applyTo(wrong);
        Composite buttons = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).span(2, 1).applyTo(buttons);
        Ui.button(buttons, "&Back", words.back(), done);
        accept = Ui.button(buttons, words.accept(), words.does(), this::accept);
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

    private void label(String text) {
        Label label = new Label(page, SWT.NONE);
        label.setText(text);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(label);
    }

    public Composite page() {
        return page;
    }

    /** Asks for the reason of something; of another thing anew, while the name typed last stays. */
    public void ask(Object what) {
        if (!what.equals(about)) {
            because.setText("");
        }
        about = what;
        tell();
        because.setFocus();
    }

    private void tell() {
        boolean lacks = because.getText().isBlank() || by.getText().isBlank();
        accept.setEnabled(!lacks);
        wrong.setText(lacks ? words.lacks() : "");
        page.layout();
    }

    private void accept() {
        if (accept.isEnabled()) {
            given.take(because.getText().strip().replaceAll("\\s*\\R\\s*", " "), by.getText().strip(), this::refuse);
        }
    }

    private void refuse(String why) {
        wrong.setText("≠ " + why);
        page.layout();
    }

    /** What was asked is done. */
    public void clear() {
        because.setText("");
        done.run();
    }
}

package reglet.workbench.section;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.workbench.ReasonForm;
import reglet.workbench.Ui;

/** Below the section: asks why a paragraph's requirements are left out on purpose, and who says so. */
final class LeaveOutForm {
    static final String WHAT = "What is left out";
    private static final int ROWS = 3;
    private final Composite frame;
    private final Label what;
    private final Runnable done;
    /** Made when first asked for. */
    private ReasonForm form;
    private ReasonForm.Given given = (because, by, refused) -> { };

    /** @param done called when the keyboard goes back to the text */
    LeaveOutForm(Composite parent, Runnable done) {
        this.done = done;
        frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(true).applyTo(frame);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 0).applyTo(frame);
        frame.setVisible(false);
        what = Ui.named(new Label(frame, SWT.WRAP), WHAT);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(what, 20), SWT.DEFAULT).applyTo(what);
    }

    private ReasonForm form() {
        if (form == null) {
            form = new ReasonForm(frame, new ReasonForm.Words("Reason for leaving out", "Why the section doesn't state it",
                "Name of who leaves it out", "Who says so",
                "A reason and a name are needed; both stand in the section's file and are told where it is compared.", "Back to the section",
                "&Leave out", "Leave the requirements out"), () -> {
                    hide();
                    done.run();
                }, (because, by, refused) -> given.take(because, by, refused));
            GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, SWT.DEFAULT).applyTo(form.page());
            ((GridData) form.page().getChildren()[1].getLayoutData()).heightHint = what.computeSize(SWT.DEFAULT, SWT.DEFAULT).y * ROWS;
        }
        return form;
    }

    /** @param words what is left out, in a sentence */
    void ask(String paragraph, String words, ReasonForm.Given told) {
        given = told;
        what.setText(words);
        ReasonForm asked = form();
        shown(true);
        asked.ask(paragraph);
    }

    /** It is done. */
    void clear() {
        form().clear();
    }

    boolean isOpen() {
        return frame.getVisible();
    }

    void hide() {
        if (isOpen()) {
            shown(false);
        }
    }

    private void shown(boolean shown) {
        ((GridData) frame.getLayoutData()).exclude = !shown;
        frame.setVisible(shown);
        frame.requestLayout();
    }
}

package reglet.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

/** Brings a control up to date only while somebody sees it: what lies behind another tab waits until it is brought to the front. */
public final class WhenSeen {
    private final Control control;
    private final Runnable update;
    private boolean due;

    public WhenSeen(Control control, Runnable update) {
        this.control = control;
        this.update = update;
        control.addListener(SWT.Paint, event -> {
            if (due) {
                Ui.later(control, this::now);
            }
        });
    }

    /** Asks for the update, now or when it is seen next. */
    public void ask() {
        due = true;
        if (control.isVisible()) {
            now();
        }
    }

    private void now() {
        if (due) {
            due = false;
            update.run();
        }
    }
}

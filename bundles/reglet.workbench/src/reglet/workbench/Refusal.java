package reglet.workbench;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A line of a page laid out in a grid that says why something can't be done; it takes no room while it says nothing. */
public final class Refusal {
    private final Label label;

    /** @param name for screen readers */
    public Refusal(Composite page, String name) {
        label = Ui.named(new Label(page, SWT.WRAP), name);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).hint(Ui.characters(label, 40), SWT.DEFAULT).applyTo(label);
        label.setVisible(false);
    }

    /** @param why in words; "" for nothing */
    public void say(String why) {
        String words = why.isEmpty() ? "" : "≠ " + why;
        if (!label.isDisposed() && !words.equals(label.getText())) {
            label.setText(words);
            label.setVisible(!words.isEmpty());
            ((GridData) label.getLayoutData()).exclude = words.isEmpty();
            label.getParent().layout();
        }
    }
}

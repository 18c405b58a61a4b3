package reglet.workbench;

import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.action.StatusLineLayoutData;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/** What runs beside the window's thread, in the status line, with the way to stop it. */
final class RunningItem extends ContributionItem {
    static final String CANCEL = "Cancel what is running";
    private static final int CHARACTERS = 46;
    private final OneByOne work;
    private Composite page;
    private CLabel words;
    private Link cancel;
    private boolean asked;

    RunningItem(OneByOne work) {
        super("reglet.workbench.running");
        this.work = work;
    }

    @Override
    public void fill(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(Ui.characters(page, 1), 0)
            .extendedMargins(0, Ui.characters(page, 1), 0, 0).applyTo(page);
        StatusLineLayoutData data = new StatusLineLayoutData();
        data.widthHint = Ui.characters(page, CHARACTERS);
        page.setLayoutData(data);
        words = Ui.named(new CLabel(page, SWT.NONE), "What is running");
        GridDataFactory.fillDefaults().grab(true, true).align(SWT.FILL, SWT.CENTER).applyTo(words);
        cancel = Ui.named(new Link(page, SWT.NONE), CANCEL);
        cancel.setText("<a>Cancel</a>");
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(cancel);
        cancel.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            asked = true;
            work.cancel();
            follow();
        }));
        Runnable later = () -> Ui.later(page, this::follow);
        work.listen(later);
        page.addDisposeListener(event -> work.leave(later));
        follow();
    }

    private void follow() {
        boolean shown = work.running().isPresent();
        asked &= shown;
        words.setText(work.running().map(now -> (asked ? "Stopping: " : "") + now.words()).orElse(""));
        words.setToolTipText(words.getText());
        words.setVisible(shown);
        cancel.setVisible(shown && !asked);
    }
}

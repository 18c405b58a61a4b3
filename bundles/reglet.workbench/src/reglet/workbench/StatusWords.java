package reglet.workbench;

import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.action.StatusLineLayoutData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;

/**
 * How the job stands, and what was last said about its files. An item of its own: the status line's message belongs to the part
 * that is active, and these words to the whole window.
 */
final class StatusWords extends ContributionItem implements Session.Listener {
    private static final int CHARACTERS = 72;
    private final Session session;
    private CLabel label;

    StatusWords(Session session) {
        super("reglet.workbench.status");
        this.session = session;
    }

    @Override
    public void fill(Composite parent) {
        label = Ui.named(new CLabel(parent, SWT.NONE), "How the job stands");
        StatusLineLayoutData data = new StatusLineLayoutData();
        data.widthHint = Ui.characters(label, CHARACTERS);
        label.setLayoutData(data);
        session.listen(this);
        label.addDisposeListener(event -> session.leave(this));
        jobChanged();
    }

    @Override
    public void said() {
        jobChanged();
    }

    @Override
    public void jobChanged() {
        label.setText(words());
        label.setToolTipText(session.message().isEmpty() ? null : session.message());
    }

    private String words() {
        String counts = session.snapshot().map(now -> Marks.summary(now.checked())).orElse("No job is open");
        String message = session.message().lines().findFirst().orElse("");
        return "  " + counts + (message.isEmpty() ? "" : "   |   " + (session.isTrouble() ? "≠ " : "") + message);
    }
}

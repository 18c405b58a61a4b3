package reglet.workbench;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.desk.Bid;

/** Says on top of a view that follows the bid shown which one that is; takes no room while the work is shown as it will be built. */
final class BidBanner implements Session.Listener {
    private final Session session;
    private final Label label;

    BidBanner(Composite frame, Session session) {
        this.session = session;
        label = Ui.named(new Label(frame, SWT.WRAP), "Shown as, here");
        GridDataFactory.fillDefaults().grab(true, false).indent(Ui.characters(label, 1), 2).hint(Ui.characters(label, 20), SWT.DEFAULT)
            .exclude(true).applyTo(label);
        label.setVisible(false);
        label.setFont(Ui.strong(label));
        session.listen(this);
        label.addDisposeListener(event -> session.leave(this));
        jobChanged();
    }

    @Override
    public void jobChanged() {
        String words = session.bid().equals(Bid.AGREED) ? ""
            : session.snapshot().map(now -> session.bid().words(now.job().job())).orElse("");
        if (!words.equals(label.getText())) {
            label.setText(words);
            label.setVisible(!words.isEmpty());
            ((GridData) label.getLayoutData()).exclude = words.isEmpty();
            label.getParent().layout();
        }
    }
}

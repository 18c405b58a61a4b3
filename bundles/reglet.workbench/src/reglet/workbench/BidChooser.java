package reglet.workbench;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.desk.Bid;
import reglet.model.Job;

/** Asks as which bid the wall, its drawing, worksheets and section are shown; takes no room in a job that has no alternates. */
final class BidChooser {
    private final Session session;
    private final Composite line;
    private final Combo combo;
    private List<String> shown = List.of();

    BidChooser(Composite page, Session session) {
        this.session = session;
        line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(true).applyTo(line);
        line.setVisible(false);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        Label words = new Label(line, SWT.NONE);
        words.setText("Shown as");
        combo = Ui.named(new Combo(line, SWT.READ_ONLY), "Shown as");
        combo.setToolTipText("The wall, its drawing, worksheets and section follow. What is changed in the wall is changed in this bid "
            + "alone.");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> session.snapshot().ifPresent(now -> {
            List<Bid> all = Bid.all(now.job().job());
            session.showAs(all.get(Math.max(0, Math.min(all.size() - 1, combo.getSelectionIndex()))));
        })));
    }

    /** Follows the job; gives whether it takes another room than before. */
    boolean follow() {
        Job job = session.snapshot().orElseThrow().job().job();
        List<Bid> all = Bid.all(job);
        List<String> words = all.stream().map(bid -> bid.words(job)).toList();
        if (!words.equals(shown)) {
            shown = words;
            combo.setItems(words.toArray(String[]::new));
        }
        if (combo.getSelectionIndex() != all.indexOf(session.bid())) {
            combo.select(all.indexOf(session.bid()));
        }
        boolean wanted = all.size() > 1;
        boolean other = wanted != line.getVisible();
        line.setVisible(wanted);
        ((GridData) line.getLayoutData()).exclude = !wanted;
        return other;
    }
}

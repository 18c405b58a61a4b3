package reglet.workbench;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.model.Finding;
import reglet.model.Remedies;
import reglet.model.Remedy;

/**
 * The remedies of the finding in focus, the best first: each a smallest change that clears it and adds none. Enter, Space, a double
 * click or the button applies the selected one; undo takes it back.
 */
final class RemediesList {
    private final Session session;
    private final Composite page;
    private final TableViewer table;
    private final Label words;
    private final Button apply;
    private final Button accepting;
    private final Latest latest;
    private Snapshot asked;
    private Finding askedFor;

    /** A remedy and what it changes, in words. */
    record Line(Remedy remedy, String change) {
        String whole() {
            String beyond = RemedyWords.beyond(remedy);
            return change + (beyond.isEmpty() ? "" : "\n" + Marks.sentence(beyond));
        }
    }

    /** @param accept called when the person would rather accept the finding */
    RemediesList(Composite parent, Session session, Runnable accept) {
        this.session = session;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
        Composite frame = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(frame);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        Ui.named(table.getTable(), "Remedies");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText("Remedies");
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Line) line).change();
            }

            @Override
            public String getToolTipText(Object line) {
                return ((Line) line).whole();
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(1, Ui.characters(table.getTable(), 20)));
        words = new Label(page, SWT.WRAP);
        words.setData(Ui.NAME, "About the remedies");
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(words, 18), words.computeSize(SWT.DEFAULT, SWT.DEFAULT).y * 3)
            .applyTo(words);
        Composite buttons = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).applyTo(buttons);
        apply = Ui.button(buttons, "&Apply", "Apply", this::apply);
        accepting = Ui.button(buttons, "A&ccept…", "Accept with a reason", accept);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.END).applyTo(apply);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.END).applyTo(accepting);
        latest = new Latest(page);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> tell()));
        table.getTable().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> apply()));
        table.getTable().addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.character == ' ') {
                apply();
                event.doit = false;
            }
        }));
    }

    Composite page() {
        return page;
    }

    /**
     * Shows the remedies of the finding in focus; looking for them takes time.
     *
     * @param wanted whether it has to be cleared
     */
    void follow(boolean wanted) {
        Snapshot now = session.snapshot().orElse(null);
        Finding finding = wanted ? session.focus().finding().orElse(null) : null;
        accepting.setEnabled(finding != null);
        if (now == asked && finding == askedFor) {
            return;
        }
        asked = now;
        askedFor = finding;
        if (now == null || finding == null) {
            latest.cancel();
            put(List.of(), "Select a finding: what would clear it stands here.");
            return;
        }
        put(List.of(), "Looking for remedies…");
        latest.ask("Looking for remedies of " + finding.rule(), monitor -> now.job().remedies(finding), remedies -> put(lines(now, finding,
            remedies), remedies.none()));
    }

    private static List<Line> lines(Snapshot now, Finding finding, Remedies remedies) {
        RemedyWords words = new RemedyWords(now, finding);
        return remedies.all().stream().map(remedy -> new Line(remedy, words.of(remedy))).toList();
    }

    private void put(List<Line> lines, String instead) {
        table.setInput(lines);
        if (!lines.isEmpty()) {
            table.getTable().setSelection(0);
        }
        apply.setEnabled(!lines.isEmpty());
        words.setText(instead);
        if (instead.isEmpty()) {
            tell();
        }
    }

    private void tell() {
        if (table.getStructuredSelection().getFirstElement() instanceof Line line) {
            words.setText(line.whole());
        }
    }

    private void apply() {
        if (table.getStructuredSelection().getFirstElement() instanceof Line line && session.snapshot().orElse(null) == asked) {
            session.choosing().remedy("Remedy: " + line.change(), line.remedy().changes());
        }
    }
}

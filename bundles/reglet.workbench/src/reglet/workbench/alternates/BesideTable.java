package reglet.workbench.alternates;

import java.util.List;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.AlternateBeside;
import reglet.desk.AlternateBeside.Row;
import reglet.model.SectionChanges.Edit;
import reglet.model.SectionChanges.Run;
import reglet.workbench.Focus;
import reglet.workbench.Marks;
import reglet.workbench.Prose;
import reglet.workbench.Session;
import reglet.workbench.Ui;
import reglet.workbench.WordColumn;

/** An alternate beside the base bid, row by row; below the table stands all of the selected row, with what differs marked word by word. */
final class BesideTable {
    private static final String NOT = "not at all";
    private final Session session;
    private final SashForm page;
    private final TableViewer table;
    private final TableViewerColumn with;
    private final Prose left;
    private final Prose right;
    private String name = "";

    BesideTable(Composite parent, Session session) {
        this.session = session;
        page = new SashForm(parent, SWT.VERTICAL);
        Composite frame = new Composite(page, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(table.getTable(), "Base bid and alternate");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        WordColumn.<Row>add(table, columns, "What differs", 24, 14, BesideTable::what);
        WordColumn.<Row>add(table, columns, "Base bid", 38, 14, row -> row.base().isEmpty() ? NOT : row.base());
        with = WordColumn.<Row>add(table, columns, "With the alternate", 38, 14, row -> row.with().isEmpty() ? NOT : row.with());
        SashForm both = new SashForm(page, SWT.HORIZONTAL);
        left = new Prose(both, "As the base bid has it");
        right = new Prose(both, "As the alternate has it");
        page.setWeights(58, 42);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            tell();
            look((Row) event.item.getData());
        }));
    }

    /** "Lath, W1", "≠ lath.weight, W1", "Paragraph 2.3.B, 04 73 00", "Quantity: mat, W1". */
    private static String what(Row row) {
        return switch (row.group()) {
            case CHOICE -> row.what();
            case FINDING -> row.kind().map(kind -> Marks.shape(kind) + " ").orElse("") + row.what();
            case PARAGRAPH -> "Paragraph " + row.what();
            case QUANTITY -> "Quantity: " + row.what();
        };
    }

    Composite page() {
        return page;
    }

    /** Shows an alternate; the row that is selected stays so. */
    void show(AlternateBeside beside) {
        name = beside.alternate().name();
        with.getColumn().setText("With " + name);
        int selected = Math.max(0, table.getTable().getSelectionIndex());
        if (!beside.rows().equals(table.getInput())) {
            table.setInput(beside.rows());
            table.getTable().setSelection(Math.min(selected, beside.rows().size() - 1));
        }
        tell();
    }

    private void tell() {
        if (table.getStructuredSelection().getFirstElement() instanceof Row row) {
            side(left, "Base bid, ", row, row.base(), Edit.INSERTED);
            side(right, "With " + name + ", ", row, row.with(), Edit.DELETED);
        } else {
            left.line("It chooses nothing otherwise than the base bid yet. Show the wall with it, and choose there: what you choose is the "
                + "alternate's alone.");
            left.show();
            right.show();
        }
    }

    /** @param other what stands on the other side alone */
    private static void side(Prose prose, String head, Row row, String text, Edit other) {
        prose.title(head + Prose.lower(what(row)));
        if (row.runs().isEmpty()) {
            prose.plain(text.isEmpty() ? NOT : text);
        }
        for (Run run : row.runs()) {
            if (run.edit() == Edit.KEPT) {
                prose.plain(run.span().text());
            } else if (run.edit() != other) {
                prose.put(run.span().text());
            }
        }
        prose.end(0, 0).show();
        prose.top();
    }

    private void look(Row row) {
        Focus focus = session.focus();
        Focus wall = row.wall().isEmpty() ? focus : focus.onWall(row.wall());
        Focus component = row.component().isEmpty() ? wall : wall.onComponent(row.component());
        session.look(row.section().isEmpty() ? component : component.onSection(row.section()));
    }

    /** The rows shown. */
    List<?> rows() {
        return table.getInput() instanceof List<?> rows ? rows : List.of();
    }
}

package reglet.workbench;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;

import reglet.model.Quantity;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Unit;
import reglet.model.Worksheet;
import reglet.workbench.settings.Units;

/** The quantities of a wall, sorted by the column that is clicked; copied as a table with Ctrl+C. */
final class QuantitiesTable {
    private final TableViewer table;
    private final Composite frame;
    private List<Row> rows = List.of();
    private Comparator<Row> order = Comparator.comparing(Row::item);

    /** A quantity in its unit. */
    record Row(String item, double number, String amount, String unit) {
        static Row of(Worksheet.Amount amount) {
            ShownUnits units = Units.shown();
            Quantity quantity = units.turned(amount.quantity(), Sense.PLAIN);
            Unit unit = quantity.unit();
            String other = units.both() ? units.beside(quantity, Sense.PLAIN) : "";
            return new Row(amount.label(), unit.fromSi(amount.si()), quantity.text().replace(" " + unit.symbol(), ""),
                (unit == Unit.ONE ? "each" : unit.symbol()) + (other.isEmpty() ? "" : " (" + other + ")"));
        }
    }

    QuantitiesTable(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(table.getTable(), "Quantities");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        column(columns, "Quantity", SWT.LEFT, 54, 22, Row::item, Comparator.comparing(Row::item));
        column(columns, "Amount", SWT.RIGHT, 18, 9, Row::amount, Comparator.comparingDouble(Row::number));
        column(columns, "Unit", SWT.LEFT, 28, 7, Row::unit, Comparator.comparing(Row::unit).thenComparing(Row::item));
        table.getTable().addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == 'c' && (event.stateMask & SWT.MOD1) != 0) {
                copy();
            }
        }));
    }

    private void column(TableColumnLayout columns, String head, int style, int weight, int characters,
            java.util.function.Function<Row, String> words, Comparator<Row> by) {
        TableViewerColumn column = new TableViewerColumn(table, style);
        TableColumn shown = column.getColumn();
        shown.setText(head);
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(row -> words.apply((Row) row)));
        columns.setColumnData(shown, new ColumnWeightData(weight, Ui.characters(table.getTable(), characters)));
        shown.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            boolean down = table.getTable().getSortColumn() == shown && table.getTable().getSortDirection() == SWT.UP;
            table.getTable().setSortColumn(shown);
            table.getTable().setSortDirection(down ? SWT.DOWN : SWT.UP);
            order = down ? by.reversed() : by;
            table.setInput(rows.stream().sorted(order).toList());
        }));
    }

    Composite frame() {
        return frame;
    }

    /** Shows the results of a worksheet. */
    void show(Worksheet worksheet) {
        List<Row> next = worksheet.results().values().stream().map(Row::of).toList();
        if (!next.equals(rows)) {
            rows = next;
            table.setInput(rows.stream().sorted(order).toList());
        }
    }

    /** The selected rows, or all, with tabs between the cells. */
    String text() {
        List<?> some = table.getStructuredSelection().isEmpty() ? (List<?>) table.getInput() : table.getStructuredSelection().toList();
        return some.stream().map(Row.class::cast).map(row -> row.item() + "\t" + row.amount() + "\t" + row.unit())
            .collect(Collectors.joining("\n"));
    }

    private void copy() {
        Clipboard clipboard = new Clipboard(frame.getDisplay());
        clipboard.setContents(new Object[] {text()}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }
}

package reglet.workbench.sheets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

import reglet.workbench.Ui;

/** Columns of tables: the last one takes the room that the others leave. */
final class Columns {
    private static final int LEAST = 20;

    private Columns() {
    }

    /** Keeps the last column as wide as there is room. */
    static void lastFills(Table table) {
        table.addListener(SWT.Resize, event -> fill(table));
    }

    static void fill(Table table) {
        TableColumn[] columns = table.getColumns();
        int used = 0;
        for (int i = 0; i < columns.length - 1; i++) {
            used += columns[i].getWidth();
        }
        int left = table.getClientArea().width - used;
        if (columns.length > 0 && columns[columns.length - 1].getWidth() != Math.max(left, Ui.characters(table, LEAST))) {
            columns[columns.length - 1].setWidth(Math.max(left, Ui.characters(table, LEAST)));
        }
    }
}

package reglet.workbench;

import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;

/** A column of words that shares the width of its table with the others; pointing at words that have no room says all of them. */
public final class WordColumn {
    private WordColumn() {
    }

    /**
     * Adds a column behind those that are there.
     *
     * @param weight     its share of the width
     * @param characters how many letters have room at the least
     */
    @SuppressWarnings("unchecked")
    public static <R> TableViewerColumn add(TableViewer table, TableColumnLayout columns, String head, int weight, int characters,
            Function<R, String> words) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText(head);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return words.apply((R) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return words.apply((R) row);
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, Ui.characters(table.getTable(), characters)));
        return column;
    }
}

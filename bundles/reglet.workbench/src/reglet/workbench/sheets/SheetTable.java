package reglet.workbench.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

import reglet.workbench.Ui;
import reglet.workbench.sheets.SheetRows.Row;

/**
 * The values proposed, a row each. Enter takes the one selected as read, Delete leaves it out, F2 or a digit corrects its value in
 * place, F3 the standard that it is shown by; Insert adds a value that was not read.
 */
final class SheetTable {
    static final String NAME = "Values of the sheet";
    private static final int NUMBER = 2;
    private static final int METHOD = 4;
    private static final int MODEL = 5;
    private final TableViewer viewer;
    private final Answers answers;
    private final InPlace editor;
    private final TableColumn model;

    /** What the person says. */
    interface Answers {
        void looked(Row row);

        void take(Row row);

        void leaveOut(Row row);

        /** @return what is wrong with the text; "" when it is taken over */
        String correct(Row row, String text);

        void shownBy(Row row, String standard);

        /** What may be typed for a property, where that is one of some words; empty for anything else. */
        List<String> words(Row row);

        void tell(String wrong);

        /** A value is to be added that was not read. */
        void addAValue();
    }

    SheetTable(Composite parent, Answers answers) {
        this.answers = answers;
        viewer = new TableViewer(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER | SWT.NO_SEARCH);
        Table table = Ui.named(viewer.getTable(), NAME);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
        column("Answer", 15, SWT.LEFT, Row::state);
        column("Property", 32, SWT.LEFT, Row::property);
        column("Value", 22, SWT.RIGHT, Row::number);
        column("Unit", 8, SWT.LEFT, row -> row.beside().isEmpty() ? row.unit() : row.unit() + " (" + row.beside() + ")");
        column("Shown by", 16, SWT.LEFT, Row::method);
        model = column("Model", 10, SWT.LEFT, Row::model);
        column("Page", 7, SWT.RIGHT, row -> Integer.toString(row.page()));
        column("How sure", 13, SWT.LEFT, Row::sure);
        column("Look at", 30, SWT.LEFT, Row::look);
        Columns.lastFills(table);
        editor = new InPlace(table, answers::tell);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> selected().ifPresent(answers::looked)));
        table.addKeyListener(KeyListener.keyPressedAdapter(this::key));
        table.addListener(SWT.MouseDoubleClick, event -> {
            var cell = viewer.getCell(new org.eclipse.swt.graphics.Point(event.x, event.y));
            if (cell != null) {
                edit(cell.getColumnIndex() == METHOD ? METHOD : NUMBER, "");
            }
        });
    }

    private TableColumn column(String head, int characters, int side, Function<Row, String> words) {
        TableViewerColumn column = new TableViewerColumn(viewer, side);
        column.getColumn().setText(head);
        column.getColumn().setWidth(Ui.characters(viewer.getTable(), characters));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return words.apply((Row) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return words.apply((Row) row).isEmpty() ? null : words.apply((Row) row);
            }
        });
        return column.getColumn();
    }

    Table control() {
        return viewer.getTable();
    }

    Optional<Row> selected() {
        return Optional.ofNullable((Row) viewer.getStructuredSelection().getFirstElement());
    }

    /** Shows rows; the one selected stays so. */
    void show(List<Row> rows) {
        if (rows.equals(viewer.getInput())) {
            return;
        }
        editor.close();
        int at = viewer.getTable().getSelectionIndex();
        int top = viewer.getTable().getTopIndex();
        boolean models = rows.stream().anyMatch(row -> !row.model().isEmpty());
        model.setWidth(models ? Ui.characters(viewer.getTable(), 10) : 0);
        model.setResizable(models);
        viewer.getTable().setRedraw(false);
        viewer.setInput(rows);
        if (top > 0) {
            viewer.getTable().setTopIndex(top);
        }
        if (at >= 0) {
            viewer.getTable().setSelection(Math.min(at, rows.size() - 1));
        }
        viewer.getTable().setRedraw(true);
    }

    @SuppressWarnings("unchecked")
    private List<Row> rows() {
        return viewer.getInput() == null ? List.of() : (List<Row>) viewer.getInput();
    }

    /** Selects the next row from here on that is wanted, else the first one that is; else the one after, if there is one. */
    void next(java.util.function.Predicate<Row> wanted) {
        List<Row> rows = rows();
        int at = viewer.getTable().getSelectionIndex();
        for (int step = 1; step <= rows.size(); step++) {
            int index = Math.floorMod(at + step, rows.size());
            if (wanted.test(rows.get(index))) {
                select(index);
                return;
            }
        }
        select(Math.min(at + 1, rows.size() - 1));
    }

    private void select(int index) {
        if (index >= 0 && index < rows().size()) {
            viewer.getTable().setSelection(index);
            viewer.getTable().showSelection();
            answers.looked(rows().get(index));
        }
    }

    private void key(KeyEvent event) {
        if (event.keyCode == SWT.INSERT) {
            answers.addAValue();
            return;
        }
        Row row = selected().orElse(null);
        if (row == null || (event.stateMask & (SWT.MOD1 | SWT.ALT)) != 0) {
            return;
        }
        Consumer<Row> answer = switch (event.keyCode) {
            case SWT.CR, SWT.KEYPAD_CR, ' ' -> row.isValue() ? answers::take : null;
            case SWT.DEL -> row.isValue() ? answers::leaveOut : null;
            case SWT.F2 -> one -> edit(NUMBER, "");
            case SWT.F3 -> one -> edit(METHOD, "");
            default -> Character.isDigit(event.character) ? one -> edit(NUMBER, Character.toString(event.character)) : null;
        };
        if (answer != null) {
            event.doit = false;
            answer.accept(row);
        }
    }

    /** Corrects the selected value. */
    void correct() {
        edit(NUMBER, "");
    }

    /** @param typed what was typed to begin with; it takes the place of the number */
    private void edit(int column, String typed) {
        Row row = selected().filter(Row::isValue).orElse(null);
        if (row == null) {
            return;
        }
        if (column == METHOD) {
            editor.open(column, row.property() + ", shown by", row.method(), 0, List.of(), text -> {
                answers.shownBy(row, text);
                return "";
            });
            return;
        }
        String number = typed.isEmpty() ? row.number() : typed;
        // what stands for the sense is not typed: it stays
        String text = (number + " " + row.unit()).strip().replaceFirst("^(at least|at most|between|exactly|one of) ", "");
        editor.open(column, row.property() + ", value", text, typed.isEmpty() ? -row.unit().length() : typed.length(), answers.words(row),
            now -> typed.isEmpty() && now.strip().equals(text) ? asItStands(row) : answers.correct(row, now));
    }

    /** Nothing else was typed: what is stored is the value as it is, and not what it is in the units shown. */
    private String asItStands(Row row) {
        if (row.state().startsWith(SheetRows.OPEN) || row.instead().isPresent()) {
            answers.take(row);
        }
        return "";
    }
}

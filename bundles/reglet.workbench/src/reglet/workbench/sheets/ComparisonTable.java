package reglet.workbench.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

import reglet.model.Comparison.Row;
import reglet.workbench.Ui;
import reglet.workbench.sheets.Compared.Line;

/** Requirements as rows. Candidates have a column each; Left and Right move from one to the next. */
final class ComparisonTable {
    static final String NAME = "Requirements and what is shown";
    private static final String FOCUS = "● ";
    /** Columns before those of the candidates. */
    private static final int BEFORE = 3;
    private final TableViewer viewer;
    private final Runnable looked;
    private List<String> products = List.of();
    private List<String> heads = List.of();
    private Function<String, String> name = id -> id;
    private int product;

    ComparisonTable(Composite parent, Runnable looked) {
        this.looked = looked;
        // a job of fifty wall types has a thousand lines: those that come in sight are filled
        viewer = Ui.filledInSight(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER | SWT.NO_SEARCH);
        Table table = Ui.named(viewer.getTable(), NAME);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        Columns.lastFills(table);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> looked.run()));
        table.addKeyListener(KeyListener.keyPressedAdapter(this::key));
        table.addListener(SWT.MouseDown, event -> {
            var cell = viewer.getCell(new Point(event.x, event.y));
            if (cell != null && cell.getColumnIndex() >= BEFORE && !products.isEmpty()) {
                to(cell.getColumnIndex() - BEFORE);
            }
        });
    }

    Table control() {
        return viewer.getTable();
    }

    /** The line selected. */
    Optional<Line> selected() {
        return Optional.ofNullable((Line) viewer.getStructuredSelection().getFirstElement());
    }

    /** The result in focus: of the selected line, and of candidates the one whose column is in focus; empty where it has none. */
    Optional<Row> row() {
        return selected().map(line -> line.rows().get(key()));
    }

    private String key() {
        return products.isEmpty() ? "" : products.get(product);
    }

    /** Shows lines; the one selected stays so while it is there. */
    void show(List<Line> lines, List<String> candidates, Function<String, String> names) {
        String before = selected().map(Line::key).orElse("");
        int at = Math.max(0, viewer.getTable().getSelectionIndex());
        columns(candidates, names);
        if (lines.equals(viewer.getInput())) {
            return;
        }
        int top = viewer.getTable().getTopIndex();
        viewer.getTable().setRedraw(false);
        viewer.setInput(lines);
        if (top > 0) {
            viewer.getTable().setTopIndex(top);
        }
        viewer.getTable().setRedraw(true);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).key().equals(before)) {
                at = i;
            }
        }
        if (!lines.isEmpty()) {
            viewer.getTable().setSelection(Math.min(at, lines.size() - 1));
        }
    }

    private void columns(List<String> candidates, Function<String, String> names) {
        List<String> words = candidates.stream().map(names).toList();
        if (viewer.getTable().getColumnCount() > 0 && candidates.equals(products) && words.equals(heads)) {
            return;
        }
        products = List.copyOf(candidates);
        heads = words;
        name = names;
        product = 0;
        viewer.setInput(List.of());
        for (var column : viewer.getTable().getColumns()) {
            column.dispose();
        }
        column("Wall", 6, Line::wall);
        column("Requirement", 37, Line::label);
        column("Asked for", 22, Line::asked);
        if (candidates.isEmpty()) {
            column("Shown", 26, line -> Compared.shown(line.first()));
            column("Result", 33, line -> Compared.result(line.first()));
            column("Product", 20, line -> line.first().product().isEmpty() ? "–" : name.apply(line.first().product()));
        } else {
            candidates.forEach(id -> column("", 42, line -> cell(line, id)));
        }
        heads();
        Columns.fill(viewer.getTable());
    }

    private static String cell(Line line, String product) {
        Row row = line.rows().get(product);
        return row == null ? "asks for nothing here"
            : Compared.result(row) + (row.submitted().isPresent() ? ": " + Compared.shown(row) : "");
    }

    private void column(String head, int characters, Function<Line, String> words) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
        column.getColumn().setText(head);
        column.getColumn().setWidth(Ui.characters(viewer.getTable(), characters));
        boolean result = head.equals("Result");
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return words.apply((Line) line);
            }

            @Override
            public String getToolTipText(Object line) {
                return words.apply((Line) line);
            }

            @Override
            public Font getFont(Object line) {
                return result && !((Line) line).isMet() ? Ui.strong(viewer.getTable()) : null;
            }
        });
    }

    private void heads() {
        for (int i = 0; i < products.size(); i++) {
            viewer.getTable().getColumn(BEFORE + i).setText((i == product && products.size() > 1 ? FOCUS : "") + heads.get(i));
        }
    }

    private void key(KeyEvent event) {
        int by = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
        if (by != 0 && !products.isEmpty()) {
            event.doit = false;
            to(product + by);
        }
    }

    private void to(int index) {
        int next = Math.max(0, Math.min(products.size() - 1, index));
        if (next != product) {
            product = next;
            heads();
            viewer.getTable().showColumn(viewer.getTable().getColumn(BEFORE + product));
            looked.run();
        }
    }

    /** Selects the next or previous line that is wanted, going round. */
    void step(int by, Predicate<Line> wanted) {
        List<?> lines = viewer.getInput() instanceof List<?> all ? all : List.of();
        int at = viewer.getTable().getSelectionIndex();
        for (int step = 1; step <= lines.size(); step++) {
            int index = Math.floorMod(at + by * step, lines.size());
            if (wanted.test((Line) lines.get(index))) {
                viewer.getTable().setSelection(index);
                viewer.getTable().showSelection();
                looked.run();
                return;
            }
        }
    }
}

package reglet.workbench.walls;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
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
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;

import reglet.desk.Saving;
import reglet.desk.Walls;
import reglet.model.WallType;
import reglet.workbench.Edit;
import reglet.workbench.Part;
import reglet.workbench.Refusal;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;
import reglet.workbench.WhenSeen;
import reglet.workbench.walls.WallsTable.Row;

/**
 * All wall types beside each other. What differs from the wall type in focus is marked; Left and Right move the focus from wall type
 * to wall type, and selected rows can be made the same on others, as one change that undo takes back.
 */
public final class WallsView extends Part {
    public static final String ID = "reglet.workbench.walls";
    private static final String ALL = "all other wall types";
    /** Columns that are made in one turn of the window's thread. */
    private static final int AT_A_TIME = 12;
    /** Milliseconds after which they have been painted. */
    private static final int PAINTED = 20;
    private TableViewer table;
    private WhenSeen seen;
    private Label legend;
    private Button same;
    private Combo on;
    private Text name;
    private Text title;
    private Button duplicate;
    private Button away;
    private Refusal wrong;
    private List<String> columns = List.of();
    /** Whether the columns are new and nothing stands in them yet. */
    private boolean empty;

    @Override
    protected void fill(Composite page) {
        GridLayoutFactory.swtDefaults().applyTo(page);
        legend = Ui.named(new Label(page, SWT.WRAP), "About the wall types");
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(legend, 40), SWT.DEFAULT).applyTo(legend);
        // of fifty wall types, only what is in sight is measured
        table = Ui.filledInSight(page, SWT.MULTI | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.getTable());
        Ui.named(table.getTable(), "All wall types");
        table.getTable().setHeaderVisible(true);
        table.getTable().setLinesVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (event.item != null && event.item.getData() instanceof Row row) {
                session().look(session().focus().onComponent(row.component().id()));
            }
            enable();
        }));
        table.getTable().addKeyListener(KeyListener.keyPressedAdapter(this::key));
        table.getTable().addListener(SWT.MouseDown, event -> {
            var cell = table.getCell(new org.eclipse.swt.graphics.Point(event.x, event.y));
            if (cell != null && cell.getColumnIndex() > 0 && cell.getColumnIndex() <= columns.size()) {
                session().look(session().focus().onWall(columns.get(cell.getColumnIndex() - 1)));
            }
        });
        seen = new WhenSeen(table.getTable(), this::update);
        sameAs(page);
        types(page);
        wrong = new Refusal(page, "All wall types, what is wrong");
    }

    private void key(KeyEvent event) {
        int at = columns.indexOf(session().focus().wall());
        int by = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
        if (by != 0 && at >= 0) {
            int next = Math.max(0, Math.min(columns.size() - 1, at + by));
            session().look(session().focus().onWall(columns.get(next)));
            table.getTable().showColumn(table.getTable().getColumn(next + 1));
            event.doit = false;
        }
    }

    private void sameAs(Composite page) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        same = Ui.button(line, "&Make the same", "Make the same", this::makeSame);
        Label words = new Label(line, SWT.NONE);
        words.setText("on");
        on = Ui.named(new Combo(line, SWT.READ_ONLY), "On which wall types");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(on);
    }

    private void types(Composite page) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(5).applyTo(line);
        name = Ui.named(new Text(line, SWT.BORDER | SWT.SINGLE), "Name of the new wall type");
        name.setMessage("W3");
        GridDataFactory.swtDefaults().hint(Ui.characters(name, 8), SWT.DEFAULT).applyTo(name);
        title = Ui.named(new Text(line, SWT.BORDER | SWT.SINGLE), "Title of the new wall type");
        title.setMessage("Title of a new wall type");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(title, 14), SWT.DEFAULT)
            .applyTo(title);
        Ui.button(line, "&Add", "Add a wall type", () -> add(""));
        duplicate = Ui.button(line, "&Duplicate", "Duplicate the wall type", () -> add(session().focus().wall()));
        away = Ui.button(line, "&Take away", "Take the wall type away", this::takeAway);
    }

    /** Adds a wall type as typed, like another or, for "", without choices. */
    private void add(String like) {
        String id = name.getText().isBlank() ? next() : name.getText().strip();
        String words = title.getText().isBlank() ? "Wall type " + id : title.getText().strip();
        change("Wall type " + id + " " + words, Walls.files(id),
            job -> like.isEmpty() ? Walls.add(job, id, words) : Walls.duplicate(job, like, id, words));
        name.setText("");
        title.setText("");
    }

    /** The first name that is free: "W3". */
    private String next() {
        for (int number = columns.size() + 1;; number++) {
            if (!columns.contains("W" + number)) {
                return "W" + number;
            }
        }
    }

    private void takeAway() {
        String id = session().focus().wall();
        change("Wall type " + id + " taken away", Walls.files(id), job -> Walls.remove(job, id));
    }

    private void makeSame() {
        String as = session().focus().wall();
        List<String> components = selected().stream().map(row -> row.component().id()).toList();
        List<String> walls = on.getText().equals(ALL) ? columns.stream().filter(id -> !id.equals(as)).toList() : List.of(on.getText());
        if (!components.isEmpty() && !walls.isEmpty()) {
            change(String.join(", ", walls) + " as " + as + ": " + (components.size() == 1 ? components.get(0) : components.size()
                + " components"), walls.stream().map(Saving::wallFile).toList(), job -> Walls.same(job, as, walls, components));
        }
    }

    private void change(String label, List<String> files, Edit.Change change) {
        wrong.say("");
        session().change(label, files, change, wrong::say);
    }

    private List<Row> selected() {
        return table.getStructuredSelection().stream().map(Row.class::cast).toList();
    }

    @Override
    public void jobChanged() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            showEmpty("All wall types stand here beside each other once a job is open.");
            return;
        }
        show();
        seen.ask();
    }

    private void update() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            return;
        }
        List<String> walls = now.job().job().walls().stream().map(WallType::id).toList();
        if (!walls.equals(columns) || table.getTable().getColumnCount() == 0) {
            columns = walls;
            empty = true;
            table.setInput(List.of());
            for (TableColumn column : table.getTable().getColumns()) {
                column.dispose();
            }
            columns();
        } else if (table.getTable().getColumnCount() == walls.size() + 2) {
            rows(now);
        }
    }

    /**
     * Makes some columns, and the others when these have been painted: each takes a millisecond to make, and its head another one to lay
     * out. Then one row tells how high a row is, so that no other is measured, and all are filled.
     */
    private void columns() {
        List<String> walls = columns;
        for (int i = 0; i < AT_A_TIME && table.getTable().getColumnCount() < walls.size() + 2; i++) {
            column(table.getTable().getColumnCount() - 1);
        }
        if (table.getTable().getColumnCount() == walls.size() + 2 && walls.size() <= AT_A_TIME) {
            session().snapshot().ifPresent(this::rows);
        } else {
            table.getTable().getDisplay().timerExec(PAINTED, () -> {
                if (walls != columns || table.getTable().isDisposed()) {
                    return;
                }
                if (table.getTable().getColumnCount() < walls.size() + 2) {
                    columns();
                } else if (table.getTable().getItemCount() == 0) {
                    session().snapshot().map(WallsTable::rows).filter(rows -> !rows.isEmpty()).ifPresent(rows -> {
                        table.setInput(rows.subList(0, 1));
                        columns();
                    });
                } else {
                    update();
                }
            });
        }
    }

    private void column(int wall) {
        if (wall < 0) {
            column("Component", 25, row -> row.component().title(), row -> row.component().title(), false);
        } else if (wall == columns.size()) {
            column("Between them", 17, Row::agreement, Row::agreement, false);
        } else {
            column(head(wall), 25, row -> row.cells().size() > wall ? row.cells().get(wall).text(row.cells().get(reference())) : "",
                row -> row.cells().size() > wall ? row.cells().get(wall).whole(columns.get(wall), row.cells().get(reference()),
                    columns.get(reference())) : "", true);
        }
    }

    private void rows(Snapshot now) {
        List<Row> rows = WallsTable.rows(now);
        boolean filled = empty || !rows.equals(table.getInput());
        empty = false;
        heads();
        if (filled) {
            int top = table.getTable().getTopIndex();
            List<String> selected = selected().stream().map(row -> row.component().id()).toList();
            table.getTable().setRedraw(false);
            table.setInput(rows);
            table.getTable().deselectAll();
            for (int i = 0; i < rows.size(); i++) {
                if (selected.contains(rows.get(i).component().id())) {
                    table.getTable().select(i);
                }
            }
            table.getTable().setTopIndex(top);
            table.getTable().setRedraw(true);
        }
        // what stands around the table changes with it, and takes as long when there are many wall types
        Ui.later(table.getTable(), () -> focus(filled));
    }

    private int reference() {
        return Math.max(0, columns.indexOf(session().focus().wall()));
    }

    private void column(String head, int characters, Function<Row, String> words, Function<Row, String> whole, boolean ofWall) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText(head);
        column.getColumn().setWidth(Ui.characters(table.getTable(), characters));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return words.apply((Row) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return whole.apply((Row) row);
            }

            @Override
            public Font getFont(Object row) {
                return ofWall && words.apply((Row) row).startsWith(WallsTable.DIFFERS) ? Ui.strong(table.getTable()) : null;
            }
        });
    }

    @Override
    public void focusChanged() {
        if (session().snapshot().isPresent()) {
            seen.ask();
        }
    }

    private void heads() {
        for (int i = 0; i < columns.size(); i++) {
            TableColumn column = table.getTable().getColumn(i + 1);
            String head = head(i);
            if (!head.equals(column.getText())) {
                column.setText(head);
            }
        }
    }

    private String head(int wall) {
        String id = columns.get(wall);
        String head = id + " " + session().snapshot().flatMap(now -> now.wall(id)).map(WallType::title).orElse("");
        return id.equals(session().focus().wall()) ? "● " + head : head;
    }

    /** @param filled whether the rows have just been filled */
    private void focus(boolean filled) {
        String wall = session().focus().wall();
        legend.setText(columns.size() < 2 ? "One wall type; duplicate it to compare." : "● " + wall + " is in focus.  "
            + WallsTable.DIFFERS + " differs from " + wall + ".");
        on.setItems(columns.stream().filter(id -> !id.equals(wall)).toArray(String[]::new));
        if (columns.size() > 2) {
            on.add(ALL, 0);
        }
        on.select(0);
        if (!filled) {
            table.refresh(true);
        }
        List<?> rows = (List<?>) table.getInput();
        for (int i = 0; i < rows.size(); i++) {
            boolean wanted = ((Row) rows.get(i)).component().id().equals(session().focus().component());
            if (wanted && !table.getTable().isSelected(i)) {
                table.getTable().setSelection(i);
            }
        }
        enable();
    }

    private void enable() {
        String wall = session().focus().wall();
        int rows = table.getTable().getSelectionCount();
        same.setText("&Make " + (rows == 1 ? "this row" : rows + " rows") + " the same as " + wall);
        same.setEnabled(rows > 0 && columns.size() > 1);
        on.setEnabled(columns.size() > 1);
        duplicate.setText("&Duplicate " + wall);
        away.setText("&Take " + wall + " away");
        away.setEnabled(columns.size() > 1);
        name.setMessage(next());
        // other words may need other room, of the page too
        table.getTable().getParent().layout(new Control[] {legend, same, duplicate, away});
    }

    @Override
    protected void focusPage() {
        table.getTable().setFocus();
    }
}

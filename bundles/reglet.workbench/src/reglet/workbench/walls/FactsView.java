package reglet.workbench.walls;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.Saving;
import reglet.desk.Walls;
import reglet.model.Change;
import reglet.model.Finding;
import reglet.model.ShownUnits;
import reglet.model.Subject;
import reglet.model.WallType;
import reglet.workbench.Fields;
import reglet.workbench.Part;
import reglet.workbench.Refusal;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;
import reglet.workbench.WhenSeen;
import reglet.workbench.WordColumn;
import reglet.workbench.settings.Units;
import reglet.workbench.walls.FactsRows.Row;

/**
 * What the wall in focus meets, with its facts, and the facts of the wall and of the job. Each is typed with its unit or chosen from
 * words; an emptied field is no longer stated.
 */
public final class FactsView extends Part {
    public static final String ID = "reglet.workbench.facts";
    private Composite whole;
    private Label title;
    private TableViewer table;
    private WhenSeen seen;
    private Label about;
    private Fields fields;
    private Combo kind;
    private Text name;
    private Button away;
    private Refusal wrong;
    private String chosen = "";
    private ShownUnits units = Units.shown();
    private String wall = "";
    private List<Subject> kinds = List.of();

    @Override
    protected void fill(Composite page) {
        whole = page;
        GridLayoutFactory.swtDefaults().applyTo(page);
        title = new Label(page, SWT.WRAP);
        title.setFont(Ui.heading(title));
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(title, 20), SWT.DEFAULT).applyTo(title);
        SashForm sash = new SashForm(page, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(sash);
        rows(sash);
        seen = new WhenSeen(table.getTable(), this::update);
        Composite right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(right);
        about = new Label(right, SWT.WRAP);
        about.setFont(Ui.strong(about));
        GridDataFactory.fillDefaults().grab(true, false).indent(Ui.characters(about, 1), 0).hint(Ui.characters(about, 20), SWT.DEFAULT)
            .applyTo(about);
        Composite frame = new Composite(right, SWT.NONE);
        frame.setLayout(new org.eclipse.swt.layout.FillLayout());
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(frame);
        fields = new Fields(frame, this::take);
        sash.setWeights(52, 48);
        adding(page);
        wrong = new Refusal(page, "Facts, what is wrong");
    }

    private void rows(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        Ui.named(table.getTable(), "Facts");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        WordColumn.<Row>add(table, columns, "Of", 17, 11, Row::name);
        WordColumn.<Row>add(table, columns, "Kind", 27, 17, row -> row.subject().title());
        WordColumn.<Row>add(table, columns, "State", 21, 13, Row::state);
        WordColumn.<Row>add(table, columns, "Stated", 35, 22, Row::summary);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> look((Row) event.item.getData())));
        table.addOpenListener(event -> fields.setFocus());
        table.getTable().addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.DEL) {
                takeAway();
            }
        }));
    }

    private void adding(Composite page) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        // in a narrow pane, or with larger text, the line breaks
        RowLayoutFactory.swtDefaults().wrap(true).center(true).margins(0, 0).applyTo(line);
        Label words = new Label(line, SWT.NONE);
        words.setText("The wall also meets");
        kind = Ui.named(new Combo(line, SWT.READ_ONLY), "Kind of what it meets");
        kind.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> suggest()));
        name = Ui.named(new Text(line, SWT.BORDER | SWT.SINGLE), "Name of what it meets");
        name.setLayoutData(new RowData(Ui.characters(name, 14), SWT.DEFAULT));
        name.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> add()));
        Ui.button(line, "&Add", "Add what it meets", this::add);
        away = Ui.button(line, "&Take away", "Take what it meets away", this::takeAway);
    }

    private void add() {
        if (kind.getSelectionIndex() < 0) {
            return;
        }
        String subject = kinds.get(kind.getSelectionIndex()).id();
        String id = name.getText().isBlank() ? name.getMessage() : name.getText().strip();
        String of = wall;
        chosen = of + "." + id;
        wrong.say("");
        session().change(of + " meets " + id, List.of(Saving.wallFile(of)), job -> Walls.meet(job, of, id, subject), wrong::say);
        name.setText("");
    }

    private void takeAway() {
        Row row = row();
        if (row != null && !row.meeting().isEmpty()) {
            String of = wall;
            session().change(of + " no longer meets " + row.meeting(), List.of(Saving.wallFile(of)),
                job -> Walls.unmeet(job, of, row.meeting()), wrong::say);
        }
    }

    private void take(Fields.Line line, String value, Consumer<String> refused) {
        Row row = row();
        if (row == null || session().snapshot().isEmpty() || value.isEmpty() && !row.facts().containsKey(line.key())) {
            return;
        }
        List<Change> changes = List.of(new Change(row.address() + "." + line.key(), value));
        session().change(row.address() + ", " + line.name() + ": " + (value.isEmpty() ? "not stated" : value),
            Saving.files(session().snapshot().get().job(), changes), job -> Saving.apply(job, changes), refused);
    }

    /** Shows a row; what stands against it goes into focus, so that its reason and remedies are at hand. */
    private void look(Row row) {
        chosen = row.address();
        row.findings().stream().findFirst().ifPresent(finding -> session().look(session().focus().onFinding(finding)));
        facts();
    }

    private Row row() {
        return (Row) table.getStructuredSelection().getFirstElement();
    }

    @Override
    public void jobChanged() {
        focusChanged();
    }

    @Override
    public void focusChanged() {
        Snapshot now = session().snapshot().orElse(null);
        WallType shown = now == null ? null : now.wall(session().focus().wall()).orElse(null);
        if (shown == null) {
            showEmpty("What the wall meets, its openings, base, top, corners and joints, stands here with its facts once a job is open.");
            return;
        }
        show();
        seen.ask();
    }

    private void update() {
        Snapshot now = session().snapshot().orElse(null);
        WallType shown = now == null ? null : now.wall(session().focus().wall()).orElse(null);
        if (shown == null) {
            return;
        }
        wall = shown.id();
        title.setText(shown.id() + " " + shown.title() + ": what it meets, and its facts");
        title.requestLayout();
        kinds = FactsRows.kinds(now);
        String[] titles = kinds.stream().map(Subject::title).toArray(String[]::new);
        if (!java.util.Arrays.equals(titles, kind.getItems())) {
            kind.setItems(titles);
            kind.select(0);
            kind.getParent().layout();
        }
        suggest();
        List<Row> rows = FactsRows.rows(now, shown);
        if (!rows.equals(table.getInput()) || !units.equals(Units.shown())) {
            units = Units.shown();
            int top = table.getTable().getTopIndex();
            table.getTable().setRedraw(false);
            table.setInput(rows);
            table.getTable().setTopIndex(top);
            table.getTable().setRedraw(true);
        }
        select(rows);
        // the most to lay out: when the rest stands
        Ui.later(table.getTable(), this::facts);
    }

    /** The meeting that the finding in focus stands at, else the row chosen. */
    private void select(List<Row> rows) {
        session().focus().finding().map(Finding::meeting).filter(meeting -> !meeting.isEmpty()).ifPresent(meeting -> chosen = wall + "."
            + meeting);
        int at = 0;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).address().equals(chosen)) {
                at = i;
            }
        }
        if (!rows.isEmpty()) {
            table.getTable().setSelection(at);
        }
    }

    private void facts() {
        Row row = row();
        put(about, about::getText, about::setText, row == null ? "" : row.subject().title() + (row.meeting().isEmpty() ? "" : ", "
            + row.meeting()));
        fields.show(row == null ? "" : row.address(), row == null ? List.of() : row.lines(), "");
        away.setEnabled(row != null && !row.meeting().isEmpty());
        put(away, away::getText, away::setText, row == null || row.meeting().isEmpty() ? "&Take away" : "&Take " + row.meeting() + " away");
    }

    /** Other words may need another room. */
    private void put(Control control, Supplier<String> before, Consumer<String> now, String words) {
        if (!words.equals(before.get())) {
            now.accept(words);
            whole.layout(new Control[] {control});
        }
    }

    private void suggest() {
        session().snapshot().flatMap(now -> now.wall(wall)).filter(shown -> kind.getSelectionIndex() >= 0)
            .ifPresent(shown -> name.setMessage(FactsRows.next(shown, kinds.get(kind.getSelectionIndex()).id())));
    }

    @Override
    protected void focusPage() {
        table.getTable().setFocus();
    }
}

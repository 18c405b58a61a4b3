package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.handlers.IHandlerService;

import reglet.model.Alternate;
import reglet.model.Option;
import reglet.model.WallType;
import reglet.workbench.start.StartPane;
import reglet.workbench.settings.Units;

/**
 * A wall type: its build-up from inside to outside, and for the selected component the options with their consequences and the
 * values that it takes.
 */
public final class WallView extends Part {
    public static final String ID = "reglet.workbench.wall";
    private StackLayout stack;
    private StartPane start;
    private Composite wall;
    private Label title;
    private Label facts;
    private Label counts;
    private BidChooser bids;
    private TableViewer rows;
    private List<BuildUp.Row> built = List.of();
    private Label component;
    private LayersDrawing drawing;
    private OptionsList options;
    private ValuesPanel values;

    @Override
    protected void fill(Composite page) {
        stack = new StackLayout();
        page.setLayout(stack);
        start = new StartPane(page, session(), () -> command("reglet.workbench.new"), () -> command("reglet.workbench.open"));
        wall = new Composite(page, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(wall);
        title = new Label(wall, SWT.NONE);
        title.setFont(Ui.heading(title));
        counts = new Label(wall, SWT.RIGHT);
        facts = new Label(wall, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(counts);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(facts, 40), SWT.DEFAULT).applyTo(facts);
        bids = new BidChooser(wall, session());
        SashForm sash = new SashForm(wall, SWT.VERTICAL);
        // takes what is left: what it would like to have is never measured
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(1, 1).applyTo(sash);
        SashForm layers = new SashForm(sash, SWT.HORIZONTAL);
        drawing = new LayersDrawing(layers, session());
        buildUp(layers);
        layers.setWeights(28, 72);
        component(sash);
        sash.setWeights(58, 42);
    }

    private void buildUp(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        rows = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(rows.getTable(), "Build-up, inside to outside");
        rows.getTable().setHeaderVisible(true);
        rows.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(rows);
        column(columns, "Inside to outside", 39, 16, row -> row.component().title());
        column(columns, "Accepted", 39, 16, BuildUp.Row::accepted);
        column(columns, "State", 22, 12, BuildUp.Row::state);
        rows.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            BuildUp.Row row = (BuildUp.Row) event.item.getData();
            session().look(session().focus().onComponent(row.component().id()));
        }));
        rows.addOpenListener(event -> toOptions());
    }

    private void column(TableColumnLayout columns, String head, int weight, int characters, java.util.function.Function<BuildUp.Row,
        String> words) {
        TableViewerColumn column = new TableViewerColumn(rows, SWT.LEFT);
        column.getColumn().setText(head);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return words.apply((BuildUp.Row) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return words.apply((BuildUp.Row) row);
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, Ui.characters(rows.getTable(), characters)));
    }

    private void component(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Ui.characters(frame, 1) / 2).applyTo(frame);
        component = new Label(frame, SWT.NONE);
        component.setFont(Ui.strong(component));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(component);
        SashForm sash = new SashForm(frame, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(sash);
        options = new OptionsList(sash, session());
        values = new ValuesPanel(sash, session());
        sash.setWeights(53, 47);
    }

    @Override
    public void jobChanged() {
        Optional<Snapshot> snapshot = session().seen();
        if (snapshot.isEmpty()) {
            setPartName("Wall");
            start.show();
            stack.topControl = start.control();
            start.control().getParent().layout();
            show();
            return;
        }
        drawWall(snapshot.get());
        show();
    }

    @Override
    public void said() {
        if (session().snapshot().isEmpty()) {
            start.show();
        }
    }

    @Override
    public void focusChanged() {
        session().seen().ifPresent(this::drawWall);
    }

    private void drawWall(Snapshot now) {
        WallType shown = now.wall(session().focus().wall()).orElse(null);
        if (shown == null) {
            showEmpty("This job has no wall type yet. A wall type is a file such as walls/W1.yaml, listed under walls in job.yaml.");
            return;
        }
        setPartName("Wall " + shown.id());
        if (put(title, shown.id() + " " + shown.title()) | put(counts, Marks.state(now.standing(shown.id())))
            | put(facts, facts(now, shown)) | bids.follow()) {
            wall.layout();
        }
        List<BuildUp.Row> all = BuildUp.rows(now, shown);
        put(all);
        select(all);
        if (stack.topControl != wall) {
            stack.topControl = wall;
            wall.getParent().layout();
        }
    }

    /** Gives whether the words are others than before, so that they may take another room. */
    private static boolean put(Label label, String words) {
        boolean other = !words.equals(label.getText());
        if (other) {
            label.setText(words);
        }
        return other;
    }

    /** Puts rows in place; those that are as before stay untouched, with what is selected and in sight. */
    private void put(List<BuildUp.Row> all) {
        if (all.size() != built.size()) {
            built = new ArrayList<>(all);
            rows.setInput(built);
            return;
        }
        for (int i = 0; i < all.size(); i++) {
            if (!all.get(i).equals(built.get(i))) {
                built.set(i, all.get(i));
                rows.replace(all.get(i), i);
            }
        }
    }

    private void select(List<BuildUp.Row> all) {
        String wanted = session().focus().component();
        int at = -1;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).component().id().equals(wanted)) {
                at = i;
            }
        }
        if (at < 0) {
            rows.getTable().deselectAll();
        } else if (rows.getTable().getSelectionIndex() != at) {
            int row = at;
            if (rows.getTable().getClientArea().height > 0) {
                rows.getTable().setSelection(row);
            } else {
                // a table without a size would put the row at its top and the rows before it out of sight
                Ui.later(rows.getTable(), () -> rows.getTable().setSelection(row));
            }
        }
        component.setText(at < 0 ? "Select a component above: its options and values stand here." : all.get(at).component().title()
            + version(all.get(at).component().id()));
        drawing.follow();
        options.follow();
        // the most to lay out: when the rest stands and what the person does meanwhile has been answered
        Ui.later(wall, () -> session().seen().ifPresent(now -> values.follow()));
    }

    /** Whose choice is changed below, where it isn't the base bid's. */
    private String version(String id) {
        int version = session().bid().version(session().job().job(), session().focus().wall(), id);
        return version == 0 ? "" : ", for " + Alternate.names(List.of(version)) + " alone";
    }

    /** The facts of the wall in one line. */
    private static String facts(Snapshot now, WallType wall) {
        return wall.facts().entrySet().stream().map(fact -> fact.getKey().replace('_', ' ') + " "
            + Units.text(now.factOfWall(fact.getKey()), fact.getValue().value())).collect(Collectors.joining(" · "));
    }

    private void command(String id) {
        try {
            getSite().getService(IHandlerService.class).executeCommand(id, null);
        } catch (org.eclipse.core.commands.common.CommandException failed) {
            session().say("That can't be done now: " + failed.getMessage(), true);
        }
    }

    /** What stands here without a job. */
    StartPane start() {
        return start;
    }

    /** Moves the keyboard to the options of the component in focus. */
    void toOptions() {
        options.setFocus();
    }

    /** The option that is selected for the component in focus. */
    public Optional<Option> selectedOption() {
        return options.selected();
    }

    OptionsList options() {
        return options;
    }

    @Override
    protected boolean asksHere() {
        return true;
    }

    @Override
    protected void focusPage() {
        if (stack.topControl == wall) {
            rows.getTable().setFocus();
        } else {
            start.setFocus();
        }
    }
}

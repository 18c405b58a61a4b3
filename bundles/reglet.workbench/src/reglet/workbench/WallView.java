package reglet.workbench;

import java.nio.file.Path;
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
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.handlers.IHandlerService;

import reglet.model.WallType;

/**
 * A wall type: its build-up from inside to outside, and for the selected component the options with their consequences and the
 * values that it takes.
 */
public final class WallView extends Part {
    static final String ID = "reglet.workbench.wall";
    private StackLayout stack;
    private Composite welcome;
    private Composite wall;
    private Label title;
    private Label facts;
    private Label counts;
    private TableViewer rows;
    private Label component;
    private OptionsList options;
    private ValuesPanel values;

    @Override
    void fill(Composite page) {
        stack = new StackLayout();
        page.setLayout(stack);
        welcome = new Composite(page, SWT.NONE);
        wall = new Composite(page, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(wall);
        title = new Label(wall, SWT.NONE);
        title.setFont(Ui.heading(title));
        counts = new Label(wall, SWT.RIGHT);
        facts = new Label(wall, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(counts);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(facts, 40), SWT.DEFAULT).applyTo(facts);
        SashForm sash = new SashForm(wall, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(sash);
        buildUp(sash);
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
        column(columns, "Inside to outside", 25, 16, row -> row.component().title());
        column(columns, "Accepted", 52, 24, BuildUp.Row::accepted);
        column(columns, "State", 23, 14, BuildUp.Row::state);
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
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        options = new OptionsList(sash, session());
        values = new ValuesPanel(sash, session());
        sash.setWeights(57, 43);
    }

    @Override
    public void jobChanged() {
        Optional<Snapshot> snapshot = session().snapshot();
        if (snapshot.isEmpty()) {
            setPartName("Wall");
            welcome();
            show();
            return;
        }
        drawWall(snapshot.get());
        show();
    }

    @Override
    public void focusChanged() {
        session().snapshot().ifPresent(this::drawWall);
    }

    private void drawWall(Snapshot now) {
        WallType shown = now.wall(session().focus().wall()).orElse(null);
        if (shown == null) {
            showEmpty("This job has no wall type yet. A wall type is a file such as walls/W1.yaml, listed under walls in job.yaml.");
            return;
        }
        setPartName("Wall " + shown.id());
        title.setText(shown.id() + " " + shown.title());
        counts.setText(Marks.state(now.findings(shown.id())));
        facts.setText(facts(shown));
        List<BuildUp.Row> all = BuildUp.rows(now, shown);
        if (!all.equals(rows.getInput())) {
            int top = rows.getTable().getTopIndex();
            rows.getTable().setRedraw(false);
            rows.setInput(all);
            rows.getTable().setTopIndex(top);
            rows.getTable().setRedraw(true);
        }
        select(all);
        wall.layout();
        if (stack.topControl != wall) {
            stack.topControl = wall;
            wall.getParent().layout();
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
        component.setText(at < 0 ? "Select a component above: its options and values stand here." : all.get(at).component().title());
        options.follow();
        values.follow();
    }

    /** The facts of the wall in one line. */
    private static String facts(WallType wall) {
        return wall.facts().entrySet().stream().map(fact -> fact.getKey().replace('_', ' ') + " " + fact.getValue().value().text())
            .collect(Collectors.joining(" · "));
    }

    /** Without a job: what is wrong, if anything is, and the ways to open one. */
    private void welcome() {
        for (var child : welcome.getChildren()) {
            child.dispose();
        }
        GridLayoutFactory.swtDefaults().margins(Ui.characters(welcome, 3), Ui.characters(welcome, 2)).applyTo(welcome);
        Label head = new Label(welcome, SWT.NONE);
        head.setText("Choose a wall and put it on paper");
        head.setFont(Ui.heading(head));
        if (!session().message().isEmpty()) {
            Label why = new Label(welcome, SWT.WRAP);
            why.setText((session().isTrouble() ? "≠ " : "") + session().message());
            GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(why, 60), SWT.DEFAULT).applyTo(why);
        }
        link("<a>Open a job folder…</a>  a folder with a job.yaml in it", "Open a job folder", this::openJob);
        List<Path> folders = new ArrayList<>(session().recent().folders());
        if (!folders.isEmpty()) {
            Label recent = new Label(welcome, SWT.NONE);
            recent.setText("Opened before");
            recent.setFont(Ui.strong(recent));
            folders.forEach(folder -> link("<a>" + escaped(folder.getFileName().toString()) + "</a>  " + escaped(folder.toString()),
                "Open " + folder.getFileName(), () -> session().open(folder)));
        }
        stack.topControl = welcome;
        welcome.layout();
        welcome.getParent().layout();
    }

    private void link(String words, String name, Runnable action) {
        Link link = Ui.named(new Link(welcome, SWT.NONE), name);
        link.setText(words);
        link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    private static String escaped(String words) {
        return words.replace("&", "&&");
    }

    private void openJob() {
        try {
            getSite().getService(IHandlerService.class).executeCommand("reglet.workbench.open", null);
        } catch (org.eclipse.core.commands.common.CommandException failed) {
            session().say("The folder dialog can't be shown: " + failed.getMessage(), true);
        }
    }

    /** Moves the keyboard to the options of the component in focus. */
    void toOptions() {
        options.setFocus();
    }

    OptionsList options() {
        return options;
    }

    @Override
    void focusPage() {
        if (stack.topControl == wall) {
            rows.getTable().setFocus();
        } else {
            welcome.setFocus();
        }
    }
}

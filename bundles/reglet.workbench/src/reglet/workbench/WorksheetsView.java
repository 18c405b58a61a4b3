package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PartInitException;

import reglet.desk.OpenJob;
import reglet.desk.WorksheetReport;
import reglet.model.Calculated;
import reglet.model.Chart;
import reglet.model.Drawing;
import reglet.model.JobWorksheets.Undone;
import reglet.model.Worksheet;
import reglet.workbench.walls.FactsView;
import reglet.workbench.settings.Units;

/** The worksheets of the wall in focus with their margins, and the chosen one from its inputs to its results. */
public final class WorksheetsView extends Part {
    static final String ID = "reglet.workbench.worksheets";
    private static final String TAKEOFF = "takeoff";
    private TableViewer list;
    private Prose prose;
    private SashForm sheet;
    private QuantitiesTable quantities;
    private Charts charts;
    private int written;
    private OfWall<List<Line>> work;
    private String component = "";
    private String chosen = "";
    private List<Line> lines = List.of();

    /** A worksheet, or one that can't be made. */
    record Line(Optional<Calculated> calculated, Optional<Undone> undone) {

        Optional<Worksheet> made() {
            return calculated.map(Calculated::worksheet);
        }

        String id() {
            return made().map(sheet -> sheet.name() + " " + sheet.title() + " " + sheet.meeting())
                .orElseGet(() -> undone.map(sheet -> sheet.name() + " " + sheet.title() + " " + sheet.meeting()).orElseThrow());
        }

        String title() {
            String meeting = made().map(Worksheet::meeting).orElseGet(() -> undone.orElseThrow().meeting());
            return made().map(Worksheet::title).orElseGet(() -> undone.orElseThrow().title()) + (meeting.isEmpty() ? "" : ", " + meeting);
        }

        /** "1.43", "≠ 0.80, falls short", "○ can't be made". */
        String margin() {
            return made().map(sheet -> sheet.margin().isEmpty() ? "" : (WorksheetReport.fallsShort(sheet) ? "≠ " : "")
                + String.format(Locale.ROOT, "%.2f", sheet.margin().getAsDouble())
                + (WorksheetReport.fallsShort(sheet) ? ", falls short" : "")).orElse("○ can't be made");
        }

        boolean concerns(String id) {
            return made().map(sheet -> sheet.component().equals(id)).orElse(false);
        }
    }

    @Override
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        work = new OfWall<>(page, "Calculating for", (now, wall) -> lines(now.job(), wall), this::show);
        SashForm sash = new SashForm(page, SWT.VERTICAL);
        Composite frame = new Composite(sash, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        list = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(list.getTable(), "Worksheets");
        list.getTable().setHeaderVisible(true);
        list.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(list);
        column(columns, "Worksheet", SWT.LEFT, 68, 20, Line::title);
        column(columns, "Margin", SWT.RIGHT, 32, 16, Line::margin);
        list.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = ((Line) event.item.getData()).id();
            write();
            prose.top();
        }));
        sheet = new SashForm(sash, SWT.VERTICAL);
        quantities = new QuantitiesTable(sheet);
        prose = new Prose(sheet, "Worksheet");
        sheet.setWeights(60, 40);
        sheet.setMaximizedControl(prose.control());
        charts = new Charts(prose.control(), prose.control()::redraw);
        prose.control().addListener(SWT.Resize, event -> {
            if (prose.room() != written) {
                Ui.later(prose.control(), this::write);
            }
        });
        sash.setWeights(32, 68);
    }

    private void column(TableColumnLayout columns, String head, int style, int weight, int characters, java.util.function.Function<Line,
        String> words) {
        TableViewerColumn column = new TableViewerColumn(list, style);
        column.getColumn().setText(head);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return words.apply((Line) line);
            }

            @Override
            public String getToolTipText(Object line) {
                return ((Line) line).title() + (((Line) line).margin().isEmpty() ? "" : ": " + ((Line) line).margin());
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, Ui.characters(list.getTable(), characters)));
    }

    @Override
    protected boolean followsBid() {
        return true;
    }

    @Override
    public void jobChanged() {
        follow();
    }

    @Override
    public void focusChanged() {
        follow();
    }

    private void follow() {
        switch (work.follow(session())) {
            case NO_JOB -> showEmpty("The calculations for the wall stand here once a job is open, each with its inputs, steps and margin.");
            case SAME -> select();
            case ASKED -> { }
        }
    }

    private void show(List<Line> made) {
        lines = made;
        if (lines.isEmpty()) {
            showEmpty("Nothing is calculated for this wall type.");
            return;
        }
        show();
        if (!lines.equals(list.getInput())) {
            int top = list.getTable().getTopIndex();
            list.setInput(lines);
            list.getTable().setTopIndex(top);
        }
        select();
        write();
    }

    /** Those of a wall and of the whole job, then those that lack something. */
    static List<Line> lines(OpenJob job, String wall) {
        List<Line> lines = new ArrayList<>();
        job.calculated().stream().filter(sheet -> sheet.worksheet().wall().equals(wall) || sheet.worksheet().wall().isEmpty())
            .forEach(sheet -> lines.add(new Line(Optional.of(sheet), Optional.empty())));
        job.worksheets().undone().stream().filter(sheet -> sheet.wall().equals(wall) || sheet.wall().isEmpty())
            .forEach(sheet -> lines.add(new Line(Optional.empty(), Optional.of(sheet))));
        return lines;
    }

    /** Another component in focus brings its own worksheet, if there is one; else the chosen one stays. */
    private void select() {
        String now = session().focus().component();
        if (!now.equals(component)) {
            component = now;
            lines.stream().filter(line -> line.concerns(now)).findFirst().ifPresent(line -> {
                chosen = line.id();
                write();
            });
        }
        if (!lines.isEmpty()) {
            list.getTable().setSelection(index());
        }
    }

    private int index() {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).id().equals(chosen)) {
                return i;
            }
        }
        return 0;
    }

    private void write() {
        if (lines.isEmpty()) {
            return;
        }
        Line line = lines.get(index());
        written = prose.room();
        boolean listed = line.made().map(made -> made.name().equals(TAKEOFF)).orElse(false);
        sheet.setMaximizedControl(listed ? null : prose.control());
        line.made().filter(made -> listed).ifPresent(quantities::show);
        prose.heading(line.title());
        line.calculated().ifPresent(this::sheet);
        line.undone().ifPresent(sheet -> {
            prose.line("○ It can't be made." + (sheet.why().isEmpty() ? "" : " " + Marks.sentence(sheet.why())));
            if (!sheet.missing().isEmpty()) {
                prose.title("Not known");
                sheet.missing().forEach(name -> prose.item("○", work.asked().label(name) + " (" + name + ")"));
            }
        });
        prose.show();
    }

    private void sheet(Calculated calculated) {
        Worksheet sheet = calculated.worksheet();
        if (sheet.margin().isPresent()) {
            prose.line((WorksheetReport.fallsShort(sheet) ? "≠ It falls short: what is there is " : "What is there is ")
                + String.format(Locale.ROOT, "%.2f", sheet.margin().getAsDouble()) + " times what is needed.");
        }
        sentences("Look at", "△", sheet.warnings());
        prose.title("Results");
        sheet.results().forEach((key, amount) -> prose.item("•", amount.label() + ": " + Units.both(amount.quantity())));
        pictures(calculated);
        prose.title("Inputs");
        sheet.inputs().forEach((key, input) -> input(input));
        prose.title("Steps");
        for (Worksheet.Step step : sheet.steps()) {
            prose.item("•", Marks.sentence(step.label()));
            prose.item("", step.formula());
            prose.item("", step.substitution() + " = " + step.value().quantity().text());
            step.basis().forEach(basis -> prose.item("", basis.text()));
        }
        sentences("Assumed", "•", sheet.assumed());
    }

    /** An input with where it comes from, which leads there where that is a choice or a fact. */
    private void input(Worksheet.Input input) {
        prose.mark("•").plain(input.label() + ": " + Units.text(input.value()) + " (");
        Optional<String> owner = owner(input.from());
        if (owner.isPresent()) {
            prose.lead(input.from(), () -> session().look(session().focus().onComponent(owner.get())));
        } else if (input.from().contains(".yaml")) {
            prose.lead(input.from(), this::showFacts);
        } else {
            prose.plain(input.from());
        }
        prose.plain(")").end(1, 4);
    }

    /** The component of the accepted option that an input comes from. */
    private Optional<String> owner(String from) {
        return work.asked().wall(work.wall()).stream().flatMap(wall -> wall.choices().values().stream())
            .filter(choice -> choice.accept().stream().anyMatch(id -> List.of(from.split(", ")).contains("option " + id)))
            .map(choice -> choice.component()).findFirst();
    }

    private void showFacts() {
        try {
            getSite().getPage().showView(FactsView.ID);
        } catch (PartInitException unavailable) {
            session().say("The facts can't be shown: " + unavailable.getMessage(), true);
        }
    }

    /** Charts and sections of the worksheet, as wide as the pane. */
    private void pictures(Calculated calculated) {
        int width = prose.room();
        charts.ask(calculated.charts(), width);
        for (Chart chart : calculated.charts()) {
            prose.picture(charts.height(width), (gc, at) -> charts.paint(chart, gc, at));
        }
        for (Drawing drawing : calculated.drawings()) {
            prose.picture(charts.height(width), (gc, at) -> new DrawingPainter(prose.control(), at, gc,
                DrawingCanvas.Shown.of(drawing, work.asked(), work.wall(), session().focus().component(), true)).paint());
        }
    }

    private void sentences(String title, String mark, List<String> sentences) {
        if (!sentences.isEmpty()) {
            prose.title(title);
            sentences.forEach(sentence -> prose.item(mark, sentence));
        }
    }

    @Override
    protected void focusPage() {
        list.getTable().setFocus();
    }
}

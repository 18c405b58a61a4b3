package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.WorksheetReport;
import reglet.model.JobWorksheets;
import reglet.model.JobWorksheets.Undone;
import reglet.model.Quantity;
import reglet.model.Worksheet;

/** The worksheets of the wall in focus with their margins, and the chosen one from its inputs to its results. */
public final class WorksheetsView extends Part {
    static final String ID = "reglet.workbench.worksheets";
    private TableViewer list;
    private Prose prose;
    private Latest latest;
    private Snapshot asked;
    private String askedFor = "";
    private String component = "";
    private String chosen = "";
    private List<Line> lines = List.of();

    /** A worksheet, or one that can't be made. */
    record Line(Optional<Worksheet> made, Optional<Undone> undone) {

        String id() {
            return made.map(sheet -> sheet.name() + " " + sheet.title() + " " + sheet.meeting())
                .orElseGet(() -> undone.map(sheet -> sheet.name() + " " + sheet.title() + " " + sheet.meeting()).orElseThrow());
        }

        String title() {
            String meeting = made.map(Worksheet::meeting).orElseGet(() -> undone.orElseThrow().meeting());
            return made.map(Worksheet::title).orElseGet(() -> undone.orElseThrow().title()) + (meeting.isEmpty() ? "" : ", " + meeting);
        }

        /** "1.43", "≠ 0.80, falls short", "○ can't be made". */
        String margin() {
            return made.map(sheet -> sheet.margin().isEmpty() ? "" : (WorksheetReport.fallsShort(sheet) ? "≠ " : "")
                + String.format(Locale.ROOT, "%.2f", sheet.margin().getAsDouble())
                + (WorksheetReport.fallsShort(sheet) ? ", falls short" : "")).orElse("○ can't be made");
        }

        boolean concerns(String id) {
            return made.map(sheet -> sheet.component().equals(id)).orElse(false);
        }
    }

    @Override
    void fill(Composite page) {
        page.setLayout(new FillLayout());
        latest = new Latest(page);
        SashForm sash = new SashForm(page, SWT.VERTICAL);
        Composite frame = new Composite(sash, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        list = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(list.getTable(), "Worksheets");
        list.getTable().setHeaderVisible(true);
        list.setContentProvider(ArrayContentProvider.getInstance());
        column(columns, "Worksheet", SWT.LEFT, 68, 20, Line::title);
        column(columns, "Margin", SWT.RIGHT, 32, 16, Line::margin);
        list.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = ((Line) event.item.getData()).id();
            write();
            prose.top();
        }));
        prose = new Prose(sash, "Worksheet");
        sash.setWeights(32, 68);
    }

    private void column(TableColumnLayout columns, String head, int style, int weight, int characters, java.util.function.Function<Line,
        String> words) {
        TableViewerColumn column = new TableViewerColumn(list, style);
        column.getColumn().setText(head);
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(line -> words.apply((Line) line)));
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, Ui.characters(list.getTable(), characters)));
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
        Snapshot now = session().snapshot().orElse(null);
        String wall = session().focus().wall();
        if (now == null) {
            latest.cancel();
            asked = null;
            showEmpty("The calculations for the wall stand here once a job is open, each with its inputs, steps and margin.");
            return;
        }
        if (now == asked && wall.equals(askedFor)) {
            select();
            return;
        }
        asked = now;
        askedFor = wall;
        latest.ask("Calculating for " + wall, monitor -> lines(now.job().worksheets(), wall), made -> {
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
        });
    }

    /** Those of a wall and of the whole job, then those that lack something. */
    static List<Line> lines(JobWorksheets worksheets, String wall) {
        List<Line> lines = new ArrayList<>();
        worksheets.made().stream().filter(sheet -> sheet.wall().equals(wall) || sheet.wall().isEmpty())
            .forEach(sheet -> lines.add(new Line(Optional.of(sheet), Optional.empty())));
        worksheets.undone().stream().filter(sheet -> sheet.wall().equals(wall) || sheet.wall().isEmpty())
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
        prose.heading(line.title());
        line.made().ifPresent(this::sheet);
        line.undone().ifPresent(sheet -> {
            prose.line("○ It can't be made." + (sheet.why().isEmpty() ? "" : " " + Marks.sentence(sheet.why())));
            if (!sheet.missing().isEmpty()) {
                prose.title("Not known");
                sheet.missing().forEach(name -> prose.item("○", asked.label(name) + " (" + name + ")"));
            }
        });
        prose.show();
    }

    private void sheet(Worksheet sheet) {
        if (sheet.margin().isPresent()) {
            prose.line((WorksheetReport.fallsShort(sheet) ? "≠ It falls short: what is there is " : "What is there is ")
                + String.format(Locale.ROOT, "%.2f", sheet.margin().getAsDouble()) + " times what is needed.");
        }
        sentences("Look at", "△", sheet.warnings());
        prose.title("Results");
        sheet.results().forEach((key, amount) -> prose.item("•", amount.label() + ": " + both(amount.quantity())));
        prose.title("Inputs");
        sheet.inputs().forEach((key, input) -> prose.item("•", input.label() + ": " + input.value().text() + " (" + input.from() + ")"));
        prose.title("Steps");
        for (Worksheet.Step step : sheet.steps()) {
            prose.item("•", Marks.sentence(step.label()));
            prose.item("", step.formula());
            prose.item("", step.substitution() + " = " + step.value().quantity().text());
            step.basis().forEach(basis -> prose.item("", basis.text()));
        }
        sentences("Assumed", "•", sheet.assumed());
    }

    private void sentences(String title, String mark, List<String> sentences) {
        if (!sentences.isEmpty()) {
            prose.title(title);
            sentences.forEach(sentence -> prose.item(mark, sentence));
        }
    }

    /** In its unit, and in the other system of units where there is one. */
    private static String both(Quantity quantity) {
        return quantity.text() + quantity.unit().other().map(other -> " (" + quantity.as(other).text() + ")").orElse("");
    }

    @Override
    void focusPage() {
        list.getTable().setFocus();
    }
}

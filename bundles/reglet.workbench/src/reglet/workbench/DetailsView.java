package reglet.workbench;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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

import reglet.model.Drawing;
import reglet.model.Drawing.Shape;
import reglet.model.Finding;
import reglet.model.UnusableInput;
import reglet.workbench.settings.Units;

/** The details of the wall in focus, drawn from its choices as they stand. */
public final class DetailsView extends Part {
    static final String ID = "reglet.workbench.details";
    private TableViewer list;
    private DrawingCanvas canvas;
    private OfWall<Drawn> work;
    private List<Drawing> drawings = List.of();
    private String chosen = "";

    /** A drawing, and what stands against components that it shows. */
    record Line(Drawing drawing, List<Finding> findings) {
        String words() {
            return drawing.title() + (findings.isEmpty() ? "" : "  " + Marks.shapes(findings));
        }
    }

    /** The drawings of a wall, or why there are none. */
    private record Drawn(List<Drawing> drawings, String trouble) {
    }

    @Override
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        work = new OfWall<>(page, "Drawing the details of", DetailsView::drawn, this::show);
        SashForm sash = new SashForm(page, SWT.VERTICAL);
        canvas = new DrawingCanvas(sash, component -> session().look(session().focus().onComponent(component)), this::step);
        Composite frame = new Composite(sash, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        list = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(list.getTable(), "Drawings");
        list.getTable().setHeaderVisible(true);
        list.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(list);
        TableViewerColumn column = new TableViewerColumn(list, SWT.LEFT);
        column.getColumn().setText("Drawings of this wall");
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Line) line).words();
            }

            @Override
            public String getToolTipText(Object line) {
                return Marks.state(((Line) line).findings());
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(1, Ui.characters(list.getTable(), 20)));
        list.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = ((Line) event.item.getData()).drawing().id();
            draw();
        }));
        sash.setWeights(74, 26);
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
            case NO_JOB -> showEmpty("The details of the wall stand here once a job is open, drawn from what is chosen.");
            case SAME -> draw();
            case ASKED -> { }
        }
    }

    private void show(Drawn drawn) {
        drawings = drawn.drawings();
        if (drawings.isEmpty()) {
            showEmpty(drawn.trouble().isEmpty() ? "There is nothing to draw of this wall yet: choose its layers." : drawn.trouble());
        } else {
            show();
            fillList();
            draw();
        }
    }

    private static Drawn drawn(Snapshot now, String wall) {
        try {
            return new Drawn(now.job().details(wall, Units.shown()), "");
        } catch (UnusableInput unusable) {
            return new Drawn(List.of(), "≠ The details can't be drawn: " + unusable.problems().stream().map(Object::toString)
                .collect(Collectors.joining("\n")));
        }
    }

    private void fillList() {
        Map<String, List<Finding>> against = DrawingCanvas.Shown.against(work.asked(), work.wall());
        List<Line> lines = drawings.stream().map(drawing -> new Line(drawing, drawing.shapes().stream().map(Shape::component).distinct()
            .flatMap(id -> against.getOrDefault(id, List.of()).stream()).toList())).toList();
        if (!lines.equals(list.getInput())) {
            int top = list.getTable().getTopIndex();
            list.getTable().setRedraw(false);
            list.setInput(lines);
            list.getTable().setTopIndex(top);
            list.getTable().setRedraw(true);
        }
        list.getTable().setSelection(index());
    }

    /** Place of the chosen drawing; the first when this wall doesn't have it. */
    private int index() {
        for (int i = 0; i < drawings.size(); i++) {
            if (drawings.get(i).id().equals(chosen)) {
                return i;
            }
        }
        return 0;
    }

    private void draw() {
        if (!drawings.isEmpty() && work.asked() != null) {
            canvas.show(DrawingCanvas.Shown.of(drawings.get(index()), work.asked(), work.wall(), session().focus().component(), true));
        }
    }

    private void step(int by) {
        if (!drawings.isEmpty()) {
            int next = Math.floorMod(index() + by, drawings.size());
            chosen = drawings.get(next).id();
            list.getTable().setSelection(next);
            draw();
        }
    }

    @Override
    protected void focusPage() {
        canvas.setFocus();
    }
}

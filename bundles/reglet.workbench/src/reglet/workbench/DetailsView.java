package reglet.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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

import reglet.model.Component;
import reglet.model.Drawing;
import reglet.model.Drawing.Shape;
import reglet.model.Finding;
import reglet.model.UnusableInput;

/** The details of the wall in focus, drawn from its choices as they stand. */
public final class DetailsView extends Part {
    static final String ID = "reglet.workbench.details";
    private TableViewer list;
    private DrawingCanvas canvas;
    private Latest latest;
    private Snapshot asked;
    private String askedFor = "";
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
    void fill(Composite page) {
        page.setLayout(new FillLayout());
        latest = new Latest(page);
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
        if (now == null || wall.isEmpty()) {
            latest.cancel();
            asked = null;
            showEmpty("The details of the wall stand here once a job is open, drawn from what is chosen.");
            return;
        }
        if (now == asked && wall.equals(askedFor)) {
            draw();
            return;
        }
        asked = now;
        askedFor = wall;
        latest.ask("Drawing the details of " + wall, monitor -> drawn(now, wall), drawn -> {
            drawings = drawn.drawings();
            if (drawings.isEmpty()) {
                showEmpty(drawn.trouble().isEmpty() ? "There is nothing to draw of this wall yet: choose its layers." : drawn.trouble());
            } else {
                show();
                fillList();
                draw();
            }
        });
    }

    private static Drawn drawn(Snapshot now, String wall) {
        try {
            return new Drawn(now.job().details(wall), "");
        } catch (UnusableInput unusable) {
            return new Drawn(List.of(), "≠ The details can't be drawn: " + unusable.problems().stream().map(Object::toString)
                .collect(Collectors.joining("\n")));
        }
    }

    private void fillList() {
        Map<String, List<Finding>> against = against();
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

    private Map<String, List<Finding>> against() {
        Map<String, List<Finding>> against = new LinkedHashMap<>();
        asked.findings(askedFor).stream().filter(finding -> !finding.component().isEmpty())
            .forEach(finding -> against.computeIfAbsent(finding.component(), id -> new ArrayList<>()).add(finding));
        return against;
    }

    private void draw() {
        if (!drawings.isEmpty() && asked != null) {
            Map<String, String> titles = asked.job().pack().components().stream()
                .collect(Collectors.toMap(Component::id, Component::title, (first, second) -> first, LinkedHashMap::new));
            canvas.show(new DrawingCanvas.Shown(drawings.get(index()), titles, against(), session().focus().component()));
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
    void focusPage() {
        canvas.setFocus();
    }
}

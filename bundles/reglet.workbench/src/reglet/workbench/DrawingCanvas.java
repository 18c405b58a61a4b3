package reglet.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import reglet.model.Drawing;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Shape;
import reglet.model.Finding;

/**
 * A drawing to look at and to point into: a click on a shape or a note, or the keys Up and Down, select a component. It has paper
 * and ink of its own, whatever the theme, as a print has.
 */
final class DrawingCanvas extends Canvas {
    private final Consumer<String> select;
    private final Consumer<Integer> step;
    private Shown shown;
    private DrawingPainter painter;

    /**
     * What is drawn.
     *
     * @param drawing   the drawing
     * @param titles    words for components, by id
     * @param findings  what stands against components, by id
     * @param component the one in focus; ""
     * @param noted     whether notes stand beside it; else pointing at a shape names it
     */
    record Shown(Drawing drawing, Map<String, String> titles, Map<String, List<Finding>> findings, String component, boolean noted) {

        /** A drawing of a wall type with what stands against it. */
        static Shown of(Drawing drawing, Snapshot now, String wall, String component, boolean noted) {
            Map<String, String> titles = new LinkedHashMap<>();
            now.job().pack().components().forEach(known -> titles.put(known.id(), known.title()));
            return new Shown(drawing, titles, against(now, wall), component, noted);
        }

        /** What stands on a wall type, by the component that it points at. */
        static Map<String, List<Finding>> against(Snapshot now, String wall) {
            Map<String, List<Finding>> against = new LinkedHashMap<>();
            now.standing(wall).stream().filter(finding -> !finding.component().isEmpty())
                .forEach(finding -> against.computeIfAbsent(finding.component(), id -> new ArrayList<>()).add(finding));
            return against;
        }

        /** Whether a shape belongs to the component in focus. */
        boolean isShown(Shape shape) {
            return !shape.component().isEmpty() && shape.component().equals(component);
        }

        /** The components that the drawing shows, from the first drawn on. */
        Set<String> components() {
            Set<String> all = new LinkedHashSet<>();
            drawing.shapes().stream().map(Shape::component).filter(id -> !id.isEmpty()).forEach(all::add);
            return all;
        }

        List<Finding> against(String id) {
            return findings.getOrDefault(id, List.of());
        }

        String title(String id) {
            return titles.getOrDefault(id, id);
        }

        /** "Lath, ≠ 1 conflict". */
        String words(String id) {
            String counts = Marks.counts(against(id));
            return title(id) + (counts.isEmpty() ? "" : ", " + counts);
        }

        /** The same in words, for those who don't see it. */
        String description() {
            List<String> parts = new ArrayList<>(List.of(drawing.title()));
            if (components().contains(component)) {
                parts.add("selected: " + words(component));
            }
            parts.add("shows " + String.join("; ", components().stream().map(this::words).toList()));
            List<String> lengths = drawing.shapes().stream().filter(Dimensioned.class::isInstance)
                .map(shape -> ((Dimensioned) shape).text())
                .filter(text -> !text.isEmpty()).toList();
            if (!lengths.isEmpty()) {
                parts.add("measured: " + String.join("; ", lengths));
            }
            parts.addAll(drawing.notes());
            return String.join(". ", parts);
        }
    }

    /**
     * @param select given the component that the person points at
     * @param step   given 1 for the next drawing, -1 for the one before
     */
    DrawingCanvas(Composite parent, Consumer<String> select, Consumer<Integer> step) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        this.select = select;
        this.step = step;
        Ui.named(this, "Detail");
        addPaintListener(event -> {
            painter = shown == null ? null : new DrawingPainter(this, getClientArea(), event.gc, shown);
            if (painter != null) {
                painter.paint();
            }
        });
        addMouseListener(MouseListener.mouseDownAdapter(event -> {
            setFocus();
            String hit = at(event.x, event.y);
            if (!hit.isEmpty()) {
                select.accept(hit);
            }
        }));
        addMouseMoveListener(event -> point(at(event.x, event.y)));
        addKeyListener(KeyListener.keyPressedAdapter(this::key));
        addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT
            && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        describe();
    }

    private void describe() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description();
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    void show(Shown next) {
        if (!next.equals(shown)) {
            shown = next;
            redraw();
        }
    }

    String description() {
        return shown == null ? "" : shown.description();
    }

    private String at(int x, int y) {
        return painter == null ? "" : painter.at(x, y);
    }

    /** Where each component's note stands, in points; empty before the first painting. */
    Map<String, Rectangle> notes() {
        return painter == null ? Map.of() : new LinkedHashMap<>(painter.notes());
    }

    private void point(String component) {
        String words = component.isEmpty() ? null : shown.words(component);
        if (words == null ? getToolTipText() != null : !words.equals(getToolTipText())) {
            setToolTipText(words);
            setCursor(words == null ? null : getDisplay().getSystemCursor(SWT.CURSOR_HAND));
        }
    }

    private void key(KeyEvent event) {
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT, SWT.PAGE_DOWN -> step.accept(1);
            case SWT.ARROW_LEFT, SWT.PAGE_UP -> step.accept(-1);
            case SWT.ARROW_DOWN -> component(1);
            case SWT.ARROW_UP -> component(-1);
            default -> { }
        }
    }

    /** Moves to the next or previous component of the drawing. */
    private void component(int by) {
        if (shown != null && !shown.components().isEmpty()) {
            List<String> all = List.copyOf(shown.components());
            int now = all.indexOf(shown.component());
            select.accept(all.get(Math.floorMod(now < 0 && by < 0 ? now : now + by, all.size())));
        }
    }
}

package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Control;

import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;
import reglet.model.Finding;

/**
 * Paints one drawing into one size of canvas. Lines are paths in the screen's own points, which need not be whole, so that any
 * scale of the screen draws them sharp. Hatches are coarser here than on paper, where a dot may be finer.
 */
final class DrawingPainter {
    /** How near the pointer has to be to a line, in points. */
    private static final double NEAR = 5;

    private final Control canvas;
    private final GC gc;
    private final DrawingCanvas.Shown shown;
    private final Rectangle sheet;
    private final Color ink;
    private final Color paper;
    private final Color tint;
    private final Letters letters;
    private final Strokes strokes;
    private Map<String, Rectangle> notes = Map.of();
    private Fit fit = new Fit(1, 0, 0);

    /**
     * @param canvas where it is painted; gives fonts and colours
     * @param sheet  the part of it that is painted
     */
    DrawingPainter(Control canvas, Rectangle sheet, GC gc, DrawingCanvas.Shown shown) {
        this.canvas = canvas;
        this.gc = gc;
        this.shown = shown;
        this.sheet = sheet;
        this.ink = canvas.getDisplay().getSystemColor(SWT.COLOR_BLACK);
        this.paper = canvas.getDisplay().getSystemColor(SWT.COLOR_WHITE);
        this.tint = tint(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB());
        this.letters = new Letters(canvas, gc);
        this.strokes = new Strokes(gc, ink, paper);
    }

    private static Color tint(RGB mark) {
        return new Color((255 * 3 + mark.red) / 4, (255 * 3 + mark.green) / 4, (255 * 3 + mark.blue) / 4);
    }

    /** Where each component's note stands. */
    Map<String, Rectangle> notes() {
        return notes;
    }

    void paint() {
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setBackground(paper);
        gc.setForeground(ink);
        gc.fillRectangle(sheet);
        NoteColumns columns = new NoteColumns(gc, letters, strokes, shown, caption());
        try {
            fit = Outlines.fit(shown.drawing().shapes(), columns.between(), letters.row());
            ground();
            written();
            notes = columns.paint(fit);
            badges();
        } finally {
            columns.dispose();
        }
        if (canvas instanceof DrawingCanvas && canvas.isFocusControl()) {
            gc.drawFocus(sheet.x + 1, sheet.y + 1, sheet.width - 2, sheet.height - 2);
        }
    }

    /** The title above and the sentences below; gives the room between them. */
    private Rectangle caption() {
        int row = letters.row();
        int margin = row / 2;
        if (!shown.noted()) {
            return new Rectangle(sheet.x, sheet.y, Math.max(1, sheet.width), Math.max(1, sheet.height));
        }
        Rectangle room = new Rectangle(sheet.x + margin, sheet.y + margin, Math.max(1, sheet.width - 2 * margin),
            Math.max(1, sheet.height - 2 * margin));
        letters.title(letters.cut(shown.drawing().title(), room.width), room.x, room.y);
        List<String> sentences = new ArrayList<>(shown.drawing().notes());
        if (flows(Stroke.WATER)) {
            sentences.add("Filled heads: the way of water.");
        }
        if (flows(Stroke.AIR)) {
            sentences.add("Open heads: the way of air.");
        }
        int below = 0;
        if (!sentences.isEmpty()) {
            TextLayout words = letters.layout(String.join(" ", sentences), room.width, false, SWT.LEFT);
            below = words.getBounds().height;
            words.draw(gc, room.x, room.y + room.height - below);
            words.dispose();
        }
        return new Rectangle(room.x, room.y + row + margin, room.width, Math.max(1, room.height - row - 2 * margin - below));
    }

    private boolean flows(Stroke stroke) {
        return shown.drawing().shapes().stream().anyMatch(shape -> shape instanceof Line line && line.stroke() == stroke
            || shape instanceof Arc arc && arc.stroke() == stroke);
    }

    /** Areas, lines and arcs in their order: what is drawn later covers what was drawn before. The one in focus is edged last. */
    private void ground() {
        for (Shape shape : shown.drawing().shapes()) {
            if (shape instanceof Area area) {
                area(area);
            } else if (shape instanceof Line line) {
                List<Point> points = fit.at(line.points());
                strokes.draw(points, false, Strokes.width(line.pen()), line.stroke());
                if (line.arrow() && points.size() > 1) {
                    strokes.head(points.get(points.size() - 2), points.get(points.size() - 1), line.stroke() != Stroke.AIR);
                }
            } else if (shape instanceof Arc arc) {
                strokes.draw(fit.at(Outlines.points(arc)), false, Strokes.width(arc.pen()), arc.stroke());
            }
        }
        for (Shape shape : shown.drawing().shapes()) {
            if (shown.isShown(shape) && (shape instanceof Area || shape instanceof Line || shape instanceof Arc)) {
                strokes.draw(fit.at(Outlines.points(shape)), shape instanceof Area, 3, Stroke.SOLID);
            }
        }
    }

    private void area(Area area) {
        List<Point> outline = fit.at(area.outline());
        if (outline.size() < 3) {
            return;
        }
        Path path = strokes.path(outline, true);
        if (area.hatch() != Hatch.NONE) {
            gc.setBackground(shown.isShown(area) ? tint : paper);
            gc.fillPath(path);
            gc.setClipping(path);
            strokes.lines(0.7f, SWT.LINE_SOLID, null);
            gc.setBackground(ink);
            new Hatching(gc, outline).fill(area.hatch());
            gc.setClipping((Rectangle) null);
            gc.setBackground(paper);
        }
        path.dispose();
        strokes.draw(outline, true, Strokes.width(area.pen()), Stroke.SOLID);
    }

    private void written() {
        DimensionLines written = new DimensionLines(gc, strokes, shown, sheet, fit, letters.row());
        for (Shape shape : shown.drawing().shapes()) {
            if (shape instanceof Text text) {
                written.text(text);
            } else if (shape instanceof Dimensioned dimension) {
                written.dimension(dimension);
            }
        }
    }

    /** What something stands against is marked where it is drawn: by its shape beside a note that has the words, else by both. */
    private void badges() {
        for (String component : shown.components()) {
            List<Finding> against = shown.against(component);
            place(component).filter(place -> !against.isEmpty()).ifPresent(place -> {
                String words = notes.containsKey(component) ? Marks.shape(Marks.worst(against)) : Marks.counts(against);
                org.eclipse.swt.graphics.Point size = gc.textExtent(words);
                int x = (int) Math.round(place.x() - size.x / 2.0) - 3;
                int y = (int) Math.round(place.y() - size.y / 2.0);
                strokes.lines(1.6f, SWT.LINE_SOLID, null);
                gc.fillRectangle(x, y, size.x + 6, size.y);
                gc.drawRectangle(x, y, size.x + 6, size.y);
                gc.drawText(words, x + 3, y, true);
            });
        }
    }

    /** Where a component is marked: at the tip of its note, else in the middle of what is drawn of it first. */
    private Optional<Point> place(String component) {
        List<Shape> own = shown.drawing().shapes().stream().filter(shape -> shape.component().equals(component)).toList();
        return own.stream().filter(Leader.class::isInstance).map(shape -> fit.at(((Leader) shape).tip())).findFirst()
            .or(() -> own.stream().map(Outlines::points).filter(points -> !points.isEmpty())
                .map(points -> Geometry.middle(fit.at(points))).findFirst());
    }

    /** The component at a place of the screen; "" for none. What is drawn on top is found first. */
    String at(double x, double y) {
        for (Map.Entry<String, Rectangle> note : notes.entrySet()) {
            if (note.getValue().contains((int) x, (int) y)) {
                return note.getKey();
            }
        }
        Point at = new Point(x, y);
        List<Shape> shapes = shown.drawing().shapes();
        for (int i = shapes.size() - 1; i >= 0; i--) {
            Shape shape = shapes.get(i);
            if (!shape.component().isEmpty() && hits(shape, at)) {
                return shape.component();
            }
        }
        return "";
    }

    private boolean hits(Shape shape, Point at) {
        List<Point> points = shape instanceof Leader || shape instanceof Text ? List.of() : fit.at(Outlines.points(shape));
        if (shape instanceof Area area) {
            return area.hatch() != Hatch.NONE && Geometry.inside(points, at) || Geometry.near(points, true, at, NEAR);
        }
        return Geometry.near(points, false, at, NEAR);
    }
}

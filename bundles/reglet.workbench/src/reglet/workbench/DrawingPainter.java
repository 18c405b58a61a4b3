package reglet.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Control;

import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
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
    private static final float[] DASHED = {5, 3};
    private static final float[] CENTRED = {11, 3, 2, 3};
    private static final float[] FLOWING = {9, 3};
    private static final float[] BLOWING = {3, 3};

    private final Control canvas;
    private final GC gc;
    private final DrawingCanvas.Shown shown;
    private final Rectangle sheet;
    private final Color ink;
    private final Color paper;
    private final Color tint;
    private final int row;
    private final Font strong;
    private final Map<String, Rectangle> notes = new LinkedHashMap<>();
    private final List<Rectangle> written = new ArrayList<>();
    private Fit fit = new Fit(1, 0, 0);

    /** From real millimetres to points of the screen. */
    record Fit(double scale, double x, double y) {
        /** Into a rectangle; what is to be drawn reaches from low to high. */
        static Fit into(Rectangle room, Point low, Point high) {
            double scale = Math.min(room.width / Math.max(1, high.x() - low.x()), room.height / Math.max(1, high.y() - low.y()));
            double left = room.x + (room.width - scale * (high.x() - low.x())) / 2;
            double top = room.y + (room.height - scale * (high.y() - low.y())) / 2;
            return new Fit(scale, left - scale * low.x(), top + scale * high.y());
        }

        Point at(Point real) {
            return new Point(x + scale * real.x(), y - scale * real.y());
        }

        List<Point> at(List<Point> real) {
            return real.stream().map(this::at).toList();
        }
    }

    /** A note with the place it wants. */
    private record Note(Leader leader, boolean right, TextLayout words) {
        int height() {
            return words.getBounds().height;
        }
    }

    /**
     * @param canvas where it is painted; gives fonts and colours
     * @param sheet  the part of it that is painted
     */
    DrawingPainter(Control canvas, Rectangle sheet, GC gc, Font strong, DrawingCanvas.Shown shown) {
        this.canvas = canvas;
        this.gc = gc;
        this.shown = shown;
        this.sheet = sheet;
        this.ink = canvas.getDisplay().getSystemColor(SWT.COLOR_BLACK);
        this.paper = canvas.getDisplay().getSystemColor(SWT.COLOR_WHITE);
        this.tint = tint(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB());
        gc.setFont(canvas.getFont());
        this.row = gc.getFontMetrics().getHeight();
        this.strong = strong;
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
        Rectangle room = caption();
        int left = column(room, false);
        int right = column(room, true);
        written.clear();
        List<Note> all = new ArrayList<>(noted(left, right, false));
        try {
            if (height(all, true) > room.height || height(all, false) > room.height) {
                all.forEach(note -> note.words().dispose());
                all.clear();
                all.addAll(noted(left, right, true));
            }
            fit = fit(new Rectangle(room.x + left, room.y, room.width - left - right, room.height));
            ground();
            shown.drawing().shapes().forEach(this::written);
            notes(all.stream().filter(Note::right).toList(), room, room.x + room.width - right);
            notes(all.stream().filter(note -> !note.right()).toList(), room, room.x);
            badges();
        } finally {
            all.forEach(note -> note.words().dispose());
        }
        if (canvas instanceof DrawingCanvas && canvas.isFocusControl()) {
            gc.drawFocus(sheet.x + 1, sheet.y + 1, sheet.width - 2, sheet.height - 2);
        }
    }

    /** The title above and the sentences below; gives the room between them. */
    private Rectangle caption() {
        int margin = row / 2;
        if (!shown.noted()) {
            return new Rectangle(sheet.x, sheet.y, Math.max(1, sheet.width), Math.max(1, sheet.height));
        }
        Rectangle room = new Rectangle(sheet.x + margin, sheet.y + margin, Math.max(1, sheet.width - 2 * margin),
            Math.max(1, sheet.height - 2 * margin));
        gc.setFont(strong);
        gc.drawText(shown.drawing().title(), room.x, room.y, true);
        gc.setFont(canvas.getFont());
        List<String> sentences = new ArrayList<>(shown.drawing().notes());
        if (flows(Stroke.WATER)) {
            sentences.add("Filled heads: the way of water.");
        }
        if (flows(Stroke.AIR)) {
            sentences.add("Open heads: the way of air.");
        }
        int below = 0;
        if (!sentences.isEmpty()) {
            TextLayout words = layout(String.join(" ", sentences), room.width, false, SWT.LEFT);
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

    private TextLayout layout(String words, int width, boolean bold, int alignment) {
        TextLayout layout = new TextLayout(canvas.getDisplay());
        layout.setFont(bold ? strong : canvas.getFont());
        layout.setText(words);
        layout.setWidth(Math.max(1, width));
        layout.setAlignment(alignment);
        return layout;
    }

    private static boolean isRight(Leader leader) {
        return leader.note().x() >= leader.tip().x();
    }

    /** Width of the notes at a side; 0 when there are none. */
    private int column(Rectangle room, boolean right) {
        boolean any = shown.noted() && shown.drawing().shapes().stream().anyMatch(shape -> shape instanceof Leader leader
            && isRight(leader) == right);
        return any ? (int) Math.min(room.width * 0.4, Math.max(Ui.characters(canvas, 28), Math.min(room.width * 0.3,
            Ui.characters(canvas, 40)))) : 0;
    }

    /** The notes at both sides; short ones are of one line and leave out where the component is specified. */
    private List<Note> noted(int left, int right, boolean brief) {
        List<Note> all = new ArrayList<>();
        for (Shape shape : shown.drawing().shapes()) {
            if (shown.noted() && shape instanceof Leader leader) {
                boolean isRight = isRight(leader);
                int width = (isRight ? right : left) - row;
                String words = brief ? cut(brief(leader), width) : words(leader);
                all.add(new Note(leader, isRight, layout(words, width, isShown(leader), isRight ? SWT.LEFT : SWT.RIGHT)));
            }
        }
        return all;
    }

    private String words(Leader leader) {
        String counts = Marks.counts(shown.against(leader.component()));
        return (counts.isEmpty() ? "" : counts + ": ") + (leader.text().isEmpty() ? shown.title(leader.key()) : leader.text());
    }

    private String brief(Leader leader) {
        List<Finding> against = shown.against(leader.component());
        return (against.isEmpty() ? "" : Marks.word(worst(against)) + ": ") + shown.title(leader.key());
    }

    /** As much of a line as has room; pointing at the note says all of it. */
    private String cut(String words, int width) {
        // in the emphasis, so that selecting a note doesn't break its line
        gc.setFont(strong);
        String cut = words;
        while (cut.length() > 1 && gc.textExtent(cut).x > width) {
            cut = cut.substring(0, cut.length() - 2).stripTrailing() + "…";
        }
        gc.setFont(canvas.getFont());
        return cut;
    }

    private int height(List<Note> notes, boolean right) {
        return notes.stream().filter(note -> note.right() == right).mapToInt(note -> note.height() + gap()).sum();
    }

    private int gap() {
        return row / 3;
    }

    private boolean isShown(Shape shape) {
        return !shape.component().isEmpty() && shape.component().equals(shown.component());
    }

    private Fit fit(Rectangle room) {
        double[] reach = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Shape shape : shown.drawing().shapes()) {
            for (Point point : points(shape)) {
                reach[0] = Math.min(reach[0], point.x());
                reach[1] = Math.min(reach[1], point.y());
                reach[2] = Math.max(reach[2], point.x());
                reach[3] = Math.max(reach[3], point.y());
            }
        }
        if (reach[0] > reach[2]) {
            return new Fit(1, room.x, room.y);
        }
        // dimensions at the edge have words that stand out
        Rectangle inside = new Rectangle(room.x + row, room.y + row, Math.max(1, room.width - 2 * row),
            Math.max(1, room.height - 2 * row));
        return Fit.into(inside, new Point(reach[0], reach[1]), new Point(reach[2], reach[3]));
    }

    private static List<Point> points(Shape shape) {
        if (shape instanceof Area area) {
            return area.outline();
        } else if (shape instanceof Line line) {
            return line.points();
        } else if (shape instanceof Arc arc) {
            return arced(arc);
        } else if (shape instanceof Dimensioned dimension) {
            return List.of(dimension.from(), dimension.to(), Geometry.moved(dimension.from(), dimension.from(), dimension.to(), 0,
                dimension.offset()), Geometry.moved(dimension.to(), dimension.from(), dimension.to(), 0, dimension.offset()));
        }
        return shape instanceof Text text ? List.of(text.at()) : List.of(((Leader) shape).tip());
    }

    /** An arc as a run of short lines. */
    private static List<Point> arced(Arc arc) {
        double sweep = arc.to() - arc.from();
        sweep = sweep <= 0 ? sweep + 360 : Math.min(360, sweep);
        List<Point> points = new ArrayList<>();
        int parts = (int) Math.max(8, sweep / 6);
        for (int i = 0; i <= parts; i++) {
            double angle = Math.toRadians(arc.from() + sweep * i / parts);
            points.add(new Point(arc.centre().x() + arc.radius() * Math.cos(angle), arc.centre().y() + arc.radius() * Math.sin(angle)));
        }
        return points;
    }

    /** Areas, lines and arcs in their order: what is drawn later covers what was drawn before. The one in focus is edged last. */
    private void ground() {
        for (Shape shape : shown.drawing().shapes()) {
            if (shape instanceof Area area) {
                area(area);
            } else if (shape instanceof Line line) {
                List<Point> points = fit.at(line.points());
                stroke(points, false, width(line.pen()), line.stroke());
                if (line.arrow() && points.size() > 1) {
                    head(points.get(points.size() - 2), points.get(points.size() - 1), line.stroke() != Stroke.AIR);
                }
            } else if (shape instanceof Arc arc) {
                stroke(fit.at(arced(arc)), false, width(arc.pen()), arc.stroke());
            }
        }
        for (Shape shape : shown.drawing().shapes()) {
            if (isShown(shape) && (shape instanceof Area || shape instanceof Line || shape instanceof Arc)) {
                stroke(fit.at(points(shape)), shape instanceof Area, 3, Stroke.SOLID);
            }
        }
    }

    private void area(Area area) {
        List<Point> outline = fit.at(area.outline());
        if (outline.size() < 3) {
            return;
        }
        Path path = path(outline, true);
        if (area.hatch() != Hatch.NONE) {
            gc.setBackground(isShown(area) ? tint : paper);
            gc.fillPath(path);
            gc.setClipping(path);
            lines(0.7f, SWT.LINE_SOLID, null);
            gc.setBackground(ink);
            new Hatching(gc, outline).fill(area.hatch());
            gc.setClipping((Rectangle) null);
            gc.setBackground(paper);
        }
        path.dispose();
        stroke(outline, true, width(area.pen()), Stroke.SOLID);
    }

    private Path path(List<Point> points, boolean closed) {
        Path path = new Path(gc.getDevice());
        path.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo((float) point.x(), (float) point.y()));
        if (closed) {
            path.close();
        }
        return path;
    }

    private static float width(Pen pen) {
        return switch (pen) {
            case FINE -> 0.6f;
            case THIN -> 0.9f;
            case MEDIUM -> 1.4f;
            case HEAVY -> 2.2f;
        };
    }

    private void stroke(List<Point> points, boolean closed, float width, Stroke stroke) {
        if (points.size() < 2) {
            return;
        }
        switch (stroke) {
            case HIDDEN -> lines(width, SWT.LINE_CUSTOM, DASHED);
            case CENTRE -> lines(width, SWT.LINE_CUSTOM, CENTRED);
            case WATER -> lines(Math.max(width, 1.6f), SWT.LINE_CUSTOM, FLOWING);
            case AIR -> lines(Math.max(width, 1.2f), SWT.LINE_CUSTOM, BLOWING);
            case BREAK -> lines(width, SWT.LINE_DASHDOT, null);
            case SOLID -> lines(width, SWT.LINE_SOLID, null);
        }
        Path path = path(points, closed);
        gc.drawPath(path);
        path.dispose();
    }

    private void lines(float width, int style, float[] dashes) {
        gc.setLineAttributes(new LineAttributes(width, SWT.CAP_FLAT, SWT.JOIN_MITER, style, dashes, 0, 10));
    }

    /** The head of an arrow: filled, or open for air. */
    private void head(Point before, Point tip, boolean filled) {
        double size = Math.min(8, Math.max(3, Geometry.distance(before, tip)));
        List<Point> head = List.of(Geometry.moved(tip, before, tip, -size, size / 2.6), tip, Geometry.moved(tip, before, tip, -size,
            -size / 2.6));
        if (filled) {
            Path path = path(head, true);
            gc.setBackground(ink);
            gc.fillPath(path);
            gc.setBackground(paper);
            path.dispose();
        } else {
            stroke(head, false, 1.2f, Stroke.SOLID);
        }
    }

    /** Words and dimensions. */
    private void written(Shape shape) {
        if (shape instanceof Text text) {
            Point at = fit.at(text.at());
            int width = gc.textExtent(text.text()).x;
            double left = switch (text.anchor()) {
                case LEFT -> at.x();
                case MIDDLE -> at.x() - width / 2.0;
                case RIGHT -> at.x() - width;
            };
            words(text.text(), left, at.y() - row);
        } else if (shape instanceof Dimensioned dimension) {
            dimension(dimension);
        }
    }

    /** Words on a patch of paper, so that lines below don't run through them; kept inside the sheet. */
    private void words(String words, double left, double top) {
        int width = gc.textExtent(words).x;
        int x = (int) Math.max(sheet.x + 2, Math.min(left, sheet.x + sheet.width - width - 2));
        gc.drawText(words, x, (int) Math.round(top), false);
    }

    private void dimension(Dimensioned dimension) {
        Point a = fit.at(dimension.from());
        Point b = fit.at(dimension.to());
        // up is down on the screen, so that left of a line is right of it there
        double offset = -dimension.offset() * fit.scale();
        Point from = Geometry.moved(a, a, b, 0, offset);
        Point to = Geometry.moved(b, a, b, 0, offset);
        float thin = isShown(dimension) ? 2 : 0.7f;
        stroke(List.of(a, Geometry.moved(from, a, b, 0, Math.signum(offset) * 3)), false, thin, Stroke.SOLID);
        stroke(List.of(b, Geometry.moved(to, a, b, 0, Math.signum(offset) * 3)), false, thin, Stroke.SOLID);
        stroke(List.of(from, to), false, thin, Stroke.SOLID);
        for (Point end : List.of(from, to)) {
            stroke(List.of(new Point(end.x() - 3, end.y() + 3), new Point(end.x() + 3, end.y() - 3)), false, 1.4f, Stroke.SOLID);
        }
        Point middle = Geometry.between(from, to, 0.5);
        int width = gc.textExtent(dimension.text()).x;
        boolean fits = width + 12 < Geometry.distance(from, to);
        // what doesn't fit between the ticks stands beyond the line
        Point at = fits ? middle : Geometry.moved(middle, a, b, 0, Math.signum(offset) * (row / 2.0 + 5));
        if (Math.abs(to.x() - from.x()) >= Math.abs(to.y() - from.y())) {
            Rectangle box = new Rectangle((int) at.x() - width / 2 - 2, (int) at.y() - row / 2, width + 4, row);
            // without notes there is little room: what would run into other words is left to the large drawing
            if (shown.noted() || written.stream().noneMatch(box::intersects)) {
                words(dimension.text(), at.x() - width / 2.0, at.y() - row / 2.0);
                written.add(box);
            }
        } else {
            upright(dimension.text(), at, width, Math.signum(offset));
        }
    }

    /**
     * Words that run up, around a point, as beside an upright dimension. Where other words of this kind stand already, they move along
     * the dimension to the nearest place that is free, or beside it, and a line leads back to their dimension.
     */
    private void upright(String words, Point wished, int width, double side) {
        Point at = free(wished, width, side);
        written.add(box(at, width));
        double from = Math.abs(at.y() - wished.y()) - width / 2.0;
        if (from > 0 || Math.abs(at.x() - wished.x()) > 1) {
            Point near = new Point(at.x(), at.y() + Math.signum(wished.y() - at.y()) * width / 2.0);
            stroke(List.of(near, wished), false, 0.6f, Stroke.SOLID);
        }
        Transform before = new Transform(gc.getDevice());
        Transform turned = new Transform(gc.getDevice());
        gc.getTransform(before);
        gc.getTransform(turned);
        turned.translate((float) at.x(), (float) at.y());
        turned.rotate(-90);
        gc.setTransform(turned);
        gc.drawText(words, -width / 2, -row / 2, false);
        gc.setTransform(before);
        before.dispose();
        turned.dispose();
    }

    private Rectangle box(Point at, int width) {
        return new Rectangle((int) at.x() - row / 2, (int) at.y() - width / 2 - 3, row, width + 6);
    }

    private Point free(Point wished, int width, double side) {
        for (int column = 0; column < 3; column++) {
            double x = wished.x() + side * column * row;
            for (int step = 0; step * 4 < sheet.height / 2; step++) {
                for (int way : step == 0 ? new int[] {1} : new int[] {1, -1}) {
                    Point at = new Point(x, wished.y() + way * step * 4);
                    Rectangle box = box(at, width);
                    if (box.x > sheet.x && box.x + box.width < sheet.x + sheet.width && box.y > sheet.y + 2 * row
                        && box.y + box.height < sheet.y + sheet.height && written.stream().noneMatch(box::intersects)) {
                        return at;
                    }
                }
            }
        }
        return wished;
    }

    /** A column of notes, pushed apart in their order from the top. */
    private void notes(List<Note> column, Rectangle room, int x) {
        List<Note> order = column.stream().sorted(Comparator.comparingDouble((Note note) -> -note.leader().note().y())).toList();
        int[] tops = new int[order.size()];
        int next = room.y;
        for (int i = 0; i < tops.length; i++) {
            int wished = (int) fit.at(order.get(i).leader().note()).y() - order.get(i).height() / 2;
            tops[i] = Math.max(next, wished);
            next = tops[i] + order.get(i).height() + gap();
        }
        int last = room.y + room.height;
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], last - order.get(i).height());
            last = tops[i] - gap();
        }
        for (int i = 0; i < tops.length; i++) {
            note(order.get(i), x, tops[i]);
        }
    }

    private void note(Note note, int x, int top) {
        Leader leader = note.leader();
        int width = note.words().getWidth();
        int left = note.right() ? x + row : x;
        Point tip = fit.at(leader.tip());
        double level = top + row / 2.0;
        Point end = new Point(note.right() ? left - 3 : left + width + 3, level);
        Point elbow = new Point(note.right() ? end.x() - row * 0.6 : end.x() + row * 0.6, level);
        stroke(List.of(end, elbow, tip), false, isShown(leader) ? 2 : 0.9f, Stroke.SOLID);
        gc.setBackground(ink);
        gc.fillOval((int) Math.round(tip.x()) - 2, (int) Math.round(tip.y()) - 2, 5, 5);
        gc.setBackground(paper);
        note.words().draw(gc, left, top);
        if (!leader.component().isEmpty()) {
            notes.put(leader.component(), new Rectangle(left, top, width, note.height()));
        }
    }

    /** What something stands against is marked where it is drawn: by its shape beside a note that has the words, else by both. */
    private void badges() {
        for (String component : shown.components()) {
            List<Finding> against = shown.against(component);
            place(component).filter(place -> !against.isEmpty()).ifPresent(place -> {
                String words = notes.containsKey(component) ? Marks.shape(worst(against)) : Marks.counts(against);
                org.eclipse.swt.graphics.Point size = gc.textExtent(words);
                int x = (int) Math.round(place.x() - size.x / 2.0) - 3;
                int y = (int) Math.round(place.y() - size.y / 2.0);
                lines(1.6f, SWT.LINE_SOLID, null);
                gc.fillRectangle(x, y, size.x + 6, size.y);
                gc.drawRectangle(x, y, size.x + 6, size.y);
                gc.drawText(words, x + 3, y, true);
            });
        }
    }

    private static Finding.Kind worst(List<Finding> findings) {
        return findings.stream().map(Finding::kind).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** Where a component is marked: at the tip of its note, else in the middle of what is drawn of it first. */
    private Optional<Point> place(String component) {
        List<Shape> own = shown.drawing().shapes().stream().filter(shape -> shape.component().equals(component)).toList();
        return own.stream().filter(Leader.class::isInstance).map(shape -> fit.at(((Leader) shape).tip())).findFirst()
            .or(() -> own.stream().map(DrawingPainter::points).filter(points -> !points.isEmpty())
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
        List<Point> points = shape instanceof Leader || shape instanceof Text ? List.of() : fit.at(points(shape));
        if (shape instanceof Area area) {
            return area.hatch() != Hatch.NONE && Geometry.inside(points, at) || Geometry.near(points, true, at, NEAR);
        }
        return Geometry.near(points, false, at, NEAR);
    }
}

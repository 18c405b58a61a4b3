package reglet.details;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;

/** A drawing while it is being made. Lengths are real millimetres unless they are said to be on paper. */
final class Sheet {
    /** Heights and spaces on paper, in millimetres. */
    static final double TEXT = 2;
    static final double ROW = 6;
    private static final double PITCH = 5.2;

    final Facts facts;
    private final String id;
    private final String title;
    private final double scale;
    private final List<Shape> shapes = new ArrayList<>();
    private final Map<String, Point> tips = new LinkedHashMap<>();
    private final Set<String> thin = new LinkedHashSet<>();
    private final List<String> notes = new ArrayList<>();

    Sheet(Facts facts, String id, String title, double scale) {
        this.facts = facts;
        this.id = id;
        this.title = title;
        this.scale = scale;
    }

    /** A length on paper as real millimetres. */
    double paper(double mm) {
        return mm * scale;
    }

    /** Height that the notes of all layers and of {@code others} take: a detail at least as high has leaders that lie nearly level. */
    double notes(Stack stack, int others) {
        return paper(PITCH) * (stack.layers().size() + 2 + others);
    }

    void area(String component, Hatch hatch, List<Point> outline) {
        if (facts.has(component) || component.isEmpty()) {
            shapes.add(new Area(component, outline, hatch, component.isEmpty() || component.equals("framing") ? Pen.THIN : Pen.MEDIUM));
        } else {
            // a thing that the detail needs and nobody has decided belongs to no component yet
            shapes.add(new Area("", outline, hatch, Pen.THIN));
            note(facts.title(component) + ": not decided; drawn in outline.");
        }
    }

    void rect(String component, Hatch hatch, double left, double low, double right, double high) {
        if (right > left && high > low) {
            area(component, hatch, List.of(new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high)));
        }
    }

    /** An area thinner than can be seen, drawn {@link Stack#THIN} thick; says so under the drawing. */
    void thin(String component, double left, double low, double right, double high) {
        thin(component);
        rect(component, Hatch.METAL, left, low, right, high);
    }

    /** Notes that a component is drawn thicker than it is. */
    void thin(String component) {
        thin.add(component);
    }

    /** What fills a joint: an oval within a rectangle. */
    void oval(String component, Hatch hatch, double left, double low, double right, double high) {
        List<Point> outline = new ArrayList<>();
        int sides = 32;
        for (int i = 0; i < sides; i++) {
            double angle = 2 * Math.PI * i / sides;
            outline.add(new Point((left + right) / 2 + (right - left) / 2 * Math.cos(angle),
                (low + high) / 2 + (high - low) / 2 * Math.sin(angle)));
        }
        area(component, hatch, outline);
    }

    void line(String component, Pen pen, Stroke stroke, double... xy) {
        shapes.add(new Line(facts.has(component) ? component : "", points(xy), pen, stroke, false));
    }

    void circle(String component, double x, double y, double radius, Stroke stroke) {
        shapes.add(new Arc(component, new Point(x, y), radius, 0, 360, Pen.FINE, stroke));
    }

    void water(double... xy) {
        shapes.add(new Line("", points(xy), Pen.MEDIUM, Stroke.WATER, true));
    }

    void air(double... xy) {
        shapes.add(new Line("", points(xy), Pen.MEDIUM, Stroke.AIR, true));
    }

    /** A line where the drawing is cut off. */
    void cut(double... xy) {
        line("", Pen.THIN, Stroke.BREAK, xy);
    }

    void label(double x, double y, String text) {
        shapes.add(new Text("", new Point(x, y), text, TEXT, Anchor.MIDDLE));
    }

    /** Marks the place where a cavity is shut, or something is missing that water needs. */
    void mark(String component, double x, double y, String said) {
        double arm = paper(2);
        line(component, Pen.HEAVY, Stroke.SOLID, x - arm, y - arm, x + arm, y + arm);
        line(component, Pen.HEAVY, Stroke.SOLID, x - arm, y + arm, x + arm, y - arm);
        note("Marked with a cross: " + said);
    }

    /** Dimension between two heights; {@code side} is the distance on paper to the right of x, to the left when negative. */
    void upright(String component, double x, double low, double high, double side, String text) {
        dimension(component, new Point(x, low), new Point(x, high), -paper(side), text);
    }

    /** Dimension between two places at one height, drawn {@code rows} rows above it, below it when negative. */
    void across(String component, double y, double left, double right, double rows, String text) {
        dimension(component, new Point(left, y), new Point(right, y), paper(rows * ROW), text);
    }

    /** The offset is to the left of the way from the first point to the second. */
    private void dimension(String component, Point from, Point to, double offset, String text) {
        if (!text.isEmpty() && Math.hypot(to.x() - from.x(), to.y() - from.y()) > 1e-6) {
            shapes.add(new Dimensioned(facts.has(component) ? component : "", from, to, offset, text));
        }
    }

    /** Asks for a leader to a component; the first place counts. */
    void tip(String component, double x, double y) {
        if (facts.has(component)) {
            tips.putIfAbsent(component, new Point(x, y));
        }
    }

    void note(String sentence) {
        if (!notes.contains(sentence)) {
            notes.add(sentence);
        }
    }

    /** The finished drawing, its notes in a column to the right. */
    Drawing done(Stack stack) {
        stack.notes().forEach(this::note);
        List<String> drawn = thin.stream().filter(facts::has).map(component -> facts.title(component)
            + facts.length(component, "thickness").or(() -> facts.length(component, "film")).map(real -> " (" + real.text() + ")")
                .orElse("")).toList();
        if (!drawn.isEmpty()) {
            note("Too thin to be seen and so drawn " + Math.round(Stack.THIN) + " mm thick: " + String.join(", ", drawn) + ".");
        }
        shapes.addAll(Leaders.place(facts, tips, right() + paper(14), paper(PITCH)));
        return new Drawing(id, title, facts.wall(), scale, shapes, notes);
    }

    private double right() {
        return shapes.stream().mapToDouble(Sheet::right).max().orElse(0);
    }

    private static double right(Shape shape) {
        if (shape instanceof Area area) {
            return area.outline().stream().mapToDouble(Point::x).max().orElse(0);
        }
        if (shape instanceof Line line) {
            return line.points().stream().mapToDouble(Point::x).max().orElse(0);
        }
        if (shape instanceof Dimensioned dimension) {
            boolean upright = dimension.from().x() == dimension.to().x();
            return Math.max(dimension.from().x(), dimension.to().x()) + (upright ? Math.max(0, -dimension.offset()) : 0);
        }
        return Double.NEGATIVE_INFINITY;
    }

    private static List<Point> points(double... xy) {
        Point[] points = new Point[xy.length / 2];
        Arrays.setAll(points, i -> new Point(xy[2 * i], xy[2 * i + 1]));
        return List.of(points);
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.drafting.DrawingSheet.Curve;
import reglet.drafting.DrawingSheet.Dots;
import reglet.drafting.DrawingSheet.Kind;
import reglet.drafting.DrawingSheet.Mark;
import reglet.drafting.DrawingSheet.Solid;
import reglet.drafting.DrawingSheet.Strokes;
import reglet.drafting.DrawingSheet.Writing;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
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

/**
 * Lays a drawing out in a rectangle of paper: hatches become line work, dimensions and leaders become lines and text, and notes are
 * pushed apart. Lengths in millimetres on paper.
 */
final class DrawingLayout {
    /** Heights of capitals: on small sheets notes of 2 mm are common practice. */
    private static final double NOTE = 2;
    private static final double ARROW = 2.2;
    private static final double SHOULDER = 3;
    private static final double NOTE_GAP = 1.6;
    private static final double NARROWEST_COLUMN = 34;
    private static final double WIDEST_COLUMN = 72;
    /** What dimension lines and their texts need beyond their measured points. */
    private static final double DIMENSION_EDGE = 4;
    private static final double CLEAR = 0.5;

    /** A rectangle of paper. */
    record Room(double left, double low, double right, double high) {
        double width() {
            return right - left;
        }

        double height() {
            return high - low;
        }
    }

    /** A note at the end of its leader; {@code side} is 1 for notes right of what they name, -1 for notes left of it. */
    private record Note(Leader leader, int side, List<String> lines) {
        double height() {
            return lines.size() * NOTE * DrawingText.LEADING + NOTE_GAP;
        }
    }

    private final Drawing drawing;
    private final double scale;
    private final boolean keys;
    private final DrawingText text;
    private final Room room;
    private final Room reach;
    /** By side, the tip of a leader that is nearest to the notes, in real millimetres. */
    private final Map<Integer, Double> outermost = new HashMap<>();
    private final List<Note> notes = new ArrayList<>();
    private final boolean fits;
    private final Point origin;

    /** Hatches and outlines, then what is written on them; and what the hatches leave free. */
    private final List<Mark> ground = new ArrayList<>();
    private final List<Mark> ink = new ArrayList<>();
    private final List<List<Point>> clear = new ArrayList<>();

    DrawingLayout(Drawing drawing, double scale, boolean keys, Room room, DrawingText text) {
        this.drawing = drawing;
        this.scale = scale;
        this.keys = keys;
        this.text = text;
        this.room = room;
        List<Leader> leaders = drawing.shapes().stream().filter(Leader.class::isInstance).map(Leader.class::cast).toList();
        leaders.forEach(leader -> outermost.merge(side(leader), leader.tip().x(), side(leader) > 0 ? Math::max : Math::min));
        this.reach = reach();
        boolean left = leaders.stream().anyMatch(leader -> side(leader) < 0);
        boolean right = leaders.stream().anyMatch(leader -> side(leader) > 0);
        int sides = (left ? 1 : 0) + (right ? 1 : 0);
        double least = keys ? leaders.stream().mapToDouble(leader -> text.width(tag(leader), NOTE, true) + 4).max().orElse(0)
            : NARROWEST_COLUMN;
        double column = sides == 0 ? 0 : Math.max(least, Math.min(keys ? least : WIDEST_COLUMN, (room.width() - reach.width()) / sides));
        for (Leader leader : leaders) {
            notes.add(new Note(leader, side(leader),
                keys ? List.of(tag(leader)) : text.lines(words(leader), NOTE, false, column + within(leader) - 1)));
        }
        this.fits = reach.width() + sides * column <= room.width() && reach.height() <= room.height()
            && height(1) <= room.height() && height(-1) <= room.height();
        // The drawing and the texts beside it stand in the middle of the room together.
        double before = beside(-1);
        double start = room.left() + (room.width() - before - reach.width() - beside(1)) / 2 + before;
        this.origin = new Point(start - reach.left(), room.low() + (room.height() - reach.height()) / 2 - reach.low());
    }

    boolean fits() {
        return fits;
    }

    Point origin() {
        return origin;
    }

    /** Keys with their texts, each once, in the order of the leaders. */
    static Map<String, String> legend(Drawing drawing) {
        Map<String, String> legend = new LinkedHashMap<>();
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Leader leader && !leader.key().isEmpty()) {
                legend.putIfAbsent(leader.key(), leader.text());
            }
        }
        return legend;
    }

    /** Paths that the drawing shows. */
    static Set<Stroke> paths(Drawing drawing) {
        Set<Stroke> paths = EnumSet.noneOf(Stroke.class);
        for (Shape shape : drawing.shapes()) {
            Stroke stroke = shape instanceof Line line ? line.stroke() : shape instanceof Arc arc ? arc.stroke() : Stroke.SOLID;
            if (stroke == Stroke.WATER || stroke == Stroke.AIR) {
                paths.add(stroke);
            }
        }
        return paths;
    }

    List<Mark> marks() {
        notes(1);
        notes(-1);
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Text written) {
                write(written.component(), Kind.TEXT, at(written.at()), written.text(), written.height(), written.anchor(), 0, false);
            } else if (shape instanceof Dimensioned dimension) {
                dimension(dimension);
            }
        }
        for (int i = 0; i < drawing.shapes().size(); i++) {
            Shape shape = drawing.shapes().get(i);
            if (shape instanceof Area area) {
                area(area, drawing.shapes().subList(i + 1, drawing.shapes().size()));
            } else if (shape instanceof Line line) {
                line(line);
            } else if (shape instanceof Arc arc) {
                ground.add(new Curve(arc.component(), Kind.OUTLINE, Hatch.NONE, at(arc.centre()), arc.radius() / scale, arc.from(),
                    sweep(arc), arc.pen(), arc.stroke()));
            }
        }
        List<Mark> marks = new ArrayList<>(ground);
        marks.addAll(ink);
        return marks;
    }

    private static double sweep(Arc arc) {
        double sweep = arc.to() - arc.from();
        return sweep <= 0 ? sweep + 360 : Math.min(360, sweep);
    }

    private void area(Area area, List<Shape> later) {
        List<Point> free = area.outline().stream().map(this::real).toList();
        Hatches.Fill fill = Hatches.of(area.hatch(), free);
        List<Point> outline = area.outline().stream().map(this::at).toList();
        if (fill.solid()) {
            ground.add(new Solid(area.component(), Kind.PATTERN, area.hatch(), outline, Stroke.SOLID));
        }
        // Where areas overlap the later one shows; no format but paper can cover what lies below.
        List<List<Point>> holes = new ArrayList<>(clear);
        for (Shape shape : later) {
            if (shape instanceof Area other && other.hatch() != Hatch.NONE) {
                holes.add(other.outline().stream().map(this::at).toList());
            }
        }
        List<List<Point>> lines = fill.lines().stream().map(line -> line.stream().map(this::shifted).toList()).toList();
        List<Point> dots = fill.dots().stream().map(this::shifted).toList();
        for (List<Point> hole : holes) {
            lines = lines.stream().flatMap(line -> outside(line, hole).stream()).toList();
            dots = dots.stream().filter(dot -> !Polygons.inside(hole, dot)).toList();
        }
        if (!lines.isEmpty()) {
            ground.add(new Strokes(area.component(), Kind.PATTERN, area.hatch(), lines, false, Pen.FINE, Stroke.SOLID));
        }
        if (!dots.isEmpty()) {
            ground.add(new Dots(area.component(), Kind.PATTERN, area.hatch(), dots, fill.dot()));
        }
        ground.add(new Strokes(area.component(), Kind.OUTLINE, area.hatch(), List.of(outline), true, area.pen(), Stroke.SOLID));
    }

    /** Small closed signs aren't cut: they stay whole or go. */
    private static List<List<Point>> outside(List<Point> line, List<Point> hole) {
        List<List<Point>> parts = Polygons.cut(line, hole, false);
        boolean sign = line.size() > 3 && line.get(0).equals(line.get(line.size() - 1));
        return sign && !parts.equals(List.of(line)) ? List.of() : parts;
    }

    private void line(Line line) {
        List<Point> points = line.points().stream().map(this::at).toList();
        if (points.size() < 2) {
            return;
        }
        if (line.stroke() == Stroke.BREAK) {
            points = broken(points);
        }
        if (line.arrow()) {
            points = headed(ground, line.component(), Kind.OUTLINE, points, line.stroke());
        }
        ground.add(new Strokes(line.component(), Kind.OUTLINE, Hatch.NONE, List.of(points), false, line.pen(), line.stroke()));
    }

    /** The same points with the sign of a break in the middle of the longest segment. */
    private static List<Point> broken(List<Point> points) {
        int longest = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            if (Polygons.distance(points.get(i), points.get(i + 1)) > Polygons.distance(points.get(longest), points.get(longest + 1))) {
                longest = i;
            }
        }
        Point a = points.get(longest);
        Point b = points.get(longest + 1);
        double length = Polygons.distance(a, b);
        double half = Math.min(1.2, length / 4);
        Point middle = Polygons.between(a, b, 0.5);
        List<Point> broken = new ArrayList<>(points.subList(0, longest + 1));
        for (double[] step : new double[][] {{-half, 0}, {-half / 2, 2 * half}, {half / 2, -2 * half}, {half, 0}}) {
            broken.add(moved(middle, a, b, step[0], step[1]));
        }
        broken.addAll(points.subList(longest + 1, points.size()));
        return broken;
    }

    /** A point moved along a line from a to b and to its left. */
    private static Point moved(Point point, Point a, Point b, double along, double left) {
        double length = Polygons.distance(a, b);
        double x = length == 0 ? 1 : (b.x() - a.x()) / length;
        double y = length == 0 ? 0 : (b.y() - a.y()) / length;
        return new Point(point.x() + along * x - left * y, point.y() + along * y + left * x);
    }

    /** Puts a head on the end of a line and gives back the line without what lies under the head. Air has an open head. */
    static List<Point> headed(List<Mark> marks, String component, Kind kind, List<Point> points, Stroke stroke) {
        Point tip = points.get(points.size() - 1);
        Point before = points.get(points.size() - 2);
        double size = Math.min(ARROW, Polygons.distance(before, tip));
        Point upper = moved(tip, before, tip, -size, size / 6);
        Point lower = moved(tip, before, tip, -size, -size / 6);
        if (stroke == Stroke.AIR) {
            upper = moved(tip, before, tip, -size, size / 2.5);
            lower = moved(tip, before, tip, -size, -size / 2.5);
            marks.add(new Strokes(component, kind, Hatch.NONE, List.of(List.of(upper, tip, lower)), false, Pen.MEDIUM, Stroke.SOLID));
            return points;
        }
        if (stroke == Stroke.WATER) {
            upper = moved(tip, before, tip, -size, size / 3);
            lower = moved(tip, before, tip, -size, -size / 3);
        }
        marks.add(new Solid(component, kind, Hatch.NONE, List.of(tip, upper, lower), stroke));
        List<Point> shortened = new ArrayList<>(points);
        shortened.set(points.size() - 1, moved(tip, before, tip, -0.8 * size, 0));
        return shortened;
    }

    private void notes(int side) {
        List<Note> column = notes.stream().filter(note -> note.side() == side).toList();
        List<Double> tops = NoteColumn.apart(column.stream().map(note -> shifted(noted(note.leader())).y() + NOTE / 2).toList(),
            column.stream().map(Note::height).toList(), room.low(), room.high());
        for (int i = 0; i < column.size(); i++) {
            note(column.get(i), tops.get(i));
        }
    }

    private void note(Note note, double top) {
        Leader leader = note.leader();
        Point end = new Point(shifted(noted(leader)).x(), top - NOTE / 2);
        Point elbow = new Point(end.x() - note.side() * SHOULDER, end.y());
        Point tip = at(leader.tip());
        List<Point> line = new ArrayList<>(List.of(end));
        if ((elbow.x() - tip.x()) * note.side() > 0) {
            line.add(elbow);
        }
        line.add(tip);
        List<Point> shown = headed(ink, leader.component(), Kind.NOTE, line, Stroke.SOLID);
        ink.add(new Strokes(leader.component(), Kind.NOTE, Hatch.NONE, List.of(shown), false, Pen.THIN, Stroke.SOLID));
        if (keys) {
            double width = text.width(note.lines().get(0), NOTE, true) + 2;
            double left = note.side() > 0 ? end.x() : end.x() - width;
            ink.add(new Strokes(leader.component(), Kind.NOTE, Hatch.NONE,
                List.of(box(left, end.y() - 0.9 * NOTE, left + width, end.y() + 0.9 * NOTE)), true, Pen.THIN, Stroke.SOLID));
            write(leader.component(), Kind.NOTE, new Point(left + width / 2, end.y() - NOTE / 2), note.lines().get(0), NOTE, Anchor.MIDDLE,
                0, true);
            return;
        }
        double base = top - NOTE;
        for (String words : note.lines()) {
            write(leader.component(), Kind.NOTE, new Point(end.x() + note.side(), base), words, NOTE,
                note.side() > 0 ? Anchor.LEFT : Anchor.RIGHT, 0, false);
            base -= NOTE * DrawingText.LEADING;
        }
    }

    private void dimension(Dimensioned shape) {
        Point a = at(shape.from());
        Point b = at(shape.to());
        double offset = shape.offset() / drawing.scale();
        double out = offset < 0 ? -1 : 1;
        double length = Polygons.distance(a, b);
        Point from = moved(a, a, b, 0, offset);
        Point to = moved(b, a, b, 0, offset);
        double angle = StrictMath.toDegrees(StrictMath.atan2(b.y() - a.y(), b.x() - a.x()));
        // Read from below or from the right.
        double reading = angle > 90.001 ? angle - 180 : angle < -89.999 ? angle + 180 : angle;
        double width = text.width(shape.text(), NOTE, false);
        boolean inside = width + 1 <= length;
        double over = inside ? 1.2 : 2.4 + width;
        double gap = Math.min(1.5, Math.abs(offset));
        ink.add(new Strokes(shape.component(), Kind.DIMENSION, Hatch.NONE, List.of(
            List.of(moved(a, a, b, 0, out * gap), moved(from, a, b, 0, out * 1.5)),
            List.of(moved(b, a, b, 0, out * gap), moved(to, a, b, 0, out * 1.5)),
            List.of(moved(from, a, b, -1.2, 0), moved(to, a, b, over, 0))), false, Pen.FINE, Stroke.SOLID));
        ink.add(new Strokes(shape.component(), Kind.DIMENSION, Hatch.NONE, List.of(
            List.of(moved(from, a, b, -0.9, -0.9), moved(from, a, b, 0.9, 0.9)),
            List.of(moved(to, a, b, -0.9, -0.9), moved(to, a, b, 0.9, 0.9))), false, Pen.MEDIUM, Stroke.SOLID));
        Point middle = inside ? Polygons.between(from, to, 0.5) : moved(to, a, b, 1.8 + width / 2, 0);
        double up = StrictMath.toRadians(reading + 90);
        write(shape.component(), Kind.DIMENSION, new Point(middle.x() + 0.8 * StrictMath.cos(up), middle.y() + 0.8 * StrictMath.sin(up)),
            shape.text(), NOTE, Anchor.MIDDLE, reading, false);
    }

    private void write(String component, Kind kind, Point at, String words, double height, Anchor anchor, double angle, boolean strong) {
        ink.add(new Writing(component, kind, at, words, height, anchor, angle, strong));
        double width = text.width(words, height, strong);
        double start = switch (anchor) {
            case LEFT -> 0;
            case MIDDLE -> -width / 2;
            case RIGHT -> -width;
        };
        double turn = StrictMath.toRadians(angle);
        Point ahead = new Point(at.x() + StrictMath.cos(turn), at.y() + StrictMath.sin(turn));
        clear.add(box(start - CLEAR, -CLEAR - 0.3 * height, start + width + CLEAR, height + CLEAR).stream()
            .map(corner -> moved(at, at, ahead, corner.x(), corner.y())).toList());
    }

    static List<Point> box(double left, double low, double right, double high) {
        return List.of(new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high));
    }

    /** How far a note begins within the reach of the drawing. */
    private double within(Leader leader) {
        return side(leader) > 0 ? reach.right() - noted(leader).x() : noted(leader).x() - reach.left();
    }

    /** Width that the notes of a side take beyond the reach of the drawing. */
    private double beside(int side) {
        return notes.stream().filter(note -> note.side() == side)
            .mapToDouble(note -> note.lines().stream().mapToDouble(line -> text.width(line, NOTE, keys)).max().orElse(0) + 2
                - within(note.leader()))
            .reduce(0, Math::max);
    }

    private double height(int side) {
        return notes.stream().filter(note -> note.side() == side).mapToDouble(Note::height).sum();
    }

    private static int side(Leader leader) {
        return leader.note().x() < leader.tip().x() ? -1 : 1;
    }

    private static String tag(Leader leader) {
        return leader.key().isEmpty() ? leader.text() : leader.key();
    }

    private static String words(Leader leader) {
        return leader.text().isEmpty() ? leader.key() : leader.text();
    }

    /**
     * Where a note begins, before notes are pushed apart. On a drawing made smaller than it was meant to be, notes and dimension lines
     * keep their distances on paper, as their texts keep their height.
     */
    private Point noted(Leader leader) {
        double edge = outermost.get(side(leader));
        return new Point(edge / scale + (leader.note().x() - edge) / drawing.scale(), leader.note().y() / scale);
    }

    private Point real(Point point) {
        return new Point(point.x() / scale, point.y() / scale);
    }

    private Point shifted(Point point) {
        return new Point(point.x() + origin.x(), point.y() + origin.y());
    }

    private Point at(Point point) {
        return shifted(real(point));
    }

    /** What the drawing covers, its notes' texts aside. */
    private Room reach() {
        List<Point> points = new ArrayList<>();
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Line line) {
                line.points().forEach(point -> points.add(real(point)));
            } else if (shape instanceof Area area) {
                area.outline().forEach(point -> points.add(real(point)));
            } else if (shape instanceof Arc arc) {
                for (int k = 0; k <= 24; k++) {
                    double angle = StrictMath.toRadians(arc.from() + sweep(arc) * k / 24);
                    points.add(real(new Point(arc.centre().x() + arc.radius() * StrictMath.cos(angle),
                        arc.centre().y() + arc.radius() * StrictMath.sin(angle))));
                }
            } else if (shape instanceof Text written) {
                double width = text.width(written.text(), written.height(), false);
                double left = written.anchor() == Anchor.LEFT ? 0 : written.anchor() == Anchor.MIDDLE ? width / 2 : width;
                Point at = real(written.at());
                points.add(new Point(at.x() - left, at.y()));
                points.add(new Point(at.x() - left + width, at.y() + written.height()));
            } else if (shape instanceof Leader leader) {
                points.add(real(leader.tip()));
                points.add(noted(leader));
            } else if (shape instanceof Dimensioned dimension) {
                Point a = real(dimension.from());
                Point b = real(dimension.to());
                double width = text.width(dimension.text(), NOTE, false);
                double over = width + 1 <= Polygons.distance(a, b) ? 0 : width;
                double offset = dimension.offset() / drawing.scale() + (dimension.offset() < 0 ? -DIMENSION_EDGE : DIMENSION_EDGE);
                points.add(a);
                points.add(b);
                points.add(moved(a, a, b, -DIMENSION_EDGE / 2, offset));
                points.add(moved(b, a, b, DIMENSION_EDGE / 2 + over, offset));
            }
        }
        var x = points.stream().mapToDouble(Point::x).summaryStatistics();
        var y = points.stream().mapToDouble(Point::y).summaryStatistics();
        return points.isEmpty() ? new Room(0, 0, 0, 0) : new Room(x.getMin(), y.getMin(), x.getMax(), y.getMax());
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Drawing.Point;

/** Plane geometry on closed outlines; a point is inside by the even-odd rule. Lengths in the unit of the points. */
final class Polygons {
    /** Far below what any pen draws, far above rounding. */
    private static final double TINY = 1e-9;

    private Polygons() {
    }

    static boolean inside(List<Point> outline, Point point) {
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            if (a.y() > point.y() != b.y() > point.y()
                && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** The parts of a line of points that lie inside, or outside, of an outline, in order. */
    static List<List<Point>> cut(List<Point> line, List<Point> outline, boolean keepInside) {
        List<List<Point>> parts = new ArrayList<>();
        List<Point> part = new ArrayList<>();
        for (int i = 0; i + 1 < line.size(); i++) {
            Point a = line.get(i);
            Point b = line.get(i + 1);
            List<Double> stops = crossings(a, b, outline);
            for (int s = 0; s + 1 < stops.size(); s++) {
                double from = stops.get(s);
                double to = stops.get(s + 1);
                if (to - from < TINY) {
                    continue;
                }
                if (inside(outline, between(a, b, (from + to) / 2)) == keepInside) {
                    if (part.isEmpty()) {
                        part.add(between(a, b, from));
                    }
                    part.add(between(a, b, to));
                } else if (!part.isEmpty()) {
                    parts.add(List.copyOf(part));
                    part.clear();
                }
            }
        }
        if (!part.isEmpty()) {
            parts.add(List.copyOf(part));
        }
        return parts;
    }

    /** Where a segment crosses an outline, as parts of its length, with its ends. */
    private static List<Double> crossings(Point a, Point b, List<Point> outline) {
        List<Double> stops = new ArrayList<>(List.of(0.0, 1.0));
        for (int i = 0; i < outline.size(); i++) {
            Point c = outline.get(i);
            Point d = outline.get((i + 1) % outline.size());
            double across = cross(b.x() - a.x(), b.y() - a.y(), d.x() - c.x(), d.y() - c.y());
            if (Math.abs(across) > TINY * TINY) {
                double along = cross(c.x() - a.x(), c.y() - a.y(), d.x() - c.x(), d.y() - c.y()) / across;
                double edge = cross(c.x() - a.x(), c.y() - a.y(), b.x() - a.x(), b.y() - a.y()) / across;
                if (edge >= -TINY && edge <= 1 + TINY && along > 0 && along < 1) {
                    stops.add(along);
                }
            }
        }
        stops.sort(null);
        return stops;
    }

    /** The ends themselves for 0 and 1, so that a line that isn't cut is given back as it was. */
    static Point between(Point a, Point b, double part) {
        return part == 1 ? b : new Point(a.x() + part * (b.x() - a.x()), a.y() + part * (b.y() - a.y()));
    }

    static double distance(Point a, Point b) {
        return StrictMath.hypot(b.x() - a.x(), b.y() - a.y());
    }

    /** Distance of a point from the nearest edge of an outline. */
    static double distance(List<Point> outline, Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            double square = (b.x() - a.x()) * (b.x() - a.x()) + (b.y() - a.y()) * (b.y() - a.y());
            double along = square == 0 ? 0 : ((point.x() - a.x()) * (b.x() - a.x()) + (point.y() - a.y()) * (b.y() - a.y())) / square;
            least = Math.min(least, distance(point, between(a, b, Math.max(0, Math.min(1, along)))));
        }
        return least;
    }

    static double area(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            twice += cross(a.x(), a.y(), b.x(), b.y());
        }
        return Math.abs(twice) / 2;
    }

    /** Length of all edges. */
    static double edge(List<Point> outline) {
        double edge = 0;
        for (int i = 0; i < outline.size(); i++) {
            edge += distance(outline.get(i), outline.get((i + 1) % outline.size()));
        }
        return edge;
    }

    static Point middle(List<Point> outline) {
        return new Point(outline.stream().mapToDouble(Point::x).average().orElse(0),
            outline.stream().mapToDouble(Point::y).average().orElse(0));
    }

    /** The direction of the longest edge in radians. */
    static double run(List<Point> outline) {
        double longest = -1;
        double run = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            if (distance(a, b) > longest + TINY) {
                longest = distance(a, b);
                run = StrictMath.atan2(b.y() - a.y(), b.x() - a.x());
            }
        }
        return run;
    }

    private static double cross(double ax, double ay, double bx, double by) {
        return ax * by - ay * bx;
    }
}

package reglet.workbench;

import java.util.List;

import reglet.model.Drawing.Point;

/** What painting and pointing need of plane geometry. */
final class Geometry {

    private Geometry() {
    }

    static double distance(Point a, Point b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    static Point between(Point a, Point b, double share) {
        return new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }

    /** A point moved along the direction from a to b, and to the left of it where y runs up. */
    static Point moved(Point point, Point a, Point b, double along, double left) {
        double length = distance(a, b);
        double x = length == 0 ? 1 : (b.x() - a.x()) / length;
        double y = length == 0 ? 0 : (b.y() - a.y()) / length;
        return new Point(point.x() + along * x - left * y, point.y() + along * y + left * x);
    }

    /** The middle of some points. */
    static Point middle(List<Point> points) {
        return new Point(points.stream().mapToDouble(Point::x).average().orElse(0),
            points.stream().mapToDouble(Point::y).average().orElse(0));
    }

    static boolean inside(List<Point> outline, Point at) {
        boolean inside = false;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            Point a = outline.get(i);
            Point b = outline.get(j);
            if (a.y() > at.y() != b.y() > at.y() && at.x() < (b.x() - a.x()) * (at.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether a point lies within a distance of a run of lines. */
    static boolean near(List<Point> points, boolean closed, Point at, double within) {
        for (int i = closed ? 0 : 1; i < points.size(); i++) {
            if (distance(points.get(i == 0 ? points.size() - 1 : i - 1), points.get(i), at) <= within) {
                return true;
            }
        }
        return false;
    }

    /** Distance of a point from the line between two others. */
    private static double distance(Point a, Point b, Point at) {
        double length = distance(a, b);
        if (length == 0) {
            return distance(a, at);
        }
        double share = ((at.x() - a.x()) * (b.x() - a.x()) + (at.y() - a.y()) * (b.y() - a.y())) / (length * length);
        return distance(between(a, b, Math.max(0, Math.min(1, share))), at);
    }

    /** Twice the area over the length of the edge: of a strip, its thickness. */
    static double thickness(List<Point> outline) {
        double area = 0;
        double edge = 0;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            Point a = outline.get(j);
            Point b = outline.get(i);
            area += a.x() * b.y() - b.x() * a.y();
            edge += distance(a, b);
        }
        return edge == 0 ? 0 : Math.abs(area) / edge;
    }

    /** The direction of the longest edge, in radians. */
    static double run(List<Point> outline) {
        Point from = outline.get(outline.size() - 1);
        Point to = outline.get(0);
        for (int i = 1; i < outline.size(); i++) {
            if (distance(outline.get(i - 1), outline.get(i)) > distance(from, to) + 1e-9) {
                from = outline.get(i - 1);
                to = outline.get(i);
            }
        }
        return Math.atan2(to.y() - from.y(), to.x() - from.x());
    }
}

package reglet.details;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Drawing.Point;

/**
 * The lower or upper end of a layer: a line from left to right, level beyond its ends. Two points one above the other make a step.
 */
record Edge(List<Point> points) {

    static Edge level(double y) {
        return new Edge(List.of(new Point(0, y)));
    }

    /** Height at x; at a step, that of its {@code right} or left side. */
    double at(double x, boolean right) {
        Point before = points.get(0);
        for (Point point : points) {
            if (point.x() > x || point.x() == x && !right) {
                double run = point.x() - before.x();
                return run <= 0 ? point.y() : before.y() + (point.y() - before.y()) * (x - before.x()) / run;
            }
            before = point;
        }
        return before.y();
    }

    /** The line between two places, from left to right. */
    List<Point> between(double left, double right) {
        List<Point> line = new ArrayList<>();
        line.add(new Point(left, at(left, true)));
        points.stream().filter(point -> point.x() > left && point.x() < right).forEach(line::add);
        line.add(new Point(right, at(right, false)));
        return line;
    }
}

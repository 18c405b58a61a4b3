package reglet.workbench;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Rectangle;

import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Text;

/** Which points shapes are made of, in real millimetres. */
final class Outlines {
    private Outlines() {
    }

    /** The points of a shape, in their order. */
    static List<Point> points(Shape shape) {
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

    /** How shapes come into a rectangle, with a margin for words that stand out at the edge. */
    static Fit fit(List<Shape> shapes, Rectangle room, int margin) {
        double[] reach = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Shape shape : shapes) {
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
        Rectangle inside = new Rectangle(room.x + margin, room.y + margin, Math.max(1, room.width - 2 * margin),
            Math.max(1, room.height - 2 * margin));
        return Fit.into(inside, new Point(reach[0], reach[1]), new Point(reach[2], reach[3]));
    }
}

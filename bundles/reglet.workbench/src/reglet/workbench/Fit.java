package reglet.workbench;

import java.util.List;

import org.eclipse.swt.graphics.Rectangle;

import reglet.model.Drawing.Point;

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

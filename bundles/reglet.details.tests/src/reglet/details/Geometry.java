package reglet.details;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Point;

/** Measures drawings. */
final class Geometry {
    private Geometry() {
    }

    static List<Drawing.Area> areas(Drawing drawing) {
        return all(drawing, Drawing.Area.class);
    }

    static <T> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    static Area area(Drawing.Area shape) {
        Path2D path = new Path2D.Double();
        List<Point> outline = shape.outline();
        path.moveTo(outline.get(0).x(), outline.get(0).y());
        outline.subList(1, outline.size()).forEach(point -> path.lineTo(point.x(), point.y()));
        path.closePath();
        return new Area(path);
    }

    static Area all(Drawing drawing, String component) {
        Area all = new Area();
        areas(drawing).stream().filter(shape -> shape.component().equals(component)).forEach(shape -> all.add(area(shape)));
        return all;
    }

    /** Size of an area in square millimetres. */
    static double size(Area area) {
        double twice = 0;
        double[] at = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator path = area.getPathIterator(null, 0.1); !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            double nextX = kind == PathIterator.SEG_CLOSE ? startX : at[0];
            double nextY = kind == PathIterator.SEG_CLOSE ? startY : at[1];
            if (kind == PathIterator.SEG_MOVETO) {
                startX = nextX;
                startY = nextY;
            } else {
                twice += x * nextY - nextX * y;
            }
            x = nextX;
            y = nextY;
        }
        return Math.abs(twice) / 2;
    }

    /** Every pair of solids that lie in each other by more than a speck. */
    static List<String> overlaps(Drawing drawing) {
        List<String> found = new ArrayList<>();
        List<Drawing.Area> shapes = areas(drawing);
        List<Area> areas = shapes.stream().map(Geometry::area).toList();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                if (!shapes.get(i).component().equals(shapes.get(j).component())
                    && areas.get(i).getBounds2D().intersects(areas.get(j).getBounds2D())) {
                    Area both = new Area(areas.get(i));
                    both.intersect(areas.get(j));
                    double size = size(both);
                    if (size > 0.05) {
                        found.add(drawing.id() + ": '" + shapes.get(i).component() + "' and '" + shapes.get(j).component() + "' share "
                            + size + " mm² at " + both.getBounds2D());
                    }
                }
            }
        }
        return found;
    }

    static double length(Dimensioned dimension) {
        return Math.hypot(dimension.to().x() - dimension.from().x(), dimension.to().y() - dimension.from().y());
    }

    static boolean cross(Leader a, Leader b) {
        return side(a.tip(), a.note(), b.tip()) * side(a.tip(), a.note(), b.note()) < 0
            && side(b.tip(), b.note(), a.tip()) * side(b.tip(), b.note(), a.note()) < 0;
    }

    private static double side(Point from, Point to, Point of) {
        return (to.x() - from.x()) * (of.y() - from.y()) - (to.y() - from.y()) * (of.x() - from.x());
    }

    private static final double CELL = 0.4;

    /**
     * Share of the cavity from which the outside can be reached without passing through a solid. The cuts of the drawing are walls; the
     * outside is what lies right of all units of the veneer.
     */
    static double drained(Drawing drawing) {
        List<Drawing.Area> shapes = areas(drawing);
        Rectangle2D bounds = new Rectangle2D.Double();
        bounds.setRect(area(shapes.get(0)).getBounds2D());
        shapes.forEach(shape -> bounds.add(area(shape).getBounds2D()));
        int wide = (int) ((bounds.getWidth() + 20) / CELL);
        int high = (int) (bounds.getHeight() / CELL);
        boolean[] solid = new boolean[wide * high];
        boolean[] cavity = new boolean[wide * high];
        for (Drawing.Area shape : shapes) {
            Area area = area(shape);
            Rectangle2D box = area.getBounds2D();
            for (int row = Math.max(0, (int) ((box.getMinY() - bounds.getMinY()) / CELL) - 1);
                row < Math.min(high, (box.getMaxY() - bounds.getMinY()) / CELL + 1); row++) {
                for (int column = Math.max(0, (int) ((box.getMinX() - bounds.getMinX()) / CELL) - 1);
                    column < Math.min(wide, (box.getMaxX() - bounds.getMinX()) / CELL + 1); column++) {
                    if (area.contains(bounds.getMinX() + (column + 0.5) * CELL, bounds.getMinY() + (row + 0.5) * CELL)) {
                        (shape.hatch() == Hatch.MAT ? cavity : solid)[row * wide + column] = true;
                    }
                }
            }
        }
        boolean[] reached = new boolean[wide * high];
        Deque<Integer> next = new ArrayDeque<>();
        for (int row = 0; row < high; row++) {
            next.add(row * wide + wide - 1);
        }
        while (!next.isEmpty()) {
            int cell = next.poll();
            if (reached[cell] || solid[cell]) {
                continue;
            }
            reached[cell] = true;
            int row = cell / wide;
            int column = cell % wide;
            if (row > 0) {
                next.add(cell - wide);
            }
            if (row < high - 1) {
                next.add(cell + wide);
            }
            if (column > 0) {
                next.add(cell - 1);
            }
            if (column < wide - 1) {
                next.add(cell + 1);
            }
        }
        int all = 0;
        int out = 0;
        for (int cell = 0; cell < cavity.length; cell++) {
            if (cavity[cell] && !solid[cell]) {
                all++;
                out += reached[cell] ? 1 : 0;
            }
        }
        return all == 0 ? 0 : (double) out / all;
    }
}

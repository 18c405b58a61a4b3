package reglet.workbench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;

import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;

/** Lines of a drawing in the screen's own points, which need not be whole, so that any scale of the screen draws them sharp. */
final class Strokes {
    private static final float[] DASHED = {5, 3};
    private static final float[] CENTRED = {11, 3, 2, 3};
    private static final float[] FLOWING = {9, 3};
    private static final float[] BLOWING = {3, 3};

    private final GC gc;
    private final Color ink;
    private final Color paper;

    /** @param paper the colour that is put back as background once something was filled with ink */
    Strokes(GC gc, Color ink, Color paper) {
        this.gc = gc;
        this.ink = ink;
        this.paper = paper;
    }

    /** A run of points as a path; whoever asks for it disposes of it. */
    Path path(List<Point> points, boolean closed) {
        Path path = new Path(gc.getDevice());
        path.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo((float) point.x(), (float) point.y()));
        if (closed) {
            path.close();
        }
        return path;
    }

    /** How thick a pen is, in points. */
    static float width(Pen pen) {
        return switch (pen) {
            case FINE -> 0.6f;
            case THIN -> 0.9f;
            case MEDIUM -> 1.4f;
            case HEAVY -> 2.2f;
        };
    }

    void draw(List<Point> points, boolean closed, float width, Stroke stroke) {
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

    void lines(float width, int style, float[] dashes) {
        gc.setLineAttributes(new LineAttributes(width, SWT.CAP_FLAT, SWT.JOIN_MITER, style, dashes, 0, 10));
    }

    /** The head of an arrow: filled, or open for air. */
    void head(Point before, Point tip, boolean filled) {
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
            draw(head, false, 1.2f, Stroke.SOLID);
        }
    }

    /** The end of a line that points at something. */
    void dot(Point at) {
        gc.setBackground(ink);
        gc.fillOval((int) Math.round(at.x()) - 2, (int) Math.round(at.y()) - 2, 5, 5);
        gc.setBackground(paper);
    }
}

package reglet.workbench;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;

import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;

/**
 * The usual fills of sections on a screen, in black on white: each material has a pattern of its own. The caller has clipped the
 * drawing to the outline. Distances in points; patterns are fixed to the canvas, so that neighbours of one material run on.
 */
final class Hatching {
    /** What is thinner than this would only be a smear of its pattern. */
    private static final double THIN = 3.5;
    private static final double SLANT = Math.PI / 4;

    private final GC gc;
    private final List<Point> outline;
    private final double thickness;
    private final double run;

    Hatching(GC gc, List<Point> outline) {
        this.gc = gc;
        this.outline = outline;
        this.thickness = Geometry.thickness(outline);
        this.run = Geometry.run(outline);
    }

    void fill(Hatch hatch) {
        if (thickness < THIN) {
            if (hatch == Hatch.METAL || hatch == Hatch.MAT || hatch == Hatch.SEALANT) {
                solid();
            }
            return;
        }
        switch (hatch) {
            case EARTH -> {
                rows(SLANT, 9, 0, 9, 7);
                rows(-SLANT, 9, 4, 7, 9);
            }
            case CONCRETE -> {
                dots(7, 1.1, false);
                dots(23, 5, true);
            }
            case WOOD -> wood();
            case BATT -> wave(Math.max(8, thickness * 0.5), true);
            case RIGID_INSULATION -> crossed(7);
            case METAL -> {
                rows(SLANT, 5, 0, 0, 0);
                rows(SLANT, 5, 1.5, 0, 0);
            }
            case MORTAR -> dots(4.5, 1, false);
            case STONE -> {
                rows(SLANT, 12, 0, 0, 0);
                rows(SLANT, 12, 6, 8, 5);
            }
            case GYPSUM -> dots(8, 1, false);
            case PLYWOOD -> {
                rows(run, Math.max(2.5, thickness / 3), 0, 0, 0);
                rows(run + Math.PI / 2, 10, 0, 0, 0);
            }
            case MAT -> wave(Math.max(4, thickness), false);
            case SEALANT -> crossed(3);
            case ROD -> crossed(5);
            case GRAVEL -> dots(9, 6, true);
            case NONE -> { }
        }
    }

    private void solid() {
        Path path = new Path(gc.getDevice());
        trace(path, outline);
        path.close();
        gc.fillPath(path);
        path.dispose();
    }

    private void crossed(double step) {
        rows(SLANT, step, 0, 0, 0);
        rows(-SLANT, step, 0, 0, 0);
    }

    /** Framing cut across is crossed from corner to corner; other wood shows its grain. */
    private void wood() {
        if (outline.size() == 4 && reach(run)[1] - reach(run)[0] < 6 * thickness) {
            Path path = new Path(gc.getDevice());
            trace(path, List.of(outline.get(0), outline.get(2)));
            trace(path, List.of(outline.get(1), outline.get(3)));
            gc.drawPath(path);
            path.dispose();
        } else {
            rows(run, Math.max(3, Math.min(9, thickness / 3)), 0, 40, 4);
        }
    }

    /** Parallel lines; dashed when {@code dash} isn't 0. */
    private void rows(double angle, double step, double shift, double dash, double gap) {
        double[] along = reach(angle);
        double[] across = reach(angle + Math.PI / 2);
        Path path = new Path(gc.getDevice());
        for (double v = Math.floor(across[0] / step) * step + shift; v <= across[1]; v += step) {
            if (dash == 0) {
                trace(path, List.of(turned(angle, along[0], v), turned(angle, along[1], v)));
                continue;
            }
            double period = dash + gap;
            double start = Math.floor(along[0] / period) * period + Math.floorMod(Math.round(v / step), 2) * period / 2 - period;
            for (double u = start; u <= along[1]; u += period) {
                trace(path, List.of(turned(angle, u, v), turned(angle, u + dash, v)));
            }
        }
        gc.drawPath(path);
        path.dispose();
    }

    /** Staggered dots, or rings. */
    private void dots(double step, double size, boolean rings) {
        double[] x = reach(0);
        double[] y = reach(Math.PI / 2);
        Path path = new Path(gc.getDevice());
        for (double v = Math.floor(y[0] / step) * step; v <= y[1]; v += step) {
            double stagger = Math.floorMod(Math.round(v / step), 2) * step / 2;
            for (double u = Math.floor(x[0] / step) * step + stagger; u <= x[1]; u += step) {
                if (rings) {
                    path.addArc((float) (u - size / 2), (float) (v - size / 2), (float) size, (float) size, 0, 360);
                    path.close();
                } else {
                    path.addRectangle((float) (u - size / 2), (float) (v - size / 2), (float) size, (float) size);
                }
            }
        }
        if (rings) {
            gc.drawPath(path);
        } else {
            gc.fillPath(path);
        }
        path.dispose();
    }

    /** A line that runs from face to face and back, rounded or not. */
    private void wave(double pitch, boolean round) {
        double[] along = reach(run);
        double[] across = reach(run + Math.PI / 2);
        double middle = (across[0] + across[1]) / 2;
        double half = (across[1] - across[0]) / 2 * 0.94;
        Path path = new Path(gc.getDevice());
        double part = round ? pitch / 12 : pitch / 2;
        boolean first = true;
        for (double u = Math.floor(along[0] / pitch) * pitch; u <= along[1] + part; u += part) {
            Point at = turned(run, u, middle + half * Math.cos(2 * Math.PI * u / pitch));
            if (first) {
                path.moveTo((float) at.x(), (float) at.y());
                first = false;
            } else {
                path.lineTo((float) at.x(), (float) at.y());
            }
        }
        gc.setLineAttributes(new LineAttributes(round ? 1 : 0.7f, SWT.CAP_ROUND, SWT.JOIN_ROUND));
        gc.drawPath(path);
        path.dispose();
    }

    private static void trace(Path path, List<Point> points) {
        path.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo((float) point.x(), (float) point.y()));
    }

    /** Least and greatest coordinate of the outline in a direction. */
    private double[] reach(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new double[] {outline.stream().mapToDouble(point -> point.x() * cos + point.y() * sin).min().orElse(0),
            outline.stream().mapToDouble(point -> point.x() * cos + point.y() * sin).max().orElse(0)};
    }

    /** The point with these coordinates along a direction and across it. */
    private static Point turned(double angle, double along, double across) {
        return new Point(along * Math.cos(angle) - across * Math.sin(angle), along * Math.sin(angle) + across * Math.cos(angle));
    }
}

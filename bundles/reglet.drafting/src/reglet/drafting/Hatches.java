package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;

/**
 * The fills of the drafting profession as line work inside an outline: after the material symbols of ASME Y14.2 and of
 * architectural practice (common practice). Patterns are fixed to the drawing's origin, in millimetres on paper, so that
 * neighbouring areas of one material run on and a dot depends on nothing but its place.
 */
final class Hatches {
    /** An area thinner than this on paper is drawn solid or left blank; a pattern in it would be a smear. */
    private static final double THIN = 0.6;
    private static final double SLANT = StrictMath.PI / 4;

    /** Lines, and dots with their diameter; or a solid. */
    record Fill(List<List<Point>> lines, List<Point> dots, double dot, boolean solid) {
        static final Fill NOTHING = new Fill(List.of(), List.of(), 0, false);
        static final Fill SOLID = new Fill(List.of(), List.of(), 0, true);
    }

    private final List<Point> outline;
    /** Directions along and across the longest edge, and the outline's reach in them. */
    private final double run;
    private final double[] along;
    private final double[] across;
    private final List<List<Point>> lines = new ArrayList<>();
    private final List<Point> dots = new ArrayList<>();

    private Hatches(List<Point> outline) {
        this.outline = outline;
        this.run = Polygons.run(outline);
        this.along = reach(run);
        this.across = reach(run + StrictMath.PI / 2);
    }

    /** The fill of an outline in millimetres on paper. */
    static Fill of(Hatch hatch, List<Point> outline) {
        if (hatch == Hatch.NONE || outline.size() < 3) {
            return Fill.NOTHING;
        }
        Hatches hatches = new Hatches(outline);
        if (hatches.thin()) {
            return hatch == Hatch.METAL || hatch == Hatch.MAT || hatch == Hatch.SEALANT ? Fill.SOLID : Fill.NOTHING;
        }
        double dot = hatches.draw(hatch);
        return new Fill(List.copyOf(hatches.lines), List.copyOf(hatches.dots), dot, false);
    }

    private double thickness() {
        return Math.min(across[1] - across[0], along[1] - along[0]);
    }

    /** Of bent strips too: twice the area over the length of the edge, which for a strip is its thickness. */
    private boolean thin() {
        return 2 * Polygons.area(outline) < THIN * Polygons.edge(outline);
    }

    /** Returns the diameter of the dots. */
    private double draw(Hatch hatch) {
        switch (hatch) {
            case EARTH -> earth();
            case CONCRETE -> concrete();
            case WOOD -> wood();
            case BATT -> batt();
            case RIGID_INSULATION -> {
                double step = Math.max(1.2, Math.min(2.4, thickness() * 0.6));
                rows(SLANT, step, 0);
                rows(-SLANT, step, 0);
            }
            case METAL -> {
                rows(SLANT, 1.5, 0);
                rows(SLANT, 1.5, 0.4);
            }
            case MORTAR -> dots(hatch, 0.75, 0.2);
            case STONE -> {
                rows(SLANT, 3.2, 0);
                dashes(SLANT, 3.2, 1.6, 2.4, 1.6);
            }
            case GYPSUM -> dots(hatch, 1.3, 0.16);
            case PLYWOOD -> plywood();
            case MAT -> mat();
            case SEALANT -> {
                rows(SLANT, 0.6, 0);
                rows(-SLANT, 0.6, 0);
            }
            case ROD -> rod();
            case GRAVEL -> gravel();
            default -> throw new IllegalArgumentException("no pattern for " + hatch);
        }
        return hatch == Hatch.GYPSUM ? 0.16 : 0.2;
    }

    /** Groups of three strokes that turn from cell to cell. */
    private void earth() {
        double cell = 3.6;
        double[] u = reach(SLANT);
        double[] v = reach(3 * SLANT);
        for (int i = (int) Math.floor(u[0] / cell); i * cell < u[1]; i++) {
            for (int j = (int) Math.floor(v[0] / cell); j * cell < v[1]; j++) {
                for (int k = 0; k < 3; k++) {
                    double side = (k + 0.5) / 3 * cell;
                    boolean turned = Math.floorMod(i + j, 2) == 1;
                    line(SLANT, turned ? i * cell + side : i * cell + 0.1 * cell, turned ? j * cell + 0.1 * cell : j * cell + side,
                        turned ? i * cell + side : i * cell + 0.9 * cell, turned ? j * cell + 0.9 * cell : j * cell + side);
                }
            }
        }
    }

    /** Dots for sand, triangles for stone. */
    private void concrete() {
        double step = 5;
        List<List<Point>> stones = new ArrayList<>();
        cells(step, (i, j) -> {
            double size = 0.7 + 0.4 * noise(Hatch.CONCRETE, i, j, 0);
            double turn = StrictMath.PI * noise(Hatch.CONCRETE, i, j, 1);
            Point at = new Point((i + 0.3 + 0.4 * noise(Hatch.CONCRETE, i, j, 2)) * step,
                (j + 0.3 + 0.4 * noise(Hatch.CONCRETE, i, j, 3)) * step);
            List<Point> stone = ring(at, 3, turn, k -> size);
            if (whole(stone)) {
                stones.add(stone.subList(0, 3));
                lines.add(stone);
            }
        });
        dots(Hatch.CONCRETE, 1.9, 0.2);
        dots.removeIf(dot -> stones.stream().anyMatch(stone -> Polygons.inside(stone, dot)));
    }

    /** Cut framing is crossed from corner to corner; other wood shows its grain. */
    private void wood() {
        if (outline.size() == 4 && along[1] - along[0] <= 5 * thickness()) {
            clip(List.of(outline.get(0), outline.get(2)));
            clip(List.of(outline.get(1), outline.get(3)));
        } else {
            double step = Math.max(0.8, Math.min(3, (across[1] - across[0]) / 4));
            dashes(run, step, step / 2, 14, 1.5);
        }
    }

    /** A curve whose loops touch both faces. */
    private void batt() {
        double depth = across[1] - across[0];
        double pitch = Math.max(2, Math.min(14, depth * 0.36));
        double half = depth / 2;
        List<Point> curve = new ArrayList<>();
        int parts = 64;
        double start = Math.floor(along[0] / pitch);
        int steps = (int) Math.ceil((along[1] / pitch - start) + 1) * parts;
        for (int k = 0; k <= steps; k++) {
            double turn = 2 * StrictMath.PI * k / parts;
            double u = (start + (double) k / parts) * pitch - 0.3 * pitch * StrictMath.sin(2 * turn);
            curve.add(turned(run, u, across[0] + half + half * 0.97 * StrictMath.cos(turn)));
        }
        clip(curve);
    }

    /** Plies, the middle one ticked. */
    private void plywood() {
        double depth = across[1] - across[0];
        double ply = depth / 3;
        for (int k = 1; k < 3; k++) {
            line(run, along[0], across[0] + k * ply, along[1], across[0] + k * ply);
        }
        double step = Math.max(1, ply);
        for (int k = (int) Math.floor(along[0] / step); k * step < along[1]; k++) {
            line(run, k * step, across[0] + ply, k * step + ply, across[0] + 2 * ply);
        }
    }

    /** A filament that runs from face to face. */
    private void mat() {
        double depth = across[1] - across[0];
        double step = Math.max(0.7, Math.min(4, depth * 0.45));
        List<Point> filament = new ArrayList<>();
        for (int k = (int) Math.floor(along[0] / step) - 1; k * step < along[1] + step; k++) {
            filament.add(turned(run, k * step, Math.floorMod(k, 2) == 0 ? across[0] + 0.04 * depth : across[1] - 0.04 * depth));
        }
        clip(filament);
    }

    /** A foam rod: crossed, with a ring inside. */
    private void rod() {
        Point middle = Polygons.middle(outline);
        List<Point> ring = new ArrayList<>(outline.stream().map(point -> Polygons.between(middle, point, 0.55)).toList());
        ring.add(ring.get(0));
        clip(ring);
        double far = along[1] - along[0] + across[1] - across[0];
        for (double angle : new double[] {SLANT, -SLANT}) {
            double x = far * StrictMath.cos(angle);
            double y = far * StrictMath.sin(angle);
            clip(List.of(new Point(middle.x() - x, middle.y() - y), new Point(middle.x() + x, middle.y() + y)));
        }
    }

    /** Rounded stones of several sizes. */
    private void gravel() {
        double step = 2.5;
        cells(step, (i, j) -> {
            Point at = new Point((i + 0.4 + 0.2 * noise(Hatch.GRAVEL, i, j, 0)) * step,
                (j + 0.4 + 0.2 * noise(Hatch.GRAVEL, i, j, 1)) * step);
            double size = 0.55 + 0.4 * noise(Hatch.GRAVEL, i, j, 2);
            clip(ring(at, 7, 6 * noise(Hatch.GRAVEL, i, j, 3), k -> size * (0.8 + 0.3 * noise(Hatch.GRAVEL, i, j, 4 + k))));
        });
    }

    private void dots(Hatch hatch, double step, double diameter) {
        cells(step, (i, j) -> {
            Point dot = new Point((i + 0.15 + 0.7 * noise(hatch, i, j, 8)) * step, (j + 0.15 + 0.7 * noise(hatch, i, j, 9)) * step);
            if (Polygons.inside(outline, dot) && Polygons.distance(outline, dot) >= diameter / 2) {
                dots.add(dot);
            }
        });
    }

    private void rows(double angle, double step, double shift) {
        double[] u = reach(angle);
        double[] v = reach(angle + StrictMath.PI / 2);
        for (int k = (int) Math.floor((v[0] - shift) / step); k * step + shift < v[1]; k++) {
            line(angle, u[0], k * step + shift, u[1], k * step + shift);
        }
    }

    private void dashes(double angle, double step, double shift, double dash, double gap) {
        double[] u = reach(angle);
        double[] v = reach(angle + StrictMath.PI / 2);
        double period = dash + gap;
        for (int k = (int) Math.floor((v[0] - shift) / step); k * step + shift < v[1]; k++) {
            // Gaps of neighbouring rows don't stand side by side.
            double start = Math.floorMod(k, 3) * period / 3;
            for (int n = (int) Math.floor((u[0] - start) / period); n * period + start < u[1]; n++) {
                line(angle, n * period + start, k * step + shift, n * period + start + dash, k * step + shift);
            }
        }
    }

    private void line(double angle, double fromU, double fromV, double toU, double toV) {
        clip(List.of(turned(angle, fromU, fromV), turned(angle, toU, toV)));
    }

    private void clip(List<Point> line) {
        lines.addAll(Polygons.cut(line, outline, true));
    }

    private boolean whole(List<Point> ring) {
        return Polygons.cut(ring, outline, true).equals(List.of(ring));
    }

    private interface Cell {
        void at(int i, int j);
    }

    private void cells(double step, Cell cell) {
        double[] x = reach(0);
        double[] y = reach(StrictMath.PI / 2);
        for (int i = (int) Math.floor(x[0] / step); i * step < x[1]; i++) {
            for (int j = (int) Math.floor(y[0] / step); j * step < y[1]; j++) {
                cell.at(i, j);
            }
        }
    }

    private interface Radius {
        double at(int corner);
    }

    /** A closed line around a point; its last point is its first. */
    private static List<Point> ring(Point at, int corners, double turn, Radius radius) {
        return IntStream.rangeClosed(0, corners).map(k -> k % corners).mapToObj(k -> {
            double angle = turn + 2 * StrictMath.PI * k / corners;
            return new Point(at.x() + radius.at(k) * StrictMath.cos(angle), at.y() + radius.at(k) * StrictMath.sin(angle));
        }).toList();
    }

    /** Least and greatest extent in a direction. */
    private double[] reach(double angle) {
        double x = StrictMath.cos(angle);
        double y = StrictMath.sin(angle);
        var reach = outline.stream().mapToDouble(point -> point.x() * x + point.y() * y).summaryStatistics();
        return new double[] {reach.getMin(), reach.getMax()};
    }

    private static Point turned(double angle, double u, double v) {
        double x = StrictMath.cos(angle);
        double y = StrictMath.sin(angle);
        return new Point(u * x - v * y, u * y + v * x);
    }

    /** A number from 0 to 1 that depends on the place alone (the finishing steps of SplitMix64, from memory). */
    private static double noise(Hatch hatch, int i, int j, int use) {
        long mixed = hatch.name().hashCode() * 0x9E3779B97F4A7C15L + i * 0xC2B2AE3D27D4EB4FL + j * 0x165667B19E3779F9L
            + use * 0x27D4EB2F165667C5L;
        mixed = (mixed ^ mixed >>> 30) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ mixed >>> 27) * 0x94D049BB133111EBL;
        return ((mixed ^ mixed >>> 31) >>> 11) * 0x1.0p-53;
    }
}

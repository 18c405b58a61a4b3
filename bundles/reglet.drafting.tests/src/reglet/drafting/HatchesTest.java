package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import reglet.drafting.Hatches.Fill;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;

class HatchesTest {
    private static final List<Point> SQUARE = DrawingSample.points(3, 4, 33, 4, 33, 34, 3, 34);

    @ParameterizedTest
    @EnumSource(Hatch.class)
    void linesAndDotsNeverLeaveTheirOutline(Hatch hatch) {
        Random random = new Random(20240611);
        for (int i = 0; i < 60; i++) {
            List<Point> outline = i % 3 == 0 ? crossing(random) : star(random);
            Fill fill = Hatches.of(hatch, outline);
            for (List<Point> line : fill.lines()) {
                for (int k = 0; k + 1 < line.size(); k++) {
                    for (double part = 0; part <= 1; part += 0.125) {
                        Point point = Polygons.between(line.get(k), line.get(k + 1), part);
                        assertTrue(inside(outline, point) || Polygons.distance(outline, point) < 1e-6, point + " of " + outline);
                    }
                }
            }
            fill.dots().forEach(dot -> assertTrue(inside(outline, dot) && Polygons.distance(outline, dot) >= fill.dot() / 2));
        }
    }

    @Test
    void everyMaterialHasALookOfItsOwn() {
        Set<Object> looks = new HashSet<>();
        for (Hatch hatch : Hatch.values()) {
            Fill fill = Hatches.of(hatch, SQUARE);
            assertEquals(hatch == Hatch.NONE, fill.lines().isEmpty() && fill.dots().isEmpty(), hatch.name());
            assertTrue(looks.add(List.of(fill.lines(), fill.dots())), hatch.name());
        }
    }

    @Test
    void cutFramingIsCrossedFromCornerToCorner() {
        assertEquals(List.of(List.of(new Point(0, 0), new Point(28, 8)), List.of(new Point(28, 0), new Point(0, 8))),
            Hatches.of(Hatch.WOOD, DrawingSample.points(0, 0, 28, 0, 28, 8, 0, 8)).lines());
    }

    @Test
    void thinMetalIsSolidEvenWhenBent() {
        assertTrue(Hatches.of(Hatch.METAL, DrawingSample.points(0, 0, 20, 0, 20, 0.2, 0.2, 0.2, 0.2, 18, 0, 18)).solid());
        assertFalse(Hatches.of(Hatch.METAL, SQUARE).solid());
    }

    @Test
    void patternsRunOnFromAreaToArea() {
        List<Point> left = DrawingSample.points(0, 0, 10, 0, 10, 12, 0, 12);
        List<Point> both = DrawingSample.points(0, 0, 20, 0, 20, 12, 0, 12);
        Set<Point> all = new HashSet<>(Hatches.of(Hatch.MORTAR, both).dots());
        List<Point> part = Hatches.of(Hatch.MORTAR, left).dots();
        assertTrue(part.size() > 100 && all.containsAll(part));
    }

    @Test
    void insulationReachesBothFaces() {
        var reach = Hatches.of(Hatch.BATT, DrawingSample.points(0, 0, 28, 0, 28, 100, 0, 100)).lines().stream().flatMap(List::stream)
            .mapToDouble(Point::x).summaryStatistics();
        assertTrue(reach.getMin() < 1 && reach.getMax() > 27, reach.toString());
    }

    /** Corners in turn around a middle. */
    private static List<Point> star(Random random) {
        List<Point> star = new ArrayList<>();
        int corners = 3 + random.nextInt(9);
        for (int k = 0; k < corners; k++) {
            double angle = 2 * Math.PI * k / corners;
            double radius = 1 + 30 * random.nextDouble();
            star.add(new Point(17 + radius * Math.cos(angle), -9 + radius * Math.sin(angle)));
        }
        return star;
    }

    /** Corners anywhere, so that edges cross. */
    private static List<Point> crossing(Random random) {
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            corners.add(new Point(40 * random.nextDouble() - 20, 40 * random.nextDouble() - 20));
        }
        return corners;
    }

    /** Even-odd rule as in java.awt.geom, which is not what the hatches use. */
    private static boolean inside(List<Point> outline, Point point) {
        java.awt.geom.Path2D path = new java.awt.geom.Path2D.Double(java.awt.geom.Path2D.WIND_EVEN_ODD);
        path.moveTo(outline.get(0).x(), outline.get(0).y());
        outline.subList(1, outline.size()).forEach(corner -> path.lineTo(corner.x(), corner.y()));
        path.closePath();
        return path.contains(point.x(), point.y());
    }
}

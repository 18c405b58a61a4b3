package reglet.details;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Drawing;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;
import reglet.model.WallType;

/** Details are drawn and dimensioned as the trade reads them. */
class ConventionsTest {
    private static final WallType STREET = Samples.wall("harbour-clinic", "W1");
    private static final WallType STEEL = Samples.wall("mesa-library", "W1");

    private static List<String> dimensions(Drawing drawing) {
        return Geometry.all(drawing, Dimensioned.class).stream().map(Dimensioned::text).sorted().toList();
    }

    private static List<String> words(Drawing drawing) {
        return Geometry.all(drawing, Text.class).stream().map(Text::text).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        base-1             | 1 in, 2 in, 3-7/8 in, 3/8 in, lap 2 in, leg 3-1/2 in
        base-2             | 1 in, 3-7/8 in, 3/8 in, 6 in, lap 2 in, leg 3-1/2 in
        window-1.head      | 3-7/8 in, 3/8 in, 3/8 in, 4-1/8 in, gap 1/2 in, upleg 4 in
        window-1.jamb      | 3-7/8 in, 3/8 in, 4-1/8 in, joint 1/2 in, lap 3 in
        window-1.sill      | 3-7/8 in, 3/8 in, 4-1/8 in, dam 1 in, joint 1/2 in, lap 3 in
        top-1              | 3-7/8 in, 3/4 in, 3/8 in, 3/8 in
        corner-1           | 16 in, 16 in, 3-7/8 in, 3/8 in
        floor-1            | 3-7/8 in, 3/8 in, joint 3/4 in, lap 3 in
        floor-1.sealant    | 1-7/16 in, 1/4 in, 3/4 in, rod 15/16 in
        sealant            | 1-1/16 in, 1/2 in, 1/4 in, rod 5/8 in
        lamp-1             | 3 in, 3-7/8 in, 3/8 in, 3/8 in, 6 in
        build-up           | 1/2 in, 1/2 in, 2-1/2 in, 3-7/8 in, 3/8 in, 7/16 in
        layers             | fasteners 6 in, lap 2 in, lap 2 in, studs 16 in
        """)
    void everyDetailHasTheDimensionsThatItIsBuiltBy(String id, String expected) {
        assertEquals(expected, String.join(", ", dimensions(Samples.drawing(STREET, id))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"base-1", "window-1.head", "window-1.jamb", "window-1.sill", "top-1", "corner-1", "floor-1", "lamp-1",
        "build-up"})
    void whatGoesOnIsCutOffWithABreakLine(String id) {
        assertTrue(Geometry.all(Samples.drawing(STREET, id), Line.class).stream().anyMatch(line -> line.stroke() == Stroke.BREAK));
    }

    @ParameterizedTest
    @ValueSource(strings = {"base-1", "window-1.head", "window-1.jamb", "window-1.sill", "top-1", "corner-1"})
    void cutMembersOfTheFramingAreCrossedForWoodAndChannelsForSteel(String id) {
        assertTrue(framing(STREET, id).stream().filter(line -> line.points().size() == 2).filter(ConventionsTest::slopes).count() >= 2, id);
        assertTrue(framing(STEEL, id).stream().anyMatch(line -> line.points().size() > 3), id);
        assertFalse(framing(STEEL, id).stream().anyMatch(ConventionsTest::slopes), id);
    }

    private static List<Line> framing(WallType wall, String id) {
        return Geometry.all(Samples.drawing(wall, id), Line.class).stream().filter(line -> line.component().equals("framing")).toList();
    }

    private static boolean slopes(Line line) {
        return line.points().get(0).x() != line.points().get(1).x() && line.points().get(0).y() != line.points().get(1).y();
    }

    @Test
    void whatIsNoComponentIsNamed() {
        assertEquals(List.of("foundation", "paving"), words(Samples.drawing(STREET, "base-1")));
        assertEquals(List.of("window frame"), words(Samples.drawing(STREET, "window-1.head")));
        assertEquals(List.of("soffit"), words(Samples.drawing(STREET, "top-1")));
        assertEquals(List.of("coping"), words(Samples.drawing(STEEL, "top-1")));
        assertEquals(List.of("other cladding"), words(Samples.drawing(Samples.meets(STREET, "top-1", "meets", "other cladding"), "top-1")));
        assertEquals(List.of("light fitting"), words(Samples.drawing(STREET, "lamp-1")));
        assertEquals(List.of("frame or block"), words(Samples.drawing(STREET, "sealant")));
    }

    @Test
    void aParapetIsCappedInMetal() {
        assertFalse(Geometry.all(Samples.drawing(STEEL, "top-1"), "metal_flashing").isEmpty());
        assertTrue(Geometry.all(Samples.drawing(STREET, "top-1"), "metal_flashing").isEmpty());
    }

    @Test
    void lathIsCarriedRoundACornerAsFarAsTheJobSays() {
        Line round = Geometry.all(Samples.drawing(STREET, "corner-1"), Line.class).stream().filter(line -> line.component().equals("lath"))
            .filter(line -> line.points().size() == 3).findFirst().orElseThrow();
        assertEquals(16 * 25.4, round.points().get(1).x() - round.points().get(2).x(), 0.01);
        Line other = Geometry.all(Samples.drawing(STREET, "corner-1"), Line.class).stream().filter(line -> line.component().equals("lath"))
            .filter(line -> line.points().size() == 2).findFirst().orElseThrow();
        assertEquals(25.4, other.points().get(0).x() - round.points().get(2).x(), 0.01, "the other wall's lath laps it by 1 in");
    }

    @Test
    void sealantIsThickerAtItsBondThanInTheMiddle() {
        Drawing drawing = Samples.drawing(STREET, "sealant");
        assertTrue(Geometry.all(drawing, "sealant").getBounds2D().getWidth() > 1.3 * 25.4 / 4);
    }

    @Test
    void stoneHasBevelledEdgesAndBrickHasNot() {
        assertEquals(6, corners(Samples.drawing(STREET, "window-1.sill")));
        assertEquals(4, corners(Samples.drawing(Samples.wall("harbour-clinic", "W2"), "window-1.sill")));
    }

    /** Corners of the top unit that are more than a hair apart. */
    private static long corners(Drawing drawing) {
        return Geometry.areas(drawing).stream().filter(area -> area.component().equals("veneer")).findFirst().orElseThrow()
            .outline().stream().distinct().count();
    }

    @Test
    void notesTellWhatLinesCannot() {
        assertTrue(Samples.drawing(STREET, "floor-1").notes().contains("Expected movement of the backing: 3/16 in, it opens and closes."));
        assertTrue(Samples.drawing(STREET, "window-1.head").notes().contains("The head flashing has end dams 3/4 in high at both ends."));
        assertTrue(Samples.drawing(Samples.meets(STREET, "window-1", "end_dams", "no"), "window-1.head").notes().stream()
            .anyMatch(note -> note.contains("no end dams")));
        assertTrue(Samples.drawing(STREET, "sealant").notes().stream().anyMatch(note -> note.contains("25 to 33% wider")));
        assertTrue(Samples.drawing(Samples.meets(STREET, "top-1", "opens_into", "vented soffit"), "top-1").notes()
            .contains("Air leaves into the vented soffit."));
    }

    @Test
    void scalesAreThoseOfTheJobsUnits() {
        assertEquals(4, Samples.drawing(STREET, "base-1").scale());
        assertEquals(8, Samples.drawing(STREET, "corner-1").scale());
        assertEquals(1, Samples.drawing(STREET, "sealant").scale());
        Drawing metric = Samples.drawing(Samples.height(STREET, "8 m"), "base-1");
        assertEquals(5, metric.scale());
        assertTrue(dimensions(metric).contains("98 mm"), "a sum prints in the job's units");
    }

    @Test
    void waterRunsDownTheRoofToTheKickOut() {
        WallType roof = Samples.meets(Samples.meets(STREET, "base-1", "over", "roof"), "base-1", "kick_out", "yes");
        assertTrue(Geometry.all(Samples.drawing(roof, "base-1.kick-out"), Line.class).stream()
            .anyMatch(line -> line.stroke() == Stroke.WATER && line.arrow()));
    }
}

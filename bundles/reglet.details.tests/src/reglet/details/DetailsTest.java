package reglet.details;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import reglet.model.Assembly;
import reglet.model.Drawing;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Stroke;
import reglet.model.Job;
import reglet.model.Quantity;
import reglet.model.WallType;

/** What holds for every detail of every sample wall. */
class DetailsTest {
    /** A sixteenth of an inch and a hair: sums are printed to the nearest sixteenth. */
    private static final double ROUNDING = 0.8;

    private static final WallType STREET = Samples.wall("harbour-clinic", "W1");

    static Stream<Drawing> everyDrawing() {
        Stream<Drawing> samples = Samples.names().stream().map(Samples::job).flatMap(job -> job.walls().stream()
            .flatMap(wall -> Details.of(Samples.assembly(job), wall.id()).stream()));
        return Stream.concat(samples, unusual().stream().flatMap(wall -> Samples.drawings(wall).stream()));
    }

    /** Meetings and choices that no sample has. */
    static List<WallType> unusual() {
        WallType roof = Samples.meets(Samples.meets(Samples.meets(STREET, "base-1", "over", "roof"), "base-1", "kick_out", "yes"), "base-2",
            "over", "deck");
        WallType tops = Samples.meets(Samples.choose(STREET, "insulation", "xps-1-1-2"), "top-1", "meets", "other cladding");
        WallType attic = Samples.meets(Samples.meets(STREET, "top-1", "opens_into", "vented soffit"), "base-2", "over", "other cladding");
        return List.of(Samples.meets(roof, "corner-1", "treatment", "sealant joint"), Samples.meets(tops, "corner-1", "treatment",
            "mitred units"), Samples.meets(Samples.choose(attic, "movement_joint", "accessory-zinc"), "lamp-1", "block", "no"),
            Samples.choose(Samples.choose(STREET, "backer_rod", "tape"), "framing", "steel-16"));
    }

    @Test
    void aWallGetsTheDetailsThatItsMeetingsCallFor() {
        assertEquals(List.of("layers", "build-up", "base-1", "base-2", "window-1.head", "window-1.jamb", "window-1.sill", "door-1.head",
            "door-1.jamb", "door-1.sill", "top-1", "corner-1", "floor-1", "floor-1.sealant", "lamp-1", "sealant"), ids(STREET));
        assertEquals(List.of("layers", "build-up", "base-1", "window-1.head", "window-1.jamb", "window-1.sill", "top-1", "corner-1",
            "sealant"), ids(Samples.wall("harbour-clinic", "W2")));
    }

    @Test
    void aRoofBelowTheWallAddsTheKickOutAtItsEave() {
        assertTrue(ids(Samples.meets(STREET, "base-1", "over", "roof")).contains("base-1.kick-out"));
        assertFalse(ids(STREET).contains("base-1.kick-out"));
    }

    @Test
    void aJointAccessoryNeedsNoEnlargedSealantJoint() {
        assertFalse(ids(Samples.choose(STREET, "movement_joint", "accessory-zinc")).contains("floor-1.sealant"));
    }

    private static List<String> ids(WallType wall) {
        return Samples.drawings(wall).stream().map(Drawing::id).toList();
    }

    @Test
    void oneDrawingIsFoundByItsId() {
        Assembly assembly = Samples.assembly(Samples.job("harbour-clinic"));
        assertEquals("Top of wall at soffit", Details.of(assembly, "W1", "top-1").orElseThrow().title());
        assertTrue(Details.of(assembly, "W1", "nothing").isEmpty());
    }

    @Test
    void anUnknownWallTypeIsRefusedWithTheOnesThereAre() {
        Assembly assembly = Samples.assembly(Samples.job("harbour-clinic"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Details.of(assembly, "W9")).getMessage().contains("[W1, W2]"));
    }

    @Test
    void theSameJobDrawsTheSame() {
        Job job = Samples.job("mesa-library");
        assertEquals(Details.of(Samples.assembly(job), "W1"), Details.of(Samples.assembly(job), "W1"));
    }

    @ParameterizedTest
    @MethodSource("everyDrawing")
    void noTwoThingsLieInEachOther(Drawing drawing) {
        assertEquals(List.of(), Geometry.overlaps(drawing));
    }

    @ParameterizedTest
    @MethodSource("everyDrawing")
    void everyDimensionIsAsLongAsItSays(Drawing drawing) {
        List<Dimensioned> dimensions = Geometry.all(drawing, Dimensioned.class);
        assertFalse(dimensions.isEmpty(), drawing.id());
        for (Dimensioned dimension : dimensions) {
            String length = dimension.text().replaceFirst("^[a-z]+ ", "");
            double said = Lengths.mm(Quantity.parse(length).orElseThrow(() -> new AssertionError(dimension.text())));
            assertEquals(said, Geometry.length(dimension), ROUNDING, drawing.id() + " " + dimension);
        }
    }

    @ParameterizedTest
    @MethodSource("everyDrawing")
    void leadersGoToComponentsOfThePackAndDoNotCross(Drawing drawing) {
        List<Leader> leaders = Geometry.all(drawing, Leader.class);
        List<String> crossings = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (int i = 0; i < leaders.size(); i++) {
            Leader leader = leaders.get(i);
            assertEquals(Samples.PACK.component(leader.key()).orElseThrow().title(), leader.text());
            assertTrue(keys.add(leader.key()), leader.key() + " has two leaders");
            for (int j = i + 1; j < leaders.size(); j++) {
                if (Geometry.cross(leader, leaders.get(j))) {
                    crossings.add(leader.key() + " and " + leaders.get(j).key());
                }
            }
        }
        if (!drawing.id().endsWith(".kick-out")) {
            assertTrue(leaders.size() >= 3, drawing.id());
        }
        assertEquals(List.of(), crossings, drawing.id());
    }

    @ParameterizedTest
    @MethodSource("everyDrawing")
    void leadersEndOnWhatTheyName(Drawing drawing) {
        for (Leader leader : Geometry.all(drawing, Leader.class)) {
            boolean onArea = Geometry.areas(drawing).stream().filter(area -> area.component().equals(leader.component()))
                .anyMatch(area -> Geometry.area(area).intersects(leader.tip().x() - 1, leader.tip().y() - 1, 2, 2));
            boolean onLine = Geometry.all(drawing, Drawing.Line.class).stream()
                .anyMatch(line -> line.component().equals(leader.component()) && near(line, leader.tip()));
            assertTrue(onArea || onLine || leader.component().equals("unit_joint"), drawing.id() + " " + leader);
        }
    }

    private static boolean near(Drawing.Line line, Drawing.Point tip) {
        for (int i = 1; i < line.points().size(); i++) {
            Drawing.Point a = line.points().get(i - 1);
            Drawing.Point b = line.points().get(i);
            if (Line2D.ptSegDist(a.x(), a.y(), b.x(), b.y(), tip.x(), tip.y()) < 2) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("everyDrawing")
    void whatIsDrawnTooThickIsSaidToBe(Drawing drawing) {
        boolean plies = Geometry.areas(drawing).stream().anyMatch(area -> area.component().endsWith("_ply"));
        assertEquals(plies && !drawing.id().equals("layers"), drawing.notes().stream()
            .anyMatch(note -> note.startsWith("Too thin to be seen and so drawn 1 mm thick: ") && note.contains("barrier ply")),
            drawing.id());
    }

    @Test
    void waterAndAirAreShownWhereTheyPass() {
        assertTrue(has(Samples.drawing(STREET, "base-1"), Stroke.WATER));
        assertTrue(has(Samples.drawing(STREET, "base-1"), Stroke.AIR));
        assertTrue(has(Samples.drawing(STREET, "window-1.head"), Stroke.WATER));
        assertTrue(has(Samples.drawing(STREET, "window-1.sill"), Stroke.WATER));
        assertTrue(has(Samples.drawing(STREET, "top-1"), Stroke.AIR));
        assertFalse(has(Samples.drawing(Samples.wall("mesa-library", "W1"), "base-1"), Stroke.AIR), "a cavity that only drains");
        assertFalse(has(Samples.drawing(Samples.wall("orchard-row", "W1"), "top-1"), Stroke.AIR), "a closed top");
    }

    private static boolean has(Drawing drawing, Stroke stroke) {
        return Geometry.all(drawing, Drawing.Line.class).stream().anyMatch(line -> line.stroke() == stroke && line.arrow());
    }
}

package reglet.details;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Text;
import reglet.model.Unit;
import reglet.model.WallType;

/** Parts of details have the sizes and the stuff that the wall's requirements give them. */
class PartsTest {
    private static final WallType STREET = Samples.wall("harbour-clinic", "W1");
    private static final double HAIR = 0.01;

    private static double inches(double inches) {
        return Unit.IN.toSi(inches) / Unit.MM.toSi(1);
    }

    private static Rectangle2D box(Drawing drawing, String component) {
        return Geometry.all(drawing, component).getBounds2D();
    }

    @ParameterizedTest
    @CsvSource({"base-1,2.5", "window-1.head,2.5", "window-1.jamb,2.5", "window-1.sill,2.5", "top-1,2.5", "floor-1,2.5", "build-up,2.5"})
    void theLathFastenerIsAsLongAsRequiredAndStartsInTheScratchCoat(String id, double length) {
        Drawing drawing = Samples.drawing(STREET, id);
        Line shank = Geometry.all(drawing, Line.class).stream().filter(line -> line.component().equals("lath_fastener")
            && line.points().get(0).y() == line.points().get(1).y()).findFirst().orElseThrow();
        assertEquals(inches(length), Math.abs(shank.points().get(1).x() - shank.points().get(0).x()), HAIR);
        Rectangle2D coat = box(drawing, "scratch_coat");
        assertTrue(shank.points().get(1).x() > coat.getMinX() && shank.points().get(1).x() < coat.getMaxX());
    }

    @Test
    void theLathLiesInTheScratchCoatOffItsBacking() {
        Drawing drawing = Samples.drawing(STREET, "base-1");
        Line lath = Geometry.all(drawing, Line.class).stream().filter(line -> line.component().equals("lath")).findFirst().orElseThrow();
        Rectangle2D coat = box(drawing, "scratch_coat");
        assertEquals(coat.getMinX() + inches(0.25), lath.points().get(0).x(), HAIR);
    }

    @Test
    void pointedJointsAreAsWideAsChosen() {
        Drawing drawing = Samples.drawing(Samples.wall("harbour-clinic", "W2"), "top-1");
        List<Drawing.Area> joints = Geometry.areas(drawing).stream().filter(area -> area.component().equals("unit_joint")).toList();
        assertTrue(joints.size() > 2, "thin brick has many joints");
        joints.forEach(joint -> assertEquals(inches(0.375), Geometry.area(joint).getBounds2D().getHeight(), HAIR));
        assertEquals(inches(2.5), Geometry.area(Geometry.areas(drawing).stream().filter(area -> area.component().equals("veneer"))
            .findFirst().orElseThrow()).getBounds2D().getHeight(), HAIR, "20 in² over 8 in");
    }

    @Test
    void tightJointsHaveNoMortar() {
        assertTrue(Geometry.all(Samples.drawing(STREET, "top-1"), "unit_joint").isEmpty());
    }

    @Test
    void theScreedHasTheLegAndTheGroundOfItsOption() {
        Rectangle2D screed = box(Samples.drawing(STREET, "base-1"), "base_screed");
        Rectangle2D sheathing = box(Samples.drawing(STREET, "base-1"), "sheathing");
        assertEquals(inches(1.375), screed.getMaxX() - sheathing.getMaxX(), HAIR);
        assertTrue(screed.getHeight() >= inches(3.5));
        Rectangle2D deep = box(Samples.drawing(Samples.choose(STREET, "base_screed", "pvc-short"), "base-1"), "base_screed");
        assertEquals(inches(0.875), deep.getMaxX() - sheathing.getMaxX(), HAIR);
    }

    @ParameterizedTest
    @CsvSource({"earth,EARTH", "paving,GRAVEL", "deck,WOOD", "walking surface,CONCRETE", "roof,PLYWOOD"})
    void theSurfaceBelowIsDrawnAsWhatItIs(String over, Hatch hatch) {
        Drawing drawing = Samples.drawing(Samples.meets(STREET, "base-1", "over", over), "base-1");
        double face = box(drawing, "veneer").getMaxX();
        assertTrue(Geometry.areas(drawing).stream().anyMatch(area -> area.component().isEmpty() && area.hatch() == hatch
            && Geometry.area(area).getBounds2D().getMaxX() > face), over);
    }

    @Test
    void aRoofBelowHasAFlashingTurnedUpBehindTheBarrier() {
        Drawing drawing = Samples.drawing(Samples.meets(STREET, "base-1", "over", "roof"), "base-1");
        Rectangle2D flashing = box(drawing, "metal_flashing");
        assertEquals(inches(4), flashing.getHeight(), Stack.THIN + HAIR);
        assertEquals(box(drawing, "sheathing").getMaxX(), flashing.getMinX(), HAIR);
    }

    @Test
    void theKickOutReachesPastTheEave() {
        WallType roof = Samples.meets(STREET, "base-1", "over", "roof");
        Drawing with = Samples.drawing(Samples.meets(roof, "base-1", "kick_out", "yes"), "base-1.kick-out");
        Drawing without = Samples.drawing(Samples.meets(roof, "base-1", "kick_out", "no"), "base-1.kick-out");
        assertTrue(box(with, "metal_flashing").getMaxX() > 50);
        assertEquals(0, box(without, "metal_flashing").getMaxX(), HAIR);
    }

    @Test
    void theHeadFlashingDripsBeyondTheOuterFace() {
        Drawing drawing = Samples.drawing(STREET, "window-1.head");
        double frame = box(drawing, "sheathing").getMaxX() + inches(4.125);
        assertEquals(frame + inches(0.375), box(drawing, "metal_flashing").getMaxX(), HAIR);
        Drawing shallow = Samples.drawing(Samples.meets(STREET, "window-1", "projection", "1 in"), "window-1.head");
        assertEquals(box(shallow, "veneer").getMaxX() + inches(0.375), box(shallow, "metal_flashing").getMaxX(), HAIR);
    }

    @Test
    void theSillPanTurnsUpItsDamAndLapsOverTheBarrier() {
        Rectangle2D pan = box(Samples.drawing(STREET, "window-1.sill"), "flexible_flashing");
        assertEquals(inches(1), pan.getMaxY(), HAIR);
        assertEquals(-inches(3), pan.getMinY(), HAIR);
        assertTrue(box(Samples.drawing(Samples.meets(STREET, "window-1", "sill", "none"), "window-1.sill"), "flexible_flashing").isEmpty());
    }

    @Test
    void sealantMeetsFrameAndCladdingAtJambAndSill() {
        for (String id : List.of("window-1.jamb", "window-1.sill")) {
            Rectangle2D sealant = box(Samples.drawing(STREET, id), "sealant");
            assertEquals(inches(0.5), sealant.getHeight(), HAIR, id);
            assertEquals(inches(0.25), sealant.getWidth(), HAIR, id);
        }
    }

    @Test
    void theEnlargedJointHasItsDepthInTheMiddleAndARodThatKeepsItsSection() {
        Drawing drawing = Samples.drawing(STREET, "sealant");
        Area middle = Geometry.all(drawing, "sealant");
        middle.intersect(new Area(new Rectangle2D.Double(-100, -0.05, 200, 0.1)));
        assertEquals(inches(0.25), middle.getBounds2D().getWidth(), 0.1);
        double rod = inches(0.5) * 1.25;
        assertEquals(Math.PI * rod * rod / 4, Geometry.size(Geometry.all(drawing, "backer_rod")), 3);
        assertTrue(Geometry.all(drawing, Drawing.Arc.class).stream().anyMatch(arc -> Math.abs(arc.radius() - rod / 2) < HAIR));
    }

    @Test
    void tapeTakesThePlaceOfTheRod() {
        Drawing drawing = Samples.drawing(Samples.choose(STREET, "backer_rod", "tape"), "sealant");
        assertEquals(Stack.THIN, box(drawing, "backer_rod").getWidth(), HAIR);
    }

    @Test
    void theMovementJointIsAsWideInTheCladdingAsTheJobSays() {
        Drawing drawing = Samples.drawing(STREET, "floor-1");
        assertEquals(inches(0.75), box(drawing, "sealant").getHeight(), HAIR);
        Area gap = new Area(new Rectangle2D.Double(box(drawing, "veneer").getMinX(), -inches(0.375), 50, inches(0.75)));
        gap.intersect(Geometry.all(drawing, "veneer"));
        assertTrue(gap.isEmpty());
        Drawing accessory = Samples.drawing(Samples.choose(STREET, "movement_joint", "accessory-zinc"), "floor-1");
        assertFalse(Geometry.all(accessory, "movement_joint").isEmpty());
        assertTrue(Geometry.all(accessory, "sealant").isEmpty());
        Drawing carried = Samples.drawing(Samples.meets(STREET, "floor-1", "cladding", "carried across"), "floor-1");
        assertTrue(Geometry.all(carried, "scratch_coat").contains(box(carried, "scratch_coat").getCenterX(), 0));
    }

    @Test
    void theSlotAtTheTopIsAsHighAsTheVentIsOpen() {
        Drawing drawing = Samples.drawing(STREET, "top-1");
        assertEquals(inches(0.375) + 2 * Stack.THIN, box(drawing, "top_vent").getHeight(), HAIR);
        double trim = Geometry.areas(drawing).stream().filter(area -> area.hatch() == Hatch.WOOD).map(Geometry::area)
            .map(Area::getBounds2D).filter(box -> box.getMinY() < 0).mapToDouble(Rectangle2D::getMinX).findFirst().orElseThrow();
        assertEquals(inches(0.75), trim - box(drawing, "veneer").getMaxX(), HAIR);
    }

    @ParameterizedTest
    @CsvSource({"corner units,6,1", "mitred units,4,2", "lapped flats,4,2", "corner bead,4,2"})
    void unitsTurnTheCornerAsTheJobSays(String treatment, int sides, int pieces) {
        Drawing drawing = Samples.drawing(Samples.meets(STREET, "corner-1", "treatment", treatment), "corner-1");
        List<Drawing.Area> units = Geometry.areas(drawing).stream().filter(area -> area.component().equals("veneer")).toList();
        assertTrue(units.stream().filter(area -> area.outline().size() == sides).count() >= pieces, units.toString());
        assertEquals(treatment.equals("mitred units"), units.stream().anyMatch(PartsTest::slopes));
        assertEquals(treatment.equals("corner bead"), !Geometry.all(drawing, "lath_accessories").isEmpty());
        double face = box(drawing, "veneer").getMaxX();
        assertTrue(Geometry.all(drawing, "veneer").contains(face - 1, face - 2), "no hole at the arris");
    }

    private static boolean slopes(Drawing.Area area) {
        for (int i = 1; i < area.outline().size(); i++) {
            Drawing.Point a = area.outline().get(i - 1);
            Drawing.Point b = area.outline().get(i);
            if (a.x() != b.x() && a.y() != b.y()) {
                return true;
            }
        }
        return false;
    }

    @Test
    void anInsideCornerCanBeSealed() {
        Drawing drawing = Samples.drawing(Samples.wall("harbour-clinic", "W2"), "corner-1");
        assertEquals(inches(0.5), box(drawing, "sealant").getWidth(), HAIR);
    }

    @Test
    void theBlockAroundAPenetrationLeavesTheJointOfItsSeal() {
        Drawing drawing = Samples.drawing(STREET, "lamp-1");
        Rectangle2D block = box(drawing, "penetration_seal");
        double lowest = Geometry.areas(drawing).stream().filter(area -> area.component().equals("veneer")).map(Geometry::area)
            .map(Area::getBounds2D).filter(box -> box.getMinY() > 0).mapToDouble(Rectangle2D::getMinY).min().orElseThrow();
        assertEquals(inches(0.375), lowest - block.getMaxY() - Stack.THIN, HAIR);
        Drawing bare = Samples.drawing(Samples.meets(STREET, "lamp-1", "block", "no"), "lamp-1");
        assertTrue(Geometry.all(bare, "penetration_seal").isEmpty());
    }

    @Test
    void theCutAwayShowsTheLayersFromInsideToOutside() {
        Drawing drawing = Samples.drawing(Samples.choose(STREET, "insulation", "xps-1"), "layers");
        double before = -1;
        for (String component : List.of("framing", "sheathing", "inner_ply", "insulation", "outer_ply", "mat", "lath", "scratch_coat",
            "setting_bed", "veneer")) {
            Rectangle2D band = box(drawing, component);
            assertTrue(band.getMinX() > before, component);
            before = band.getMinX();
        }
    }

    @Test
    void aCrossIsTwoHeavyLines() {
        Drawing drawing = Samples.drawing(Samples.meets(STREET, "base-1", "open", "no"), "base-1");
        assertEquals(2, Geometry.all(drawing, Line.class).stream().filter(line -> line.component().equals("base_screed")
            && line.pen() == Pen.HEAVY).count());
    }

    @Test
    void whatIsNotDecidedIsSaidAndBelongsToNoComponent() {
        Drawing drawing = Samples.drawing(Samples.without(STREET, "casing_bead"), "window-1.head");
        assertTrue(drawing.notes().stream().anyMatch(note -> note.equals("Casing beads: not decided; drawn in outline.")),
            drawing.notes().toString());
        assertTrue(Geometry.all(drawing, "casing_bead").isEmpty());
        assertTrue(Samples.drawing(Samples.without(STREET, "veneer"), "build-up").notes().stream()
            .anyMatch(note -> note.startsWith("Veneer units: not decided")));
        assertTrue(Samples.drawing(Samples.without(STREET, "framing"), "build-up").notes().stream()
            .anyMatch(note -> note.startsWith("The depth of the framing is not decided")));
    }

    @Test
    void aClosedTopIsSealedBetweenUnitsAndBlock() {
        Drawing drawing = Samples.drawing(Samples.meets(STREET, "top-1", "vent", "closed"), "top-1");
        assertEquals(inches(0.5), box(drawing, "sealant").getHeight(), HAIR);
        assertEquals(box(drawing, "veneer").getMaxY(), box(drawing, "sealant").getMinY(), HAIR);
        assertFalse(Geometry.all(drawing, "backer_rod").isEmpty());
    }

    @Test
    void aMembraneThickEnoughToBeSeenIsDrawnAsThickAsItIs() {
        Drawing drawing = Samples.drawing(Samples.choose(STREET, "inner_ply", "adhered-tight"), "build-up");
        assertEquals(inches(0.040), box(drawing, "inner_ply").getWidth(), 1e-6);
    }

    @Test
    void theBarrierRunsOnBehindAMountingBlock() {
        Drawing drawing = Samples.drawing(STREET, "lamp-1");
        Rectangle2D block = box(drawing, "penetration_seal");
        assertTrue(Geometry.all(drawing, "inner_ply").intersects(block.getMinX() - 1.5, inches(3) + 10, 1, 20));
    }

    @Test
    void flashingLinesTheJambAndTheDamStandsOnTheSill() {
        Drawing jamb = Samples.drawing(STREET, "window-1.jamb");
        assertTrue(box(jamb, "flexible_flashing").getMinX() < box(jamb, "framing").getMaxX());
        Drawing sill = Samples.drawing(STREET, "window-1.sill");
        assertTrue(Geometry.areas(sill).stream().filter(area -> area.component().isEmpty() && area.hatch() == Hatch.WOOD)
            .map(area -> Geometry.area(area).getBounds2D()).anyMatch(dam -> Math.abs(dam.getHeight() - inches(1)) < HAIR));
    }

    @Test
    void theEnlargedJointStandsBetweenSolidSides() {
        Drawing drawing = Samples.drawing(STREET, "floor-1.sealant");
        Area sides = Geometry.all(drawing, "veneer");
        Rectangle2D sealant = box(drawing, "sealant");
        assertTrue(sides.contains(-1, sealant.getMaxY() + 1));
        assertTrue(sides.contains(-1, sealant.getMinY() - 1));
    }

    @Test
    void theCutAwayShowsUpperCoursesOverLowerOnes() {
        Drawing drawing = Samples.drawing(STREET, "layers");
        for (String ply : List.of("inner_ply", "outer_ply")) {
            List<Line> edges = Geometry.all(drawing, Line.class).stream().filter(line -> line.component().equals(ply)).toList();
            Line seen = edges.stream().filter(line -> line.stroke() == Drawing.Stroke.SOLID).findFirst().orElseThrow();
            Line hidden = edges.stream().filter(line -> line.stroke() == Drawing.Stroke.HIDDEN).findFirst().orElseThrow();
            assertEquals(inches(2), hidden.points().get(0).y() - seen.points().get(0).y(), HAIR);
        }
    }

    @ParameterizedTest
    @MethodSource("reglet.details.DetailsTest#everyDrawing")
    void noWordStandsOnAHatchOrUnderALeader(Drawing drawing) {
        for (Text text : Geometry.all(drawing, Text.class)) {
            double height = text.height() * drawing.scale();
            double width = text.text().length() * height * 0.9;
            Rectangle2D box = new Rectangle2D.Double(text.at().x() - width / 2, text.at().y(), width, height);
            Geometry.areas(drawing).stream().filter(area -> area.hatch() != Hatch.NONE).forEach(area ->
                assertFalse(Geometry.area(area).intersects(box), drawing.id() + " " + text.text() + " on " + area.hatch()));
            Geometry.all(drawing, Leader.class).forEach(leader -> assertFalse(box.intersectsLine(leader.tip().x(), leader.tip().y(),
                leader.note().x(), leader.note().y()), drawing.id() + " " + text.text() + " under " + leader.key()));
        }
    }
}

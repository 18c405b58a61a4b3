package reglet.details;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Component;
import reglet.model.Drawing;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Subject;
import reglet.model.Unit;
import reglet.model.WallType;

/** A choice that changes the wall changes its pictures. */
class ChangesTest {
    private static final WallType STREET = Samples.wall("harbour-clinic", "W1");
    private static final Set<Drawing> UNCHANGED = Set.copyOf(Samples.drawings(STREET));
    private static final double HAIR = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"build-up", "base-1", "base-2", "window-1.head", "window-1.jamb", "window-1.sill", "top-1", "floor-1",
        "corner-1", "lamp-1"})
    void aThickerMatMovesEverythingOutsideItAndNothingInsideIt(String id) {
        Drawing thin = Samples.drawing(STREET, id);
        Drawing thick = Samples.drawing(Samples.choose(STREET, "mat", "filament-3-4"), id);
        double more = Unit.IN.toSi(0.75 - 0.375) / Unit.MM.toSi(1);
        for (String component : List.of("framing", "sheathing", "inner_ply", "outer_ply")) {
            assertEquals(right(thin, component), right(thick, component), HAIR, component);
        }
        for (String component : List.of("mat", "scratch_coat", "setting_bed", "veneer")) {
            assertEquals(right(thin, component) + more, right(thick, component), HAIR, component);
        }
    }

    private static double right(Drawing drawing, String component) {
        return Geometry.all(drawing, component).getBounds2D().getMaxX();
    }

    @ParameterizedTest
    @ValueSource(strings = {"filament-1-4", "filament-3-8", "filament-3-4", "dimpled-5-16", "wrap-1-8"})
    void theCavityIsAsDeepAsTheMatThatIsChosen(String option) {
        double depth = Lengths.mm((Quantity) Samples.PACK.component("mat").orElseThrow().option(option).orElseThrow()
            .value("thickness").orElseThrow());
        Drawing drawing = Samples.drawing(Samples.choose(STREET, "mat", option), "base-1");
        assertEquals(depth, Geometry.all(drawing, "mat").getBounds2D().getWidth(), HAIR);
        Dimensioned said = Geometry.all(drawing, Dimensioned.class).stream().filter(found -> found.component().equals("mat")).findFirst()
            .orElseThrow();
        assertEquals(depth, Geometry.length(said), HAIR);
    }

    @Test
    void theDepthOfTheFramingIsThatOfItsOption() {
        Drawing drawing = Samples.drawing(Samples.choose(STREET, "framing", "steel-16-33"), "base-1");
        assertEquals(Unit.IN.toSi(3.625) / Unit.MM.toSi(1), Geometry.all(drawing, "framing").getBounds2D().getWidth(), HAIR);
    }

    @ParameterizedTest
    @ValueSource(strings = {"base-1", "base-2", "window-1.head", "door-1.head", "top-1"})
    void waterAndAirOfTheCavityReachTheOutside(String id) {
        assertEquals(1, Geometry.drained(Samples.drawing(STREET, id)), 0.02);
    }

    @Test
    void aClosedBaseShutsTheCavityAndIsMarked() {
        shut(Samples.meets(STREET, "base-1", "open", "no"), "base-1", "foot of the wall is closed");
    }

    @Test
    void aScreedWithoutHolesShutsTheCavityAndIsMarked() {
        shut(Samples.choose(STREET, "base_screed", "steel-solid"), "base-1", "no weep holes");
    }

    @Test
    void aSealedHeadJointShutsTheCavityAndIsMarked() {
        shut(Samples.meets(STREET, "window-1", "head_joint", "sealed"), "window-1.head", "sealed");
    }

    @Test
    void aBeadWithoutHolesAtTheHeadShutsTheCavityAndIsMarked() {
        shut(Samples.choose(STREET, "casing_bead", "steel-solid"), "window-1.head", "no weep holes");
    }

    @Test
    void aClosedTopShutsTheCavityAndIsMarked() {
        shut(Samples.meets(STREET, "top-1", "vent", "closed"), "top-1", "top of the cavity is closed");
        shut(Samples.wall("mesa-library", "W1"), "top-1", "not meant to ventilate");
    }

    @Test
    void aTopWithoutAVentIsShutAndMarked() {
        shut(Samples.without(STREET, "top_vent"), "top-1", "no vent is chosen");
    }

    private static void shut(WallType wall, String id, String said) {
        Drawing drawing = Samples.drawing(wall, id);
        assertEquals(0, Geometry.drained(drawing), HAIR);
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Marked with a cross: ") && note.contains(said)),
            drawing.notes().toString());
        assertFalse(Geometry.all(drawing, Drawing.Line.class).stream().anyMatch(line -> line.arrow()
            && (line.stroke() == Drawing.Stroke.WATER || line.stroke() == Drawing.Stroke.AIR)), "no path ends outside");
    }

    @Test
    void whatIsMissingIsMarked() {
        assertAll(
            () -> marked(Samples.meets(STREET, "window-1", "sill", "none"), "window-1.sill", "nothing catches the water"),
            () -> marked(Samples.meets(STREET, "window-1", "sill", "flexible flashing flat"), "window-1.sill", "no back dam"),
            () -> marked(Samples.meets(STREET, "window-1", "head_flashing", "no"), "window-1.head", "no flashing"),
            () -> marked(Samples.meets(STREET, "window-1", "projection", "1/2 in"), "window-1.jamb", "no frame to meet"),
            () -> marked(Samples.meets(STREET, "window-1", "joint", "mortar to frame"), "window-1.jamb", "mortar against the frame"),
            () -> marked(Samples.meets(STREET, "top-1", "covered", "no"), "top-1", "nothing covers the vent"),
            () -> marked(Samples.meets(STREET, "floor-1", "cladding", "carried across"), "floor-1", "carried across"),
            () -> marked(Samples.meets(STREET, "floor-1", "flashed", "no"), "floor-1", "no flashing stands behind"),
            () -> marked(Samples.meets(STREET, "floor-1", "lath", "carried across"), "floor-1", "ties both sides"),
            () -> marked(Samples.meets(STREET, "lamp-1", "sealed", "no"), "lamp-1", "not sealed"),
            () -> marked(Samples.meets(STREET, "lamp-1", "flashed", "no"), "lamp-1", "to the barrier"),
            () -> marked(Samples.meets(Samples.meets(STREET, "base-1", "over", "roof"), "base-1", "kick_out", "no"), "base-1.kick-out",
                "no kick-out"),
            () -> marked(Samples.meets(Samples.meets(STREET, "base-1", "over", "roof"), "base-1", "flashed", "no"), "base-1",
                "no flashing is turned up"));
    }

    private static void marked(WallType wall, String id, String said) {
        Drawing drawing = Samples.drawing(wall, id);
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Marked with a cross: ") && note.contains(said)),
            id + " " + drawing.notes());
        assertFalse(Samples.drawings(STREET).stream().flatMap(sound -> sound.notes().stream()).anyMatch(note -> note.contains(said)), said);
    }

    @Test
    void noOptionOfAnyComponentDrawsThingsIntoEachOther() {
        List<String> wrong = new ArrayList<>();
        for (Component component : Samples.PACK.components()) {
            for (Option option : component.options()) {
                overlaps(wrong, Samples.choose(STREET, component.id(), option.id()), component.id() + " " + option.id());
            }
            overlaps(wrong, Samples.without(STREET, component.id()), "without " + component.id());
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void noFactOfAnyMeetingDrawsThingsIntoEachOther() {
        List<String> wrong = new ArrayList<>();
        Pack pack = Samples.PACK;
        for (Meeting meeting : STREET.meetings()) {
            Subject subject = pack.subject(meeting.subject()).orElseThrow();
            for (Property property : subject.properties()) {
                List<String> words = property.type().kind() == Kind.FLAG ? List.of("yes", "no") : property.type().words();
                for (String word : words) {
                    overlaps(wrong, Samples.meets(STREET, meeting.id(), property.name(), word),
                        meeting.id() + " " + property.name() + " " + word);
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static void overlaps(List<String> wrong, WallType wall, String change) {
        for (Drawing drawing : Samples.drawings(wall).stream().filter(drawing -> !UNCHANGED.contains(drawing)).toList()) {
            Geometry.overlaps(drawing).forEach(found -> wrong.add(change + ": " + found));
        }
    }
}

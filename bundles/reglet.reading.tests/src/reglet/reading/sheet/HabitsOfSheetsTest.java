package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/** Habits of makers' sheets, one at a time, on small drawn sheets. */
class HabitsOfSheetsTest extends SmallSheets {
    private String read(String... lines) throws Exception {
        return reading(lines).values().stream().filter(found -> !found.value().property().endsWith(".kind"))
            .map(found -> found.value().property()
            + " " + found.value().value().text() + (found.model().isEmpty() ? "" : " of " + found.model())).sorted().collect(Collectors
                .joining("; "));
    }

    @Test
    void valuesBelowTheirLabelsAreRead() throws Exception {
        assertEquals("flexible_flashing.apply_low 25 °F; flexible_flashing.thickness 25 mil", read("text 18b Butyl flashing tape",
            "at 54 110", "text 9b Total thickness", "text 9 25 mil", "text 9b Minimum application temperature", "text 9 25 °F",
            "text 9b Roll length", "text 9 75 ft"));
    }

    @Test
    void whatStandsUnderTheHeadingOfAnotherThingIsNotTheProducts() throws Exception {
        assertEquals("mat.compressive 5200 psf; mat.thickness 6 mm", read("text 18b Drainage mat", "at 54 110", "text 9b Core",
            "text 9 Thickness: 6 mm", "text 9 Compressive strength: 5,200 psf", "text 9b Fabric", "text 9 Thickness: 0.5 mm",
            "text 9b Packaging", "text 9 Thickness: 2 mil"));
    }

    @Test
    void modelsMayStandAboveRowsWhoseLabelsHaveNoHeading() throws Exception {
        assertEquals("lath_fastener.length 1-1/4 in of RN-1; lath_fastener.length 1-3/4 in of RN-2", read("text 18b Lath nails",
            "at 54 110",
            "table open 15 140,100,100", "| | RN-1 | RN-2", "| Length | 1-1/4 in | 1-3/4 in", "| Count per lb | 240 | 200"));
    }

    @Test
    void severalStandardsInOneLabelAreNoPartOfItsName() throws Exception {
        assertEquals("veneer.strength 2100 psi; veneer.weight 15 psf", read("text 18b Manufactured stone veneer", "at 54 110",
            "text 9 Compressive Strength (ASTM C39, C192): 2,100 psi minimum",
            "text 9 Saturated Weight: Does not exceed 15 lbs. per sq. ft."));
    }

    @Test
    void limitationsOfASheetThatIsNoReportAreWhatItSaysOfTheProduct() throws Exception {
        assertEquals("inner_ply.exposure 30 d; inner_ply.permeance 14 perm", read("text 18b House wrap", "at 54 110",
            "text 9 Water vapor permeance: 14 perms", "at 54 150", "text 9b Limitations", "at 54 180",
            "text 9 Cover within 30 days of hanging."));
    }

    @Test
    void valuesInTwoSystemsBesideAUnitInTwoSystemsAreRead() throws Exception {
        assertEquals("lath.opening 2 in; lath.wire 0.0625 in", read("text 18b Welded wire lath", "at 54 110",
            "table ruled 18 150,90,120", "| Feature | Unit | Value", "| Wire diameter | in. (mm) | 0.0625 (1.59)",
            "| Grid | in. (mm) | 2 x 2 (51 x 51)"));
    }

    @Test
    void aTypeThatIsAWordOfAnotherPropertyTellsThatOne() throws Exception {
        assertEquals("lath.self_furring no of ML-1; lath.self_furring yes of ML-2; lath.weight 2.5 lb/yd² of ML-1; "
            + "lath.weight 3.4 lb/yd² of ML-2", read("text 18b Diamond mesh metal lath", "at 54 110", "table ruled 18 100,150,150",
                "| Product code | Type | Weight, lb/yd² (kg/m²)", "| ML-1 | Flat | 2.5 (1.36)",
                    "| ML-2 | Self-furring, dimpled | 3.4 (1.84)"));
    }

    @Test
    void whatASentenceSaysOfEachKindIsTakenForTheModelsOfThatKind() throws Exception {
        assertEquals("backer_rod.oversize 25 to 33% of Rod C; backer_rod.oversize 25 to 50% of Rod O", read("text 18b Backer rod",
            "at 54 110", "table ruled 18 150,120,120", "| Property | Rod C | Rod O", "| Cell structure | Closed cell | Open cell",
            "at 54 220", "text 9 Pick rod 25 to 33% larger than the joint for closed cell, 25 to 50% for open cell."));
    }

    @Test
    void boardsInColumnsOfTheirThicknessAreThatThick() throws Exception {
        assertEquals("insulation.compressive 25 psi of 1 in.; insulation.compressive 25 psi of 2 in.; "
            + "insulation.material extruded polystyrene; insulation.thickness 1 in of 1 in.; insulation.thickness 2 in of 2 in.",
                read("text 18b Extruded polystyrene insulation", "at 54 110",
                "table ruled 18 160,100,70,70", "| Property | Method | 1 in. | 2 in.",
                    "| Compressive strength | ASTM D1621 | 25 psi | 25 psi"));
    }
}

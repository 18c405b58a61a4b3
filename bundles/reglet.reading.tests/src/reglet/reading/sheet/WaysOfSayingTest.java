package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading.Found;

/** Ways in which makers' sheets say what a knowing reader understands at once, each on a small drawn sheet of an invented product. */
class WaysOfSayingTest extends SmallSheets {
    private String told(String property, String... lines) throws Exception {
        Optional<Found> found = reading(lines).values().stream().filter(one -> one.value().property().equals(property)).findFirst();
        return found.map(one -> one.value().compare().map(sense -> sense.text() + " ").orElse("") + one.value().value().text() + (one
            .model().isEmpty() ? "" : " of " + one.model())).orElse("nothing");
    }

    private String told(String property, String title, String sentence) throws Exception {
        return told(property, "text 18b " + title, "at 54 110", "text 9 " + sentence);
    }

    @Test
    void theTypicalValueCountsWhereTheLeastStandsBesideIt() throws Exception {
        assertEquals("27 perm", told("inner_ply.permeance", "text 18b Building wrap", "at 54 110", "table ruled 18 130,120,110,110",
            "| Property | Test method | Minimum value | Typical value", "| Vapor permeance | ASTM E96-A | 19 perms | 27 perms",
            "| Basis weight | | 2.8 oz/yd² | 3 oz/yd²"));
    }

    @Test
    void whatMortarReachesAtTwentyEightDaysCounts() throws Exception {
        assertEquals("220 psi", told("setting_bed.bond", "text 18b Stone veneer mortar", "at 54 110", "table ruled 18 230,120",
            "| Property | Result", "| Shear bond strength, 7 days, ASTM C482 | 140 psi",
            "| Shear bond strength, 28 days, ASTM C482 | 220 psi"));
        assertEquals("220 psi", told("setting_bed.bond", "Stone veneer mortar", "Shear bond strength by ASTM C482 is 140 psi at 7 days and"
            + " 220 psi at 28 days."));
        assertEquals(28, Age.of("Compressive strength"));
        assertEquals(7, Age.of("Strength (7-day)"));
    }

    @Test
    void labelsMayBearTheLetterOfADrawingOrTheMarkOfANote() throws Exception {
        assertEquals("7/8 in of WS-10", told("base_screed.ledge", "text 18b Weep screed", "at 54 110", "table ruled 18 110,110,110",
            "| Part no. | A, ground | B, flange", "| WS-10 | 7/8 in. | 3-1/2 in.", "| WS-12 | 1-3/8 in. | 3-1/2 in."));
        assertEquals("15", told("mat.flame_spread", "text 18b Drainage mat", "at 54 110", "table ruled 18 150,120,110",
            "| Properties | Test method | Result", "| Flame spread2 | ASTM E84 | 15 (Class A)", "| Thickness | | 10 mm"));
    }

    @Test
    void rowsOfThicknessesAreOfAsManyProducts() throws Exception {
        assertEquals("6.3 of 1 in.", told("insulation.r_value", "text 18b Polyiso board insulation", "at 54 110",
            "table ruled 18 110,110", "| Thickness | R-value", "| 1 in. | 6.3", "| 2 in. | 12.8"));
    }

    @Test
    void theNearerAmountIsMeant() throws Exception {
        String laps = "Overlap upper courses 4 in. over lower courses, and vertical joints 8 in. at least.";
        assertEquals("4 in", told("inner_ply.lap", "Building wrap", laps).replace("at least ", ""));
        assertEquals("8 in", told("inner_ply.end_lap", "Building wrap", laps).replace("at least ", ""));
    }

    @Test
    void temperaturesOfStorageAreNotThoseOfPlacing() throws Exception {
        assertEquals("nothing", told("sealant.placing", "Silicone joint sealant", "12 months unopened between 40°F and 90°F."));
        assertEquals("35 to 110 °F", told("sealant.placing", "Silicone joint sealant",
            "Surfaces should be above 35°F (2°C) and below 110°F (43°C)."));
    }

    @Test
    void whatIsForbiddenBelowATemperatureIsALeastOne() throws Exception {
        assertEquals("at least 40 °F", told("scratch_coat.placing_low", "Scratch coat mortar",
            "Do not apply when air or wall is below 40°F (4°C)."));
    }

    @Test
    void aRangeAnswersWhichTemperatureIsTheLowest() throws Exception {
        assertEquals("15 °F", told("flexible_flashing.apply_low", "text 18b Butyl flashing tape", "at 54 110",
            "text 9 Thickness: 20 mil", "text 9 Application temperature: 15°F to 120°F"));
    }

    @Test
    void aDeniedMoreIsAMost() throws Exception {
        assertEquals("at most 30 in", told("veneer.longest", "Manufactured stone veneer", "No dimension is greater than 30 in."));
    }

    @Test
    void notToBeUsedAsDeniesHoweverManyWordsStandBetween() throws Exception {
        assertEquals("no", told("inner_ply.air_barrier", "Asphalt building paper", "This paper is not to be used as an air barrier."));
    }

    @Test
    void wallsOfNoncombustibleTypesSayNothingOfTheProduct() throws Exception {
        assertEquals("yes", told("mat.combustible", "text 18b Drainage mat", "at 54 110",
            "text 9 The sheet is combustible. Walls of noncombustible types need a tested assembly."));
    }

    @Test
    void marksOfNotesInAListOfUsesAreNoPartOfIt() throws Exception {
        assertEquals("NT, M, A, O, I", told("sealant.use", "text 18b Polyurethane sealant", "at 54 110",
            "text 9 ASTM C920, Type S, Grade NS, Class 25, Use NT, T, M, A, O* and I"));
    }

    @Test
    void fractionsByOneSignAreAmountsInRunningText() throws Exception {
        assertEquals("3/4 to 1-1/2 in", told("veneer.thickness", "Natural thin stone veneer", "Pieces are ¾\" to 1½\" thick."));
    }

    @Test
    void theNumberOfAScrewIsNotItsLength() throws Exception {
        assertEquals("1-5/8 in of LS-16", told("lath_fastener.length", "text 18b Lath screws", "at 54 110",
            "table ruled 18 110,110,110", "| Part no. | Size | Head", "| LS-16 | 8 x 1-5/8\" | 7/16\"", "| LS-20 | 8 x 2\" | 7/16\""));
    }

    @Test
    void aTypeByAnotherStandardIsNotTheOneAskedFor() throws Exception {
        assertEquals("nothing", told("outer_ply.rating", "text 18b Asphalt felt", "at 54 110", "text 9 Type: ASTM D226 Type I",
            "text 9 Water vapor permeance, ASTM E96 dry cup: 5 perms"));
    }
}

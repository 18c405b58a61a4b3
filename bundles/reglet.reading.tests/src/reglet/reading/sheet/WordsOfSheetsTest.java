package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.reading.value.Bounds;

/** How makers write: slips of the pen, notes at the foot, amounts that can't be, and what a sheet says its product is. */
class WordsOfSheetsTest extends SmallSheets {
    private Optional<Found> found(String property, String... lines) throws Exception {
        return reading(lines).values().stream().filter(found -> found.value().property().equals(property)).findFirst();
    }

    private static String told(Optional<Found> found) {
        return found.map(one -> one.value().compare().map(sense -> sense.text() + " ").orElse("") + one.value().value().text()
            + (one.value().method().isEmpty() ? "" : " by " + one.value().method())).orElse("nothing");
    }

    @Test
    void aMisspeltLabelIsReadAndIsLessSure() throws Exception {
        Optional<Found> slip = found("mat.compressive", "text 18b Drainage mat", "at 54 110", "text 9 Compresive strenght: 900 psf",
            "text 9 Thickness: 10 mm");
        assertEquals("900 psf", told(slip));
        assertTrue(slip.orElseThrow().confidence() < 0.9);
    }

    @Test
    void aLabelThatThePackDoesNotKnowIsToldByTheStandardBesideIt() throws Exception {
        assertEquals("12 perm by ASTM E96 Procedure A", told(found("inner_ply.permeance", "text 18b Building wrap", "at 54 110",
            "table ruled 18 190,140,120", "| Property | Test method | Result", "| Permeance of sheet to moisture as sold"
                + " | ASTM E96 Procedure A | 12 perms", "| Roll width | | 9 ft")));
    }

    @Test
    void aNoteAtTheFootTellsTheStandardOfAMarkedValue() throws Exception {
        assertEquals("14 perm by ASTM E96 Procedure A", told(found("inner_ply.permeance", "text 18b Building wrap", "at 54 110",
            "text 9 Water vapor permeance*: 14 perms", "text 9 Maximum UV exposure: 120 days", "at 54 300",
            "text 7 * Tested to ASTM E96, Procedure A, at 73 °F.")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Moist cure, not less than: 48 hours | scratch_coat.cure | at least 48 h",
        "Wait before setting units, no less than: 72 hours | scratch_coat.wait | at least 72 h",
        "Lowest air and surface temperature: 40 F | scratch_coat.placing_low | 40 °F"})
    void aLabelMaySayInWordsInWhichSenseItsValueHolds(String line, String property, String expected) throws Exception {
        assertEquals(expected, told(found(property, "text 18b Scratch coat mortar", "text 10 Preblended mortar for scratch coats.",
            "at 54 140", "text 9 Coat thickness: 1/2 in", "text 9 " + line)));
    }

    @Test
    void theMostOfAThicknessIsSaidToBeTheMost() throws Exception {
        String[] sheet = {"text 18b Manufactured stone veneer", "at 54 110", "table lined 16 190,140", "| Property | Value",
            "| Maximum thickness | 2 in", "| Maximum face dimension | 24 in"};
        assertEquals("at most 2 in", told(found("veneer.thickness", sheet)));
        // the longest dimension is what is asked for, and no limit of it
        assertEquals("24 in", told(found("veneer.longest", sheet)));
    }

    @Test
    void whatWasNotTestedIsToldAsUntested() throws Exception {
        assertEquals("no by ASTM C1248", told(found("sealant.stain_tested", "text 18b Silicone sealant", "at 54 110",
            "table lined 16 190,140", "| Peel adhesion (ASTM C794) | 20 pli", "| Staining (ASTM C1248) | not tested")));
    }

    @Test
    void aNoteSaysByWhichStandardAllButSomeWereTested() throws Exception {
        assertEquals("yes by ASTM C1670", told(found("veneer.freeze_thaw", "text 18b Manufactured stone veneer", "at 54 110",
            "table lined 16 190,140", "| Property | Value", "| Compressive strength | 2,300 psi", "| Freeze-thaw, 50 cycles | Pass",
            "text 9 Tested according to ASTM C1670 except flame spread, ASTM E84.")));
    }

    @Test
    void aSenseHoldsForItsOwnAmountWhereAnotherThingIsToBeDone() throws Exception {
        String[] sheet = {"text 18b House Wrap", "text 10 A house wrap of polyolefin.", "at 54 140",
            "text 9 Water vapor permeance: 14 perms", "text 9 Lap upper courses over lower at least 4 in. and make vertical laps 8 in."};
        assertEquals("at least 4 in", told(found("inner_ply.lap", sheet)));
        assertEquals("8 in", told(found("inner_ply.end_lap", sheet)));
    }

    @Test
    void rowsOfConditionsBelowTheNameOfATestAreItsResults() throws Exception {
        assertEquals("230 psi by ASTM C482", told(found("setting_bed.bond", "text 18b Veneer setting mortar", "at 54 110",
            "table lined 16 190,140", "| ASTM C109 – compressive strength |", "| 28 days | 3,300 psi",
            "| ASTM C482 – shear bond strength |", "| 28 days | 230 psi")));
    }

    @Test
    void aTimeBeforeTheNameOfAValueIsNoPartOfTheName() throws Exception {
        assertEquals("9.4% by ASTM C67", told(found("veneer.absorption", "text 18b Thin brick", "at 54 110",
            "table ruled 18 220,140", "| Property | Result", "| Thickness | 5/8 in.", "| 5-hour boil absorption (ASTM C67) | 9.4 %")));
    }

    @Test
    void minimumBehindTheNameOfALimitIsItsSense() throws Exception {
        assertEquals("at least 20 °F", told(found("flexible_flashing.apply_low", "text 18b Butyl flashing tape", "at 54 110",
            "text 9 Total thickness: 25 mils", "text 9 Application temperature, minimum: 20 °F")));
    }

    @Test
    void theStandardThatTheProductConformsToShowsNoSizeInTheNextSentence() throws Exception {
        assertEquals("1/4 in", told(found("lath.furring", "text 18b Diamond mesh metal lath", "at 54 110",
            "text 9 The lath is drawn of galvanized steel and meets ASTM C847. Dimples hold the mesh 1/4 in. off the wall.")));
    }

    @Test
    void anAmountThatNoSuchProductHasIsNotShown() throws Exception {
        SheetReading reading = reading("text 18b Diamond mesh metal lath", "at 54 110", "text 9 Weight: 34 lb/sq yd",
            "text 9 Finish: G60 galvanized");
        assertTrue(reading.values().stream().noneMatch(found -> found.value().property().equals("lath.weight")));
        assertTrue(reading.unread().stream().anyMatch(unread -> unread.text().contains("34") && unread
            .why().startsWith("No such product")));
    }

    @Test
    void everyAmountThatThePackOffersIsPlausible() throws Exception {
        Pack pack = SheetFixtures.pack();
        Bounds bounds = new Bounds(pack);
        int tried = 0;
        for (Component component : pack.components()) {
            for (var property : component.properties()) {
                String path = component.id() + "." + property.name();
                List<reglet.model.Value> values = component.options().stream().map(option -> option.value(property.name()))
                    .flatMap(Optional::stream).collect(Collectors.toCollection(ArrayList::new));
                property.usual().ifPresent(values::add);
                for (var value : values) {
                    assertTrue(bounds.holds(path, value), path + " " + value.text());
                    tried++;
                }
            }
        }
        assertTrue(tried > 100);
        assertTrue(pack.plausible().size() > 60);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Stone Veneer Mortar | Polymer-modified mortar for adhered manufactured stone | setting_bed",
        "Pointing Mortar | Pre-blended mortar for the joints of stone veneer | unit_joint",
        "Butyl Flashing | Self-adhered flashing for sealing windows to house wrap | flexible_flashing",
        "Gun-grade liquid flashing | A silyl-terminated liquid flashing compatible with sealants | flexible_flashing",
        "Silicone Sealant | A low-modulus sealant for joints in stone veneer and metal flashing | sealant",
        "Backer Rod | Closed cell backer rod under silicone sealants | backer_rod",
        "Drainage Mat | A drainage mat between the weather barrier and lath | mat",
        "Lath Screws | Wafer head screws for metal lath on steel studs | lath_fastener",
        "Weep Screed | Foundation weep screed with holes for stucco and stone veneer | base_screed",
        "Casing Bead | Vinyl casing bead, used as a stop for stucco at windows | casing_bead",
        "Water Repellent | A silane water repellent for manufactured stone veneer and mortar joints | water_repellent",
        "Gypsum Sheathing | Glass mat gypsum sheathing under air barriers and stone veneer | sheathing",
        "Rigid Insulation | Polyisocyanurate insulation board over sheathing behind veneer | insulation",
        "Manufactured Stone Veneer | Units that are set with mortar over metal lath | veneer"})
    void aSheetIsOfWhatItSaysItsProductIs(String title, String sentence, String component) throws Exception {
        assertEquals(component, reading("text 18b " + title, "text 10 " + sentence + ".", "at 54 140", "text 9 Color: grey").component());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Do not leave the wrap uncovered for more than 120 days. | inner_ply.exposure | 120 d",
        "Cover with the cladding within 30 days. | inner_ply.exposure | 30 d",
        "Horizontal laps are 2 inches and vertical laps are 6 inches as a minimum. | inner_ply.end_lap | at least 6 in",
        "Horizontal laps are 2 inches and vertical laps are 6 inches as a minimum. | inner_ply.lap | at least 2 in",
        "Lap each course at least 3 in. over the one below. | inner_ply.lap | at least 3 in"})
    void whatSentencesAskOfABarrierIsRead(String sentence, String property, String expected) throws Exception {
        assertEquals(expected, told(found(property, "text 18b House Wrap", "text 10 A house wrap of polyolefin.", "at 54 140",
            "text 9 Water vapor permeance: 14 perms", "text 9 " + sentence)));
    }

    @Test
    void whatIsSaidOfRoofsIsNotSaidOfWalls() throws Exception {
        assertEquals("at least 6 in", told(found("inner_ply.end_lap", "text 18b House Wrap", "at 54 110", "text 9b Application to walls",
            "text 9 Lap end joints at least 6 in.", "at 54 160", "text 9b Application to roofs", "text 9 Lap end joints 4 in.")));
    }

    @Test
    void aBarrierThatIsNoAirBarrierIsNone() throws Exception {
        assertEquals("no", told(found("inner_ply.air_barrier", "text 18b House Wrap", "at 54 110", "text 9 Water vapor permeance: 14 perms",
            "text 9 This wrap is not an air barrier and is not sold as one.")));
    }

    @Test
    void lapsThatDifferAtSidesAndEndsAreNotToldAsOne() throws Exception {
        String[] head = {"text 18b Diamond mesh metal lath", "at 54 110", "text 9 Weight: 2.5 lb/sq yd"};
        assertEquals("nothing", told(found("lath.lap", head[0], head[1], head[2],
            "text 9 Lap sides at least 1/2 in. and ends at least 1 in.")));
        assertEquals("at least 1 in", told(found("lath.lap", head[0], head[1], head[2], "text 9 Lap sides and ends at least 1 in.")));
    }

    @Test
    void whatIsSaidOfAnotherPartOfTheWallIsNotTheProducts() throws Exception {
        assertEquals("1 to 2 in", told(found("veneer.thickness", "text 18b Manufactured stone veneer", "at 54 110",
            "text 9 A scratch coat 1/2 inch thick is placed first.", "text 9 The units are 1 inch to 2 inches thick.")));
    }

    @Test
    void aRangeOfTemperaturesMayStateEachEndTwice() throws Exception {
        assertEquals("-20 to 122 °F", told(found("sealant.placing", "text 18b Silicone sealant", "at 54 110",
            "text 9 Application temperature: -20 °F (-29 °C) to 122 °F (50 °C) on a dry face.")));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What makers say in running text and in lists, one way of saying it at a time, on small drawn sheets. */
class ProseOfSheetsTest extends SmallSheets {
    private String read(String... lines) throws Exception {
        return reading(lines).values().stream().filter(found -> !found.value().property().endsWith(".kind")).map(found -> found.value()
            .property() + " " + found.value().compare().map(sense -> sense.text() + " ").orElse("") + found.value().value().text()
            + (found.model().isEmpty() ? "" : " of " + found.model())).sorted().collect(Collectors.joining("; "));
    }

    @Test
    void anAmountIsToldByTheWordsRoundItThoughNoTurnOfPhraseFits() throws Exception {
        SheetReading reading = reading("text 18b Drainage mat", "at 54 110",
            "text 9 Drainage efficiency, found by ASTM E2273 in the autumn, came to 96 %.",
            "text 9 Sunlight harms the filaments: the crew sees to it that nothing of it lies in sun and weather after 40 days.");
        assertEquals("mat.drainage_efficiency 96%; mat.exposure 40 d", reading.values().stream().filter(found -> !found.value().property()
            .endsWith(".kind")).map(found -> found.value().property() + " " + found.value().value().text()).sorted().collect(Collectors
                .joining("; ")));
        assertTrue(reading.values().stream().allMatch(found -> found.confidence() < 0.9), reading.values().toString());
    }

    @Test
    void whatIsSaidOfAnotherProductIsNotTaken() throws Exception {
        assertEquals("mat.thickness 3/8 in", read("text 18b Drainage mat", "at 54 110", "text 9 The mat is 3/8 in. thick.",
            "text 9 A scratch coat 1/2 in. (13 mm) thick comes over it, and the building paper below it laps 6 in.",
            "text 9 Keep its lower edge 4 in. above soil; the trowel has notches of 1/4 by 1/4 in."));
    }

    @Test
    void itemsThatBeginWithADesignationAreEachOfAModel() throws Exception {
        assertEquals("casing_bead.ground 3/4 in of KB-75; casing_bead.ground 7/8 in of KB-88", read("text 18b Casing bead", "at 54 110",
            "text 9 Sizes in stock:", "text 9 No. KB-75, ground 3/4 in., for two coats",
            "text 9 No. KB-88, ground 7/8 in., for three coats"));
    }

    @Test
    void whatIsSaidOfModelsByNameIsSaidOfThoseAlone() throws Exception {
        assertEquals("top_vent.ember no of QV-2; top_vent.ember no of QV-3; top_vent.ember yes of QV-2E; top_vent.opening 1/2 in of QV-2; "
            + "top_vent.opening 1/2 in of QV-2E; top_vent.opening 3/4 in of QV-3", read("text 18b Top-of-wall vent", "at 54 110",
                "table open 15 120,120", "| Part | Slot, in.", "| QV-2 | 1/2", "| QV-3 | 3/4", "| QV-2E | 1/2", "text 9 ",
                "text 9 QV-2E has a core of coated mesh. It is listed against embers by a laboratory.",
                "text 9 QV-2 and QV-3 are not ember rated."));
    }

    @Test
    void aColumnIsToldByItsWordsWhereItsHeadingSaysNothing() throws Exception {
        assertEquals("lath_fastener.into steel of WS-1; lath_fastener.into wood of WW-2; lath_fastener.length 1-5/8 in of WS-1; "
            + "lath_fastener.length 2 in of WW-2", read("text 18b Lath screws", "at 54 110", "table open 15 100,140,100",
                "| Catalog No. | Family | Length", "| WS-1 | steel, drill point | 1-5/8 in.", "| WW-2 | wood, coarse | 2 in."));
    }

    @Test
    void partsOfAnInchMayBeWrittenInWords() throws Exception {
        assertEquals("lath_fastener.into wood; lath_fastener.penetration at least 3/4 in", read("text 18b Lath nails", "at 54 110",
            "text 9 The point shall find at least three quarters of an inch of wood behind the sheathing."));
    }

    @Test
    void aStopBehindAnAbbreviationEndsNoSentence() throws Exception {
        assertEquals("setting_bed.thickness at most 1/2 in", read("text 18b Veneer mortar", "at 54 110",
            "text 9 After beating in, the bed should not be thicker than ½ in. anywhere under the unit."));
    }

    @Test
    void aTestIsPassedWhoseResultKeepsTheLimitBesideIt() throws Exception {
        assertEquals("veneer.freeze_thaw yes; veneer.strength 2400 psi", read("text 18b Manufactured stone veneer", "at 54 110",
            "table open 15 150,110,110,80", "| Property | Standard | Requirement | Result",
            "| Compressive strength | ASTM C1670 | 2,100 psi | 2,400 psi", "| Freeze-thaw | ASTM C67 | mass loss ≤ 3.0 % | 0.6 %"));
    }

    @Test
    void aHeadingOfThicknessAndCoverageIsAboutTheFilmToo() throws Exception {
        assertEquals("inner_ply.air_barrier yes; inner_ply.film 12 mil", read("text 18b Fluid-applied air and water barrier", "at 54 110",
            "text 9b 2.0 THICKNESS AND COVERAGE",
            "text 9 Spray one coat of 24 wet mils, which dries to 12 mils. A gallon covers 60 sq. ft."));
    }

    @Test
    void temperaturesBelowZeroMayBeWrittenInWords() throws Exception {
        assertEquals("sealant.base silicone; sealant.placing -20 to 120 °F", read("text 18b Silicone joint sealant", "at 54 110",
            "text 9 Gun it between minus 20 °F and 120 °F onto dry, clean faces."));
    }

    @Test
    void aSizeOfOneModelInALongerSentenceIsNotThatOfAll() throws Exception {
        assertEquals("lath_fastener.length 1-5/8 in of WS-1; lath_fastener.length 2 in of WW-2; lath_fastener.root .125 in of WW-2",
            read("text 18b Lath screws", "at 54 110", "table open 15 100,100", "| Catalog No. | Length", "| WS-1 | 1-5/8 in.",
                "| WW-2 | 2 in.", "text 9 ", "text 9 Case hardened steel wire. Root diameter of WW-2 is .125 in."));
    }

    @Test
    void conditionsOfAReportSayHowItsProductIsLaid() throws Exception {
        String[] report = {"text 18b Evaluation Report XR-2041", "at 54 110", "text 9 Report holder: Sandpiper Wraps, 4 Mill Lane",
            "text 9 Subject: Sandpiper 60 water-resistive barrier", "text 9 The product is a white polymer sheet of woven polypropylene.",
            "text 9b 4 Conditions of use", "text 9 4.1 The sheet shall be covered within 120 days.",
            "text 9 4.2 Ends of the sheet shall be lapped at least 6 in.",
            "text 9 4.3 Studs shall be spaced no more than 16 in. on center."};
        String told = read(report);
        assertTrue(told.contains("inner_ply.exposure at most 120 d") || told.contains("inner_ply.exposure 120 d"), told);
        assertTrue(told.contains("inner_ply.end_lap at least 6 in"), told);
    }

    @Test
    void conditionsOfACertificateSayHowCoursesLap() throws Exception {
        String told = read("text 18b Certificate of Conformance", "at 54 110", "text 9 Product: Rushlight 60 building paper",
            "text 9b Conditions of use",
            "text 9 Courses are laid level, the upper over the lower by at least 2 inches.", "text 9 Ends lapped not less than 6 in.");
        assertTrue(told.contains("ply.lap at least 2 in") && told.contains("ply.end_lap at least 6 in"), told);
    }

    @Test
    void aTrimThatCoversASlotKeepsNoMortarOut() throws Exception {
        assertEquals("top_vent.opening 3/8 in", read("text 18b Top-of-wall vent", "at 54 110", "leaders 400 Free opening = 3/8 in.",
            "text 9 Set it at the top of the drained space, under a trim that covers the slot from above."));
    }

    @Test
    void ofSeveralStandardsTheOneThatNamesTheMortarShowsIt() throws Exception {
        assertEquals("ANSI A118.15", reading("text 18b Veneer setting mortar", "at 54 110",
            "leaders 400 Standards = ANSI A118.4, A118.11 and A118.15").values().stream().filter(one -> one.value().property().equals(
                "setting_bed.mortar")).map(one -> one.value().method()).collect(Collectors.joining("; ")));
    }

    @Test
    void theStandardByWhichAFlagWasTestedIsTold() throws Exception {
        assertEquals("yes by ASTM C666", reading("text 18b Thin stone veneer", "at 54 110", "leaders 400 Thickness = 1 in.",
            "text 9 Each bed was put through freeze-thaw testing, 50 cycles to ASTM C666 in water, without cracks.").values().stream()
            .filter(one -> one.value().property().equals("veneer.freeze_thaw")).map(one -> one.value().value().text() + " by " + one.value()
                .method()).collect(Collectors.joining("; ")));
    }

    @Test
    void whatSaysAFlagInMostWordsIsWhereItStands() throws Exception {
        assertEquals("weep holes", reading("text 18b Foundation weep screed", "at 54 110",
            "text 9 A weep screed ends the plaster. The nose is punched with weep holes at 8 in.").values().stream().filter(one ->
                one.value().property().equals("base_screed.weeps")).map(one -> one.value().text()).collect(Collectors.joining("; ")));
    }

    @Test
    void aFilmIsToldInDryMils() throws Exception {
        assertTrue(read("text 18b Fluid-applied air barrier", "at 54 110", "text 9 Lay on 25 wet mils to yield 12 dry mils.").contains(
            "inner_ply.film 12 mil"));
    }

    @Test
    void theStandardRightBehindAnAmountShowsIt() throws Exception {
        assertEquals("peel ASTM C794", reading("text 18b Silicone joint sealant", "at 54 110",
            "text 9 Peels from mortar at 30 lb/in. (ASTM C794).").values().stream().filter(one -> one.value().property().equals(
                "sealant.peel")).map(one -> "peel " + one.value().method()).collect(Collectors.joining("; ")));
        assertEquals("90% ASTM C67", reading("text 18b Penetrating water repellent", "at 54 110",
            "text 9 It cuts water uptake by 90 % (ASTM C67).").values().stream().filter(one -> one.value().property().equals(
                "water_repellent.uptake")).map(one -> one.value().value().text() + " " + one.value().method()).collect(Collectors
                    .joining("; ")));
    }

    @Test
    void whatHoldsButForSomeIsNeitherYesNorNo() throws Exception {
        assertEquals("", read("text 18b Butyl flashing", "at 54 110", "text 9 No primer is needed except on concrete and raw brick."));
        assertEquals("", read("text 18b Building wrap", "at 54 110", "text 9 It is neither an air barrier nor a vapor retarder."));
    }

    @Test
    void anAmountThatIsTakenForOnePropertyIsNoneOfAnother() throws Exception {
        assertEquals("veneer.face at most 720 in²; veneer.thickness at most 2-5/8 in", read("text 18b Manufactured stone veneer",
            "at 54 110",
            "text 9 Units are at most 2-5/8 in. thick and no face is larger than 720 sq in."));
    }
}

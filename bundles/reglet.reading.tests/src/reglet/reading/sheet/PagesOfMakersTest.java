package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What makers' pages say of whose values these are and where they say it, on small drawn sheets: laboratories, series, stock numbers. */
class PagesOfMakersTest extends SmallSheets {
    private String sentence(String component, String line, String property) throws Exception {
        return said(readingOf(component, "text 18b Product", "at 54 110", "text 9 " + line), component + "." + property);
    }

    @Test
    void theMeanOfALaboratorysSpecimensIsTheProductsAndTheSpecimensAreNoModels() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Ridge Ledge veneer", "at 54 120", "text 10b Table 2. Results by specimen",
            "at 54 136", "table ruled 18 120,150,120", "| Specimen | Compressive strength, psi | Absorption, %", "| KR-1 | 2610 | 13.9",
            "| KR-2 | 2880 | 13.1", "| Average | 2745 | 13.5");
        assertEquals("2745 psi", said(reading, "veneer.strength"));
        assertEquals("13.5%", said(reading, "veneer.absorption"));
    }

    @Test
    void aTitleOfResultsIsNoModelThoughAnotherTableSaysTheSame() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Ridge Ledge veneer", "at 54 120", "text 10b Table 1. Summary of results",
            "at 54 136", "table ruled 18 180,110,110", "| Property | Test method | Result", "| Compressive strength | ASTM C39 | 2740 psi",
            "| Absorption | ASTM C140 | 13.4 %", "at 54 230", "text 10b Table 2. Data of the lot", "at 54 246",
            "table ruled 18 180,110,110", "| Property | Test method | Result", "| Compressive strength | ASTM C39 | 2740 psi");
        assertEquals("2740 psi by ASTM C39", said(reading, "veneer.strength"));
    }

    @Test
    void resultsBelowTheProductsNameHoldForEachOfItsProfiles() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Oxbow Ridge Stone Veneer", "at 54 120", "table ruled 18 120,110,110",
            "| Profile | Average thickness | Longest unit", "| Kirk Ledge | 1-1/2 in. | 20 in.", "| Moor Rubble | 1-3/4 in. | 18 in.",
            "at 54 210", "table ruled 18 160,90,130,100", "| Property | Test method | Requirement, ASTM C1670 | Oxbow Ridge",
            "| Compressive strength | ASTM C39 | ≥ 2,100 psi | 2,650 psi", "| Absorption | ASTM C140 | varies | 14.2%");
        assertEquals("2650 psi by ASTM C39", said(reading, "veneer.strength"));
        assertEquals("1-1/2 in of Kirk Ledge; 1-3/4 in of Moor Rubble", said(reading, "veneer.thickness"));
    }

    @Test
    void aModelIsCalledAsTheOtherTablesCallItAndNotByItsStockNumber() throws Exception {
        SheetReading reading = readingOf("inner_ply", "text 18b Two-ply paper", "at 54 120", "table ruled 18 150,110,90,90",
            "| Property | Test | Two-Ply 10 | Two-Ply 60", "| Water vapor permeance | ASTM E96, Procedure A | 27 perms | 12 perms",
            "at 54 200", "table ruled 18 90,110,110", "| Stock no. | Product | Roll size", "| 2210 | Two-Ply 10 | 40 in. x 97 ft",
            "| 2260 | Two-Ply 60 | 40 in. x 97 ft");
        assertEquals("12 perm of Two-Ply 60 by ASTM E96 Procedure A; 27 perm of Two-Ply 10 by ASTM E96 Procedure A",
            said(reading, "inner_ply.permeance"));
    }

    @Test
    void twoModelsInOneCellAreEachToldOf() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Wall flashing", "at 54 120", "table ruled 18 110,80,100,100",
            "| Shape | Gauge | Thickness | Zinc coating", "| D-3, D-5 | 26 | 0.0217 in. | G90", "| ZE-2 (economy) | 28 | 0.0187 in. | G60",
            "at 54 200", "table ruled 18 110,80,80", "| Shape | Up leg | Hem", "| D-3 | 3 in. | 3/8 in.", "| D-5 | 5 in. | 1/2 in.",
            "| ZE-2 | 2 in. | 1/4 in.");
        assertEquals("0.0187 in of ZE-2; 0.0217 in of D-3; 0.0217 in of D-5", said(reading, "metal_flashing.thickness"));
    }

    @Test
    void theSizesOfModelsMayStandUnderPackaging() throws Exception {
        SheetReading reading = readingOf("flexible_flashing", "text 18b QS-40 wall flashing", "at 54 120", "text 11b Packaging",
            "at 54 136", "table ruled 18 100,110,110,80", "| Item no. | Width | Roll length | Rolls/ctn",
            "| QS4004 | 4 in. (102 mm) | 75 ft | 12", "| QS4006 | 6 in. (152 mm) | 75 ft | 8");
        assertEquals("4 in of QS4004; 6 in of QS4006", said(reading, "flexible_flashing.width"));
    }

    @Test
    void theLetterOfADrawingMayStandBetweenANameAndItsUnit() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Weep screed", "at 54 120", "table ruled 18 110,130,130",
            "| Part No. | Ground \"G\" in. (mm) | Nailing flange \"F\" in. (mm)", "| TW-7-050 | 1/2 (12.7) | 3-1/2 (89)",
            "| TW-7-087 | 7/8 (22.2) | 3-1/2 (89)");
        assertEquals("1/2 in of TW-7-050; 7/8 in of TW-7-087", said(reading, "base_screed.ledge"));
    }

    @Test
    void whatLiesOverTheFaceOfAFlangeIsNoFlange() throws Exception {
        assertEquals("", sentence("base_screed", "Lap the barrier over the face of the nailing flange 2\" minimum, then run the lath at "
            + "least 1\" over it.", "leg"));
    }

    @Test
    void theTitleOfASeriesAboveASentenceSaysWhatItsModelsAreMadeOf() throws Exception {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b Casing beads"));
        page.addAll(List.of("at 54 120", "text 11b Series 66G – Galvanized Steel, expanded flange", "at 54 136",
            "text 9 26 gauge, G60 zinc coating.", "at 54 150", "table ruled 18 100,100,100", "| Item | Ground | Pcs/carton",
            "| 66G-050 | 1/2\" (13 mm) | 50", "| 66G-075 | 3/4\" (19 mm) | 50", "at 54 230", "text 11b Series 66V – PVC, solid and "
                + "weep profiles", "at 54 246",
            "text 9 Rigid and impact-modified.", "at 54 260", "table ruled 18 100,100,100", "| Item | Ground | Pcs/carton",
            "| 66V-075 | 3/4\" (19 mm) | 50", "| 66V-088 | 7/8\" (22 mm) | 50"));
        assertEquals("PVC of 66V-075; PVC of 66V-088; galvanized steel of 66G-050; galvanized steel of 66G-075",
            said(readingOf("casing_bead", page.toArray(String[]::new)),
            "casing_bead.material"));
    }

    @Test
    void aColumnWithoutANameOfThePackSaysInWordsWhatEachModelHas() throws Exception {
        SheetReading reading = readingOf("casing_bead", "text 18b Casing beads", "at 54 120", "table ruled 18 100,100,200",
            "| Item | Ground | Use", "| V-075 | 3/4\" (19 mm) | Jambs and sills, no weep holes", "| VW-075 | 3/4\" (19 mm) | Heads, with "
                + "weep holes");
        assertEquals("yes of VW-075", said(reading, "casing_bead.head_weeps").replace("no of V-075; ", ""));
    }

    @Test
    void theRodThatTheFirstSentencesDescribeIsTheSheetsOwn() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b HBR Backer Rod", "at 54 110"));
        page.addAll(List.of("text 9 HBR is a round, non-gassing rod of extruded polyethylene foam for joints in walls.",
            "at 54 122", "text 9 The closed-cell body and outer skin keep water out of the joint.",
            "at 54 136", "text 9 It is made in coils and in sticks, which are cut to length on the site with a knife.",
            "at 54 160", "text 9 Where a joint needs to breathe from behind with one-part urethane, use our open-cell rod PBR.",
            "at 54 180", "text 9 Joints up to 1/2 in. deep have no room for rod: lay a bond breaker tape on the back of the joint."));
        assertEquals("closed cell", said(readingOf("backer_rod", page.toArray(String[]::new)), "backer_rod.kind"));
    }

    @Test
    void severalTestsOfAMockupMayStandInASentence() throws Exception {
        assertEquals("water spray, sealant adhesion, sounding of units, pull-off of units", sentence("mockup", "Test it by water spray at "
            + "the window, hand pull of the sealant for adhesion, tapping of every stone for hollow spots and pull-off of stones.",
                "tests"));
        assertEquals("3", sentence("mockup", "At 28 days a laboratory makes three pull-off tests on the face.", "face_tests"));
    }

    @Test
    void aSheetThatTellsAllThatIsAskedOfAMockupIsOfIt() throws Exception {
        SheetReading reading = reading("text 14b Adhered Veneer Installation Guide", "at 54 96",
            "text 9 Order flats and corner units together and allow 5 to 10 percent for trimming.", "at 54 110",
            "text 9 Build a wall mock-up of at least 6 ft by 8 ft in place on the building, at a spot the architect agrees to.",
                "at 54 124",
            "text 9 Leave each layer uncovered along one side, stepped back about 12 inches.", "at 54 138",
            "text 9 Test it by water spray, hand pull of the sealant for adhesion, tapping of stones and pull-off of stones.", "at 54 152",
            "text 9 At 28 days a laboratory makes three pull-off tests on the face.", "at 54 166",
            "text 9 An accepted mock-up may stay as part of the finished wall.");
        assertEquals("mockup", reading.component());
    }

    @Test
    void aMakersNameSetLargestIsNotTheProduct() throws Exception {
        SheetReading reading = reading("text 18b Dunmarrow Lath Works, Inc.", "at 54 100", "text 13b Corner Lath and Corner Aids",
            "at 54 130",
            "text 9 Small pieces of lath reinforce the places where scratch coats crack first: corners and the ends of openings.",
                "at 54 150",
            "table ruled 18 90,160,120,120", "| Item | Description | Material | Lap on lath",
            "| DC-66 | Corner lath, outside | Galvanized steel, G60 | 4\" min. each leg",
            "| DC-66S | Corner lath, outside | Stainless steel, Type 304 | 4\" min. each leg");
        assertTrue(reading.product().contains("Corner Lath"), reading.product());
        assertEquals("lath_accessories", reading.component());
        assertEquals("at least 4 in of DC-66; at least 4 in of DC-66S", said(reading, "lath_accessories.corner_lap"));
    }

    @Test
    void aPaperThatLapsOverALegSaysNothingOfTheLapOfTheMetal() throws Exception {
        assertEquals("at least 3 in", sentence("metal_flashing", "The leg goes against the sheathing, paper laps over it by 2 in. or more. "
            + "Lap joints 3 in. minimum.", "lap"));
    }

    @Test
    void aWorkThatAMortarSurpassesTwoStandardsInIsTheBetterOne() throws Exception {
        assertEquals("improved modified dry-set", sentence("setting_bed", "Exceeds ANSI A118.4 as a modified mortar and the "
            + "requirements of ANSI A118.15 as an improved one.", "mortar"));
    }

    @Test
    void whatOnlyHasTheDimensionsOfAStandardIsNotMadeToIt() throws Exception {
        String[] rows = {"text 18b Joint accessories", "at 54 120", "table ruled 18 100,120,100", "| Part | Material | Joint width",
            "| XJ-50Z | Zinc alloy | 1/4\"", "| XJ-87P | PVC | 3/8\"", "at 54 190"};
        List<String> dimensions = new ArrayList<>(List.of(rows));
        dimensions.add("text 9 All parts meet the dimensions of ASTM C1861.");
        List<String> made = new ArrayList<>(List.of(rows));
        made.add("text 9 All parts meet ASTM C1861.");
        assertEquals("PVC of XJ-87P; zinc alloy of XJ-50Z", said(readingOf("movement_joint", dimensions.toArray(String[]::new)),
            "movement_joint.material"));
        assertEquals("PVC of XJ-87P by ASTM C1861; zinc alloy of XJ-50Z by ASTM C1861", said(readingOf("movement_joint", made.toArray(
            String[]::new)), "movement_joint.material"));
    }

    @Test
    void editionsMayStandBeforeTheCodes() throws Exception {
        assertEquals("2018, 2021", sentence("lath", "Evaluated under Evaluation Report No. ER-71306, editions 2018 and 2021 of the IBC and "
            + "IRC.", "report_editions"));
    }

    @Test
    void aShortSentenceBelowTheTitleOfASeriesIsOfItsModels() throws Exception {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b Weep screeds"));
        page.addAll(List.of("at 54 120", "text 11b GW SERIES — METAL", "at 54 136",
            "text 9 Galvanized steel sheet, ASTM A653, G60. 26 gauge, base metal .0172\" min.", "at 54 150", "table ruled 18 100,100,100",
            "| Part No. | Ground | Pcs./Ctn.", "| GW-50 | 1/2\" | 25", "| GW-78 | 7/8\" | 25", "at 54 230", "text 11b VW SERIES — VINYL",
            "at 54 246", "text 9 Extruded rigid PVC compound complying with ASTM D1784, exterior grade, white. Wall thickness "
                + ".050\" nominal.",
            "at 54 260", "table ruled 18 100,100,100", "| Part No. | Ground | Pcs./Ctn.", "| VW-50 | 1/2\" | 30", "| VW-78 | 7/8\" | 30"));
        SheetReading reading = readingOf("base_screed", page.toArray(String[]::new));
        assertEquals(".050 in of VW-50; .050 in of VW-78; at least .0172 in of GW-50; at least .0172 in of GW-78", said(reading,
            "base_screed.thickness"));
        assertEquals("galvanized steel of GW-50; galvanized steel of GW-78", said(reading, "base_screed.material").replaceAll(
            "PVC of \\S+ ?", "").replaceAll(" by ASTM A653", ""));
    }

    @Test
    void aColumnOfShortLinesAtTheLeftOfTextAndTablesIsReadByItself() throws Exception {
        List<String> page = new ArrayList<>(List.of("at 160 40", "text 14b Movement Joints"));
        String[] left = {"PRODUCT GROUP", "Joints for plaster", "and adhered stone", "ITEMS", "ZM-1 one-piece", "PD-2 two-piece", "PACKING",
            "ZM-1: 20 pieces", "ACCESSORIES", "Cross, tee and end", "pieces for ZM-1", "STORAGE", "Flat and dry", "WARRANTY", "Five years",
            "TECHNICAL HELP", "Weekdays through", "your dealer"};
        for (int i = 0; i < left.length; i++) {
            row(page, 60 + 16 * i, "40 " + left[i]);
        }
        String text = "Preformed joint accessories that divide plaster and adhered stone veneer into panels";
        for (int i = 0; i < 11; i++) {
            row(page, 60 + 12 * i, "134 " + text);
        }
        row(page, 204, "292 ZM-1", "430 PD-2");
        row(page, 220, "134 Material", "292 Zinc alloy", "430 Rigid PVC");
        row(page, 236, "134 Width of joint opening", "292 1/4 in. (6 mm)", "430 1/2 in. (13 mm)");
        row(page, 252, "134 Movement in plane", "292 1/16 in.", "430 1/4 in.");
        assertEquals("1/2 in of PD-2; 1/4 in of ZM-1", said(readingOf("movement_joint", page.toArray(String[]::new)),
            "movement_joint.width"));
    }

    @Test
    void aLossAfterCyclesSaysThatFreezingWasTested() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Cast veneer", "at 54 120", "table ruled 18 120,90,120,150",
            "| Property | Test method | C1670 requirement | Result", "| Freeze-thaw | ASTM C1262 | see standard | 0.8 % mass loss, 100 "
                + "cycles");
        assertEquals("yes by ASTM C1262", said(reading, "veneer.freeze_thaw"));
    }
}

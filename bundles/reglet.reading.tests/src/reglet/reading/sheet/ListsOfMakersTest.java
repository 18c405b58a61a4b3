package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** Lists with drawn dots, columns set tight, notes and remarks beside labels, as makers' sheets have them, on small drawn sheets. */
class ListsOfMakersTest extends SmallSheets {
    private String sentence(String component, String line, String property) throws Exception {
        return said(readingOf(component, "text 18b Product", "at 54 110", "text 9 " + line), component + "." + property);
    }

    private static List<String> page(String... lines) {
        return new ArrayList<>(List.of(lines));
    }

    private SheetReading reading(String component, List<String> page) throws Exception {
        return readingOf(component, page.toArray(String[]::new));
    }

    @Test
    void aDrawnDotBeginsAnItemAsAWrittenOneDoes() throws Exception {
        List<String> page = page("text 18b Wall-head vent");
        // without the dots the second line would go on with the first: "no roofs insect screen"
        row(page, 100, "64 Made for walls alone, for eaves and soffits, and for no roofs");
        row(page, 111, "64 Insect screen of stainless steel mesh, clinched in");
        row(page, 122, "64 Joint covers are packed apart");
        page.addAll(List.of("dot 57 106 4", "dot 57 117 4", "dot 57 128 4"));
        assertEquals("yes", said(reading("top_vent", page), "top_vent.insect"));
    }

    @Test
    void anItemOfAListIsNoMaker() throws Exception {
        List<String> page = page("text 18b Wall-head vent");
        row(page, 100, "64 Slot taped at the works");
        page.add("dot 57 106 4");
        assertEquals("", reading("top_vent", page).maker());
    }

    @Test
    void twoHeadingsSetTightAreThoseOfTheColumnsBelow() throws Exception {
        List<String> page = page("text 18b Flashing tape");
        row(page, 100, "54 Item", "97 Width", "123.5 Rolls/ctn");
        row(page, 113, "54 KB25-4", "97 4 in.", "123.5 12");
        row(page, 126, "54 KB25-6", "97 6 in.", "123.5 8");
        row(page, 139, "54 KB25-9", "97 9 in.", "123.5 4");
        assertEquals("4 in of KB25-4; 6 in of KB25-6; 9 in of KB25-9", said(reading("flexible_flashing", page), "flexible_flashing.width"));
    }

    @Test
    void aMethodOfTwoLinesBesideAValueSetTightIsReadWhole() throws Exception {
        List<String> page = page("text 18b Building wrap");
        row(page, 100, "54 Property", "200 Test method", "294 Result");
        row(page, 114, "54 Thickness", "200 ASTM D1777", "294 52 mils");
        row(page, 128, "54 Air permeance at 75 Pa", "200 ASTM E2178", "294 0.0014 cfm/ft²");
        row(page, 142, "54 Air leakage of assembly", "200 ASTM E2357", "294 < 0.04 cfm/ft²");
        row(page, 156, "200 ASTM E96, Procedure", "294 16 perms");
        row(page, 160.5, "54 Water vapor permeance");
        row(page, 165, "200 A", "294 (915 ng/Pa·s·m²)");
        row(page, 179, "54 Hydrostatic head", "200 AATCC 127", "294 > 55 cm");
        assertEquals("16 perm by ASTM E96 Procedure A", said(reading("inner_ply", page), "inner_ply.permeance"));
    }

    @Test
    void aMethodOnTheLineBelowALabelThatEndsOpenIsOfTheRow() throws Exception {
        List<String> page = page("text 18b Wall-head vent");
        row(page, 100, "54 Property", "200 HV-38", "300 HV-75");
        row(page, 118, "54 Slot, clear width", "200 3/8 in.", "300 3/4 in.");
        row(page, 136, "54 Ember and flame intrusion,", "200 Listed", "300 Not listed");
        row(page, 150, "54 ASTM E2886");
        row(page, 168, "54 Wind-driven rain", "200 Pass at 70 mph", "300 Pass at 50 mph");
        assertEquals("no of HV-75 by ASTM E2886; yes of HV-38 by ASTM E2886", said(reading("top_vent", page), "top_vent.ember"));
    }

    @Test
    void whatALabelNamesBehindAColonIsWhatItWasMeasuredOn() throws Exception {
        SheetReading reading = readingOf("sealant", "text 18b Hybrid sealant", "at 54 110", "table ruled 18 230,100,120",
            "| Property | Test method | Result", "| Staining of porous substrates: limestone, granite, stone | ASTM C1248 | No stain",
            "| Sag | ASTM C639 | 0 in.");
        assertEquals("yes by ASTM C1248", said(reading, "sealant.stain_tested"));
    }

    @Test
    void aRemarkOfSeveralWordsInBracketsLeavesALabelWhatItIs() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Thin brick", "at 54 110", "table ruled 18 250,100,120",
            "| Property | Test | Result", "| Compressive strength (full-size brick of the same body) | ASTM C67 | 9,400 psi");
        assertEquals("9400 psi by ASTM C67", said(reading, "veneer.strength"));
    }

    @Test
    void ofTwoUnitsBeforeALimitTheFirstIsThatOfTheFirstFigure() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Extruded polystyrene", "at 54 110", "table ruled 18 200,100,120",
            "| Property | Test method | Value", "| Compressive strength, psi (kPa), min. | ASTM D1621 | 25 (172)",
            "| Flexural strength, psi (kPa), min. | ASTM C203 | 50 (345)");
        assertEquals("at least 25 psi by ASTM D1621", said(reading, "insulation.compressive"));
    }

    @Test
    void aNoteThatBeginsWithAUnitNamesTheMethodOfItsColumn() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Extruded polystyrene", "at 54 110", "table ruled 18 100,120,120",
            "| Product no. | Thickness, in. | R-value^(1)", "| PX-10 | 1 | 5.0", "| PX-15 | 1-1/2 | 7.5", "at 54 190",
            "text 8 ^(1) °F·ft²·h/Btu at 75 °F mean temperature, ASTM C518, after 180 days.");
        assertEquals("5.0 of PX-10 by ASTM C518; 7.5 of PX-15 by ASTM C518", said(reading, "insulation.r_value"));
    }

    @Test
    void whatAGradeOfAStandardAsksForIsNoModel() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Hearthfold thin brick", "at 54 110", "table ruled 18 170,80,140,140",
            "| Property | Test | ASTM C1088 Grade Exterior | Hearthfold, average of 5",
            "| Water absorption, 5-h boiling | ASTM C67 | 17.0 % max. (average) | 6.9 %",
            "| Freezing and thawing, 50 cycles | ASTM C67 | No breakage | Passed; loss 0.1 %");
        assertEquals("6.9% by ASTM C67", said(reading, "veneer.absorption"));
        assertEquals("yes by ASTM C67", said(reading, "veneer.freeze_thaw"));
    }

    @Test
    void aTitleBesideTheNumberOfTheSheetSaysWhatTheProductIs() throws Exception {
        List<String> page = page("text 20b Hearthfold Series", "at 54 84", "text 17b Thin Brick", "at 400 93", "text 8 Valid from January");
        row(page, 120, "54 Units are extruded from shale, fired and cut to face thickness after the kiln.");
        assertEquals("thin brick", said(reading("veneer", page), "veneer.kind"));
    }

    @Test
    void aMetalsCellTellsOfItsCoatingToo() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Through-wall flashing", "at 54 110", "table ruled 18 70,230,110,90",
            "| Item | Metal | Specification | Thickness", "| D-26S | Stainless steel, Type 304, dead soft | ASTM A240 | 0.0187 in.",
            "| D-24G | Galvanized steel, G90 | ASTM A653 | 0.0276 in.",
            "| D-32A | Aluminum 3105-H14, PVDF coil coating both faces | ASTM B209 | 0.032 in.");
        assertEquals("G90 of D-24G", said(reading, "metal_flashing.coating"));
        assertEquals("galvanized steel of D-24G; painted aluminium of D-32A; stainless steel of D-26S", said(reading,
            "metal_flashing.metal"));
    }

    @Test
    void howFarFromAnEdgeAFastenerStandsIsNoHeightOfALeg() throws Exception {
        assertEquals("", sentence("metal_flashing", "Fasten the vertical leg within 1\" of its top edge, 24\" o.c.", "upleg"));
    }

    @Test
    void namesOfOneFamilyTellModelsApartThoughTheTableSaysNothingAsked() throws Exception {
        SheetReading reading = readingOf("backer_rod", "text 18b Oxbow backer rod", "at 54 110", "table ruled 18 150,100,110,110",
            "| Property | Test method | Oxbow CC | Oxbow Duo", "| Density | ASTM D1622 | 32 kg/m³ | 24–30 kg/m³",
            "| Tensile strength | ASTM D1623 | 340 kPa | 200 kPa", "at 54 200", "text 9 Choose Oxbow CC 25 to 33 % larger in diameter than "
                + "the joint is wide. Oxbow Duo is softer and is taken 25 to 50 % larger.");
        assertEquals("25 to 33% of Oxbow CC; 25 to 50% of Oxbow Duo", said(reading, "backer_rod.oversize"));
    }

    @Test
    void theSeriesOfATestReportIsNamedWithIt() throws Exception {
        SheetReading reading = readingOf("water_repellent", "text 18b Silane repellent", "at 54 110", "table ruled 18 260,100",
            "| Property | Result", "| Reduction of water uptake, NCHRP 244 Series II | 83 %");
        assertEquals("83% by NCHRP 244 Series II", said(reading, "water_repellent.uptake"));
    }

    @Test
    void aCautionThatRestrictsTheUseHoldsForAllSizes() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Extruded polystyrene", "at 54 110", "table ruled 18 100,120,120",
            "| Product no. | Thickness, in. | R-value", "| PX-10 | 1 | 5.0", "| PX-15 | 1-1/2 | 7.5", "at 54 190", "text 9 This product is "
                + "combustible and shall be used only as specified by the local building code.");
        assertEquals("yes", said(reading, "insulation.combustible"));
    }

    @Test
    void theSentenceBehindTheReportMayNameItsCodes() throws Exception {
        List<String> page = page("text 18b Metal lath");
        for (int i = 0; i < 14; i++) {
            // below the head of the sheet
            row(page, 90 + 20 * i, "54 Lap of sheets in course " + (i + 1), "300 none");
        }
        row(page, 400, "54 All lath is listed in evaluation report BER-0412 as base for cement plaster.");
        row(page, 412, "54 The report names the 2018 and 2021 IBC and IRC.");
        assertEquals("2018, 2021", said(reading("lath", page), "lath.report_editions"));
    }

    @Test
    void aGapInAFrameIsNoLengthOfAStraightedge() throws Exception {
        assertEquals("", sentence("framing", "Seat studs fully in the track; gap between web and track not over 1/8\" for axially loaded "
            + "studs.", "straightedge"));
    }

    @Test
    void whatAProductIsUsedForIsNoReportOfIt() throws Exception {
        assertEquals("", sentence("inner_ply", "It is an asphalt-saturated kraft paper used as a water-resistive barrier behind cement "
            + "plaster.", "report"));
    }

    @Test
    void aNoteAtAHeadingMayGiveTheSenseOfItsColumn() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Weep screed", "at 54 110", "table ruled 18 100,100,150",
            "| Part number | Ground depth | Base steel thickness^(1)", "| KW-078 | 7/8 in. | 0.0172 in.", "| KW-138 | 1-3/8 in. | "
                + "0.0215 in.",
            "at 54 190", "text 8 ^(1) Minimum, uncoated, in accordance with ASTM C1861.");
        assertEquals("at least 0.0172 in of KW-078 by ASTM C1861; at least 0.0215 in of KW-138 by ASTM C1861", said(reading,
            "base_screed.thickness"));
    }

    @Test
    void minBehindAUnitOfLengthIsASenseAndNoMinutes() throws Exception {
        SheetReading reading = readingOf("penetration_seal", "text 18b Mounting blocks", "at 54 110", "table ruled 18 100,120,150",
            "| Part No. | For | Joint width, in. (min.)", "| QB-10 | Hose bibb | 1/4", "| QB-14 | Light fixture | 3/8");
        assertEquals("at least 1/4 in of QB-10; at least 3/8 in of QB-14", said(reading, "penetration_seal.width"));
    }

    @Test
    void ofAnAverageAndALimitInOneCellTheLimitThatIsAskedForIsMeant() throws Exception {
        SheetReading reading = readingOf("framing", "text 18b Stud lumber", "at 54 110", "table ruled 18 200,200",
            "| Property | Value", "| Depth, dressed | 5-1/2 in.", "| Moisture content when dressed | 15 % average, 19 % max. (KD-19)");
        assertEquals("at most 19%", said(reading, "framing.moisture"));
    }

    @Test
    void whatALimitOfATwoSidedSentenceSaysIsNoDepthByItself() throws Exception {
        assertEquals("", sentence("sealant", "Depth is never less than 1/4 in. and not more than 1/2 in. at midpoint.", "depth"));
    }

    @Test
    void theWeightOfAFabricSaysThatThereIsOne() throws Exception {
        SheetReading reading = readingOf("mat", "text 18b Drainage mat", "at 54 110", "table ruled 18 150,90,90,90",
            "| Property | Method | KM-6 | KM-6F", "| Overall thickness | ASTM D5199 | 0.24 in. | 0.25 in.", "| Filter fabric | — | None "
                + "| 3.5 oz/sy");
        assertEquals("no of KM-6; yes of KM-6F", said(reading, "mat.fabric"));
    }

    @Test
    void squareBehindALengthIsNoArea() throws Exception {
        SheetReading reading = readingOf("lath", "text 18b Welded wire lath", "at 54 110", "table ruled 18 80,120,120",
            "| Model | Wire diameter | Mesh opening", "| GF-16 | 0.0625 in. | 1-1/2 in. square", "| GF-14 | 0.080 in. | 1-1/2 in. square");
        assertEquals("1-1/2 in of GF-14; 1-1/2 in of GF-16", said(reading, "lath.opening"));
    }

    @Test
    void atMayBeWrittenAsASign() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Extruded polystyrene", "at 54 110", "table ruled 18 80,90,120",
            "| Product no. | Thickness | R-value @ 75°F", "| CI-10 | 1 in. | 5.0", "| CI-15 | 1-1/2 in. | 7.5");
        assertEquals("5.0 of CI-10; 7.5 of CI-15", said(reading, "insulation.r_value"));
    }

    @Test
    void declaredHeadsResultsAndBasisTheirMethods() throws Exception {
        SheetReading reading = readingOf("framing", "text 18b Wall stud", "at 54 110", "table ruled 18 220,130,120",
            "| Characteristic | Basis | Declared", "| Stud depth | PS 20 | 140 mm", "| Moisture content after treatment (KDAT) | "
                + "ASTM D4442 "
                + "| max. 19 %");
        assertEquals("140 mm by PS 20", said(reading, "framing.depth"));
        assertEquals("at most 19% by ASTM D4442", said(reading, "framing.moisture"));
    }

    @Test
    void whatAnItemOfAListGoesOnWithIsOfTheStandardAboveIt() throws Exception {
        List<String> page = page("text 18b Hybrid sealant");
        row(page, 100, "64 ASTM C920: Type S; Grade NS; Class 50");
        row(page, 111, "64 Uses NT, T1, M, G, A, O");
        page.addAll(List.of("dot 57 106 4", "dot 57 117 4"));
        assertEquals("NT, T1, M, G, A, O by ASTM C920", said(reading("sealant", page), "sealant.use"));
    }

    @Test
    void depthOrLessIsALimit() throws Exception {
        assertEquals("at most 5/8 in", sentence("backer_rod", "In joints of 5/8 in. depth or less leave the rod out and lay tape.",
            "recess"));
    }

    @Test
    void aColumnOfWhatIsUsualIsNoModelBesideTheProducts() throws Exception {
        SheetReading reading = readingOf("mockup", "text 14 Sample wall, type S", "at 54 110", "table ruled 18 150,150,180",
            "| Item | Usual specification | Type S sample wall", "| Mock-up type | Freestanding or in place | Freestanding, on steel skids",
            "| Number of pull-off tests | 3 | 5");
        assertEquals("freestanding", said(reading, "mockup.kind"));
        assertEquals("5", said(reading, "mockup.face_tests"));
    }
}

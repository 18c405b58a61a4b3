package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** Whose a value is where headings, marks and kinds tell it, and labels that say more of an amount than its unit, on small drawn sheets. */
class WhoseValuesTest extends SmallSheets {
    private static final double LINE = 13;

    private String sentence(String component, String line, String property) throws Exception {
        return said(readingOf(component, "text 18b Product", "at 54 110", "text 9 " + line), component + "." + property);
    }

    private SheetReading reading(String component, List<String> page) throws Exception {
        return readingOf(component, page.toArray(String[]::new));
    }

    /** A page of running text; a line that begins with "b " stands in bold letters. */
    private static List<String> text(String title, String... lines) {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b " + title));
        double y = 100;
        for (String line : lines) {
            page.add("at 54 " + y);
            page.add(line.startsWith("b ") ? "text 9b " + line.substring(2) : "text 9 " + line);
            y += LINE;
        }
        return page;
    }

    @Test
    void whatASectionOfAReportSaysIsOfTheProductThatHeadsIt() throws Exception {
        SheetReading report = reading("lath", text("Evaluation report", "b 3.0 DESCRIPTION", "b 3.1 General:",
            "The laths are welded wire laths complying with ASTM C933, and serve as an",
            "alternative to the woven wire lath of the code, in sheets and rolls.", "b 3.2 Oxbow QM-16:",
            "Wires have a diameter of 0.0625 inch. Openings are 2 inches by 2 inches.", "The nominal weight is 1.16 lb/yd². Without "
                + "paper backing.",
            "b 3.3 Oxbow QM-14:", "Wires have a diameter of 0.080 inch. Openings are 1-1/2 inches by 1-1/2 inches.",
            "The nominal weight is 2.45 lb/yd².", "b 3.4 Oxbow QM-16K:", "As QM-16, with a Grade D kraft paper backing.", "b 4.0 "
                + "INSTALLATION",
            "Lath is laid across the studs."));
        assertEquals("0.0625 in of QM-16; 0.080 in of QM-14", said(report, "lath.wire"));
        assertEquals("1-1/2 in of QM-14; 2 in of QM-16", said(report, "lath.opening"));
        assertEquals("no of QM-16; yes of QM-16K", said(report, "lath.paper"));
        assertEquals("welded wire", said(report, "lath.kind"));
    }

    @Test
    void theJointRoundABlockIsOfTheBlocksOfATableAndNotOfThePlates() throws Exception {
        SheetReading reading = readingOf("penetration_seal", "text 18b Oxbow mounting blocks and plates", "at 54 110",
            "table ruled 18 100,160,160", "| Model | Type | Material", "| WB-15 | Block | Cellular PVC", "| WB-23 | Block | Cellular PVC",
            "| WP-25 | Gasketed plate | Polypropylene", "at 54 200",
            "text 9 Hold the stone 3/8 in. off all four sides and fill that joint with backer rod and sealant.");
        assertEquals("3/8 in of WB-15; 3/8 in of WB-23", said(reading, "penetration_seal.width"));
    }

    @Test
    void howFarALathStandsOffIsOfTheSelfFurredOnes() throws Exception {
        SheetReading reading = readingOf("lath", "text 18b Diamond mesh lath", "at 54 84",
            "text 9 The dimples hold the mesh 1/4 in. off the backing.", "at 54 110", "table ruled 18 100,160,160", "| Type | Form "
                + "| Weight",
            "| FL 2.5 | Flat | 2.5 lb/yd²", "| SF 2.5 | Self-furring, dimpled | 2.5 lb/yd²", "| SF 3.4 | Self-furring, dimpled | "
                + "3.4 lb/yd²");
        assertEquals("1/4 in of SF 2.5; 1/4 in of SF 3.4", said(reading, "lath.furring"));
    }

    @Test
    void numberedHeadingsThatNameAModelByItsCodeTellWhoseTheirTextIs() throws Exception {
        SheetReading reading = readingOf("mockup", "text 18b Mock-up program", "at 54 110", "table ruled 18 100,170,170",
            "| | MU-1 Appearance panel | MU-2 Wall mock-up", "| Position | Freestanding beside the office | In place, north wall",
            "| After acceptance | Removed at the end of the job | Remains as part of the work", "at 54 190", "text 10b 2. Build-up of MU-2",
            "at 54 206", "text 9 Each layer is left exposed in steps of 8 in. at the left edge.", "at 54 230", "text 10b 3. Tests on MU-2",
            "at 54 246", "text 9 Tests made on the mock-up are water spray, sealant adhesion, sounding and pull-off.");
        assertEquals("yes of MU-2 Wall mock-up", said(reading, "mockup.stages"));
        assertEquals("water spray, sealant adhesion, sounding of units, pull-off of units of MU-2 Wall mock-up", said(reading,
            "mockup.tests"));
        assertEquals("no of MU-1 Appearance panel; yes of MU-2 Wall mock-up", said(reading, "mockup.kept"));
    }

    @Test
    void aMarkAtTheEndOfTheirNamesNamesSomeOfTheModels() throws Exception {
        SheetReading reading = readingOf("mat", "text 18b Oxbow drainage mat", "at 54 84",
            "text 9 The M types carry a spunbonded mortar screen on the outer side; Oxbow 10 is bare filament.", "at 54 110",
            "table ruled 18 130,100,100,100", "| Property | Oxbow 6M | Oxbow 10 | Oxbow 10M", "| Thickness | 6.5 mm | 10 mm | 10.5 mm",
            "| Compressive strength | 41 kPa | 29 kPa | 34 kPa");
        assertEquals("no of Oxbow 10; yes of Oxbow 10M; yes of Oxbow 6M", said(reading, "mat.fabric"));
    }

    @Test
    void eachSeriesOfFastenersHasTheAmountBehindItsMark() throws Exception {
        SheetReading reading = readingOf("lath_fastener", "text 18b Lathing fasteners", "at 54 110", "table ruled 18 100,100,100",
            "| Part no. | Type | Length", "| KL-125 | Staple | 1-1/4 in.", "| KN-175 | Nail | 1-3/4 in.", "at 54 190",
            "text 9 Penetration: KL staples 3/4 in., KN nails 1-1/8 in.");
        assertEquals("1-1/8 in of KN-175; 3/4 in of KL-125", said(reading, "lath_fastener.penetration"));
    }

    @Test
    void aNameOfTwoLinesBesideItsRowHeadsNothing() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Natural stone veneer"));
        row(page, 100, "54 Stone", "150 Absorption, % ASTM C97", "320 Compressive strength, psi ASTM C170");
        row(page, 116, "54 Skelby");
        row(page, 121, "150 4.62", "320 8,910");
        row(page, 126, "54 Buff");
        row(page, 142, "54 Orrow");
        row(page, 147, "150 0.19", "320 25,380");
        row(page, 152, "54 Blue");
        row(page, 180, "54 Durability: both stones were put through 300 cycles of freezing and thawing after ASTM C666 with no cracking.");
        assertEquals("yes by ASTM C666", said(reading("veneer", page), "veneer.freeze_thaw"));
    }

    @Test
    void aListAndATableBelowTitlesInOneLineAreReadEachForItself() throws Exception {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b Wafer head screw", "at 40 130", "text 10b SPECIFICATIONS",
            "at 314 130", "text 10b ULTIMATE VALUES (lbf)"));
        row(page, 100, "40 Large low-profile head fastener for attachment of metal lath and lathing accessories through sheathing, "
            + "mat and foam");
        row(page, 146, "44 Thread", "145 #8-18");
        page.addAll(List.of("at 344 146", "text 9b Steel, mil (ksi)", "at 460 146", "text 9b Pull-out", "at 530 146", "text 9b Shear"));
        row(page, 161, "44 Major diameter", "145 0.164\"", "362 33 (33)", "470 345", "536 590");
        row(page, 176, "44 Minor (root) diameter", "145 0.118\"", "362 43 (33)", "470 498", "536 815");
        row(page, 191, "44 Head style", "145 Wafer, knurled", "362 54 (50)", "470 760", "532 1,120");
        row(page, 206, "44 Head diameter", "145 0.437\" (7/16\")", "362 68 (50)", "470 985", "532 1,240");
        row(page, 221, "44 Drive", "145 #2 Phillips");
        row(page, 218, "314 Averages of ten tests by AISI S905. Apply a safety factor of 3 or larger.");
        row(page, 227, "314 Pull-through of lath: consult the lath maker.");
        row(page, 236, "44 Finish", "145 Polymer topcoat, tan");
        row(page, 280, "51 Part No.", "111 Length", "163 Point", "220 Max. material", "364 Qty / box", "432 Qty / carton");
        row(page, 295, "53 LD-0100", "123 1\"", "169 #2", "266 3/8\"", "373 1,000", "445 10,000");
        row(page, 310, "53 LD-0125", "115 1-1/4\"", "169 #2", "266 5/8\"", "373 1,000", "448 8,000");
        assertEquals("0.164 in", said(reading("lath_fastener", page), "lath_fastener.diameter"));
        assertEquals("0.437 in", said(reading("lath_fastener", page), "lath_fastener.head"));
    }

    @Test
    void aLabelTellsOfWhichAreaAWeightIs() throws Exception {
        assertEquals("2.5 lb/yd²", sentence("lath", "Weight per square yard: 2.5 lbs", "weight"));
        assertEquals("2.5 lb/yd²", sentence("lath", "Weight per sq. yd., lb: 2.5", "weight"));
        assertEquals("10 to 14 psf", sentence("veneer", "Weight per square foot: 10 to 14 lb", "weight"));
    }

    @Test
    void noEmberPassedIsWhatATestFound() throws Exception {
        SheetReading reading = readingOf("top_vent", "text 18b Wall-head vent", "at 54 110", "table ruled 18 120,100,240",
            "| Test | Method | Result", "| Ember intrusion | ASTM E2886 | Listed for wildland-urban areas; no ember passed",
            "| Wind-driven rain | AMCA 550 | No water past the baffle");
        assertEquals("yes by ASTM E2886", said(reading, "top_vent.ember"));
    }

    @Test
    void aWordBetweenThoseOfATurnMayDenyIt() throws Exception {
        assertEquals("no", sentence("mat", "Board-Back wears no fabric: the sheet is whole, so scratch coat cannot come through.",
            "fabric"));
    }

    @Test
    void theStandardOfTheMetalShowsNotHowThickItIs() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Foundation weep screed, series FWS", "at 54 84",
            "text 9 FWS-Z: zinc alloy, 99% pure, ASTM B69, 0.0207\" thick; for coastal work.", "at 54 110", "table ruled 18 100,120,120",
            "| Code | Ground | Metal", "| FWS-G50 | 1/2\" | Galv.", "| FWS-Z50 | 1/2\" | Zinc", "| FWS-Z88 | 7/8\" | Zinc");
        assertEquals("0.0207 in of FWS-Z50; 0.0207 in of FWS-Z88", said(reading, "base_screed.thickness"));
    }

    @Test
    void aSentenceThatBeginsWithTheLastPartOfANameIsOfThatModel() throws Exception {
        SheetReading reading = readingOf("backer_rod", "text 18b Oxbow backer rod", "at 54 110", "table ruled 18 150,100,100,100",
            "| Property | Test | Oxbow CC | Oxbow BC", "| Classification | ASTM C1330 | Type C | Type B", "| Density | ASTM D1622 | "
                + "2.0 pcf | 1.5 pcf",
            "at 54 190", "text 9 Choose CC 25% to 33% larger than the joint; the softer BC may be 25 to 50 % larger.");
        assertEquals("25 to 33% of Oxbow CC; 25 to 50% of Oxbow BC", said(reading, "backer_rod.oversize"));
    }

    @Test
    void whatIsToBeDoneWithAPartTellsNotWhatAllPartsAre() throws Exception {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b Corner and strip reinforcement", "at 54 100",
            "text 12b CORNERITE for inside corners", "at 54 118", "text 9 A strip of lath bent down its length. It ties the two "
                + "walls together.",
            "at 54 134", "table ruled 18 80,80,160", "| Item | Legs | Metal", "| CN-22 | 2 x 2 in. | Galvanized steel, G60",
            "| CN-33 | 3 x 3 in. | Galvanized steel, G60", "at 54 210", "text 12b STRIP LATH, flat", "at 54 228",
            "text 9 Bridges joints between unlike bases, such as concrete to framing.", "at 54 244", "table ruled 18 80,80,160",
            "| Item | Width | Metal", "| SL-4 | 4 in. | Galvanized steel, G60", "| SL-6 | 6 in. | Galvanized steel, G60", "at 54 320",
            "text 9 Fasten cornerite to the lath only, not through it into the framing."));
        assertEquals("corner lath of CN-22; corner lath of CN-33", said(reading("lath_accessories", page), "lath_accessories.corner"));
    }

    @Test
    void aDashInBracketsBeforeADegreeIsAMinus() throws Exception {
        assertEquals("at least 25 °F", sentence("flexible_flashing", "Apply when air and surface are 25 °F (–4 °C) or above.",
            "apply_low"));
    }

    @Test
    void aTableInItsOwnColumnKeepsItsHeadingOfTwoLines() throws Exception {
        List<String> page = new ArrayList<>(List.of("font Helvetica 9", "text 18b Foil-faced board", "at 40 100", "text 9b Product "
            + "description",
            "at 315 100", "text 9b Sizes and thermal values"));
        String[] running = {"The board is rigid, of closed-cell polyisocyanurate", "foam, bonded between a reflective foil face and",
            "a coated foil back. It is fixed outboard of the studs,", "over or in place of sheathing, in walls clad with brick,",
            "stucco, siding or adhered stone, and it may be taped", "at its joints as the barrier to air of the whole wall,",
            "where the code and the maker of the tape allow it."};
        for (int i = 0; i < running.length; i++) {
            row(page, 113 + LINE * i, "40 " + running[i]);
        }
        row(page, 113, "386 Thickness", "462 R-value", "528 Boards");
        row(page, 120, "321 Item");
        row(page, 126, "386 in. (mm)", "462 (RSI)", "528 per unit");
        row(page, 146, "321 CIF-075", "386 0.75 (19)", "462 5.0 (0.88)", "528 64");
        row(page, 164, "321 CIF-100", "386 1.00 (25)", "462 6.5 (1.14)", "528 48");
        row(page, 182, "321 CIF-150", "386 1.50 (38)", "462 9.8 (1.73)", "528 32");
        row(page, 200, "315 Aged values. R means resistance to heat flow.");
        row(page, 213, "315 Boards are 4 by 8 ft and 4 by 9 ft.");
        assertEquals("0.75 in of CIF-075; 1.00 in of CIF-100; 1.50 in of CIF-150", said(reading("insulation", page),
            "insulation.thickness"));
    }

    @Test
    void aLabelKeepsItsUnitBeforeWhatItWasMeasuredOn() throws Exception {
        SheetReading reading = readingOf("sealant", "text 18b Sealant", "at 54 110", "table ruled 18 250,100,100",
            "| Property | Result | Test method", "| Adhesion in peel, pli: concrete | 28 | ASTM C 794", "| Hardness, Shore A | 25 | "
                + "ASTM C661");
        assertEquals("28 lbf/in by ASTM C794", said(reading, "sealant.peel"));
    }

    @Test
    void withinAToleranceWithItsSignIsThatTolerance() throws Exception {
        assertEquals("1/16 in", sentence("movement_joint", "Keep the built width within ±1/16 in. of the width in the table.",
            "tolerance"));
    }

    @Test
    void aCodeWithoutTheLettersBehindItNamesItsModel() throws Exception {
        SheetReading reading = readingOf("movement_joint", "text 18b Two-piece joints", "at 54 110", "table ruled 18 100,120,120",
            "| Item | Material | Joint width", "| TB-40Z | Zinc alloy | 3/8 in.", "| VX-20P | PVC | 1/4 in.", "at 54 190",
            "text 9 Set TB-40 halves to the opening called for and hold it within ±1/16 in.");
        assertEquals("1/16 in of TB-40Z", said(reading, "movement_joint.tolerance"));
    }

    @Test
    void eachPartOfACellIsOfWhatItNames() throws Exception {
        String[] rows = {"| Surface burning | ASTM E84 | Flame spread = 0; smoke developed = 15", "| Density | ASTM D1622 | 2 pcf"};
        SheetReading headed = readingOf("insulation", "text 18b Foam board", "at 54 110", "table ruled 18 150,140,200",
            "| Property | Test method | Result", rows[0], rows[1]);
        assertEquals("0 by ASTM E84", said(headed, "insulation.flame_spread"));
        assertEquals("15 by ASTM E84", said(headed, "insulation.smoke"));
        SheetReading listed = readingOf("insulation", "text 18b Foam board", "at 54 110", "table ruled 18 150,140,200", rows[0], rows[1]);
        assertEquals("15 by ASTM E84", said(listed, "insulation.smoke"));
    }

    @Test
    void lettersOfAnAgencyMayStandBeforeAReportsNumber() throws Exception {
        assertEquals("CPE-ER-2207", sentence("lath", "Evaluation report CPE-ER-2207 covers Orvexa GX under the IBC, 2018 and 2021 "
            + "editions.",
            "report_number"));
        assertEquals("CPE ER-0412", sentence("lath", "Listed in evaluation report CPE ER-0412 under the 2021 IBC.", "report_number"));
    }
}

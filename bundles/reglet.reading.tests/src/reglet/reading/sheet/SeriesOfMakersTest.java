package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What makers' pages say of several parts by words, headings and lists, on small drawn sheets: series, items, families of names. */
class SeriesOfMakersTest extends SmallSheets {
    private static final String TITLE = "text 18b Product";

    private String sentence(String component, String line, String property) throws Exception {
        return said(readingOf(component, TITLE, "at 54 110", "text 9 " + line), component + "." + property);
    }

    /** A sheet of lines, the first in large letters, each "x text". */
    private SheetReading lines(String component, String title, String... lines) throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b " + title));
        for (int i = 0; i < lines.length; i++) {
            row(page, 110 + 16 * i, lines[i]);
        }
        return readingOf(component, page.toArray(String[]::new));
    }

    @Test
    void namesOfOneFamilyInATableAreToldApartInASentence() throws Exception {
        SheetReading reading = readingOf("backer_rod", "text 18b Quern Backer Rod", "at 54 110", "text 9 ASTM C1330: Quern CC is Type C, "
            + "Quern SB is Type B.", "at 54 130", "text 9 Choose Quern CC 25 % to 33 % larger than the joint.", "at 54 146",
            "text 9 Quern SB is softer and is chosen 25 % to 50 % larger.", "at 54 170", "table ruled 18 150,110,90,90",
            "| Property | Test | Quern CC | Quern SB", "| Density, lb/ft³ | ASTM D1622 | 1.9 | 1.5", "| Compression deflection at "
                + "25 %, psi "
                + "| ASTM D5249 | 8.5 | 3.8");
        assertEquals("25 to 33% of Quern CC; 25 to 50% of Quern SB", said(reading, "backer_rod.oversize"));
        assertEquals("B of Quern SB; C of Quern CC", said(reading, "backer_rod.type").replaceAll(" by ASTM C1330", ""));
    }

    @Test
    void headingsThatBeginWithADesignationNameThePartsOfASheetWithoutATable() throws Exception {
        SheetReading reading = lines("lath_fastener", "Staples and nails for lath", "54 SHS-16 Wide crown staple", "54 • Crown 15/16\" "
            + "outside; leg 1-1/2\"", "54 • 16 ga. wire, 0.0625\" dia., chisel point", "54 • Zinc electroplated, ASTM B633",
            "54 SHN-11 Furring nail", "54 • Overall length 1-3/4\", with a 1/4\" fiber wad that sets the lath off the wall",
            "54 • 11 ga. shank (0.120\"), ring threads", "54 • Hot-dip galvanized per ASTM A153, Class D");
        assertEquals("1-1/2 in of SHS-16; 1-3/4 in of SHN-11", said(reading, "lath_fastener.length"));
        assertEquals("0.0625 in of SHS-16; 0.120 in of SHN-11", said(reading, "lath_fastener.diameter"));
        assertTrue(said(reading, "lath_fastener.coating").startsWith("electroplated of SHS-16"), said(reading, "lath_fastener.coating"));
    }

    @Test
    void whatALabelSaysBelowTheHeadingOfASeriesIsOfItsItems() throws Exception {
        SheetReading reading = readingOf("lath_fastener", "text 18b Staples and nails", "at 54 110", "text 10b LS16 CROWN STAPLES",
            "at 54 126", "text 9 Wire: 16 gauge, .0625\"", "at 54 142", "text 9 Crown: 15/16\" outside, flat", "at 54 158",
            "table ruled 18 100,110,90", "| Item | Leg length | Per carton", "| LS16-100 | 1\" | 10,000", "| LS16-125 | 1-1/4\" | 10,000",
            "at 54 230", "text 10b FN11 FURRING NAILS", "at 54 246", "text 9 Shank: 11 gauge, .120\", smooth, diamond point", "at 54 262",
            "table ruled 18 100,110,90", "| Item | Length | Carton", "| FN11-150 | 1-1/2\" | 50 lb", "| FN11-200 | 2\" | 50 lb");
        assertEquals(".0625 in of LS16-100; .0625 in of LS16-125; .120 in of FN11-150; .120 in of FN11-200",
            said(reading, "lath_fastener.diameter"));
    }

    @Test
    void anItemOfAListMaySayWhatItIsBeforeItsFigures() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Prefinished flashing", "at 54 110", "text 9 HF-1 head flashing: "
            + "vertical leg 4 in., horizontal leg 1-3/4 in., face", "at 54 122", "text 9 3/4 in.", "at 54 137", "text 9 SF-2 sill "
                + "flashing: "
                + "vertical leg 3 in., horizontal leg 3-1/2 in.,", "at 54 149", "text 9 face 1-1/4 in.");
        assertEquals("3 in of SF-2; 4 in of HF-1", said(reading, "metal_flashing.upleg"));
    }

    @Test
    void aGaugeIsHowASheetIsCalledAndBesideItStandsHowThickItIs() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Coil for flashing", "at 54 110", "table ruled 18 80,150,100",
            "| Gauge | Nominal thickness | Weight, lb/sq ft", "| 26 ga | 0.0217 in. (0.55 mm) | 0.906", "| 24 ga | 0.0276 in. (0.70 mm) "
                + "| 1.156");
        assertEquals("0.0217 in of 26 ga; 0.0276 in of 24 ga", said(reading, "metal_flashing.thickness"));
    }

    @Test
    void aNominalSizeIsHowAStudIsCalled() throws Exception {
        SheetReading reading = readingOf("framing", "text 18b Wood studs", "at 54 110", "table ruled 18 90,90,90,90",
            "| Nominal size | Thickness | Depth | Pcs/unit", "| 2x4 | 1-1/2\" | 3-1/2\" | 294", "| 2x6 | 1-1/2\" | 5-1/2\" | 189");
        assertEquals("3-1/2 in of 2x4; 5-1/2 in of 2x6", said(reading, "framing.depth"));
    }

    @Test
    void aSpeciesIsWhatItsSpecificGravityIsOf() throws Exception {
        SheetReading reading = readingOf("framing", "text 18b Treated lumber", "at 54 110", "table ruled 18 130,110,90",
            "| Species | Specific gravity | Bending, Fb", "| Southern Pine | 0.55 | 0.90", "| Spruce-Pine-Fir | 0.42 | 0.92");
        assertEquals("0.42 of Spruce-Pine-Fir; 0.55 of Southern Pine", said(reading, "framing.specific_gravity"));
    }

    @Test
    void aDescriptionBesideAPartSaysWhatThePartIs() throws Exception {
        SheetReading reading = readingOf("penetration_seal", "text 18b Pipe seals", "at 54 110", "table ruled 30 60,330,60",
            "| Part | Description | Carton", "| CF-P | Gasketed plate: rigid flange 8 x 8 in. with EPDM ring | 25",
            "| CF-B | Trim block, 6-1/2 x 6-1/2 in., of cellular PVC; sealed to the veneer | 8");
        assertEquals("gasketed plate of CF-P; sealant joint at a block of CF-B", said(reading, "penetration_seal.kind"));
    }

    @Test
    void theWordsBesideAnAmountSayWhichOfTwoPropertiesItIsOf() throws Exception {
        SheetReading reading = readingOf("lath_fastener", "text 18b Lath screws", "at 54 110", "table ruled 18 120,130,130",
            "| Property | GW8-158 | GD8-114", "| Length | 1-5/8 in. | 1-1/4 in.", "| Nominal diameter | #8, 0.164 in. | #8, 0.164 in.",
            "| Embedment, min. | 3/4 in. into stud | 3/8 in. past steel");
        assertEquals("at least 3/4 in of GW8-158", said(reading, "lath_fastener.penetration"));
        assertEquals("at least 3/8 in of GD8-114", said(reading, "lath_fastener.past_steel"));
        assertEquals("0.164 in of GD8-114; 0.164 in of GW8-158", said(reading, "lath_fastener.diameter"));
    }

    @Test
    void whatIsMeasuredPerInchIsMeasuredByTheStandardOfEachThickness() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Mineral wool board", "at 54 110", "table ruled 18 200,100,150",
            "| Property | Method | Result", "| Thermal resistance per inch at 75 °F | ASTM C518 | R 4.2", "| Density | ASTM C303 | "
                + "8 lb/ft³",
            "at 54 200", "table ruled 18 80,80,80", "| Item | Thickness | R-value", "| ECI-10 | 1 in. | 4.2", "| ECI-20 | 2 in. | 8.4");
        assertEquals("4.2 of ECI-10 by ASTM C518; 8.4 of ECI-20 by ASTM C518", said(reading, "insulation.r_value"));
    }

    @Test
    void ofTwoValuesBesideALabelEachIsByItsOwnProcedure() throws Exception {
        List<String> page = new ArrayList<>(List.of("at 54 60", "text 18b Fluid barrier"));
        row(page, 100, "54 Property", "264 Test method", "416 Result");
        row(page, 116, "54 Air leakage of assembly", "264 ASTM E2357", "416 0.006 cfm/ft²");
        row(page, 132, "54 Water vapor permeance at 16 dry mils", "264 ASTM E96, Procedure B (wet cup)", "416 21 perms (1200 ng/Pa·s·m²)");
        row(page, 142, "264 ASTM E96, Procedure A (dry cup)", "416 11 perms (629 ng/Pa·s·m²)");
        row(page, 158, "54 Nail sealability", "264 ASTM D1970", "416 Pass");
        assertEquals("11 perm by ASTM E96 Procedure A", said(readingOf("inner_ply", page.toArray(String[]::new)), "inner_ply.permeance"));
    }

    @Test
    void aStandardInBracketsOnTheSecondLineOfALabelIsItsOwn() throws Exception {
        List<String> page = new ArrayList<>(List.of("at 54 60", "text 18b Water repellent"));
        row(page, 100, "54 Test", "230 SX-7", "290 SX-12");
        row(page, 112, "54 Reduction in water absorption, clay brick,", "230 87 %", "290 94 %");
        row(page, 122, "54 24 h (ASTM C67)");
        row(page, 134, "54 Reduction in leakage, brick wall (ASTM", "230 91 %", "290 97 %");
        row(page, 144, "54 E514)");
        row(page, 156, "54 Water vapor permeance of treated brick", "230 9.1 perms", "290 8.6 perms");
        row(page, 166, "54 (ASTM E96)");
        row(page, 178, "54 Untreated brick, same test", "230 9.4 perms");
        SheetReading reading = readingOf("water_repellent", page.toArray(String[]::new));
        assertEquals("87% of SX-7 by ASTM C67; 94% of SX-12 by ASTM C67", said(reading, "water_repellent.uptake"));
        assertEquals("8.6 perm of SX-12 by ASTM E96; 9.1 perm of SX-7 by ASTM E96", said(reading, "water_repellent.permeance"));
    }

    @Test
    void aValueMayNameWhatItIsOf() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Board", "at 54 110", "table ruled 18 180,100,150",
            "| Test | Standard | Result", "| Surface burning characteristics | ASTM E84 | Smoke developed = 5",
            "| Compressive strength | ASTM C165 | 6 psi");
        assertEquals("5 by ASTM E84", said(reading, "insulation.smoke"));
        assertEquals("", said(reading, "insulation.flame_spread"));
    }

    @Test
    void aTestWithoutAResultHeadsTheRowsOfWhatItWasDoneOn() throws Exception {
        SheetReading reading = readingOf("sealant", "text 18b Sealant", "at 54 110", "table ruled 16 130,110,110",
            "| Property | Method | Result", "| Tack-free time | ASTM C679 | 8 to 12 hours", "| Adhesion in peel | ASTM C794 |",
            "| Mortar | | 22 lb/in.", "| Tear strength | ASTM D624 | 48 lb/in.");
        assertEquals("22 lbf/in by ASTM C794", said(reading, "sealant.peel"));
    }

    @Test
    void whatNoUnitExceedsIsTheMostAndNotTheLeast() throws Exception {
        String line = "No unit exceeds 36 inches (914 mm) in any face dimension or 720 square inches of face area.";
        assertEquals("at most 36 in", sentence("veneer", line, "longest"));
        assertEquals("at most 720 in²", sentence("veneer", line, "face"));
    }

    @Test
    void aShareOrMoreOfCoverageIsTheLeast() throws Exception {
        assertEquals("at least 95%", sentence("setting_bed", "95 % coverage or more of the back is called for.", "coverage"));
    }

    @Test
    void whatAStandardAveragesIsShownByIt() throws Exception {
        assertEquals("15.5% by ASTM C140", sentence("veneer", "Water absorption in accordance with ASTM C140 averages 15.5 percent.",
            "absorption"));
    }

    @Test
    void thePartsOfAThicknessAreNotTheThickness() throws Exception {
        SheetReading reading = readingOf("flexible_flashing", "text 18b Flashing", "at 54 110", "table ruled 18 150,250",
            "| Total thickness | 25 mils (0.64 mm): 4 mil film, 21 mil adhesive", "| Permeance | 0.05 perms, ASTM E96");
        assertEquals("25 mil", said(reading, "flexible_flashing.thickness"));
    }

    @Test
    void aDataSheetThatTellsWhatItsReportIsForIsNoReport() throws Exception {
        SheetReading reading = lines("inner_ply", "Building Paper", "54 1. PRODUCT DESCRIPTION", "54 Kraft paper saturated with asphalt.",
            "54 2. STANDARDS", "54 ASTM E2556", "54 Evaluation Report WER-2207: water-resistive barrier behind adhered veneer",
            "54 6. LIMITATIONS", "54 For walls only. The paper is not an air barrier. Asphalt saturated papers are combustible.");
        assertTrue(reading.report().isEmpty());
        assertEquals("no", said(reading, "inner_ply.air_barrier"));
        assertEquals("yes", said(reading, "inner_ply.combustible"));
    }

    @Test
    void aMakerOfSeveralThingsIsNotTheProductThoughSetLargest() throws Exception {
        SheetReading reading = reading("text 18b HEXFIELD WIRE & LATH", "at 54 80", "text 14b Cornerite and Corner Mesh", "at 54 110",
            "table ruled 18 70,80,80,110", "| Item | Product | Weight | Material", "| CR-22 | Cornerite | 1.75 lb/yd² | Galvanized steel",
            "| CR-33SS | Cornerite | 2.5 lb/yd² | Stainless steel");
        assertEquals("Cornerite and Corner Mesh", reading.product());
        assertEquals("lath_accessories", reading.components().get(0));
    }

    @Test
    void aSheetThatCallsItsProductByNameOverAndOverIsOfIt() throws Exception {
        SheetReading reading = reading("text 18b Mounting Blocks and Flashing Panels", "at 54 90", "text 9 Mounting blocks give fixtures a "
            + "level base, and panels close the barrier round pipes.", "at 54 110", "table ruled 18 70,90,80,150",
            "| Model | Width | Thickness | How it seals", "| FB-77 | 7\" | 1-3/4\" | Sealant joint around block",
            "| FP-1 | 6\" | 1/16\" | Gasketed plate");
        assertEquals("penetration_seal", reading.components().get(0));
    }

    @Test
    void theQuotedLetterOfADrawingMayStandBeforeAName() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Weep screed", "at 54 110", "table ruled 18 80,90,120",
            "| Part No. | \"A\" Ground | \"B\" Nailing flange", "| FW7-50G | 1/2\" | 3-1/2\"", "| FW7-87G | 7/8\" | 3-1/2\"");
        assertEquals("3-1/2 in of FW7-50G; 3-1/2 in of FW7-87G", said(reading, "base_screed.leg"));
    }
}

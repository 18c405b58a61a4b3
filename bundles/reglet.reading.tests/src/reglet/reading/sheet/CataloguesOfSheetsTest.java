package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What catalogue pages and submittal sheets say of whole series, and how full sheets set and word what they say, on small drawn sheets. */
class CataloguesOfSheetsTest extends SmallSheets {
    private SheetReading sentence(String component, String... lines) throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Product", "at 54 110"));
        for (String line : lines) {
            page.add("text 9 " + line);
        }
        return readingOf(component, page.toArray(String[]::new));
    }

    @Test
    void aLimitBehindBracketsIsOneOfTheAmountBeforeThem() throws Exception {
        assertEquals("at least 4 in", said(sentence("metal_flashing", "Lap joints 4 in. (102 mm) minimum and bed them in sealant."),
            "metal_flashing.lap"));
        assertEquals("at least 1 in", said(sentence("metal_flashing", "End dams folded, 1 in. (25 mm) high min., soldered"),
            "metal_flashing.dam"));
    }

    @Test
    void amountsBeforeTheLapsThatTheyAreOfKeepTheirOrder() throws Exception {
        SheetReading reading = sentence("inner_ply", "Shingle the courses: 50 mm (2 in.) minimum on side laps and 75 mm (3 in.) minimum on "
            + "end laps.");
        assertEquals("at least 50 mm", said(reading, "inner_ply.lap"));
        assertEquals("at least 75 mm", said(reading, "inner_ply.end_lap"));
    }

    @Test
    void whatTheClauseBeforeDeniesIsSomethingElse() throws Exception {
        assertEquals("yes", said(sentence("flexible_flashing", "No asphalt: compatible with silicone and urethane sealants."),
            "flexible_flashing.compatible"));
    }

    @Test
    void aSenseThatIsDeniedIsTurnedRoundAlsoWhereTheAmountExceeds() throws Exception {
        assertEquals("at most 500 in²", said(sentence("veneer", "No unit has a face area exceeding 500 square inches (0.32 m²)."),
            "veneer.face"));
    }

    @Test
    void aDashBetweenInchMarksIsARange() throws Exception {
        assertEquals("3/4 to 1-1/4 in", said(sentence("veneer", "Thickness of all stones: 3/4\" – 1-1/4\" (19–32 mm), nominal 1\"."),
            "veneer.thickness"));
    }

    @Test
    void aStandardRightBeforeAnAmountShowsIt() throws Exception {
        assertEquals("2740 psi by ASTM C39", said(sentence("veneer", "Reports of tests of compressive strength per ASTM C39, average "
            + "2740 psi (18.9 MPa)."), "veneer.strength"));
    }

    @Test
    void aShareLargerThanTheJointIsTheOversize() throws Exception {
        assertEquals("25 to 33% of VR-C; 40 to 100% of VR-O", said(readingOf("backer_rod", "text 18b Joint rods", "at 54 110",
            "table ruled 18 180,120,120",
            "| Property | VR-C | VR-O", "| Structure | closed cell | open cell", "| Size over joint width | 25-33 % larger "
                + "| 40-100 % larger"), "backer_rod.oversize"));
    }

    @Test
    void rowsBelowAHeadingWithTheUnitOfResistanceAreEachOfTheirThickness() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Mineral wool board", "at 54 110", "table ruled 20 90,110,90,90",
            "| Thickness | R-value hr·ft²·°F/Btu | RSI m²·K/W | Boards / pack", "| 38 mm | 6.3 | 1.11 | 8", "| 51 mm | 8.4 | 1.48 | 6",
            "| 76 mm | 12.6 | 2.22 | 4");
        assertEquals("12.6 of 76 mm; 6.3 of 38 mm; 8.4 of 51 mm", said(reading, "insulation.r_value"));
    }

    @Test
    void theDesignationOfSteelInMilsGoesBeforeItsLeastThicknessInInches() throws Exception {
        SheetReading reading = readingOf("framing", "text 18b Steel studs", "at 54 110", "table ruled 18 110,80,140,80",
            "| Section | Mil (gauge) | Min. base steel thickness, in. | Web depth, in.", "| 362S162-33 | 33 (20) | 0.0329 | 3-5/8",
            "| 600S162-54 | 54 (16) | 0.0538 | 6");
        assertEquals("33 mil of 362S162-33; 54 mil of 600S162-54", said(reading, "framing.thickness"));
    }

    @Test
    void linesBetweenTheRowsTellKindAndFurringOfTheModelsBelowThem() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Expanded metal lath"));
        row(page, 110, "50 Style", "120 Weight, lb/yd²", "240 Sheet", "330 Bundle");
        row(page, 126, "50 Diamond mesh, flat");
        row(page, 142, "50 DM250", "120 2.5", "240 27 x 97", "330 10");
        row(page, 158, "50 Diamond mesh, self-furred (dimpled)");
        row(page, 174, "50 SF340", "120 3.4, less paper", "240 27 x 97", "330 10");
        row(page, 190, "50 3/8\" rib (\"high rib\")");
        row(page, 206, "50 HR340", "120 3.4", "240 27 x 97", "330 10");
        SheetReading reading = readingOf("lath", page.toArray(String[]::new));
        assertEquals("expanded metal of DM250; expanded metal of SF340; rib of HR340", said(reading, "lath.kind"));
        assertEquals("yes of SF340", said(reading, "lath.self_furring"));
        assertEquals("2.5 lb/yd² of DM250; 3.4 lb/yd² of HR340; 3.4 lb/yd² of SF340", said(reading, "lath.weight"));
    }

    private List<String> joints() {
        List<String> page = new ArrayList<>(List.of("text 18b Control joints"));
        row(page, 250, "60 Number", "140 Joint opening, in.", "260 Ground, in.", "340 Length");
        row(page, 266, "60 ZCJ-38", "140 1/4", "260 3/8", "340 10 ft");
        row(page, 282, "60 ZCJ-50", "140 1/4", "260 1/2", "340 10 ft");
        row(page, 298, "60 VCJ-50", "140 3/8", "260 1/2", "340 10 ft");
        return page;
    }

    @Test
    void aMarkBeforeAColonIsOfTheModelsWhoseNamesBeginWithIt() throws Exception {
        List<String> page = joints();
        row(page, 110, "56 ZCJ: zinc alloy, 99% pure, nominal 0.0207 in.");
        row(page, 135, "56 VCJ: rigid vinyl, UV stabilized.");
        assertEquals("PVC of VCJ-50; zinc alloy of ZCJ-38; zinc alloy of ZCJ-50", said(readingOf("movement_joint", page.toArray(
            String[]::new)), "movement_joint.material"));
    }

    @Test
    void whatStandsBelowTheHeadingOfASeriesIsOfItsModels() throws Exception {
        List<String> page = joints();
        row(page, 110, "56 ZCJ Expanded flange");
        row(page, 126, "56 Rolled zinc alloy with flanges of expanded mesh.");
        row(page, 160, "56 VCJ Punched flange");
        row(page, 176, "56 Rigid vinyl with nail slots, which does not rust.");
        assertEquals("PVC of VCJ-50; zinc alloy of ZCJ-38; zinc alloy of ZCJ-50", said(readingOf("movement_joint", page.toArray(
            String[]::new)), "movement_joint.material"));
    }

    @Test
    void whatStandsOnceAtTheMiddleOfTheRowsHoldsForAll() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Foundation weep screed"));
        row(page, 110, "60 Part no.", "150 Ground", "220 Attachment flange", "340 Length");
        row(page, 128, "60 FS-350-50", "150 1/2\"", "340 10 ft");
        row(page, 146, "60 FS-350-75", "150 3/4\"", "220 3-1/2\"", "340 10 ft");
        row(page, 164, "60 FS-350-87", "150 7/8\"", "340 10 ft");
        SheetReading reading = readingOf("base_screed", page.toArray(String[]::new));
        assertEquals("3-1/2 in", said(reading, "base_screed.leg"));
        assertEquals("1/2 in of FS-350-50; 3/4 in of FS-350-75; 7/8 in of FS-350-87", said(reading, "base_screed.ledge"));
    }

    @Test
    void anAgeAloneBelowALabelWithAnAgeIsOfTheSameTest() throws Exception {
        SheetReading reading = readingOf("setting_bed", "text 18b Veneer mortar", "at 54 110", "table ruled 18 180,120", "| Test | Result",
            "| Shear bond, ASTM C482, 7 days | 85 psi", "| 28 days | 140 psi");
        assertEquals("140 psi by ASTM C482", said(reading, "setting_bed.bond"));
    }

    @Test
    void theModelOfAFamilyWhoseNameHeadsTheSheetIsOneAmongOthers() throws Exception {
        SheetReading reading = readingOf("mat", "text 18b Dimple 8", "text 9 Dimpled sheet of polyethylene, combustible, may stand "
            + "uncovered for 45 days.", "at 54 120", "table ruled 18 150,90,90", "| Property | Dimple 8 | Dimple 8G",
            "| Overall thickness | 0.31 in. | 0.33 in.", "| Drainage efficiency | 99% | 97%");
        assertEquals("0.31 in of Dimple 8; 0.33 in of Dimple 8G", said(reading, "mat.thickness"));
    }

    @Test
    void aFractionOfSmallFiguresRightBehindAWordIsAnAmount() throws Exception {
        assertEquals("1/4 in", said(sentence("lath", "Crimps in the cross wires hold the mesh^(1)/4 inch (6.4 mm) off the backing."),
            "lath.furring"));
    }

    @Test
    void aMarkOnTheSecondLineOfAHeadingNamesTheStandardOfItsColumn() throws Exception {
        SheetReading reading = readingOf("mat", "text 18b Corrugated drainage sheet", "at 54 110", "table ruled 30 80,110,110,80",
            "| Type | Thickness / in. | Compressive / strength, psf^(1) | Weight / lb", "| CS-5 | 3/16 | 9,100 | 12",
            "| CS-10 | 3/8 | 7,400 | 15", "text 8 ^(1) ASTM D1621 at 10% deformation.");
        assertEquals("7400 psf of CS-10 by ASTM D1621; 9100 psf of CS-5 by ASTM D1621", said(reading, "mat.compressive"));
    }

    @Test
    void aRowWithoutFiguresOfATableOfResultsHeadsNoOther() throws Exception {
        SheetReading reading = readingOf("sealant", "text 18b Joint sealant", "at 54 110", "table ruled 20 160,120,120",
            "| Property | Value | Test method", "| Type | S | ASTM C920", "| Grade | NS | ASTM C920", "| Uses | NT, M, G, A, O | ASTM C920",
            "| Staining | None on porous units | ASTM C1248");
        assertEquals("NS by ASTM C920", said(reading, "sealant.sag"));
        assertEquals("yes by ASTM C1248", said(reading, "sealant.stain_tested"));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What heads the columns and rows of tables, and how far it reaches, on small drawn sheets. */
class HeadsOfSheetsTest extends SmallSheets {
    private SheetReading airy() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Self-adhered flashings"));
        row(page, 110, "60 Test", "130 Property", "300 Tape B", "420 Tape R");
        row(page, 142, "130 Adhesive", "300 butyl", "420 rubberized asphalt");
        row(page, 174, "130 Facer", "300 PP nonwoven", "420 HDPE film");
        row(page, 206, "60 ASTM D3652", "130 Thickness, total", "300 22 mil", "420 30 mil");
        row(page, 238, "130 Roll width", "300 6 in.", "420 9 in.");
        row(page, 270, "60 AAMA 711", "130 Thermal exposure", "300 Level 3", "420 Level 1");
        return reading(page.toArray(String[]::new));
    }

    @Test
    void rowsFarApartAndWithoutAMethodGoOnWithTheTableOfModels() throws Exception {
        assertEquals("22 mil of Tape B by ASTM D3652; 30 mil of Tape R by ASTM D3652", said(airy(), "flexible_flashing.thickness"));
        assertEquals("level 1 of Tape R by AAMA 711; level 3 of Tape B by AAMA 711", said(airy(), "flexible_flashing.heat"));
    }

    @Test
    void anEmptyPlaceBelowAMethodIsNoneForWhatNoMethodIsAskedOf() throws Exception {
        assertEquals("6 in of Tape B; 9 in of Tape R", said(airy(), "flexible_flashing.width"));
    }

    @Test
    void anEmptyPlaceBelowAMethodIsTheSameForWhatIsShownByIt() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Extruded polystyrene insulation board"));
        row(page, 110, "60 Method", "150 Property", "350 Value");
        row(page, 125, "60 ASTM E84", "150 Flame spread index", "350 10");
        row(page, 140, "150 Smoke-developed index", "350 165");
        row(page, 155, "150 Thickness", "350 1 in.");
        SheetReading reading = reading(page.toArray(String[]::new));
        assertEquals("165 by ASTM E84", said(reading, "insulation.smoke"));
        assertEquals("1 in", said(reading, "insulation.thickness"));
    }

    @Test
    void theStandardOfTheMaterialInARowOfItsOwnShowsTheMaterial() throws Exception {
        SheetReading reading = readingOf("lath_accessories", "text 18b Corner lath", "at 54 110", "table ruled 19 150,130,130",
            "| Property | A 65 Z | A 65 V", "| Material | galvanized steel | PVC", "| Specification | ASTM C1861 | ASTM C1861",
            "| Sheet thickness, mm | 0.50 | 1.2");
        assertEquals("PVC of A 65 V by ASTM C1861; galvanized steel of A 65 Z by ASTM C1861", said(reading, "lath_accessories.material"));
    }

    @Test
    void theStandardOfTheMaterialInAColumnOfItsOwnShowsTheMaterial() throws Exception {
        SheetReading reading = readingOf("movement_joint", "text 18b Expansion joint accessory", "at 54 110",
            "table ruled 19 110,130,110,130", "| Type | Joint width as set, mm | Material | Material standard",
            "| Duo 10 V | 10 | PVC | ASTM C1861", "| Duo 16 S | 16 | stainless steel | ASTMC1861");
        assertEquals("PVC of Duo 10 V by ASTM C1861; stainless steel of Duo 16 S by ASTM C1861", said(reading,
            "movement_joint.material"));
    }

    @Test
    void theStandardThatASentenceSaysTheProductIsMadeToShowsItsMaterial() throws Exception {
        SheetReading reading = readingOf("casing_bead", "text 18b Casing beads", "at 54 110", "table ruled 19 110,130,110",
            "| Cat. no. | Ground, in. | Material", "| CB-75 | 3/4 | PVC", "| CB-125 | 1-1/4 | zinc alloy", "at 54 220",
            "text 9 All beads of this page are made to ASTM C 1861.");
        assertEquals("PVC of CB-75 by ASTM C1861; zinc alloy of CB-125 by ASTM C1861", said(reading, "casing_bead.material"));
    }

    @Test
    void otherStandardsBesideTheOneAskedForLeaveOpenWhatEachIsMadeTo() throws Exception {
        SheetReading reading = readingOf("lath_accessories", "text 18b Corner lath", "at 54 110", "table ruled 19 150,130,130",
            "| Property | A 65 Z | A 65 V", "| Material | galvanized steel | PVC", "| Specification | ASTM A653 | ASTM C1861",
            "| Sheet thickness, mm | 0.50 | 1.2");
        assertEquals("PVC of A 65 V; galvanized steel of A 65 Z", said(reading, "lath_accessories.material"));
    }

    @Test
    void otherStandardsInTheColumnLeaveOpenWhatEachIsMadeTo() throws Exception {
        SheetReading reading = readingOf("movement_joint", "text 18b Expansion joint accessory", "at 54 110",
            "table ruled 19 110,130,110,130", "| Type | Joint width as set, mm | Material | Material standard",
            "| Duo 10 V | 10 | PVC | ASTM D1784", "| Duo 16 S | 16 | stainless steel | ASTM C1861");
        assertEquals("PVC of Duo 10 V; stainless steel of Duo 16 S", said(reading, "movement_joint.material"));
    }

    @Test
    void namesOfModelsThatBeginAsAStandardAreNone() throws Exception {
        assertEquals("1-1/2 in of PS-150; 2 in of PS-200", said(reading("text 18b Lath screws", "at 54 110",
            "table ruled 19 110,110,110", "| Part no. | Length, in. | Head, in.", "| PS-150 | 1-1/2 | 7/16", "| PS-200 | 2 | 7/16"),
            "lath_fastener.length"));
    }

    @Test
    void sizesNameTheRowsThoughTheirHeadingCouldBeAWidth() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Flashing tape with butyl adhesive"));
        row(page, 110, "195 Width", "308 Rolls");
        row(page, 122, "51 Size", "195 mm (in.)", "308 per box", "417 Typical place");
        row(page, 143, "51 Tape B 100", "195 102 (4)", "308 12", "417 Heads and jambs");
        row(page, 162, "51 Tape B 150", "195 152 (6)", "308 8", "417 Jambs, base");
        assertEquals("flexible_flashing.width 102 mm of Tape B 100; flexible_flashing.width 152 mm of Tape B 150", read(page));
    }

    @Test
    void aHeadingOfTwoLinesHasItsOwnWordsAndNotThoseBesideIt() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Expansion joints of two leaves"));
        row(page, 110, "128 Joint width,", "207 Ground", "481 Pieces");
        row(page, 119, "68 Cat. no.", "128 as set (in.)", "207 (in.)", "267 Material", "424 Length", "481 per carton");
        row(page, 136, "68 SL-25Z", "128 1/4", "207 3/4", "267 Zinc alloy", "424 10 ft", "481 20");
        row(page, 153, "68 SL-50Z", "128 1/2", "207 7/8", "267 Zinc alloy", "424 10 ft", "481 20");
        assertEquals("movement_joint.width 1/2 in of SL-50Z; movement_joint.width 1/4 in of SL-25Z", read(page));
    }

    @Test
    void namesOfBlocksHeadTheRowsThoughBlockIsWhatTheirMaterialIsCalled() throws Exception {
        SheetReading reading = reading("text 18b Mounting blocks", "at 54 110", "table ruled 19 110,110,110,110",
            "| Block | Material | Depth, in. | Joint width, in.", "| Plain V | Cellular PVC | 1-3/4 | 3/8",
            "| Old Hall | Cast stone | 2-1/4 | 1/2");
        assertEquals("penetration_seal", reading.component());
        assertEquals("1/2 in of Old Hall; 3/8 in of Plain V", said(reading, "penetration_seal.width"));
        assertEquals("cast stone of Old Hall; cellular PVC of Plain V", said(reading, "penetration_seal.block"));
    }

    @Test
    void wordsInBracketsBelowARowHeadNoTable() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Asphalt-saturated kraft building paper"));
        row(page, 110, "147 Property (method)", "355 Brown 10", "417 Brown 60");
        row(page, 124, "147 Water resistance class (ASTM E 2556)", "355 10-minute", "417 60-minute");
        row(page, 136, "360 (Type I)", "417 (Type II)");
        row(page, 148, "147 Weight, lb/100 sq ft", "387 6.1", "449 9.4");
        row(page, 160, "147 WVT, perms (ASTM E-96 Proc. A)", "387 7.8", "449 5.9");
        assertEquals("5.9 perm of Brown 60 by ASTM E96 Procedure A; 7.8 perm of Brown 10 by ASTM E96 Procedure A", said(readingOf(
            "inner_ply", page.toArray(String[]::new)), "inner_ply.permeance"));
    }

    @Test
    void aListSetOffBelowATableOfModelsIsOfAllOfThem() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Head flashing"));
        row(page, 110, "73 Property", "198 WS-G", "305 WS-S", "427 WS-A");
        row(page, 129, "73 Thickness, in.", "198 0.024", "305 0.018", "427 0.032");
        row(page, 148, "73 Zinc coating", "198 G90", "305 N/A", "427 N/A");
        row(page, 167, "73 Finish", "198 mill spangle", "305 dull", "427 baked");
        row(page, 186, "73 Longest piece, ft", "198 10", "305 8", "427 10");
        row(page, 219, "67 Standard profile, all metals", "319 Mortar");
        row(page, 234, "67 Upleg", "218 4 in.");
        row(page, 248, "67 Hemmed drip edge", "218 1/2 in.");
        String read = read(page);
        assertEquals("metal_flashing.hem 1/2 in; metal_flashing.upleg 4 in", read.replaceAll(
            "metal_flashing\\.(?!hem|upleg)[^;]*(?:; )?", "").replaceAll("; $", ""));
    }

    @Test
    void aHyphenSetAsAMinusStaysAHyphenInTheNameOfAModel() throws Exception {
        assertEquals("movement_joint.width 13 mm of DP-V; movement_joint.width 19 mm of DP-X", read(List.of("text 18b Movement joint "
            + "accessory", "at 54 110", "table ruled 19 170,110,110", "| Reference | DP\u2212V | DP\u2212X",
            "| Joint width, as set | 13 mm | 19 mm",
            "| Material (ASTM C1861) | PVC | stainless steel", "| Service temperature | \u221220 to 60 °C | \u221240 to 120 °C")));
    }

    @Test
    void millimetresStandBeforeMixedFractionsOfInchesInBrackets() throws Exception {
        assertEquals("framing.depth 152 mm of S152; framing.depth 92 mm of S92", read(List.of("text 18b Steel studs", "at 54 110",
            "table ruled 19 110,150,110", "| Profile | Web depth, mm (in.) | Mass, kg/m", "| S92 | 92 (3-5/8) | 1.33",
            "| S152 | 152 (6) | 2.26")));
    }

    @Test
    void dataAndTestHeadTheLabelsAndTheMethods() throws Exception {
        SheetReading reading = reading("text 18b Water repellent for stone veneer", "at 54 110", "table ruled 19 150,110,110,110",
            "| Data | Test | Duo W | Mono S", "| Solids | ASTM D5095 | 9 % | 40 %",
            "| Vapor permeance, treated unit | ASTM E96 | 26 perms | 18 perms",
            "| Reduction of water uptake | ASTM C67 | 89 % | 94 %", "| pH | — | 7.5 | N/A", "| Depth | own method | 2 – 4 mm | 3 – 7 mm");
        assertEquals("18 perm of Mono S by ASTM E96; 26 perm of Duo W by ASTM E96", said(reading, "water_repellent.permeance"));
        assertEquals("89% of Duo W by ASTM C67; 94% of Mono S by ASTM C67", said(reading, "water_repellent.uptake"));
    }

    @Test
    void aUnitMayHaveBracketsBelowItsStroke() throws Exception {
        assertEquals("372 ng/(Pa·s·m²) of Brown 60; 540 ng/(Pa·s·m²) of Brown 10", said(readingOf("inner_ply",
            "text 18b Building paper", "at 54 110", "table ruled 19 190,110,110", "| Property | Brown 10 | Brown 60",
            "| Vapour permeance, ng/(Pa·s·m²) | 540 | 372", "| Mass, g/m² | 190 | 305"), "inner_ply.permeance"));
    }

    @Test
    void aWordThatSaysAllThatAnotherDoesAndMoreIsTheOneSaid() throws Exception {
        assertEquals("at joints of the backing and at a spacing", said(reading("text 18b Movement joint accessory", "at 54 110",
            "text 9 Place a joint at all joints of the backing and at floor lines.", "at 54 124",
            "text 9 Set it over every joint of the backing, and besides at a spacing of not over 18 ft.", "at 54 150",
            "text 9 Joint width as set: 1/2 in."), "movement_joint.layout"));
    }

    @Test
    void aSampleWallIsReadByItsFormats() throws Exception {
        SheetReading reading = reading("text 18b Sample wall kits", "at 54 110", "table ruled 19 190,130,130",
            "| Format | Stand S | In-wall", "| Arrangement | freestanding | in place", "| Layers left exposed at edge | no | yes",
            "| Number of pull-off tests | 3 | 5");
        assertEquals("mockup", reading.component());
        assertEquals("freestanding of Stand S; in place of In-wall", said(reading, "mockup.kind"));
        assertEquals("no of Stand S; yes of In-wall", said(reading, "mockup.stages"));
        assertEquals("3 of Stand S; 5 of In-wall", said(reading, "mockup.face_tests"));
    }
}

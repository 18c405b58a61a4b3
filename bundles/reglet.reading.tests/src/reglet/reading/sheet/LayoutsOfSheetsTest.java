package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading.Found;

/** Layouts and headings by which a table is easily taken for another thing, each on a small drawn sheet of an invented product. */
class LayoutsOfSheetsTest extends SmallSheets {
    private String told(String property, String... lines) throws Exception {
        String told = reading(lines).values().stream().filter(one -> one.value()
            .property().equals(property)).map(one -> one.value().compare().map(sense -> sense.text() + " ").orElse("") + one.value()
                .value().text() + (one.model().isEmpty() ? "" : " of " + one.model()) + (one.value().method().isEmpty() ? "" : " by "
                    + one.value().method())).sorted().collect(Collectors.joining("; "));
        return told.isEmpty() ? "nothing" : told;
    }

    private static List<String> columns(int from) {
        List<String> lines = new ArrayList<>();
        String[] left = {"The panel is laid from the bottom upward with", "its face turned to the mason, and each course",
            "is butted against the one below it. Rolls that", "got wet in the yard are set on end to dry, and",
            "torn pieces are cut out and laid anew before", "the lath is hung on the studs over them."};
        String[] right = {"Our people call at the site upon request and", "bring samples of each grade along. Bundles go",
            "out on the day after an order, freight is paid", "by whoever buys them. Claims reach us within",
            "two weeks of the day of delivery, in writing", "and before any of the goods are used up."};
        for (int i = 0; i < left.length; i++) {
            lines.addAll(List.of("at 54 " + (from + 11 * i), "text 9 " + left[i], "at 310 " + (from + 11 * i), "text 9 " + right[i]));
        }
        return lines;
    }

    @Test
    void aTableAcrossTwoColumnsOfTextIsReadAsOne() throws Exception {
        List<String> above = new ArrayList<>(List.of("text 18b Drainage mat", "at 54 100", "table plain 16 150,80,80,80,80",
            "| Property | Test | RH 6 | RH 10 | RH 20", "| Thickness, in. | ASTM D6525 | 0.25 | 0.40 | 0.75",
            "| Drainage efficiency, % | ASTM E2273 | 96.1 | 97.4 | 98.9", "| Flame spread index | ASTM E84 | 10 | 15 | 20",
            "| Compressive strength, psf | ASTM D6364 | 700 | 520 | 380"));
        above.addAll(columns(220));
        assertEquals("96.1% of RH 6 by ASTM E2273; 97.4% of RH 10 by ASTM E2273; 98.9% of RH 20 by ASTM E2273", told(
            "mat.drainage_efficiency", above.toArray(new String[0])));
        List<String> below = new ArrayList<>(List.of("text 18b Drainage mat"));
        below.addAll(columns(110));
        below.addAll(List.of("at 54 210", "table plain 16 150,80,80,80,80", "| Property | Method | K-1 | K-2 | K-3",
            "| Thickness, in. | ASTM D6525 | 0.25 | 0.40 | 0.75", "| Flame spread index | ASTM E84 | 10 | 15 | 20",
            "| Drainage efficiency, % | ASTM E2273 | 91.5 | 95.2 | 97.7", "| Compressive strength, psf | ASTM D6364 | 640 | 480 | 310"));
        assertEquals("10 of K-1 by ASTM E84; 15 of K-2 by ASTM E84; 20 of K-3 by ASTM E84", told("mat.flame_spread", below
            .toArray(new String[0])));
    }

    @Test
    void cellsThatTouchArePartedWhereTheColumnsOfOtherRowsBegin() throws Exception {
        assertEquals("1-3/8 in of WS-1375-LONG; 7/8 in of WS-875; 7/8 in of WS-875X", told("base_screed.ledge", "text 18b Weep screed",
            "at 54 110", "text 9b Item", "at 150 110", "text 9b WS-875", "at 220 110", "text 9b WS-1375-LONG", "at 291 110",
            "text 9b WS-875X", "at 54 128", "text 9 Ground, in.", "at 150 128", "text 9 7/8", "at 220 128", "text 9 1-3/8",
            "at 291 128", "text 9 7/8", "at 54 146", "text 9 Material", "at 150 146", "text 9 galvanized steel", "at 220 146",
            "text 9 zinc alloy", "at 291 146", "text 9 PVC", "at 54 164", "text 9 Flange, in.", "at 150 164", "text 9 3-1/2",
            "at 220 164", "text 9 3-1/2", "at 291 164", "text 9 4"));
    }

    @Test
    void resultsMayBeHeadedByTheirUnitOrHowManyWereTested() throws Exception {
        assertEquals("226 psi by ASTM C482", told("setting_bed.bond", "text 18b Stone veneer mortar", "at 54 110",
            "table ruled 18 180,90,80,80,80", "| Test | Method | Limit | Result, MPa | Result, psi",
            "| Shear bond strength, 28 d | ASTM C482 | 50 psi | 1.6 | 226", "| Compressive strength, 28 d | ASTM C109 | - | 19 | 2756"));
        assertEquals("0.047% by ASTM C1670", told("veneer.shrinkage", "text 18b Manufactured stone veneer", "at 54 110",
            "table ruled 18 180,150,150", "| Property | C1670 requirement | Result, mean of five",
            "| Linear drying shrinkage, ASTM C1670 | 0.09 % max. | 0.047 %", "| Density | report | 82 lb/ft³"));
        assertEquals("21 lbf/in by ASTM C794", told("sealant.peel", "text 18b Silicone joint sealant", "at 54 110",
            "table ruled 18 90,90,180,90", "| Typical value | Test | Property | C920 limit",
            "| 21 pli | ASTM C794 | Adhesion in peel | 5 pli min.",
            "| 2 % | ASTM C1246 | Weight loss after heat aging | 7 % max."));
    }

    @Test
    void ofTwoSidesTheLongerIsTold() throws Exception {
        assertEquals("18 in of Fell; 22 in of Tarn", told("veneer.longest", "text 18b Manufactured stone veneer", "at 54 110",
            "table ruled 18 110,110,130,110", "| Profile | Thickness, in. | Height x length, in. | Largest face, in²",
            "| Tarn | 1-3/4 | 2–6 x 5–22 | 132", "| Fell | 2 | 3–14 x 4–18 | 190"));
        assertEquals("2 in of WW-17", told("lath.opening", "text 18b Welded wire lath", "at 54 110", "table ruled 18 100,130,130",
            "| Style | Mesh | Wire dia.", "| WW-17 | 1-1/2\" x 2\" | 0.054\"", "| WW-0 | see drawing | 0.062\""));
    }

    @Test
    void theLetterOfADrawingMayStandBeforeAUnit() throws Exception {
        assertEquals("1-5/8 in of SC-158; 2 in of SC-200", told("lath_fastener.length", "text 18b Lath screws", "at 54 110",
            "table ruled 18 110,110,110", "| Catalog no. | Length L, in. | Head dia., in.", "| SC-158 | 1-5/8 | 0.437",
            "| SC-200 | 2 | 0.437"));
    }

    @Test
    void whoTellsHowLargeHolesAreHasThem() throws Exception {
        assertEquals("no of WK-2; yes of WK-1; yes of WK-3", told("base_screed.weeps", "text 18b Weep screed", "at 54 110",
            "table ruled 18 110,110,150", "| Item | Ground, in. | Weep holes", "| WK-1 | 7/8 | 1/4\" dia., 8\" o.c.",
            "| WK-2 | 7/8 | none", "| WK-3 | 1-3/8 | 3/16 in. slots"));
    }

    @Test
    void aNoteBelowATableSaysThatItsFiguresAreLimits() throws Exception {
        assertEquals("at least 0.0179 in of R-1 by ASTM C1861; at least 0.0240 in of R-2 by ASTM C1861", told("base_screed.thickness",
            "text 18b Weep screed", "at 54 110", "table ruled 18 110,110,150", "| Item | Ground, in. | Thickness, in.",
            "| R-1 | 7/8 | 0.0179", "| R-2 | 1-3/8 | 0.0240", "at 54 180",
            "text 9 Thickness given is the minimum base metal thickness by ASTM C1861."));
    }

    @Test
    void noneOnSomeSubstratesLeavesTheOthersToTheTest() throws Exception {
        assertEquals("as the adhesion test asks", told("sealant.primer", "text 18b Silicone joint sealant", "at 54 110",
            "text 9 Priming: none on glass and aluminum; for limestone and brick an adhesion test decides."));
    }

    @Test
    void oneEndOfABetweenIsNoAmountOfItsOwn() throws Exception {
        assertEquals("nothing", told("sealant.depth", "text 18b Silicone joint sealant", "at 54 110",
            "text 9 Depth at mid-joint half the width, between 1/4 and 1/2 in."));
    }

    @Test
    void aShareOfTheWholeIsNoLimit() throws Exception {
        assertEquals("100%", told("setting_bed.coverage", "text 18b Stone veneer mortar", "at 54 110",
            "text 9 Butter the back of each unit over 100 % of its face, and press it."));
    }

    @Test
    void smallWordsRightAboveALargeTitleAreNoRaisedLettersOfIt() throws Exception {
        assertEquals("welded wire", told("lath.kind", "at 60 58", "text 12b HARTWELL WIRE PRODUCTS", "at 56 77",
            "text 26b Furfast Welded Wire Lath", "at 54 120", "text 9 Galvanized and crimped, in rolls.", "at 54 140",
            "table ruled 18 100,130,130", "| Style | Mesh | Wire dia.", "| WW-17 | 2\" x 2\" | 0.054\"", "| WW-16 | 2\" x 2\" | 0.062\""));
    }

    @Test
    void howOftenATestIsDoneIsToldInLinearFeet() throws Exception {
        assertEquals("100 ft", told("sealant.test_every", "text 18b Silicone joint sealant", "at 54 110",
            "text 9 Pull-test one hand-pull per 100 linear feet in the first 1,000 ft, then one on each elevation."));
    }

    @Test
    void largeFiguresAboveSmallWordsAreWhatTheWordsSay() throws Exception {
        String[] band = {"text 22b Roll-on barrier", "text 12 Fluid-applied air and water-resistive barrier", "at 60 130", "text 24b 14 mils",
            "at 60 160", "text 9 dry film, two coats", "at 250 130", "text 24b 120 days", "at 250 160", "text 9 exposure before cladding",
            "at 54 200", "text 9 Rolled onto gypsum sheathing and masonry, it cures to a skin without seams in a day."};
        assertEquals("14 mil", told("inner_ply.film", band));
        assertEquals("120 d", told("inner_ply.exposure", band));
    }

    @Test
    void figuresBesideLargerLettersStandWhereTheyAre() throws Exception {
        String[] lines = {"text 18b Drainage mat", "at 54 143", "text 29 95 %", "at 200 110", "text 9b Property", "at 330 110", "text 9b DW 6",
            "at 430 110", "text 9b DW 10", "at 200 140", "text 9 Thickness, in.", "at 330 140", "text 9 0.25", "at 430 140", "text 9 0.40",
            "at 200 158", "text 9 Compressive resistance, psf", "at 330 158", "text 9 610", "at 430 158", "text 9 480"};
        List<Found> found = reading(lines).values().stream().filter(one -> one.value().property().equals("mat.thickness")).toList();
        assertEquals(2, found.size());
        assertTrue(found.stream().allMatch(one -> one.value().box().orElseThrow().height() < 15), found.toString());
    }

    @Test
    void aListBelowRowsOfModelsIsOfAllOfThem() throws Exception {
        String[] lines = {"text 18b Foundation weep screed", "at 54 110", "table plain 16 100,140,100,80",
            "| Model | Material | Metal thickness | Ground", "| KW-78 | Galvanized steel | 0.019 in. | 7/8 in.",
            "| KW-138 | Zinc alloy | 0.024 in. | 1-3/8 in.", "text 9b Both models", "at 54 190", "text 9 Vertical leg", "at 220 190",
            "text 9 3-1/2 in.", "at 54 206", "text 9 Weep holes", "at 220 206", "text 9 Yes, 3/16 in.", "at 54 240",
            "text 9 Fasten the leg with the nose at least 1 in. below the joint between foundation and framing."};
        assertEquals("3-1/2 in", told("base_screed.leg", lines));
        assertEquals("1-3/8 in of KW-138; 7/8 in of KW-78", told("base_screed.ledge", lines));
    }

    @Test
    void aLengthAndAnAreaInOneCellAreBothTold() throws Exception {
        String[] lines = {"text 18b Manufactured stone veneer", "at 54 110", "leaders 400 Weight, saturated = 12.6 lb/ft²",
            "leaders 400 Largest unit = 20 in. × 6 in. (120 sq. in.)"};
        assertEquals("20 in", told("veneer.longest", lines));
        assertEquals("120 in²", told("veneer.face", lines));
    }

    @Test
    void anAnswerMaySayHowFarLathIsFurredToo() throws Exception {
        assertEquals("1/4 in", told("lath.furring", "text 18b Glass fiber lath", "at 54 110", "leaders 400 Type of lath = Glass fiber",
            "leaders 400 Self-furring = Yes, 1/4 inch"));
    }

    @Test
    void aUnitBehindALabelOfOneOfItsRarerNamesIsRead() throws Exception {
        assertEquals("480 psf of DW 10; 610 psf of DW 6", told("mat.compressive", "text 18b Drainage mat", "at 54 110",
            "table plain 16 150,80,80", "| Property | DW 6 | DW 10", "| Thickness, in. | 0.25 | 0.40", "| Load at crush, psf | 610 | 480"));
    }
}

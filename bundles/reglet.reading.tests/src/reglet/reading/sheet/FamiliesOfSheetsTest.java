package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;


import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** Sheets of one product among its like, and of models in columns, rows and lists, one habit at a time, on small drawn sheets. */
class FamiliesOfSheetsTest extends SmallSheets {
    @Test
    void whatIsTheSameForAllModelsMayStandOnceAboveTheRestOfTheirTable() throws Exception {
        SheetReading reading = reading("text 18b Vent strip for the top of the wall", "at 54 110", "table open 15 150,110,110",
            "| | LV-12 | LV-20", "| Material | Stainless steel |", "| Clear slot width | 1/2 in. | 3/4 in.",
            "| Ember listing | none | none");
        assertEquals("1/2 in of LV-12; 3/4 in of LV-20", said(reading, "top_vent.opening"));
        assertEquals("no of LV-12; no of LV-20", said(reading, "top_vent.ember"));
    }

    @Test
    void aColumnOfMethodsMayStandWithoutAHeadingBetweenLabelsAndModels() throws Exception {
        SheetReading reading = reading("text 18b Stone wool insulation board", "at 54 110", "table open 15 130,100,80,80",
            "| Slab | | SW 60-1 | SW 60-2", "| Thickness, in. | ASTM C167 | 1 | 2", "| R-value at 75 F | ASTM C518 | 4.1 | 8.2");
        assertEquals("1 in of SW 60-1 by ASTM C167; 2 in of SW 60-2 by ASTM C167", said(reading, "insulation.thickness"));
        assertEquals("4.1 of SW 60-1 by ASTM C518; 8.2 of SW 60-2 by ASTM C518", said(reading, "insulation.r_value"));
    }

    @Test
    void theSheetsOwnProductIsToldFromItsLikeThoughATradeMarkStandsInItsName() throws Exception {
        SheetReading reading = reading("text 18b SoftCord™ CX", "text 10 Backer rod for sealant joints", "at 54 130",
            "table open 15 120,120,120", "| | SoftCord CX | SoftCord OX", "| Cell structure | closed cell | open cell",
            "| Oversize | 25-33 % | 25-50 %");
        assertEquals("closed cell", said(reading, "backer_rod.kind"));
        assertEquals("25 to 33%", said(reading, "backer_rod.oversize"));
    }

    @Test
    void rollsAreToldByTheNumbersInTheirLines() throws Exception {
        SheetReading reading = reading("text 18b Butyl flashing tape", "at 54 110", "text 9 Stock rolls",
            "text 9 6 in. x 50 ft, item 8106, 10 to a case",
            "text 9 9 in. x 50 ft, item 8109, 6 to a case");
        assertEquals("6 in of 8106; 9 in of 8109", said(reading, "flexible_flashing.width"));
    }

    @Test
    void theLetterOfADrawingMayStandBehindALabel() throws Exception {
        SheetReading reading = reading("text 18b Foundation weep screed", "at 54 110", "table open 15 120,120,120",
            "| Part no. | Flange C | Ground D", "| WS-7 | 3-1/2 in. | 7/8 in.", "| WS-9 | 4 in. | 1-1/8 in.");
        assertEquals("1-1/8 in of WS-9; 7/8 in of WS-7", said(reading, "base_screed.ledge"));
    }

    @Test
    void aMovementJointIsNoCasingBead() throws Exception {
        SheetReading reading = reading("text 18b Two-piece expansion joint", "at 54 110", "text 9 The pair of strips slide in each other.",
            "table open 15 110,110,90,110", "| Catalog No. | Metal | Ground | Joint opening", "| XJ-7 | zinc alloy | 7/8 in. | 3/8 in.",
            "| XJ-9 | PVC | 1-1/8 in. | 1/2 in.");
        assertEquals("movement_joint", reading.component());
        assertEquals("1/2 in of XJ-9; 3/8 in of XJ-7", said(reading, "movement_joint.width"));
    }

    @Test
    void theLongestOfARangeOfLengthsIsItsEnd() throws Exception {
        SheetReading reading = reading("text 18b Natural thin stone veneer", "at 54 110", "table open 15 120,120,120",
            "| | Random | Coursed", "| Lengths | 4\"–15\" | 6\"–22\"", "| Average weight | 10 lb/ft² | 12 lb/ft²");
        assertEquals("15 in of Random; 22 in of Coursed", said(reading, "veneer.longest"));
    }

    @Test
    void whatAProductIsOnlyWithAnAdmixtureItIsNotByItself() throws Exception {
        SheetReading reading = reading("text 18b Polymer-modified veneer mortar", "at 54 110",
            "text 9 The mortar meets ANSI A118.4 and, when gauged with Liquid 7 instead of water, ANSI A118.15.");
        assertEquals("modified dry-set", said(reading, "setting_bed.mortar"));
    }

    @Test
    void aWordAloneAmongCautionsIsSaidOfTheProduct() throws Exception {
        assertEquals("yes", said(reading("text 18b Drainable housewrap", "at 54 110",
            "text 9 The sheet is slippery. Combustible. Do not weld near it."), "inner_ply.combustible"));
        assertEquals("yes", said(reading("text 18b Drainable housewrap", "at 54 110",
            "text 9 Store it in the sleeve. Combustible; hold flames off."), "inner_ply.combustible"));
    }

    @Test
    void aStandardInItsOwnColumnTellsOfWhichTypeAProductIs() throws Exception {
        assertEquals("60-minute by ASTM E2556", said(reading("text 18b Drainable housewrap", "at 54 110", "table open 15 150,110,80,90",
            "| Property | Method | Typical value | Requirement", "| Barrier for the wall | ASTM E2556 | Type II | Type I",
            "| Thickness | ASTM D1777 | 12 mils | –"), "inner_ply.rating"));
    }

    @Test
    void theScratchCoatsTimesAndTemperaturesAreToldInSentences() throws Exception {
        SheetReading reading = reading("text 18b Scratch coat mortar Type N", "at 54 110",
            "text 9 The coat must be kept moist through 36 hours. Stone may be set when it has cured 60 hours.",
            "text 9 Where the wall exceeds 95 °F, mist it at noon. Do not plaster when air or wall is under 45 °F.");
        assertEquals("36 h", said(reading, "scratch_coat.cure"));
        assertEquals("at least 60 h", said(reading, "scratch_coat.wait"));
        assertEquals("95 °F", said(reading, "scratch_coat.placing_high"));
        assertEquals("at least 45 °F", said(reading, "scratch_coat.placing_low"));
    }

    @Test
    void noMoreFaceThanIsAtMost() throws Exception {
        assertEquals("at most 200 in²", said(reading("text 18b Natural thin stone veneer", "at 54 110",
            "text 9 Pieces are sawn at the back, and no stone has more face than 200 square inches."), "veneer.face"));
    }
}

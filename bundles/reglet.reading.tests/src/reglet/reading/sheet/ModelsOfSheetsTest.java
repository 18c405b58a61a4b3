package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;


import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What the models of a sheet are called, and what is said of which of them, one habit of makers at a time, on small drawn sheets. */
class ModelsOfSheetsTest extends SmallSheets {
    @Test
    void anItemAndItsOrderCodeAreOneProductAllOverTheSheet() throws Exception {
        SheetReading reading = reading("text 18b Dimpled drainage mat", "at 54 110", "table open 15 110,110,110",
            "| Item | Catalog no. | Overall depth", "| Ridgeway 6 | RW-06-40 | 1/4 in.", "| Ridgeway 10 | RW-10-40 | 3/8 in.", "at 54 200",
            "table open 15 150,90,90,90", "| | RW-06-40 | RW-10-40 | Method",
            "| Drainage efficiency, % | 92 | 95 | ASTM E2273", "| Compressive strength, psf | 6100 | 4800 | ASTM D1621");
        assertEquals("1/4 in of Ridgeway 6; 3/8 in of Ridgeway 10", said(reading, "mat.thickness"));
        assertEquals("92% of Ridgeway 6 by ASTM E2273; 95% of Ridgeway 10 by ASTM E2273", said(reading, "mat.drainage_efficiency"));
    }

    @Test
    void theTitleOfATableMayNameTheOnlyModelThatItIsAbout() throws Exception {
        SheetReading reading = reading("text 18b Woven polyolefin building wrap", "at 54 110", "table open 15 90,90,90",
            "| Stock no. | Perms | UV, days", "| PW-80 | 11 | 90", "| PW-120 | 18 | 180", "at 54 200",
            "text 9b Further tests, PW-120 only", "table open 15 150,110,110", "| Property | Result | Method",
            "| Air permeance | 0.0014 cfm/ft² | ASTM E2178", "| Tensile strength | 48 lbf/in | ASTM D828");
        assertEquals("0.0014 cfm/ft² of PW-120 by ASTM E2178", said(reading, "inner_ply.air_leakage"));
        assertEquals("180 d of PW-120; 90 d of PW-80", said(reading, "inner_ply.exposure"));
    }

    @Test
    void aColumnOfCodesBesideTheValuesNamesTheModelOfEachRow() throws Exception {
        SheetReading reading = reading("text 18b Woven wire lath, self-furred", "at 54 110", "table open 15 90,170,60",
            "| metric | characteristic | code", "| 1.4 mm | wire diameter | KW17", "| 6 mm | furring height | KW17",
            "| 0.9 mm | wire diameter | KW20", "| 5 mm | furring height | KW20");
        assertEquals("0.9 mm of KW20; 1.4 mm of KW17", said(reading, "lath.wire"));
        assertEquals("5 mm of KW20; 6 mm of KW17", said(reading, "lath.furring"));
    }

    @Test
    void itemsBesideTheirMaterialAreModelsThoughAColumnCitesSpecifications() throws Exception {
        SheetReading reading = reading("text 18b Casing beads", "at 54 110", "table open 15 80,150,100,80",
            "| Item | Material | Specification | Length", "| QB-G | Galvanized steel, G60 | ASTM C1861 | 10 ft",
            "| QB-Z | Zinc alloy, 99 % zinc | ASTM C1861 | 10 ft");
        assertEquals("galvanized steel of QB-G by ASTM C1861; zinc alloy of QB-Z by ASTM C1861", said(reading, "casing_bead.material"));
    }

    @Test
    void aRowMayNameAStandardForEachModelAndTheTableGoesOn() throws Exception {
        SheetReading reading = reading("text 18b Through-wall metal flashing", "at 54 110", "table open 15 110,110,110,110",
            "| Model no. | 700-SS | 700-GV | 700-CU", "| Metal | stainless steel | galvanized steel | copper sheet",
            "| Sheet spec. | ASTM A240 | ASTM A653 | ASTM B370", "| Thickness, in. | .0187 | .0239 | .0216");
        assertEquals(".0187 in of 700-SS; .0216 in of 700-CU; .0239 in of 700-GV", said(reading, "metal_flashing.thickness"));
    }

    @Test
    void whatASentenceSaysOfOneModelByNameIsOfThatModel() throws Exception {
        SheetReading reading = reading("text 18b Woven wire lath", "at 54 110", "table open 15 90,120", "| Model | Wire diameter",
            "| KW17 | 0.054 in.", "| KW20 | 0.035 in.", "at 54 200", "text 9 Lap sides and ends at least 1-1/2 in. with KW17.");
        assertEquals("at least 1-1/2 in of KW17", said(reading, "lath.lap"));
    }

    @Test
    void whatTheTitleSaysIsSaidOfAllModels() throws Exception {
        SheetReading reading = reading("text 18b QD Self-Furring Lath", "text 9 Expanded metal lath for portland cement plaster.",
            "at 54 130", "table open 15 90,120", "| Item | Weight, lb/yd²", "| QD 25 | 2.5", "| QD 34 | 3.4");
        assertEquals("yes", said(reading, "lath.self_furring"));
        assertEquals("2.5 lb/yd² of QD 25; 3.4 lb/yd² of QD 34", said(reading, "lath.weight"));
    }

    @Test
    void aMarkAtAHeadingOrBehindANameInTheTitleNamesTheMethodOfItsColumn() throws Exception {
        SheetReading heads = reading("text 18b Woven polyolefin building wrap", "at 54 110", "table open 15 90,90,90",
            "| Stock no. | Perms^(1) | UV, days", "| PW-80 | 11 | 90", "| PW-120 | 18 | 180", "at 54 180",
            "text 8 ^(1) Water vapor permeance by ASTM E96, Procedure A.");
        assertEquals("11 perm of PW-80 by ASTM E96 Procedure A; 18 perm of PW-120 by ASTM E96 Procedure A", said(heads,
            "inner_ply.permeance"));
        SheetReading title = reading("text 18b Extruded polystyrene insulation board", "at 54 110", "text 9b Thicknesses and R-value §",
            "table open 15 90,90,90", "| Product no. | Thickness, in. | R-value", "| KP-10 | 1 | 5", "| KP-20 | 2 | 10", "at 54 210",
            "text 8 § °F·ft²·h/Btu at 75 °F, ASTM C518.");
        assertEquals("10 of KP-20 by ASTM C518; 5 of KP-10 by ASTM C518", said(title, "insulation.r_value"));
        assertEquals("1 in of KP-10; 2 in of KP-20", said(title, "insulation.thickness"));
    }

    @Test
    void whatTwoCriteriaAskForIsNoModel() throws Exception {
        SheetReading reading = reading("text 18b Fellmark 50 building wrap", "at 54 110", "table open 15 140,120,140,90",
            "| Property | Test method | AC38 / E2556 requirement | Fellmark 50",
            "| Water vapor permeance | ASTM E96, Procedure A | 5 perms min. | 12 perms",
            "| Air permeance at 75 Pa | ASTM E2178 | 0.004 cfm/ft² max. | 0.0012 cfm/ft²");
        assertEquals("12 perm by ASTM E96 Procedure A", said(reading, "inner_ply.permeance"));
        assertEquals("0.0012 cfm/ft² by ASTM E2178", said(reading, "inner_ply.air_leakage"));
    }

    @Test
    void aReportIsToldByItsHolderAndSaysInItsConditionsWhatTheProductIs() throws Exception {
        SheetReading reading = reading("text 9 REPORT KRP-3107", "text 9 REPORT HOLDER: Northmere Sheet Company",
            "text 9 EVALUATION SUBJECT: Fellmark 50 building wrap", "at 54 130", "text 9b 1.0 DESCRIPTION",
            "text 9 The product meets ASTM E2556 as Type II.", "at 54 170", "text 9b 2.0 CONDITIONS OF USE",
            "text 9 2.1 The wrap shall be covered within 120 days of installation.", "text 9 2.2 The wrap is combustible.");
        assertEquals("60-minute by ASTM E2556", said(reading, "inner_ply.rating"));
        assertEquals("120 d", said(reading, "inner_ply.exposure"));
        assertEquals("yes", said(reading, "inner_ply.combustible"));
    }

    @Test
    void twoListsWithTheSameLabelsAreOfTheProductsThatHeadThem() throws Exception {
        SheetReading reading = reading("text 18b Clear water repellents for masonry", "at 54 110", "text 10b Tarncoat S", "at 54 125",
            "table open 15 250,90", "| Active ingredient | siloxane, 8 percent", "| Reduction of water uptake (ASTM C67) | 93%",
            "| Permeance of treated brick (ASTM E96) | 12 perms", "at 54 200", "text 10b Tarncoat 40", "at 54 215", "table open 15 250,90",
            "| Active ingredient | silane, 40 percent", "| Reduction of water uptake (ASTM C67) | 88%",
            "| Permeance of treated brick (ASTM E96) | not tested");
        assertEquals("88% of Tarncoat 40 by ASTM C67; 93% of Tarncoat S by ASTM C67", said(reading, "water_repellent.uptake"));
        assertEquals("12 perm of Tarncoat S by ASTM E96", said(reading, "water_repellent.permeance"));
    }

    @Test
    void aRowOfMaterialsGoesOnWithTheTableOfModelsAboveIt() throws Exception {
        SheetReading reading = reading("text 18b Continuous cavity vent, top of wall", "at 54 110", "table open 20 140,130,130",
            "| | KV-26 | KV-26S", "| Body | Galvanized steel, 26 ga | Stainless steel, Type 304", "| Slot opening | 3/8 in. | 1/2 in.",
            "| Insect screen | Yes, 1/16 in. mesh | Yes, 1/16 in. mesh");
        assertEquals("1/2 in of KV-26S; 3/8 in of KV-26", said(reading, "top_vent.opening"));
        assertEquals("galvanized steel of KV-26; stainless steel of KV-26S", said(reading, "top_vent.material"));
    }

    @Test
    void aFirstRowOfWordsBelowAHeadingNamesNoModels() throws Exception {
        SheetReading reading = reading("text 18b Foundation weep screed, galvanized steel", "at 54 110", "table open 20 140,110,110,110",
            "| Property | Standard | Required | Dripwell 7-38", "| Sheet | ASTM A653 | Commercial steel | CS Type B",
            "| Base metal thickness | ASTM C1861 | 0.0172 in. min. | 0.0185 in.", "| Nailing flange | - | 3-1/2 in. min. | 3-5/8 in.");
        assertEquals("0.0185 in by ASTM C1861", said(reading, "base_screed.thickness").replace(" of Dripwell 7-38", ""));
        assertEquals("3-5/8 in", said(reading, "base_screed.leg").replace(" of Dripwell 7-38", ""));
    }

    @Test
    void aValueSaidOfAllDepthsIsOfNoSingleModel() throws Exception {
        SheetReading reading = reading("text 18b Drainage and ventilation mat", "at 54 110", "table open 20 140,90,90,90,90",
            "| Property | Method | GD-6 | GD-10 | GD-19", "| Nominal thickness | ASTM E2925 | 1/4 in. | 0.40 in. | 3/4 in.",
            "| Flame spread index | ASTM E84 | | 15, all depths |");
        assertEquals("15 by ASTM E84", said(reading, "mat.flame_spread"));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;


import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** How a value is meant: by which standard, in which sense, of which model and in which unit it is stated. */
class MeantOfSheetsTest extends SmallSheets {
    @Test
    void aNoteThatBeginsWithAUnitNamesTheStandardOfItsColumn() throws Exception {
        SheetReading reading = reading("text 18b Extruded polystyrene insulation board", "at 54 110", "table open 15 90,90,90",
            "| Item | Thickness, in. | R-value*", "| XB-1 | 1 | 5.0", "| XB-2 | 2 | 10.0", "at 54 180",
            "text 8 * °F·ft²·h/Btu at 75 °F, ASTM C518.");
        assertEquals("10.0 of XB-2 by ASTM C518; 5.0 of XB-1 by ASTM C518", said(reading, "insulation.r_value"));
    }

    @Test
    void aTitleInCapitalsNamesTheStandardOfWhatItNamesLast() throws Exception {
        SheetReading reading = reading("text 18b Mineral wool insulation board", "at 54 110",
            "text 9b SIZES AND THERMAL RESISTANCE (ASTM C518, mean 75 °F)", "table open 15 90,90,90",
            "| Item | Thickness, in. | R-value", "| WB-1 | 1 | 4.2", "| WB-2 | 2 | 8.4");
        assertEquals("4.2 of WB-1 by ASTM C518; 8.4 of WB-2 by ASTM C518", said(reading, "insulation.r_value"));
    }

    @Test
    void thePartOfAForeignStandardIsNoEdition() throws Exception {
        assertEquals("0.5 mm by EN 1849-2", said(reading("text 18b Building wrap, self-adhered membrane", "at 54 110",
            "table open 15 150,110,110", "| Property | Norm | Value", "| Thickness | EN 1849-2 | 0.5 mm",
            "| Water vapor permeance | ASTM E96, Procedure A | 12 perms"), "inner_ply.thickness"));
    }

    @Test
    void ofAFamilyOfStandardsTheValueNamesTheOne() throws Exception {
        assertEquals("modified dry-set by ANSI A118.4", said(reading("text 18b Thin-set mortar for veneer", "at 54 110",
            "table open 15 160,90,110", "| Property | Standard | Value", "| Conformity | ANSI A118 | A118.4 TE",
            "| Shear bond to veneer, 28 days | ASTM C482 | 210 psi"), "setting_bed.mortar"));
    }

    @Test
    void whatStandsBehindARemarkOfTheValueIsItsStandard() throws Exception {
        assertEquals("22 lbf/in by ASTM C794", said(reading("text 18b Silicone joint sealant", "at 54 110", "table open 15 140,190,90",
            "| Peel strength | 22 lb/in, mortar, no loss of bond | (ASTM C 794)", "| Tensile strength | 160 psi | (ASTM D 412)",
            "| Shore hardness | 24 | (ASTM C 661)"), "sealant.peel"));
    }

    @Test
    void aResultBesideWhatIsAskedForIsNoLimit() throws Exception {
        assertEquals("1-3/4 in", said(reading("text 18b Adhered manufactured stone veneer", "at 54 110", "table ruled 18 150,90,110,90",
            "| Test | Method | Requirement | Result", "| Thickness, greatest | caliper | ≤ 2-5/8 in. | 1-3/4 in.",
            "| Compressive strength | ASTM C1670 | ≥ 2100 psi | 2700 psi"), "veneer.thickness"));
    }

    @Test
    void aMinimumOfSomethingElseBehindARangeSaysNothingOfTheRange() throws Exception {
        assertEquals("5 to 40 °C", said(reading("text 18b Silicone joint sealant", "at 54 110", "table open 15 140,260",
            "| Substrate temperature | 5 °C to 40 °C (41 °F to 104 °F), min. 3 °C above dew point", "| Shore hardness | 24"),
            "sealant.placing"));
    }

    @Test
    void whatSentencesNeedAsAMinimumIsAskedAtLeast() throws Exception {
        assertEquals("at least 90%", said(reading("text 18b Thin-set mortar for veneer",
            "text 9 Back-butter each unit; 90 % coverage of the back is needed as a minimum."), "setting_bed.coverage"));
    }

    @Test
    void aTitleMayStateTheUnitOfAllItsTable() throws Exception {
        assertEquals("1.75 in of TS-1; 2.25 in of TS-2", said(reading("text 18b Lath screws for wood studs", "at 54 110",
            "text 9b Table 1 – Dimensions (inches)", "table open 15 90,90,110", "| Designation | Length | Head diameter",
            "| TS-1 | 1.75 | 0.438", "| TS-2 | 2.25 | 0.438"), "lath_fastener.length"));
    }

    @Test
    void belowDesignationsOfModelsTheFirstRowsMayTellWhatNobodyAsksFor() throws Exception {
        assertEquals("84% of KX 20; 91% of KX 90", said(reading("text 18b Water repellents for masonry", "at 54 110",
            "table open 15 200,110,110", "|  | KX 90 | KX 20", "| Active content | 90 % | 20 %", "| Density | 0.88 kg/L | 1.00 kg/L",
            "| Flash point | 40 °C | none", "| VOC | 310 g/L | 50 g/L", "| Reduction of water absorption | 91 % | 84 %"),
            "water_repellent.uptake"));
    }

    @Test
    void anAmountInBracketsSaysTheOneBeforeItOnceMore() throws Exception {
        assertEquals("at least 75 mm", said(reading("text 18b Building wrap, self-adhered membrane",
            "text 9 Start at the foot of the wall. Overlap each course at least 75 mm (3 in.) over the lower one."), "inner_ply.lap"));
    }
}

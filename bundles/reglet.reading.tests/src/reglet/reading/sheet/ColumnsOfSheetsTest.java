package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

/** Tables and titles that stand between, above and beside columns of text, on small drawn sheets. */
class ColumnsOfSheetsTest extends SmallSheets {
    @Test
    void unitsInALineBelowTheHeadingsOfATableAreTheirs() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Wood Screws for Metal Lath"));
        row(page, 120, "185 Part no.", "234 Length", "279 Shank dia.", "347 Drive", "394 Pcs. per");
        row(page, 132, "244 in.", "297 in.", "403 box");
        row(page, 146, "185 LF-125", "239 1-1/4", "291 0.120", "340 #2 square", "399 5,000");
        row(page, 159, "185 LF-200", "247 2", "291 0.136", "340 #2 square", "399 3,000");
        assertEquals("lath_fastener.diameter 0.120 in of LF-125; lath_fastener.diameter 0.136 in of LF-200; "
            + "lath_fastener.length 1-1/4 in of LF-125; lath_fastener.length 2 in of LF-200", read(page));
    }

    @Test
    void aRowOfOneValueForAllModelsIsARowOfTheTableAboveColumnsOfText() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Extruded polystyrene insulation board"));
        row(page, 110, "54 Property", "300 XP-10", "420 XP-15", "510 XP-20");
        row(page, 125, "54 Thickness, in.", "300 1", "420 1-1/2", "510 2");
        row(page, 140, "54 R-value", "300 5.0", "420 7.5", "510 10.0");
        row(page, 155, "54 Compressive strength, psi", "420 25");
        row(page, 170, "54 Flame spread index", "420 15");
        row(page, 185, "54 Smoke-developed index", "420 165");
        for (int i = 0; i < 12; i++) {
            row(page, 215 + 12 * i, "54 " + (i % 3 == 0 ? "Keep the boards under cover until" : "they are set behind the cladding and"));
            row(page, 217 + 12 * i, "392 " + (i % 3 == 0 ? "The boards are given as they" : "leave the works in bundles"));
        }
        assertEquals("insulation.compressive 25 psi; insulation.flame_spread 15; insulation.r_value 10.0 of XP-20; "
            + "insulation.r_value 5.0 of XP-10; insulation.r_value 7.5 of XP-15; insulation.smoke 165; insulation.thickness 1 in of XP-10; "
            + "insulation.thickness 1-1/2 in of XP-15; insulation.thickness 2 in of XP-20", read(page));
    }

    @Test
    void whatStandsInANarrowColumnBesideATableIsNoLabelOfItsRows() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Drainage mat"));
        String[] rows = {"Thickness, in.|0.25|0.40", "Roll width, in.|39|39", "Drainage efficiency|94 %|96 %", "Roll length, ft|100|61"};
        row(page, 110, "170 Property", "380 LF-6", "450 LF-10");
        for (int i = 0; i < rows.length; i++) {
            String[] cells = rows[i].split("\\|");
            row(page, 128 + 18 * i, "170 " + cells[0], "380 " + cells[1], "450 " + cells[2]);
        }
        String[] beside = {"3 depths", "one weave", "97 %", "of the water", "120 days", "open", "60 %", "recycled"};
        for (int i = 0; i < beside.length; i++) {
            row(page, 128 + 14 * i, "54 " + beside[i]);
        }
        for (int i = 0; i < 8; i++) {
            row(page, 260 + 13 * i, "170 Butt the rolls and let the fabric of each run over the next one.");
        }
        assertEquals("mat.drainage_efficiency 94% of LF-6; mat.drainage_efficiency 96% of LF-10; mat.thickness 0.25 in of LF-6; "
            + "mat.thickness 0.40 in of LF-10", read(page));
    }

    @Test
    void labelsWithoutAHeadingMayStandBehindTheirMethods() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Foundation Base Screed"));
        row(page, 110, "54 Standard", "350 WS-78", "450 WS-138");
        row(page, 128, "54 ASTM C1861", "160 Base metal thickness", "350 0.0207 in.", "450 0.0250 in.");
        row(page, 146, "54 -", "160 Nailing flange", "350 3-1/2 in.", "450 3-1/2 in.");
        row(page, 164, "54 -", "160 Ground", "350 7/8 in.", "450 1-3/8 in.");
        assertEquals("base_screed.ledge 1-3/8 in of WS-138; base_screed.ledge 7/8 in of WS-78; base_screed.leg 3-1/2 in of WS-138; "
            + "base_screed.leg 3-1/2 in of WS-78; base_screed.thickness 0.0207 in of WS-78; base_screed.thickness 0.0250 in of WS-138",
            read(page));
    }

    @Test
    void aTitleSaysInItsLastWordsWhatTheProductIs() throws Exception {
        assertEquals("setting_bed", reading("text 18b HoldFast 540", "at 54 90", "text 11 Polymer-Modified Veneer Setting Mortar",
            "at 54 120", "text 9 For setting manufactured stone, natural thin stone and thin brick.",
            "text 9 Exceeds ANSI A118.4 and A118.15.", "text 9 Shear bond, 28 days (ASTM C482): 305 psi",
            "text 9 Compressive, 28 days: 2650 psi",
            "text 9 Freeze-thaw, 300 cycles: no damage").component());
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/** How makers lay out tables, columns and notes, one habit at a time, on small drawn sheets. */
class TablesOfSheetsTest extends SmallSheets {
    /** The values with models and methods, without kinds. */
    private String read(String... lines) throws Exception {
        return reading(lines).values().stream().filter(found -> !found.value().property().endsWith(".kind")).map(found -> found.value()
            .property() + " " + found.value().value().text() + (found.model().isEmpty() ? "" : " of " + found.model()) + (found.value()
                .method().isEmpty() ? "" : " by " + found.value().method())).sorted().collect(Collectors.joining("; "));
    }

    @Test
    void aNoteBelowATableNamesTheStandardOfItsFigures() throws Exception {
        assertEquals("lath.weight 2.5 lb/yd² of QL-25 by ASTM C847; lath.weight 3.4 lb/yd² of QL-34 by ASTM C847", read(
            "text 18b Expanded metal lath", "at 54 110", "table ruled 18 100,150,150", "| Product code | Sheet size | Weight, lb/yd²",
            "| QL-25 | 27 x 96 in. | 2.5", "| QL-34 | 27 x 96 in. | 3.4", "at 54 190", "text 8 Weights are determined by ASTM C847."));
    }

    @Test
    void theOnlyColumnOfResultsMayBearTheProductsName() throws Exception {
        assertEquals("flexible_flashing.thickness 30 mil by ASTM D3652", read("text 18b Halden W30 butyl flashing tape", "at 54 110",
            "table ruled 18 140,100,80,80", "| Property | Method | Pass criterion | W30 result",
                "| Total thickness | ASTM D3652 | - | 30 mil",
            "| Tensile | ASTM D5034 | - | 48 lb/in"));
    }

    @Test
    void otherProductsOfTheMakerAreNotTheSheets() throws Exception {
        assertEquals("flexible_flashing.thickness 25 mil", read("text 18b Halden 25 butyl flashing tape", "at 54 110",
            "text 9 Thickness: 25 mil", "at 54 150", "text 9b Other Halden tapes", "table ruled 18 100,100,100",
            "| Product | Thickness | Adhesive", "| Halden 40 | 40 mil | butyl", "| Halden 12 | 12 mil | acrylic"));
    }

    @Test
    void aDesignationBrokenAtItsHyphenIsOneBesideCellsInTheMiddleOfItsLines() throws Exception {
        assertEquals("lath.paper yes of QL-34P; lath.self_furring yes of QL-34P; lath.weight 2.5 lb/yd² of QL-25; "
            + "lath.weight 3.4 lb/yd² of QL-34P", read("text 18b Expanded metal lath", "at 54 100", "text 9b Product code", "at 154 100",
                "text 9b Style", "at 354 100", "text 9b Weight, lb/yd²", "at 54 125", "text 9 QL-25", "at 154 125", "text 9 Plain",
                "at 354 125", "text 9 2.5", "at 54 144", "text 9 QL-", "at 154 144", "text 9 Self-furring, paper backed (Grade D,",
                "at 354 150", "text 9 3.4", "at 54 156", "text 9 34P", "at 154 156", "text 9 60 min.)"));
    }

    @Test
    void rowsOfATestASubstrateAndAResultAreRead() throws Exception {
        assertEquals("water_repellent.uptake 88% by ASTM C67", read("text 18b Silane water repellent", "at 54 110",
            "table ruled 18 220,100,100", "| Test | Substrate | Result",
                "| ASTM C67 24-h soak, reduction of absorption | clay brick | 88 %",
            "| ASTM G154, 2,000 h | brick | no loss"));
    }

    @Test
    void aSentenceGoesOnAtTheHeadOfTheNextColumn() throws Exception {
        List<String> lines = new ArrayList<>(List.of("text 18b Welded wire lath", "at 54 100"));
        List<String> left = List.of("The lath is made of steel wires that are welded", "where they cross, in a mill that is inspected,",
            "and rolled for shipment to the plasterer in bales", "of ten. It takes plaster of portland cement and thin",
            "units alike, and is cut with common snips or with", "a grinder at the job. All wire is zinc coated by hot",
            "dipping before welding. Its square openings measure");
        List<String> right = List.of("2 in. in both directions. Keep the rolls upright and",
            "dry, and do not lay them on bare soil as zinc that",
            "stays wet turns white. Carry the lath round corners", "for at least one stud space, and break it where the",
            "wall has a joint that moves with temperature or load", "so that the plaster on it can move there as well as",
            "the sheathing that the lath is fastened over does.");
        for (int i = 0; i < left.size(); i++) {
            lines.addAll(List.of("at 54 " + (100 + 12 * i), "text 9 " + left.get(i), "at 320 " + (100 + 12 * i), "text 9 " + right.get(i)));
        }
        assertEquals("lath.corrosion galvanized; lath.opening 2 in", read(lines.toArray(String[]::new)));
    }

    @Test
    void aNameThatGoesOnInALongerOneIsTheLongerOne() throws Exception {
        assertEquals("flexible_flashing", reading("text 18b HALDEN TW", "at 54 80", "text 9 Rubberized asphalt flashing membrane",
            "at 54 110",
            "text 9 Thickness: 40 mil", "text 9 Permeance: 0.05 perms").component());
    }

    @Test
    void whatWasSeenBesideAnAmountIsNoPartOfIt() throws Exception {
        assertEquals("sealant.peel 26 lbf/in by ASTM C794", read("text 18b Polyurethane sealant", "at 54 110",
            "table ruled 18 180,100,160", "| Property | Method | Value", "| Adhesion in peel | ASTM C794 | 26 pli, no adhesion loss",
            "| Tack free | ASTM C679 | 5 h").replaceAll("sealant\\.base [^;]*; ", ""));
    }

    @Test
    void aBracketThatGoesOnInTheNextLineIsOfTheSameLabel() throws Exception {
        assertEquals("inner_ply.air_leakage 0.001 cfm/ft² by ASTM E2178; inner_ply.permeance 14 perm by ASTM E96 Procedure B", read(
            "text 18b Fluid-applied water-resistive barrier", "at 54 110", "text 9b PHYSICAL PROPERTIES",
            "at 54 130", "text 9 Water vapor permeance (ASTM E96, Method", "at 54 141", "text 9 B)", "at 300 130", "text 9 14 perms",
            "at 54 160", "text 9 Air permeance (ASTM E2178)", "at 300 160", "text 9 0.001 cfm/ft²"));
    }

    @Test
    void aTitleMayNameTheMethodOfTheColumnThatItNames() throws Exception {
        assertEquals("insulation.material extruded polystyrene; insulation.r_value 10.0 of LB-20 by ASTM C518; "
            + "insulation.r_value 5.0 of LB-10 by ASTM C518; insulation.thickness 1 in of LB-10; insulation.thickness 2 in of LB-20",
            read("text 18b Extruded polystyrene insulation", "at 54 110", "text 9b Sizes and R-values (mean temperature 75 F, ASTM C518)",
                "at 54 125", "table open 15 90,90,90", "| Item | Thickness | R-value", "| LB-10 | 1 in. | 5.0",
                "| LB-20 | 2 in. | 10.0"));
    }

    @Test
    void thermalResistanceMayStandInBothSystemsOfUnits() throws Exception {
        assertEquals("insulation.material mineral wool; insulation.r_value 6.3 of WB-60 by ASTM C518; "
            + "insulation.r_value 8.4 of WB-80 by ASTM C518; insulation.thickness 1.5 in of WB-60 by ASTM C303; "
            + "insulation.thickness 2 in of WB-80 by ASTM C303",
            read("text 18b Stone wool insulation board", "at 54 110", "table open 15 220,100,90,90",
                "| Physical property | Method | WB-60 | WB-80", "| Thickness, in. (mm) | ASTM C303 | 1.5 (38) | 2 (51)",
                "| Thermal resistance, h·ft²·F/Btu (RSI) | ASTM C518 | 6.3 (1.11) | 8.4 (1.48)"));
    }
}

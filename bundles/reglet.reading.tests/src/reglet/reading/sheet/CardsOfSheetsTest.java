package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** Cards, captions and columns of text beside tables, as modern sheets have them, on small drawn sheets. */
class CardsOfSheetsTest extends SmallSheets {
    @Test
    void cardsWithTheSameLabelsBelowEachOtherAreModels() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Mounting blocks"));
        row(page, 120, "72 Block Light", "238 Block Solid", "404 Block Old");
        row(page, 140, "72 Block material", "238 Block material", "404 Block material");
        row(page, 153, "72 cellular PVC", "238 fiber cement", "404 cast stone");
        row(page, 173, "72 Joint around the block, min.", "238 Joint around the block, min.", "404 Joint around the block, min.");
        row(page, 186, "72 3/8 in.", "238 1/2 in.", "404 7/16 in.");
        SheetReading reading = reading(page.toArray(String[]::new));
        assertEquals("penetration_seal", reading.component());
        assertEquals("at least 1/2 in of Block Solid; at least 3/8 in of Block Light; "
            + "at least 7/16 in of Block Old", said(reading, "penetration_seal.width"));
        assertEquals("cast stone of Block Old; cellular PVC of Block Light; fibre cement of Block Solid", said(reading,
            "penetration_seal.block"));
    }

    @Test
    void captionsBelowFiguresInLargeLettersHeadNoTable() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Scratch coat mortar"));
        String[] figures = {"70 12 mm", "170 +5 °C", "285 48 h", "370 72 h"};
        for (String figure : figures) {
            String[] parts = figure.split(" ", 2);
            page.add("at " + parts[0] + " 130");
            page.add("text 16 " + parts[1]);
        }
        row(page, 150, "70 coat thickness", "170 lowest air temperature", "285 moist cure", "370 wait before setting units");
        row(page, 180, "54 Property", "240 Standard", "430 Required", "497 Result");
        row(page, 196, "54 Compressive strength, 28 d", "240 ASTM C109", "430 ≥ 12.4 MPa", "497 15.8 MPa");
        assertEquals("scratch_coat.cure 48 h; scratch_coat.placing_low +5 °C; scratch_coat.thickness 12 mm; scratch_coat.wait 72 h",
            readingOf("scratch_coat", page.toArray(String[]::new)).values().stream().filter(found -> found.value().property().matches(
                ".*\\.(cure|placing_low|thickness|wait)")).map(found -> found.value().property() + " " + found.value().value().text())
                .sorted().collect(Collectors.joining("; ")));
    }

    @Test
    void textInAColumnAtTheRightOfATableIsNotInItsRows() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Plywood wall sheathing", "at 54 100",
            "text 9 Plywood for walls that carry stone, stucco or siding, made in three boards of one footprint, 48 by 96 in. each."));
        row(page, 130, "54 Property", "160 Method", "230 Ply 12", "300 Ply 15", "400 Hanging the boards");
        row(page, 146, "54 Kind of board", "230 plywood", "300 plywood");
        row(page, 162, "54 Thickness", "160 PS 1", "230 12 mm", "300 15 mm");
        row(page, 178, "54 Bond class", "160 PS 1", "230 Exposure 1", "300 Exterior");
        row(page, 194, "54 Fire-retardant treatment", "230 no", "300 yes");
        row(page, 210, "54 Weight", "230 6.1 kg/m²", "300 7.6 kg/m²");
        String[] beside = {"Leave the boards a gap at all edges", "and nail them along the edges and in",
            "the field with heads set flush, and",
            "let blocks stand behind free edges.", "Cover them soon, and let boards that", "stood in water dry before the lath."};
        for (int i = 0; i < beside.length; i++) {
            row(page, 141 + 13 * i, "400 " + beside[i]);
        }
        SheetReading reading = reading(page.toArray(String[]::new));
        assertEquals("12 mm of Ply 12 by PS 1; 15 mm of Ply 15 by PS 1", said(reading, "sheathing.thickness"));
        assertEquals("Exposure 1 of Ply 12 by PS 1; Exterior of Ply 15 by PS 1", said(reading, "sheathing.exposure"));
        assertEquals("no of Ply 12; yes of Ply 15", said(reading, "sheathing.treated"));
    }

    @Test
    void severalTestsInOneCellAreReadTogether() throws Exception {
        assertEquals("sounding of units, pull-off of units of Program B; water spray, sealant adhesion, pull-off of units of Program A",
            said(reading("text 18b Mock-up program", "at 54 110", "table ruled 19 110,230,180", "| Item | Program A | Program B",
                "| Kind of mock-up | Freestanding | In place", "| Layers left in sight | Yes | No",
                "| Tests | Water spray, sealant adhesion and pull-off of units | Sounding of units, pull-off of units"), "mockup.tests"));
    }

    @Test
    void modelsMayHaveAColumnForEachSystemOfUnits() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Head flashing"));
        row(page, 110, "70 Dimension", "270 in.", "300 DF-26 Galvanized", "415 mm", "440 in.", "465 DF-32 Painted", "560 mm");
        row(page, 130, "62 Thickness", "270 0.022", "415 0.56", "440 0.032", "560 0.81");
        row(page, 148, "62 Upturned leg behind barrier", "270 4", "415 102", "440 5", "560 127");
        row(page, 166, "62 Hemmed drip", "270 1/2", "415 13", "440 5/8", "560 16");
        SheetReading reading = readingOf("metal_flashing", page.toArray(String[]::new));
        assertEquals("0.022 in of DF-26 Galvanized; 0.032 in of DF-32 Painted", said(reading, "metal_flashing.thickness"));
        assertEquals("4 in of DF-26 Galvanized; 5 in of DF-32 Painted", said(reading, "metal_flashing.upleg"));
    }

    @Test
    void aCertificateSaysWhatTheProductIsBesideThatWord() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Certificate of Conformity"));
        row(page, 110, "54 Holder", "250 Forge Yard Wire, Tansy Heath");
        row(page, 124, "54 Product", "250 Corner lath for plaster and adhered stone");
        row(page, 138, "54 Standard", "250 ASTM C 1861");
        row(page, 152, "54 Valid until", "250 2027-06-11");
        row(page, 190, "54 Item", "150 Material", "350 Length");
        row(page, 206, "54 LC-30", "150 galvanized steel, G60", "350 96 in.");
        row(page, 222, "54 LC-30S", "150 stainless steel, type 304", "350 96 in.");
        SheetReading reading = reading(page.toArray(String[]::new));
        assertEquals("lath_accessories", reading.component());
        assertEquals("galvanized steel of LC-30 by ASTM C1861; stainless steel of LC-30S by ASTM C1861", said(reading, "lath_accessories.material"));
    }

    @Test
    void aStandardThatOnlySomeModelsAreMadeToShowsNone() throws Exception {
        SheetReading reading = readingOf("lath_accessories", "text 18b Corner lath", "at 54 110", "table ruled 19 150,130,130",
            "| Property | R 1 | R P", "| Material | galvanized steel | PVC", "| Wing, mm | 65 | 60", "at 54 230",
            "text 9 The metal models comply with ASTM C1861, model R P with ASTM D1784.");
        assertEquals(List.of("", ""), reading.values().stream().filter(found -> found.value().property().equals(
            "lath_accessories.material")).map(found -> found.value().method()).toList());
    }
}

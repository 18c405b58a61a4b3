package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;

/** What stands beside a value and says more than a name, or less. */
class LabelsOfSheetsTest extends SmallSheets {
    private static List<Found> of(SheetReading reading, String property) {
        return reading.values().stream().filter(found -> found.value().property().equals(property)).toList();
    }

    private static String told(SheetReading reading, String property) {
        return of(reading, property).stream().map(one -> (one.model().isEmpty() ? "" : one.model() + ": ") + one.value().compare()
            .map(sense -> sense.text() + " ").orElse("") + one.value().value().text()).collect(Collectors.joining("; "));
    }

    /** A sheet that says one thing of a property's component. */
    private SheetReading row(String property, String title, String label, String value) throws Exception {
        return readingOf(property.substring(0, property.indexOf('.')), "text 18b " + title, "at 54 110", "table ruled 18 220,160",
            "| Property | Result", "| " + label + " | " + value, "| Made in | two plants");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Building paper | Lap, each strip over the last | 2 in. min. | inner_ply.lap | at least 2 in",
        "Veneer mortar | Bed thickness after beating in | 3/8 in. | setting_bed.thickness | 3/8 in",
        "Veneer mortar | Coverage of back, wet places | 95 % | setting_bed.coverage | 95%",
        "Butyl flashing | Lap on itself and on metal | 4 in. | flexible_flashing.lap | 4 in"})
    void aNameWithFurtherWordsBehindItIsReadAndIsNotSure(String title, String label, String value, String property, String expected)
            throws Exception {
        SheetReading reading = row(property, title, label, value);
        assertEquals(expected, told(reading, property));
        assertTrue(of(reading, property).get(0).confidence() < 0.9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Building paper | Lap, per roll | 2 in. | inner_ply.lap",
        "Drainage mat | Thickness of pallet | 6 in. | mat.thickness",
        "Insulation board | R-value per inch | 4.2 | insulation.r_value",
        "Butyl flashing | Compatible with tar | No | flexible_flashing.compatible"})
    void furtherWordsThatAreOfAnotherThingMakeItAnotherThing(String title, String label, String value, String property) throws Exception {
        assertEquals("", told(row(property, title, label, value), property));
    }

    @Test
    void aShortWordThatOnlyALabelCanBeIsReadBesideItsValueAlone() throws Exception {
        assertEquals("1-1/4 in", told(row("base_screed.ledge", "Weep screed", "Depth", "1-1/4 in."), "base_screed.ledge"));
        assertEquals("", told(reading("text 18b Weep screed", "text 9 The depth is checked at 1-1/4 in. from each end of a bundle."),
            "base_screed.ledge"));
    }

    @Test
    void aStandardAboveTheFirstRowOfATableOfModelsHidesNoModels() throws Exception {
        SheetReading reading = reading("text 18b Drainage mat", "at 54 110", "table open 18 200,100,100", "| | Hollin 20 | Hollin 30",
            "| ASTM E2925 | | ", "| Nominal thickness, in. | 0.25 | 0.40", "| Compressive resistance, psf | 310 | 245");
        assertEquals("Hollin 20: 0.25 in; Hollin 30: 0.40 in", told(reading, "mat.thickness"));
        assertEquals("ASTM E2925", of(reading, "mat.compressive").get(0).value().method());
    }

    @Test
    void aListSetWiderThanTheTableOfModelsAboveItIsOfAllOfThem() throws Exception {
        SheetReading reading = reading("text 18b Extruded polystyrene insulation", "at 120 110", "table open 16 130,60,60",
            "| | XB-10 | XB-15", "| Thickness, in. | 1 | 1-1/2", "| R-value | 5 | 7.5", "at 54 190", "table open 16 420,80",
            "| Compressive strength (ASTM D1621), min. | 25 psi", "| Flame spread index (ASTM E84) | 10");
        assertEquals("at least 25 psi", told(reading, "insulation.compressive"));
        assertEquals("10", told(reading, "insulation.flame_spread"));
    }

    @Test
    void theNumberOfACertificateMayStandAloneAndItsEndBesideItsBeginning() throws Exception {
        SheetReading reading = reading("text 16b Certificate of Evaluation", "text 10 No. WQ-4417", "text 10 Alkali-resistant glass fiber"
            + " lath", "at 54 160", "table open 18 160,300", "| Codes | International Building Code, 2018 and 2021 editions",
            "| Issued / in force until | May 2, 2024 / April 30, 2027");
        assertEquals("WQ-4417", told(reading, "lath.report_number"));
        assertEquals("2018, 2021", told(reading, "lath.report_editions"));
        assertEquals("2027-04-30", told(reading, "lath.report_until"));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.SheetReading;
import reglet.reading.words.Reading;
import reglet.reading.words.Vocabulary;

/** How makers write amounts, words and answers, whatever they are of. The ways of writing are common practice, from memory. */
class AnswersOfSheetsTest extends SmallSheets {
    private static String read(String path, String written) throws Exception {
        Pack pack = SheetFixtures.pack();
        Component component = pack.components().stream().filter(one -> path.startsWith(one.id() + ".")).findFirst().orElseThrow();
        return new Reading(new Vocabulary(pack), component).read(pack.property(path).orElseThrow(), written, "").map(read -> read.compare()
            .map(sense -> sense.text() + " ").orElse("") + read.value().text()).orElse("");
    }

    private static String told(SheetReading reading, String property) {
        return reading.values().stream().filter(found -> found.value().property().equals(property)).map(one -> (one.model().isEmpty() ? ""
            : one.model() + ": ") + one.value().value().text()).collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sealant.placing | between 40 and 110°F | 40 to 110 °F",
        "sealant.placing | 40° to 110°F | 40 to 110 °F",
        "sealant.placing | not below 40 °F nor above 110 °F | 40 to 110 °F",
        "sealant.placing | 40 degrees to 110 degrees F | 40 to 110 °F",
        "lath.lap | a minimum of 1 in. | at least 1 in",
        "lath.lap | never less than 1 in. | at least 1 in",
        "lath.lap | 1 in. [25 mm] min | at least 1 in",
        "lath.lap | Min: 1 in. | at least 1 in",
        "lath_fastener.spacing | every 6 in. max. | at most 6 in",
        "lath_fastener.spacing | @ 6 in. o.c. | 6 in",
        "lath_fastener.spacing | 6 in. c/c | 6 in",
        "mat.thickness | ca. 3/8 in. | 3/8 in",
        "mat.thickness | 3/8 in. ± 1/32 in. (9.5 mm ± 0.8 mm) | 3/8 in",
        "mat.thickness | 3/8 in. overall | 3/8 in",
        "setting_bed.thickness | 3/8 in. through 1/2 in. | 3/8 to 1/2 in",
        "setting_bed.thickness | min 3/8 in., max 1/2 in. | 3/8 to 1/2 in",
        "inner_ply.exposure | 180 calendar days | 180 d",
        "veneer.strength | 2100 psi minimum avg. | at least 2100 psi"})
    void anAmountIsReadHoweverItsLimitsAreWorded(String property, String written, String expected) throws Exception {
        assertEquals(expected, read(property, written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "flexible_flashing.primer | without primer | no",
        "flexible_flashing.primer | Not necessary | no",
        "base_screed.weeps | unperforated | no",
        "casing_bead.head_weeps | with weeps | yes",
        "lath.paper | not backed | no",
        "mat.fabric | filter fabric | yes",
        "backer_rod.type | C (closed cell) | C",
        "sealant.class | +50/-50 % | 50",
        "sealant.use | NT-M-G-A-O | NT, M, G, A, O",
        "metal_flashing.coating | G-90 | G90"})
    void anAnswerIsReadHoweverItIsSaid(String property, String written, String expected) throws Exception {
        assertEquals(expected, read(property, written));
    }

    @Test
    void whatIsUsuallyNotAskedForIsNotAlwaysAskedFor() throws Exception {
        assertEquals("none", read("sealant.primer", "Not usually required"));
    }

    @Test
    void whereBoxesAreTickedTheOthersAreNotTheProduct() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Drip flashing", "at 54 110", "text 9b Metal (this submittal)",
            "text 9 [_] Copper, 16 oz", "text 9 [x] Stainless steel, Type 304", "text 9 [_] Galvanized steel, G90");
        assertEquals("", told(reading, "metal_flashing.coating"));
        assertEquals("stainless steel", told(reading, "metal_flashing.metal"));
    }

    @Test
    void aCellThatStandsAloneAtTheFirstOfSeveralModelsIsOfAllOfThem() throws Exception {
        SheetReading reading = readingOf("movement_joint", "text 18b Slip joint", "at 54 110", "table open 18 160,160,120",
            "| Item | 40-50 | 40-75", "| Width of joint | 1/2 in. | 3/4 in.", "| Max. joint spacing | 18 ft |", "| Length | 10 ft | 10 ft");
        assertEquals("18 ft", told(reading, "movement_joint.spacing"));
    }

    @Test
    void severalNamesBesideAsManyValuesAreEachOfTheirOwn() throws Exception {
        SheetReading reading = readingOf("lath_fastener", "text 18b Lath screws", "at 54 110",
            "leaders 400 Nominal size / shank dia. = No. 8 / 0.164 in.", "leaders 400 Head dia. = 0.437 in.");
        assertEquals("0.164 in", told(reading, "lath_fastener.diameter"));
    }

    @Test
    void theLettersOfADrawingStandBeforeTheLabels() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Head flashing", "at 54 110", "table ruled 18 60,200,100",
            "| Mark | Description | As furnished", "| t | Thickness | 0.0187 in.", "| E | Hemmed drip edge | 1/2 in.");
        assertEquals("0.0187 in", told(reading, "metal_flashing.thickness"));
        assertEquals("1/2 in", told(reading, "metal_flashing.hem"));
    }

    @Test
    void wordsForResultsHeadNoModel() throws Exception {
        SheetReading reading = readingOf("inner_ply", "text 18b Wall membrane", "at 54 110", "table ruled 18 240,160",
            "| Characteristic (method) | Value reported", "| Thickness (ASTM D1777) | 24 mils",
            "| Permeance (ASTM E96, Procedure A) | 31 perms");
        assertEquals("24 mil", told(reading, "inner_ply.thickness"));
        assertTrue(told(reading, "inner_ply.permeance").startsWith("31"));
    }
}

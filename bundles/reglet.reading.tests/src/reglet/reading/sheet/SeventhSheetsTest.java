package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Compare;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.reading.sheet.SheetFixtures.Fixture;

/**
 * Sheets of invented products by a seventh hand, laid out after the habits of makers' sheets without the reader at hand. Read blind before
 * tuning, 71 % of the values of the first 16 were found (109 of 153), 105 of 115 shown were right, 3 were sure and wrong; of the other 8 as
 * well 71 % (66 of 93), 60 of 66 right, 4 sure and wrong. They are tuned on since, so that they are no estimate.
 */
class SeventhSheetsTest {
    private SheetReading read(String sheet) throws Exception {
        return SheetFixtures.read(SheetFixtures.set("seventh").stream().filter(one -> one.name().startsWith(sheet))
            .findFirst().orElseThrow());
    }

    private Found shown(String sheet, String property, String model) throws Exception {
        return read(sheet).values().stream().filter(one -> one.value().property().equals(property) && one.model().equals(model)).findFirst()
            .orElseThrow();
    }

    @Test
    void whatADataSheetTellsOfItsReportIsReadThoughItStandsBelowTheLimitations() throws Exception {
        assertEquals("KT-3608", shown("q11", "lath.report_number", "").value().value().text());
        assertEquals(Optional.of(Compare.AT_MOST), shown("q11", "lath.report_weight", "").value().compare());
        assertEquals("2027-10-01", shown("q11", "lath.report_until", "").value().value().text());
    }

    @Test
    void wordsRightBehindAnAmountSayItsSense() throws Exception {
        assertEquals(Optional.of(Compare.AT_MOST), shown("q12", "lath_fastener.spacing", "").value().compare());
        assertEquals(Optional.of(Compare.AT_LEAST), shown("q23", "top_vent.spacer", "").value().compare());
    }

    @Test
    void aTestThatWasNotRunCountsMoreThanWhatTheMakerPraises() throws Exception {
        Found stain = shown("q17", "sealant.stain_tested", "");
        assertEquals("no", stain.value().value().text());
        assertTrue(stain.confidence() < 0.9);
    }

    @Test
    void whatIsOfferedBesideTheProductIsNoFlagOfIt() throws Exception {
        Fixture bead = SheetFixtures.set("seventh").stream().filter(one -> one.asked().equals("casing_bead")).findFirst().orElseThrow();
        assertFalse(SheetFixtures.read(bead).values().stream().anyMatch(one -> one.value().property().equals("casing_bead.head_weeps")));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.reading.sheet.SheetFixtures.Score;

/**
 * Sheets of invented products that the reader was not made for: how it reads what it hasn't seen. Eight simple ones by four programs,
 * ten as full and as various as makers' are, and 24 ordinary ones by two hands. Don't tune on them as long as no newer set stands.
 */
class UnopenedSheetsTest {
    @Test
    void mostOfWhatIsShownOfSimpleSheetsThatTheReaderWasNotMadeForIsRight() throws Exception {
        Score total = SheetFixtures.score("unopened sheets, simple", SheetFixtures.set("fifth"));
        assertTrue(total.share() >= 0.9, total.found() + " of " + total.truths());
        assertTrue(total.correctness() >= 0.9, total.right() + " of " + total.shown());
    }

    @Test
    void threeQuartersOfWhatFullSheetsSayIsFoundThoughTheReaderWasNotMadeForThem() throws Exception {
        Score total = SheetFixtures.score("unopened sheets, full", SheetFixtures.set("twelfth"));
        assertTrue(total.share() >= 0.75, total.found() + " of " + total.truths());
        assertTrue(total.correctness() >= 0.72, total.right() + " of " + total.shown());
    }

    @Test
    void threeQuartersOfWhatOrdinarySheetsSayIsFoundThoughTheReaderWasNotMadeForThem() throws Exception {
        Score total = SheetFixtures.score("unopened sheets, ordinary", SheetFixtures.set("seventeenth"));
        assertTrue(total.share() >= 0.77, total.found() + " of " + total.truths());
        assertTrue(total.correctness() >= 0.89, total.right() + " of " + total.shown());
    }
}

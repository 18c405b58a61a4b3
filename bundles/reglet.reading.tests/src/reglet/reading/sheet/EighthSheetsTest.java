package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.reading.sheet.SheetFixtures.Score;

/**
 * Sheets of invented products, drawn by lot from 36 that are written as manufacturers write theirs; the other 24 are the sixth set. Read
 * blind, 100 of their 118 values were found, and 87 of 103 shown were right, 6 wrong ones shown as sure; 94 of 103 and 2 sure once truths
 * were mended that say less than their sheet. They are tuned on since, so that they are no estimate.
 */
class EighthSheetsTest {
    @Test
    void mostValuesAreFoundAndRight() throws Exception {
        Score total = SheetFixtures.score("eighth sheets tuned on", SheetFixtures.set("eighth"));
        assertTrue(total.share() >= 0.98, total.found() + " of " + total.truths() + String.join("\n", total.faults()));
        assertTrue(total.correctness() >= 0.98, total.right() + " of " + total.shown() + String.join("\n", total.faults()));
        assertTrue(total.sure() == 0, String.join("\n", total.faults()));
    }
}

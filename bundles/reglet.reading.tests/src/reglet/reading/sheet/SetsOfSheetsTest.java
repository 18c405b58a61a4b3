package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import reglet.reading.sheet.SheetFixtures.SetOfSheets;
import reglet.reading.sheet.SheetJudge.Score;

/**
 * No set of invented sheets is read worse than it has been. What each set is, what was read of it before anybody tuned on it, and what is
 * read of it now stands in {@code sets.txt}; only the unopened ones are an estimate.
 */
class SetsOfSheetsTest {
    static Stream<SetOfSheets> sets() throws IOException {
        return SheetFixtures.sets().stream();
    }

    @ParameterizedTest
    @MethodSource("sets")
    void asManyValuesAreFoundAndNoMoreAreWrongThanBefore(SetOfSheets set) throws Exception {
        Score now = SheetJudge.score(set.name() + " sheets", SheetFixtures.set(set.name()));
        // what is wrong in a sheet that nobody tunes on is not told, so that nobody does
        String faults = set.unopened() ? "" : String.join("\n", now.faults());
        assertTrue(now.found() >= set.found(), now.found() + " found, " + set.found() + " expected\n" + faults);
        assertTrue(now.shown() - now.right() <= set.wrong(), now.shown() - now.right() + " wrong, " + set.wrong() + " at most expected\n"
            + faults);
        assertTrue(now.sure() <= set.sure(), now.sure() + " wrong and sure, " + set.sure() + " at most expected\n" + faults);
    }

    @Test
    void everySetIsListed() throws IOException {
        assertEquals(SheetFixtures.folders(), SheetFixtures.sets().stream().map(SetOfSheets::name).sorted().toList());
    }
}

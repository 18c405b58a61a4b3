package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading.Found;
import reglet.reading.sheet.SheetFixtures.Fixture;

/**
 * Sheets of invented products by a sixth hand, laid out after the habits of makers' sheets without the reader at hand. Only the first 8
 * of them were quite untouched when they were first read: 40 of 73 values found (55 %), 33 of 61 shown right (54 %). They are tuned on
 * since, so that they are no estimate.
 */
class SixthSheetsTest {
    private Found shown(String sheet, String property, String model) throws Exception {
        Fixture fixture = SheetFixtures.set("sixth").stream().filter(one -> one.name().startsWith(sheet)).findFirst().orElseThrow();
        return SheetFixtures.read(fixture).values().stream().filter(one -> one.value().property().equals(property)
            && one.model().equals(model)).findFirst()
            .orElseThrow();
    }

    @Test
    void aResultByTheMethodAskedForIsShownAndTheOneByAnotherMethodStandsBesideIt() throws Exception {
        Found permeance = shown("p04", "inner_ply.permeance", "");
        assertEquals("11 perm, ASTM E96 Procedure A", permeance.value().value().text() + ", " + permeance.value().method());
        assertEquals("16 perm, ASTM E96 Procedure B", permeance.also().get(0).value().value().text() + ", " + permeance.also().get(0)
            .value().method());
        assertTrue(permeance.doubt().contains("16 perms by ASTM E96 Procedure B"), permeance.doubt());
        assertTrue(permeance.confidence() < 0.9);
        assertTrue(!permeance.value().box().equals(permeance.also().get(0).value().box()));
    }

    @Test
    void ofSeveralResultsThatNothingTellsApartNoneIsShownAsSure() throws Exception {
        List<Found> several = new ArrayList<>();
        for (Fixture fixture : SheetFixtures.set("sixth")) {
            SheetFixtures.read(fixture).values().stream().filter(one -> one.also().stream()
                .anyMatch(other -> other.value().method().equals(one.value()
                .method()) && !other.value().value().equals(one.value().value()))).forEach(several::add);
        }
        assertTrue(several.stream().allMatch(one -> one.confidence() <= 0.6 && !one.doubt().isEmpty()), several.toString());
        assertTrue(several.stream().anyMatch(one -> one.value().property().equals("sealant.peel")), several.toString());
    }

    @Test
    void titlesOfTablesTellWhatTheModelsBelowThemAre() throws Exception {
        assertEquals("staple", shown("p18", "lath_fastener.kind", "GS-114").value().value().text());
        assertEquals("nail", shown("p18", "lath_fastener.kind", "GN-200").value().value().text());
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Compare;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;

/**
 * Sheets of invented products by a hand that never saw the reader, with the habits of makers' sheets that it had looked up. Read blind
 * before tuning, 70 % of the values were found (133 of 190), 112 of 151 shown were right, 14 were sure and wrong;
 * of ten more that were opened later 69 % (60 of 87), 54 of 68 right, 6 sure and wrong. They are tuned on since,
 * so that they are no estimate.
 */
class NinthSheetsTest {
    private SheetReading read(String sheet) throws Exception {
        return SheetFixtures.read(SheetFixtures.set("ninth").stream().filter(one -> one.name().startsWith(sheet))
            .findFirst().orElseThrow());
    }

    private Found shown(String sheet, String property, String model) throws Exception {
        return read(sheet).values().stream().filter(one -> one.value().property().equals(property) && one.model().equals(model)).findFirst()
            .orElseThrow();
    }

    @Test
    void aTableAsWideAsTwoColumnsOfTextIsReadAcrossThem() throws Exception {
        Found permeance = shown("r01", "inner_ply.permeance", "");
        assertEquals("14.2 perm", permeance.value().value().text());
        assertEquals("ASTM E96 Procedure A", permeance.value().method());
    }

    @Test
    void ofAFamilyOfProductsTheSheetsOwnOneIsRead() throws Exception {
        assertEquals("20 mil", shown("r19", "flexible_flashing.thickness", "").value().value().text());
        assertTrue(read("r19").values().stream().allMatch(one -> one.model().isEmpty()));
    }

    @Test
    void aLimitToAllUnitsStandsBesideWhatEachIs() throws Exception {
        Found all = shown("r26", "veneer.weight", "");
        assertEquals("15 psf", all.value().value().text());
        assertEquals(Optional.of(Compare.AT_MOST), all.value().compare());
        assertEquals("11 psf", shown("r26", "veneer.weight", "Ledge").value().value().text());
    }
}

package reglet.workbench.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

import reglet.model.Quantity;
import reglet.model.ShownUnits;

class UnitsTest {

    private static String text(String setting, String written) {
        return Units.of(setting).text(Quantity.parse(written).orElseThrow());
    }

    @Test
    void valuesStandAsWrittenUnlessOtherUnitsAreWanted() {
        assertEquals("26 ft", text("job", "26 ft"));
        assertEquals("26 ft (7.92 m)", text("both", "26 ft"));
        assertEquals("7.92 m", text("metric", "26 ft"));
        assertEquals("26 ft", text("inch-pound", "26 ft"));
        assertEquals("8 m", text("metric", "8 m"));
        assertEquals("26.2 ft", text("inch-pound", "8 m"));
    }

    @Test
    void everyWordOfTheSettingsMeansSomethingElse() {
        assertEquals(Settings.UNITS_WORDS.length, Arrays.stream(Settings.UNITS_WORDS).map(word -> Units.of(word[1])).distinct().count());
        assertEquals(ShownUnits.AS_WRITTEN, Units.of("spoilt"));
        assertNotEquals(ShownUnits.AS_WRITTEN, Units.of("both"));
    }
}

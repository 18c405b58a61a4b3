package reglet.workbench.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.UnitSystem;
import reglet.model.Word;

class UnitsTest {
    private static final Optional<UnitSystem> METRIC = Optional.of(UnitSystem.SI);
    private static final Optional<UnitSystem> INCHES = Optional.of(UnitSystem.INCH_POUND);

    private static Quantity of(String text) {
        return Quantity.parse(text).orElseThrow();
    }

    @Test
    void valuesStandAsWrittenUnlessOtherUnitsAreWanted() {
        assertEquals("26 ft", Units.text(of("26 ft"), Optional.empty()));
        assertEquals("26 ft", Units.text(of("26 ft"), INCHES));
        // 26 × 0.3048 m, exactly, by the definition of the foot
        assertEquals(of("26 ft").as(reglet.model.Unit.M).text(), Units.text(of("26 ft"), METRIC));
        assertEquals("7.92 m", Units.text(of("26 ft"), METRIC));
        assertEquals("moist", Units.text(new Word("moist"), METRIC));
        assertEquals("48 h", Units.text(of("48 h"), METRIC));
    }

    @Test
    void theUnitWrittenStaysInParentheses() {
        assertEquals("7.92 m (26 ft)", Units.both(of("26 ft"), METRIC));
        assertEquals("26 ft (7.92 m)", Units.both(of("26 ft"), INCHES));
        assertEquals("26 ft (7.92 m)", Units.both(of("26 ft"), Optional.empty()));
        assertEquals("48 h", Units.both(of("48 h"), METRIC));
    }

    @Test
    void bothEndsOfARangeTurn() {
        Range range = new Range(of("40 degF"), of("90 degF"));
        assertEquals(new Range(of("40 degF").as(reglet.model.Unit.DEG_C), of("90 degF").as(reglet.model.Unit.DEG_C)).text(),
            Units.text(range, METRIC));
    }
}

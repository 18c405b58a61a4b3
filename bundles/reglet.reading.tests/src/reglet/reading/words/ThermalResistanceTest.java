package reglet.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A thermal resistance in either system of units; 1 m²·K/W is 5.678 h·ft²·°F/Btu (SI 10, from memory). */
class ThermalResistanceTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"RSI | 0.88 | 5.0", "Thermal resistance (m²·K/W) | 0.88 | 5.0", "Resistance, m2K/W | 1,76 | 10.0",
        "Thermal resistance | 0.88 m²·K/W | 5.0", "Thermal resistance | RSI 0.88 (R-5) | 5", "R-value | R-5.0 (RSI 0.88) | 5.0",
        "R-value (RSI) | 5.0 (0.88) | 5.0", "RSI (R-value) | 0.88 (5.0) | 5.0", "R-value | 5.0 h·ft²·°F/Btu (0.88 m²·K/W) | 5.0",
        "R-value | 0.88 m²·K/W (5.0 °F·ft²·h/Btu) | 5.0", "R-value, ft²·h·°F/Btu | 7.5 | 7.5"})
    void isToldInTheUnitOfThePack(String label, String written, String told) {
        assertEquals(told, ThermalResistance.figure(written, ThermalResistance.unit(label)));
    }

    @Test
    void ofAnInchConvertsAsTheHandbooksSay() {
        // SI 10, from memory: 1 m²·K/W = 5.678 263 h·ft²·°F/Btu
        assertEquals("5.7", ThermalResistance.figure("1.00", "m²·K/W"));
        assertEquals("56.8", ThermalResistance.figure("10.0", "m²·K/W"));
    }
}

package reglet.details;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import reglet.model.UnitSystem;

class LengthsTest {
    @Test
    void sumsPrintToTheNearestSixteenthOfAnInchOrMillimetre() {
        assertEquals("4-1/16 in", Lengths.text(103, UnitSystem.INCH_POUND));
        assertEquals("3/8 in", Lengths.text(9.525, UnitSystem.INCH_POUND));
        assertEquals("2 in", Lengths.text(50.8, UnitSystem.INCH_POUND));
        assertEquals("103 mm", Lengths.text(103.2, UnitSystem.SI));
    }
}

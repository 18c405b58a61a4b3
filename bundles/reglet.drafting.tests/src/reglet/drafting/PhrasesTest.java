package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import reglet.model.Compare;
import reglet.model.Day;
import reglet.model.Evidence;
import reglet.model.Grade;
import reglet.model.Method;
import reglet.model.Numbers;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;

class PhrasesTest {
    private static final List<String> STEPS = List.of("12-1/2", "25", "50");

    /**
     * Worked by hand from the exact definitions of the units (NIST SP 811: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, 1 yd = 0.9144 m,
     * 1 psi = 6894.757 Pa, t°C = (t°F - 32) / 1.8; 1 perm = 57.2135 ng/(s·m²·Pa)): 2.5 lb/yd² is 1.356 23 kg/m²,
     * 16 in is 406.4 mm, 9.5 mm is 0.374 016 in, 40 °F is 4.444 °C, -20 °F is -28.889 °C, 15 psf is 718.2 Pa.
     */
    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 2.5 lb/yd2, at least 2.5 lb/yd² (1.36 kg/m²)",
        "AT_MOST,  2.5 lb/yd2, at most 2.5 lb/yd² (1.35 kg/m²)",
        "EXACTLY,  2.5 lb/yd2, 2.5 lb/yd² (1.36 kg/m²)",
        "AT_LEAST, 3.4 lb/yd2, at least 3.4 lb/yd² (1.85 kg/m²)",
        "AT_LEAST, 1/2 in,     at least 1/2 in (12.7 mm)",
        "AT_MOST,  1/2 in,     at most 1/2 in (12.7 mm)",
        "AT_LEAST, 3-1/2 in,   at least 3-1/2 in (88.9 mm)",
        "AT_MOST,  16 in,      at most 16 in (406 mm)",
        "AT_LEAST, 16 in,      at least 16 in (407 mm)",
        "EXACTLY,  7 in,       7 in (178 mm)",
        "AT_MOST,  7 in,       at most 7 in (177 mm)",
        "AT_LEAST, 9.5 mm,     at least 9.5 mm (0.375 in)",
        "AT_MOST,  9.5 mm,     at most 9.5 mm (0.374 in)",
        "AT_LEAST, 40 °F,      at least 40 °F (4.45 °C)",
        "AT_LEAST, -20 °F,     at least -20 °F (-28.8 °C)",
        "AT_MOST,  -20 °F,     at most -20 °F (-28.9 °C)",
        "AT_MOST,  15 psf,     at most 15 psf (718 Pa)",
        "AT_LEAST, 50 psi,     at least 50 psi (0.345 MPa)",
        "AT_MOST,  0.1 perm,   at most 0.1 perm (5.72 ng/(Pa·s·m²))",
        "AT_LEAST, 90%,        at least 90%",
        "AT_LEAST, 60 min,     at least 60 min"})
    void otherUnitIsRoundedToTheStrictSide(Compare compare, String value, String printed) {
        assertEquals(printed, Phrases.of(quantity(compare, value, Method.NONE)));
    }

    /** Read back, the value in parentheses is on the strict side of the written one, whatever the unit; ten figures are carried. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void valueInParenthesesIsNeverLaxer(Unit unit) {
        Random random = new Random(unit.ordinal());
        for (int run = 0; run < 200; run++) {
            String amount = Numbers.plain(Math.round(random.nextDouble() * 100_000) / Math.pow(10, random.nextInt(5)));
            Quantity written = Quantity.of(Double.parseDouble(amount), unit);
            for (Compare compare : List.of(Compare.AT_LEAST, Compare.AT_MOST)) {
                String printed = Phrases.value(requirement(Sample.property("x", "x",
                    new PropertyType(PropertyType.Kind.QUANTITY, Optional.of(unit), List.of()), compare, Method.NONE, Evidence.NONE),
                        written));
                if (unit.other().isEmpty()) {
                    assertEquals(written.text(), printed);
                    continue;
                }
                assertTrue(printed.startsWith(written.text() + " (") && printed.endsWith(")"), printed);
                Unit other = unit.other().get();
                String shown = printed.substring(written.text().length() + 2).split(" ")[0].replace(")", "");
                assertTrue(!shown.contains(".") || !shown.endsWith("0"), printed);
                double laxer = (written.in(other) - Double.parseDouble(shown)) * (compare == Compare.AT_LEAST ? 1 : -1);
                assertTrue(laxer <= 1e-9 * Math.abs(written.in(other)), compare + " " + printed);
            }
        }
    }

    @Test
    void valueAloneKeepsTheStrictSide() {
        assertEquals("16 in (407 mm)", Phrases.value(quantity(Compare.AT_LEAST, "16 in", new Method("ASTM C1063", ""))));
    }

    @Test
    void methodFollowsWithItsPartAndWithoutEdition() {
        assertEquals("at least 90%, ASTM E2925 Annex A2", Phrases.of(quantity(Compare.AT_LEAST, "90%",
            new Method("ASTM E2925", "Annex A2"))));
        assertEquals("", Phrases.method(Method.NONE));
    }

    @Test
    void rangesAreRoundedInwards() {
        Range range = new Range(Sample.q("3/8 in"), Sample.q("1/2 in"));
        assertEquals("between 3/8 and 1/2 in (9.53 and 12.7 mm)", of(PropertyType.Kind.RANGE, Compare.BETWEEN, range));
        assertEquals("40 to 90 °F (4.44 to 32.2 °C)", Phrases.fact(Sample.property("x", "x", new PropertyType(PropertyType.Kind.RANGE,
            Optional.of(Unit.DEG_F), List.of()), Compare.EXACTLY, Method.NONE, Evidence.NONE),
            new Range(Sample.q("40 °F"), Sample.q("90 °F"))));
    }

    /** 4.444 °C up and 32.222 °C down. */
    @Test
    void temperaturesBetweenAreRoundedInwards() {
        assertEquals("between 40 and 90 °F (4.45 and 32.2 °C)",
            of(PropertyType.Kind.RANGE, Compare.BETWEEN, new Range(Sample.q("40 °F"), Sample.q("90 °F"))));
    }

    /** 100.01 in is 2540.254 mm and 100.05 in is 2541.27 mm: rounded inwards to three figures the range would turn over. */
    @Test
    void narrowRangeTakesMoreFiguresBeforeItTurnsOver() {
        assertEquals("between 100.01 and 100.05 in (2541 and 2541 mm)",
            of(PropertyType.Kind.RANGE, Compare.BETWEEN, new Range(Sample.q("100.01 in"), Sample.q("100.05 in"))));
    }

    @Test
    void gradesSayWhichSideIsAllowed() {
        assertEquals("25 or better", of(PropertyType.Kind.GRADE, Compare.AT_LEAST, new Grade("25", STEPS)));
        assertEquals("50", of(PropertyType.Kind.GRADE, Compare.AT_LEAST, new Grade("50", STEPS)));
        assertEquals("25 or lower", of(PropertyType.Kind.GRADE, Compare.AT_MOST, new Grade("25", STEPS)));
        assertEquals("12-1/2", of(PropertyType.Kind.GRADE, Compare.AT_MOST, new Grade("12-1/2", STEPS)));
        assertEquals("25", of(PropertyType.Kind.GRADE, Compare.EXACTLY, new Grade("25", STEPS)));
    }

    /** The form of ISO 8601: no reader takes the month for the day. */
    @Test
    void datesSayWhichSideIsAllowed() {
        Day day = Day.parse("2028-05-01").orElseThrow();
        assertEquals("2028-05-01 or later", of(PropertyType.Kind.DATE, Compare.AT_LEAST, day));
        assertEquals("2028-05-01 or earlier", of(PropertyType.Kind.DATE, Compare.AT_MOST, day));
        assertEquals("2028-05-01", of(PropertyType.Kind.DATE, Compare.EXACTLY, day));
    }

    @Test
    void setsAndWordsReadAsSentences() {
        assertEquals("M, A, and O", of(PropertyType.Kind.SET, Compare.EXACTLY, new WordSet(List.of("M", "A", "O"))));
        assertEquals("one of M or A", of(PropertyType.Kind.SET, Compare.ONE_OF, new WordSet(List.of("M", "A"))));
        assertEquals("expanded metal", of(PropertyType.Kind.WORD, Compare.EXACTLY, new Word("expanded metal")));
        assertEquals("required", of(PropertyType.Kind.FLAG, Compare.EXACTLY, new Word("yes")));
        assertEquals("not required", of(PropertyType.Kind.FLAG, Compare.EXACTLY, new Word("no")));
    }

    private static Requirement quantity(Compare compare, String value, Method method) {
        return requirement(Sample.property("x", "x", new PropertyType(PropertyType.Kind.QUANTITY, Optional.of(Unit.IN), List.of()),
            compare, method,
            Evidence.NONE), Sample.q(value));
    }

    private static String of(PropertyType.Kind kind, Compare compare, Value value) {
        return Phrases.of(requirement(Sample.property("x", "x", new PropertyType(kind, Optional.empty(), List.of()), compare, Method.NONE,
            Evidence.NONE), value));
    }

    private static Requirement requirement(Property property, Value value) {
        return new Requirement("W1", "lath", "metal-2.5", property, value, Sample.AT);
    }
}

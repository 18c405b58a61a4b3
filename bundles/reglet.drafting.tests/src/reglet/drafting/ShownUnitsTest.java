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
import reglet.model.Evidence;
import reglet.model.Method;
import reglet.model.Numbers;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.Word;
import reglet.model.Wording;

/** In which units quantities are shown. */
class ShownUnitsTest {
    private static final ShownUnits METRIC = new ShownUnits(Optional.of(UnitSystem.SI), false);
    private static final ShownUnits INCH_POUND = new ShownUnits(Optional.of(UnitSystem.INCH_POUND), false);

    private static Property property(Unit unit, Compare compare) {
        return Sample.property("x", "x", new PropertyType(PropertyType.Kind.QUANTITY, Optional.of(unit), List.of()), compare, Method.NONE,
            Evidence.NONE);
    }

    @Test
    void valuesStandAsWrittenUnlessOtherUnitsAreWanted() {
        assertEquals("26 ft", ShownUnits.AS_WRITTEN.text(Sample.q("26 ft")));
        assertEquals("26 ft", INCH_POUND.text(Sample.q("26 ft")));
        // 26 × 0.3048 m, exactly, by the definition of the foot
        assertEquals("7.92 m", METRIC.text(Sample.q("26 ft")));
        assertEquals("moist", METRIC.text(new Word("moist")));
        assertEquals("48 h", METRIC.text(Sample.q("48 h")));
    }

    @Test
    void theUnitWrittenStaysInParentheses() {
        assertEquals("7.92 m (26 ft)", new ShownUnits(METRIC.first(), true).text(Sample.q("26 ft")));
        assertEquals("26 ft (7.92 m)", new ShownUnits(INCH_POUND.first(), true).text(Sample.q("26 ft")));
        assertEquals("26 ft (7.92 m)", ShownUnits.BOTH.text(Sample.q("26 ft")));
        assertEquals("48 h", ShownUnits.BOTH.text(Sample.q("48 h")));
        assertEquals("26 ft", METRIC.beside(Sample.q("26 ft"), Sense.PLAIN));
        assertEquals("7.92 m", INCH_POUND.beside(Sample.q("26 ft"), Sense.PLAIN));
        assertEquals("", METRIC.beside(new Word("moist"), Sense.PLAIN));
    }

    @Test
    void bothEndsOfARangeTurn() {
        Range range = new Range(Sample.q("40 degF"), Sample.q("90 degF"));
        // (40 - 32)/1.8 and (90 - 32)/1.8 °C
        assertEquals("4.44 to 32.2 °C", METRIC.text(range));
        assertEquals("4.44 to 32.2 °C (40 to 90 °F)", new ShownUnits(METRIC.first(), true).text(range));
        assertEquals("4.45 and 32.2 °C", METRIC.text(range, new Sense(Optional.empty(), Optional.of(Compare.BETWEEN)), " and "));
    }

    /** The unit beside is the one that such things are given in; by the definitions of pound, foot, yard and inch. */
    @ParameterizedTest
    @CsvSource({
        // 1.36 / 0.45359237 × 0.9144² lb/yd²
        "LB_YD2, 1.36 kg/m2, 2.51 lb/yd²",
        // 1.36 / 0.45359237 × 0.3048² lb/ft²
        "LB_FT2, 1.36 kg/m2, 0.279 lb/ft²",
        // 0.5 / 0.0254 mil
        "MIL,    0.5 mm,     19.7 mil",
        "IN,     0.5 mm,     0.0197 in",
        "FT,     300 mm,     0.984 ft",
        // 50 × 6.894757 kPa, from memory of NIST SP 811 (2008), Appendix B.8
        "KPA,    50 psi,     345 kPa",
        "MPA,    50 psi,     0.345 MPa",
        "LB_YD2, 2.5 lb/yd2, 1.36 kg/m²",
        "MIL,    20 mil,     0.508 mm"})
    void theUnitBesideIsTheOneInWhichThePropertyIsUsuallyGiven(Unit usual, String written, String beside) {
        assertEquals(beside, ShownUnits.BOTH.beside(Sample.q(written), Sense.stated(property(usual, Compare.AT_LEAST))));
    }

    @Test
    void aWallInMetricUnitsPrintsItsLathPerSquareYardAsTheTradeSellsIt() {
        assertEquals("at least 1.36 kg/m² (2.51 lb/yd²)", Phrases.of(new reglet.model.Requirement("W1", "lath", "metal-2.5",
            property(Unit.LB_YD2, Compare.AT_LEAST), Sample.q("1.36 kg/m2"), Sample.AT)));
    }

    /** Whoever builds to the number shown meets the requirement that is written, whichever system is shown first. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void aRequirementShownInTheOtherSystemIsNeverLaxer(Unit unit) {
        Random random = new Random(unit.ordinal());
        for (int run = 0; run < 100; run++) {
            Quantity written = Quantity.of(Double.parseDouble(Numbers.plain(Math.round(random.nextDouble() * 1e5)
                / Math.pow(10, random.nextInt(4)))), unit);
            for (ShownUnits units : List.of(METRIC, INCH_POUND)) {
                Quantity least = units.turned(written, Sense.required(property(unit, Compare.AT_LEAST)));
                Quantity most = units.turned(written, Sense.required(property(unit, Compare.AT_MOST)));
                assertTrue(Numbers.number(least.amount()).orElseThrow() >= written.in(least.unit())
                    - 1e-9 * Math.abs(written.in(least.unit())),
                    written + " " + least);
                assertTrue(Numbers.number(most.amount()).orElseThrow() <= written.in(most.unit())
                    + 1e-9 * Math.abs(written.in(most.unit())),
                    written + " " + most);
                assertEquals(written.si(), least.si());
                assertTrue(unit.system().isEmpty() || least.unit().system().equals(units.first()), written + " " + least);
            }
        }
    }

    @Test
    void aSentenceIsSaidInOtherUnitsWordForWordBesides() {
        Wording wording = new Wording.Builder().words("12 in is the least; ").value(Sample.q("2 in"), Sense.PLAIN)
            .words(" are there.").build();
        assertEquals("12 in is the least; 2 in are there.", wording.text());
        assertEquals("12 in is the least; 50.8 mm are there.", wording.in(METRIC));
        assertEquals("Alternate No. 1: 12 in is the least; 50.8 mm are there.", wording.behind("Alternate No. 1: ").in(METRIC));
        assertEquals("a 31.8 mm bead at 406 mm or 610 mm by the 2021 in force, 10 gauge, and 0.0517 MPa", new Wording.Builder().amounts(
            "a 1-1/4 in bead at 16 or 24 in by the 2021 in force, 10 gauge, and 7.5 psi").build().in(METRIC));
        assertEquals("Take 3/8 to 1/2 in.", new Wording.Builder().amounts("Take 3/8 to 1/2 in.").build().in(ShownUnits.AS_WRITTEN));
        assertEquals("Take 9.52 mm to 12.7 mm.", new Wording.Builder().amounts("Take 3/8 to 1/2 in.").build().in(METRIC));
        assertEquals("colder than -51.1 °C", new Wording.Builder().amounts("colder than -60 °F").build().in(METRIC));
        assertEquals("Take 1/2 in.", new Wording.Builder().amounts("Take 1/2 in.").build().in(INCH_POUND));
        assertEquals("Nothing to turn.", Wording.of("Nothing to turn.").in(METRIC));
    }
}

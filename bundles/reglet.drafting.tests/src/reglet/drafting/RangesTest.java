package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import reglet.model.Compare;
import reglet.model.Evidence;
import reglet.model.Method;
import reglet.model.Numbers;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.Unit;

/**
 * Ranges in both systems of units, the job's own first. Who builds to either keeps to the range, and the one in parentheses is narrower
 * by less than the last of three figures at each end.
 */
class RangesTest {
    /**
     * Factors to the coherent SI unit, from memory of NIST SP 811 (2008), Appendix B.8, to its six or seven figures; many are
     * exact. The inch of mercury is the one at 32 °F, and the perm the one at 0 °C; SP 811 has others at other temperatures.
     */
    private static final Map<Unit, Double> SP_811 = new TreeMap<>(Map.ofEntries(
        Map.entry(Unit.IN, 2.54e-2), Map.entry(Unit.FT, 3.048e-1), Map.entry(Unit.YD, 9.144e-1), Map.entry(Unit.MIL, 2.54e-5),
        Map.entry(Unit.MM, 1e-3), Map.entry(Unit.CM, 1e-2), Map.entry(Unit.M, 1.0), Map.entry(Unit.UM, 1e-6),
        Map.entry(Unit.IN2, 6.4516e-4), Map.entry(Unit.FT2, 9.290304e-2), Map.entry(Unit.MM2, 1e-6), Map.entry(Unit.M2, 1.0),
        Map.entry(Unit.FT3, 2.831685e-2), Map.entry(Unit.FLOZ, 2.957353e-5), Map.entry(Unit.GAL, 3.785412e-3), Map.entry(Unit.M3, 1.0),
        Map.entry(Unit.L, 1e-3), Map.entry(Unit.ML, 1e-6), Map.entry(Unit.LB, 4.535924e-1), Map.entry(Unit.KG, 1.0),
            Map.entry(Unit.G, 1e-3),
        Map.entry(Unit.LB_YD2, 5.424919e-1), Map.entry(Unit.LB_FT2, 4.882428), Map.entry(Unit.OZ_YD2, 3.390575e-2),
        Map.entry(Unit.LB_100FT2, 4.882428e-2), Map.entry(Unit.KG_M2, 1.0), Map.entry(Unit.G_M2, 1e-3), Map.entry(Unit.LB_FT3, 1.601846e1),
        Map.entry(Unit.KG_M3, 1.0), Map.entry(Unit.LBF, 4.448222), Map.entry(Unit.N, 1.0), Map.entry(Unit.LBF_IN, 1.751268e2),
        Map.entry(Unit.N_M, 1.0), Map.entry(Unit.N_MM, 1e3), Map.entry(Unit.PSF, 4.788026e1), Map.entry(Unit.PSI, 6.894757e3),
        Map.entry(Unit.INHG, 3.38638e3), Map.entry(Unit.PA, 1.0), Map.entry(Unit.KPA, 1e3), Map.entry(Unit.MPA, 1e6),
        Map.entry(Unit.MPH, 4.4704e-1), Map.entry(Unit.M_S, 1.0), Map.entry(Unit.PERM, 5.72135e-11), Map.entry(Unit.NG_PASM2, 1e-12),
        Map.entry(Unit.CFM_FT2, 5.08e-3), Map.entry(Unit.L_SM2, 1e-3), Map.entry(Unit.PPM_F, 1.8e-6), Map.entry(Unit.PPM_C, 1e-6)));

    /** In the coherent SI unit, worked out without the program; degrees by SP 811, B.8: t/°C = (t/°F - 32)/1.8, T/K = t/°C + 273.15. */
    private static double si(Unit unit, double amount) {
        return switch (unit) {
            case DEG_F -> (amount - 32) / 1.8 + 273.15;
            case DEG_C -> amount + 273.15;
            case K -> amount;
            default -> amount * SP_811.get(unit);
        };
    }

    /** How far the table's figures may be off: rounding, and for the perm the conventional mercury, which differs by 3 in a million. */
    private static final double TABLE = 4e-6;

    private static String printed(Range range) {
        return Phrases.of(new Requirement("W1", "lath", "metal-2.5", Sample.property("x", "x", new PropertyType(PropertyType.Kind.RANGE,
            Optional.of(range.low().unit()), List.of()), Compare.BETWEEN, Method.NONE, Evidence.NONE), range, Sample.AT));
    }

    private static Range random(Unit unit, Random random) {
        double low = amount(random);
        // from ranges as narrow as a tolerance to those that begin near nothing
        double high = low + Math.max(Math.abs(low) * Math.pow(10, -4 * random.nextDouble()), 1e-4) * random.nextDouble();
        return new Range(quantity(low, unit), quantity(Math.max(low, high), unit));
    }

    private static double amount(Random random) {
        return Math.round(random.nextDouble() * 100_000) / Math.pow(10, random.nextInt(5));
    }

    private static Quantity quantity(double amount, Unit unit) {
        return Quantity.of(Double.parseDouble(Numbers.plain(amount)), unit);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aRangeInParenthesesLiesWithinTheJobsOwnAndIsHardlyNarrower(Unit unit) {
        Random random = new Random(811 + unit.ordinal());
        for (int run = 0; run < 300; run++) {
            Range range = random(unit, random);
            String printed = printed(range);
            if (unit.other().isEmpty()) {
                assertTrue(!printed.contains("("), printed);
                continue;
            }
            Unit other = unit.other().get();
            String own = range.high().text() + " (";
            assertTrue(printed.contains(own) && printed.endsWith(")"), printed);
            String[] ends = printed.substring(printed.indexOf(own) + own.length()).split(" and ");
            double low = Double.parseDouble(ends[0].split(" ")[0]);
            double high = Double.parseDouble(ends[1].split(" ")[0]);
            assertTrue(low <= high, printed);
            // to the job's unit and back: inside, and less than the third figure away
            inside(si(unit, range.low().in(unit)), si(other, low), other, low, printed);
            inside(-si(unit, range.high().in(unit)), -si(other, high), other, high, printed);
        }
    }

    /** That an end moved inwards, by less than one of the last of three figures. */
    private static void inside(double own, double converted, Unit other, double shown, String printed) {
        double factors = TABLE * Math.abs(own);
        double figure = shown == 0 ? 1 : Math.pow(10, Math.floor(Math.log10(Math.abs(shown))) - 2);
        double step = Math.abs(si(other, shown + figure) - si(other, shown));
        assertTrue(converted >= own - factors, "laxer: " + printed);
        assertTrue(converted - own <= step + factors, "narrower by " + (converted - own) + " of " + step + ": " + printed);
    }

    @Test
    void theUnitOfTheJobComesFirstInBothSystems() {
        assertEquals("between 3/8 and 1/2 in (9.53 and 12.7 mm)", printed(new Range(Sample.q("3/8 in"), Sample.q("1/2 in"))));
        assertEquals("between 10 and 13 mm (0.394 and 0.511 in)", printed(new Range(Sample.q("10 mm"), Sample.q("13 mm"))));
    }

    @Test
    void factorsAgreeWithThoseOfThePublishedTable() {
        SP_811.forEach((unit, factor) -> assertEquals(1, unit.toSi(1) / si(unit, 1), TABLE, unit + ": " + unit.toSi(1)));
        assertEquals(si(Unit.DEG_F, 40), Unit.DEG_F.toSi(40), 1e-9);
    }
}

package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import reglet.model.Chart;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class LathFasteningTest {

    /** Arithmetic worked independently: 25 psf at 16 by 7 in, 11 psf at 16 by 6 in. */
    @Test
    void aFastenerCarriesItsShareOfTheWholeWall() throws UnusableInput {
        assertEquals(19.44, Run.result(usual("weight=25 psf", "spacing=7 in"), "demand.lateral", Unit.LBF), 0.005);
        assertEquals(7.33, Run.result(usual("weight=11 psf", "spacing=6 in"), "demand.lateral", Unit.LBF), 0.005);
    }

    @Test
    void theGapIsMatInsulationAndSheathingUnlessTheSheathingBears() throws UnusableInput {
        assertEquals(0.375 + 0.4375, Run.result(usual(), "gap", Unit.IN), 1e-9);
        assertEquals(0.375 + 0.4375 + 1, Run.result(usual("insulation=1 in", "length=4 in"), "gap", Unit.IN), 1e-9);
        assertEquals(0.375, Run.result(usual("sheathing_bears=yes"), "gap", Unit.IN), 1e-9);
    }

    /**
     * IRC 2021 R703.7.1 (read): lath straight on sheathing may hang on 1-1/2 in, 0.120 in nails at 7 in. A wall of 25 psf must pass at that
     * spacing, and the sheet must not allow more.
     */
    @Test
    void theCodesOwnFasteningOfLathOnSheathingPasses() throws UnusableInput {
        Worksheet sheet = usual("weight=25 psf", "mat=0 in", "length=1-1/2 in", "diameter=0.120 in", "spacing=7 in", "sheathing_bears=yes");
        assertEquals(7, Run.result(sheet, "spacing.largest", Unit.IN), 1e-9);
        assertEquals(1, sheet.margin().getAsDouble(), 1e-9);
    }

    /** IRC 2018 R703.7.1 (read) has 6 in; later editions 7 in (read). */
    @Test
    void theCodesWidestSpacingFollowsTheEdition() throws UnusableInput {
        assertEquals(6, Run.result(usual("weight=5 psf", "edition=2018"), "spacing.largest", Unit.IN), 1e-9);
        assertEquals(7, Run.result(usual("weight=5 psf", "edition=2021"), "spacing.largest", Unit.IN), 1e-9);
    }

    /**
     * IRC 2018 Table R703.15.1 (from memory): where the table stops at so much foam, this sheet stops sooner, with either model of the
     * head.
     */
    @Test
    void noGapIsAllowedThatTheCodesFoamTableWouldNotAllow() throws UnusableInput {
        for (String[] row : Run.table(DowelTest.FOAM_TABLE)) {
            for (int column = 0; column < 6; column++) {
                double table = Double.parseDouble(row[2 + column]);
                for (String head : List.of("free to turn", "held upright")) {
                    Worksheet sheet = Run.of("lath_fastening", "diameter=0" + row[0] + " in", "length=1.25 in", "sheathing=0 in",
                        "mat=0 in", "weight=" + DowelTest.FOAM_WEIGHTS[column % 3] + " psf", "suction=0 psf", "stud_spacing="
                        + (column < 3 ? 16 : 24) + " in", "spacing=" + row[1] + " in", "head=" + head);
                    double allowed = Run.result(sheet, "gap.largest", Unit.IN);
                    assertTrue(allowed <= (table == 0 ? 0.5 : table), String.join(" ", row) + " " + head + " column " + column + ": "
                        + allowed);
                }
            }
        }
    }

    @Test
    void theLargestGapIsWhereTheChosenSpacingIsJustCarried() throws UnusableInput {
        Worksheet sheet = usual("weight=18 psf", "sheathing=0 in", "mat=0 in", "length=3 in", "spacing=6 in");
        double gap = Run.result(sheet, "gap.largest", Unit.IN);
        Worksheet there = usual("weight=18 psf", "sheathing=0 in", "mat=0 in", "insulation=" + gap + " in", "length=" + (3 + gap) + " in",
            "spacing=6 in");
        assertEquals(6, Run.result(there, "spacing.permanent", Unit.IN), 1e-5);
    }

    /** NDS 2018, 12.4 (from memory): at the limit the shares of weight and suction add up to one. */
    @Test
    void weightAndSuctionShareTheFastener() throws UnusableInput {
        Worksheet sheet = usual("weight=20 psf", "suction=40 psf", "sheathing_bears=yes");
        double spacing = Run.result(sheet, "spacing.wind", Unit.IN);
        double area = spacing * 16 / 144;
        double lateral = 1.6 * Run.result(sheet, "lateral", Unit.LBF);
        double withdrawal = Run.result(sheet, "withdrawal", Unit.LBF);
        assertEquals(1, 20 * area / lateral + 40 * area / withdrawal, 1e-6);
        assertEquals(1.6 * 23.35 * (3 - 0.375 - 0.4375), withdrawal, 0.1);
    }

    @Test
    void permanentLoadTakesTheDurationAndTheSlipFactor() throws UnusableInput {
        Worksheet sheet = usual();
        assertEquals(0.9 * Run.result(sheet, "lateral", Unit.LBF) / 1.5, Run.result(sheet, "lateral.permanent", Unit.LBF), 1e-9);
        assertEquals(Run.result(sheet, "lateral.permanent", Unit.LBF) / 25 * 144 / 16, Run.result(sheet, "spacing.permanent", Unit.IN),
            1e-9);
    }

    @Test
    void theSpacingMovesTheWayPhysicsSays() throws UnusableInput {
        double base = permanent();
        assertTrue(permanent("mat=1/2 in") < base);
        assertTrue(permanent("weight=26 psf") < base);
        assertTrue(permanent("slip_factor=2") < base);
        assertTrue(permanent("stud_spacing=24 in") < base);
        assertTrue(permanent("diameter=0.162 in") > base);
        assertTrue(permanent("species=southern pine") > base);
        assertTrue(permanent("sheathing_bears=yes") > base);
        assertTrue(permanent("head=held upright") > base);
        assertTrue(permanent("bending_yield=80000 psi") < base);
        double wind = Run.result(usual(), "spacing.wind", Unit.IN);
        assertTrue(Run.result(usual("suction=30 psf"), "spacing.wind", Unit.IN) < wind);
    }

    @Test
    void anEarthquakeOutOfTheWallAndAlongItIsCarriedToo() throws UnusableInput {
        Worksheet sheet = usual("weight=25 psf", "seismic=14 psf", "vertical=3.5 psf");
        double spacing = Run.result(sheet, "spacing.seismic", Unit.IN);
        double area = spacing * 16 / 144;
        double lateral = 1.6 * Run.result(sheet, "lateral", Unit.LBF);
        double withdrawal = Run.result(sheet, "withdrawal", Unit.LBF);
        assertTrue(28.5 * area / lateral + 14 * area / withdrawal <= 1 + 1e-9);
        assertTrue(Math.hypot(28.5, 14) * area / lateral <= 1 + 1e-9);
        assertFalse(usual().results().containsKey("spacing.seismic"));
    }

    /** NDS 2018, 12.1 (read): 6 D into the framing; under 10 D the point doesn't bear (read). */
    @Test
    void shortPenetrationIsRefusedAndAPointDoesNotBear() throws UnusableInput {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> usual("length=1.65 in"));
        assertTrue(refused.getMessage().contains("length of 1.65 in leaves 0.8375 in"), refused.getMessage());
        assertTrue(refused.getMessage().contains("0.888 in"), refused.getMessage());
        assertTrue(refused.getMessage().contains("6 D"), refused.getMessage());
        assertEquals(2.1875, Run.step(usual(), "lm", Unit.IN), 1e-9);
        assertEquals(1.2 - 2 * 0.148, Run.step(usual("length=2.0125 in"), "lm", Unit.IN), 1e-9);
        assertTrue(warns(usual("length=1.5 in", "diameter=.105 in"), "Less than 3/4 in"));
    }

    @Test
    void staplesCountOnlyWhenAcceptedAndThenAsTwoLegs() throws UnusableInput {
        String[] staple = {"fastener=staple", "diameter=0.0625 in", "length=2 in", "weight=10 psf"};
        UnusableInput refused = assertThrows(UnusableInput.class, () -> usual(staple));
        assertTrue(refused.getMessage().contains("staple_accepted=yes"), refused.getMessage());
        Worksheet accepted = usual("staple_accepted=yes", staple[0], staple[1], staple[2], staple[3]);
        Worksheet nail = usual("fastener=nail", staple[1], staple[2], staple[3]);
        assertEquals(2 * Run.result(nail, "lateral", Unit.LBF), Run.result(accepted, "lateral", Unit.LBF), 1e-9);
        assertEquals(2 * Run.result(nail, "withdrawal", Unit.LBF), Run.result(accepted, "withdrawal", Unit.LBF), 1e-9);
    }

    @Test
    void aScrewBendsUnderItsThreadAndWithdrawsByItsShank() throws UnusableInput {
        assertThrows(UnusableInput.class, () -> usual("fastener=screw", "diameter=0.19 in"));
        assertThrows(UnusableInput.class, () -> usual("fastener=screw", "diameter=0.19 in", "root=0.2 in"));
        Worksheet screw = usual("fastener=screw", "diameter=0.189 in", "root=0.131 in");
        // 1.6 × 95.0 lb/in (an engineer's worked example, read) × 2.1875 in
        assertEquals(1.6 * 95.0 * 2.1875, Run.result(screw, "withdrawal", Unit.LBF), 0.3);
        assertEquals(Run.result(usual("diameter=0.131 in"), "lateral", Unit.LBF), Run.result(screw, "lateral", Unit.LBF), 1e-9);
    }

    /** AISI S100-16 J4.4.1 (from memory): 0.85 × 0.0346 × 0.190 × 45 000 / 3 = 83.8 lb. */
    @Test
    void steelFramingGetsThePullOutButNoSpacingIsInvented() throws UnusableInput {
        Worksheet sheet = usual("framing=steel", "fastener=screw", "diameter=0.190 in", "steel=33");
        assertEquals(83.8, Run.result(sheet, "pull.out", Unit.LBF), 0.05);
        assertTrue(sheet.results().keySet().stream().noneMatch(key -> key.startsWith("spacing")));
        assertTrue(sheet.margin().isEmpty());
        assertTrue(warns(sheet, "No spacing is given"));
        assertThrows(UnusableInput.class, () -> usual("framing=steel", "fastener=nail"));
        assertThrows(UnusableInput.class, () -> usual("framing=steel", "fastener=screw", "length=0.8 in"));
        assertTrue(Worksheets.charts(Worksheets.run("lath_fastening", typed("framing=steel", "fastener=screw"), "typed")).isEmpty());
    }

    @Test
    void theChartShowsWhatAFastenerCarriesAcrossEveryGap() throws UnusableInput {
        Map<String, String> typed = typed("sheathing=0 in", "mat=1/2 in", "length=2-1/2 in");
        Chart chart = Worksheets.charts(Worksheets.run("lath_fastening", typed, "typed")).get(0);
        Worksheet sheet = Worksheets.run("lath_fastening", typed, "typed");
        Chart.Curve free = chart.curves().get(0);
        assertEquals("free to turn", free.label());
        Chart.Point here = free.points().stream().filter(point -> Math.abs(point.x() - Unit.IN.toSi(0.5)) < 1e-9).findFirst().orElseThrow();
        assertEquals(sheet.results().get("lateral.permanent").si(), here.y(), 1e-9);
        assertEquals("III, head free", here.note());
        for (Chart.Curve curve : chart.curves()) {
            for (int i = 1; i < curve.points().size(); i++) {
                assertTrue(curve.points().get(i).y() < curve.points().get(i - 1).y());
            }
        }
    }

    @Test
    void aWallThatCannotBeHungSaysSo() throws UnusableInput {
        Worksheet sheet = usual("weight=40 psf", "insulation=2 in", "length=5 in", "diameter=0.113 in", "spacing=6 in");
        assertTrue(sheet.margin().getAsDouble() < 0.5);
        assertTrue(warns(sheet, "wider than permitted"));
        assertTrue(warns(sheet, "Fasteners closer than 3 in"));
        assertEquals(0, Run.result(sheet, "gap.largest", Unit.IN), 1e-9);
    }

    @Test
    void bothSystemsOfUnitsGiveTheSame() throws UnusableInput {
        Worksheet inch = usual();
        Worksheet metric = Run.of("lath_fastening", "length=76.2 mm", "diameter=3.7592 mm", "weight=122.0606409 kg/m2",
            "suction=909.725 Pa", "mat=9.525 mm", "sheathing=11.1125 mm", "stud_spacing=406.4 mm", "spacing=152.4 mm");
        inch.results().forEach((key, amount) -> assertEquals(amount.si(), metric.results().get(key).si(), 1e-5 * amount.si(), key));
        assertEquals(Unit.MM, metric.results().get("spacing.permanent").unit());
    }

    @Test
    void theGoverningModeIsNamed() throws UnusableInput {
        assertTrue(usual().steps().stream().anyMatch(step -> step.symbol().equals("P") && step.label()
            .contains("mode III, head free governs")));
    }

    private static double permanent(String... pairs) throws UnusableInput {
        return Run.result(usual(pairs), "spacing.permanent", Unit.IN);
    }

    private static boolean warns(Worksheet sheet, String words) {
        return sheet.warnings().stream().anyMatch(warning -> warning.contains(words));
    }

    /** 3 in nails of 0.148 in, 25 psf, 19 psf suction, 3/8 in mat, 7/16 in sheathing; changed as said. */
    private static Worksheet usual(String... pairs) throws UnusableInput {
        return Worksheets.run("lath_fastening", typed(pairs), "typed");
    }

    private static Map<String, String> typed(String... pairs) {
        Map<String, String> typed = Run.typed("length=3 in", "diameter=0.148 in", "weight=25 psf", "suction=19 psf", "mat=3/8 in");
        typed.putAll(Run.typed(pairs));
        return typed;
    }
}

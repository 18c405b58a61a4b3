package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class WindTest {

    /** A project engineer's published note, ASCE 7-16 (read): 115 mph, C, 30 ft, Kd 0.85. It rounds Kz to 0.98 and cuts decimals off. */
    @Test
    void anEngineersNoteOnExposureCIsReproduced() throws UnusableInput {
        Worksheet five = Run.of("wind", "speed=115 mph", "exposure=C", "height=30 ft", "zone=5", "area=10 ft2");
        Worksheet four = Run.of("wind", "speed=115 mph", "exposure=C", "height=30 ft", "zone=4", "area=10 ft2");
        assertEquals(28.2, Run.step(five, "qh", Unit.PSF), 0.1);
        assertEquals(-44.6, Run.result(five, "pressure.out.strength", Unit.PSF), 0.1);
        assertEquals(-26.7, Run.result(five, "pressure.out", Unit.PSF), 0.1);
        assertEquals(-36.1, Run.result(four, "pressure.out.strength", Unit.PSF), 0.1);
        assertEquals(-21.6, Run.result(four, "pressure.out", Unit.PSF), 0.12);
        assertEquals(33.3, Run.result(five, "pressure.in.strength", Unit.PSF), 0.1);
        assertEquals(20.0, Run.result(five, "pressure.in", Unit.PSF), 0.1);
    }

    /** A structural engineering magazine's example on adhered veneer under TMS 402-22 (read): 32.7 psf at 20 ft, C, 105 mph, 1000 ft up. */
    @Test
    void aMagazinesExampleAboveSeaLevelIsReproduced() throws UnusableInput {
        Worksheet sheet = Run.of("wind", "speed=105 mph", "exposure=C", "height=20 ft", "zone=5", "elevation=1000 ft");
        assertEquals(-32.7, Run.result(sheet, "pressure.out.strength", Unit.PSF), 0.01 * 32.7);
        assertEquals(0.964, Run.step(sheet, "Ke", Unit.ONE), 0.0005);
    }

    /**
     * IRC 2018 Table R301.2(2), walls, 10 ft², exposure B at 30 ft, allowable stress, psf (from memory): speed, zone 4/5 +, zone 4 −, zone
     * 5 −.
     */
    @Test
    void theResidentialCodesTableOfWallPressuresIsReproduced() throws UnusableInput {
        for (String[] row : Run.table("""
            110 | 13.1 | 14.2 | 17.5
            115 | 14.3 | 15.5 | 19.1
            120 | 15.5 | 16.9 | 20.8
            130 | 18.2 | 19.8 | 24.4
            140 | 21.2 | 22.9 | 28.3
            150 | 24.3 | 26.3 | 32.5
            160 | 27.7 | 30.0 | 37.0
            170 | 31.2 | 33.8 | 41.8
            180 | 35.0 | 37.9 | 46.8
            """)) {
            Worksheet five = Run.of("wind", "speed=" + row[0] + " mph", "exposure=B", "height=30 ft", "zone=5");
            Worksheet four = Run.of("wind", "speed=" + row[0] + " mph", "exposure=B", "height=30 ft", "zone=4");
            assertEquals(Double.parseDouble(row[1]), Run.result(five, "pressure.in", Unit.PSF), 0.11, row[0]);
            assertEquals(-Double.parseDouble(row[2]), Run.result(four, "pressure.out", Unit.PSF), 0.11, row[0]);
            assertEquals(-Double.parseDouble(row[3]), Run.result(five, "pressure.out", Unit.PSF), 0.11, row[0]);
        }
    }

    /** The same table's values for 100 ft² at 115 mph, computed independently from the formulas. */
    @Test
    void largerAreasTakeLess() throws UnusableInput {
        Worksheet five = Run.of("wind", "speed=115 mph", "exposure=B", "height=30 ft", "zone=5", "area=100 ft2");
        Worksheet four = Run.of("wind", "speed=115 mph", "exposure=B", "height=30 ft", "zone=4", "area=100 ft2");
        assertEquals(12.1, Run.result(five, "pressure.in", Unit.PSF), 0.1);
        assertEquals(-13.3, Run.result(four, "pressure.out", Unit.PSF), 0.1);
        assertEquals(-14.8, Run.result(five, "pressure.out", Unit.PSF), 0.1);
    }

    /** IRC 2018 Table R301.2(3), factors by mean roof height and exposure (from memory): ratio of Kz to exposure B at 30 ft. */
    @Test
    void theResidentialCodesHeightFactorsAreReproduced() {
        double base = Wind.kz(Wind.Edition.ASCE_7_16, Wind.Exposure.B, Unit.FT.toSi(30));
        for (String[] row : Run.table("""
            15 | 1.00 | 1.21 | 1.47
            20 | 1.00 | 1.29 | 1.55
            25 | 1.00 | 1.35 | 1.61
            30 | 1.00 | 1.40 | 1.66
            35 | 1.05 | 1.45 | 1.70
            40 | 1.09 | 1.49 | 1.74
            45 | 1.12 | 1.53 | 1.78
            50 | 1.16 | 1.56 | 1.81
            55 | 1.19 | 1.59 | 1.84
            60 | 1.22 | 1.62 | 1.87
            """)) {
            double height = Unit.FT.toSi(Double.parseDouble(row[0]));
            for (Wind.Exposure exposure : Wind.Exposure.values()) {
                assertEquals(Double.parseDouble(row[1 + exposure.ordinal()]), Wind.kz(Wind.Edition.ASCE_7_16, exposure, height) / base,
                    0.006, row[0] + " ft, " + exposure);
            }
        }
    }

    /** ASCE 7-22, Table 26.10-1 at 30 ft (from memory, reproduced independently). */
    @Test
    void theNewerEditionsExposureCoefficientsAreReproduced() {
        double height = Unit.FT.toSi(30);
        assertEquals(0.69, Wind.kz(Wind.Edition.ASCE_7_22, Wind.Exposure.B, height), 0.005);
        assertEquals(0.98, Wind.kz(Wind.Edition.ASCE_7_22, Wind.Exposure.C, height), 0.005);
        assertEquals(1.17, Wind.kz(Wind.Edition.ASCE_7_22, Wind.Exposure.D, height), 0.006);
    }

    /** ASCE 7-16 Figure 30.3-1, points read off by an open implementation; the curve stays within the width of the line. */
    @Test
    void theCurvesOfOutsideCoefficientsPassThroughTheFiguresPoints() {
        for (String[] row : Run.table("""
            10  | 1.0   | 1.1   | 1.4
            20  | 0.95  | 1.05  | 1.3
            50  | 0.85  | 0.975 | 1.15
            100 | 0.825 | 0.95  | 1.05
            200 | 0.775 | 0.85  | 0.95
            500 | 0.7   | 0.8   | 0.8
            """)) {
            double area = Unit.FT2.toSi(Double.parseDouble(row[0]));
            assertEquals(Double.parseDouble(row[1]), Wind.gcpIn(area), 0.03, row[0]);
            assertEquals(-Double.parseDouble(row[2]), Wind.gcpOut(Wind.Zone.FOUR, area), 0.03, row[0]);
            assertEquals(-Double.parseDouble(row[3]), Wind.gcpOut(Wind.Zone.FIVE, area), 0.03, row[0]);
        }
        assertEquals(Wind.gcpIn(Unit.FT2.toSi(10)), Wind.gcpIn(Unit.FT2.toSi(1)), 1e-12);
        assertEquals(Wind.gcpIn(Unit.FT2.toSi(500)), Wind.gcpIn(Unit.FT2.toSi(5000)), 1e-12);
    }

    @Test
    void theCornerZoneNeverTakesLessSuctionThanTheMiddle() throws UnusableInput {
        for (int area = 1; area <= 1000; area *= 3) {
            Worksheet five = Run.of("wind", "speed=140 mph", "exposure=C", "height=45 ft", "zone=5", "area=" + area + " ft2");
            Worksheet four = Run.of("wind", "speed=140 mph", "exposure=C", "height=45 ft", "zone=4", "area=" + area + " ft2");
            assertTrue(Run.result(five, "pressure.out", Unit.PSF) <= Run.result(four, "pressure.out", Unit.PSF) + 1e-9, area + " ft²");
        }
    }

    @Test
    void pressureGrowsWithSpeedHeightExposureAndTopography() throws UnusableInput {
        double base = suction("speed=115 mph", "exposure=B", "height=40 ft");
        assertTrue(suction("speed=116 mph", "exposure=B", "height=40 ft") < base);
        assertTrue(suction("speed=115 mph", "exposure=B", "height=41 ft") < base);
        assertTrue(suction("speed=115 mph", "exposure=C", "height=40 ft") < base);
        assertTrue(suction("speed=115 mph", "exposure=B", "height=40 ft", "kzt=1.2") < base);
        assertTrue(suction("speed=115 mph", "exposure=B", "height=40 ft", "enclosure=partially enclosed") < base);
        assertTrue(suction("speed=115 mph", "exposure=B", "height=40 ft", "elevation=5000 ft") > base);
        assertEquals(base * (0.9 * 1.4 + 0.18) / 1.58, suction("speed=115 mph", "exposure=B", "height=40 ft", "low_slope=yes"), 0.001);
    }

    @Test
    void bothSystemsOfUnitsGiveTheSameAndShowTheirOwn() throws UnusableInput {
        Worksheet inch = Run.of("wind", "speed=115 mph", "exposure=B", "height=30 ft", "area=10 ft2");
        Worksheet metric = Run.of("wind", "speed=51.4096 m/s", "exposure=B", "height=9.144 m", "area=0.9290304 m2");
        assertEquals(inch.results().get("pressure.out").si(), metric.results().get("pressure.out").si(), 1e-6);
        assertEquals(Unit.PSF, inch.results().get("pressure.out").unit());
        assertEquals(Unit.PA, metric.results().get("pressure.out").unit());
    }

    /** ASCE 7-16, 30.2.2 (from memory): no less than 16 psf either way, 9.6 psf at allowable stress. */
    @Test
    void lightWindIsRaisedToTheLeastPressure() throws UnusableInput {
        Worksheet sheet = Run.of("wind", "speed=85 mph", "exposure=B", "height=20 ft", "zone=4", "area=500 ft2");
        assertEquals(16, Run.result(sheet, "pressure.in.strength", Unit.PSF), 1e-6);
        assertEquals(-16, Run.result(sheet, "pressure.out.strength", Unit.PSF), 1e-6);
        assertEquals(-9.6, Run.result(sheet, "pressure.out", Unit.PSF), 1e-6);
    }

    /** The directionality factor moved from qh to p in 7-22; the pressure is the same product. */
    @Test
    void theNewerEditionKeepsTheFactorsProduct() throws UnusableInput {
        Worksheet sheet = Run.of("wind", "speed=115 mph", "exposure=C", "height=30 ft", "edition=7-22");
        assertEquals(0.85 * Run.step(sheet, "qh", Unit.PSF) * -1.58, Run.result(sheet, "pressure.out.strength", Unit.PSF), 0.01);
    }

    @Test
    void theWidthOfTheCornerZoneFollowsTheFigure() throws UnusableInput {
        assertEquals(6, zoneWidth("width=60 ft", "height=30 ft"), 1e-9);     // a tenth of the width
        assertEquals(6, zoneWidth("width=80 ft", "height=15 ft"), 1e-9);     // 0.4 of the height
        assertEquals(3, zoneWidth("width=20 ft", "height=30 ft"), 1e-9);     // no less than 3 ft
        assertEquals(8, zoneWidth("width=200 ft", "height=15 ft"), 1e-9);    // no less than 4 % of the width
    }

    @Test
    void heightsBeyondTheFigureAreRefusedWithTheSourceOfTheRange() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Run.of("wind", "speed=115 mph", "exposure=B", "height=61 ft"));
        assertTrue(refused.getMessage().contains("height"), refused.getMessage());
        assertTrue(refused.getMessage().contains("1 ft to 60 ft"), refused.getMessage());
        assertTrue(refused.getMessage().contains("Figure 30.3-1"), refused.getMessage());
    }

    private static double suction(String... pairs) throws UnusableInput {
        return Run.result(Run.of("wind", pairs), "pressure.out", Unit.PSF);
    }

    private static double zoneWidth(String... pairs) throws UnusableInput {
        return Run.result(Run.of("wind", "speed=115 mph", "exposure=B", pairs[0], pairs[1]), "zone.width", Unit.FT);
    }
}

package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class SealantJointTest {

    /** Worked solution in university course notes of 2007 (read): a 30 ft brick panel, filled between 60 and 75 °F. */
    @Test
    void aPublishedTwoSidedSolutionIsReproduced() throws UnusableInput {
        Worksheet sheet = Run.of("sealant_joint", "length=30 ft", "expansion=3.6 e-6/°F", "cold=-15 °F", "hot=105 °F", "install_cold=60 °F",
            "install_hot=75 °F", "growth=0.02%", "shrinkage=0%", "other=0.25 in", "tolerance=0.125 in", "capability=50");
        assertEquals(0.3803, Run.result(sheet, "closing", Unit.IN), 0.0005);
        assertEquals(0.3666, Run.result(sheet, "opening", Unit.IN), 0.0005);
        assertEquals(0.7607 + 0.125, Run.result(sheet, "width.computed", Unit.IN), 0.001);
        // 0.886 in is built 15/16 in: 7/8 in, the nearest eighth, would be too narrow.
        assertEquals(0.9375, Run.result(sheet, "width", Unit.IN), 1e-9);
    }

    /**
     * Exercises in university course notes of 2001, 2002 and 2004 and in an architectural detailing text (inputs read, answers computed
     * independently): length in, range of temperature °F, other movement in, tolerance in, class, width in.
     */
    @Test
    void publishedExercisesAreReproduced() throws UnusableInput {
        for (String[] row : Run.table("""
            240 | 95  | 0.173  | 0.125  | 50 | 0.635
            300 | 100 | 0.06   | 0.125  | 25 | 0.797
            144 | 90  | 0.1538 | 0.1875 | 50 | 0.588
            288 | 180 | 0.06   | 0.125  | 25 | 1.111
            288 | 180 | 0.06   | 0.125  | 50 | 0.618
            """)) {
            int hot = -20 + Integer.parseInt(row[1]);
            Worksheet sheet = Run.of("sealant_joint", "length=" + row[0] + " in", "expansion=3.6 e-6/°F", "cold=-20 °F", "hot=" + hot
                + " °F", "install_cold=-20 °F", "install_hot=" + hot + " °F", "growth=0%", "shrinkage=0%", "other=" + row[2] + " in",
                "tolerance=" + row[3] + " in", "capability=" + row[4]);
            assertEquals(Double.parseDouble(row[5]), Run.result(sheet, "width.computed", Unit.IN), 0.001, String.join(" ", row));
        }
    }

    /** An article on movement joints (read): strain 0.0009, a 3/8 in joint of class 50 takes 208.3 in of wall, 17 ft 4 in. */
    @Test
    void theLongestWallForAChosenWidthIsThePublishedOne() throws UnusableInput {
        Worksheet sheet = Run.of("sealant_joint", "length=10 ft", "expansion=6 e-6/°F", "cold=-10 °F", "hot=140 °F", "install_cold=140 °F",
            "install_hot=140 °F", "shrinkage=0%", "tolerance=0 in", "width=3/8 in");
        assertEquals(208.3, Run.result(sheet, "length.largest", Unit.IN), 0.1);
    }

    /**
     * A note on structural glazing (read): 240 in of aluminium at 23 millionths per °C over 80 °C moves 0.4416 in; per °F it would be
     * wrong.
     */
    @Test
    void aluminiumsCoefficientIsPerDegreeCelsius() throws UnusableInput {
        String[] rest = {"length=240 in", "cold=-20 °C", "hot=61 °C", "install_cold=60 °C", "install_hot=60 °C", "shrinkage=0%"};
        Worksheet celsius = Run.of("sealant_joint", "expansion=23 e-6/°C", rest[0], rest[1], rest[2], rest[3], rest[4], rest[5]);
        Worksheet fahrenheit = Run.of("sealant_joint", "expansion=12.77778 e-6/°F", rest[0], rest[1], rest[2], rest[3], rest[4], rest[5]);
        assertEquals(0.4416, Run.result(celsius, "opening", Unit.IN), 0.0005);
        assertEquals(0.4416, Run.result(fahrenheit, "opening", Unit.IN), 0.0005);
    }

    /** Volume of a 10.1 fl oz cartridge over the section, computed independently; 24.3 ft at 1/4 by 1/4 in agrees with suppliers' pages. */
    @Test
    void aCartridgeFillsWhatItsVolumeAllows() {
        double cartridge = Unit.FLOZ.toSi(10.1);
        double gallon = Unit.GAL.toSi(1);
        for (String[] row : Run.table("""
            .25  | .25  | 24.3 | 308
            .375 | .25  | 16.2 | 205
            .5   | .25  | 12.15 | 154
            .5   | .375 | 8.1  | 103
            .75  | .375 | 5.4  | 68
            1    | .5   | 3.0  | 38
            """)) {
            double width = Unit.IN.toSi(Double.parseDouble(row[0]));
            double depth = Unit.IN.toSi(Double.parseDouble(row[1]));
            assertEquals(Double.parseDouble(row[2]), Unit.FT.fromSi(SealantJoint.filled(cartridge, width, depth)), 0.05,
                String.join(" ", row));
            assertEquals(Double.parseDouble(row[3]), Unit.FT.fromSi(SealantJoint.filled(gallon, width, depth)), 0.6, String.join(" ", row));
        }
    }

    /** An architectural detailing text (read): half the width, from 1/4 to 1/2 in. */
    @Test
    void theDepthIsHalfTheWidthWithinItsLimits() {
        assertEquals(0.25, Unit.IN.fromSi(SealantJoint.depth(Unit.IN.toSi(0.25))), 1e-9);
        assertEquals(0.375, Unit.IN.fromSi(SealantJoint.depth(Unit.IN.toSi(0.75))), 1e-9);
        assertEquals(0.5, Unit.IN.fromSi(SealantJoint.depth(Unit.IN.toSi(1.5))), 1e-9);
    }

    /** Common practice: closed-cell rod a quarter to a third over the joint, in the sizes sold. */
    @Test
    void theRodIsTheNextSizeSoldThatIsAQuarterOver() {
        assertEquals(0.375, rod(0.25), 1e-9);
        assertEquals(0.625, rod(0.5), 1e-9);
        assertEquals(1.25, rod(1), 1e-9);
        assertTrue(SealantJoint.rod(Unit.IN.toSi(5)).isEmpty());
    }

    @Test
    void aJointIsNeverNarrowerThanAQuarterInch() throws UnusableInput {
        Worksheet sheet = Run.of("sealant_joint", "length=1 ft", "tolerance=0 in");
        assertTrue(Run.result(sheet, "width.computed", Unit.IN) < 0.25);
        assertEquals(0.25, Run.result(sheet, "width", Unit.IN), 1e-9);
    }

    @Test
    void aClassThatOpensTwiceAsFarAsItClosesIsTakenEachWay() throws UnusableInput {
        String[] opens = {"length=20 ft", "shrinkage=0.09%", "tolerance=0 in", "install_cold=140 °F", "install_hot=140 °F"};
        double fifty = Run.result(Run.of("sealant_joint", opens[0], opens[1], opens[2], opens[3], opens[4]), "width.computed", Unit.IN);
        double hundred = Run.result(Run.of("sealant_joint", opens[0], opens[1], opens[2], opens[3], opens[4], "capability=100/50"),
            "width.computed", Unit.IN);
        assertEquals(fifty / 2, hundred, 1e-9);
    }

    @Test
    void theWidthMovesTheWayPhysicsSays() throws UnusableInput {
        double base = width();
        assertTrue(width("length=25 ft") > base);
        assertTrue(width("expansion=8 e-6/°F") > base);
        assertTrue(width("cold=-20 °F") > base);
        assertTrue(width("install_hot=100 °F") > base);
        assertTrue(width("shrinkage=0.1%") > base);
        assertTrue(width("tolerance=1/4 in") > base);
        assertTrue(width("capability=25") > base);
        assertTrue(width("shrinkage=0.04%") < base);
    }

    @Test
    void aChosenWidthIsJudgedAndCartridgesAreCounted() throws UnusableInput {
        Worksheet narrow = Run.of("sealant_joint", "length=20 ft", "width=3/8 in", "joint_length=100 ft");
        assertTrue(narrow.margin().getAsDouble() < 1);
        assertTrue(narrow.warnings().stream().anyMatch(warning -> warning.contains("is less than the")));
        // 3/8 by 1/4 in: 16.2 ft a cartridge; 110 ft with waste need 6.8
        assertEquals(7, Run.result(narrow, "cartridges", Unit.ONE), 1e-9);
        Worksheet wide = Run.of("sealant_joint", "length=20 ft", "width=1-1/4 in");
        assertTrue(wide.margin().getAsDouble() > 1);
        assertFalse(wide.warnings().stream().anyMatch(warning -> warning.contains("is less than the")));
        assertTrue(wide.warnings().stream().anyMatch(warning -> warning.contains("wider than 1 in")));
        assertTrue(Run.of("sealant_joint", "length=20 ft").margin().isEmpty());
    }

    @Test
    void temperaturesThatCannotBeAreRefused() {
        assertThrows(UnusableInput.class, () -> Run.of("sealant_joint", "length=20 ft", "cold=100 °F", "hot=90 °F"));
        assertThrows(UnusableInput.class, () -> Run.of("sealant_joint", "length=20 ft", "install_cold=80 °F", "install_hot=60 °F"));
    }

    @Test
    void bothSystemsOfUnitsGiveTheSame() throws UnusableInput {
        Worksheet inch = Run.of("sealant_joint", "length=20 ft", "expansion=5.4 e-6/°F", "cold=14 °F", "hot=122 °F", "install_cold=41 °F",
            "install_hot=86 °F");
        Worksheet metric = Run.of("sealant_joint", "length=6.096 m", "expansion=9.72 e-6/°C", "cold=-10 °C", "hot=50 °C",
            "install_cold=5 °C", "install_hot=30 °C");
        assertEquals(inch.results().get("width.computed").si(), metric.results().get("width.computed").si(), 1e-9);
        assertEquals(Unit.MM, metric.results().get("width").unit());
    }

    private static double width(String... pairs) throws UnusableInput {
        var typed = Run.typed("length=20 ft");
        typed.putAll(Run.typed(pairs));
        return Run.result(Worksheets.run("sealant_joint", typed, "typed"), "width.computed", Unit.IN);
    }

    private static double rod(double inches) {
        return Unit.IN.fromSi(SealantJoint.rod(Unit.IN.toSi(inches)).getAsDouble());
    }
}

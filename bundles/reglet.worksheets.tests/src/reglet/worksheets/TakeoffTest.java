package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class TakeoffTest {

    /** Suppliers' estimating guides (read): 0.75 ft² a foot of corner, another 0.5; 10 % waste. Arithmetic worked independently. */
    @Test
    void flatUnitsAndCornersAreTheWorkedOnes() throws UnusableInput {
        Worksheet sheet = Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 4", "outside_corners=20 ft");
        assertEquals(340, Run.result(sheet, "wall.net", Unit.FT2), 1e-9);
        assertEquals(325, Run.step(sheet, "Af", Unit.FT2), 1e-9);
        assertEquals(357.5, Run.result(sheet, "units.flat", Unit.FT2), 1e-9);
        assertEquals(22, Run.result(sheet, "units.corner", Unit.FT), 1e-9);
        Worksheet other = Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 4", "outside_corners=20 ft",
            "corner_width=0.5 ft");
        assertEquals(363, Run.result(other, "units.flat", Unit.FT2), 1e-9);
    }

    /** 100 ft² at 1/2 in is 4.17 ft³, at 0.66 ft³ (from memory) a bag 6.31, so 7 bags before waste. */
    @Test
    void bagsOfMortarAreTheWorkedOnes() throws UnusableInput {
        Worksheet sheet = Run.of("takeoff", "areas=10 ft x 10 ft", "mortar_waste=0%");
        assertEquals(4.17, Run.step(sheet, "V", Unit.FT3), 0.005);
        assertEquals(7, Run.result(sheet, "bags.scratch", Unit.ONE), 0);
        assertEquals(7, Run.result(sheet, "bags.bed", Unit.ONE), 0);
        assertEquals(0, Run.result(sheet, "bags.pointing", Unit.ONE), 0);
        Worksheet inch = Run.of("takeoff", "areas=10 ft x 10 ft", "mortar_waste=0%", "scratch=1 in");
        assertEquals(13, Run.result(inch, "bags.scratch", Unit.ONE), 0);
    }

    /** Factors worked independently: 36/34 a ply of barrier, 27/26 × 96/95 of lath; 1.29 fasteners a square foot at 16 by 7 in. */
    @Test
    void lapsAndFastenersAreTheWorkedFactors() throws UnusableInput {
        Worksheet sheet = Run.of("takeoff", "areas=100 ft x 18 ft", "sheet_waste=0%", "fastener_spacing=7 in");
        assertEquals(2 * 1.059, Run.result(sheet, "barrier", Unit.FT2) / 1800, 0.001);
        assertEquals(1.049, Run.step(sheet, "nl", Unit.ONE) * 18 / 1800, 0.0005);
        assertEquals(1.29, Run.result(sheet, "fasteners", Unit.ONE) / 1800, 0.005);
        Worksheet one = Run.of("takeoff", "areas=100 ft x 18 ft", "sheet_waste=0%", "plies=1");
        assertEquals(1.059, Run.result(one, "barrier", Unit.FT2) / 1800, 0.001);
    }

    /** A 10.1 fl oz cartridge fills 12.15 ft of 1/2 by 1/4 in (computed independently): 100 ft and a tenth more need 9.05. */
    @Test
    void lengthsAndCartridgesAreCounted() throws UnusableInput {
        Worksheet sheet = Run.of("takeoff", "areas=40 ft x 10 ft", "base=40 ft", "beads=60 ft", "joints=100 ft");
        assertEquals(42, Run.result(sheet, "screed", Unit.FT), 1e-9);
        assertEquals(63, Run.result(sheet, "beads", Unit.FT), 1e-9);
        assertEquals(105, Run.result(sheet, "rod", Unit.FT), 1e-9);
        assertEquals(10, Run.result(sheet, "cartridges", Unit.ONE), 0);
    }

    /** The second way of counting: the elevation is walked inch by inch, and fasteners, units and sheets are laid one by one. */
    @Test
    void countingInchByInchGivesTheSame() throws UnusableInput {
        Worksheet sheet = Run.of("takeoff", "areas=40 ft x 9 ft; 8 ft x 6 ft", "openings=4 ft x 5 ft x 2; 8 ft x 7 ft", "unit_waste=0%",
            "sheet_waste=0%", "mortar_waste=0%", "stud_spacing=16 in", "fastener_spacing=6 in", "pointing_width=1/2 in",
            "unit_length=11-1/2 in", "unit_height=5-1/2 in", "lath_lap=0 in");
        boolean[][] main = wall(480, 108);
        cut(main, 48, 24, 48, 60);
        cut(main, 192, 24, 48, 60);
        cut(main, 288, 0, 96, 84);
        boolean[][] side = wall(96, 72);
        int inches = count(main, 1, 1) + count(side, 1, 1);
        assertEquals(inches / 144.0, Run.result(sheet, "wall.net", Unit.FT2), 1e-9);

        int fasteners = count(main, 16, 6) + count(side, 16, 6);
        assertEquals(fasteners, Run.result(sheet, "fasteners", Unit.ONE), 0);

        // Joints between units of 12 by 6 in modules: the inches of the last half inch in each module, both ways, laid on a half-inch grid.
        int joint = 0;
        for (int x = 0; x < 24; x++) {
            for (int y = 0; y < 12; y++) {
                joint += x == 23 || y == 11 ? 1 : 0;
            }
        }
        assertEquals(100.0 * joint / (24 * 12), Run.step(sheet, "j", Unit.PERCENT), 1e-6);
        double bags = inches / 144.0 * joint / (24 * 12) * 0.75 / 12 / 0.66;
        assertEquals(Math.ceil(bags), Run.result(sheet, "bags.pointing", Unit.ONE), 0);
    }

    /** Sheets laid course by course over a wall that courses and sheets divide evenly: each adds its net width and length. */
    @Test
    void layingLathSheetBySheetGivesTheSame() throws UnusableInput {
        double width = 10 * 95;
        double height = 8 * 26;
        int sheets = 0;
        for (double up = 0; up < height; up += 27 - 1) {
            for (double along = 0; along < width; along += 96 - 1) {
                sheets++;
            }
        }
        Worksheet sheet = Run.of("takeoff", "areas=" + width + " in x " + height + " in", "sheet_waste=0%");
        assertEquals(sheets, Run.result(sheet, "lath", Unit.ONE), 0);
        int rolls = 0;
        for (double up = 0; up < 34 * 6; up += 34) {
            rolls++;
        }
        Worksheet barrier = Run.of("takeoff", "areas=100 ft x " + 34 * 6 + " in", "sheet_waste=0%", "plies=1");
        assertEquals(rolls * 3 * 100, Run.result(barrier, "barrier", Unit.FT2), 1e-6);
    }

    @Test
    void barrierAndLathGoRoundCornersButUnitsAndMatDoNot() throws UnusableInput {
        Worksheet plain = Run.of("takeoff", "areas=40 ft x 9 ft");
        Worksheet corner = Run.of("takeoff", "areas=40 ft x 9 ft", "inside_corners=9 ft");
        assertEquals(9 * 16 / 12.0, Run.step(corner, "Aw", Unit.FT2) - Run.step(plain, "Aw", Unit.FT2), 1e-9);
        assertEquals(Run.result(plain, "mat", Unit.FT2), Run.result(corner, "mat", Unit.FT2), 1e-9);
        assertEquals(Run.result(plain, "units.flat", Unit.FT2), Run.result(corner, "units.flat", Unit.FT2), 1e-9);
    }

    @Test
    void moreWallMoreWasteAndFewerOpeningsNeverNeedLess() throws UnusableInput {
        Worksheet base = Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 4");
        for (Worksheet more : new Worksheet[] {Run.of("takeoff", "areas=40 ft x 10 ft; 1 ft x 1 ft", "openings=3 ft x 5 ft x 4"),
            Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 3"),
            Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 4", "unit_waste=15%", "sheet_waste=15%",
            "mortar_waste=15%")}) {
            base.results().forEach((key, amount) -> assertTrue(more.results().get(key).si() >= amount.si(), key));
            assertTrue(more.results().get("units.flat").si() > base.results().get("units.flat").si());
        }
    }

    @Test
    void wallsWithoutWallAndTooManyCornersAreRefused() {
        assertThrows(UnusableInput.class, () -> Run.of("takeoff", "areas=10 ft x 10 ft", "openings=10 ft x 10 ft"));
        assertThrows(UnusableInput.class, () -> Run.of("takeoff", "areas=10 ft x 10 ft", "outside_corners=200 ft"));
        UnusableInput unreadable = assertThrows(UnusableInput.class, () -> Run.of("takeoff", "areas=10 ft by 10 ft"));
        assertTrue(unreadable.getMessage().contains("width x height"), unreadable.getMessage());
        assertThrows(UnusableInput.class, () -> Run.of("takeoff", "areas=10 ft x 10 ft x 1.5"));
        assertThrows(UnusableInput.class, () -> Run.of("takeoff", "areas=-10 ft x 10 ft"));
    }

    @Test
    void aWallMeasuredWholeNeedsNoStretches() throws UnusableInput {
        Worksheet whole = Run.of("takeoff", "net_area=340 ft2", "outside_corners=20 ft");
        Worksheet stretches = Run.of("takeoff", "areas=40 ft x 10 ft", "openings=3 ft x 5 ft x 4", "outside_corners=20 ft");
        stretches.results().forEach((key, amount) -> {
            if (!key.equals("wall.gross")) {
                assertEquals(amount.si(), whole.results().get(key).si(), 1e-9, key);
            }
        });
        UnusableInput neither = assertThrows(UnusableInput.class, () -> Run.of("takeoff", "base=40 ft"));
        assertTrue(neither.getMessage().contains("areas are missing; the stretches of wall, or net_area"), neither.getMessage());
    }

    @Test
    void aWallWithoutAMatOrdersNone() throws UnusableInput {
        assertTrue(Run.of("takeoff", "net_area=340 ft2").results().containsKey("mat"));
        assertTrue(!Run.of("takeoff", "net_area=340 ft2", "mat=no").results().containsKey("mat"));
    }

    @Test
    void bothSystemsOfUnitsGiveTheSame() throws UnusableInput {
        Worksheet inch = Run.of("takeoff", "areas=40 ft x 10 ft", "base=40 ft");
        Worksheet metric = Run.of("takeoff", "areas=12.192 m x 3.048 m", "base=12.192 m");
        inch.results().forEach((key, amount) -> assertEquals(amount.si(), metric.results().get(key).si(), 1e-6, key));
        assertEquals(Unit.M2, metric.results().get("units.flat").unit());
    }

    private static boolean[][] wall(int width, int height) {
        boolean[][] cells = new boolean[width][height];
        for (boolean[] column : cells) {
            java.util.Arrays.fill(column, true);
        }
        return cells;
    }

    private static void cut(boolean[][] cells, int x, int y, int width, int height) {
        for (int i = x; i < x + width; i++) {
            java.util.Arrays.fill(cells[i], y, y + height, false);
        }
    }

    /** Cells of wall that are met when one goes on by so many inches each way. */
    private static int count(boolean[][] cells, int across, int up) {
        int met = 0;
        for (int x = across / 2; x < cells.length; x += across) {
            for (int y = up / 2; y < cells[x].length; y += up) {
                met += cells[x][y] ? 1 : 0;
            }
        }
        return met;
    }
}

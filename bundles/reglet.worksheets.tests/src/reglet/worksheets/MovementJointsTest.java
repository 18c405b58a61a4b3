package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class MovementJointsTest {

    /**
     * Movements published for one length of wall; a joint between two panels of that length moves as much. An article on movement joints
     * (read): 208.3 in at 0.0009 moves 0.1875 in. A detailing text (read): 288 in of brick over 180 °F. A glazing note (read): 240 in of
     * aluminium over 80 °C moves 0.4416 in.
     */
    @Test
    void aJointBetweenEqualPanelsMovesAsPublishedForOneLength() throws UnusableInput {
        assertEquals(0.1875, moves("208.3", "6 e-6/°F", "cold=-10 °F", "hot=140 °F"), 0.0002);
        assertEquals(288 * 3.6e-6 * 180, moves("288", "3.6 e-6/°F", "cold=-40 °F", "hot=140 °F"), 0.0002);
        assertEquals(0.4416, moves("240", "23 e-6/°C", "cold=-20 °C", "hot=60 °C"), 0.0005);
    }

    @Test
    void panelsFillTheElevationAndEachIsListed() throws UnusableInput {
        Worksheet sheet = Run.of("movement_joints", "width=40 ft", "height=22 ft", "vertical=28 ft designer's layout; 12 ft backing joint",
            "horizontal=10 ft floor line");
        assertEquals(6, Run.result(sheet, "panels", Unit.ONE), 0);
        assertEquals(2, Run.result(sheet, "joints.vertical", Unit.ONE), 0);
        assertEquals(1, Run.result(sheet, "joints.horizontal", Unit.ONE), 0);
        assertEquals(2 * 22 + 40, Run.result(sheet, "joints.length", Unit.FT), 1e-9);
        assertEquals(16, Run.result(sheet, "panel.widest", Unit.FT), 1e-9);
        assertEquals(12, Run.result(sheet, "panel.tallest", Unit.FT), 1e-9);
        assertEquals(192, Run.result(sheet, "panel.largest", Unit.FT2), 1e-9);
        double area = sheet.steps().stream().filter(step -> step.symbol().startsWith("P")).mapToDouble(step -> step.value().si()).sum();
        assertEquals(40 * 22, Unit.FT2.fromSi(area), 1e-9);
        assertTrue(sheet.steps().stream().anyMatch(step -> step.label().equals("vertical joint at 12 ft: backing joint")));
    }

    @Test
    void linesAtOnePlaceAreOneJointThatTakesBothMovements() throws UnusableInput {
        Worksheet sheet = Run.of("movement_joints", "width=20 ft", "height=20 ft",
            "horizontal=10 ft floor line; 120.25 in deflection track", "deflection=1/2 in", "floor_movement=1/4 in", "shrinkage=0%",
            "expansion=6 e-6/°F", "cold=40 °F", "hot=140 °F");
        assertEquals(1, Run.result(sheet, "joints.horizontal", Unit.ONE), 0);
        assertEquals(120 * 6e-6 * 100 + 0.75, Run.result(sheet, "movement.horizontal", Unit.IN), 1e-6);
        assertEquals(0, Run.result(sheet, "movement.vertical", Unit.IN), 0);
    }

    @Test
    void aLongPanelIsHeldAgainstTheDesignersLimitOnly() throws UnusableInput {
        Worksheet limited = Run.of("movement_joints", "width=40 ft", "height=10 ft", "longest=20 ft");
        assertEquals(0.5, limited.margin().getAsDouble(), 1e-9);
        assertTrue(limited.warnings().stream().anyMatch(warning -> warning.contains("another joint is due")));
        // 40 by 10 ft is far beyond finish plaster's 144 ft² and 18 ft, which are no rules for a veneer.
        Worksheet free = Run.of("movement_joints", "width=40 ft", "height=10 ft");
        assertTrue(free.margin().isEmpty());
        assertFalse(free.warnings().stream().anyMatch(warning -> warning.contains("another joint is due")));
    }

    @Test
    void structureWithoutItsMovementAndSliversAreNoticed() throws UnusableInput {
        Worksheet sheet = Run.of("movement_joints", "width=20 ft", "height=20 ft", "horizontal=10 ft floor line; 10.5 ft deflection track");
        assertTrue(sheet.warnings().stream().anyMatch(warning -> warning.startsWith("A deflection track")));
        assertTrue(sheet.warnings().stream().anyMatch(warning -> warning.startsWith("A floor line")));
        assertTrue(sheet.warnings().stream().anyMatch(warning -> warning.startsWith("A strip")));
        assertTrue(Run.of("movement_joints", "width=20 ft", "height=20 ft").warnings().stream().anyMatch(warning
            -> warning.startsWith("No joint")));
    }

    @Test
    void jointsOutsideTheElevationAndUnknownReasonsAreRefused() {
        UnusableInput outside = assertThrows(UnusableInput.class, () -> Run.of("movement_joints", "width=20 ft", "height=10 ft",
            "vertical=20 ft designer's layout"));
        assertTrue(outside.getMessage().contains("vertical at 20 ft isn't inside the elevation"), outside.getMessage());
        UnusableInput reason = assertThrows(UnusableInput.class, () -> Run.of("movement_joints", "width=20 ft", "height=10 ft",
            "vertical=9 ft because"));
        assertTrue(reason.getMessage().contains("substrate change"), reason.getMessage());
    }

    @Test
    void movementGrowsWithPanelsTemperatureAndShrinkage() throws UnusableInput {
        double base = moves("200", "6 e-6/°F", "cold=0 °F", "hot=140 °F");
        assertTrue(moves("210", "6 e-6/°F", "cold=0 °F", "hot=140 °F") > base);
        assertTrue(moves("200", "6 e-6/°F", "cold=-10 °F", "hot=140 °F") > base);
        assertTrue(moves("200", "7 e-6/°F", "cold=0 °F", "hot=140 °F") > base);
    }

    @Test
    void bothSystemsOfUnitsGiveTheSame() throws UnusableInput {
        Worksheet inch = Run.of("movement_joints", "width=40 ft", "height=20 ft", "vertical=10 ft designer's layout");
        Worksheet metric = Run.of("movement_joints", "width=12.192 m", "height=6.096 m", "vertical=3.048 m designer's layout");
        inch.results().forEach((key, amount) -> assertEquals(amount.si(), metric.results().get(key).si(), 1e-9, key));
        assertEquals(Unit.M2, metric.results().get("panel.largest").unit());
    }

    /** Two panels of a length in inches, no shrinkage; the movement of the joint between them, in. */
    private static double moves(String inches, String expansion, String cold, String hot) throws UnusableInput {
        Worksheet sheet = Run.of("movement_joints", "width=" + 2 * Double.parseDouble(inches) + " in", "height=10 ft", "vertical=" + inches
            + " in designer's layout", "expansion=" + expansion, cold, hot, "shrinkage=0%");
        return Run.result(sheet, "movement.vertical", Unit.IN);
    }
}

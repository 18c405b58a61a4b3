package reglet.details;

import java.util.List;

import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;

/**
 * The ledge of a screed or bead on which the scratch coat stops.
 *
 * @param top  its upper face, with a step down at the nose
 * @param low  its lowest point
 * @param hole middle of the weep hole
 */
record Ledge(Edge top, double low, Point hole) {

    /** Width in millimetres at which weep holes are drawn; the pack states none. */
    private static final double HOLE = 5;

    /**
     * Draws it.
     *
     * @param from inner end
     * @param nose outer end
     * @param high height of the upper face at the inner end
     * @param drop fall to the nose
     * @param holes whether it has weep holes under the cavity
     */
    static Ledge draw(Sheet sheet, Stack stack, String component, double from, double nose, double high, double drop, boolean holes) {
        double thick = Stack.THIN;
        double low = high - drop - thick;
        double wet = Math.min(stack.cavity(), nose);
        double start = Math.max(from, Math.min(wet, stack.drain()));
        double room = Math.max(0, wet - start);
        double width = room > 0 ? Math.min(HOLE, room) : HOLE;
        double middle = room > 0 ? start + room / 2 : start + HOLE / 2;
        Edge slope = new Edge(List.of(new Point(from, high), new Point(nose, high - drop)));
        sheet.thin(component);
        if (holes) {
            band(sheet, component, slope, from, middle - width / 2);
            band(sheet, component, slope, middle + width / 2, nose);
        } else {
            band(sheet, component, slope, from, nose);
        }
        return new Ledge(new Edge(List.of(new Point(from, high), new Point(nose, high - drop), new Point(nose, low))), low,
            new Point(middle, slope.at(middle, true) - thick / 2));
    }

    private static void band(Sheet sheet, String component, Edge slope, double left, double right) {
        if (right - left > 1e-6) {
            double a = slope.at(left, true);
            double b = slope.at(right, false);
            sheet.area(component, Hatch.METAL, List.of(new Point(left, a - Stack.THIN), new Point(right, b - Stack.THIN),
                new Point(right, b), new Point(left, a)));
        }
    }
}

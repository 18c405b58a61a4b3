package reglet.details;

import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;

/** Members of the framing that are cut, drawn on the framing's layer: crossed for wood, a channel for steel. */
final class Framing {
    /** Thickness in millimetres of sawn plates and studs, 2x lumber: common practice. */
    static final double PLATE = 38;

    private Framing() {
    }

    static void member(Sheet sheet, Stack stack, double low, double high) {
        double depth = stack.framing();
        if (sheet.facts.is("framing", "material", "steel")) {
            double in = Stack.THIN;
            sheet.line("framing", Pen.HEAVY, Stroke.SOLID, in, high - in, in, low + in, depth - in, low + in, depth - in, high - in);
            return;
        }
        sheet.line("framing", Pen.THIN, Stroke.SOLID, 0, low, depth, low);
        sheet.line("framing", Pen.THIN, Stroke.SOLID, 0, high, depth, high);
        sheet.line("framing", Pen.FINE, Stroke.SOLID, 0, low, depth, high);
        sheet.line("framing", Pen.FINE, Stroke.SOLID, 0, high, depth, low);
    }
}

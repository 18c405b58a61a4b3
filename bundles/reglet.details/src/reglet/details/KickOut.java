package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** A sloping roof whose eave ends against the wall, seen from outside: x runs along the wall down the roof, 0 is the eave. */
final class KickOut {
    private static final double UP = -600;
    private static final double DOWN = 260;
    /** Fall of the roof that is drawn, 6 in 12; the job states none. */
    private static final double FALL = 0.5;
    private static final double ROOF = 40;
    private static final double THROAT = 100;

    private KickOut() {
    }

    static Drawing of(Facts facts, Stack stack, Meeting base) {
        Sheet sheet = new Sheet(facts, base.id() + ".kick-out", "Roof to wall at the eave", facts.scale(8, 10));
        double clear = facts.mm(base, "clearance", 0);
        double upleg = facts.mm("metal_flashing", "upleg", clear);
        boolean kicked = facts.yes(base, "kick_out");
        double top = roof(UP) + Math.max(clear, upleg) + 120;
        double shown = Math.min(clear, upleg);

        sheet.area("", Hatch.PLYWOOD, List.of(new Point(UP, roof(UP) - ROOF), new Point(0, roof(0) - ROOF), new Point(0, roof(0)),
            new Point(UP, roof(UP))));
        if (facts.yes(base, "flashed")) {
            sheet.area("metal_flashing", Hatch.METAL, List.of(new Point(UP, roof(UP)), new Point(0, roof(0)), new Point(0, roof(0) + shown),
                new Point(UP, roof(UP) + shown)));
            sheet.tip("metal_flashing", -THROAT, roof(-THROAT) + shown / 2);
            sheet.line("metal_flashing", Pen.THIN, Stroke.HIDDEN, UP, roof(UP) + upleg, 0, roof(0) + upleg);
        }
        double edge = kicked ? clear + 10 : clear;
        sheet.area("veneer", Hatch.STONE, List.of(new Point(UP, roof(UP) + clear), new Point(0, roof(0) + edge), new Point(THROAT, edge),
            new Point(THROAT, -THROAT), new Point(DOWN, -THROAT), new Point(DOWN, top), new Point(UP, top)));
        if (kicked) {
            sheet.thin("metal_flashing");
            sheet.area("metal_flashing", Hatch.METAL, List.of(new Point(0, 0), new Point(THROAT - 12, -THROAT * 0.35),
                new Point(THROAT - 12, shown), new Point(0, shown)));
            sheet.water(UP + 40, roof(UP + 40) + 6, -10, roof(-10) + 6, THROAT - 20, -THROAT * 0.35 - 8, THROAT - 20, -THROAT * 0.8);
            sheet.note("The kick-out is one soldered or moulded piece, set before the barrier, which laps over it.");
        } else {
            sheet.water(UP + 40, roof(UP + 40) + 6, THROAT - 4, -30, THROAT + 12, -70);
            sheet.mark("metal_flashing", THROAT, -40, "no kick-out turns the water out at the eave, so it runs in behind the cladding.");
        }
        sheet.rect("", Hatch.NONE, 4, -THROAT - ROOF, THROAT - 4, -THROAT);
        sheet.label(THROAT / 2, -THROAT - ROOF - sheet.paper(4), "gutter");
        sheet.label(UP / 2, roof(UP / 2) - ROOF - sheet.paper(6), "roof");
        sheet.tip("veneer", DOWN - 40, top / 2);
        sheet.upright("veneer", UP, roof(UP), roof(UP) + clear, -6, facts.text(base, "clearance"));
        sheet.upright("metal_flashing", UP, roof(UP), roof(UP) + upleg, -14, facts.text("metal_flashing", "upleg"));
        sheet.note("The roof is drawn with a fall of 6 in 12; the job states none. The dashed line is the top of the flashing "
            + "behind the cladding.");
        return sheet.done(new Stack(stack.layers(), List.of()));
    }

    private static double roof(double x) {
        return -x * FALL;
    }
}

package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Point;
import reglet.model.Meeting;

/** Jamb of an opening, in plan. */
final class Jamb {
    private Jamb() {
    }

    static Drawing of(Facts facts, Stack stack, Meeting opening) {
        OpeningFrame frame = OpeningFrame.of(facts, stack, opening);
        Sheet sheet = frame.sheet("jamb", "jamb, plan");
        double end = frame.joint() - OpeningFrame.SHIM;
        double lap = facts.mm("flexible_flashing", "lap", 0);
        double nose = frame.nose();
        double along = Math.max(lap + sheet.paper(10), sheet.notes(stack, 3));

        Column column = Column.plan(sheet, stack);
        if (lap > 0) {
            column.letIn("flexible_flashing", stack.backing(), 0, lap);
            sheet.thin("flexible_flashing", frame.inside(), -Stack.THIN, stack.backing() + Stack.THIN, 0);
            sheet.tip("flexible_flashing", stack.backing() + Stack.THIN / 2, 12);
        }
        double from = Math.max(stack.cavity(), column.stepped(stack.drain(), end + Stack.THIN / 2));
        sheet.thin("casing_bead", from, end, nose, end + Stack.THIN);
        Edge stepped = new Edge(List.of(new Point(nose, end + Stack.THIN), new Point(nose, end)));
        column.draw(layer -> switch (layer.component()) {
            case "framing", "sheathing" -> Edge.level(0);
            case "inner_ply", "insulation", "outer_ply" -> Edge.level(Math.max(0, end));
            case "mat" -> Edge.level(end);
            case "veneer" -> Edge.level(layer.inside() < nose ? end + Stack.THIN : end);
            default -> stepped;
        }, layer -> Edge.level(along));
        Framing.member(sheet, stack, 0, Framing.PLATE);
        Framing.member(sheet, stack, Framing.PLATE, 2 * Framing.PLATE);
        frame.draw(sheet, -OpeningFrame.SHIM - OpeningFrame.FRAME, -OpeningFrame.SHIM);
        frame.seal(sheet, -OpeningFrame.SHIM, end);
        column.fastener(Framing.PLATE * 1.5);
        sheet.tip("casing_bead", nose - 2, end + Stack.THIN / 2);
        column.tips(2 * Framing.PLATE, along - 6);
        if (facts.yes("casing_bead", "side_weeps")) {
            sheet.mark("casing_bead", nose, end, "the beads at the jambs have weep holes, and wind drives water in through them.");
        }

        double left = -sheet.paper(3);
        sheet.upright("sealant", left, -OpeningFrame.SHIM, end, -6, Lengths.named("joint", facts.text("sealant", "width")));
        sheet.upright("flexible_flashing", left, 0, lap, -12, Lengths.named("lap", facts.text("flexible_flashing", "lap")));
        sheet.across("", -OpeningFrame.SHIM - OpeningFrame.FRAME, stack.backing(), frame.outside(), -1, facts.text(opening, "projection"));
        Dims.buildUp(sheet, stack, along);
        sheet.cut(-10, along, stack.face() + 10, along);
        return sheet.done(stack);
    }
}

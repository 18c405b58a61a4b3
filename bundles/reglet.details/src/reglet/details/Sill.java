package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;
import reglet.model.Meeting;

/** Sill of an opening: what the frame lets in runs over the rough sill into the cavity. */
final class Sill {
    private static final double DAM = 12;

    private Sill() {
    }

    static Drawing of(Facts facts, Stack stack, Meeting opening) {
        OpeningFrame frame = OpeningFrame.of(facts, stack, opening);
        Sheet sheet = frame.sheet("sill", "sill");
        String way = facts.text(opening, "sill");
        boolean flashed = !way.isEmpty() && !way.equals("none");
        boolean dam = way.endsWith("with back dam");
        double top = OpeningFrame.SHIM - frame.joint();
        double lap = facts.mm("flexible_flashing", "lap", 0);
        double nose = frame.nose();
        double inner = frame.inside() - 6;
        double below = -Math.max(lap + sheet.paper(10), sheet.notes(stack, 3));

        Column column = Column.section(sheet, stack);
        if (flashed) {
            column.letIn("flexible_flashing", stack.drain(), -lap, 0);
            sheet.thin("flexible_flashing", inner, 0, column.stepped(stack.drain(), -1e-3), Stack.THIN);
            sheet.tip("flexible_flashing", column.stepped(stack.drain(), -6) - Stack.THIN / 2, -6);
        } else {
            sheet.mark("flexible_flashing", stack.backing() - 8, 4, "nothing catches the water that the frame lets in.");
        }
        double height = facts.mm("flexible_flashing", "back_dam", 0);
        if (dam) {
            sheet.rect("", Hatch.WOOD, inner - DAM, 0, inner, height);
            sheet.thin("flexible_flashing", inner, Stack.THIN, inner + Stack.THIN, height);
        } else if (flashed) {
            sheet.mark("flexible_flashing", inner, 4, "the flashing has no back dam.");
        }
        double from = Math.max(stack.cavity(), column.stepped(stack.drain(), top - Stack.THIN / 2));
        sheet.thin("casing_bead", from, top - Stack.THIN, nose, top);
        Edge stepped = new Edge(List.of(new Point(nose, top - Stack.THIN), new Point(nose, top)));
        column.draw(layer -> Edge.level(below), layer -> switch (layer.component()) {
            case "framing", "sheathing", "inner_ply", "insulation", "outer_ply" -> Edge.level(0);
            case "mat" -> Edge.level(top);
            case "veneer" -> Edge.level(layer.inside() < nose ? top - Stack.THIN : top);
            default -> stepped;
        });
        Framing.member(sheet, stack, -Framing.PLATE, 0);
        frame.draw(sheet, OpeningFrame.SHIM, OpeningFrame.SHIM + OpeningFrame.FRAME);
        frame.seal(sheet, top, OpeningFrame.SHIM);
        column.fastener(below + sheet.paper(6));
        sheet.tip("casing_bead", nose - 2, top - Stack.THIN / 2);
        column.tips(below + 10, -Framing.PLATE / 2);
        if (flashed && stack.layer("mat").isPresent()) {
            double x = stack.cavity() - (stack.cavity() - stack.drain()) * 0.4;
            sheet.water(frame.inside() + 6, 4, stack.backing(), 4, x, top + 1, x, below + 12);
        }

        double left = -sheet.paper(3);
        sheet.upright("sealant", left, top, OpeningFrame.SHIM, -12, Lengths.named("joint", facts.text("sealant", "width")));
        sheet.upright("flexible_flashing", left, 0, height, -6,
            Lengths.named("dam", dam ? facts.text("flexible_flashing", "back_dam") : ""));
        sheet.upright("flexible_flashing", left, -lap, 0, -18, Lengths.named("lap", flashed ? facts.text("flexible_flashing", "lap") : ""));
        sheet.across("", OpeningFrame.SHIM + OpeningFrame.FRAME, stack.backing(), frame.outside(), 1, facts.text(opening, "projection"));
        Dims.buildUpBelow(sheet, stack, below);
        sheet.cut(-10, below, stack.face() + 10, below);
        return sheet.done(stack);
    }
}

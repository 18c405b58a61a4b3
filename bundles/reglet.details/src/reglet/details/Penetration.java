package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** A thing that passes through the cladding, in section; height 0 is its middle. */
final class Penetration {
    /** How far a mounting block reaches past the item, and item and block past the units, in millimetres: common practice. */
    private static final double SEAT = 40;
    private static final double PROUD = 6;
    private static final double STICKS_OUT = 50;

    private static final List<String> BARRIER = List.of("inner_ply", "insulation", "outer_ply");

    private Penetration() {
    }

    static Drawing of(Facts facts, Stack stack, Meeting item) {
        String kind = facts.text(item, "kind");
        Sheet sheet = new Sheet(facts, item.id(), "Penetration" + (kind.isEmpty() ? "" : ", " + kind), facts.scale(4, 5));
        double radius = facts.mm(item, "size", 50) / 2;
        boolean block = facts.yes(item, "block") && !facts.is("penetration_seal", "kind", "sealant joint at the units");
        boolean flashed = facts.yes(item, "flashed");
        boolean sealed = facts.yes(item, "sealed");
        double seat = block ? radius + SEAT : radius;
        double joint = facts.mm("penetration_seal", "width", facts.mm("sealant", "width", 10));
        double over = flashed ? Stack.THIN : 0;
        double lap = facts.mm("flexible_flashing", "lap", 0);
        double face = stack.face() + PROUD;
        double reach = seat + joint + Math.max(lap, sheet.notes(stack, 0) * 0.7) + sheet.paper(6);

        Column column = Column.section(sheet, stack);
        if (flashed) {
            column.letIn("flexible_flashing", stack.backing(), seat + Stack.THIN, seat + lap);
            sheet.thin("flexible_flashing", stack.backing(), seat, face, seat + Stack.THIN);
            sheet.tip("flexible_flashing", stack.backing() + Stack.THIN / 2, seat + lap * 0.6);
        } else {
            sheet.mark("flexible_flashing", stack.backing() + 4, seat + 6, "nothing ties the item to the barrier.");
        }
        column.draw(layer -> Edge.level(upper(layer, radius, seat, over, joint, false)), layer -> Edge.level(reach));
        double low = -seat - joint - sheet.paper(15);
        column.draw(layer -> Edge.level(low), layer -> Edge.level(-upper(layer, radius, seat, 0, joint, true)));
        if (block) {
            // the lower course of the barrier stands behind the block, the upper one laps over its flashing
            column.draw(layer -> BARRIER.contains(layer.component()) ? Edge.level(radius) : null, layer -> Edge.level(seat));
            Hatch hatch = facts.is("penetration_seal", "block", "cast stone") ? Hatch.CONCRETE : Hatch.NONE;
            sheet.rect("penetration_seal", hatch, stack.drain(), radius, face, seat);
            sheet.rect("penetration_seal", hatch, stack.drain(), -seat, face, -radius);
            sheet.tip("penetration_seal", face - 6, radius + SEAT / 4);
        }
        sheet.rect("", Hatch.NONE, 0, -radius, face + STICKS_OUT, radius);
        sheet.line("", Pen.FINE, Stroke.CENTRE, -10, 0, face + STICKS_OUT + 10, 0);
        sheet.label(stack.framing() / 2, sheet.paper(1), kind);
        if (sealed) {
            JointFill.draw(sheet, stack.cavity(), stack.face() - JointFill.BACK, seat + over, seat + over + joint);
            JointFill.draw(sheet, stack.cavity(), stack.face() - JointFill.BACK, -seat - joint, -seat);
        } else {
            sheet.mark("sealant", stack.face() + 4, seat + over + joint / 2, "the joint around the item is not sealed.");
        }
        if (facts.has("mat")) {
            sheet.note("Water in the cavity runs round the item at both sides; nothing at its sides closes the mat.");
        }
        column.tips(seat + joint + 8, reach - 10);

        sheet.upright("", -sheet.paper(3), -radius, radius, -6, facts.text(item, "size"));
        sheet.upright("sealant", -sheet.paper(3), -seat - joint, -seat, -6, facts.text("penetration_seal", "width"));
        sheet.upright("flexible_flashing", -sheet.paper(3), seat, seat + lap, -6, flashed ? facts.text("flexible_flashing", "lap") : "");
        Dims.buildUp(sheet, stack, reach);
        sheet.cut(-10, reach, stack.face() + 10, reach);
        sheet.cut(-10, low, stack.face() + 10, low);
        return sheet.done(stack);
    }

    /** How far from the middle a layer ends. */
    private static double upper(Layer layer, double radius, double seat, double over, double joint, boolean below) {
        return switch (layer.component()) {
            case "framing", "sheathing" -> radius;
            case "inner_ply", "insulation", "outer_ply" -> below ? radius : seat + over;
            case "mat" -> seat + over;
            default -> seat + over + joint;
        };
    }
}

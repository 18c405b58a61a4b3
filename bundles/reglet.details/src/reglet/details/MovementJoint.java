package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** A joint of the backing and what the cladding does there. Height 0 is the middle of the joint; cavity and barrier run through. */
final class MovementJoint {
    private static final double RIM = 240;

    private MovementJoint() {
    }

    /** Whether the cladding has a joint there that sealant fills. */
    static boolean sealed(Facts facts, Meeting joint) {
        return facts.is(joint, "cladding", "movement joint") && !facts.is("movement_joint", "kind", "joint accessory");
    }

    /** Width of the joint in the cladding. */
    static double width(Facts facts, Meeting joint) {
        return facts.mm(joint, "width", facts.mm("movement_joint", "width", 12));
    }

    static Drawing of(Facts facts, Stack stack, Meeting joint) {
        String kind = facts.text(joint, "kind");
        Sheet sheet = new Sheet(facts, joint.id(), "Movement joint" + (kind.isEmpty() ? "" : ", " + kind), facts.scale(4, 5));
        double half = width(facts, joint) / 2;
        double reach = Math.max(RIM / 2 + Framing.PLATE * 2, sheet.notes(stack, 4) / 2);
        double gap = facts.mm("sheathing", "edge_gap", 3) / 2;
        boolean jointed = facts.is(joint, "cladding", "movement joint");
        double lap = facts.mm("flexible_flashing", "lap", 0);

        Column column = Column.section(sheet, stack);
        if (facts.yes(joint, "flashed") && lap > 0) {
            column.letIn("flexible_flashing", stack.backing(), -lap, lap);
            sheet.tip("flexible_flashing", column.stepped(stack.backing(), 0) - Stack.THIN / 2, lap * 0.7);
        } else {
            sheet.mark("flexible_flashing", stack.backing() - 6, 0, "no flashing stands behind the joint.");
        }
        List<String> through = jointed ? List.of("framing", "inner_ply", "insulation", "outer_ply", "mat")
            : List.of("framing", "inner_ply", "insulation", "outer_ply", "mat", "scratch_coat", "setting_bed", "veneer");
        double nose = Math.max(stack.cavity() + 2, Math.min(stack.units(), stack.backing()
            + facts.mm("casing_bead", "ground", stack.coat() - stack.backing())));
        column.draw(layer -> through.contains(layer.component()) ? Edge.level(-reach) : null, layer -> Edge.level(reach));
        for (int side : new int[] {-1, 1}) {
            column.draw(layer -> through.contains(layer.component()) ? null
                : Edge.level(side < 0 ? -reach : inner(layer, stack, half, gap, nose)),
                layer -> Edge.level(side < 0 ? -inner(layer, stack, half, gap, nose) : reach));
            if (jointed) {
                bead(sheet, Math.max(stack.cavity(), column.stepped(stack.drain(), 0)), nose, side * half, side);
            }
        }
        frame(sheet, facts, stack, joint, reach);
        if (jointed) {
            fill(sheet, facts, stack, joint, half, nose);
        } else {
            sheet.mark("movement_joint", stack.face() + 6, 0,
                "the cladding is carried across the joint of the backing and will crack there.");
        }
        if (facts.is(joint, "lath", "carried across") && jointed) {
            stack.layer("scratch_coat").ifPresent(coat -> sheet.line("lath", Pen.MEDIUM, Stroke.HIDDEN, Column.lath(facts, coat), -half,
                Column.lath(facts, coat), half));
            sheet.mark("lath", stack.coat() - 2, 0, "lath carried across ties both sides together, so the joint cannot move.");
        }
        if (stack.layer("mat").isPresent()) {
            double x = stack.cavity() - (stack.cavity() - stack.drain()) * 0.4;
            sheet.water(x, reach - 10, x, -reach + 10);
        }
        column.fastener(reach - sheet.paper(6));
        column.tips(-reach + 10, reach - 6);
        facts.length(joint, "movement").ifPresent(movement -> sheet.note("Expected movement of the backing: " + movement.text() + ", it "
            + facts.text(joint, "way") + "."));

        sheet.upright("movement_joint", -sheet.paper(3), -half, half, -6, Lengths.named("joint", jointed
            ? Lengths.stated(facts, joint, "width", "movement_joint", "width") : ""));
        sheet.upright("flexible_flashing", -sheet.paper(3), 0, lap, -12, Lengths.named("lap", facts.yes(joint, "flashed")
            ? facts.text("flexible_flashing", "lap") : ""));
        Dims.buildUp(sheet, stack, reach);
        sheet.cut(-10, reach, stack.face() + 10, reach);
        sheet.cut(-10, -reach, stack.face() + 10, -reach);
        return sheet.done(stack);
    }

    /** How far from the middle of the joint a layer ends. */
    private static double inner(Layer layer, Stack stack, double half, double gap, double nose) {
        return switch (layer.component()) {
            case "sheathing" -> gap;
            case "scratch_coat" -> half + Stack.THIN;
            default -> layer.inside() < nose ? half + Stack.THIN : half;
        };
    }

    private static void bead(Sheet sheet, double from, double nose, double at, int side) {
        double low = side < 0 ? at - Stack.THIN : at;
        sheet.thin("casing_bead", from, low, nose, low + Stack.THIN);
        sheet.tip("casing_bead", nose - 2, low + Stack.THIN / 2);
    }

    private static void fill(Sheet sheet, Facts facts, Stack stack, Meeting joint, double half, double nose) {
        if (sealed(facts, joint)) {
            JointFill.draw(sheet, stack.cavity(), stack.face() - JointFill.BACK, -half, half);
            return;
        }
        // two pieces that slide past each other
        double x = nose - 4 * Stack.THIN;
        sheet.thin("movement_joint", x, -half, x + Stack.THIN, half * 0.6);
        sheet.rect("movement_joint", Hatch.METAL, x + 2 * Stack.THIN, -half * 0.6, x + 3 * Stack.THIN, half);
        sheet.tip("movement_joint", x + 2.5 * Stack.THIN, half * 0.3);
    }

    private static void frame(Sheet sheet, Facts facts, Stack stack, Meeting joint, double reach) {
        if (facts.is(joint, "kind", "floor line")) {
            Framing.member(sheet, stack, -RIM / 2 - 2 * Framing.PLATE, -RIM / 2 - Framing.PLATE);
            Framing.member(sheet, stack, -RIM / 2 - Framing.PLATE, -RIM / 2);
            Framing.member(sheet, stack, RIM / 2, RIM / 2 + Framing.PLATE);
            double depth = stack.framing();
            sheet.line("framing", Pen.MEDIUM, Stroke.SOLID, depth - Framing.PLATE, -RIM / 2, depth - Framing.PLATE, RIM / 2);
            sheet.line("framing", Pen.FINE, Stroke.SOLID, depth - Framing.PLATE, -RIM / 2, depth, RIM / 2);
            sheet.line("framing", Pen.FINE, Stroke.SOLID, depth - Framing.PLATE, RIM / 2, depth, -RIM / 2);
            return;
        }
        // the members at both sides of the joint, apart by what they move
        double apart = facts.mm(joint, "movement", 0) / 2;
        Framing.member(sheet, stack, apart, apart + Framing.PLATE);
        Framing.member(sheet, stack, -apart - Framing.PLATE, -apart);
    }
}

package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** The top of the cladding: where the air of the cavity leaves, or where it is shut. Height 0 is the upper edge of the units. */
final class TopOfWall {
    /** Boards and what they lap, in millimetres: common practice; no requirement. */
    private static final double BOARD = 19;
    private static final double BLOCK = 64;
    private static final double LAP = 38;

    private static final List<String> BARRIER = List.of("inner_ply", "insulation", "outer_ply");

    private final Facts facts;
    private final Stack stack;
    private final Meeting top;
    private final Sheet sheet;
    private final boolean open;
    /** Whether air leaves upwards, past the trim. */
    private final boolean upwards;
    /** Clear height between the units and the block above them. */
    private final double slot;
    /** Outer face of the block that holds the trim off the units. */
    private final double block;

    private TopOfWall(Facts facts, Stack stack, Meeting top) {
        this.facts = facts;
        this.stack = stack;
        this.top = top;
        String meets = facts.text(top, "meets");
        sheet = new Sheet(facts, top.id(), "Top of wall" + (meets.isEmpty() ? "" : " at " + meets), facts.scale(4, 5));
        open = facts.is(top, "vent", "open") && facts.has("top_vent");
        String into = facts.text(top, "opens_into");
        upwards = open && !into.isEmpty() && !into.equals("outside air");
        slot = !open ? facts.mm("sealant", "width", BOARD)
            : upwards ? 0 : facts.mm("top_vent", "opening", stack.cavity() - stack.drain()) + 2 * Stack.THIN;
        block = stack.face() + facts.mm("top_vent", "spacer", BOARD);
    }

    static Drawing of(Facts facts, Stack stack, Meeting top) {
        return new TopOfWall(facts, stack, top).draw();
    }

    private Drawing draw() {
        double low = -sheet.notes(stack, 4);
        double high = slot + BLOCK;
        boolean parapet = facts.is(top, "meets", "parapet");
        boolean cladding = facts.is(top, "meets", "other cladding");
        Column column = Column.section(sheet, stack);
        double above = cladding ? high + BLOCK : high;
        if (cladding) {
            column.letIn("metal_flashing", stack.backing(), high + Stack.THIN, high + Math.min(BLOCK - 6,
                facts.mm("metal_flashing", "upleg", 0)));
        }
        double under = upwards ? high : 0;
        column.draw(layer -> Edge.level(low), layer -> Edge.level(switch (layer.component()) {
            case "framing", "sheathing" -> above;
            case "inner_ply", "insulation", "outer_ply" -> high;
            case "mat" -> under;
            default -> 0;
        }));
        if (cladding) {
            // the upper course of the barrier laps over the flashing
            column.draw(layer -> BARRIER.contains(layer.component()) ? Edge.level(high + Stack.THIN) : null, layer -> Edge.level(above));
        }
        Framing.member(sheet, stack, above - Framing.PLATE, above);
        Framing.member(sheet, stack, above - 2 * Framing.PLATE, above - Framing.PLATE);
        double from = upwards ? stack.cavity() : stack.drain();
        sheet.rect("", Hatch.WOOD, from, slot, block, high);
        boolean covered = facts.yes(top, "covered");
        if (covered) {
            sheet.rect("", Hatch.WOOD, block, -LAP, block + BOARD, high);
            sheet.note("A trim board on the block covers the upper edge of the units.");
        } else if (open && !upwards) {
            sheet.mark("top_vent", block + 8, slot / 2, "nothing covers the vent, and rain blows into the cavity.");
        }
        above(above, from, covered, parapet, cladding);
        vent(low, high, covered);
        column.fastener(low + sheet.paper(6));
        column.tips(low + 8, -sheet.paper(4));

        sheet.upright("top_vent", -sheet.paper(3), Stack.THIN, slot - Stack.THIN, -6,
            open && !upwards ? facts.text("top_vent", "opening") : "");
        sheet.upright("sealant", -sheet.paper(3), 0, slot, -6, open ? "" : facts.text("sealant", "width"));
        sheet.across("top_vent", -LAP - sheet.paper(5), stack.face(), block, -1, covered ? facts.text("top_vent", "spacer") : "");
        Dims.buildUpBelow(sheet, stack, low);
        sheet.cut(-10, low, stack.face() + 10, low);
        return sheet.done(stack);
    }

    /** What the cladding ends against. */
    private void above(double at, double from, boolean covered, boolean parapet, boolean cladding) {
        double out = block + (covered ? BOARD : 0);
        if (parapet) {
            double end = out + 12;
            sheet.thin("metal_flashing", -12, at, end, at + Stack.THIN);
            sheet.rect("metal_flashing", Hatch.METAL, end - Stack.THIN, at - LAP, end, at);
            sheet.rect("metal_flashing", Hatch.METAL, -12, at - LAP, -12 + Stack.THIN, at);
            sheet.tip("metal_flashing", end - Stack.THIN / 2, at - LAP / 2);
            sheet.label(stack.face() / 2, at + sheet.paper(2), "coping");
        } else if (cladding) {
            sheet.thin("metal_flashing", stack.backing(), at - BLOCK, out + 10, at - BLOCK + Stack.THIN);
            sheet.tip("metal_flashing", out + 5, at - BLOCK + Stack.THIN / 2);
            sheet.rect("", Hatch.WOOD, stack.drain() + 2 * Stack.THIN, at - BLOCK + 12, stack.coat(), at);
            sheet.label(stack.coat(), at + sheet.paper(2), "other cladding");
        } else {
            double outer = stack.face() + sheet.paper(24);
            sheet.rect("", Hatch.WOOD, 0, at, from == stack.drain() ? outer : stack.drain(), at + BOARD);
            sheet.rect("", Hatch.WOOD, upwards ? stack.cavity() : outer, at, outer, at + BOARD);
            sheet.label((stack.face() + outer) / 2, at + BOARD + sheet.paper(1.5), facts.text(top, "meets"));
        }
    }

    private void vent(double low, double high, boolean covered) {
        double depth = stack.cavity() - stack.drain();
        double x = stack.drain() + depth / 2;
        if (!open) {
            double joint = stack.face() - JointFill.BACK;
            sheet.thin("casing_bead", stack.drain(), 0, stack.coat(), Stack.THIN);
            sheet.tip("casing_bead", stack.coat() - 2, Stack.THIN / 2);
            JointFill.draw(sheet, stack.cavity(), joint, 0, slot);
            sheet.mark("top_vent", x, slot / 2, facts.is(top, "vent", "open")
                ? "no vent is chosen for the top of the cavity, so it is shut."
                : facts.wallIs("cavity", "drained and ventilated")
                ? "the top of the cavity is closed, so that it drains but no air passes through it."
                : "the top of the cavity is closed; the cavity drains and is not meant to ventilate.");
            return;
        }
        if (!upwards) {
            sheet.thin("top_vent", stack.cavity(), 0, stack.coat(), Stack.THIN);
            sheet.rect("top_vent", Hatch.METAL, stack.cavity(), slot - Stack.THIN, stack.coat(), slot);
            for (double web : List.of(stack.cavity() + 1, stack.coat() - 1)) {
                sheet.line("top_vent", Pen.THIN, Stroke.HIDDEN, web, Stack.THIN, web, slot - Stack.THIN);
            }
            sheet.tip("top_vent", stack.coat() - 1, slot * 0.6);
        } else {
            sheet.line("top_vent", Pen.MEDIUM, Stroke.HIDDEN, stack.drain(), high - 2, stack.cavity(), high - 2);
            sheet.tip("top_vent", stack.cavity() - 1, high - 2);
            sheet.note("Air leaves into the " + facts.text(top, "opens_into") + ".");
        }
        if (upwards) {
            sheet.air(x, low + 20, x, high + BOARD + 20);
        } else if (covered) {
            double gap = stack.face() + (block - stack.face()) / 2;
            sheet.air(x, low + 20, x, slot / 2, gap, slot / 2, gap, -LAP - 14);
        } else {
            sheet.air(x, low + 20, x, slot / 2, block + 16, slot / 2);
        }
    }
}

package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** Head of an opening: the water of the cavity above has to come out over the flashing. */
final class Head {
    /** What is shown of the flange of a bead, in millimetres. */
    private static final double FLANGE = 30;
    private static final double HEADER = 140;
    private static final double FOOT = 304.8;

    private final Facts facts;
    private final Stack stack;
    private final Meeting opening;
    private final OpeningFrame frame;
    private final Sheet sheet;
    /** The face on which water runs out: a line from the wall outwards. */
    private final Edge over;
    private final boolean flashed;

    private Head(Facts facts, Stack stack, Meeting opening) {
        this.facts = facts;
        this.stack = stack;
        this.opening = opening;
        frame = OpeningFrame.of(facts, stack, opening);
        sheet = frame.sheet("head", "head");
        flashed = facts.yes(opening, "head_flashing");
        double end = Math.max(stack.face(), frame.outside()) + facts.mm(opening, "drip", 0);
        double fall = facts.mm("metal_flashing", "slope", 0) * (end - stack.backing()) / FOOT;
        double low = -OpeningFrame.SHIM + Stack.THIN;
        over = flashed ? new Edge(List.of(new Point(stack.backing(), low + fall), new Point(end, low))) : Edge.level(-OpeningFrame.SHIM);
    }

    static Drawing of(Facts facts, Stack stack, Meeting opening) {
        return new Head(facts, stack, opening).draw();
    }

    private Drawing draw() {
        double backing = stack.backing();
        double bend = over.at(backing, true);
        double upleg = flashed ? facts.mm("metal_flashing", "upleg", 0) : 0;
        double lap = facts.mm("flexible_flashing", "lap", 0);
        double low = bend + frame.joint();
        double top = Math.max(Math.max(bend + upleg + lap, HEADER) + sheet.paper(8), low + sheet.notes(stack, 2));
        double high = low + Stack.THIN;

        Column column = Column.section(sheet, stack);
        if (flashed) {
            column.letIn("metal_flashing", backing, bend, bend + upleg);
        }
        if (lap > 0) {
            column.letIn("flexible_flashing", backing, Math.max(0, bend + upleg - lap), bend + upleg + lap);
            sheet.tip("flexible_flashing", column.stepped(backing, bend + upleg + lap / 2) - Stack.THIN / 2, bend + upleg + lap / 2);
        }
        column.letIn("casing_bead", stack.drain(), high, high + FLANGE);
        double nose = frame.nose();
        boolean weeps = facts.yes("casing_bead", "head_weeps");
        double from = column.stepped(stack.drain(), high + 1e-3) - Stack.THIN;
        Ledge ledge = Ledge.draw(sheet, stack, "casing_bead", from, nose, high, 0, weeps);
        column.draw(layer -> switch (layer.component()) {
            case "framing", "sheathing" -> Edge.level(0);
            case "inner_ply", "insulation", "outer_ply" -> Edge.level(low);
            case "veneer" -> layer.inside() < nose ? ledge.top() : Edge.level(low);
            default -> ledge.top();
        }, layer -> Edge.level(top));
        Framing.member(sheet, stack, 0, HEADER);
        frame.draw(sheet, -OpeningFrame.SHIM - OpeningFrame.FRAME, -OpeningFrame.SHIM);
        flashing();
        column.fastener(top - sheet.paper(5));
        column.tips(low + 12, top - sheet.paper(2));
        sheet.tip("casing_bead", nose - 1, (low + high) / 2);
        boolean sealed = !facts.is(opening, "head_joint", "open with weeps");
        if (sealed) {
            seal(low);
        }
        paths(ledge, top, !sealed && weeps, sealed);

        sheet.upright("metal_flashing", -sheet.paper(3), bend, low, -6, Lengths.named("gap", facts.text("sealant", "width")));
        sheet.upright("metal_flashing", -sheet.paper(3), bend, bend + upleg, -12,
            Lengths.named("upleg", flashed ? facts.text("metal_flashing", "upleg") : ""));
        Dims.buildUp(sheet, stack, top);
        sheet.across("", -OpeningFrame.SHIM - OpeningFrame.FRAME, backing, frame.outside(), -1, facts.text(opening, "projection"));
        sheet.cut(-10, top, stack.face() + 10, top);
        return sheet.done(stack);
    }

    private void flashing() {
        double backing = stack.backing();
        if (!flashed) {
            sheet.mark("metal_flashing", frame.outside() + 6, -OpeningFrame.SHIM, "no flashing stands over the head.");
            return;
        }
        Point end = over.points().get(1);
        double bend = over.at(backing, true);
        double hem = facts.mm("metal_flashing", "hem", 0);
        sheet.thin("metal_flashing");
        sheet.area("metal_flashing", Hatch.METAL, List.of(new Point(backing, bend - Stack.THIN), new Point(end.x(), end.y() - Stack.THIN),
            end, new Point(backing, bend)));
        sheet.rect("metal_flashing", Hatch.METAL, end.x() - Stack.THIN, end.y() - Stack.THIN - hem, end.x(), end.y() - Stack.THIN);
        sheet.tip("metal_flashing", end.x() - Stack.THIN / 2, end.y() - Stack.THIN - hem / 2);
        sheet.across("metal_flashing", end.y() - hem - Stack.THIN, Math.max(stack.face(), frame.outside()), end.x(), -1,
            facts.text(opening, "drip"));
        sheet.note(facts.yes(opening, "end_dams") ? "The head flashing has end dams " + facts.text("metal_flashing", "dam")
            + " high at both ends." : "The head flashing has no end dams: water runs off its ends into the wall.");
    }

    private void seal(double low) {
        double x = stack.face() - JointFill.BACK;
        double inner = x - JointFill.depth(facts, frame.joint());
        sheet.area("sealant", Hatch.SEALANT, List.of(new Point(inner, over.at(inner, true)), new Point(x, over.at(x, false)),
            new Point(x, low), new Point(inner, low)));
        sheet.tip("sealant", (inner + x) / 2, low - 3);
        sheet.mark("sealant", x, low - frame.joint() / 2, "the joint above the head is sealed, so the water of the cavity stays above it.");
    }

    private void paths(Ledge ledge, double top, boolean out, boolean sealed) {
        if (stack.layer("mat").isEmpty()) {
            return;
        }
        double x = stack.cavity() - (stack.cavity() - stack.drain()) * 0.35;
        Point hole = ledge.hole();
        if (out) {
            Point end = over.points().get(over.points().size() - 1);
            double edge = flashed ? end.x() : frame.outside();
            sheet.water(x, top - 8, x, hole.y() + 8, hole.x(), hole.y(), hole.x(), over.at(hole.x(), true) + 3, edge - 2,
                over.at(edge, false) + 2, edge + 4, over.at(edge, false) - 4, edge + 4, over.at(edge, false) - 26);
            return;
        }
        sheet.line("", Pen.MEDIUM, Stroke.WATER, x, top - 8, x, hole.y() + 6);
        if (!sealed) {
            sheet.mark("casing_bead", hole.x(), hole.y(), "the bead at the head has no weep holes and dams the water above the flashing.");
        }
    }
}

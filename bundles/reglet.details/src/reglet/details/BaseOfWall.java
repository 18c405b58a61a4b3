package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** The foot of the wall over whatever is below it. */
final class BaseOfWall {
    private static final double FALL = 6;
    private static final double GROUND = 70;

    private final Facts facts;
    private final Stack stack;
    private final Meeting base;
    private final Sheet sheet;

    private BaseOfWall(Facts facts, Stack stack, Meeting base) {
        this.facts = facts;
        this.stack = stack;
        this.base = base;
        String over = facts.text(base, "over");
        sheet = new Sheet(facts, base.id(), "Base of wall over " + (over.isEmpty() ? "the surface below" : over), facts.scale(4, 5));
    }

    static Drawing of(Facts facts, Stack stack, Meeting base) {
        return new BaseOfWall(facts, stack, base).draw();
    }

    private Drawing draw() {
        boolean onFoundation = List.of("earth", "paving", "").contains(facts.text(base, "over"))
            || facts.yes(base, "same_foundation");
        double backing = stack.backing();
        double foot = onFoundation ? -facts.mm(base, "below_plate", 0) : 0;
        double leg = facts.mm("base_screed", "leg", 0);
        double nose = backing + facts.mm("base_screed", "ledge", stack.coat() - backing);
        double lowest = foot - FALL - Stack.THIN;
        double ground = lowest - facts.mm(base, "clearance", 0);
        double top = foot + Math.max(leg + sheet.paper(20), sheet.notes(stack, 1));
        boolean flashed = !onFoundation && facts.yes(base, "flashed");

        Column column = Column.section(sheet, stack);
        if (flashed) {
            column.letIn("metal_flashing", backing, ground, Math.min(top - 10, ground + facts.mm("metal_flashing", "upleg", 0)));
            sheet.tip("metal_flashing", backing + Stack.THIN / 2, (ground + lowest) / 2);
        }
        if (leg > 0) {
            column.letIn("base_screed", backing, foot, foot + leg);
        }
        boolean holes = facts.yes("base_screed", "weeps");
        Ledge ledge = Ledge.draw(sheet, stack, "base_screed", column.stepped(backing, foot + 1e-3) - (leg > 0 ? Stack.THIN : 0), nose, foot,
            FALL, holes);
        double lap = facts.mm("base_screed", "ply_lap", leg);
        double plyEnd = Math.max(foot, foot + leg - lap);
        double backed = onFoundation ? 0 : ground;
        column.draw(layer -> switch (layer.component()) {
            case "framing", "sheathing" -> Edge.level(backed);
            case "inner_ply", "outer_ply" -> Edge.level(plyEnd);
            case "insulation" -> Edge.level(foot + 1);
            case "veneer" -> layer.inside() < nose ? ledge.top() : Edge.level(lowest);
            default -> ledge.top();
        }, layer -> Edge.level(top));
        Framing.member(sheet, stack, backed, backed + Framing.PLATE);
        ground(onFoundation, ground, lowest, flashed);
        paths(ledge, holes, top, lowest, ground);
        column.fastener(top - sheet.paper(7));
        column.tips(foot + FALL + 8, top - sheet.paper(3));
        sheet.tip("base_screed", nose - 1, foot - FALL - Stack.THIN / 2);

        double left = -sheet.paper(3);
        sheet.upright("base_screed", left, foot, foot + leg, -18, Lengths.named("leg", facts.text("base_screed", "leg")));
        sheet.upright("inner_ply", left, plyEnd, foot + leg, -12,
            Lengths.named("lap", lap > leg ? "" : facts.text("base_screed", "ply_lap")));
        sheet.upright("", left, foot, 0, -6, onFoundation ? facts.text(base, "below_plate") : "");
        sheet.upright("base_screed", stack.face() + sheet.paper(3), ground, lowest, 6, facts.text(base, "clearance"));
        Dims.buildUp(sheet, stack, top);
        sheet.cut(-10, top, stack.face() + 10, top);
        return sheet.done(stack);
    }

    private void ground(boolean onFoundation, double ground, double lowest, boolean flashed) {
        double backing = stack.backing();
        double end = stack.face() + sheet.paper(22);
        double deep = ground - GROUND;
        String over = facts.text(base, "over");
        if (onFoundation) {
            sheet.rect("", Hatch.CONCRETE, 0, deep, backing, 0);
            sheet.label(backing / 2, deep - sheet.paper(4), "foundation");
        }
        double from = onFoundation ? backing : -10;
        double surface = ground;
        if (flashed) {
            double out = backing + facts.mm("metal_flashing", "upleg", 0);
            sheet.thin("metal_flashing", backing, ground - Stack.THIN, out, ground);
            sheet.rect("", Hatch.NONE, out, ground - Stack.THIN, end, ground);
            surface = ground - Stack.THIN;
        }
        switch (over) {
            case "earth" -> sheet.rect("", Hatch.EARTH, from, deep, end, surface);
            case "paving" -> {
                sheet.rect("", Hatch.CONCRETE, from, surface - GROUND / 2, end, surface);
                sheet.rect("", Hatch.GRAVEL, from, deep, end, surface - GROUND / 2);
            }
            case "roof" -> {
                sheet.rect("", Hatch.GRAVEL, from, surface - 8, end, surface);
                sheet.rect("", Hatch.PLYWOOD, from, surface - 24, end, surface - 8);
                sheet.rect("", Hatch.NONE, from, deep, end, surface - 24);
            }
            case "deck" -> {
                sheet.rect("", Hatch.WOOD, from, surface - Framing.PLATE, end, surface);
                sheet.rect("", Hatch.NONE, from, deep, end, surface - Framing.PLATE);
            }
            case "other cladding" -> {
                sheet.rect("", Hatch.NONE, from, deep, backing, surface);
                sheet.rect("", Hatch.WOOD, backing, deep, stack.coat(), surface);
            }
            default -> sheet.rect("", Hatch.CONCRETE, from, deep, end, surface);
        }
        double right = over.equals("other cladding") ? stack.coat() : end;
        sheet.label((Math.max(from, backing) + right) / 2, deep - sheet.paper(4), over);
        if (!onFoundation && !flashed) {
            sheet.mark("metal_flashing", backing + 8, ground + 8, "no flashing is turned up behind the barrier.");
        }
    }

    private void paths(Ledge ledge, boolean holes, double top, double lowest, double ground) {
        boolean open = facts.yes(base, "open");
        double depth = stack.cavity() - stack.drain();
        double water = stack.drain() + Stack.THIN + Math.max(0.6, depth * 0.3);
        Point hole = ledge.hole();
        double out = lowest - Math.min(25, (lowest - ground) / 2);
        double plug = Math.min(8, lowest - ground);
        if (!open && plug > 0) {
            double from = stack.backing();
            double nose = ledge.top().points().get(1).x();
            sheet.area("base_screed", Hatch.MORTAR, List.of(new Point(from, lowest - plug), new Point(nose, lowest - plug),
                new Point(nose, lowest), new Point(from, lowest + FALL)));
        }
        if (stack.layer("mat").isEmpty()) {
            return;
        }
        if (open && holes) {
            sheet.water(water, top - 8, water, hole.y() + 8, hole.x(), hole.y(), hole.x(), out);
            if (facts.wallIs("cavity", "drained and ventilated")) {
                double air = stack.cavity() - depth * 0.25;
                sheet.air(stack.face() + 6, out, hole.x() + 3, out + 4, hole.x() + 1, hole.y(), air, hole.y() + 10, air, top - 20);
            }
        } else {
            sheet.line("", Pen.MEDIUM, Stroke.WATER, water, top - 8, water, hole.y() + 6);
            sheet.mark("base_screed", hole.x(), hole.y(), open ? "the screed has no weep holes, so water has no way out of the cavity."
                : "the foot of the wall is closed, so water has no way out of the cavity.");
        }
    }
}

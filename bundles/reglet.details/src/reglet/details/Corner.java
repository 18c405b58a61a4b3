package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Meeting;

/** A corner, in plan: one wall runs along y with its outside to the right, the other along x with its outside upwards. */
final class Corner {
    /** Legs of a corner unit, in millimetres: common practice; no requirement. */
    private static final double LONG = 200;
    private static final double SHORT = 100;

    private final Facts facts;
    private final Stack stack;
    private final Meeting corner;
    private final Sheet sheet;
    /** 1 for an inside corner, whose walls run away to larger x and y; -1 for an outside corner. */
    private final int way;
    /** Where the walls are cut off. */
    private final double end;

    private Corner(Facts facts, Stack stack, Meeting corner) {
        this.facts = facts;
        this.stack = stack;
        this.corner = corner;
        boolean inside = facts.is(corner, "kind", "inside");
        way = inside ? 1 : -1;
        sheet = new Sheet(facts, corner.id(), (inside ? "Inside" : "Outside") + " corner, plan", facts.scale(8, 10));
        double turn = Math.max(facts.mm(corner, "lath_turn", 0), facts.mm(corner, "ply_turn", 0));
        end = way > 0 ? stack.face() + Math.max(turn, LONG + SHORT) : -Math.max(turn - stack.framing(), LONG);
    }

    static Drawing of(Facts facts, Stack stack, Meeting corner) {
        return new Corner(facts, stack, corner).draw();
    }

    private Drawing draw() {
        for (Layer layer : stack.layers()) {
            if (layer.component().equals("veneer")) {
                units(layer.inside(), layer.outside());
            } else {
                if (layer.component().endsWith("_ply")) {
                    sheet.thin(layer.component());
                }
                sheet.area(layer.component(), layer.hatch(), angle(layer.inside(), layer.outside(), end));
            }
        }
        studs();
        turns();
        tips();
        if (way > 0) {
            Dims.buildUp(sheet, stack, end);
        } else {
            Dims.buildUpBelow(sheet, stack, end);
        }
        sheet.cut(-10, end, stack.face() + 10, end);
        sheet.cut(end, -10, end, stack.face() + 10);
        sheet.note("Barrier plies and lath are carried round the corner as far as dimensioned.");
        return sheet.done(stack);
    }

    /** The outline of a layer that turns the corner. */
    private static List<Point> angle(double a, double b, double end) {
        return List.of(new Point(a, end), new Point(b, end), new Point(b, b), new Point(end, b), new Point(end, a), new Point(a, a));
    }

    private void studs() {
        double depth = stack.framing();
        double plate = Framing.PLATE;
        if (facts.is("framing", "material", "steel")) {
            sheet.line("framing", Pen.HEAVY, Stroke.SOLID, 1, 1, depth - 1, 1, depth - 1, depth - 1, 1, depth - 1, 1, 1);
            return;
        }
        if (way > 0) {
            member(0, depth, depth, depth + plate);
            member(depth, 0, depth + plate, depth);
        } else {
            member(0, depth - plate, depth, depth);
            member(depth - plate, 0, depth, depth - plate);
        }
    }

    private void member(double left, double low, double right, double high) {
        sheet.line("framing", Pen.THIN, Stroke.SOLID, left, low, right, low, right, high, left, high, left, low);
        sheet.line("framing", Pen.FINE, Stroke.SOLID, left, low, right, high);
        sheet.line("framing", Pen.FINE, Stroke.SOLID, left, high, right, low);
    }

    private void units(double a, double b) {
        String treatment = facts.text(corner, "treatment");
        double joint = facts.mm("sealant", "width", 12);
        switch (treatment) {
            case "corner units" -> {
                double along = way > 0 ? b + LONG - SHORT : b - LONG;
                double across = way > 0 ? b + SHORT : b - SHORT;
                stone(List.of(new Point(a, along), new Point(b, along), new Point(b, b), new Point(across, b), new Point(across, a),
                    new Point(a, a)));
                run(a, b, along);
                runAcross(a, b, across);
            }
            case "mitred units" -> {
                stone(List.of(new Point(a, end), new Point(b, end), new Point(b, b), new Point(a, a)));
                stone(List.of(new Point(end, a), new Point(a, a), new Point(b, b), new Point(end, b)));
            }
            case "sealant joint" -> {
                run(a, b, way > 0 ? a : b);
                double from = way > 0 ? b : a - joint;
                runAcross(a, b, way > 0 ? b + joint : a - joint);
                // this joint opens upwards, to the outside of the wall that runs along x
                double depth = JointFill.depth(facts, joint);
                double rod = JointFill.rod(facts, joint);
                double top = b - (way > 0 ? 2 : JointFill.BACK);
                sheet.rect("sealant", Hatch.SEALANT, from, top - depth, from + joint, top);
                double back = top - depth;
                sheet.oval("backer_rod", Hatch.ROD, from, Math.max(a, back - rod * rod / joint), from + joint, back);
                sheet.tip("sealant", from + joint / 2, top - depth / 2);
                sheet.tip("backer_rod", from + joint / 2, back - rod / 3);
                sheet.across("sealant", b, from, from + joint, way > 0 ? 1.5 : 1, facts.text("sealant", "width"));
            }
            default -> {
                run(a, b, way > 0 ? a : b);
                runAcross(a, b, way > 0 ? b : a);
                if (treatment.equals("corner bead")) {
                    sheet.oval("lath_accessories", Hatch.METAL, b, b, b + 4, b + 4);
                    sheet.tip("lath_accessories", b + 2, b + 2);
                }
            }
        }
        if (!treatment.isEmpty()) {
            sheet.note("Units at the corner: " + treatment + ".");
        }
    }

    private void stone(List<Point> outline) {
        sheet.area("veneer", Hatch.STONE, outline);
    }

    /** Units of the wall along y, from the corner to its end. */
    private void run(double a, double b, double from) {
        sheet.rect("veneer", Hatch.STONE, a, Math.min(from, end), b, Math.max(from, end));
    }

    private void runAcross(double a, double b, double from) {
        sheet.rect("veneer", Hatch.STONE, Math.min(from, end), a, Math.max(from, end), b);
    }

    /** Lath and plies as far as they are carried round. */
    private void turns() {
        stack.layer("scratch_coat").filter(coat -> facts.has("lath")).ifPresent(coat -> {
            double x = Column.lath(facts, coat);
            double turn = facts.mm(corner, "lath_turn", 0);
            double to = x + way * turn;
            sheet.line("lath", Pen.MEDIUM, Stroke.HIDDEN, x, end, x, x, to, x);
            // the lath of the other wall lies over the end that came round
            double lap = Math.min(turn, facts.mm("lath", "lap", 0));
            sheet.line("lath", Pen.MEDIUM, Stroke.HIDDEN, to - way * lap, x + 2, end, x + 2);
            sheet.tip("lath", x, way > 0 ? end * 0.55 : -10);
            sheet.across("lath", level(), Math.min(x, to), Math.max(x, to), way > 0 ? -1 : 3, facts.text(corner, "lath_turn"));
        });
        double ply = stack.drain();
        double to = ply + way * facts.mm(corner, "ply_turn", 0);
        sheet.across("outer_ply", level(), Math.min(ply, to), Math.max(ply, to), way > 0 ? -2 : 2, facts.text(corner, "ply_turn"));
    }

    /** Where the dimensions along the second wall stand: outside an outside corner, below an inside one. */
    private double level() {
        return way > 0 ? 0 : stack.face();
    }

    private void tips() {
        double low = way > 0 ? stack.face() + 90 : end + 20;
        double high = way > 0 ? end - 20 : stack.framing() - Framing.PLATE;
        Column.section(sheet, stack).tips(low, high);
    }
}

package reglet.details;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Value;

/** A sealant joint enlarged: width, depth at the middle, backing. Height 0 is the middle of the joint, x 0 the outer end of the bond. */
final class SealantJoint {
    private static final double ASIDE = 26;
    private static final double PROUD = 5;
    private static final int STEPS = 24;

    private SealantJoint() {
    }

    /**
     * Draws it.
     *
     * @param where what it runs along, for the title
     * @param width of the joint
     * @param said  the width as the job writes it
     * @param frame whether the upper side is a frame or block and not the cladding
     */
    static Drawing of(Facts facts, Stack stack, String id, String where, double width, String said, boolean frame) {
        Sheet sheet = new Sheet(facts, id, "Sealant joint " + where + ", enlarged", facts.scale(1, 1));
        double depth = JointFill.depth(facts, width);
        double hollow = depth / 4;
        double half = width / 2;
        double rod = JointFill.rod(facts, width);
        boolean tape = facts.is("backer_rod", "kind", "bond breaker tape");
        double pressed = tape ? Stack.THIN : rod * rod / width;
        double front = -hollow;
        double back = front - depth;
        double inner = back - pressed - 8;
        String other = frame ? "" : "veneer";
        sheet.rect("veneer", Hatch.STONE, inner, -half - ASIDE, PROUD, -half);
        sheet.rect(other, frame ? Hatch.NONE : Hatch.STONE, inner, half, PROUD, half + ASIDE);
        if (frame) {
            sheet.label((inner + PROUD) / 2, half + ASIDE / 2, "frame or block");
        }
        List<Point> outline = new ArrayList<>(tape ? List.of(new Point(back, half), new Point(back, -half))
            : curve(back, half, -pressed / 2, back - depth / 2));
        List<Point> outer = new ArrayList<>(curve(front, half, hollow, front));
        Collections.reverse(outer);
        outline.addAll(outer);
        sheet.area("sealant", Hatch.SEALANT, outline);
        if (tape) {
            sheet.rect("veneer", Hatch.STONE, inner, -half, back - Stack.THIN, half);
            sheet.thin("backer_rod", back - Stack.THIN, -half, back, half);
        } else {
            sheet.oval("backer_rod", Hatch.ROD, back - pressed, -half, back, half);
            sheet.circle("backer_rod", back - pressed / 2, 0, rod / 2, Stroke.HIDDEN);
            sheet.note("The dashed circle is the rod before it is pressed in, "
                + facts.value("backer_rod", "oversize").map(Value::text).orElse("") + " wider than the joint.");
        }
        sheet.note("The sealant holds to the two sides of the joint and not to the backing. Primer: "
            + facts.text("sealant", "primer") + ".");
        sheet.tip("sealant", (front + back) / 2, half * 0.3);
        sheet.tip("backer_rod", back - pressed / 2, -half * 0.3);
        sheet.tip("veneer", PROUD / 2 - 4, -half - ASIDE / 2);

        double left = inner - sheet.paper(1);
        sheet.upright("sealant", left, -half, half, -6, said);
        sheet.upright("backer_rod", left, -rod / 2, rod / 2, -13, tape ? "" : "rod " + Lengths.text(rod, facts.units()));
        sheet.across("sealant", half + ASIDE, back, front, 1, facts.text("sealant", "depth"));
        sheet.across("backer_rod", -half - ASIDE, back - pressed, front, -1, Lengths.text(depth + pressed, facts.units()));
        sheet.cut(inner, -half - ASIDE, inner, -half);
        return sheet.done(new Stack(stack.layers(), List.of()));
    }

    /** Half an oval from the upper to the lower edge: at x in the middle, off it by the hollow at the edges, nowhere less than least. */
    private static List<Point> curve(double x, double half, double hollow, double least) {
        List<Point> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double t = 1 - 2.0 * i / STEPS;
            curve.add(new Point(Math.max(least, x + hollow * (1 - Math.sqrt(Math.max(0, 1 - t * t)))), t * half));
        }
        return curve;
    }
}

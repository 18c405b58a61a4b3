package reglet.details;

import java.util.Locale;

import reglet.model.Drawing.Hatch;
import reglet.model.Meeting;

/**
 * The frame of a window or door as the details of its head, jamb and sill need it. Height 0 is the edge of the rough opening.
 *
 * @param inside  inner face
 * @param outside outer face
 * @param joint   width of the joint between cladding and frame
 */
record OpeningFrame(Facts facts, Stack stack, Meeting opening, double inside, double outside, double joint) {
    /** Room between rough opening and frame, and what is shown of the frame, in millimetres: common practice; no requirement. */
    static final double SHIM = 10;
    static final double FRAME = 60;
    private static final double DEPTH = 70;

    static OpeningFrame of(Facts facts, Stack stack, Meeting opening) {
        double projection = facts.mm(opening, "projection", stack.face() - stack.backing());
        return new OpeningFrame(facts, stack, opening, Math.max(20, stack.framing() - DEPTH), stack.backing() + projection,
            facts.mm("sealant", "width", SHIM));
    }

    Sheet sheet(String id, String title) {
        String kind = facts.text(opening, "kind");
        return new Sheet(facts, opening.id() + "." + id, (kind.isEmpty() ? "Opening" : kind.substring(0, 1).toUpperCase(Locale.ROOT)
            + kind.substring(1)) + " " + title, facts.scale(4, 5));
    }

    void draw(Sheet sheet, double low, double high) {
        sheet.rect("", Hatch.NONE, inside, low, outside, high);
        sheet.label((inside + outside) / 2, (low + high) / 2 - sheet.paper(1), facts.text(opening, "kind") + " frame");
    }

    /** Outer end of the bead on which the scratch coat stops, never inside the cavity's face. */
    double nose() {
        return Math.max(stack.cavity() + 2, stack.backing() + facts.mm("casing_bead", "ground", stack.coat() - stack.backing()));
    }

    /** What closes the joint between cladding and frame at jamb and sill. */
    void seal(Sheet sheet, double low, double high) {
        double x = Math.min(stack.face() - JointFill.BACK, outside - 2);
        if (x - JointFill.depth(facts, joint) < stack.cavity()) {
            sheet.mark("sealant", outside + 4, (low + high) / 2,
                "the frame ends behind the cladding, so the joint has no frame to meet.");
        } else if (facts.is(opening, "joint", "mortar to frame")) {
            sheet.rect("setting_bed", Hatch.MORTAR, stack.cavity(), low, x, high);
            sheet.mark("setting_bed", x, (low + high) / 2, "mortar against the frame cracks and lets water in.");
        } else {
            JointFill.draw(sheet, stack.cavity(), x, low, high);
        }
    }
}

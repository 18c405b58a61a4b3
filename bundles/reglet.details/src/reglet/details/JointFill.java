package reglet.details;

import reglet.model.Drawing.Hatch;

/** Sealant over its backing in a joint that runs across the wall. */
final class JointFill {
    /** How far the sealant stands back from the face of rough units, in millimetres: clear of their bevel. */
    static final double BACK = 8;

    private JointFill() {
    }

    /**
     * Draws it; the backing rod is pressed to the width of the joint and keeps its section. A joint too shallow for it is marked.
     *
     * @param limit how far in the joint reaches
     * @param x     outer face of the sealant
     */
    static void draw(Sheet sheet, double limit, double x, double low, double high) {
        double width = high - low;
        double depth = depth(sheet.facts, width);
        boolean tape = sheet.facts.is("backer_rod", "kind", "bond breaker tape");
        double rod = rod(sheet.facts, width);
        double backing = tape ? Stack.THIN : rod * rod / width;
        double back = x - depth;
        if (back - backing < limit) {
            sheet.mark("backer_rod", x, (low + high) / 2, "the joint is too shallow for sealant and backing of this size.");
            return;
        }
        sheet.rect("sealant", Hatch.SEALANT, back, low, x, high);
        sheet.tip("sealant", x - depth / 2, low + width * 0.3);
        if (tape) {
            sheet.thin("backer_rod", back - backing, low, back, high);
        } else {
            sheet.oval("backer_rod", Hatch.ROD, back - backing, low, back, high);
        }
        sheet.tip("backer_rod", back - backing / 2, low + width * 0.7);
    }

    /** Depth of sealant at the middle of a joint. */
    static double depth(Facts facts, double width) {
        return facts.mm("sealant", "depth", width / 2);
    }

    /** Diameter of the rod before it is pressed in. */
    static double rod(Facts facts, double width) {
        return width * (1 + facts.ratio("backer_rod", "oversize", 0));
    }
}

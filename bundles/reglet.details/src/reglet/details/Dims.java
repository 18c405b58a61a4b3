package reglet.details;

/** Dimensions that several details share. */
final class Dims {
    private Dims() {
    }

    /** Depth of the cavity, and of all that stands outside the barrier, above the drawing. */
    static void buildUp(Sheet sheet, Stack stack, double top) {
        buildUp(sheet, stack, top, 1);
    }

    static void buildUpBelow(Sheet sheet, Stack stack, double low) {
        buildUp(sheet, stack, low, -1);
    }

    private static void buildUp(Sheet sheet, Stack stack, double y, int side) {
        sheet.across("", y, stack.drain(), stack.face(), side, Lengths.text(stack.face() - stack.drain(), sheet.facts.units()));
        stack.layer("mat").ifPresent(mat -> sheet.across("mat", y, mat.inside(), mat.outside(), 2 * side,
            sheet.facts.text("mat", "thickness")));
    }
}

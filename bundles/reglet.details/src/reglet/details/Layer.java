package reglet.details;

import reglet.model.Drawing.Hatch;

/**
 * A layer of the wall.
 *
 * @param component component id
 * @param inside    millimetres from the inside face of the framing to its inside face
 * @param thickness as drawn, in millimetres
 */
record Layer(String component, double inside, double thickness, Hatch hatch) {

    double outside() {
        return inside + thickness;
    }

    double middle() {
        return inside + thickness / 2;
    }
}

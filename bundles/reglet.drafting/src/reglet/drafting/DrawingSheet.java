package reglet.drafting;

import java.util.List;

import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;

/**
 * A drawing laid out on paper, reduced to lines, solids, dots and writing that every file format has. Millimetres on paper, from
 * the lower left corner, y up.
 *
 * @param scale  denominator of the scale that it is drawn at
 * @param origin where the drawing's own origin lies; a point is at {@code origin + real / scale}
 */
record DrawingSheet(double width, double height, double scale, Point origin, List<Mark> marks) {
    /** Capitals of sans-serif faces are about seven tenths of the font size (common practice). */
    static final double CAPITALS = 0.7;

    /** Dots of a dotted line are no smaller than this, in millimetres, or they would be lost in print. */
    static final double DOT = 0.45;

    DrawingSheet {
        marks = List.copyOf(marks);
    }

    /** What a mark is for; formats with layers or classes tell marks apart by it. */
    enum Kind { OUTLINE, PATTERN, TEXT, NOTE, DIMENSION, LEGEND, SYMBOL, TITLE_BLOCK }

    /** Each belongs to a component, "" for none, and is drawn for a material, NONE for none. */
    sealed interface Mark permits Strokes, Curve, Solid, Dots, Writing {
        String component();

        Kind kind();

        Hatch material();
    }

    /** Open or closed lines of one pen. */
    record Strokes(String component, Kind kind, Hatch material, List<List<Point>> lines, boolean closed, Pen pen, Stroke stroke)
            implements Mark {
        Strokes {
            lines = List.copyOf(lines);
        }
    }

    /** An arc; degrees counter-clockwise, {@code sweep} of 360 for a circle. */
    record Curve(String component, Kind kind, Hatch material, Point centre, double radius, double from, double sweep, Pen pen,
            Stroke stroke) implements Mark {
    }

    /** A filled outline in the colour of a stroke. */
    record Solid(String component, Kind kind, Hatch material, List<Point> outline, Stroke stroke) implements Mark {
    }

    /** Filled dots. */
    record Dots(String component, Kind kind, Hatch material, List<Point> at, double diameter) implements Mark {
    }

    /** A line of text; height of capitals in millimetres, angle in degrees counter-clockwise. */
    record Writing(String component, Kind kind, Point at, String text, double height, Anchor anchor, double angle, boolean strong)
            implements Mark {
        @Override
        public Hatch material() {
            return Hatch.NONE;
        }

        double fontSize() {
            return height / CAPITALS;
        }
    }

    /** Width of a pen in millimetres, from the series of ISO 128-2:2020, clause on line widths (known from memory). */
    static double width(Pen pen) {
        return switch (pen) {
            case FINE -> 0.13;
            case THIN -> 0.18;
            case MEDIUM -> 0.35;
            case HEAVY -> 0.5;
        };
    }

    /** Lengths of dashes and gaps in millimetres; a dash of 0 is a dot; empty for an unbroken line. */
    static List<Double> dashes(Stroke stroke) {
        return switch (stroke) {
            case SOLID, BREAK -> List.of();
            case HIDDEN -> List.of(2.0, 1.0);
            case WATER -> List.of(3.0, 1.2);
            case AIR -> List.of(0.0, 1.1);
            case CENTRE -> List.of(7.0, 1.2, 1.2, 1.2);
        };
    }

    /** The colour as 0xRRGGBB. Only water has one, and its dashes tell it from air without. */
    static int colour(Stroke stroke) {
        return stroke == Stroke.WATER ? 0x1B4F9C : 0;
    }
}

package reglet.model;

import java.util.List;

/**
 * A display list in real millimetres, x to the right (outside), y up.
 *
 * @param id    "base"
 * @param title "Base of wall at grade"
 * @param wall  wall type id
 * @param scale denominator of the drawing scale: 5 for 1:5
 * @param notes sentences printed under the drawing, such as a stated exaggeration
 */
public record Drawing(String id, String title, String wall, double scale, List<Shape> shapes, List<String> notes) {

    public Drawing {
        shapes = List.copyOf(shapes);
        notes = List.copyOf(notes);
    }

    public record Point(double x, double y) {
    }

    /** Weight of a line on paper. */
    public enum Pen { FINE, THIN, MEDIUM, HEAVY }

    /** What a line is for: a cut or seen edge, something hidden, a path of water or of air, a dimension or leader. */
    public enum Stroke { SOLID, HIDDEN, WATER, AIR, CENTRE, BREAK }

    /** Conventional fills of the drafting profession. */
    public enum Hatch { NONE, EARTH, CONCRETE, WOOD, BATT, RIGID_INSULATION, METAL, MORTAR, STONE, GYPSUM, PLYWOOD, MAT, SEALANT, ROD,
        GRAVEL }

    /** Each shape may belong to a component, so that it can be chosen and a finding shown on it; "" for none. */
    public sealed interface Shape permits Line, Area, Arc, Text, Leader, Dimensioned {
        String component();
    }

    public record Line(String component, List<Point> points, Pen pen, Stroke stroke, boolean arrow) implements Shape {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** A closed outline with a fill. */
    public record Area(String component, List<Point> outline, Hatch hatch, Pen pen) implements Shape {
        public Area {
            outline = List.copyOf(outline);
        }
    }

    /** An arc; angles in degrees, counter-clockwise from the x axis. */
    public record Arc(String component, Point centre, double radius, double from, double to, Pen pen, Stroke stroke) implements Shape {
    }

    /** Text; height in millimetres on paper. */
    public record Text(String component, Point at, String text, double height, Anchor anchor) implements Shape {
    }

    public enum Anchor { LEFT, MIDDLE, RIGHT }

    /** A leader from a thing to its note; {@code key} is a stable component key that the legend explains. */
    public record Leader(String component, Point tip, Point note, String key, String text) implements Shape {
    }

    /** A dimension between two points, drawn at an offset; {@code text} is what it prints. */
    public record Dimensioned(String component, Point from, Point to, double offset, String text) implements Shape {
    }
}

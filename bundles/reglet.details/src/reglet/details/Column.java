package reglet.details;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;

import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;
import reglet.model.Quantity;
import reglet.model.Unit;

/**
 * The wall's layers as they stand one beside another in a section or plan. Thin things may be let in behind the barrier (the leg of a
 * screed, a flashing turned up): the barrier steps out over them, at the cost of the cavity, and the layers outside it stay where they are.
 */
final class Column {
    private static final double EDGE = 1e-6;
    /** Bevel of the edges of stone units, in millimetres. */
    private static final double BEVEL = 5;

    private record LetIn(String component, double face, double low, double high) {
        boolean covers(double y) {
            return low < y && y < high;
        }
    }

    private final Sheet sheet;
    private final Stack stack;
    private final double pitch;
    private final List<LetIn> things = new ArrayList<>();

    /** @param pitch size of the units along the column */
    Column(Sheet sheet, Stack stack, double pitch) {
        this.sheet = sheet;
        this.stack = stack;
        this.pitch = pitch;
    }

    /** The wall in a section, its units one above another. */
    static Column section(Sheet sheet, Stack stack) {
        return new Column(sheet, stack, unit(sheet.facts));
    }

    /** The wall in a plan, its units side by side. */
    static Column plan(Sheet sheet, Stack stack) {
        return new Column(sheet, stack, sheet.facts.mm("veneer", "longest", 400));
    }

    /** Lets in a thin thing against a face, outside those let in before; call before {@link #draw}. */
    void letIn(String component, double face, double low, double high) {
        int before = things.size();
        List<Point> outline = line(face, true, before, low, high);
        List<Point> back = new ArrayList<>(outline.stream().map(point -> new Point(point.x() + Stack.THIN, point.y())).toList());
        Collections.reverse(back);
        List<Point> whole = new ArrayList<>(outline);
        whole.addAll(back);
        things.add(new LetIn(component, face, low, high));
        sheet.thin(component);
        sheet.area(component, Hatch.METAL, whole);
    }

    /** How far a face at x has stepped out at a height. */
    double stepped(double x, double y) {
        return x + shift(x, true, things.size(), y);
    }

    /**
     * Draws the layers.
     *
     * @param low  lower end of each layer; null leaves the layer out
     * @param high upper end
     */
    void draw(Function<Layer, Edge> low, Function<Layer, Edge> high) {
        for (Layer layer : stack.layers()) {
            Edge bottom = low.apply(layer);
            if (bottom != null) {
                draw(layer, bottom, high.apply(layer));
            }
        }
    }

    private void draw(Layer layer, Edge bottom, Edge top) {
        if (layer.component().equals("veneer")) {
            units(layer, bottom, top.at(layer.middle(), true));
            return;
        }
        if (layer.component().endsWith("_ply")) {
            sheet.thin(layer.component());
        }
        sheet.area(layer.component(), layer.hatch(), outline(layer, bottom, top));
        if (layer.component().equals("scratch_coat") && sheet.facts.has("lath")) {
            double x = lath(layer);
            sheet.line("lath", Pen.MEDIUM, Stroke.HIDDEN, x, bottom.at(x, true) + 2, x, top.at(x, true) - 2);
        }
    }

    private List<Point> outline(Layer layer, Edge bottom, Edge top) {
        List<Point> inner = line(layer.inside(), true, things.size(), bottom.at(layer.inside(), true), top.at(layer.inside(), true));
        List<Point> outer = line(layer.outside(), false, things.size(), bottom.at(layer.outside(), false), top.at(layer.outside(), false));
        List<Point> outline = new ArrayList<>();
        List<Point> below = bottom.between(inner.get(0).x(), outer.get(0).x());
        outline.addAll(below);
        outline.addAll(outer.subList(1, outer.size() - 1));
        List<Point> above = new ArrayList<>(top.between(inner.get(inner.size() - 1).x(), outer.get(outer.size() - 1).x()));
        Collections.reverse(above);
        outline.addAll(above);
        List<Point> down = new ArrayList<>(inner.subList(1, inner.size() - 1));
        Collections.reverse(down);
        outline.addAll(down);
        return outline;
    }

    /** Where the lath lies in the scratch coat: as far off the backing as it is furred, but never outside the coat's middle. */
    private double lath(Layer coat) {
        return lath(sheet.facts, coat);
    }

    static double lath(Facts facts, Layer coat) {
        return coat.inside() + Math.min(facts.mm("lath", "furring", coat.thickness() / 2), coat.thickness() / 2);
    }

    /** Units of the veneer with their joints, from the top down; the lowest is cut to fit. */
    private void units(Layer layer, Edge bottom, double top) {
        double low = bottom.at(layer.outside(), false);
        double joint = joint(sheet.facts);
        double bevel = sheet.facts.is("veneer", "kind", "thin brick") ? 0 : Math.min(BEVEL, layer.thickness() / 6);
        double high = top;
        while (high - low > EDGE) {
            double next = high - pitch;
            boolean last = next - joint - low < pitch / 3;
            double foot = last ? low : next;
            List<Point> outline = new ArrayList<>(last ? bottom.between(layer.inside(), layer.outside() - bevel)
                : List.of(new Point(layer.inside(), foot), new Point(layer.outside() - bevel, foot)));
            outline.add(new Point(layer.outside(), foot + bevel));
            outline.add(new Point(layer.outside(), high - bevel));
            outline.add(new Point(layer.outside() - bevel, high));
            outline.add(new Point(layer.inside(), high));
            sheet.area("veneer", Hatch.STONE, outline);
            if (!last && joint > 0) {
                sheet.rect("unit_joint", Hatch.MORTAR, layer.inside(), foot - joint, layer.outside() - bevel - 2, foot);
                sheet.tip("unit_joint", layer.outside() - bevel - 3, foot - joint / 2);
            } else if (!last) {
                sheet.tip("unit_joint", layer.outside() - bevel - 1, foot);
            }
            high = last ? low : foot - joint;
        }
    }

    /** Height of a unit's face: its area over its longest side. */
    static double unit(Facts facts) {
        double longest = facts.mm("veneer", "longest", 400);
        return facts.value("veneer", "face").filter(Quantity.class::isInstance).map(Quantity.class::cast)
            .map(area -> area.in(Unit.MM2) / longest).orElse(longest / 2);
    }

    static double joint(Facts facts) {
        return facts.is("unit_joint", "kind", "pointed") ? facts.mm("unit_joint", "width", 0) : 0;
    }

    /** Asks for leaders to the layers, the innermost highest. */
    void tips(double low, double high) {
        List<Layer> layers = stack.layers();
        int count = layers.size() + 1;
        int step = 0;
        for (Layer layer : layers) {
            double y = high - (high - low) * step++ / (count - 1);
            // outside the framing's middle, so that the leader does not cross the whole of it
            double x = switch (layer.component()) {
                case "framing" -> layer.outside() - layer.thickness() / 8;
                case "scratch_coat" -> layer.outside() - layer.thickness() / 5;
                default -> layer.middle();
            };
            sheet.tip(layer.component(), x, y);
            if (layer.component().equals("scratch_coat")) {
                sheet.tip("lath", lath(layer), high - (high - low) * (step++ - 0.5) / (count - 1));
            }
        }
    }

    /** A fastener of the lath, as long as it is required. */
    void fastener(double y) {
        stack.layer("scratch_coat").filter(coat -> sheet.facts.has("lath_fastener")).ifPresent(coat -> {
            double head = lath(coat);
            double half = sheet.facts.mm("lath_fastener", "head", 0) / 2;
            double length = sheet.facts.mm("lath_fastener", "length", 0);
            sheet.line("lath_fastener", Pen.HEAVY, Stroke.SOLID, head - length, y, head, y);
            sheet.line("lath_fastener", Pen.HEAVY, Stroke.SOLID, head, y - half, head, y + half);
            sheet.tip("lath_fastener", head, y);
        });
    }

    /** A face between two heights, with its steps. */
    private List<Point> line(double face, boolean inner, int among, double low, double high) {
        TreeSet<Double> heights = new TreeSet<>(List.of(low, high));
        things.subList(0, among).forEach(thing -> List.of(thing.low(), thing.high()).stream().filter(y -> low < y && y < high)
            .forEach(heights::add));
        List<Double> steps = List.copyOf(heights);
        List<Point> line = new ArrayList<>();
        for (int i = 0; i + 1 < steps.size(); i++) {
            double x = face + shift(face, inner, among, (steps.get(i) + steps.get(i + 1)) / 2);
            add(line, new Point(x, steps.get(i)));
            add(line, new Point(x, steps.get(i + 1)));
        }
        return line;
    }

    private static void add(List<Point> line, Point point) {
        if (line.isEmpty() || !line.get(line.size() - 1).equals(point)) {
            line.add(point);
        }
    }

    /**
     * The inner face of a layer steps over what lies against it, the outer face only over what lies inside it; the cavity takes up all
     * steps.
     */
    private double shift(double face, boolean inner, int among, double y) {
        if (face > stack.drain() + EDGE) {
            return 0;
        }
        return things.subList(0, among).stream().filter(thing -> thing.covers(y)
            && (inner ? thing.face() <= face + EDGE : thing.face() < face - EDGE)).count() * Stack.THIN;
    }
}

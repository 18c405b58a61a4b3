package reglet.drafting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import reglet.drafting.DrawingLayout.Room;
import reglet.drafting.DrawingSheet.Kind;
import reglet.drafting.DrawingSheet.Mark;
import reglet.drafting.DrawingSheet.Solid;
import reglet.drafting.DrawingSheet.Strokes;
import reglet.drafting.DrawingSheet.Writing;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Stroke;

/**
 * Puts a drawing on a sheet with border, title block, notes, legend, scale bars and caution; or, for a page of another paper, into
 * a rectangle with a caption. Notes that don't fit give way to keys with a legend; a drawing too large for its scale is drawn at
 * the next smaller one, and the sheet says which.
 */
final class DrawingFrame {
    private static final double MARGIN = 9;
    private static final double INSIDE = 3;
    private static final double TITLE_BLOCK = 21;
    private static final double CAPTION = 6;
    /** Heights of capitals. */
    private static final double SMALL = 1.7;
    private static final double SMALLEST = 1.3;
    private static final double SYMBOLS = 58;
    /** Scale bars aren't longer than this. */
    private static final double BAR = 50;
    private static final double INCH = 25.4;

    /** Denominators in use: ISO 5455, and the scales of feet and inches (common practice). */
    private static final List<Double> METRIC = List.of(1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0);
    private static final List<Double> FEET = List.of(1.0, 2.0, 4.0, 8.0, 12.0, 16.0, 24.0, 48.0, 96.0, 192.0);
    private static final Map<Double, String> IN_FEET = Map.of(1.0, "full size", 2.0, "6 in = 1 ft", 4.0, "3 in = 1 ft", 8.0,
        "1 1/2 in = 1 ft", 12.0, "1 in = 1 ft", 16.0, "3/4 in = 1 ft", 24.0, "1/2 in = 1 ft", 48.0, "1/4 in = 1 ft", 96.0, "1/8 in = 1 ft");

    /** An entry of a list and what stands before it. */
    private record Item(String mark, String text) {
    }

    private final Drawing drawing;
    private final double scale;
    private final boolean keys;
    private final DrawingText text;
    private final List<Mark> marks = new ArrayList<>();

    private DrawingFrame(Drawing drawing, double scale, boolean keys, DrawingText text) {
        this.drawing = drawing;
        this.scale = scale;
        this.keys = keys;
        this.text = text;
    }

    /**
     * A sheet with its frame, upright where that holds the drawing.
     *
     * @throws IllegalArgumentException if no scale makes it fit, because of its many notes
     */
    static DrawingSheet sheet(Drawing drawing, Frame frame) {
        DrawingText text = new DrawingText();
        for (double scale : scales(drawing.scale())) {
            for (boolean keys : frame.notes() == Frame.Notes.KEYS ? new boolean[] {true} : new boolean[] {false, true}) {
                for (boolean wide : new boolean[] {false, true}) {
                    double width = wide ? frame.paper().height : frame.paper().width;
                    double height = wide ? frame.paper().width : frame.paper().height;
                    DrawingFrame tried = new DrawingFrame(drawing, scale, keys, text);
                    double low = tried.border(frame, width, height);
                    Room inside = new Room(MARGIN + INSIDE, low + 2, width - MARGIN - INSIDE, height - MARGIN - INSIDE);
                    DrawingLayout layout = tried.layout(inside);
                    if (layout.fits()) {
                        return tried.with(layout, width, height);
                    }
                }
            }
        }
        throw full(drawing, frame.paper().name().toLowerCase(Locale.ROOT) + " paper");
    }

    /**
     * A rectangle of millimetres with the drawing, its notes and a caption.
     *
     * @throws IllegalArgumentException if no scale makes it fit
     */
    static DrawingSheet inset(Drawing drawing, double width, double height) {
        DrawingText text = new DrawingText();
        for (double scale : scales(drawing.scale())) {
            for (boolean keys : new boolean[] {false, true}) {
                DrawingFrame tried = new DrawingFrame(drawing, scale, keys, text);
                tried.write(new Point(0, 1.5), drawing.title(), 2.4, Anchor.LEFT, true, Kind.TITLE_BLOCK);
                tried.write(new Point(width, 1.5), "Scale " + said(scale), SMALL, Anchor.RIGHT, false, Kind.TITLE_BLOCK);
                tried.lines(List.of(List.of(new Point(0, CAPTION - 1), new Point(width, CAPTION - 1))), Pen.THIN, Kind.TITLE_BLOCK);
                DrawingLayout layout = tried.layout(new Room(0, CAPTION, width, height));
                if (layout.fits()) {
                    return tried.with(layout, width, height);
                }
            }
        }
        throw full(drawing, "a place of " + plain(width) + " x " + plain(height) + " mm");
    }

    private static IllegalArgumentException full(Drawing drawing, String place) {
        return new IllegalArgumentException("The drawing '" + drawing.id() + "' with its notes doesn't fit in " + place
            + " at any scale: take larger paper, or shorten the notes.");
    }

    /** The scale itself and the smaller ones of its kind. */
    private static List<Double> scales(double wanted) {
        List<Double> scales = new ArrayList<>(List.of(wanted));
        (METRIC.contains(wanted) || !FEET.contains(wanted) ? METRIC : FEET).stream().filter(scale -> scale > wanted).forEach(scales::add);
        return scales;
    }

    private static String said(double scale) {
        return "1:" + plain(scale) + (IN_FEET.containsKey(scale) ? " (" + IN_FEET.get(scale) + ")" : "");
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }

    /** The drawing above what stands at the foot. */
    private DrawingLayout layout(Room inside) {
        double low = foot(inside);
        return new DrawingLayout(drawing, scale, keys, new Room(inside.left(), low + INSIDE, inside.right(), inside.high()), text);
    }

    private DrawingSheet with(DrawingLayout layout, double width, double height) {
        List<Mark> all = new ArrayList<>(layout.marks());
        all.addAll(marks);
        return new DrawingSheet(width, height, scale, layout.origin(), all);
    }

    /** Border, title block and caution; returns where the sheet is free above them. */
    private double border(Frame frame, double width, double height) {
        double left = MARGIN;
        double right = width - MARGIN;
        double low = MARGIN;
        lines(List.of(closed(left, low, right, height - MARGIN)), Pen.HEAVY, Kind.TITLE_BLOCK);
        if (!frame.caution().isEmpty()) {
            List<String> caution = text.lines(frame.caution(), SMALL, false, right - left - 2 * INSIDE);
            low += caution.size() * SMALL * DrawingText.LEADING + 2;
            paragraph(caution, left + INSIDE, low - 1.2 - SMALL, SMALL, false, Kind.TITLE_BLOCK);
        }
        double high = low + TITLE_BLOCK;
        double middle = left + 0.44 * (right - left);
        double last = left + 0.74 * (right - left);
        lines(List.of(List.of(new Point(left, high), new Point(right, high)), List.of(new Point(left, low), new Point(right, low)),
            List.of(new Point(middle, low), new Point(middle, high)), List.of(new Point(last, low), new Point(last, high))), Pen.MEDIUM,
            Kind.TITLE_BLOCK);
        Room cell = new Room(left + INSIDE, low, middle - 2, high - 2.5);
        double next = row(cell, drawing.title(), 3.2, true, 2);
        row(new Room(cell.left(), low, cell.right(), next), "Detail " + drawing.id()
            + (drawing.wall().isEmpty() ? "" : ", wall type " + drawing.wall()), 2, false, 1);
        cell = new Room(middle + 2, low, last - 2, high - 2.5);
        next = row(cell, frame.job(), 2.4, true, 2);
        row(new Room(cell.left(), low, cell.right(), next), frame.note(), SMALL, false, 2);
        cell = new Room(last + 2, low, right - 2, high - 2.5);
        next = row(cell, frame.issue().isEmpty() ? "Draft" : "Issue: " + frame.issue(), 2, true, 1);
        next = row(new Room(cell.left(), low, cell.right(), next), "Scale " + said(scale), 2, false, 1);
        row(new Room(cell.left(), low, cell.right(), next), "page " + frame.page() + " of " + Math.max(frame.page(), frame.of()), 2, false,
            1);
        return high;
    }

    /** Text at the top of a room, made smaller until it takes no more than some lines; returns where the room is free below. */
    private double row(Room room, String words, double height, boolean strong, int most) {
        if (words.isEmpty()) {
            return room.high();
        }
        double size = height;
        List<String> lines = text.lines(words, size, strong, room.width());
        while (lines.size() > most && size > SMALLEST) {
            size -= 0.1;
            lines = text.lines(words, size, strong, room.width());
        }
        return paragraph(lines, room.left(), room.high() - size, size, strong, Kind.TITLE_BLOCK) - 0.6;
    }

    /** Lines of text below each other from a first base line; returns the top of the next line. */
    private double paragraph(List<String> lines, double left, double base, double height, boolean strong, Kind kind) {
        double y = base;
        for (String line : lines) {
            write(new Point(left, y), line, height, Anchor.LEFT, strong, kind);
            y -= height * DrawingText.LEADING;
        }
        return y + height;
    }

    /** Notes and legend side by side, scale bars and signs at the right; returns their top. */
    private double foot(Room room) {
        List<Item> notes = new ArrayList<>();
        for (int i = 0; i < drawing.notes().size(); i++) {
            notes.add(new Item(i + 1 + ".", drawing.notes().get(i)));
        }
        List<Item> legend = new ArrayList<>();
        if (keys) {
            DrawingLayout.legend(drawing).forEach((key, words) -> legend.add(new Item(key, words)));
        }
        int columns = (notes.isEmpty() ? 0 : 1) + (legend.isEmpty() ? 0 : 1);
        double column = columns == 0 ? 0 : (room.width() - SYMBOLS) / columns - INSIDE;
        List<Mark> before = List.copyOf(marks);
        // The first layout, at any height, measures; the second stands on the floor of the room.
        double depth = Math.max(depth(notes, "Notes", column), Math.max(depth(legend, "Keynotes", column), -symbols(0, 0)));
        marks.clear();
        marks.addAll(before);
        double top = room.low() + depth;
        list(notes, "Notes", room.left(), top, column);
        list(legend, "Keynotes", room.left() + (columns - 1) * (column + INSIDE), top, column);
        symbols(room.right() - SYMBOLS, top);
        return top;
    }

    private double depth(List<Item> items, String heading, double width) {
        return -list(items, heading, 0, 0, width);
    }

    /** Returns the lower end. */
    private double list(List<Item> items, String heading, double left, double top, double width) {
        if (items.isEmpty()) {
            return top;
        }
        double marksWidth = items.stream().mapToDouble(item -> text.width(item.mark(), SMALL, true)).max().orElse(0) + 1.5;
        write(new Point(left, top - SMALL), heading, SMALL, Anchor.LEFT, true, Kind.LEGEND);
        double next = top - SMALL * DrawingText.LEADING - 0.8;
        for (Item item : items) {
            write(new Point(left, next - SMALL), item.mark(), SMALL, Anchor.LEFT, true, Kind.LEGEND);
            next = paragraph(text.lines(item.text(), SMALL, false, width - marksWidth), left + marksWidth, next - SMALL, SMALL, false,
                Kind.LEGEND);
        }
        return next;
    }

    /** Scale bars in both units and the signs of water and air; returns the lower end. */
    private double symbols(double left, double top) {
        double next = bar(left, top, 1, List.of(1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000), "mm");
        next = bar(left, next, INCH, List.of(1, 2, 4, 8, 12, 24, 48, 96, 192, 384), "in");
        for (Stroke path : DrawingLayout.paths(drawing)) {
            double y = next - 1.5;
            List<Point> line = List.of(new Point(left, y), new Point(left + 16, y));
            marks.add(new Strokes("", Kind.SYMBOL, Hatch.NONE, List.of(DrawingLayout.headed(marks, "", Kind.SYMBOL, line, path)), false,
                Pen.MEDIUM, path));
            write(new Point(left + 18, y - SMALL / 2), path == Stroke.WATER ? "path of water" : "path of air", SMALL, Anchor.LEFT, false,
                Kind.SYMBOL);
            next -= 4;
        }
        return next;
    }

    /** A bar of four parts, the longest of some lengths that fits; returns where the next may stand. */
    private double bar(double left, double top, double unit, List<Integer> lengths, String name) {
        int length = lengths.stream().filter(candidate -> candidate * unit / scale <= BAR).reduce((a, b) -> b).orElse(lengths.get(0));
        double part = length * unit / scale / 4;
        double high = top - SMALL - 0.8;
        double low = high - 1.2;
        for (int i = 0; i < 4; i++) {
            List<Point> box = DrawingLayout.box(left + i * part, low, left + (i + 1) * part, high);
            if (i % 2 == 0) {
                marks.add(new Solid("", Kind.SYMBOL, Hatch.NONE, box, Stroke.SOLID));
            }
            marks.add(new Strokes("", Kind.SYMBOL, Hatch.NONE, List.of(box), true, Pen.FINE, Stroke.SOLID));
        }
        write(new Point(left, top - SMALL), "0", SMALL, Anchor.LEFT, false, Kind.SYMBOL);
        write(new Point(left + 2 * part, top - SMALL), plain(length / 2.0), SMALL, Anchor.MIDDLE, false, Kind.SYMBOL);
        write(new Point(left + 4 * part, top - SMALL), length + " " + name, SMALL, Anchor.MIDDLE, false, Kind.SYMBOL);
        return low - 2;
    }

    private void write(Point at, String words, double height, Anchor anchor, boolean strong, Kind kind) {
        marks.add(new Writing("", kind, at, words, height, anchor, 0, strong));
    }

    private void lines(List<List<Point>> lines, Pen pen, Kind kind) {
        marks.add(new Strokes("", kind, Hatch.NONE, lines, false, pen, Stroke.SOLID));
    }

    private static List<Point> closed(double left, double low, double right, double high) {
        List<Point> closed = new ArrayList<>(DrawingLayout.box(left, low, right, high));
        closed.add(closed.get(0));
        return closed;
    }
}

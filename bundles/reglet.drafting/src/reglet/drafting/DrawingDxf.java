package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import reglet.drafting.DrawingSheet.Curve;
import reglet.drafting.DrawingSheet.Dots;
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
 * A drawing and its sheet as ASCII DXF of the year 2000 (AC1015), in real millimetres with the drawing's own origin. Layers have
 * names in the manner of the US National CAD Standard (discipline, major group, minor groups; from memory): A-DETL by material,
 * A-ANNO for what is written. Each entity carries its component as extended data of the application REGLET.
 */
public final class DrawingDxf {
    private static final String MODEL = "1F";
    private static final String PAPER = "1B";
    private static final String ROOT = "C";
    private static final String LAYOUTS = "1A";

    /** Colour numbers of the format: blue, a grey that prints, and the paper's opposite. */
    private static final int BLUE = 5;
    private static final int GREY = 8;
    private static final int INK = 7;

    private final DrawingSheet sheet;
    private final StringBuilder out = new StringBuilder();
    private final StringBuilder entities = new StringBuilder();
    /** Layers in use with their colours. */
    private final Map<String, Integer> layers = new TreeMap<>();
    private int handle = 0x100;

    private DrawingDxf(DrawingSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Text of ASCII characters only; others are written as DXF's own escapes.
     *
     * @throws IllegalArgumentException if the drawing's notes don't fit on the paper
     */
    public static String of(Drawing drawing, Frame frame) {
        return new DrawingDxf(DrawingFrame.sheet(drawing, frame)).file();
    }

    private String file() {
        sheet.marks().forEach(this::entity);
        tables();
        blocks();
        section("ENTITIES");
        out.append(entities);
        end("ENDSEC");
        objects();
        String body = out.toString();
        out.setLength(0);
        // The head names the first handle that is free, so it is written last.
        header();
        return out.append(body).append(lines(0, "EOF")).toString();
    }

    // ---- entities

    private void entity(Mark mark) {
        String layer = layer(mark);
        layers.putIfAbsent(layer, layer.equals("A-DETL-WATR") ? BLUE : mark.kind() == Kind.PATTERN ? GREY : INK);
        if (mark instanceof Strokes strokes) {
            strokes.lines().forEach(line -> polyline(strokes, layer, line));
        } else if (mark instanceof Curve curve) {
            curve(curve, layer);
        } else if (mark instanceof Solid solid) {
            solid(solid, layer);
        } else if (mark instanceof Dots dots) {
            // Small circles, since how points look is left to the drawing that they are put into.
            dots.at().forEach(dot -> circle(dots, layer, dot, dots.diameter() / 2, Pen.FINE, Stroke.SOLID));
        } else {
            text((Writing) mark, layer);
        }
    }

    private void polyline(Strokes strokes, String layer, List<Point> line) {
        if (line.size() == 2) {
            begin("LINE", layer, strokes.pen(), strokes.stroke(), "AcDbLine");
            place(10, line.get(0));
            place(11, line.get(1));
        } else {
            begin("LWPOLYLINE", layer, strokes.pen(), strokes.stroke(), "AcDbPolyline");
            // 128 lets dashes run on over corners.
            entities.append(lines(90, line.size(), 70, (strokes.closed() ? 1 : 0) + 128, 43, 0.0));
            line.forEach(point -> entities.append(lines(10, x(point), 20, y(point))));
        }
        component(strokes);
    }

    private void curve(Curve curve, String layer) {
        if (curve.sweep() >= 360) {
            circle(curve, layer, curve.centre(), curve.radius(), curve.pen(), curve.stroke());
            return;
        }
        begin("ARC", layer, curve.pen(), curve.stroke(), "AcDbCircle");
        place(10, curve.centre());
        entities.append(lines(40, curve.radius() * sheet.scale(), 100, "AcDbArc", 50, degrees(curve.from()), 51,
            degrees(curve.from() + curve.sweep())));
        component(curve);
    }

    private static double degrees(double angle) {
        return (angle % 360 + 360) % 360;
    }

    private void circle(Mark mark, String layer, Point centre, double radius, Pen pen, Stroke stroke) {
        begin("CIRCLE", layer, pen, stroke, "AcDbCircle");
        place(10, centre);
        entities.append(lines(40, radius * sheet.scale()));
        component(mark);
    }

    /** Triangles are solids, which every reader fills; other outlines are solid hatches. */
    private void solid(Solid solid, String layer) {
        List<Point> outline = solid.outline();
        if (outline.size() == 3) {
            begin("SOLID", layer, Pen.FINE, Stroke.SOLID, "AcDbTrace");
            for (int i = 0; i < 4; i++) {
                place(10 + i, outline.get(Math.min(i, 2)));
            }
        } else {
            begin("HATCH", layer, Pen.FINE, Stroke.SOLID, "AcDbHatch");
            entities.append(lines(10, 0.0, 20, 0.0, 30, 0.0, 210, 0.0, 220, 0.0, 230, 1.0, 2, "SOLID", 70, 1, 71, 0, 91, 1, 92, 3, 72, 0,
                73, 1, 93, outline.size()));
            outline.forEach(point -> entities.append(lines(10, x(point), 20, y(point))));
            entities.append(lines(97, 0, 75, 0, 76, 1, 98, 0));
        }
        component(solid);
    }

    private void text(Writing writing, String layer) {
        begin("TEXT", layer, Pen.THIN, Stroke.SOLID, "AcDbText");
        place(10, writing.at());
        entities.append(lines(40, writing.height() * sheet.scale(), 1, escaped(writing.text()), 50, degrees(writing.angle()), 7,
            writing.strong() ? "REGLET-BOLD" : "REGLET"));
        if (writing.anchor() != Anchor.LEFT) {
            entities.append(lines(72, writing.anchor() == Anchor.MIDDLE ? 1 : 2));
            place(11, writing.at());
        }
        entities.append(lines(100, "AcDbText"));
        component(writing);
    }

    private void begin(String type, String layer, Pen pen, Stroke stroke, String kind) {
        entities.append(lines(0, type, 5, next(), 330, MODEL, 100, "AcDbEntity", 8, layer, 6, lineType(stroke), 370,
            (int) Math.round(DrawingSheet.width(pen) * 100), 100, kind));
    }

    private void component(Mark mark) {
        if (!mark.component().isEmpty()) {
            entities.append(lines(1001, "REGLET", 1000, escaped(mark.component())));
        }
    }

    private void place(int code, Point point) {
        entities.append(lines(code, x(point), code + 10, y(point), code + 20, 0.0));
    }

    private double x(Point point) {
        return (point.x() - sheet.origin().x()) * sheet.scale();
    }

    private double y(Point point) {
        return (point.y() - sheet.origin().y()) * sheet.scale();
    }

    private static String layer(Mark mark) {
        return switch (mark.kind()) {
            case TEXT -> "A-ANNO-TEXT";
            case NOTE -> "A-ANNO-NOTE";
            case DIMENSION -> "A-ANNO-DIMS";
            case LEGEND -> "A-ANNO-LEGN";
            case SYMBOL -> "A-ANNO-SYMB";
            case TITLE_BLOCK -> "A-ANNO-TTLB";
            case PATTERN -> "A-DETL-" + material(mark.material()) + "-PATT";
            case OUTLINE -> mark.material() == Hatch.NONE ? "A-DETL-" + use(mark) : "A-DETL-" + material(mark.material()) + "-OTLN";
        };
    }

    private static String use(Mark mark) {
        Stroke stroke = mark instanceof Strokes strokes ? strokes.stroke() : mark instanceof Curve curve ? curve.stroke()
            : mark instanceof Solid solid ? solid.stroke() : Stroke.SOLID;
        return switch (stroke) {
            case SOLID -> "OTLN";
            case HIDDEN -> "HIDN";
            case WATER -> "WATR";
            case AIR -> "AIRF";
            case CENTRE -> "CNTR";
            case BREAK -> "BRKL";
        };
    }

    /** Minor groups have four letters; those without a published one are our own, as the standard allows. */
    private static String material(Hatch hatch) {
        return switch (hatch) {
            case NONE -> "GENF";
            case EARTH -> "ERTH";
            case CONCRETE -> "CONC";
            case WOOD -> "WOOD";
            case BATT -> "BATT";
            case RIGID_INSULATION -> "RIGD";
            case METAL -> "METL";
            case MORTAR -> "MORT";
            case STONE -> "STON";
            case GYPSUM -> "GYPS";
            case PLYWOOD -> "PLYW";
            case MAT -> "DMAT";
            case SEALANT -> "SEAL";
            case ROD -> "BROD";
            case GRAVEL -> "GRVL";
        };
    }

    private static String lineType(Stroke stroke) {
        return DrawingSheet.dashes(stroke).isEmpty() ? "CONTINUOUS" : "REGLET-" + stroke.name();
    }

    // ---- the sections around them

    private void header() {
        section("HEADER");
        variable("$ACADVER", 1, "AC1015");
        variable("$DWGCODEPAGE", 3, "ANSI_1252");
        variable("$INSUNITS", 70, 4);
        variable("$MEASUREMENT", 70, 1);
        variable("$LTSCALE", 40, sheet.scale());
        variable("$LWDISPLAY", 290, 1);
        Point low = new Point(0, 0);
        Point high = new Point(sheet.width(), sheet.height());
        out.append(lines(9, "$EXTMIN", 10, x(low), 20, y(low), 30, 0.0, 9, "$EXTMAX", 10, x(high), 20, y(high), 30, 0.0));
        out.append(lines(9, "$LIMMIN", 10, x(low), 20, y(low), 9, "$LIMMAX", 10, x(high), 20, y(high)));
        variable("$HANDSEED", 5, next());
        end("ENDSEC");
        section("CLASSES");
        end("ENDSEC");
    }

    private void variable(String name, int code, Object value) {
        out.append(lines(9, name, code, value));
    }

    private void tables() {
        section("TABLES");
        views();
        lineTypes();
        table("LAYER", "2", layers.size() + 1);
        record("LAYER", "2", next(), "AcDbLayerTableRecord", "0");
        out.append(lines(70, 0, 62, INK, 6, "CONTINUOUS"));
        layers.forEach((name, colour) -> {
            record("LAYER", "2", next(), "AcDbLayerTableRecord", name);
            out.append(lines(70, 0, 62, colour, 6, "CONTINUOUS"));
        });
        end("ENDTAB");
        table("STYLE", "3", 3);
        for (String[] style : new String[][] {{"STANDARD", "txt"}, {"REGLET", "arial.ttf"}, {"REGLET-BOLD", "arialbd.ttf"}}) {
            record("STYLE", "3", next(), "AcDbTextStyleTableRecord", style[0]);
            out.append(lines(70, 0, 40, 0.0, 41, 1.0, 50, 0.0, 71, 0, 42, 2.5, 3, style[1], 4, ""));
        }
        end("ENDTAB");
        table("VIEW", "6", 0);
        end("ENDTAB");
        table("UCS", "7", 0);
        end("ENDTAB");
        table("APPID", "9", 2);
        for (String application : List.of("ACAD", "REGLET")) {
            record("APPID", "9", next(), "AcDbRegAppTableRecord", application);
            out.append(lines(70, 0));
        }
        end("ENDTAB");
        table("DIMSTYLE", "A", 1);
        out.append(lines(100, "AcDbDimStyleTable", 71, 0));
        // Dimension styles give their handle under a code of their own.
        out.append(lines(0, "DIMSTYLE", 105, next(), 330, "A", 100, "AcDbSymbolTableRecord", 100, "AcDbDimStyleTableRecord", 2, "STANDARD",
            70, 0));
        end("ENDTAB");
        table("BLOCK_RECORD", "1", 2);
        record("BLOCK_RECORD", "1", MODEL, "AcDbBlockTableRecord", "*Model_Space");
        out.append(lines(340, "22"));
        record("BLOCK_RECORD", "1", PAPER, "AcDbBlockTableRecord", "*Paper_Space");
        out.append(lines(340, "1E"));
        end("ENDTAB");
        end("ENDSEC");
    }

    /** The window opens on the whole sheet. */
    private void views() {
        table("VPORT", "8", 1);
        record("VPORT", "8", next(), "AcDbViewportTableRecord", "*ACTIVE");
        Point middle = new Point(sheet.width() / 2, sheet.height() / 2);
        out.append(lines(70, 0, 10, 0.0, 20, 0.0, 11, 1.0, 21, 1.0, 12, x(middle), 22, y(middle), 13, 0.0, 23, 0.0, 14, 10.0, 24, 10.0, 15,
            10.0, 25, 10.0, 16, 0.0, 26, 0.0, 36, 1.0, 17, 0.0, 27, 0.0, 37, 0.0, 40, sheet.height() * sheet.scale() * 1.05, 41,
            sheet.width() / sheet.height(), 42, 50.0, 43, 0.0, 44, 0.0, 50, 0.0, 51, 0.0, 71, 0, 72, 100, 73, 1, 74, 3, 75, 0, 76, 0, 77, 0,
            78, 0));
        end("ENDTAB");
    }

    private void lineTypes() {
        Map<String, List<Double>> types = new LinkedHashMap<>();
        for (String name : List.of("BYBLOCK", "BYLAYER", "CONTINUOUS")) {
            types.put(name, List.of());
        }
        for (Stroke stroke : Stroke.values()) {
            types.put(lineType(stroke), DrawingSheet.dashes(stroke));
        }
        table("LTYPE", "5", types.size());
        types.forEach((name, dashes) -> {
            record("LTYPE", "5", next(), "AcDbLinetypeTableRecord", name);
            String said = name.startsWith("REGLET-") ? name.substring("REGLET-".length()).toLowerCase(Locale.ROOT) : "";
            out.append(lines(70, 0, 3, said, 72, 65, 73, dashes.size(), 40, dashes.stream().mapToDouble(Double::doubleValue).sum()));
            for (int i = 0; i < dashes.size(); i++) {
                out.append(lines(49, i % 2 == 0 ? dashes.get(i) : -dashes.get(i), 74, 0));
            }
        });
        end("ENDTAB");
    }

    private void blocks() {
        section("BLOCKS");
        for (String[] block : new String[][] {{"*Model_Space", MODEL}, {"*Paper_Space", PAPER}}) {
            out.append(lines(0, "BLOCK", 5, next(), 330, block[1], 100, "AcDbEntity", 8, "0", 100, "AcDbBlockBegin", 2, block[0], 70, 0, 10,
                0.0, 20, 0.0, 30, 0.0, 3, block[0], 1, ""));
            out.append(lines(0, "ENDBLK", 5, next(), 330, block[1], 100, "AcDbEntity", 8, "0", 100, "AcDbBlockEnd"));
        }
        end("ENDSEC");
    }

    private void objects() {
        section("OBJECTS");
        out.append(lines(0, "DICTIONARY", 5, ROOT, 330, "0", 100, "AcDbDictionary", 281, 1, 3, "ACAD_GROUP", 350, "D", 3, "ACAD_LAYOUT",
            350, LAYOUTS));
        out.append(lines(0, "DICTIONARY", 5, "D", 330, ROOT, 100, "AcDbDictionary", 281, 1));
        out.append(lines(0, "DICTIONARY", 5, LAYOUTS, 330, ROOT, 100, "AcDbDictionary", 281, 1, 3, "Layout1", 350, "1E", 3, "Model", 350,
            "22"));
        layout("1E", "Layout1", 1, PAPER, 688);
        layout("22", "Model", 0, MODEL, 1712);
        end("ENDSEC");
    }

    private void layout(String handle, String name, int order, String block, int flags) {
        out.append(lines(0, "LAYOUT", 5, handle, 330, LAYOUTS, 100, "AcDbPlotSettings", 1, "", 2, "", 4, "", 6, "", 40, 0.0, 41, 0.0, 42,
            0.0, 43, 0.0, 44, sheet.width(), 45, sheet.height(), 46, 0.0, 47, 0.0, 48, 0.0, 49, 0.0, 140, 0.0, 141, 0.0, 142, 1.0, 143,
            sheet.scale(), 70, flags, 72, 1, 73, 0, 74, 1, 7, "", 75, 0, 147, 1.0, 148, 0.0, 149, 0.0));
        out.append(lines(100, "AcDbLayout", 1, name, 70, 1, 71, order, 10, 0.0, 20, 0.0, 11, sheet.width(), 21, sheet.height(), 12, 0.0, 22,
            0.0, 32, 0.0, 14, 0.0, 24, 0.0, 34, 0.0, 15, 0.0, 25, 0.0, 35, 0.0, 146, 0.0, 13, 0.0, 23, 0.0, 33, 0.0, 16, 1.0, 26, 0.0, 36,
            0.0, 17, 0.0, 27, 1.0, 37, 0.0, 76, 0, 330, block));
    }

    private void section(String name) {
        out.append(lines(0, "SECTION", 2, name));
    }

    private void table(String name, String handle, int records) {
        out.append(lines(0, "TABLE", 2, name, 5, handle, 330, "0", 100, "AcDbSymbolTable", 70, records));
    }

    private void record(String type, String table, String handle, String kind, String name) {
        out.append(lines(0, type, 5, handle, 330, table, 100, "AcDbSymbolTableRecord", 100, kind, 2, name));
    }

    private void end(String what) {
        out.append(lines(0, what));
    }

    private String next() {
        return Integer.toHexString(handle++).toUpperCase(Locale.ROOT);
    }

    /** Pairs of a group code and a value, a line each. */
    private static String lines(Object... pairs) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            lines.add(String.valueOf(pairs[i]));
            lines.add(value instanceof Double number ? decimal(number) : String.valueOf(value));
        }
        return String.join("\r\n", lines) + "\r\n";
    }

    private static String decimal(double number) {
        String plain = DrawingSvg.number(number);
        return plain.contains(".") ? plain : plain + ".0";
    }

    /** Characters outside of ASCII, and those that DXF gives a meaning, as its escapes. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        for (char unit : text.replaceAll("\\p{Cntrl}", " ").replace("%%", "%%%%%%").replace("^", "^ ").toCharArray()) {
            escaped.append(unit < 128 ? String.valueOf(unit) : String.format(Locale.ROOT, "\\U+%04X", (int) unit));
        }
        return escaped.toString();
    }
}

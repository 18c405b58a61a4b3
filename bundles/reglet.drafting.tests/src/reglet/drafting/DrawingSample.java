package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import reglet.drafting.Frame.Paper;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;

/** The base of an invented wall: earth, foundation, framing, mat, lath coat and stone. */
final class DrawingSample {
    static final String CAUTION = "This drawing replaces neither local codes, the manufacturer's instructions nor a licensed professional.";
    static final Frame FRAME = Frame.of("Millbrook Library <annex>", "Invented sample", "For bid", Paper.LETTER, CAUTION);

    private final List<Shape> shapes = new ArrayList<>();

    static Drawing base() {
        return new DrawingSample().drawn();
    }

    private Drawing drawn() {
        area("earth", Hatch.EARTH, Pen.FINE, 200, -170, 200, 0, 400, 0, 400, -170);
        area("gravel", Hatch.GRAVEL, Pen.FINE, -60, -50, -60, 30, 0, 30, 0, -50);
        area("slab", Hatch.CONCRETE, Pen.MEDIUM, -60, 30, -60, 130, 0, 130, 0, 30);
        area("foundation", Hatch.CONCRETE, Pen.MEDIUM, 0, -170, 0, 150, 200, 150, 200, -170);
        area("sill", Hatch.WOOD, Pen.MEDIUM, 60, 150, 60, 188, 200, 188, 200, 150);
        area("insulation", Hatch.BATT, Pen.THIN, 60, 188, 60, 430, 200, 430, 200, 188);
        area("gypsum-board", Hatch.GYPSUM, Pen.THIN, 47, 150, 47, 430, 60, 430, 60, 150);
        area("sheathing", Hatch.PLYWOOD, Pen.THIN, 200, 125, 200, 430, 212, 430, 212, 125);
        line("wrb", Pen.HEAVY, Stroke.SOLID, false, 213, 90, 213, 430);
        area("mat", Hatch.MAT, Pen.FINE, 215, 106, 215, 430, 225, 430, 225, 106);
        area("lath", Hatch.MORTAR, Pen.FINE, 225, 104, 225, 430, 238, 430, 238, 104);
        line("lath", Pen.MEDIUM, Stroke.HIDDEN, false, 231, 106, 231, 430);
        area("setting-bed", Hatch.MORTAR, Pen.FINE, 238, 104, 238, 430, 250, 430, 250, 104);
        for (int y = 106; y < 420; y += 110) {
            area("stone", Hatch.STONE, Pen.MEDIUM, 250, y, 250, y + 98, 282, y + 96, 286, y + 50, 280, y);
        }
        area("screed", Hatch.METAL, Pen.THIN, 214, 98, 214, 190, 214.6, 190, 214.6, 102, 250, 102, 250, 98);
        area("rigid", Hatch.RIGID_INSULATION, Pen.THIN, -10, 30, -10, 130, 0, 130, 0, 30);
        area("sealant", Hatch.SEALANT, Pen.THIN, -8, 130, 0, 130, 0, 140, -8, 140);
        shapes.add(new Arc("sealant", point(-4, 140), 4, 180, 360, Pen.THIN, Stroke.SOLID));
        line("", Pen.THIN, Stroke.BREAK, false, 30, 430, 310, 430);
        line("grade", Pen.HEAVY, Stroke.SOLID, false, 200, 0, 400, 0);
        line("", Pen.MEDIUM, Stroke.WATER, true, 220, 400, 220, 112, 262, 88);
        line("", Pen.MEDIUM, Stroke.AIR, true, 300, 84, 227, 90, 218, 130, 218, 410);
        line("", Pen.THIN, Stroke.CENTRE, false, 100, 120, 100, 200);
        shapes.add(new Text("grade", point(370, 6), "GRADE", 2, Anchor.MIDDLE));
        shapes.add(new Text("foundation", point(100, 20), "FOUNDATION", 2.2, Anchor.MIDDLE));
        leader("gypsum-board", 53, 400, -80, 400, "09 29 00.A", "Gypsum board, 1/2 in");
        leader("insulation", 120, 350, -80, 398, "07 21 00.A", "Batt insulation, full depth of the framing");
        leader("sheathing", 206, 300, -80, 396, "06 16 00.A", "Wood structural panel sheathing, 7/16 in, gapped 1/8 in at all edges");
        leader("sill", 100, 170, -80, 180, "06 10 00.B", "Treated sill plate");
        leader("mat", 220, 380, 430, 380, "07 25 00.C", "Drainage mat, at least 3/8 in (9.5 mm), filter fabric outward");
        leader("lath", 231, 350, 430, 379, "04 73 00.A", "Lath: expanded metal, at least 3.4 lb/yd², embedded in scratch coat");
        leader("setting-bed", 244, 320, 430, 378, "04 73 00.B", "Setting bed, 1/2 in");
        leader("stone", 270, 270, 430, 270, "04 73 00.C", "Adhered stone veneer units");
        leader("screed", 230, 100, 430, 150, "04 73 00.D",
            "Weep screed, at least 0.019 in; flange 3-1/2 in behind the water-resistive barrier");
        shapes.add(new Dimensioned("screed", point(282, 0), point(282, 98), -60, "4 in min."));
        shapes.add(new Dimensioned("framing", point(60, 430), point(200, 430), 30, "5-1/2 in"));
        shapes.add(new Dimensioned("mat", point(215, 430), point(225, 430), 30, "3/8 in"));
        return new Drawing("base", "Base of wall at grade", "W1", 5, shapes,
            List.of("The gap of the drainage mat is drawn to scale; the thickness of sheet metal is exaggerated.",
                "Slope finish grade away from the wall."));
    }

    private void area(String component, Hatch hatch, Pen pen, double... xy) {
        shapes.add(new Area(component, points(xy), hatch, pen));
    }

    private void line(String component, Pen pen, Stroke stroke, boolean arrow, double... xy) {
        shapes.add(new Line(component, points(xy), pen, stroke, arrow));
    }

    private void leader(String component, double tipX, double tipY, double x, double y, String key, String text) {
        shapes.add(new Leader(component, point(tipX, tipY), point(x, y), key, text));
    }

    static List<Point> points(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(point(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Point point(double x, double y) {
        return new Point(x, y);
    }
}

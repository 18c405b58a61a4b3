package reglet.worksheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Drawing;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Quantity;
import reglet.model.Unit;
import reglet.model.Worksheet;

/**
 * The section through a sealant joint: two faces of the cladding, sealant in the shape of an hourglass, the rod behind it. The outside is
 * below, as on a plan.
 */
final class JointSection {
    private static final double MM = Unit.MM.toSi(1);
    /** How thick the cladding is drawn, and how far it goes on at each side, mm. */
    private static final double FACE = 60;
    private static final double BESIDE = 45;
    private static final int PARTS = 24;

    private JointSection() {
    }

    /** Drawn from the width that the joint has, else the least that it needs. */
    static Drawing of(Worksheet worksheet) {
        Quantity built = Optional.ofNullable(worksheet.inputs().get("width")).map(input -> (Quantity) input.value())
            .orElseGet(() -> worksheet.results().get("width").quantity());
        Quantity deep = worksheet.results().get("depth").quantity();
        double width = built.si() / MM;
        double depth = deep.si() / MM;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(side(-BESIDE, 0));
        shapes.add(side(width, width + BESIDE));
        // tooled hollow outside, and hollow over the rod: least at the middle, wider where it adheres
        double hollow = depth / 4;
        double outside = hollow;
        List<Point> sealant = new ArrayList<>();
        for (int i = 0; i <= PARTS; i++) {
            sealant.add(new Point(width * i / PARTS, outside + arc(i, hollow)));
        }
        double inside = outside + hollow + depth;
        for (int i = PARTS; i >= 0; i--) {
            sealant.add(new Point(width * i / PARTS, inside + hollow - arc(i, hollow)));
        }
        shapes.add(new Area("sealant", sealant, Hatch.SEALANT, Pen.MEDIUM));
        boolean rod = worksheet.results().containsKey("rod");
        if (rod) {
            // pressed between the faces the rod grows as deep as it loses width
            double size = worksheet.results().get("rod").si() / MM;
            shapes.add(new Area("backer_rod", pressed(width, inside + hollow / 2, size * size / width), Hatch.ROD, Pen.THIN));
        }
        shapes.add(new Line("", List.of(new Point(-BESIDE, 0), new Point(0, 0)), Pen.HEAVY, Stroke.SOLID, false));
        shapes.add(new Line("", List.of(new Point(width, 0), new Point(width + BESIDE, 0)), Pen.HEAVY, Stroke.SOLID, false));
        shapes.add(new Dimensioned("", new Point(0, 0), new Point(width, 0), -14, built.text()));
        shapes.add(new Dimensioned("sealant", new Point(width / 2, outside + hollow), new Point(width / 2, inside), BESIDE + width / 2 + 10,
            deep.text()));
        shapes.add(new Leader("sealant", new Point(width / 4, outside + hollow + depth / 2), new Point(-BESIDE - 12, 12), "sealant",
            "Sealant, adhered to two faces only"));
        if (rod) {
            shapes.add(new Leader("backer_rod", new Point(width / 4, inside + width / 2), new Point(-BESIDE - 12, 34), "backer_rod",
                "Closed-cell rod, " + worksheet.results().get("rod").quantity().text()));
        }
        return new Drawing("sealant_joint", "Section through the joint", worksheet.wall(), 1, shapes,
            List.of("The outside is below."));
    }

    /** How far the hollow has gone at a part of the width: 0 at the faces, all of it in the middle. */
    private static double arc(int part, double hollow) {
        double across = 2.0 * part / PARTS - 1;
        return hollow * (1 - across * across);
    }

    private static Area side(double from, double to) {
        return new Area("veneer", List.of(new Point(from, 0), new Point(to, 0), new Point(to, FACE), new Point(from, FACE)), Hatch.STONE,
            Pen.MEDIUM);
    }

    private static List<Point> pressed(double width, double at, double deep) {
        List<Point> outline = new ArrayList<>();
        double round = Math.min(deep, width) / 2;
        for (int i = 0; i <= PARTS; i++) {
            double angle = Math.PI * (1 + (double) i / PARTS);
            outline.add(new Point(width / 2 + width / 2 * Math.cos(angle), at + round + round * Math.sin(angle)));
        }
        for (int i = 0; i <= PARTS; i++) {
            double angle = Math.PI * i / PARTS;
            outline.add(new Point(width / 2 + width / 2 * Math.cos(angle), at + deep - round + round * Math.sin(angle)));
        }
        return outline;
    }
}

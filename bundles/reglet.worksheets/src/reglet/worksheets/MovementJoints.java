package reglet.worksheets;

import static reglet.worksheets.Sheet.degrees;
import static reglet.worksheets.Sheet.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Where joints go through the veneer of an elevation, the panels between them and how much each moves. */
public final class MovementJoints {
    /** Lines nearer to each other than this are one joint. */
    private static final double SAME = Unit.IN.toSi(0.5);
    private static final double SLIVER = Unit.FT.toSi(1);

    /**
     * @param width         of the elevation, m
     * @param height        m
     * @param vertical      joint lines by their distance from the left edge
     * @param horizontal    joint lines by their height above the base
     * @param expansion     1/K
     * @param cold          lowest temperature of the cladding, K
     * @param hot           highest, K
     * @param shrinkage     share of the length
     * @param deflection    movement at a deflection track, m
     * @param floorMovement shrinkage and shortening of a floor, m
     * @param longest       longest side of a panel that the designer admits, m
     */
    public record Inputs(double width, double height, List<JointLine> vertical, List<JointLine> horizontal, double expansion, double cold,
            double hot, double shrinkage, double deflection, double floorMovement, OptionalDouble longest) {
    }

    /** A joint after lines at one place are joined; m. */
    private record Joint(double at, Set<JointLine.Reason> reasons) {
        String why() {
            return reasons.stream().map(JointLine.Reason::text).collect(Collectors.joining(" and "));
        }
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("movement_joints", "Movement joints of an elevation", Inputs.class,
        List.of(
        InputSpec.quantity("width", "width of the elevation", Unit.FT).within(0.5, 5_000, Sources.SANE),
        InputSpec.quantity("height", "height of the elevation", Unit.FT).within(0.5, 1_500, Sources.SANE),
        InputSpec.joints("vertical", "vertical joints due, from the left edge"),
        InputSpec.joints("horizontal", "horizontal joints due, from the base"),
        InputSpec.quantity("expansion", "thermal expansion of the cladding", Unit.PPM_F).within(0.5, 50, Sources.EXPANSION)
            .usually("6 e-6/°F"),
        InputSpec.quantity("cold", "lowest temperature of the cladding", Unit.DEG_F).within(-80, 120, Sources.SURFACE_TEMPERATURES)
            .usually("10 °F"),
        InputSpec.quantity("hot", "highest temperature of the cladding", Unit.DEG_F).within(-20, 220, Sources.SURFACE_TEMPERATURES)
            .usually("140 °F"),
        InputSpec.quantity("shrinkage", "drying shrinkage", Unit.PERCENT).within(0, 0.2, Sources.SHRINKAGE).usually("0.09%"),
        InputSpec.quantity("deflection", "movement at a deflection track", Unit.IN).within(0, 4, Sources.SANE).usually("0 in"),
        InputSpec.quantity("floor_movement", "shrinkage and shortening at a floor line", Unit.IN).within(0, 4, Sources.SANE)
            .usually("0 in"),
        InputSpec.quantity("longest", "longest side of a panel that the designer admits", Unit.FT).within(1, 200, Sources.SANE).maybe()),
            MovementJoints::write);

    private MovementJoints() {
    }

    /**
     * Results: panels, joints.vertical, joints.horizontal (counts), joints.length, panel.widest, panel.tallest, movement.vertical,
     * movement.horizontal (m), panel.largest (m²). A step for each joint and each panel, columns from the left, rows from the base.
     */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    private static void write(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.hot <= in.cold) {
            throw sheet.refusal("hot", "isn't above cold", "a highest temperature above " + show(in.cold, Unit.DEG_F));
        }
        List<Joint> vertical = joints("vertical", in.vertical, in.width, sheet);
        List<Joint> horizontal = joints("horizontal", in.horizontal, in.height, sheet);
        double strain = sheet.step("ε", "movement of the cladding, share of its length", "ε = e (hot − cold) + shrinkage",
            show(in.expansion, Unit.PPM_F) + " × " + degrees(in.hot - in.cold) + " + " + show(in.shrinkage, Unit.PERCENT),
            in.expansion * (in.hot - in.cold) + in.shrinkage, Unit.PERCENT, Sources.EXPANSION, Sources.SHRINKAGE,
            Sources.SURFACE_TEMPERATURES);
        List<Double> columns = between(vertical, in.width);
        List<Double> rows = between(horizontal, in.height);
        double acrossMost = 0;
        for (int i = 0; i < vertical.size(); i++) {
            acrossMost = Math.max(acrossMost, joint(in, sheet, "V" + (i + 1), "vertical joint ", vertical.get(i), columns.get(i),
                columns.get(i + 1), strain));
        }
        double upMost = 0;
        for (int i = 0; i < horizontal.size(); i++) {
            upMost = Math.max(upMost, joint(in, sheet, "H" + (i + 1), "horizontal joint ", horizontal.get(i), rows.get(i), rows.get(i + 1),
                strain));
        }
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                double w = columns.get(column);
                double h = rows.get(row);
                sheet.step("P" + (column + 1) + "." + (row + 1), "panel in column " + (column + 1) + ", row " + (row + 1),
                    "area = width × height", show(w, Unit.FT) + " × " + show(h, Unit.FT) + "; moves " + show(w * strain, Unit.IN)
                    + " across and " + show(h * strain, Unit.IN) + " up", w * h, Unit.FT2, Sources.GEOMETRY);
            }
        }
        double widest = columns.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double tallest = rows.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        sheet.result("panels", "panels", columns.size() * rows.size(), Unit.ONE);
        sheet.result("joints.vertical", "vertical joints", vertical.size(), Unit.ONE);
        sheet.result("joints.horizontal", "horizontal joints", horizontal.size(), Unit.ONE);
        sheet.result("joints.length", "length of all joints", vertical.size() * in.height + horizontal.size() * in.width, Unit.FT);
        sheet.result("panel.widest", "widest panel", widest, Unit.FT);
        sheet.result("panel.tallest", "tallest panel", tallest, Unit.FT);
        sheet.result("panel.largest", "largest panel", widest * tallest, Unit.FT2);
        sheet.result("movement.vertical", "greatest movement at a vertical joint", acrossMost, Unit.IN);
        sheet.result("movement.horizontal", "greatest movement at a horizontal joint", upMost, Unit.IN);
        in.longest.ifPresent(limit -> {
            sheet.margin(limit / Math.max(widest, tallest));
            if (Math.max(widest, tallest) > limit * (1 + 1e-9)) {
                sheet.warn("A panel is longer than the " + show(limit, Unit.FT) + " that the designer admits: another joint is due.");
            }
        });
        warn(in, sheet, columns, rows, vertical, horizontal);
        sheet.assume("Joints run straight through the whole elevation, through units, beds and lath.",
            "A joint takes half the movement of the panel on each side; at the edges another joint or a stop takes the rest.",
            "Finish plaster's grid (144 ft², 18 ft, 2-1/2 : 1) is not applied: a veneer's joints follow backing, structure and designer.");
    }

    private static double joint(Inputs in, Sheet sheet, String symbol, String label, Joint joint, double before, double after,
            double strain) {
        boolean track = joint.reasons.contains(JointLine.Reason.DEFLECTION_TRACK);
        boolean floor = joint.reasons.contains(JointLine.Reason.FLOOR_LINE);
        double structure = (track ? in.deflection : 0) + (floor ? in.floorMovement : 0);
        return sheet.step(symbol, label + "at " + show(joint.at, Unit.FT) + ": " + joint.why(),
            "M = ε (panel before + panel after) / 2 + structure", show(strain, Unit.PERCENT) + " × (" + show(before, Unit.FT) + " + "
            + show(after, Unit.FT) + ") / 2 + " + show(structure, Unit.IN), strain * (before + after) / 2 + structure, Unit.IN,
            Sources.JOINTS_DUE, Sources.EXPANSION);
    }

    private static List<Joint> joints(String key, List<JointLine> lines, double length, Sheet sheet) throws UnusableInput {
        List<Joint> joints = new ArrayList<>();
        for (JointLine line : lines.stream().sorted(Comparator.comparingDouble(JointLine::at)).toList()) {
            if (line.at() <= SAME || line.at() >= length - SAME) {
                throw sheet.refusal(key, "at " + show(line.at(), Unit.FT) + " isn't inside the elevation", "between its edges, 0 ft and "
                    + show(length, Unit.FT));
            }
            if (!joints.isEmpty() && line.at() - joints.get(joints.size() - 1).at <= SAME) {
                joints.get(joints.size() - 1).reasons.add(line.reason());
            } else {
                joints.add(new Joint(line.at(), EnumSet.of(line.reason())));
            }
        }
        return joints;
    }

    private static List<Double> between(List<Joint> joints, double length) {
        List<Double> spans = new ArrayList<>();
        double from = 0;
        for (Joint joint : joints) {
            spans.add(joint.at - from);
            from = joint.at;
        }
        spans.add(length - from);
        return spans;
    }

    private static void warn(Inputs in, Sheet sheet, List<Double> columns, List<Double> rows, List<Joint> vertical,
            List<Joint> horizontal) {
        if (columns.stream().anyMatch(w -> w < SLIVER) || rows.stream().anyMatch(h -> h < SLIVER)) {
            sheet.warn("A strip narrower than 1 ft lies between two joints: see whether they can be one.");
        }
        if (vertical.isEmpty() && horizontal.isEmpty()) {
            sheet.warn("No joint is given: see whether the backing has joints, the structure moves at floors, or the substrate changes.");
        }
        if (in.deflection == 0 && moves(horizontal, JointLine.Reason.DEFLECTION_TRACK)) {
            sheet.warn("A deflection track is given without its movement: ask the engineer.");
        }
        if (in.floorMovement == 0 && moves(horizontal, JointLine.Reason.FLOOR_LINE)) {
            sheet.warn("A floor line is given without its movement: platform frames of wood shrink there.");
        }
    }

    private static boolean moves(List<Joint> joints, JointLine.Reason reason) {
        return joints.stream().anyMatch(joint -> joint.reasons.contains(reason));
    }
}

package reglet.worksheets;

import static reglet.worksheets.Sheet.bare;
import static reglet.worksheets.Sheet.show;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import reglet.model.Basis;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** What has to be bought for a wall: measured first, then with laps and waste, each stated. */
public final class Takeoff {
    private static final double SHEET_WIDTH = Unit.IN.toSi(27);
    private static final double SHEET_LENGTH = Unit.IN.toSi(96);

    /**
     * @param areas           stretches of wall, openings included
     * @param netArea         of the wall to be covered, when it was measured whole, m²; else from the stretches and the openings
     * @param openings        holes in them
     * @param outsideCorners  length of outside edges, m
     * @param insideCorners   m
     * @param cornerWidth     of face that corner pieces cover for each length of corner, m
     * @param cornerWrap      how far barrier and lath go on round a corner, m
     * @param base            length of bottom edges, m
     * @param beads           length of stops and casing beads, m
     * @param joints          length of sealant joints, m
     * @param jointWidth      m
     * @param jointDepth      m
     * @param cartridge       m³
     * @param mat             whether there is a drainage mat
     * @param plies           of barrier
     * @param barrierRoll     width of the roll, m
     * @param barrierLap      m
     * @param lathLap         m, on all sides
     * @param studSpacing     m
     * @param fastenerSpacing m
     * @param scratch         thickness, m
     * @param bed             thickness, m
     * @param bag             volume that a bag of mortar fills, m³
     * @param unitLength      m
     * @param unitHeight      m
     * @param pointingWidth   of joints between units, m; 0 when they fit tight
     * @param pointingDepth   m
     * @param unitWaste       share
     * @param sheetWaste      of barrier, mat, lath and fasteners, share
     * @param mortarWaste     share
     * @param lengthWaste     of screed, beads and rod, share
     * @param sealantWaste    share
     */
    public record Inputs(List<Rectangle> areas, List<Rectangle> openings, OptionalDouble netArea, double outsideCorners,
            double insideCorners, double cornerWidth,
            double cornerWrap, double base, double beads, double joints, double jointWidth, double jointDepth, double cartridge,
            boolean mat, Plies plies, double barrierRoll, double barrierLap, double lathLap, double studSpacing, double fastenerSpacing,
                double scratch,
            double bed, double bag, double unitLength, double unitHeight, double pointingWidth, double pointingDepth, double unitWaste,
            double sheetWaste, double mortarWaste, double lengthWaste, double sealantWaste) {
    }

    /** Plies of the barrier. */
    public enum Plies implements Worded {
        ONE("1"), TWO("2");

        private final String text;

        Plies(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }

        int count() {
            return ordinal() + 1;
        }
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("takeoff", "Quantities", Inputs.class, List.of(
        InputSpec.rectangles("areas", "stretches of wall, openings included").maybe(),
        InputSpec.rectangles("openings", "openings").maybe(),
        InputSpec.quantity("net_area", "wall to be covered, when it was measured whole", Unit.FT2).within(1, 10_000_000, Sources.SANE)
            .maybe(),
        InputSpec.quantity("outside_corners", "length of outside corners", Unit.FT).within(0, 100_000, Sources.SANE).usually("0 ft"),
        InputSpec.quantity("inside_corners", "length of inside corners", Unit.FT).within(0, 100_000, Sources.SANE).usually("0 ft"),
        InputSpec.quantity("corner_width", "face that corner pieces cover, area for each length", Unit.FT).within(0, 3, Sources.CORNERS)
            .usually("0.75 ft") .help("0.75 ft is 0.75 ft² for each foot of corner."),
        InputSpec.quantity("corner_wrap", "how far barrier and lath go round a corner", Unit.IN).within(0, 48, Sources.CORNER_WRAP)
            .usually("16 in"),
        InputSpec.quantity("base", "length of bottom edges", Unit.FT).within(0, 100_000, Sources.SANE).usually("0 ft"),
        InputSpec.quantity("beads", "length of casing beads and stops", Unit.FT).within(0, 100_000, Sources.SANE).usually("0 ft"),
        InputSpec.quantity("joints", "length of sealant joints", Unit.FT).within(0, 100_000, Sources.SANE).usually("0 ft"),
        InputSpec.quantity("joint_width", "width of sealant joints", Unit.IN).within(0.125, 4, Sources.SEALANT_SHAPE).usually("1/2 in"),
        InputSpec.quantity("joint_depth", "depth of sealant", Unit.IN).within(0.125, 1, Sources.SEALANT_SHAPE).usually("1/4 in"),
        InputSpec.quantity("cartridge", "volume of a cartridge", Unit.FLOZ).within(1, 1_000, Sources.SANE).usually("10.1 fl oz"),
        InputSpec.yesNo("mat", "drainage mat").usually("yes"),
        InputSpec.word("plies", "plies of the barrier", Plies.values()).usually("2"),
        InputSpec.quantity("barrier_roll", "width of a roll of barrier", Unit.IN).within(12, 150, Sources.SANE).usually("36 in"),
        InputSpec.quantity("barrier_lap", "lap of barrier", Unit.IN).within(0, 11, Sources.BARRIER_LAP).usually("2 in"),
        InputSpec.quantity("lath_lap", "lap of lath on all sides", Unit.IN).within(0, 6, Sources.LATH_LAP).usually("1 in"),
        InputSpec.quantity("stud_spacing", "spacing of the framing", Unit.IN).within(8, 48, Sources.SANE).usually("16 in"),
        InputSpec.quantity("fastener_spacing", "spacing of fasteners along the framing", Unit.IN).within(1, 16, Sources.SANE)
            .usually("6 in"),
        InputSpec.quantity("scratch", "thickness of the scratch coat", Unit.IN).within(0, 2, Sources.COATS).usually("1/2 in"),
        InputSpec.quantity("bed", "thickness of the setting bed", Unit.IN).within(0, 2, Sources.COATS).usually("1/2 in"),
        InputSpec.quantity("bag", "volume that a bag of mortar fills", Unit.FT3).within(0.1, 5, Sources.BAG).usually("0.66 ft3"),
        InputSpec.quantity("unit_length", "average length of a unit's face", Unit.IN).within(1, 60, Sources.SANE).usually("12 in"),
        InputSpec.quantity("unit_height", "average height of a unit's face", Unit.IN).within(0.5, 60, Sources.SANE).usually("6 in"),
        InputSpec.quantity("pointing_width", "width of joints between units; 0 when they fit tight", Unit.IN).within(0, 2, Sources.SANE)
            .usually("0 in"),
        InputSpec.quantity("pointing_depth", "depth of pointing", Unit.IN).within(0, 3, Sources.SANE).usually("3/4 in"),
        InputSpec.quantity("unit_waste", "waste of units", Unit.PERCENT).within(0, 100, Sources.UNIT_WASTE).usually("10%"),
        InputSpec.quantity("sheet_waste", "waste of barrier, mat, lath and fasteners", Unit.PERCENT).within(0, 100, Sources.LAPS)
            .usually("10%"),
        InputSpec.quantity("mortar_waste", "waste of mortar", Unit.PERCENT).within(0, 100, Sources.LAPS).usually("10%"),
        InputSpec.quantity("length_waste", "laps and cuts of screed, beads and rod", Unit.PERCENT).within(0, 100, Sources.LAPS)
            .usually("5%"),
        InputSpec.quantity("sealant_waste", "waste of sealant", Unit.PERCENT).within(0, 100, Sources.LAPS).usually("10%")), Takeoff::write);

    private Takeoff() {
    }

    /**
     * Results to order, waste included: units.flat, barrier, mat (m²), units.corner, screed, beads, rod (m), lath, fasteners, bags.scratch,
     * bags.bed, bags.pointing, cartridges (whole counts); measured without waste: wall.gross, wall.net (m²).
     */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    private static void write(Inputs in, Sheet sheet) throws UnusableInput {
        double net = in.netArea.isPresent() ? sheet.step("An", "wall to be covered", "as measured", show(in.netArea.getAsDouble(),
            Unit.FT2),
            in.netArea.getAsDouble(), Unit.FT2, Sources.GEOMETRY) : net(in, sheet);
        double corners = sheet.step("Ac", "face covered by corner pieces", "Ac = outside corners × face a length",
            show(in.outsideCorners, Unit.FT) + " × " + show(in.cornerWidth, Unit.FT), in.outsideCorners * in.cornerWidth, Unit.FT2,
            Sources.CORNERS);
        if (corners > net) {
            throw sheet.refusal("outside_corners", "cover " + show(corners, Unit.FT2), "no more than the wall, " + show(net, Unit.FT2));
        }
        sheet.result("wall.net", "wall to be covered", net, Unit.FT2);
        double flat = sheet.step("Af", "flat units", "Af = An − Ac", show(net, Unit.FT2) + " − " + show(corners, Unit.FT2), net - corners,
            Unit.FT2, Sources.GEOMETRY);
        order(sheet, "units.flat", "flat units", flat, in.unitWaste, Unit.FT2, Sources.UNIT_WASTE);
        order(sheet, "units.corner", "corner units", in.outsideCorners, in.unitWaste, Unit.FT, Sources.UNIT_WASTE);

        double wrapped = sheet.step("Aw", "wall and what goes round corners", "Aw = An + corners × wrap", show(net, Unit.FT2) + " + ("
            + show(in.outsideCorners, Unit.FT) + " + " + show(in.insideCorners, Unit.FT) + ") × " + show(in.cornerWrap, Unit.IN),
            net + (in.outsideCorners + in.insideCorners) * in.cornerWrap, Unit.FT2, Sources.CORNER_WRAP);
        double barrier = sheet.step("Ab", "barrier with laps", "Ab = plies × Aw × roll / (roll − lap)", in.plies.text() + " × "
            + show(wrapped, Unit.FT2) + " × " + show(in.barrierRoll, Unit.IN) + " / " + show(in.barrierRoll - in.barrierLap, Unit.IN),
            in.plies.count() * wrapped * in.barrierRoll / (in.barrierRoll - in.barrierLap), Unit.FT2, Sources.BARRIER_LAP);
        order(sheet, "barrier", "barrier, all plies, laps included", barrier, in.sheetWaste, Unit.FT2, Sources.LAPS);
        if (in.mat) {
            order(sheet, "mat", "drainage mat, edges butted", net, in.sheetWaste, Unit.FT2, Sources.LAPS);
        }
        double covers = (SHEET_WIDTH - in.lathLap) * (SHEET_LENGTH - in.lathLap);
        double sheets = sheet.step("nl", "sheets of lath", "nl = Aw / ((27 in − lap) (96 in − lap))", show(wrapped, Unit.FT2) + " / "
            + show(covers, Unit.FT2), wrapped / covers, Unit.ONE, Sources.LATH_SHEET, Sources.LATH_LAP);
        whole(sheet, "lath", "sheets of lath, 27 by 96 in", sheets, in.sheetWaste, Sources.LAPS);
        double fasteners = sheet.step("nf", "fasteners", "nf = An / (stud spacing × spacing)", show(net, Unit.FT2) + " / ("
            + show(in.studSpacing, Unit.IN) + " × " + show(in.fastenerSpacing, Unit.IN) + ")", net / (in.studSpacing * in.fastenerSpacing),
            Unit.ONE, Sources.GEOMETRY);
        whole(sheet, "fasteners", "fasteners of lath", fasteners, in.sheetWaste, Sources.LAPS);

        order(sheet, "screed", "weep screed", in.base, in.lengthWaste, Unit.FT, Sources.LAPS);
        order(sheet, "beads", "casing beads and stops", in.beads, in.lengthWaste, Unit.FT, Sources.LAPS);
        mortar(in, sheet, "scratch", "scratch coat", net * in.scratch, show(net, Unit.FT2) + " × " + show(in.scratch, Unit.IN));
        mortar(in, sheet, "bed", "setting bed", net * in.bed, show(net, Unit.FT2) + " × " + show(in.bed, Unit.IN));
        double share = sheet.step("j", "share of the face that is joint", "j = 1 − l h / ((l + w) (h + w))", "l "
            + show(in.unitLength, Unit.IN) + ", h " + show(in.unitHeight, Unit.IN) + ", w " + show(in.pointingWidth, Unit.IN),
            1 - in.unitLength * in.unitHeight
                / ((in.unitLength + in.pointingWidth) * (in.unitHeight + in.pointingWidth)), Unit.PERCENT, Sources.GEOMETRY);
        mortar(in, sheet, "pointing", "pointing", net * share * in.pointingDepth, show(net, Unit.FT2) + " × " + show(share, Unit.PERCENT)
            + " × " + show(in.pointingDepth, Unit.IN));
        order(sheet, "rod", "backer rod", in.joints, in.lengthWaste, Unit.FT, Sources.LAPS);
        double yield = SealantJoint.filled(in.cartridge, in.jointWidth, in.jointDepth);
        double cartridges = sheet.step("nc", "cartridges of sealant", "nc = joints × width × depth / volume", show(in.joints, Unit.FT)
            + " / " + show(yield, Unit.FT), in.joints / yield, Unit.ONE, Sources.CARTRIDGE);
        whole(sheet, "cartridges", "cartridges of sealant", cartridges, in.sealantWaste, Sources.LAPS);
        sheet.assume("Openings are taken out of every layer; what is cut out of a sheet at an opening is waste.",
            "Every coat covers the whole wall, corners included, at its full thickness.",
            "Fasteners along edges, openings and joints beyond the regular pattern are part of the waste.",
            "Lap factors hold for walls larger than a sheet; small pieces take more waste.",
            "Bags are counted for the volume they fill on the label, mixed.");
    }

    private static double net(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.areas.isEmpty()) {
            throw sheet.refusal("areas", "are missing", "the stretches of wall, or net_area");
        }
        double gross = sheet.step("A", "wall, openings included", "A = Σ width × height", sum(in.areas), area(in.areas), Unit.FT2,
            Sources.GEOMETRY);
        double holes = sheet.step("Ao", "openings", "Ao = Σ width × height", in.openings.isEmpty() ? "none" : sum(in.openings),
            area(in.openings), Unit.FT2, Sources.GEOMETRY);
        if (holes >= gross) {
            throw sheet.refusal("openings", "of " + show(holes, Unit.FT2) + " leave no wall", "less than areas, " + show(gross, Unit.FT2));
        }
        double net = sheet.step("An", "wall to be covered", "An = A − Ao", show(gross, Unit.FT2) + " − " + show(holes, Unit.FT2),
            gross - holes, Unit.FT2, Sources.GEOMETRY);
        sheet.result("wall.gross", "wall, openings included", gross, Unit.FT2);
        return net;
    }

    private static void mortar(Inputs in, Sheet sheet, String key, String label, double volume, String substitution) {
        sheet.step("V", "mortar of the " + label, "V = area × thickness", substitution, volume, Unit.FT3, Sources.GEOMETRY);
        whole(sheet, "bags." + key, "bags of mortar, " + label, volume / in.bag, in.mortarWaste, Sources.BAG);
    }

    private static void order(Sheet sheet, String key, String label, double measured, double waste, Unit unit, Basis basis) {
        double ordered = sheet.step("order", "order " + label, "measured (1 + waste)", show(measured, unit) + " × (1 + "
            + show(waste, Unit.PERCENT) + ")", measured * (1 + waste), unit, basis);
        sheet.result(key, label, ordered, unit);
    }

    private static void whole(Sheet sheet, String key, String label, double measured, double waste, Basis basis) {
        // A count that is whole but for the last binary digits isn't rounded up once more.
        double ordered = sheet.step("order", "order " + label, "measured (1 + waste), rounded up", bare(measured) + " × (1 + "
            + show(waste, Unit.PERCENT) + ")", Math.ceil(measured * (1 + waste) - 1e-7), Unit.ONE, basis);
        sheet.result(key, label, ordered, Unit.ONE);
    }

    private static double area(List<Rectangle> rectangles) {
        return rectangles.stream().mapToDouble(Rectangle::area).sum();
    }

    private static String sum(List<Rectangle> rectangles) {
        return rectangles.stream().map(r -> show(r.width(), Unit.FT) + " × " + show(r.height(), Unit.FT)
            + (r.count() == 1 ? "" : " × " + r.count())) .collect(Collectors.joining(" + "));
    }
}

package reglet.worksheets;

import static reglet.worksheets.Sheet.bare;
import static reglet.worksheets.Sheet.show;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

import reglet.model.Basis;
import reglet.model.Chart;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/**
 * How closely the lath must be fastened to the framing: the fastener carries the whole installed weight sideways, across everything
 * between the lath and the framing, and wind or earthquake lengthwise.
 *
 * <p>Wood framing: lateral value by {@link Dowel}, withdrawal by {@link Nds}. Steel framing: the demand and the pull-out only; bending of
 * the screw across a gap has no published equation for thin sheet, so no spacing is given.
 */
public final class LathFastening {
    private static final double DEAD = 0.9;
    private static final double SHORT = 1.6;
    private static final double STEEL_SAFETY = 3;
    private static final double WIDEST_GAP = Unit.IN.toSi(4);
    private static final double CLOSE = Unit.IN.toSi(3);

    /** What the framing is of. */
    public enum Framing implements Worded {
        WOOD, STEEL;

        @Override
        public String text() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Species of the framing, with its specific gravity. */
    public enum Species implements Worded {
        SPRUCE_PINE_FIR("spruce-pine-fir", 0.42), HEM_FIR("hem-fir", 0.43), DOUGLAS_FIR_NORTH("douglas fir-larch (north)", 0.49),
        DOUGLAS_FIR("douglas fir-larch", 0.50), SOUTHERN_PINE("southern pine", 0.55);

        private final String text;
        private final double gravity;

        Species(String text, double gravity) {
            this.text = text;
            this.gravity = gravity;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /** Kind of fastener. */
    public enum Fastener implements Worded {
        NAIL, SCREW, STAPLE;

        @Override
        public String text() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** How the lath and its coat hold the head. */
    public enum Head implements Worded {
        FREE("free to turn"), HELD("held upright");

        private final String text;

        Head(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /** Steel sheet: design thickness, in, and tensile strength, psi. */
    public enum Sheetsteel implements Worded {
        MIL_33("33", 0.0346, 45_000), MIL_43("43", 0.0451, 45_000), MIL_54("54", 0.0566, 65_000), MIL_68("68", 0.0713, 65_000);

        private final String text;
        private final double thickness;
        private final double tensile;

        Sheetsteel(String text, double thickness, double tensile) {
            this.text = text;
            this.thickness = Unit.IN.toSi(thickness);
            this.tensile = Unit.PSI.toSi(tensile);
        }

        @Override
        public String text() {
            return text;
        }
    }

    /**
     * @param gravity        specific gravity of the wood; else by its species
     * @param diameter       of the shank (nail, screw) or the wire (staple), m
     * @param root           of a screw under its thread, m
     * @param length         of the fastener under its head, m
     * @param weight         wet, of everything the fasteners hang up, Pa
     * @param suction        of the wind, allowable stress, Pa, 0 or more
     * @param seismic        horizontal force, allowable stress, Pa
     * @param vertical       vertical earthquake force, allowable stress, Pa
     * @param mat            depth of the mat or cavity, m
     * @param insulation     thickness outside the sheathing, m
     * @param sheathing      thickness, m
     * @param sheathingBears whether the sheathing is a wood panel hard against the framing, counted as part of it
     * @param coat           length of the fastener that lath and coat bear on, m
     * @param coatBearing    bearing strength there, Pa
     * @param slipFactor     divides the yield value under permanent load, to keep slip small
     * @param bendingYield   bending yield strength of the fastener, Pa; else by the table of common nails
     * @param studSpacing    m
     * @param spacing        chosen along the framing, m
     */
    public record Inputs(Framing framing, Species species, OptionalDouble gravity, Fastener fastener, boolean stapleAccepted,
            double diameter, OptionalDouble root,
            double length, double weight, double suction, double seismic, double vertical, double mat, double insulation, double sheathing,
            boolean sheathingBears, Head head, double coat, double coatBearing, double slipFactor, OptionalDouble bendingYield,
            double studSpacing, double spacing, Weight.Edition edition, Sheetsteel steel) {

        double specificGravity() {
            return gravity.orElse(species.gravity);
        }

        double gap() {
            return mat + insulation + (sheathingBears ? 0 : sheathing);
        }

        double penetration() {
            return length - mat - insulation - sheathing;
        }
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("lath_fastening", "Fastening of the lath to the framing", Inputs.class,
        List.of(
        InputSpec.word("framing", "framing", Framing.values()).usually("wood"),
        InputSpec.word("species", "species of wood framing", Species.values()).usually("spruce-pine-fir"),
        InputSpec.quantity("gravity", "specific gravity of the wood, when it is known better than by species", Unit.ONE)
            .within(0.31, 0.73, Sources.GRAVITIES).maybe(),
        InputSpec.word("fastener", "kind of fastener", Fastener.values()).usually("nail"),
        InputSpec.yesNo("staple_accepted", "staples are accepted by the specifier"),
        InputSpec.quantity("diameter", "diameter of the shank or of the staple's wire", Unit.IN).within(0.05, 0.2499, Sources.DIAMETER)
            .usually("0.120 in"),
        InputSpec.quantity("root", "diameter of a screw under its thread", Unit.IN).within(0.05, 0.2499, Sources.DIAMETER).maybe(),
        InputSpec.quantity("length", "length of the fastener", Unit.IN).within(0.5, 12, Sources.SANE),
        InputSpec.quantity("weight", "wet weight of everything the fasteners hang up", Unit.PSF).within(1, 80, Sources.SANE)
            .help("The whole installed wall outside the sheathing, not the unit alone: see the worksheet weight."),
        InputSpec.quantity("suction", "wind suction, allowable stress", Unit.PSF).within(0, 200, Sources.SANE),
        InputSpec.quantity("seismic", "horizontal earthquake force, allowable stress", Unit.PSF).within(0, 200, Sources.SANE)
            .usually("0 psf"),
        InputSpec.quantity("vertical", "vertical earthquake force, allowable stress", Unit.PSF).within(0, 50, Sources.SANE)
            .usually("0 psf"),
        InputSpec.quantity("mat", "depth of the drainage mat or cavity", Unit.IN).within(0, 2, Sources.SANE),
        InputSpec.quantity("insulation", "thickness of insulation outside the sheathing", Unit.IN).within(0, 4, Sources.FOAM)
            .usually("0 in"),
        InputSpec.quantity("sheathing", "thickness of the sheathing", Unit.IN).within(0, 2, Sources.SANE).usually("7/16 in"),
        InputSpec.yesNo("sheathing_bears", "sheathing is a wood panel hard against wood framing and is counted as part of it")
            .help("No: the sheathing counts as gap, which is on the safe side."),
        InputSpec.word("head", "how lath and coat hold the head", Head.values()).usually("free to turn"),
        InputSpec.quantity("coat", "length of fastener that lath and coat bear on", Unit.IN).within(0.25, 1, Sources.COATS)
            .usually("3/8 in"),
        InputSpec.quantity("coat_bearing", "bearing strength there", Unit.PSI).within(500, 10_000, Sources.COAT_BEARING)
            .usually("3350 psi"),
        InputSpec.quantity("slip_factor", "factor that keeps slip under permanent load small", Unit.ONE).within(1, 3, Sources.SLIP)
            .usually("1.5"),
        InputSpec.quantity("bending_yield", "bending yield strength of the fastener", Unit.PSI).within(40_000, 250_000,
            Sources.BENDING_YIELD).maybe(),
        InputSpec.quantity("stud_spacing", "spacing of the framing", Unit.IN).within(8, 24, Sources.FRAMING_SPACING).usually("16 in"),
        InputSpec.quantity("spacing", "chosen spacing along the framing", Unit.IN).within(1, 16, Sources.SANE).usually("6 in"),
        InputSpec.word("edition", "edition of the building code", Weight.Edition.values()).usually("2021"),
        InputSpec.word("steel", "sheet of steel framing, mil", Sheetsteel.values()).usually("33")), LathFastening::write,
            LathFastening::charts);

    private LathFastening() {
    }

    /**
     * Results of wood framing: gap, penetration (m), lateral, lateral.permanent, withdrawal (N each), demand.lateral, demand.withdrawal (N
     * each at the chosen spacing), spacing.permanent, spacing.wind, spacing.seismic (m, where they apply), spacing.code, spacing.largest
     * (m, rounded down), gap.largest (m). Results of steel framing: demands, pull.out (N), no spacing.
     */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    /**
     * Capacity of one fastener under permanent load against the gap, penetration kept; a curve for each model of the head. None for steel.
     */
    private static List<Chart> charts(Inputs in) {
        if (in.framing == Framing.STEEL) {
            return List.of();
        }
        List<Chart.Point> free = new ArrayList<>();
        List<Chart.Point> held = new ArrayList<>();
        for (int sixteenth = 0; sixteenth <= 64; sixteenth++) {
            Dowel dowel = dowel(in).across(Unit.IN.toSi(sixteenth / 16.0));
            free.add(point(in, dowel.gap(), Dowel.least(dowel.free())));
            held.add(point(in, dowel.gap(), Dowel.least(dowel.held())));
        }
        return List.of(new Chart("What one fastener carries across the gap", new Chart.Axis("gap between lath and framing", Unit.IN),
            new Chart.Axis("permanent load on one fastener", Unit.LBF),
            List.of(new Chart.Curve(Head.FREE.text, free), new Chart.Curve(Head.HELD.text, held))));
    }

    private static Chart.Point point(Inputs in, double gap, Dowel.Yield yield) {
        return new Chart.Point(gap, DEAD * reference(in, yield) / in.slipFactor, yield.mode().symbol());
    }

    private static void write(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.framing == Framing.STEEL) {
            writeSteel(in, sheet);
        } else {
            writeWood(in, sheet);
        }
    }

    private static void writeWood(Inputs in, Sheet sheet) throws UnusableInput {
        refuseUnfit(in, sheet);
        double p = penetration(in, sheet);
        double least = 6 * in.diameter;
        if (p < least * (1 - 1e-9)) {
            throw sheet.refusal("length", "of " + show(in.length, Unit.IN) + " leaves " + show(Math.max(0, p), Unit.IN) + " in the framing",
                "at least " + show(least, Unit.IN) + "; " + Sources.PENETRATION.text());
        }
        gap(in, sheet);
        Capacity capacity = capacity(in, sheet, p);
        double zDead = capacity.permanent;
        double zShort = capacity.lateral;
        double w = capacity.withdrawal;
        demand(in, sheet);
        double permanent = sheet.step("sD", "spacing under permanent load", "sD = Z'D / (weight × stud spacing)", show(zDead, Unit.LBF)
            + " / (" + load(in.weight, in) + ")", zDead / (in.weight * in.studSpacing), Unit.IN, Sources.GEOMETRY);
        double wind = sheet.step("sW", "spacing under weight and suction", "sW = 1 / (stud spacing × (weight/Z' + suction/W'))",
            "1 / (" + show(in.studSpacing, Unit.IN) + " × (" + share(in.weight, zShort) + " + " + share(in.suction, w) + "))",
            1 / (in.studSpacing * (in.weight / zShort + in.suction / w)), Unit.IN, Sources.COMBINED);
        double needed = Math.min(permanent, wind);
        boolean quake = in.seismic > 0 || in.vertical > 0;
        if (quake) {
            double down = in.weight + in.vertical;
            double out = 1 / (in.studSpacing * (down / zShort + in.seismic / w));
            double along = zShort / (in.studSpacing * Math.hypot(down, in.seismic));
            double seismic = sheet.step("sE", "spacing under weight and earthquake, out of the wall or along it",
                "sE = least of 1 / (stud spacing × (down/Z' + out/W')) and Z' / (stud spacing × √(down² + along²))",
                "down " + show(down, Unit.PSF) + ", out or along " + show(in.seismic, Unit.PSF), Math.min(out, along), Unit.IN,
                Sources.COMBINED, Sources.SEISMIC_ASD);
            sheet.result("spacing.seismic", "spacing under weight and earthquake", seismic, Unit.IN);
            needed = Math.min(needed, seismic);
        }
        Basis codeBasis = in.edition == Weight.Edition.IBC_2018 ? Sources.LATH_SPACING_2018 : Sources.LATH_SPACING;
        double code = sheet.step("sc", "widest spacing of the code", "sc", "edition " + in.edition.text(),
            Unit.IN.toSi(in.edition == Weight.Edition.IBC_2018 ? 6 : 7), Unit.IN, codeBasis);
        double largest = sheet.step("s", "largest spacing permitted, rounded down to 1/2 in", "s = least of the spacings",
            "least of " + show(needed, Unit.IN) + " and " + show(code, Unit.IN), halfInches(Math.min(needed, code)), Unit.IN, codeBasis);
        double widest = widestGap(in);
        sheet.step("g max", "largest gap across which the chosen spacing carries the permanent load, penetration kept",
            "solve sD = spacing for g, up to 4 in", "spacing " + show(in.spacing, Unit.IN), widest, Unit.IN, Sources.TR12);

        sheet.result("gap", "gap between lath and framing", in.gap(), Unit.IN);
        sheet.result("penetration", "penetration into the framing", p, Unit.IN);
        sheet.result("spacing.permanent", "spacing under permanent load", permanent, Unit.IN);
        sheet.result("spacing.wind", "spacing under weight and suction", wind, Unit.IN);
        sheet.result("spacing.code", "widest spacing of the code", code, Unit.IN);
        sheet.result("spacing.largest", "largest spacing permitted", largest, Unit.IN);
        sheet.result("gap.largest", "largest gap across which the chosen spacing carries the permanent load", widest, Unit.IN);
        sheet.margin(Math.min(needed, code) / in.spacing);
        warnWood(in, sheet, p, needed, code);
        sheet.assume("No bearing value of lath in its coat was found: they bear on the fastener no better than softwood.",
            in.head == Head.FREE ? "The head is held in place but free to turn; held upright it would carry more: conservative judgement."
                : "The head is held upright as a wood side member would hold it: less conservative than a head free to turn.",
            in.sheathingBears ? "The sheathing is a wood panel hard against the framing and bears at least as well as the framing."
                : "Mat, insulation and sheathing all count as gap; whatever they bear is not counted.",
            "For permanent load the duration factor 0.9 joins the slip factor; the code's table for foam uses the slip factor alone.",
            "Tension from the weight's distance to the wall is spread over the whole height of lath, not added to one fastener.",
            "Framing is dry in service; fasteners stand in side grain, far enough from ends and edges.",
            "A fastener is driven where the lath touches what is behind it.",
            "Screws take the straight-line combination of nails, which is on the safe side; all of their penetration is thread.");
        sheet.warn("Not computed: the head pulling through the lath, strength of lath and coat between fasteners and of the framing.");
    }

    /** What one fastener carries, N: sideways for good, sideways with wind or earthquake, lengthwise with them. */
    private record Capacity(double permanent, double lateral, double withdrawal) {
    }

    private static Capacity capacity(Inputs in, Sheet sheet, double p) {
        double d = in.diameter;
        Dowel dowel = dowel(in);
        sheet.step("lm", "bearing length in the framing", "lm = p, less the point (2 D) when p < 10 D, and the sheathing where it bears",
            show(p, Unit.IN) + (bearsToThePoint(in) ? "" : " − 2 × " + show(d, Unit.IN)) + (in.sheathingBears ? " + "
            + show(in.sheathing, Unit.IN) : ""), dowel.mainLength(), Unit.IN, Sources.POINT);
        sheet.step("Fem", "dowel bearing strength of the framing, G " + bare(in.specificGravity()),
            "Fem = 16600 G^1.84, to the nearest 50 psi",
            "16600 × " + bare(in.specificGravity()) + "^1.84", dowel.mainBearing(), Unit.PSI, Sources.DOWEL_BEARING, Sources.GRAVITIES);
        sheet.step("Fes", "bearing strength of lath and coat", "Fes", "over " + show(in.coat, Unit.IN), dowel.sideBearing(), Unit.PSI,
            Sources.COAT_BEARING);
        sheet.step("Fyb", "bending yield strength of the fastener", "Fyb", "for D = " + show(dowel.diameter(), Unit.IN),
            dowel.bendingYield(), Unit.PSI, Sources.BENDING_YIELD);
        double kd = sheet.step("Kd", "reduction term", "Kd = 2.2 up to 0.17 in, then 10 D + 0.5", "D = " + show(dowel.diameter(), Unit.IN),
            Nds.reduction(dowel.diameter()), Unit.ONE, Sources.KD_DOWEL);
        Dowel.Yield yield = governing(in, dowel);
        Basis[] model = in.head == Head.FREE ? new Basis[] {Sources.TR12, Sources.FREE_HEAD} : new Basis[] {Sources.TR12};
        sheet.step("P", "yield load, mode " + yield.mode().symbol() + " governs: " + yield.mode().text(),
            "least root of A P² + B P + C = 0 over the modes",
            "D " + show(dowel.diameter(), Unit.IN) + ", lm " + show(dowel.mainLength(), Unit.IN) + ", ls "
            + show(dowel.sideLength(), Unit.IN) + ", g " + show(dowel.gap(), Unit.IN), yield.load(), Unit.LBF, model);
        int legs = legs(in);
        double z = sheet.step("Z", "lateral value of one fastener", "Z = " + (legs == 2 ? "2 " : "") + "P / Kd", (legs == 2 ? "2 × " : "")
            + show(yield.load(), Unit.LBF) + " / " + bare(kd), reference(in, yield), Unit.LBF, in.fastener == Fastener.STAPLE
                ? new Basis[] {Sources.KD_DOWEL, Sources.WITHDRAWAL_STAPLE} : new Basis[] {Sources.KD_DOWEL});
        double zDead = sheet.step("Z'D", "under permanent load, slip kept small", "Z'D = 0.9 Z / slip factor", "0.9 × " + show(z, Unit.LBF)
            + " / " + bare(in.slipFactor), DEAD * z / in.slipFactor, Unit.LBF, Sources.DEAD_DURATION, Sources.SLIP);
        double zShort = sheet.step("Z'", "with wind or earthquake", "Z' = 1.6 Z", "1.6 × " + show(z, Unit.LBF), SHORT * z, Unit.LBF,
            Sources.SHORT_DURATION);
        double perLength = in.fastener == Fastener.SCREW ? Nds.screwWithdrawal(in.specificGravity(), d)
            : legs * Nds.nailWithdrawal(in.specificGravity(), d);
        double w = sheet.step("W'", "withdrawal with wind or earthquake", in.fastener == Fastener.SCREW ? "W' = 1.6 × 2850 G² D p"
            : "W' = 1.6 × " + (legs == 2 ? "2 × " : "") + "1380 G^2.5 D p",
            "1.6 × " + show(perLength, Unit.LBF_IN) + " × " + show(p, Unit.IN), SHORT * perLength * p, Unit.LBF, Sources.SHORT_DURATION,
            in.fastener == Fastener.SCREW ? Sources.WITHDRAWAL_SCREW : in.fastener == Fastener.STAPLE ? Sources.WITHDRAWAL_STAPLE
            : Sources.WITHDRAWAL_NAIL);
        sheet.result("lateral", "lateral value of one fastener", z, Unit.LBF);
        sheet.result("lateral.permanent", "lateral value under permanent load, slip kept small", zDead, Unit.LBF);
        sheet.result("withdrawal", "withdrawal value with wind or earthquake", w, Unit.LBF);
        return new Capacity(zDead, zShort, w);
    }

    private static void warnWood(Inputs in, Sheet sheet, double penetration, double needed, double code) {
        if (in.spacing > Math.min(needed, code) * (1 + 1e-9)) {
            sheet.warn("The chosen spacing of " + show(in.spacing, Unit.IN) + " is wider than permitted.");
        }
        if (needed < CLOSE) {
            sheet.warn("Fasteners closer than 3 in split framing: take a thicker one, closer framing, a smaller gap or a lighter wall.");
        }
        if (penetration < Unit.IN.toSi(0.75) * (1 - 1e-9)) {
            sheet.warn("Less than 3/4 in goes into the framing. " + Sources.LATH_PENETRATION.text());
        }
        if (in.insulation > 0 && penetration < Unit.IN.toSi(1.25) * (1 - 1e-9)) {
            sheet.warn("Over foam, less than 1-1/4 in goes into the framing. " + Sources.FOAM.text());
        }
    }

    private static void refuseUnfit(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.fastener == Fastener.STAPLE && !in.stapleAccepted) {
            throw sheet.refusal("fastener", "can't be staple unless the specifier accepts it",
                "staple_accepted=yes, or a nail or screw; " + Sources.WITHDRAWAL_STAPLE.text());
        }
        if (in.fastener == Fastener.SCREW && in.root.isEmpty()) {
            throw sheet.refusal("root", "is missing", "a screw bends under its thread: give the diameter there, from its data sheet");
        }
        if (in.root.orElse(0) > in.diameter * (1 + 1e-9)) {
            throw sheet.refusal("root", "of " + show(in.root.getAsDouble(), Unit.IN) + " is more than the shank", "no more than "
                + show(in.diameter, Unit.IN));
        }
    }

    private static void writeSteel(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.fastener != Fastener.SCREW) {
            throw sheet.refusal("fastener", "can't be " + in.fastener.text() + " in steel framing", "screw");
        }
        double p = penetration(in, sheet);
        if (p <= 0) {
            throw sheet.refusal("length", "of " + show(in.length, Unit.IN) + " doesn't reach the framing", "more than "
                + show(in.length - p, Unit.IN));
        }
        gap(in, sheet);
        demand(in, sheet);
        double nominal = 0.85 * in.steel.thickness * in.diameter * in.steel.tensile;
        double pull = sheet.step("Pnot/Ω", "pull-out of one screw, allowable", "0.85 t d Fu / 3", "0.85 × "
            + show(in.steel.thickness, Unit.IN) + " × " + show(in.diameter, Unit.IN) + " × " + show(in.steel.tensile, Unit.PSI) + " / 3",
            nominal / STEEL_SAFETY, Unit.LBF, Sources.STEEL_PULL_OUT, Sources.STEEL_SHEET, Sources.STEEL_STRENGTH);
        sheet.result("gap", "gap between lath and framing", in.gap(), Unit.IN);
        sheet.result("pull.out", "pull-out of one screw, allowable", pull, Unit.LBF);
        double force = Math.max(in.suction, in.seismic) * in.studSpacing * in.spacing;
        if (force > pull) {
            sheet.warn("At the chosen spacing a screw would be pulled out of the steel.");
        }
        sheet.warn("Computed: what one screw carries, and its pull-out. Not computed: its bending across the gap, tilting in the sheet, "
            + "pulling through the lath.");
        sheet.warn("No spacing is given: an engineer, the code's tables for steel framing or the maker's report must give it.");
        sheet.assume("No published equation was found for a screw bending across a gap out of thin sheet; none is invented.",
            "Three threads go past the steel, and the screw is made for it.");
    }

    private static double penetration(Inputs in, Sheet sheet) {
        double p = in.penetration();
        return sheet.step("p", "penetration into the framing", "p = length − mat − insulation − sheathing", show(in.length, Unit.IN) + " − "
            + show(in.mat, Unit.IN) + " − " + show(in.insulation, Unit.IN) + " − " + show(in.sheathing, Unit.IN), p, Unit.IN,
            Sources.GEOMETRY, Sources.PENETRATION);
    }

    private static void gap(Inputs in, Sheet sheet) {
        sheet.step("g", "gap between lath and framing", "g = mat + insulation" + (in.sheathingBears ? "" : " + sheathing"),
            show(in.mat, Unit.IN) + " + " + show(in.insulation, Unit.IN) + (in.sheathingBears ? "" : " + " + show(in.sheathing, Unit.IN)),
            in.gap(), Unit.IN, Sources.TR12);
    }

    private static void demand(Inputs in, Sheet sheet) {
        double tributary = in.studSpacing * in.spacing;
        double lateral = sheet.step("V", "weight on one fastener at the chosen spacing", "V = weight × stud spacing × spacing",
            load(in.weight, in) + " × " + show(in.spacing, Unit.IN), in.weight * tributary, Unit.LBF, Sources.GEOMETRY);
        double pull = sheet.step("T", "pull on one fastener at the chosen spacing",
            "T = the greater of suction and earthquake × stud spacing × spacing", load(Math.max(in.suction, in.seismic), in) + " × "
            + show(in.spacing, Unit.IN), Math.max(in.suction, in.seismic) * tributary, Unit.LBF, Sources.GEOMETRY);
        sheet.result("demand.lateral", "weight on one fastener at the chosen spacing", lateral, Unit.LBF);
        sheet.result("demand.withdrawal", "pull on one fastener at the chosen spacing", pull, Unit.LBF);
    }

    private static Dowel dowel(Inputs in) {
        double d = in.fastener == Fastener.SCREW ? in.root.orElse(in.diameter) : in.diameter;
        double main = (bearsToThePoint(in) ? in.penetration() : in.penetration() - 2 * in.diameter) + (in.sheathingBears ? in.sheathing
            : 0);
        return new Dowel(d, in.bendingYield.orElse(Nds.bendingYield(d)), Nds.bearing(in.specificGravity()), main, in.coatBearing, in.coat,
            in.gap());
    }

    private static boolean bearsToThePoint(Inputs in) {
        return in.penetration() >= 10 * in.diameter * (1 - 1e-9);
    }

    private static Dowel.Yield governing(Inputs in, Dowel dowel) {
        return Dowel.least(in.head == Head.FREE ? dowel.free() : dowel.held());
    }

    /** Z of one fastener, N: both legs of a staple. */
    private static double reference(Inputs in, Dowel.Yield yield) {
        return legs(in) * yield.load() / Nds.reduction(dowel(in).diameter());
    }

    private static int legs(Inputs in) {
        return in.fastener == Fastener.STAPLE ? 2 : 1;
    }

    /** The gap at which the chosen spacing is just carried under permanent load; 0 when it never is, 4 in when it always is. */
    private static double widestGap(Inputs in) {
        Dowel dowel = dowel(in);
        double demand = in.weight * in.studSpacing * in.spacing;
        DoubleUnaryOperator spare = gap -> DEAD * reference(in, governing(in, dowel.across(gap))) / in.slipFactor - demand;
        if (spare.applyAsDouble(0) <= 0) {
            return 0;
        }
        if (spare.applyAsDouble(WIDEST_GAP) >= 0) {
            return WIDEST_GAP;
        }
        return new BrentSolver(1e-9).solve(200, spare::applyAsDouble, 0, WIDEST_GAP);
    }

    private static double halfInches(double metres) {
        return Unit.IN.toSi(Math.floor(Unit.IN.fromSi(metres) * 2 + 1e-9) / 2);
    }

    private static String load(double pressure, Inputs in) {
        return show(pressure, Unit.PSF) + " × " + show(in.studSpacing, Unit.IN);
    }

    private static String share(double pressure, double capacity) {
        return show(pressure, Unit.PSF) + "/" + show(capacity, Unit.LBF);
    }
}

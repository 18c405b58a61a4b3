package reglet.worksheets;

import static reglet.worksheets.Sheet.bare;
import static reglet.worksheets.Sheet.degrees;
import static reglet.worksheets.Sheet.show;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Width, depth, rod and sealant of a joint that opens and closes from the temperatures at which it may be filled. */
public final class SealantJoint {
    private static final double LEAST_WIDTH = Unit.IN.toSi(0.25);
    private static final double LEAST_DEPTH = Unit.IN.toSi(0.25);
    private static final double GREATEST_DEPTH = Unit.IN.toSi(0.5);
    /** Diameters of backer rod that the trade keeps, in. */
    private static final double[] RODS = {0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25, 1.5, 2, 2.5, 3, 4};

    /** Class of the sealant: movement it takes when pulled and when pressed, share of the width. */
    public enum Capability implements Worded {
        C12("12.5", 0.125, 0.125), C25("25", 0.25, 0.25), C35("35", 0.35, 0.35), C50("50", 0.5, 0.5), C100("100/50", 1.0, 0.5);

        private final String text;
        private final double opening;
        private final double closing;

        Capability(String text, double opening, double closing) {
            this.text = text;
            this.opening = opening;
            this.closing = closing;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /**
     * @param length      of the wall whose movement the joint takes, m
     * @param expansion   1/K
     * @param cold        lowest temperature of the cladding, K
     * @param hot         highest, K
     * @param installCold lowest at which the joint is filled, K
     * @param installHot  highest, K
     * @param growth      of the units with moisture, share of the length; closes the joint
     * @param shrinkage   of the units, share of the length; opens the joint
     * @param other       movement of the structure, either way, m
     * @param tolerance   of construction, m
     * @param width       chosen, m
     * @param jointLength to be filled, m
     * @param cartridge   volume, m³
     * @param waste       share
     */
    public record Inputs(double length, double expansion, double cold, double hot, double installCold, double installHot, double growth,
            double shrinkage, double other, double tolerance, Capability capability, OptionalDouble width, OptionalDouble jointLength,
            double cartridge, double waste) {
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("sealant_joint", "Sealant joint", Inputs.class, List.of(
        InputSpec.quantity("length", "length of wall whose movement the joint takes", Unit.FT).within(0, 200, Sources.SANE),
        InputSpec.quantity("expansion", "thermal expansion of the cladding", Unit.PPM_F).within(0.5, 50, Sources.EXPANSION)
            .usually("6 e-6/°F") .help("Mind the degree: aluminium is 23 millionths per °C, which is 12.8 per °F."),
        InputSpec.quantity("cold", "lowest temperature of the cladding", Unit.DEG_F).within(-80, 120, Sources.SURFACE_TEMPERATURES)
            .usually("10 °F"),
        InputSpec.quantity("hot", "highest temperature of the cladding", Unit.DEG_F).within(-20, 220, Sources.SURFACE_TEMPERATURES)
            .usually("140 °F"),
        InputSpec.quantity("install_cold", "lowest temperature at which the joint is filled", Unit.DEG_F).within(-80, 220, Sources.SANE)
            .usually("40 °F"),
        InputSpec.quantity("install_hot", "highest temperature at which the joint is filled", Unit.DEG_F).within(-80, 220, Sources.SANE)
            .usually("90 °F"),
        InputSpec.quantity("growth", "growth with moisture", Unit.PERCENT).within(0, 0.2, Sources.SANE).usually("0%")
            .help("Fired clay grows by 0.02 to 0.05 %; cement units don't."),
        InputSpec.quantity("shrinkage", "drying shrinkage", Unit.PERCENT).within(0, 0.2, Sources.SHRINKAGE).usually("0.09%")
            .help("The usual value is the most that the units' standard admits; give the tested one."),
        InputSpec.quantity("other", "movement of the structure, either way", Unit.IN).within(0, 4, Sources.SANE).usually("0 in"),
        InputSpec.quantity("tolerance", "construction tolerance", Unit.IN).within(0, 1, Sources.SANE).usually("1/8 in"),
        InputSpec.word("capability", "class of the sealant", Capability.values()).usually("50"),
        InputSpec.quantity("width", "chosen width", Unit.IN).within(0.05, 6, Sources.SANE).maybe(),
        InputSpec.quantity("joint_length", "length of joint to be filled", Unit.FT).within(0.1, 1_000_000, Sources.SANE).maybe(),
        InputSpec.quantity("cartridge", "volume of a cartridge", Unit.FLOZ).within(1, 1_000, Sources.SANE).usually("10.1 fl oz"),
        InputSpec.quantity("waste", "waste of sealant", Unit.PERCENT).within(0, 100, Sources.SANE).usually("10%")), SealantJoint::write);

    private SealantJoint() {
    }

    /**
     * Results, m: opening, closing, width.computed, width (rounded up to 1/16 in, at least 1/4 in), depth, rod, yield (length of joint a
     * cartridge fills); with a chosen width length.largest; with a joint length cartridges (count).
     */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    /** Depth of sealant over the rod for a width: half of it, from 1/4 to 1/2 in; both in m. */
    public static double depth(double width) {
        return Math.min(GREATEST_DEPTH, Math.max(LEAST_DEPTH, width / 2));
    }

    /** The next rod of the trade that is at least a quarter wider than the joint; both in m. Empty above 4 in. */
    public static OptionalDouble rod(double width) {
        return DoubleStream.of(RODS).map(Unit.IN::toSi).filter(size -> size >= 1.25 * width * (1 - 1e-9)).findFirst();
    }

    /** Length of joint that a volume fills, m. */
    public static double filled(double volume, double width, double depth) {
        return volume / (width * depth);
    }

    private static void write(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.hot <= in.cold) {
            throw sheet.refusal("hot", "isn't above cold", "a highest temperature above " + show(in.cold, Unit.DEG_F));
        }
        if (in.installHot < in.installCold) {
            throw sheet.refusal("install_hot", "is below install_cold", "at least " + show(in.installCold, Unit.DEG_F));
        }
        double rise = Math.max(0, in.hot - in.installCold);
        double fall = Math.max(0, in.installHot - in.cold);
        double closing = sheet.step("Mc", "the joint closes by", "Mc = e L (hot − coldest filling) + growth L + other",
            movement(in, rise) + " + " + show(in.growth, Unit.PERCENT) + " × " + show(in.length, Unit.IN) + " + " + show(in.other, Unit.IN),
            in.expansion * in.length * rise + in.growth * in.length + in.other, Unit.IN, Sources.TWO_SIDED, Sources.EXPANSION);
        double opening = sheet.step("Mo", "the joint opens by", "Mo = e L (hottest filling − cold) + shrinkage L + other",
            movement(in, fall) + " + " + show(in.shrinkage, Unit.PERCENT) + " × " + show(in.length, Unit.IN) + " + "
            + show(in.other, Unit.IN), in.expansion * in.length * fall + in.shrinkage * in.length + in.other, Unit.IN, Sources.TWO_SIDED,
            Sources.EXPANSION, Sources.SHRINKAGE);
        double forClosing = sheet.step("Wc", "width needed to close", "Wc = Mc / X + t", side(closing, in.capability.closing, in),
            closing / in.capability.closing + in.tolerance, Unit.IN, Sources.JOINT_WIDTH, Sources.SEALANT_CLASS);
        double forOpening = sheet.step("Wo", "width needed to open", "Wo = Mo / X + t", side(opening, in.capability.opening, in),
            opening / in.capability.opening + in.tolerance, Unit.IN, Sources.JOINT_WIDTH, Sources.SEALANT_CLASS);
        double computed = Math.max(forClosing, forOpening);
        double needed = sheet.step("W", "least width, rounded up to 1/16 in", "W = greater of Wc and Wo, at least 1/4 in",
            show(computed, Unit.IN), sixteenthsUp(Math.max(computed, LEAST_WIDTH)), Unit.IN, Sources.SEALANT_SHAPE);
        double built = in.width.orElse(needed);
        double depth = sheet.step("d", "depth of sealant over the rod", "d = W/2, from 1/4 to 1/2 in", show(built, Unit.IN) + " / 2",
            depth(built), Unit.IN, Sources.SEALANT_SHAPE);
        OptionalDouble rod = rod(built);
        if (rod.isPresent()) {
            sheet.step("rod", "diameter of closed-cell rod", "next size from 1.25 W up", "1.25 × " + show(built, Unit.IN),
                rod.getAsDouble(), Unit.IN, Sources.ROD);
        } else {
            sheet.warn("No rod of the trade fits a joint of " + show(built, Unit.IN) + ".");
        }
        double yield = sheet.step("y", "length of joint a cartridge fills", "y = V / (W d)", show(in.cartridge, Unit.FLOZ) + " / ("
            + show(built, Unit.IN) + " × " + show(depth, Unit.IN) + ")", filled(in.cartridge, built, depth), Unit.FT, Sources.CARTRIDGE);

        sheet.result("opening", "the joint opens by", opening, Unit.IN);
        sheet.result("closing", "the joint closes by", closing, Unit.IN);
        sheet.result("width.computed", "width as computed", computed, Unit.IN);
        sheet.result("width", "least width", needed, Unit.IN);
        sheet.result("depth", "depth of sealant over the rod", depth, Unit.IN);
        rod.ifPresent(diameter -> sheet.result("rod", "diameter of closed-cell rod", diameter, Unit.IN));
        sheet.result("yield", "length of joint a cartridge fills", yield, Unit.FT);
        if (in.width.isPresent()) {
            chosen(in, sheet, rise, fall, Math.max(computed, LEAST_WIDTH));
        }
        if (in.jointLength.isPresent()) {
            double count = sheet.step("n", "cartridges", "n = joint length (1 + waste) / y, rounded up",
                show(in.jointLength.getAsDouble(), Unit.FT) + " × (1 + " + show(in.waste, Unit.PERCENT) + ") / " + show(yield, Unit.FT),
                Math.ceil(in.jointLength.getAsDouble() * (1 + in.waste) / yield - 1e-9),
                Unit.ONE, Sources.CARTRIDGE);
            sheet.result("cartridges", "cartridges", count, Unit.ONE);
        }
        if (built > Unit.IN.toSi(1) * (1 + 1e-9)) {
            sheet.warn("Sealant wider than 1 in sags: shorten the wall between joints or take a higher class.");
        }
        sheet.assume("The joint takes the movement of one length of wall: half from each side, or all of it where one side is fixed.",
            "Temperatures are those of the cladding, not of the air.",
            "Growth and shrinkage happen after the joint is filled.",
            "The sealant adheres to two faces only; rod or bond-breaker tape lies behind it.");
    }

    private static void chosen(Inputs in, Sheet sheet, double rise, double fall, double needed) {
        double width = in.width.getAsDouble();
        double spare = width - in.tolerance;
        double close = room(in.capability.closing * spare - in.other, in.expansion * rise + in.growth);
        double open = room(in.capability.opening * spare - in.other, in.expansion * fall + in.shrinkage);
        double longest = Math.max(0, Math.min(close, open));
        if (longest < Double.MAX_VALUE) {
            sheet.step("Lmax", "longest wall for the chosen width",
                "Lmax = (X (W − t) − other) / movement a length, the lesser of closing and opening",
                "W " + show(width, Unit.IN) + ", t " + show(in.tolerance, Unit.IN), longest, Unit.FT, Sources.JOINT_WIDTH);
            sheet.result("length.largest", "longest wall for the chosen width", longest, Unit.FT);
        }
        sheet.margin(width / needed);
        if (width < needed * (1 - 1e-9)) {
            sheet.warn("The chosen width of " + show(width, Unit.IN) + " is less than the " + show(needed, Unit.IN) + " needed.");
        }
    }

    private static double room(double movement, double strain) {
        return strain > 0 ? movement / strain : Double.MAX_VALUE;
    }

    private static String movement(Inputs in, double kelvin) {
        return show(in.expansion, Unit.PPM_F) + " × " + show(in.length, Unit.IN) + " × " + degrees(kelvin);
    }

    private static String side(double movement, double share, Inputs in) {
        return show(movement, Unit.IN) + " / " + bare(share) + " + " + show(in.tolerance, Unit.IN);
    }

    private static double sixteenthsUp(double metres) {
        return Unit.IN.toSi(Math.ceil(Unit.IN.fromSi(metres) * 16 - 1e-9) / 16);
    }
}

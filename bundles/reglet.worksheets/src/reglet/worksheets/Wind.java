package reglet.worksheets;

import static reglet.worksheets.Sheet.bare;
import static reglet.worksheets.Sheet.show;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

import reglet.model.Basis;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Wind on walls as components and cladding of buildings up to 60 ft, ASCE 7, chapter 30, part 1. */
public final class Wind {
    /** 0.00256 psf/mph² in Pa/(m/s)²: the published constant, so that both systems of units agree. */
    private static final double VELOCITY_CONSTANT = 0.00256 * Unit.PSF.toSi(1) / (Unit.MPH.toSi(1) * Unit.MPH.toSi(1));
    private static final double KD = 0.85;
    private static final double ASD = 0.6;

    /** Edition of ASCE 7. */
    public enum Edition implements Worded {
        ASCE_7_16("7-16"), ASCE_7_22("7-22");

        private final String text;

        Edition(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /** Exposure category; exponents and gradient heights (ft) of the two editions. */
    public enum Exposure implements Worded {
        B(7.0, 1200, 7.5, 3280), C(9.5, 900, 9.8, 2460), D(11.5, 700, 11.5, 1935);

        private final double alpha16;
        private final double zg16;
        private final double alpha22;
        private final double zg22;

        Exposure(double alpha16, double zg16, double alpha22, double zg22) {
            this.alpha16 = alpha16;
            this.zg16 = zg16;
            this.alpha22 = alpha22;
            this.zg22 = zg22;
        }

        @Override
        public String text() {
            return name();
        }
    }

    /** Wall zones: 5 along the corners, 4 between. */
    public enum Zone implements Worded {
        FOUR("4", 1.1), FIVE("5", 1.4);

        private final String text;
        /** The outside coefficient of suction at 10 ft²; at 500 ft² both zones have 0.8. */
        private final double small;

        Zone(String text, double small) {
            this.text = text;
            this.small = small;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /** Enclosure of the building. */
    public enum Enclosure implements Worded {
        ENCLOSED("enclosed", 0.18), PARTIALLY_ENCLOSED("partially enclosed", 0.55);

        private final String text;
        private final double inside;

        Enclosure(String text, double inside) {
            this.text = text;
            this.inside = inside;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /**
     * @param speed     basic wind speed of the risk category, m/s
     * @param height    mean roof height, m
     * @param area      effective wind area, m²
     * @param kzt       topographic factor
     * @param elevation of the ground above sea level, m
     * @param lowSlope  whether the roof slopes by 10° or less, which lowers the outside coefficients of walls by a tenth
     * @param width     least horizontal dimension of the building, m; only for the width of zone 5
     */
    public record Inputs(double speed, Exposure exposure, double height, Zone zone, double area, double kzt, double elevation,
            Enclosure enclosure, boolean lowSlope, OptionalDouble width, Edition edition) {
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("wind", "Wind on the cladding", Inputs.class, List.of(
        InputSpec.quantity("speed", "basic wind speed of the risk category", Unit.MPH).within(85, 250, Sources.SPEEDS),
        InputSpec.word("exposure", "exposure category", Exposure.values()),
        InputSpec.quantity("height", "mean roof height", Unit.FT).within(1, 60, Sources.GCP_HEIGHT),
        InputSpec.word("zone", "wall zone", Zone.values()).usually("5"),
        InputSpec.quantity("area", "effective wind area", Unit.FT2).within(0.1, 10_000, Sources.SANE).usually("10 ft2")
            .help("For cladding fasteners no more than the area of one fastener: take 10 ft², where the curve is flat."),
        InputSpec.quantity("kzt", "topographic factor", Unit.ONE).within(1, 3.2, Sources.KZT).usually("1"),
        InputSpec.quantity("elevation", "elevation of the ground", Unit.FT).within(0, 12_000, Sources.KE).usually("0 ft"),
        InputSpec.word("enclosure", "enclosure of the building", Enclosure.values()).usually("enclosed"),
        InputSpec.yesNo("low_slope", "roof slope of 10° or less"),
        InputSpec.quantity("width", "least horizontal dimension of the building", Unit.FT).within(1, 5_000, Sources.SANE).maybe(),
        InputSpec.word("edition", "edition of ASCE 7", Edition.values()).usually("7-16")), Wind::write);

    private Wind() {
    }

    /**
     * Results, Pa, outward negative: pressure.in, pressure.out (allowable stress), pressure.in.strength, pressure.out.strength; zone.width,
     * m.
     */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    /** Velocity pressure exposure coefficient at a height in m. */
    public static double kz(Edition edition, Exposure exposure, double height) {
        double z = Math.max(Unit.FT.fromSi(height), exposure == Exposure.B ? 30 : 15);
        return edition == Edition.ASCE_7_22 ? 2.41 * Math.pow(z / exposure.zg22, 2 / exposure.alpha22)
            : 2.01 * Math.pow(z / exposure.zg16, 2 / exposure.alpha16);
    }

    /** Ground elevation factor; elevation in m. */
    public static double ke(double elevation) {
        return Math.exp(-0.0000362 * Unit.FT.fromSi(elevation));
    }

    /** Outside coefficient of walls toward the wall; area in m². */
    public static double gcpIn(double area) {
        return 1.0 - 0.3 * share(area);
    }

    /** Outside coefficient of walls away from the wall, negative; area in m². */
    public static double gcpOut(Zone zone, double area) {
        return -(zone.small - (zone.small - 0.8) * share(area));
    }

    /** How far an area has gone from 10 to 500 ft² on the figure's logarithmic axis, 0 to 1; the curves are flat beyond the ends. */
    private static double share(double area) {
        return Math.log(figureArea(area) / 10) / Math.log(50);
    }

    private static double figureArea(double area) {
        return Math.min(500, Math.max(10, Unit.FT2.fromSi(area)));
    }

    private static void write(Inputs in, Sheet sheet) {
        boolean y22 = in.edition == Edition.ASCE_7_22;
        double kz = kz(in.edition, in.exposure, in.height);
        double z = Unit.FT.toSi(Math.max(Unit.FT.fromSi(in.height), in.exposure == Exposure.B ? 30 : 15));
        sheet.step("Kz", "velocity pressure exposure coefficient", y22 ? "Kz = 2.41 (z/zg)^(2/α)" : "Kz = 2.01 (z/zg)^(2/α)",
            y22 ? "2.41 (" + show(z, Unit.FT) + " / " + bare(in.exposure.zg22) + " ft)^(2/" + bare(in.exposure.alpha22) + ")"
                : "2.01 (" + show(z, Unit.FT) + " / " + bare(in.exposure.zg16) + " ft)^(2/" + bare(in.exposure.alpha16) + ")",
            kz, Unit.ONE, y22 ? Sources.KZ_2022 : Sources.KZ_2016);
        double ke = sheet.step("Ke", "ground elevation factor", "Ke = e^(−0.0000362 z)", "e^(−0.0000362 × "
            + bare(Unit.FT.fromSi(in.elevation)) + ")", ke(in.elevation), Unit.ONE, Sources.KE);
        double inQ = y22 ? 1 : KD;
        double qh = sheet.step("qh", "velocity pressure at mean roof height", y22 ? "qh = 0.00256 Kz Kzt Ke V²"
            : "qh = 0.00256 Kz Kzt Kd Ke V²", "0.00256 × " + bare(kz) + " × " + bare(in.kzt) + (y22 ? "" : " × " + KD) + " × " + bare(ke)
            + " × (" + show(in.speed, Unit.MPH) + ")²", VELOCITY_CONSTANT * kz * in.kzt * inQ * ke * in.speed * in.speed, Unit.PSF,
            y22 ? new Basis[] {Sources.VELOCITY_PRESSURE, Sources.KD_2022} : new Basis[] {Sources.VELOCITY_PRESSURE, Sources.KD});
        double slope = in.lowSlope ? 0.9 : 1;
        Basis[] figure = in.lowSlope ? new Basis[] {Sources.GCP, Sources.GCP_SLOPE} : new Basis[] {Sources.GCP};
        String share = " log(" + bare(figureArea(in.area)) + "/10) / log 50";
        String rest = bare(in.zone.small - 0.8);
        UnaryOperator<String> lowered = curve -> in.lowSlope ? "0.9 (" + curve + ")" : curve;
        double inward = sheet.step("GCp+", "outside coefficient, toward the wall", "GCp = " + lowered.apply("1.0 − 0.3 log(A/10) / log 50"),
            lowered.apply("1.0 − 0.3" + share), slope * gcpIn(in.area), Unit.ONE, figure);
        double outward = sheet.step("GCp−", "outside coefficient, away from the wall, zone " + in.zone.text,
            "GCp = " + lowered.apply("−" + in.zone.small + " + " + rest + " log(A/10) / log 50"),
            lowered.apply("−" + in.zone.small + " + " + rest + share), slope * gcpOut(in.zone, in.area), Unit.ONE, figure);
        double inside = sheet.step("GCpi", "inside coefficient, either way", "GCpi by enclosure", in.enclosure.text + ": ±"
            + in.enclosure.inside, in.enclosure.inside, Unit.ONE, Sources.GCPI);
        double q = y22 ? qh * KD : qh;
        double least = Unit.PSF.toSi(16);
        double pIn = sheet.step("p+", "pressure toward the wall, strength", y22 ? "p = qh Kd (GCp + GCpi), at least 16 psf"
            : "p = qh (GCp + GCpi), at least 16 psf", show(q, Unit.PSF) + " × (" + bare(inward) + " + " + inside + ")",
            Math.max(least, q * (inward + inside)), Unit.PSF, Sources.CLADDING_PRESSURE, Sources.LEAST_PRESSURE);
        double pOut = sheet.step("p−", "suction, strength", y22 ? "p = qh Kd (GCp − GCpi), at least 16 psf"
            : "p = qh (GCp − GCpi), at least 16 psf", show(q, Unit.PSF) + " × (" + bare(outward) + " − " + inside + ")",
            Math.min(-least, q * (outward - inside)), Unit.PSF, Sources.CLADDING_PRESSURE, Sources.LEAST_PRESSURE);
        double asdIn = sheet.step("0.6 p+", "pressure toward the wall, allowable stress", "0.6 p", "0.6 × " + show(pIn, Unit.PSF),
            ASD * pIn, Unit.PSF, Sources.WIND_ASD);
        double asdOut = sheet.step("0.6 p−", "suction, allowable stress", "0.6 p", "0.6 × " + show(pOut, Unit.PSF), ASD * pOut, Unit.PSF,
            Sources.WIND_ASD);
        sheet.result("pressure.in", "pressure toward the wall, allowable stress", asdIn, Unit.PSF);
        sheet.result("pressure.out", "suction, allowable stress", asdOut, Unit.PSF);
        sheet.result("pressure.in.strength", "pressure toward the wall, strength", pIn, Unit.PSF);
        sheet.result("pressure.out.strength", "suction, strength", pOut, Unit.PSF);
        if (in.width.isPresent()) {
            double w = in.width.getAsDouble();
            double a = Math.max(Math.min(0.1 * w, 0.4 * in.height), Math.max(0.04 * w, Unit.FT.toSi(3)));
            sheet.step("a", "width of zone 5 from each corner", "a = min(0.1 w, 0.4 h), at least 0.04 w and 3 ft",
                "min(0.1 × " + show(w, Unit.FT) + ", 0.4 × " + show(in.height, Unit.FT) + ")", a, Unit.FT, Sources.ZONE_WIDTH);
            sheet.result("zone.width", "width of zone 5 from each corner", a, Unit.FT);
        }
        if (in.zone == Zone.FOUR) {
            sheet.warn("Zone 4 is the middle of the wall; along the corners zone 5 governs.");
        }
        sheet.assume("The basic wind speed is the strength-level speed of the building's risk category.",
            "The cladding takes the whole net pressure: nothing is taken off for air reaching the cavity behind it.",
            "The mean roof height stands for every height on the wall.");
        if (y22) {
            sheet.assume("In exposure B the 7-16 rule of no less than 30 ft for cladding is kept for 7-22; it is on the safe side.");
        }
    }
}

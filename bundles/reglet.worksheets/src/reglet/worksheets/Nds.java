package reglet.worksheets;

import reglet.model.Unit;

/**
 * Design values of small fasteners in wood after the NDS. Its formulas are in inches and pounds: they are evaluated there and handed
 * out in SI units.
 */
public final class Nds {
    private static final double IN = Unit.IN.toSi(1);
    private static final double PSI = Unit.PSI.toSi(1);

    private Nds() {
    }

    /** Dowel bearing strength of wood for fasteners under 1/4 in, Pa, to the nearest 50 psi as the tables have it. */
    public static double bearing(double gravity) {
        return Math.rint(16600 * Math.pow(gravity, 1.84) / 50) * 50 * PSI;
    }

    /** Reduction term Kd for a diameter in m, under 1/4 in. */
    public static double reduction(double diameter) {
        double d = diameter / IN;
        return d <= 0.17 + 1e-9 ? 2.2 : 10 * d + 0.5;
    }

    /** Bending yield strength of common nails by diameter in m, Pa. */
    public static double bendingYield(double diameter) {
        double d = diameter / IN - 1e-9;
        return (d <= 0.142 ? 100_000 : d <= 0.177 ? 90_000 : 80_000) * PSI;
    }

    /** Withdrawal of a smooth nail from side grain, N per m of penetration. The diameter stands to the first power. */
    public static double nailWithdrawal(double gravity, double diameter) {
        return 1380 * Math.pow(gravity, 2.5) * (diameter / IN) * Unit.LBF_IN.toSi(1);
    }

    /** Withdrawal of a wood screw from side grain, N per m of thread. */
    public static double screwWithdrawal(double gravity, double diameter) {
        return 2850 * gravity * gravity * (diameter / IN) * Unit.LBF_IN.toSi(1);
    }
}

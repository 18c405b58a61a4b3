package reglet.worksheets;

import static reglet.worksheets.Sheet.bare;
import static reglet.worksheets.Sheet.show;

import java.util.List;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Earthquake force on the veneer as a nonstructural component, ASCE 7-16, chapter 13. */
public final class Seismic {
    private static final double ASD = 0.7;

    /** What is designed: component amplification ap and response modification Rp. */
    public enum Element implements Worded {
        LOW_VENEER("veneer, low deformability", 1.0, 1.5), LIMITED_VENEER("veneer, limited deformability", 1.0, 2.5),
        WALL_BODY("wall element", 1.0, 2.5), CONNECTORS("fasteners of the connecting system", 1.25, 1.0);

        private final String text;
        private final double ap;
        private final double rp;

        Element(String text, double ap, double rp) {
            this.text = text;
            this.ap = ap;
            this.rp = rp;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /** Component importance factor. */
    public enum Importance implements Worded {
        USUAL("1.0", 1.0), ESSENTIAL("1.5", 1.5);

        private final String text;
        private final double factor;

        Importance(String text, double factor) {
            this.text = text;
            this.factor = factor;
        }

        @Override
        public String text() {
            return text;
        }
    }

    /**
     * @param sds    design spectral acceleration at short periods, in g
     * @param weight of everything that moves with the veneer, Pa
     * @param z      height of the attachment above the base, m
     * @param h      average roof height above the base, m
     */
    public record Inputs(double sds, double weight, double z, double h, Element element, Importance importance) {
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("seismic", "Earthquake force on the veneer", Inputs.class, List.of(
        InputSpec.quantity("sds", "design spectral acceleration SDS, in g", Unit.ONE).within(0.01, 3, Sources.SDS),
        InputSpec.quantity("weight", "weight of the whole wall that moves with the veneer", Unit.PSF).within(1, 80, Sources.SANE)
            .help("The installed wall, not the unit alone."),
        InputSpec.quantity("z", "height of the attachment above the base", Unit.FT).within(0, 1_500, Sources.SANE),
        InputSpec.quantity("h", "average roof height above the base", Unit.FT).within(1, 1_500, Sources.SANE),
        InputSpec.word("element", "what is designed", Element.values()).usually("veneer, low deformability"),
        InputSpec.word("importance", "component importance factor", Importance.values()).usually("1.0")), Seismic::write);

    private Seismic() {
    }

    /** Results, Pa: force (allowable stress), force.strength, vertical (allowable stress), each way. */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    private static void write(Inputs in, Sheet sheet) throws UnusableInput {
        if (in.z > in.h * (1 + 1e-9)) {
            throw sheet.refusal("z", "of " + show(in.z, Unit.FT) + " is above the roof", "no more than h = " + show(in.h, Unit.FT) + "; "
                + Sources.FP.text());
        }
        Element of = in.element;
        double ip = in.importance.factor;
        double raw = sheet.step("Fp", "force as computed", "Fp = 0.4 ap SDS Wp (1 + 2 z/h) / (Rp/Ip)",
            "0.4 × " + of.ap + " × " + bare(in.sds) + " × " + show(in.weight, Unit.PSF) + " × (1 + 2 × " + bare(in.z / in.h) + ") / ("
            + of.rp + "/" + ip + ")", 0.4 * of.ap * in.sds * in.weight * (1 + 2 * in.z / in.h) / (of.rp / ip), Unit.PSF, Sources.FP,
            Sources.FP_FACTORS, Sources.IP);
        double least = sheet.step("Fp,min", "least force", "0.3 SDS Ip Wp", "0.3 × " + bare(in.sds) + " × " + ip + " × "
            + show(in.weight, Unit.PSF), 0.3 * in.sds * ip * in.weight, Unit.PSF, Sources.FP);
        double most = sheet.step("Fp,max", "greatest force needed", "1.6 SDS Ip Wp", "1.6 × " + bare(in.sds) + " × " + ip + " × "
            + show(in.weight, Unit.PSF), 1.6 * in.sds * ip * in.weight, Unit.PSF, Sources.FP);
        double force = sheet.step("Fp", "force, strength", "Fp,min ≤ Fp ≤ Fp,max", show(raw, Unit.PSF) + " between " + show(least, Unit.PSF)
            + " and " + show(most, Unit.PSF), Math.min(most, Math.max(least, raw)), Unit.PSF, Sources.FP);
        double asd = sheet.step("0.7 Fp", "force, allowable stress", "0.7 Fp", "0.7 × " + show(force, Unit.PSF), ASD * force, Unit.PSF,
            Sources.SEISMIC_ASD);
        double vertical = sheet.step("0.7 Ev", "vertical force at the same time, allowable stress", "0.7 × 0.2 SDS Wp",
            "0.7 × 0.2 × " + bare(in.sds) + " × " + show(in.weight, Unit.PSF), ASD * 0.2 * in.sds * in.weight, Unit.PSF,
            Sources.FP_VERTICAL, Sources.SEISMIC_ASD);
        sheet.result("force", "force in any horizontal direction, allowable stress", asd, Unit.PSF);
        sheet.result("force.strength", "force in any horizontal direction, strength", force, Unit.PSF);
        sheet.result("vertical", "vertical force at the same time, allowable stress", vertical, Unit.PSF);
        sheet.assume("The force acts in any horizontal direction, per area of wall, at the middle of the weight.",
            "Redundancy is taken as 1, as for nonstructural components.",
            "ASCE 7-22 computes this force differently; this sheet is for codes that cite 7-16.");
    }
}

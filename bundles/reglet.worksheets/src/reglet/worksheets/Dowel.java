package reglet.worksheets;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A dowel-type fastener in single shear across a gap: AWC TR12, Table 1-1, solid members, in SI units. For each way of yielding
 * A P² + B P + C = 0; the least P is the yield load. Without a gap these are the yield limit equations of NDS 12.3.1.
 *
 * @param diameter      of the shank, m
 * @param bendingYield  bending yield strength, Pa
 * @param mainBearing   dowel bearing strength of the member that holds the point, Pa
 * @param mainLength    bearing length in it, m
 * @param sideBearing   dowel bearing strength of the member under the head, Pa
 * @param sideLength    bearing length in it, m
 * @param gap           between the members, where nothing bears on the fastener, m; 0 or more
 */
public record Dowel(double diameter, double bendingYield, double mainBearing, double mainLength, double sideBearing, double sideLength,
        double gap) {

    /** Ways of yielding; the free ones are those of a head that is held in place but not upright. */
    public enum Mode {
        IM("Im", "the framing crushes"), IS("Is", "the side member crushes"), II("II", "both crush, the fastener stays straight"),
        IIIM("IIIm", "the fastener bends at the side member"), IIIS("IIIs", "the fastener bends in the framing"),
        IV("IV", "the fastener bends in both"), II_FREE("II, head free", "the framing crushes, the fastener stays straight and turns"),
        III_FREE("III, head free", "the fastener bends in the framing and its head turns");

        private final String symbol;
        private final String text;

        Mode(String symbol, String text) {
            this.symbol = symbol;
            this.text = text;
        }

        public String symbol() {
            return symbol;
        }

        public String text() {
            return text;
        }
    }

    /** A way of yielding with its load, N. */
    public record Yield(Mode mode, double load) {
    }

    /** Every mode of TR12 with its load, N. */
    public Map<Mode, Double> held() {
        double qm = mainBearing * diameter;
        double qs = sideBearing * diameter;
        double moment = moment();
        double mainCrush = qm * mainLength * mainLength / 4;
        double sideCrush = qs * sideLength * sideLength / 4;
        Map<Mode, Double> loads = ends(qm, qs);
        loads.put(Mode.II, load(1 / (4 * qs) + 1 / (4 * qm), sideLength / 2 + gap + mainLength / 2, sideCrush + mainCrush));
        loads.put(Mode.IIIM, load(1 / (2 * qs) + 1 / (4 * qm), gap + mainLength / 2, moment + mainCrush));
        loads.put(Mode.IIIS, load(1 / (4 * qs) + 1 / (2 * qm), sideLength / 2 + gap, sideCrush + moment));
        loads.put(Mode.IV, load(1 / (2 * qs) + 1 / (2 * qm), gap, 2 * moment));
        return loads;
    }

    /**
     * The same fastener when the side member only pushes on the head, at the middle of its bearing length, and doesn't keep it upright.
     * Never more than {@link #held}: TR12's equations lose the side member's moment and keep its lever arm.
     */
    public Map<Mode, Double> free() {
        double qm = mainBearing * diameter;
        Map<Mode, Double> loads = ends(qm, sideBearing * diameter);
        loads.put(Mode.II_FREE, load(1 / (4 * qm), sideLength / 2 + gap + mainLength / 2, qm * mainLength * mainLength / 4));
        loads.put(Mode.III_FREE, load(1 / (2 * qm), sideLength / 2 + gap, moment()));
        return loads;
    }

    /** The least of the loads. */
    public static Yield least(Map<Mode, Double> loads) {
        return List.copyOf(loads.entrySet()).stream().map(entry -> new Yield(entry.getKey(), entry.getValue()))
            .min(Comparator.comparingDouble(Yield::load).thenComparing(Yield::mode)).orElseThrow();
    }

    /** The same fastener across another gap. */
    public Dowel across(double otherGap) {
        return new Dowel(diameter, bendingYield, mainBearing, mainLength, sideBearing, sideLength, otherGap);
    }

    /** Plastic moment of a round shank, N·m. */
    private double moment() {
        return bendingYield * diameter * diameter * diameter / 6;
    }

    private Map<Mode, Double> ends(double qm, double qs) {
        Map<Mode, Double> loads = new EnumMap<>(Mode.class);
        loads.put(Mode.IM, qm * mainLength);
        loads.put(Mode.IS, qs * sideLength);
        return loads;
    }

    /** The positive root of a P² + b P − c, in the form that loses no figures when a c is small beside b². */
    private static double load(double a, double b, double c) {
        return 2 * c / (b + Math.sqrt(b * b + 4 * a * c));
    }
}

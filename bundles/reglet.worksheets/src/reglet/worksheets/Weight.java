package reglet.worksheets;

import static reglet.worksheets.Sheet.show;

import java.util.List;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/**
 * The wall layer by layer, dry and wet: what the framing carries, what the lath fasteners hang up, and how far out it hangs.
 * The code's limit is for the unit alone; the fasteners carry everything.
 */
public final class Weight {
    /** Edition of the building code: it decides which masonry code limits the unit. */
    public enum Edition implements Worded {
        IBC_2018("2018"), IBC_2021("2021"), IBC_2024("2024");

        private final String text;

        Edition(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }

        /** Greatest weight of the unit, kg/m². */
        double unitLimit() {
            return Unit.LB_FT2.toSi(this == IBC_2024 ? 30 : 15);
        }
    }

    /**
     * From the framing outward: sheathing, barrier, insulation, mat, lath in its coat, setting bed, units.
     *
     * @param unitWeight       dry units, kg/m² of wall
     * @param unitThickness    m
     * @param unitAbsorption   water taken up, share of the dry weight
     * @param bed              thickness of the setting bed, m
     * @param scratch          thickness of the scratch coat, m
     * @param mortarDensity    both coats, dry, kg/m³
     * @param mortarAbsorption share of the dry weight
     * @param lathWeight       kg/m²
     * @param mat              depth, m
     * @param matWeight        kg/m²
     * @param insulation       thickness, m
     * @param insulationDensity kg/m³
     * @param barrierWeight    all plies, kg/m²
     * @param sheathing        thickness, m
     * @param sheathingDensity kg/m³
     */
    public record Inputs(double unitWeight, double unitThickness, double unitAbsorption, double bed, double scratch, double mortarDensity,
            double mortarAbsorption, double lathWeight, double mat, double matWeight, double insulation, double insulationDensity,
            double barrierWeight, double sheathing, double sheathingDensity, Edition edition) {
    }

    /** A layer; thickness m, dry and wet kg/m². */
    private record Layer(String name, double thickness, double dry, double wet, boolean hung) {
    }

    static final Definition<Inputs> DEFINITION = new Definition<>("weight", "Weight of the wall and how far out it hangs", Inputs.class,
        List.of(
        InputSpec.quantity("unit_weight", "weight of the dry units", Unit.LB_FT2).within(1, 40, Sources.SANE)
            .help("The unit alone, as its maker states it; not the whole wall."),
        InputSpec.quantity("unit_thickness", "thickness of the units", Unit.IN).within(0.25, 6, Sources.SANE).usually("1-3/4 in"),
        InputSpec.quantity("unit_absorption", "water that the units take up", Unit.PERCENT).within(0, 40, Sources.ABSORPTION)
            .usually("15%"),
        InputSpec.quantity("bed", "thickness of the setting bed", Unit.IN).within(0, 2, Sources.COATS).usually("1/2 in"),
        InputSpec.quantity("scratch", "thickness of the scratch coat", Unit.IN).within(0, 2, Sources.COATS).usually("1/2 in"),
        InputSpec.quantity("mortar_density", "density of the mortar, dry", Unit.LB_FT3).within(60, 160, Sources.MORTAR_DENSITY)
            .usually("130 lb/ft3"),
        InputSpec.quantity("mortar_absorption", "water that the mortar takes up", Unit.PERCENT).within(0, 30, Sources.ABSORPTION)
            .usually("10%"),
        InputSpec.quantity("lath_weight", "weight of the lath", Unit.LB_YD2).within(0, 10, Sources.SANE).usually("2.5 lb/yd2"),
        InputSpec.quantity("mat", "depth of the drainage mat or cavity", Unit.IN).within(0, 2, Sources.SANE).usually("0 in"),
        InputSpec.quantity("mat_weight", "weight of the drainage mat", Unit.LB_FT2).within(0, 1, Sources.SANE).usually("0.1 lb/ft2"),
        InputSpec.quantity("insulation", "thickness of insulation outside the sheathing", Unit.IN).within(0, 8, Sources.SANE)
            .usually("0 in"),
        InputSpec.quantity("insulation_density", "density of the insulation", Unit.LB_FT3).within(0, 20, Sources.SANE).usually("2 lb/ft3"),
        InputSpec.quantity("barrier_weight", "weight of the barrier, all plies", Unit.LB_FT2).within(0, 2, Sources.SANE)
            .usually("0.1 lb/ft2"),
        InputSpec.quantity("sheathing", "thickness of the sheathing", Unit.IN).within(0, 2, Sources.SANE).usually("7/16 in"),
        InputSpec.quantity("sheathing_density", "density of the sheathing", Unit.LB_FT3).within(0, 120, Sources.SANE).usually("40 lb/ft3"),
        InputSpec.word("edition", "edition of the building code", Edition.values()).usually("2021")), Weight::write);

    private Weight() {
    }

    /** Results: weight.dry, weight.saturated, fasteners.dry, fasteners.saturated (Pa); eccentricity.dry, eccentricity.saturated (m). */
    public static Worksheet calculate(Inputs in) throws UnusableInput {
        return DEFINITION.run(in);
    }

    private static void write(Inputs in, Sheet sheet) {
        List<Layer> layers = List.of(
            layer("sheathing", in.sheathing, in.sheathing * in.sheathingDensity, 0, false),
            layer("barrier", 0, in.barrierWeight, 0, true),
            layer("insulation", in.insulation, in.insulation * in.insulationDensity, 0, true),
            layer("drainage mat", in.mat, in.matWeight * (in.mat > 0 ? 1 : 0), 0, true),
            layer("lath", 0, in.lathWeight, 0, true),
            layer("scratch coat", in.scratch, in.scratch * in.mortarDensity, in.mortarAbsorption, true),
            layer("setting bed", in.bed, in.bed * in.mortarDensity, in.mortarAbsorption, true),
            layer("units", in.unitThickness, in.unitWeight, in.unitAbsorption, true));
        double face = 0;
        double dry = 0;
        double wet = 0;
        double hungDry = 0;
        double hungWet = 0;
        double dryMoment = 0;
        double wetMoment = 0;
        for (Layer layer : layers) {
            double arm = face + layer.thickness / 2;
            face += layer.thickness;
            if (layer.dry == 0) {
                continue;
            }
            sheet.step("w", layer.name, "w = dry weight; wet = w (1 + water)", "dry " + psf(layer.dry) + ", wet " + psf(layer.wet)
                + ", its middle " + show(arm, Unit.IN) + " from the framing face", pressure(layer.wet), Unit.PSF, Sources.GEOMETRY);
            dry += layer.dry;
            wet += layer.wet;
            hungDry += layer.hung ? layer.dry : 0;
            hungWet += layer.hung ? layer.wet : 0;
            dryMoment += layer.dry * arm;
            wetMoment += layer.wet * arm;
        }
        sheet.step("W", "whole wall outside the framing, wet", "W = Σ w", "dry " + psf(dry) + ", wet " + psf(wet), pressure(wet), Unit.PSF,
            Sources.GEOMETRY, Sources.MORTAR_DENSITY, Sources.ABSORPTION);
        sheet.step("Wf", "what the lath fasteners hang up, wet", "Wf = W − sheathing", "dry " + psf(hungDry) + ", wet " + psf(hungWet),
            pressure(hungWet), Unit.PSF, Sources.GEOMETRY);
        double eccentricity = wetMoment / wet;
        sheet.step("e", "distance of the weight from the framing face, wet", "e = Σ w x / Σ w", show(wetMoment / Unit.LB_FT2.toSi(1),
            Unit.IN) + "·psf / " + psf(wet), eccentricity, Unit.IN, Sources.GEOMETRY);
        double limit = in.edition.unitLimit();
        sheet.step("Wu", "limit of the unit's own weight", "Wu ≤ limit of the edition", psf(in.unitWeight) + " against " + psf(limit),
            pressure(limit), Unit.PSF, in.edition == Edition.IBC_2024 ? Sources.UNIT_WEIGHT_2024 : Sources.UNIT_WEIGHT_2021);

        sheet.result("weight.dry", "whole wall outside the framing, dry", pressure(dry), Unit.PSF);
        sheet.result("weight.saturated", "whole wall outside the framing, wet", pressure(wet), Unit.PSF);
        sheet.result("fasteners.dry", "hung up by the lath fasteners, dry", pressure(hungDry), Unit.PSF);
        sheet.result("fasteners.saturated", "hung up by the lath fasteners, wet", pressure(hungWet), Unit.PSF);
        sheet.result("eccentricity.dry", "distance from the framing face, dry", dryMoment / dry, Unit.IN);
        sheet.result("eccentricity.saturated", "distance from the framing face, wet", eccentricity, Unit.IN);
        sheet.result("thickness", "from the framing face to the face of the units", face, Unit.IN);
        sheet.result("unit.limit", "limit of the unit's own weight", pressure(limit), Unit.PSF);
        sheet.margin(limit / in.unitWeight);
        if (in.unitWeight > limit * (1 + 1e-9)) {
            sheet.warn("The units weigh more than the " + psf(limit) + " that the " + in.edition.text + " edition's masonry code admits.");
        } else if (in.unitWeight * (1 + in.unitAbsorption) > limit * (1 + 1e-9)) {
            sheet.warn("Wet, the units weigh more than " + psf(limit)
                + ": see from the data sheet whether its weight is stated dry or saturated.");
        }
        if (in.edition != Edition.IBC_2024 && in.unitThickness > Unit.IN.toSi(2.625) * (1 + 1e-9)) {
            sheet.warn("The units are thicker than 2-5/8 in. " + Sources.UNIT_THICKNESS.text());
        }
        sheet.assume("The limit of the code is for the unit alone; framing and fasteners carry the weight of the whole wall.",
            "Barrier, lath, mat, insulation and sheathing take up no water that counts.",
            "Mortar fills the thickness of each coat; the lath's own volume is not taken out.");
    }

    private static Layer layer(String name, double thickness, double dry, double water, boolean hung) {
        return new Layer(name, thickness, dry, dry * (1 + water), hung);
    }

    private static double pressure(double mass) {
        return mass * Given.GRAVITY;
    }

    private static String psf(double mass) {
        return show(pressure(mass), Unit.PSF);
    }
}

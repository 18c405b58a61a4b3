package reglet.details;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Drawing.Hatch;

/**
 * The layers of a wall from inside to outside, each against the one before. Every detail takes its places from here, so that a thicker
 * layer moves everything outside it in every drawing.
 *
 * @param layers the layers that are chosen, the framing first
 * @param notes  sentences about what had to be assumed
 */
record Stack(List<Layer> layers, List<String> notes) {

    /** Thickness in millimetres at which layers too thin to be seen are drawn. */
    static final double THIN = 1;

    /** Depth in millimetres at which framing is drawn while nobody has decided it. */
    private static final double OPEN_FRAMING = 90;

    static Stack of(Facts facts) {
        List<Layer> layers = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        if (facts.length("framing", "depth").isEmpty()) {
            notes.add("The depth of the framing is not decided; it is drawn " + Lengths.text(OPEN_FRAMING, facts.units()) + " deep.");
        }
        layers.add(new Layer("framing", 0, facts.mm("framing", "depth", OPEN_FRAMING), Hatch.NONE));
        add(layers, notes, facts, "sheathing", facts.mm("sheathing", "thickness", 0), switch (facts.text("sheathing", "material")) {
            case "glass-mat gypsum" -> Hatch.GYPSUM;
            case "cement board" -> Hatch.CONCRETE;
            default -> Hatch.PLYWOOD;
        });
        add(layers, notes, facts, "inner_ply", Math.max(THIN, facts.mm("inner_ply", "thickness", 0)), Hatch.NONE);
        add(layers, notes, facts, "insulation", facts.mm("insulation", "thickness", 0), Hatch.RIGID_INSULATION);
        add(layers, notes, facts, "outer_ply", THIN, Hatch.NONE);
        add(layers, notes, facts, "mat", facts.mm("mat", "thickness", 0), Hatch.MAT);
        add(layers, notes, facts, "scratch_coat", facts.mm("scratch_coat", "thickness", 0), Hatch.MORTAR);
        add(layers, notes, facts, "setting_bed", facts.mm("setting_bed", "thickness", 0), Hatch.MORTAR);
        add(layers, notes, facts, "veneer", facts.mm("veneer", "thickness", 0), Hatch.STONE);
        return new Stack(List.copyOf(layers), List.copyOf(notes));
    }

    private static void add(List<Layer> layers, List<String> notes, Facts facts, String component, double thickness, Hatch hatch) {
        if (facts.has(component) && thickness > 0) {
            layers.add(new Layer(component, layers.get(layers.size() - 1).outside(), thickness, hatch));
        } else if (facts.has(component) && !facts.is(component, "material", "none")) {
            notes.add(facts.title(component) + ": no thickness is stated, so it is not drawn.");
        } else if (List.of("scratch_coat", "setting_bed", "veneer").contains(component)) {
            notes.add(facts.title(component) + ": not decided, so it is not drawn.");
        }
    }

    Optional<Layer> layer(String component) {
        return layers.stream().filter(layer -> layer.component().equals(component)).findFirst();
    }

    /** Outer face of the framing or of the sheathing on it, to which screeds, beads and flashing are fixed. */
    double backing() {
        return layer("sheathing").orElse(layers.get(0)).outside();
    }

    /** The face of the barrier, down which water runs. */
    double drain() {
        return layers.stream().filter(layer -> !cladding(layer) && !layer.component().equals("mat"))
            .mapToDouble(Layer::outside).max().orElse(0);
    }

    /** Outer face of the cavity; that of the barrier where there is none. */
    double cavity() {
        return layer("mat").map(Layer::outside).orElse(drain());
    }

    /** Outer face of the scratch coat. */
    double coat() {
        return layer("scratch_coat").map(Layer::outside).orElse(cavity());
    }

    /** Inner face of the veneer units, or where they would be. */
    double units() {
        return layer("veneer").map(Layer::inside).orElse(layer("setting_bed").map(Layer::outside).orElse(coat()));
    }

    /** Outer face of the wall. */
    double face() {
        return layers.get(layers.size() - 1).outside();
    }

    double framing() {
        return layers.get(0).outside();
    }

    static boolean cladding(Layer layer) {
        return List.of("scratch_coat", "setting_bed", "veneer").contains(layer.component());
    }
}

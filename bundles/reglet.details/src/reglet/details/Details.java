package reglet.details;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Drawing;
import reglet.model.Meeting;
import reglet.model.ShownUnits;

/**
 * The details of a wall type: what it meets, and how it is built up, drawn from the same requirements that its sections print. Pure.
 * Every thickness is that of the first option accepted for its component.
 */
public final class Details {
    private Details() {
    }

    /**
     * The drawings that a wall type calls for.
     *
     * @param wall wall type id
     * @return the build-up, then the details in the order of what the wall meets; ids are stable
     * @throws IllegalArgumentException when the job has no such wall type
     */
    public static List<Drawing> of(Assembly assembly, String wall) {
        return of(assembly, wall, ShownUnits.AS_WRITTEN);
    }

    /** The same with lengths in some units; what is drawn, and its scale, is the same. */
    public static List<Drawing> of(Assembly assembly, String wall, ShownUnits units) {
        Facts facts = new Facts(assembly, wall, units);
        Stack stack = Stack.of(facts);
        List<Drawing> drawings = new ArrayList<>();
        drawings.add(CutAway.of(facts, stack));
        drawings.add(BuildUp.of(facts, stack));
        for (Meeting base : facts.meetings("base")) {
            drawings.add(BaseOfWall.of(facts, stack, base));
            if (facts.is(base, "over", "roof")) {
                drawings.add(KickOut.of(facts, stack, base));
            }
        }
        for (Meeting opening : facts.meetings("opening")) {
            drawings.add(Head.of(facts, stack, opening));
            drawings.add(Jamb.of(facts, stack, opening));
            drawings.add(Sill.of(facts, stack, opening));
        }
        facts.meetings("top").forEach(top -> drawings.add(TopOfWall.of(facts, stack, top)));
        facts.meetings("corner").forEach(corner -> drawings.add(Corner.of(facts, stack, corner)));
        for (Meeting joint : facts.meetings("joint")) {
            drawings.add(MovementJoint.of(facts, stack, joint));
            if (MovementJoint.sealed(facts, joint)) {
                drawings.add(SealantJoint.of(facts, stack, joint.id() + ".sealant", "at " + joint.id(), MovementJoint.width(facts, joint),
                    Lengths.stated(facts, joint, "width", "movement_joint", "width"), false));
            }
        }
        facts.meetings("penetration").forEach(item -> drawings.add(Penetration.of(facts, stack, item)));
        if (facts.has("sealant") && facts.meetings("opening").stream().anyMatch(opening -> facts.is(opening, "joint", "sealant joint"))) {
            drawings.add(SealantJoint.of(facts, stack, "sealant", "at openings", facts.mm("sealant", "width", 12),
                facts.text("sealant", "width"), true));
        }
        return List.copyOf(drawings);
    }

    /** One drawing of a wall type by its id; empty when the wall calls for none of that id. */
    public static Optional<Drawing> of(Assembly assembly, String wall, String id) {
        return of(assembly, wall).stream().filter(drawing -> drawing.id().equals(id)).findFirst();
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Nearest;
import reglet.model.Clause;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.Standard;
import reglet.model.Subject;

/**
 * The names that slots may have: <code>lath</code>, <code>lath.weight</code> with <code>.value</code> or <code>.method</code>,
 * <code>wall.height</code>, <code>std.ASTM_C847</code>, <code>see.lath</code>, <code>see.S07_92_00</code>.
 */
final class SlotNames {
    static final String STANDARD = "std.";
    static final String SEE = "see.";
    static final String VALUE = ".value";
    static final String METHOD = ".method";

    private SlotNames() {
    }

    /** An id as slots write it. */
    static String key(String id) {
        return Standard.key(id);
    }

    static boolean isCitation(String slot) {
        return slot.startsWith(STANDARD);
    }

    static boolean isReference(String slot) {
        return slot.startsWith(SEE);
    }

    static Optional<Standard> standard(Pack pack, String slot) {
        return pack.standards().stream().filter(standard -> (STANDARD + standard.key()).equals(slot)).findFirst();
    }

    /** The section that a reference such as <code>see.S07_92_00</code> names. */
    static Optional<SectionPlan> section(Pack pack, String slot) {
        return pack.plans().stream().filter(plan -> slot.equals(SEE + "S" + key(plan.number()))).findFirst();
    }

    /** The article or clause of this section that a reference names, by id. */
    static Optional<String> target(Pack pack, String section, String slot) {
        return targets(pack, section).stream().filter(id -> key(SEE + id).equals(key(slot))).findFirst();
    }

    /** "lath.weight" of "lath.weight.value". */
    static String path(String slot) {
        int last = slot.lastIndexOf('.');
        boolean part = slot.indexOf('.') < last && (slot.endsWith(VALUE) || slot.endsWith(METHOD));
        return part ? slot.substring(0, last) : slot;
    }

    /** "lath" of "lath.weight". */
    static String head(String slot) {
        int dot = slot.indexOf('.');
        return dot < 0 ? slot : slot.substring(0, dot);
    }

    /**
     * What is wrong with the name of a slot.
     *
     * @param each    how often the text stands
     * @param subject for a text that stands for each meeting, the kind of thing met
     */
    static Optional<Wrong> check(Pack pack, String section, Scope each, String subject, String slot) {
        boolean known = isCitation(slot) ? standard(pack, slot).isPresent()
            : isReference(slot) ? section(pack, slot).isPresent() || target(pack, section, slot).isPresent()
            : pack.component(slot).isPresent() || pack.property(path(slot)).isPresent();
        if (!known) {
            String hint = Nearest.hint(slot, all(pack, section));
            return Optional.of(new Wrong("there is nothing to print for ${" + slot + "}", hint.isEmpty()
                ? "expected a component, a property of a component or subject, std. with a standard, or see. with an article or section"
                : hint));
        }
        if (isCitation(slot) || isReference(slot)) {
            return Optional.empty();
        }
        Optional<Subject> owner = pack.subject(head(slot));
        if (owner.isPresent() && owner.get().scope() == Scope.MEETING && !(each == Scope.MEETING && subject.equals(head(slot)))) {
            return Optional.of(new Wrong("${" + slot + "} has no value here",
                "a text that prints a fact of '" + head(slot) + "' stands for each meeting of that subject"));
        }
        if (slot.endsWith(METHOD) && pack.property(path(slot)).filter(property -> !property.method().isNone()).isEmpty()) {
            return Optional.of(new Wrong("${" + slot + "} prints nothing", "the property '" + path(slot) + "' names no method"));
        }
        return Optional.empty();
    }

    private static List<String> targets(Pack pack, String section) {
        List<String> ids = new ArrayList<>();
        pack.plan(section).ifPresent(plan -> plan.articles().forEach(article -> ids.add(article.id())));
        pack.clauses().stream().filter(clause -> clause.section().equals(section)).map(Clause::id).forEach(ids::add);
        return ids;
    }

    private static List<String> all(Pack pack, String section) {
        List<String> names = new ArrayList<>();
        pack.components().forEach(component -> {
            names.add(component.id());
            component.properties().stream().map(Property::name).forEach(name -> names.add(component.id() + "." + name));
        });
        pack.subjects().forEach(subject ->
            subject.properties().stream().map(Property::name).forEach(name -> names.add(subject.id() + "." + name)));
        pack.standards().forEach(standard -> names.add(STANDARD + standard.key()));
        targets(pack, section).forEach(id -> names.add(SEE + id));
        pack.plans().forEach(plan -> names.add(SEE + "S" + key(plan.number())));
        return names;
    }
}

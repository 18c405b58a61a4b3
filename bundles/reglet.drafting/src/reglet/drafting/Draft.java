package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import reglet.model.SectionDocument.Span;

/**
 * A paragraph before it is numbered.
 *
 * @param settings what it was drafted for; a person's own text in its place is filled for the same
 */
record Draft(String id, boolean own, List<Span> text, List<Draft> children, List<Setting> settings) {
    Draft {
        text = List.copyOf(text);
        children = List.copyOf(children);
        settings = List.copyOf(settings);
    }

    static Draft of(String id, List<Span> text) {
        return new Draft(id, false, text, List.of(), List.of());
    }

    Draft with(List<Span> changed) {
        return new Draft(id, own, changed, children, settings);
    }

    Draft withChildren(List<Draft> changed) {
        return new Draft(id, own, text, changed, settings);
    }

    /** The same text under an id; children are counted: "lath.metal/1". */
    Draft named(String name, boolean owned, List<Setting> madeFor) {
        List<Draft> named = new ArrayList<>();
        for (Draft child : children) {
            named.add(child.named(name + "/" + (named.size() + 1), owned, madeFor));
        }
        return new Draft(name, owned, text, named, madeFor);
    }

    /** This paragraph and all below it. */
    List<Draft> all() {
        List<Draft> all = new ArrayList<>(List.of(this));
        children.forEach(child -> all.addAll(child.all()));
        return all;
    }
}

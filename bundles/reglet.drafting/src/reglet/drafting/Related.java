package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import reglet.model.Assembly;
import reglet.model.Component;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionPlan;

/** The related sections: owners of the components that a section's paragraphs speak of, and the sections that they name. */
final class Related {
    private Related() {
    }

    /** One paragraph with a line for each related section, or nothing. */
    static List<Draft> of(Assembly assembly, String section, List<Draft> paragraphs) {
        Map<String, Set<String>> related = new TreeMap<>();
        for (Draft paragraph : paragraphs) {
            for (Span span : paragraph.text()) {
                if (span instanceof Slot slot) {
                    assembly.pack().component(SlotNames.head(slot.ref())).filter(component -> !component.section().equals(section))
                        .ifPresent(component -> titles(related, component.section()).add(component.title()));
                } else if (span instanceof CrossReference reference && !reference.target().equals(section)
                    && assembly.pack().plan(reference.target()).isPresent()) {
                    titles(related, reference.target());
                }
            }
        }
        if (related.isEmpty()) {
            return List.of();
        }
        List<Draft> lines = new ArrayList<>();
        related.forEach((number, titles) -> lines.add(Draft.of("related/" + SlotNames.key(number), line(assembly, number, titles))));
        return List.of(Draft.of("related", List.of(new Plain("Related sections:"))).withChildren(lines));
    }

    private static Set<String> titles(Map<String, Set<String>> related, String section) {
        return related.computeIfAbsent(section, number -> new LinkedHashSet<>());
    }

    private static List<Span> line(Assembly assembly, String number, Set<String> titles) {
        String title = assembly.pack().plan(number).map(SectionPlan::title).map(words -> ", " + words).orElse("");
        // In the order of the build-up, not of the first mention.
        List<String> components = assembly.pack().components().stream().map(Component::title).filter(titles::contains).toList();
        return List.of(new CrossReference(number, "Section " + number + title),
            new Plain(components.isEmpty() ? "." : ": " + Phrases.list(components, "and") + "."));
    }
}

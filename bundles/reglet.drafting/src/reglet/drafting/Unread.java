package reglet.drafting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Component;
import reglet.model.Known;
import reglet.model.Property;
import reglet.model.Requirement;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.Subject;

/**
 * Marks for the specifier: values that a section prints because nobody set another, and that the library knows from memory only. They
 * stand among the cautions, so that no number goes into a contract that nobody looked up.
 */
final class Unread {
    private final Assembly assembly;
    private final Map<String, String> marks = new LinkedHashMap<>();

    private Unread(Assembly assembly) {
        this.assembly = assembly;
    }

    /** One sentence for each such value, in the order of the section. */
    static List<String> of(Assembly assembly, List<Part> parts) {
        Unread unread = new Unread(assembly);
        parts.forEach(part -> part.articles().stream().map(Article::paragraphs).forEach(all -> all.forEach(unread::paragraph)));
        return List.copyOf(unread.marks.values());
    }

    private void paragraph(Paragraph paragraph) {
        for (Span span : paragraph.text()) {
            if (span instanceof Slot slot && !slot.ref().endsWith(SlotNames.METHOD)) {
                assembly.pack().property(SlotNames.path(slot.ref())).filter(property -> remembered(property) && isUsual(slot, property))
                    .ifPresent(property -> marks.putIfAbsent(SlotNames.path(slot.ref()), mark(paragraph, slot, property)));
            }
        }
        paragraph.children().forEach(this::paragraph);
    }

    private static boolean remembered(Property property) {
        return property.usual().isPresent() && property.basis().stream().anyMatch(basis -> basis.known() == Known.FROM_MEMORY)
            && property.basis().stream().noneMatch(basis -> basis.known() == Known.READ);
    }

    private boolean isUsual(Slot slot, Property property) {
        String owner = SlotNames.head(slot.ref());
        Optional<Component> component = assembly.pack().component(owner);
        return component.isPresent() ? slot.requirements().stream().anyMatch(requirement -> isUsual(component.get(), requirement))
            : assembly.pack().subject(owner).filter(subject -> !isStated(subject, property.name())).isPresent();
    }

    private boolean isUsual(Component component, Requirement requirement) {
        String name = requirement.property().name();
        return component.option(requirement.option()).flatMap(option -> option.value(name)).isEmpty()
            && assembly.job().wall(requirement.wall()).flatMap(wall -> wall.choice(component.id()))
                .filter(choice -> choice.values().containsKey(name)).isEmpty();
    }

    private boolean isStated(Subject subject, String name) {
        return assembly.job().facts().getOrDefault(subject.id(), Map.of()).containsKey(name)
            || assembly.job().walls().stream().anyMatch(wall -> wall.facts().containsKey(name) || wall.meetings().stream()
                .anyMatch(meeting -> meeting.subject().equals(subject.id()) && meeting.facts().containsKey(name)));
    }

    private static String mark(Paragraph paragraph, Slot slot, Property property) {
        return "To be confirmed before issue, known from memory only: Paragraph " + paragraph.path() + ", " + property.label() + ", "
            + slot.text() + "; see " + property.basis().stream().filter(basis -> basis.known() == Known.FROM_MEMORY).map(Unread::source)
                .collect(Collectors.joining(" and ")) + ".";
    }

    private static String source(Basis basis) {
        return basis.document() + (basis.edition().isEmpty() ? "" : " " + basis.edition()) + (basis.at().isEmpty() ? "" : ", "
            + basis.at());
    }
}

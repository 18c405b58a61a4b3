package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Assembly;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

/**
 * A requirement of the choices that the library's text of its section states, and the section with a person's changes does not: its
 * slot is gone from a changed text, or all that stated it is struck, and no text of the person's own states it.
 *
 * @param requirement what is required
 * @param paragraphs  the library's paragraphs that state it
 * @param change      the block that took it out
 * @param leftOut     the block that says why the section leaves it out on purpose; empty when none does
 */
public record Unprinted(Requirement requirement, List<Paragraph> paragraphs, TextChange change, Optional<TextChange> leftOut) {

    public Unprinted {
        paragraphs = List.copyOf(paragraphs);
    }

    /** Those of a section, in the order of the requirements; a section that nobody wrote in has none. */
    public static List<Unprinted> of(Assembly assembly, SectionDocument section) throws UnusableInput {
        List<TextChange> changes = assembly.job().changes().stream().filter(change -> change.section().equals(section.number())).toList();
        List<TextChange> takingOut = changes.stream()
            .filter(change -> change.kind() == TextChange.Kind.CHANGE || change.kind() == TextChange.Kind.STRIKE).toList();
        if (takingOut.isEmpty()) {
            return List.of();
        }
        SectionDocument library = Drafter.library(assembly, section.number());
        Set<Requirement> stated = new LinkedHashSet<>();
        OwnText.of(assembly, section).stream().filter(text -> text.change().alternate() == 0).forEach(text ->
            stated.addAll(OwnValues.stated(assembly, text)));
        Set<Requirement> before = printed(library);
        Set<Requirement> after = printed(section);
        Map<String, List<String>> above = above(library);
        List<Unprinted> missing = new ArrayList<>();
        for (Requirement requirement : assembly.requirements()) {
            boolean owned = assembly.pack().component(requirement.component()).filter(component -> component.section()
                .equals(section.number())).isPresent();
            if (!owned || requirement.asksNothing() || stated.contains(requirement) || after.contains(requirement)
                || !before.contains(requirement) && (library.pathOf(requirement).isEmpty() || section.pathOf(requirement).isPresent())) {
                continue;
            }
            List<Paragraph> paragraphs = before.contains(requirement) ? printing(library, requirement)
                : library.paragraphs().stream().filter(one -> library.pathOf(requirement).filter(one.path()::equals).isPresent()).toList();
            missing.add(new Unprinted(requirement, paragraphs, taker(takingOut, paragraphs, above), leftOut(changes, requirement,
                before.contains(requirement) ? requirement.path() : requirement.component())));
        }
        return missing;
    }

    /** Why a section does not state what its choices require, in a sentence, by requirement. */
    public static Map<Requirement, String> reasons(Assembly assembly, SectionDocument section) throws UnusableInput {
        return of(assembly, section).stream().collect(Collectors.toMap(Unprinted::requirement, Unprinted::says));
    }

    private String says() {
        return leftOut.map(block -> "Section " + change.section() + " leaves it out on purpose: " + block.text().replaceAll("\\s+", " ")
            .replaceFirst("[.]?$", ".")).orElse("Section " + change.section() + " does not state it any more (" + change.at() + ").");
    }

    /** Whether its slot bears the value; else the chosen option's title says it. */
    boolean isValue() {
        return paragraphs.stream().anyMatch(paragraph -> prints(paragraph, requirement));
    }

    /** The slot that would print it. */
    public String slot() {
        return isValue() ? requirement.path() : requirement.component();
    }

    private static Optional<TextChange> leftOut(List<TextChange> changes, Requirement requirement, String name) {
        return changes.stream().filter(change -> change.kind() == TextChange.Kind.LEAVE_OUT
            && (change.paragraph().equals(name) || change.paragraph().equals(requirement.path()))).findFirst();
    }

    /** The block that changed or struck one of the paragraphs, or what it stands below. */
    private static TextChange taker(List<TextChange> changes, List<Paragraph> paragraphs, Map<String, List<String>> above) {
        return paragraphs.stream().flatMap(paragraph -> above.get(paragraph.id()).stream())
            .flatMap(id -> changes.stream().filter(change -> change.paragraph().equals(id))).findFirst().orElse(changes.get(0));
    }

    /** The ids of a paragraph and of all that it stands below, by its id. */
    private static Map<String, List<String>> above(SectionDocument section) {
        Map<String, List<String>> above = new LinkedHashMap<>();
        section.parts().forEach(part -> part.articles().forEach(article -> article.paragraphs()
            .forEach(paragraph -> above(paragraph, List.of(), above))));
        return above;
    }

    private static void above(Paragraph paragraph, List<String> ids, Map<String, List<String>> above) {
        List<String> all = new ArrayList<>(List.of(paragraph.id()));
        all.addAll(ids);
        above.put(paragraph.id(), all);
        paragraph.children().forEach(child -> above(child, all, above));
    }

    private static List<Paragraph> printing(SectionDocument section, Requirement requirement) {
        return section.paragraphs().stream().filter(paragraph -> prints(paragraph, requirement)).toList();
    }

    private static boolean prints(Paragraph paragraph, Requirement requirement) {
        return paragraph.text().stream().anyMatch(span -> span instanceof Slot slot && slot.requirements().contains(requirement));
    }

    private static Set<Requirement> printed(SectionDocument section) {
        return section.paragraphs().stream().flatMap(paragraph -> paragraph.text().stream()).filter(Slot.class::isInstance)
            .flatMap(slot -> ((Slot) slot).requirements().stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}

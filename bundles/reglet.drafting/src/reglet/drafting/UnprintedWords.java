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
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Option;
import reglet.model.PaperRule;
import reglet.model.Scope;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

/** Says what a section no longer states: one finding for each block and component, with values, reasons and what to do. */
final class UnprintedWords {
    private final Assembly assembly;
    private final SectionDocument section;

    private UnprintedWords(Assembly assembly, SectionDocument section) {
        this.assembly = assembly;
        this.section = section;
    }

    /** What a block took out of the text of a component. */
    private record Taken(TextChange change, String component) {
    }

    static List<Finding> of(Assembly assembly, SectionDocument section) throws UnusableInput {
        List<Finding> findings = new ArrayList<>(new UnprintedWords(assembly, section).findings(Unprinted.of(assembly, section)));
        List<TextChange> ofAlternates = assembly.job().changes().stream()
            .filter(change -> change.section().equals(section.number()) && change.alternate() > 0).toList();
        for (int number : ofAlternates.stream().map(TextChange::alternate).distinct().filter(assembly.alternates()::containsKey).toList()) {
            // as the section would be with the alternate: what a person wrote for its paragraphs stands in place of the base bid's then
            Assembly with = assembly.alternates().get(number);
            SectionDocument taken = Drafter.draft(with, section.number(), "");
            new UnprintedWords(with, taken).findings(Unprinted.of(with, taken)).stream()
                .filter(finding -> ofAlternates.stream().anyMatch(change -> change.at().equals(finding.at())))
                .forEach(finding -> findings.add(finding.with(List.of(number))));
        }
        return findings;
    }

    private List<Finding> findings(List<Unprinted> missing) {
        Map<Taken, List<Unprinted>> byBlock = new LinkedHashMap<>();
        missing.stream().filter(one -> one.leftOut().isEmpty())
            .forEach(one -> byBlock.computeIfAbsent(new Taken(one.change(), one.requirement().component()), key -> new ArrayList<>())
            .add(one));
        List<Finding> findings = new ArrayList<>();
        byBlock.forEach((taken, all) -> findings.add(finding(taken, all)));
        assembly.job().changes().stream().filter(change -> change.section().equals(section.number())
            && change.kind() == TextChange.Kind.LEAVE_OUT && missing.stream().noneMatch(one -> one.leftOut().filter(change::equals)
            .isPresent()))
            .forEach(change -> findings.add(stillThere(change)));
        return findings;
    }

    private Finding finding(Taken taken, List<Unprinted> all) {
        Component component = assembly.pack().component(taken.component()).orElseThrow();
        Map<String, Set<String>> walls = new LinkedHashMap<>();
        all.forEach(one -> walls.computeIfAbsent(says(component, one), says -> new LinkedHashSet<>()).add(one.requirement().wall()));
        List<String> values = walls.entrySet().stream().map(entry -> entry.getKey() + " (" + reasons(entry.getValue(), component) + ")")
            .toList();
        List<Paragraph> stated = all.stream().flatMap(one -> one.paragraphs().stream()).distinct().toList();
        List<String> slots = all.stream().map(Unprinted::slot).distinct().toList();
        return found(PaperRule.PRINTED.kind(), taken.change(), component.id(), component.title() + ": " + String.join("; ", values)
            + (values.size() == 1 ? " is" : " are") + " required, and Section " + section.number() + " no longer states "
            + (values.size() == 1 ? "it" : "them") + ": " + Phrases.list(stated.stream().map(this::gone).distinct().toList(), "and") + ".",
            "Put " + Phrases.list(slots.stream().map(slot -> "${" + slot + "}").toList(), "and")
                + " back, or write the value in your text, "
            + "or leave it out on purpose: \"## leave out " + slots.get(0) + "\" with the reason below it.", slots);
    }

    private static String says(Component component, Unprinted one) {
        return one.isValue() ? one.requirement().property().label() + " " + Phrases.of(one.requirement())
            : component.option(one.requirement().option()).map(Option::title).orElse(one.requirement().option());
    }

    /** For which walls, and who or what fixed it, and why. */
    private String reasons(Set<String> walls, Component component) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (String wall : walls) {
            Optional<Choice> choice = assembly.job().wall(wall).flatMap(type -> type.choice(component.id()));
            String by = choice.map(Choice::by).filter(who -> !who.isEmpty()).map(who -> ", by " + who).orElse("");
            String because = choice.map(Choice::because).filter(why -> !why.isEmpty()).map(why -> ", because: " + why).orElse("");
            byReason.computeIfAbsent(by + because, reason -> new ArrayList<>()).add(wall);
        }
        return byReason.entrySet().stream().map(entry -> (entry.getValue().size() == 1 ? "wall type " : "wall types ")
            + String.join(", ", entry.getValue()) + entry.getKey()).collect(Collectors.joining("; "));
    }

    private String gone(Paragraph paragraph) {
        return section.paragraphs().stream().filter(one -> one.id().equals(paragraph.id())).findFirst()
            .map(one -> "Paragraph " + one.path() + " (" + one.id() + ") is changed")
            .orElse("the library's paragraph \"" + paragraph.id() + "\" is not printed any more");
    }

    private Finding stillThere(TextChange change) {
        return found(Finding.Kind.CAUTION, change, OwnText.head(change.paragraph()), "\"" + change.paragraph()
            + "\" is left out of Section "
            + section.number() + " on purpose, and the section states it all the same, or the choices do not require it.",
            "Take its slot out of the text, or take this block away.", List.of());
    }

    private static Finding found(Finding.Kind kind, TextChange change, String component, String says, String fix, List<String> missing) {
        return new Finding(PaperRule.PRINTED.id(), kind, Scope.SECTION, "", "", component, Map.of(), change.at(), says, fix, Map.of(),
            missing, PaperRule.PRINTED.basis());
    }
}

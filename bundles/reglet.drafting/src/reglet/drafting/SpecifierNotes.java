package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Clause;
import reglet.model.Option;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;

/**
 * Notes to the specifier: why a paragraph stands as it does, and what to look up. A paper of its own, made on request only, so that
 * no note can go out with a section.
 */
public final class SpecifierNotes {
    private static final String ABOUT = "For whoever drafts this section; no part of it. A note replaces neither the local code, nor the "
        + "manufacturer's instructions, nor a licensed professional.";

    private SpecifierNotes() {
    }

    /** A note on a paragraph. */
    record Note(Paragraph paragraph, String text, List<Basis> basis) {
    }

    /** The notes as Markdown, by the numbers of the paragraphs that they are about. */
    public static String markdown(Assembly assembly, SectionDocument section) {
        StringBuilder text = new StringBuilder("# Notes to the specifier, Section " + section.number() + ": "
            + ClauseText.escape(section.title()) + "\n\n" + ClauseText.escape(section.job()) + ", " + Papers.issue(section) + "\n\n" + ABOUT
            + "\n\n");
        List<Note> notes = of(assembly, section);
        if (notes.isEmpty()) {
            text.append("Nothing in this section calls for a note.\n");
        }
        for (Note note : notes) {
            text.append("- **").append(note.paragraph().path()).append("** ").append(ClauseText.escape(note.text()));
            for (Basis basis : note.basis()) {
                text.append("; ").append(ClauseText.escape(basis.text()));
            }
            text.append(" <!-- ").append(note.paragraph().id()).append(" -->\n");
        }
        return text.toString();
    }

    /** Each note once, at the first paragraph that it is about. */
    static List<Note> of(Assembly assembly, SectionDocument section) {
        List<Note> notes = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Paragraph paragraph : section.paragraphs()) {
            clause(assembly, section, paragraph).filter(clause -> !clause.note().isEmpty() && told.add(clause.note()))
                .ifPresent(clause -> notes.add(new Note(paragraph, clause.note(), clause.basis())));
            for (Option option : named(assembly, paragraph)) {
                if (!option.note().isEmpty() && told.add(option.note())) {
                    notes.add(new Note(paragraph, option.title() + ": " + option.note(), List.of()));
                }
            }
        }
        return notes;
    }

    private static Optional<Clause> clause(Assembly assembly, SectionDocument section, Paragraph paragraph) {
        String id = paragraph.id().replaceFirst("[@~+].*", "");
        return assembly.pack().clauses().stream().filter(clause -> clause.section().equals(section.number()) && clause.id().equals(id))
            .findFirst();
    }

    /** The options chosen anywhere in the job of the components that the paragraph names; Part 1 only asks for things about them. */
    private static List<Option> named(Assembly assembly, Paragraph paragraph) {
        if (paragraph.path().startsWith("1.")) {
            return List.of();
        }
        return paragraph.text().stream().filter(span -> span instanceof Slot).map(span -> ((Slot) span).ref())
            .flatMap(ref -> assembly.pack().component(ref).stream())
            .flatMap(component -> component.options().stream().filter(option -> assembly.job().walls().stream()
                .anyMatch(wall -> wall.choice(component.id()).filter(choice -> choice.accept().contains(option.id())).isPresent())))
            .toList();
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Option;
import reglet.model.Question;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.WallType;

/**
 * Notes to the specifier: why a paragraph stands as it does, and what to look up. A paper of its own, made on request only, so that
 * no note can go out with a section.
 */
public final class SpecifierNotes {
    private static final String ABOUT = "For whoever drafts this section; no part of it. A note replaces neither the local code, nor the "
        + "manufacturer's instructions, nor a licensed professional.";

    /** The walls that a paragraph's id names. */
    private static final Pattern WALLS = Pattern.compile("@([^~/+]+)");

    private SpecifierNotes() {
    }

    /** A note on a paragraph. */
    record Note(Paragraph paragraph, String text, List<Basis> basis) {
        /** The note, and behind it what it rests on. */
        String said() {
            return text + (basis.isEmpty() ? "" : " Basis: " + basis.stream().map(Basis::text).collect(Collectors.joining("; ")) + ".");
        }
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
            text.append("- **").append(note.paragraph().path()).append("** ").append(ClauseText.escape(note.said()))
                .append(" <!-- ").append(note.paragraph().id()).append(" -->\n");
        }
        return text.toString();
    }

    /** What is noted about each paragraph, by id: also what is noted about one before it. */
    public static Map<String, List<String>> byParagraph(Assembly assembly, SectionDocument section) {
        Map<String, List<String>> notes = new LinkedHashMap<>();
        for (Paragraph paragraph : section.paragraphs()) {
            List<String> of = about(assembly, section, paragraph).stream().map(Note::said).toList();
            if (!of.isEmpty()) {
                notes.put(paragraph.id(), of);
            }
        }
        return notes;
    }

    /** Each note once, at the first paragraph that it is about. */
    static List<Note> of(Assembly assembly, SectionDocument section) {
        List<Note> notes = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Paragraph paragraph : section.paragraphs()) {
            about(assembly, section, paragraph).stream().filter(note -> told.add(note.text())).forEach(notes::add);
        }
        return notes;
    }

    private static List<Note> about(Assembly assembly, SectionDocument section, Paragraph paragraph) {
        List<Note> notes = new ArrayList<>();
        clause(assembly, section, paragraph).filter(clause -> !clause.note().isEmpty())
            .ifPresent(clause -> notes.add(new Note(paragraph, clause.note(), clause.basis())));
        named(assembly, paragraph).stream().filter(option -> !option.note().isEmpty())
            .forEach(option -> notes.add(new Note(paragraph, option.title() + ": " + option.note(), List.of())));
        asked(assembly, paragraph).forEach(text -> notes.add(new Note(paragraph, text, List.of())));
        return notes;
    }

    /** By which questions the choices were made that the paragraph prints. */
    private static List<String> asked(Assembly assembly, Paragraph paragraph) {
        if (paragraph.path().startsWith("1.")) {
            return List.of();
        }
        List<Component> components = paragraph.text().stream().filter(span -> span instanceof Slot)
            .flatMap(span -> assembly.pack().component(SlotNames.head(((Slot) span).ref())).stream()).distinct().toList();
        return assembly.job().walls().stream().filter(wall -> isFor(paragraph, wall)).flatMap(wall -> components.stream()
            .flatMap(component -> wall.choice(component.id()).stream().flatMap(choice -> Question.cited(choice.by()).stream())
                .map(number -> "Wall type " + wall.id() + ", " + component.title() + ": chosen by " + Question.name(number)
                    + assembly.job().question(number).map(SpecifierNotes::answer).orElse(", which is not among the questions") + ".")))
                    .toList();
    }

    private static String answer(Question question) {
        return question.isOpen() ? ", not answered yet" : question.answered().map(date -> ", " + date).orElse("") + ": "
            + question.answer().strip().replaceFirst("[.]$", "");
    }

    private static boolean isFor(Paragraph paragraph, WallType wall) {
        Matcher walls = WALLS.matcher(paragraph.id());
        return !walls.find() || Stream.of(walls.group(1).split(",")).anyMatch(one -> one.equals(wall.id()) || one.startsWith(wall.id()
            + "."));
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

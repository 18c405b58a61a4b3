package reglet.drafting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.Question;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;

/**
 * The changes from one issue to another as an addendum tells them.
 *
 * @param title    "Addendum 1"
 * @param job      title of the job
 * @param facts    date, what it changes, notes; one a line
 * @param sections what to do, section by section
 * @param answers  questions that it answers
 * @param cautions sentences that its papers repeat
 */
public record Narrative(String title, String job, List<String> facts, List<Part> sections, List<Answer> answers, List<String> cautions) {

    public Narrative {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
        answers = List.copyOf(answers);
        cautions = List.copyOf(cautions);
    }

    /** Instructions for a section, in its order; {@code title} such as "Section 04 73 00, Manufactured Stone Masonry". */
    public record Part(String title, List<String> instructions) {
        public Part {
            instructions = List.copyOf(instructions);
        }
    }

    /** A question and its answer; {@code head} such as "RFI 12, general contractor, 2026-03-02". */
    public record Answer(String head, String question, String answer) {
    }

    public static Narrative of(IssueChanges changes) {
        Issue after = changes.after();
        List<String> facts = new ArrayList<>();
        if (!after.jobNote().isEmpty()) {
            facts.add(after.jobNote());
        }
        after.date().ifPresent(date -> facts.add("Date: " + date));
        facts.add("Changes: " + changes.before().called() + changes.before().date().map(date -> ", " + date).orElse(""));
        if (!after.note().isEmpty()) {
            facts.add("Note: " + after.note());
        }
        Set<String> cited = new LinkedHashSet<>();
        List<Part> parts = new ArrayList<>();
        for (SectionChanges section : changes.sections()) {
            part(changes, section, cited).ifPresent(parts::add);
        }
        facts.add(parts.isEmpty() ? "No paragraph changed." : "Paragraphs that are deleted, moved or changed bear their numbers in "
            + changes.before().called() + "; paragraphs that are added bear their new ones. Later numbers and references move along.");
        return new Narrative(title(after), after.job(), facts, parts, answers(changes, cited), after.cautions());
    }

    /** "Addendum 1"; an issue under its name, a draft as what it is. */
    static String title(Issue issue) {
        return issue.name().isEmpty() ? "Changes in the present draft" : issue.kind() == Issue.Kind.ISSUE ? "Changes in " + issue.name()
            : issue.kind().title() + " " + issue.number() + (issue.name().equals(issue.kind().title() + " " + issue.number()) ? ""
            : ": " + issue.name());
    }

    private static Optional<Part> part(IssueChanges changes, SectionChanges section, Set<String> cited) {
        String title = "Section " + section.section().number() + ", " + section.section().title();
        if (section.before().isEmpty()) {
            return Optional.of(new Part(title, List.of("Add the section as issued.")));
        }
        if (section.after().isEmpty()) {
            return Optional.of(new Part(title, List.of("Delete the section.")));
        }
        List<String> instructions = new ArrayList<>();
        String gone = "";
        for (Line line : section.provisions()) {
            if (!gone.isEmpty() && line.kind() == Kind.DELETED && line.side().path().startsWith(gone)) {
                cited.addAll(changes.origins(line));
                continue;
            }
            boolean all = line.kind() == Kind.DELETED && line.side().holds() && goes(section, line.side().path() + ".");
            gone = all ? line.side().path() + "." : gone;
            List<String> origins = changes.origins(line);
            cited.addAll(origins);
            String origin = origins.isEmpty() ? "" : " (by " + String.join(", ", origins) + ")";
            (all ? List.of(ChangeSentences.deletedWithAll(line))
                : ChangeSentences.of(line)).forEach(sentence -> instructions.add(sentence + origin));
        }
        section.cautions().forEach(line -> instructions.add(ChangeSentences.caution(line)));
        return instructions.isEmpty() ? Optional.empty() : Optional.of(new Part(title, instructions));
    }

    /** Whether all that stood below an address is deleted. */
    private static boolean goes(SectionChanges section, String below) {
        return section.lines().stream().filter(line -> line.kind().stood())
            .filter(line -> line.before().orElseThrow().path().startsWith(below)).allMatch(line -> line.kind() == Kind.DELETED);
    }

    /** Questions that were answered since, and those that changes go back to. */
    private static List<Answer> answers(IssueChanges changes, Set<String> cited) {
        List<Question> answered = changes.answered();
        return changes.after().questions().stream().filter(question -> !question.isOpen())
            .filter(question -> answered.contains(question) || cited.contains(question.name()))
            .map(question -> new Answer(question.name() + (question.from().isEmpty() ? "" : ", " + question.from())
                + question.asked().map(LocalDate::toString).map(date -> ", " + date).orElse(""), question.question(),
                question.answer() + question.answered().map(date -> " (" + date + ")").orElse(""))).toList();
    }
}

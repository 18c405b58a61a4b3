package reglet.workbench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.desk.Questions;
import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.Job;
import reglet.model.Question;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;

/** What the view of issues and questions says, in words. */
final class IssueWords {

    private IssueWords() {
    }

    /** "issue, 1 March 2026" follows the name; "as it stands now" for the present draft. */
    static String sort(Issue issue) {
        return issue.order() == 0 ? "as it stands now" : issue.kind().text();
    }

    static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    /** "open", "answered", "answered, changed W1.lath". */
    static String state(Job job, Question question) {
        List<String> changed = Questions.changed(job, question);
        return (question.isOpen() ? "○ open" : "● answered") + (changed.isEmpty() ? "" : ", changed " + String.join(", ", changed));
    }

    /** A question with its answer, whole. */
    static String whole(Job job, Question question) {
        StringBuilder words = new StringBuilder(question.name());
        words.append(question.from().isEmpty() ? "" : ", " + question.from()).append(question.asked().map(day -> ", " + day).orElse(""))
            .append(question.about().isEmpty() ? "" : ", about " + String.join(", ", question.about())).append("\n\n")
            .append(question.question()).append("\n\n");
        words.append(question.isOpen() ? "No answer yet." : "Answer" + question.answered().map(day -> ", " + day).orElse("") + ":\n"
            + question.answer());
        List<String> changed = Questions.changed(job, question);
        return words.append(changed.isEmpty() ? "" : "\n\nChanged by it: " + String.join(", ", changed) + ".").toString();
    }

    /** What changed from one issue to another: each paragraph as it was and as it is, then the choices and the questions answered. */
    static String changes(IssueChanges changes) {
        List<String> blocks = new ArrayList<>();
        blocks.add("From " + changes.before().called() + " to " + changes.after().called());
        for (SectionChanges section : changes.sections()) {
            for (Line line : section.provisions()) {
                List<String> origins = changes.origins(line);
                String head = "Section " + section.section().number() + ", " + line.side().path() + ": " + line.kind().text()
                    + (line.kind() == Kind.MOVED ? " from " + line.before().orElseThrow().path() : "")
                    + (origins.isEmpty() ? "" : ", by " + String.join(", ", origins));
                blocks.add(head + line.before().filter(side -> line.kind() != Kind.MOVED).map(side -> "\n– " + side.plain()).orElse("")
                    + line.after().map(side -> "\n+ " + side.plain()).orElse(""));
            }
        }
        if (changes.isEmpty()) {
            blocks.add("No paragraph changed.");
        }
        Map<String, String> choices = changes.choices();
        if (!choices.isEmpty()) {
            List<String> lines = new ArrayList<>();
            choices.forEach((address, by) -> lines.add(address + (by.isEmpty() ? "" : ", by " + by)));
            blocks.add("Choices that are not as they were:\n" + String.join("\n", lines));
        }
        changes.answered().forEach(question -> blocks.add(question.name() + " was answered: " + question.answer()));
        return String.join("\n\n", blocks);
    }
}

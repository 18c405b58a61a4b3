package reglet.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Question;
import reglet.model.Scope;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.store.Edits;

/** Questions about a job's papers: what their answers changed, and answering them. */
public final class Questions {

    private Questions() {
    }

    /** Addresses of the choices that an answer fixed: "W1.lath". */
    public static List<String> changed(Job job, Question question) {
        List<String> addresses = new ArrayList<>();
        for (WallType wall : job.walls()) {
            wall.choices().values().stream()
                .filter(choice -> Question.cited(choice.by()).filter(number -> number == question.number()).isPresent())
                .forEach(choice -> addresses.add(wall.id() + "." + choice.component()));
        }
        return addresses;
    }

    /** Choices that cite a question which isn't there, or isn't answered yet. */
    static List<Finding> findings(Job job) {
        List<Finding> findings = new ArrayList<>();
        for (WallType wall : job.walls()) {
            for (Choice choice : wall.choices().values()) {
                Optional<Integer> cited = Question.cited(choice.by());
                if (cited.isEmpty()) {
                    continue;
                }
                Optional<Question> question = job.question(cited.get());
                String says = "The choice of " + choice.component() + " cites " + choice.by().strip();
                if (question.isEmpty()) {
                    findings.add(finding(Finding.Kind.GAP, wall, choice, says + ", which is not among the job's questions.",
                        "Add it to " + Question.FILE + ", or say otherwise who fixed the choice."));
                } else if (question.get().isOpen()) {
                    findings.add(finding(Finding.Kind.CAUTION, wall, choice, says + ", which has no answer yet.",
                        "Write its answer into " + Question.FILE + "."));
                }
            }
        }
        return findings;
    }

    private static Finding finding(Finding.Kind kind, WallType wall, Choice choice, String says, String fix) {
        return new Finding(PaperRule.QUESTION.id(), kind, Scope.WALL, wall.id(), "", choice.component(), Map.of(), choice.at(), says, fix,
            Map.of(), List.of(), PaperRule.QUESTION.basis());
    }

    /**
     * Answers a question: writes the answer, makes its changes, and has every choice that it changes cite it. All of it or, when something
     * is refused, nothing.
     *
     * @param changes of choices, such as W1.lath=metal-3.4; may be none
     * @param answer  the answer's words, which also become the reason of the choices
     */
    public static OpenJob answer(OpenJob job, int number, List<Change> changes, String answer, Optional<LocalDate> day)
            throws UnusableInput, IOException {
        if (job.job().question(number).isEmpty()) {
            throw new UnusableInput(new Problem(Place.of(Question.FILE), "there is no question " + number, job.job().questions().isEmpty()
                ? "write it down there first" : "expected one of: " + String.join(", ", job.job().questions().stream()
                .map(question -> String.valueOf(question.number())).toList())));
        }
        Map<String, String> texts = new LinkedHashMap<>(Saving.texts(job, changes));
        for (Change change : changes) {
            String[] parts = change.set().split("\\.", 3);
            Optional<WallType> wall = job.job().wall(parts[0]);
            if (wall.isPresent() && parts.length > 1 && job.pack().component(parts[1]).isPresent() && !(parts.length == 2
                && change.to().isEmpty())) {
                String file = Saving.wallFile(parts[0]);
                texts.put(file, Edits.state(Edits.state(texts.get(file), List.of(parts[1], "by"), Question.name(number)),
                    List.of(parts[1], "because"), answer));
            }
        }
        String page = Saving.text(job, Question.FILE);
        if (day.isPresent()) {
            page = Edits.state(page, List.of("questions", String.valueOf(number), "answered"), day.get().toString());
        }
        texts.put(Question.FILE, Edits.state(page, List.of("questions", String.valueOf(number), "answer"), answer));
        return Saving.restore(job, texts);
    }

    /** Lines for a terminal: every question, what became of it, and what its answer changed. */
    public static String report(Job job) {
        StringBuilder page = new StringBuilder();
        for (Question question : job.questions()) {
            List<String> changed = changed(job, question);
            page.append(question.name()).append(question.from().isEmpty() ? "" : ", " + question.from())
                .append(question.asked().map(day -> ", " + day).orElse("")).append(question.about().isEmpty() ? "" : ", about "
                    + String.join(", ", question.about())).append(": ").append(question.question()).append('\n')
                .append("  ").append(question.isOpen() ? "open" : question.answer() + question.answered().map(day -> " (" + day
                    + ")").orElse(""))
                .append(changed.isEmpty() ? "" : "; changed " + String.join(", ", changed)).append('\n');
        }
        return page.append(page.isEmpty() ? "no questions\n" : "").toString();
    }
}

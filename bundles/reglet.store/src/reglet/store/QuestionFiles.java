package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Question;

/** Reads what was asked about a job's papers, and what was answered. */
final class QuestionFiles {
    /** The newest format that this program knows. */
    static final int FORMAT = 1;

    private QuestionFiles() {
    }

    /** The questions of a file, by number. */
    static List<Question> read(Cursor file) {
        Fields fields = file.fields("format", "questions");
        Formats.check(fields, FORMAT, "questions");
        List<Question> questions = new ArrayList<>();
        fields.members("questions").forEach((name, cursor) -> {
            if (!name.matches("[1-9]\\d{0,5}")) {
                cursor.wrong("\"" + name + "\" is no number of a question", "expected a number such as 12, and below it \"question: …\"");
            } else {
                questions.add(question(Integer.parseInt(name), cursor));
            }
        });
        questions.sort((one, other) -> Integer.compare(one.number(), other.number()));
        return questions;
    }

    /** One question; issues keep them in the same form. */
    static Question question(int number, Cursor cursor) {
        Fields fields = cursor.fields("from", "asked", "question", "about", "answer", "answered");
        Optional<Cursor> answered = fields.find("answered");
        if (answered.isPresent() && fields.text("answer", "").isBlank()) {
            answered.get().wrong("the question was answered with nothing", "add a line \"answer: …\", or take the day away");
        }
        return new Question(number, fields.text("from", ""), fields.date("asked"), fields.text("question"), fields.texts("about"),
            fields.text("answer", "").strip(), fields.date("answered"), cursor.at());
    }
}

package reglet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.model.Job;
import reglet.model.Question;

/** Questions for programs. */
public final class QuestionForms {

    private QuestionForms() {
    }

    public static JsonObject of(Job job) {
        JsonArray all = new JsonArray();
        for (Question question : job.questions()) {
            JsonObject form = new JsonObject();
            form.addProperty("number", question.number());
            Forms.word(form, "from", question.from());
            question.asked().ifPresent(day -> form.addProperty("asked", day.toString()));
            form.addProperty("question", question.question());
            form.add("about", Forms.strings(question.about()));
            Forms.word(form, "answer", question.answer());
            question.answered().ifPresent(day -> form.addProperty("answered", day.toString()));
            form.add("changed", Forms.strings(Questions.changed(job, question)));
            all.add(form);
        }
        JsonObject form = new JsonObject();
        form.add("questions", all);
        return form;
    }
}

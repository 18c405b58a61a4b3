package reglet.workbench;

import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import reglet.model.Question;

/** A line that takes the answer to the question selected. */
final class AnswerLine {
    private final BiConsumer<Question, String> record;
    private final Text text;
    private final Button button;
    private final Refusal refusal;
    private Optional<Question> about = Optional.empty();

    AnswerLine(Composite page, BiConsumer<Question, String> record) {
        this.record = record;
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        text = Ui.named(new Text(line, SWT.BORDER | SWT.SINGLE), "Answer");
        text.setMessage("Select a question to answer it");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(text, 20),
            SWT.DEFAULT).applyTo(text);
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> record()));
        button = Ui.button(line, "&Record the answer", "Record the answer", this::record);
        refusal = new Refusal(page, "The answer, what is wrong");
        about(Optional.empty());
    }

    /** The question that is answered here; empty for none. */
    void about(Optional<Question> question) {
        if (!question.map(Question::number).equals(about.map(Question::number))) {
            text.setText("");
            refusal.say("");
        }
        about = question;
        text.setMessage(question.map(asked -> "Answer to " + asked.name()).orElse("Select a question to answer it"));
        text.setEnabled(question.isPresent());
        button.setEnabled(question.isPresent());
    }

    private void record() {
        if (about.isPresent() && !text.getText().isBlank()) {
            refusal.say("");
            record.accept(about.get(), text.getText().strip());
            text.setText("");
        }
    }

    /** Why it can't be recorded. */
    void refused(String why) {
        refusal.say(why);
    }
}

package reglet.workbench.section;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import reglet.desk.SectionPage.LibraryMoved;
import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.Finding;
import reglet.model.SectionChanges.Run;
import reglet.workbench.Marks;
import reglet.workbench.Prose;
import reglet.workbench.Ui;
import reglet.workbench.settings.Units;

/** Below the text: what the paragraph is in which the keyboard stands, beside the library's text, and what can be decided about it. */
final class AboutPane {
    static final String STATE = "About the paragraph";
    static final String WORDS = "About the paragraph, in full";
    private static final int ROWS = 8;
    private final Composite frame;
    private final Label state;
    private final Composite answers;
    private final Prose words;
    private final Decisions decisions;
    private Line shown;
    private boolean notes;
    private String refused = "";
    private String done = "";
    private String hint = "";

    /** What the person decides about a text whose library text has moved. */
    interface Decisions {
        /** The library's new words are taken in, or the text stays as it prints. */
        void settle(Line line);

        /** The text stays as the person wrote it. */
        void keep(Line line);

        /** The library's text of today. */
        void giveBack(Line line);
    }

    AboutPane(Composite parent, Decisions decisions) {
        this.decisions = decisions;
        frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(frame);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(frame);
        state = Ui.named(new Label(frame, SWT.WRAP), STATE);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(state, 20), SWT.DEFAULT).applyTo(state);
        answers = new Composite(frame, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        answers.setLayout(row);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(answers);
        words = new Prose(frame, WORDS);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, words.control().getLineHeight() * ROWS).exclude(true)
            .applyTo(words.control());
        words.control().setVisible(false);
    }

    /** Shows what a paragraph is; empty for none. */
    void show(Optional<Line> line) {
        if (!line.equals(Optional.ofNullable(shown))) {
            refused = "";
        }
        if (!line.map(Line::id).equals(Optional.ofNullable(shown).map(Line::id))) {
            done = "";
        }
        shown = line.orElse(null);
        draw();
    }

    /** Says what can't be done with the paragraph, until another one is looked at. */
    void refuse(String why) {
        refused = why;
        draw();
    }

    /** Says what was done with the paragraph, until another one is looked at. */
    void tell(String what) {
        done = what;
        draw();
    }

    /** Says what the keys do while somebody writes; "" for nobody. */
    void hint(String words) {
        if (!hint.equals(words)) {
            hint = words;
            draw();
        }
    }

    /** Shows the notes to the specifier, or not any more. */
    void toggleNotes() {
        notes = !notes;
        draw();
        if (shown != null && shown.notes().isEmpty() && notes) {
            refuse("Nothing is noted about this paragraph.");
        }
    }

    /** Gives the keyboard to the first thing to decide; whether there is one. */
    boolean decide() {
        if (answers.getChildren().length == 0) {
            return false;
        }
        return answers.getChildren()[0].setFocus();
    }

    private void draw() {
        String said = shown == null ? "" : !hint.isEmpty() ? hint
            : (refused.isEmpty() ? "" : "≠ " + refused + "\n") + state(shown, notes) + (done.isEmpty() ? "" : " " + done);
        if (!said.equals(state.getText())) {
            state.setText(said);
        }
        answers();
        boolean more = shown != null && more(shown);
        if (more) {
            words.show();
            words.top();
            ((GridData) words.control().getLayoutData()).heightHint = height();
        }
        shown(words.control(), more);
        frame.getShell().layout(new Control[] {state, answers, words.control()}, SWT.DEFER);
    }

    /** As high as its words need, with a limit that leaves room for the text above. */
    private int height() {
        StyledText text = words.control();
        int width = Math.max(1, frame.getClientArea().width - 8);
        // behind the last paragraph stands an empty line
        return Math.min(words.height(width) - text.getLineHeight(), text.getLineHeight() * ROWS);
    }

    /** "2.3.A: your own text in place of the library's." */
    static String state(Line line, boolean notes) {
        String number = line.standing() == Standing.STRUCK ? "" : line.paragraph().path() + ": ";
        String words = switch (line.standing()) {
            case LIBRARY -> line.fixed().isEmpty() ? "the library's text" : line.fixed().replaceFirst("\\.$", "");
            case OWN -> "your own text in place of the library's";
            case ADDED -> "a paragraph that you added";
            case STRUCK -> "struck, it doesn't print; Delete gives it back";
        };
        String library = line.move().isPresent() ? ". △ The library's text has changed since" : "";
        String left = line.leftOut().isEmpty() ? "" : " Left out on purpose: " + String.join("; ", line.leftOut()) + ".";
        String noted = line.notes().isEmpty() || notes ? "" : " There is a note to the specifier (Ctrl+I).";
        return number + (number.isEmpty() ? Marks.sentence(words) : Prose.lower(words)) + (line.moved() ? ", moved here" : "") + library
            + "." + left + noted;
    }

    private void answers() {
        for (Control child : answers.getChildren()) {
            child.dispose();
        }
        Optional<LibraryMoved> move = Optional.ofNullable(shown).flatMap(Line::move);
        move.ifPresent(moved -> {
            if (moved.takenIn()) {
                answer("Take the new words in", () -> decisions.settle(shown));
            }
            answer(shown.standing() == Standing.STRUCK ? "Leave it struck" : "Keep my text", () -> decisions.keep(shown));
            answer("Take the library's text", () -> decisions.giveBack(shown));
        });
        shown(answers, move.isPresent());
    }

    private void answer(String label, Runnable action) {
        Button button = Ui.named(new Button(answers, SWT.PUSH), label);
        button.setText(label);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    private static void shown(Control control, boolean shown) {
        ((GridData) control.getLayoutData()).exclude = !shown;
        control.setVisible(shown);
    }

    /** Writes what is to be said of a line; whether there is anything. */
    private boolean more(Line line) {
        boolean any = false;
        for (Finding finding : line.findings()) {
            if (!finding.rule().equals("paper.library")) {
                words.item(Marks.shape(finding.kind()), finding.statement().in(Units.shown()) + " " + finding.advice().in(Units.shown()));
                any = true;
            }
        }
        if (line.move().isPresent()) {
            move(line, line.move().get());
            any = true;
        } else if (line.standing() == Standing.OWN) {
            any |= differences(line);
        }
        if (notes && !line.notes().isEmpty()) {
            words.strong("Note to the specifier").end(0, 0);
            line.notes().forEach(words::line);
            any = true;
        }
        return any;
    }

    private boolean differences(Line line) {
        List<Run> runs = line.differences();
        if (runs.isEmpty()) {
            return false;
        }
        words.strong("The library says").end(0, 0);
        line.library().forEach(span -> words.plain(span.text()));
        words.end(1, 1);
        words.strong("Word by word: ").plain("struck is the library's, underlined yours").end(0, 0);
        for (Run run : runs) {
            switch (run.edit()) {
                case KEPT -> words.plain(run.span().text());
                case DELETED -> words.struck(run.span().text());
                case INSERTED -> words.put(run.span().text());
            }
        }
        words.end(1, 1);
        return true;
    }

    private void move(Line line, LibraryMoved move) {
        words.strong("The library's text that you wrote on").end(0, 0).plain(move.madeOn()).end(1, 1);
        words.strong("The library's text of today").end(0, 0).plain(move.today()).end(1, 1);
        if (line.standing() == Standing.STRUCK) {
            return;
        }
        words.strong("What prints: yours, " + (move.takenIn() ? "with" : "without") + " the library's new words").end(0, 0)
            .plain(move.prints()).end(1, 1);
        if (move.takenIn()) {
            words.strong("Your text as you wrote it").end(0, 0).plain(move.written()).end(1, 1);
        }
    }
}

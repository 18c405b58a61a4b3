package reglet.workbench.section;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.desk.SectionPage.Line;
import reglet.workbench.Prose;
import reglet.workbench.Ui;

/** A paragraph while somebody writes in it, in its place in the text, with what is wrong below it. */
final class ParagraphEditor implements PageText.Gap {
    static final String WRONG = "What is wrong with the paragraph";
    private static final int ROOM = 4;
    private final Place place;
    private final Prose prose;
    private final Composite frame;
    private final ValueField field;
    private final Label wrong;
    private final Button choice;
    private final Consumer<String> toChoice;
    private String before = "";
    private String value = "";

    /**
     * What is written in.
     *
     * @param paragraph id
     * @param isNew     whether a paragraph behind it is written
     */
    record Place(String section, String paragraph, boolean isNew) {
    }

    /** What the editor tells. */
    interface Listener {
        /** After each key. */
        void typed();

        /** It needs another height. */
        void grown();

        /** The keyboard went elsewhere in the window. */
        void left();
    }

    /**
     * @param name     number of the paragraph, for screen readers
     * @param label    what the value of a slot is called
     * @param toChoice leads to where the value of a slot is chosen
     */
    ParagraphEditor(Prose prose, Place place, String name, Function<String, String> label, Consumer<String> toChoice, Listener listener) {
        this.place = place;
        this.prose = prose;
        this.toChoice = toChoice;
        frame = new Composite(prose.control(), SWT.NONE);
        frame.setBackground(prose.control().getBackground());
        GridLayoutFactory.fillDefaults().numColumns(2).margins(0, ROOM / 2).spacing(ROOM, ROOM / 2).applyTo(frame);
        field = Ui.named(new ValueField(frame, mark -> refuse(mark, label.apply(mark.name()), listener), () -> {
            explain("", listener);
            listener.typed();
        }), name);
        field.setFont(prose.control().getFont());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(field);
        wrong = Ui.named(new Label(frame, SWT.WRAP), WRONG);
        wrong.setBackground(frame.getBackground());
        wrong.setForeground(prose.control().getForeground());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(wrong, 10), SWT.DEFAULT)
            .applyTo(wrong);
        choice = Ui.named(new Button(frame, SWT.PUSH), "Go to the choice");
        choice.setText("Go to the choice");
        choice.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> this.toChoice.accept(value)));
        field.addListener(SWT.FocusOut, event -> Ui.later(field, () -> {
            // a window that is left for another program keeps what is being written
            if (field.getDisplay().getFocusControl() != null && !holdsFocus()) {
                listener.left();
            }
        }));
        explain("", listener);
    }

    /** Shows a text to be written in, with what is typed at its end already. */
    void show(ValueText text, String typed) {
        before = text.source();
        field.show(text, typed);
    }

    Place place() {
        return place;
    }

    /** The text as it would be kept. */
    String source() {
        return field.written().source().strip();
    }

    boolean isChanged() {
        return !source().equals(before.strip());
    }

    ValueField field() {
        return field;
    }

    /** Name of the value in which the keyboard stands. */
    Optional<String> valueHere() {
        return field.written().at(field.getCaretOffset()).map(ValueText.Mark::name);
    }

    private boolean holdsFocus() {
        return field.isFocusControl() || choice.isFocusControl();
    }

    void setFocus() {
        field.setFocus();
    }

    boolean isFocus() {
        return holdsFocus();
    }

    private void refuse(ValueText.Mark mark, String label, Listener listener) {
        value = mark.name();
        String words = mark.name().startsWith("see.") ? "a reference, which follows what it refers to by itself"
            : mark.name().startsWith("std.") ? "a standard, which the library cites" : "chosen, not typed";
        say("\"" + field.getText(mark.start(), mark.end() - 1) + "\" (" + label + ") is " + words
            + ": it is taken out or put elsewhere as a whole.", !mark.name().matches("(?:see|std)\\..*"), listener);
    }

    /** Says what is wrong with the text; "" for nothing. */
    void explain(String words, Listener listener) {
        say(words.isEmpty() ? "" : "≠ " + words, false, listener);
    }

    private void say(String words, boolean chosen, Listener listener) {
        int height = height();
        if (!words.equals(wrong.getText()) || chosen != choice.getVisible()) {
            wrong.setText(words);
            wrong.setVisible(!words.isEmpty());
            ((GridData) wrong.getLayoutData()).exclude = words.isEmpty();
            choice.setVisible(chosen);
            ((GridData) choice.getLayoutData()).exclude = !chosen;
        }
        if (height() != height) {
            listener.grown();
        }
        frame.layout();
    }

    @Override
    public boolean isFor(Line line) {
        return !place.isNew() && line.id().equals(place.paragraph());
    }

    @Override
    public boolean isBehind(Line line) {
        return place.isNew() && line.id().equals(place.paragraph());
    }

    @Override
    public int height() {
        return frame.computeSize(prose.room(), SWT.DEFAULT).y;
    }

    @Override
    public void at(int x, int y) {
        frame.setBounds(x, y, prose.room(), height());
    }

    @Override
    public void shown(boolean shown) {
        frame.setVisible(shown);
    }

    void dispose() {
        frame.dispose();
    }
}

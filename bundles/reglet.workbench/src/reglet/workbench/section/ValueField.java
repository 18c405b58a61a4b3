package reglet.workbench.section;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.VerifyEvent;
import org.eclipse.swt.widgets.Composite;

import reglet.workbench.Ui;

/**
 * A field for a text with values in it. Values are framed; keys that would change one are refused and told. What is typed can be taken
 * back step by step, apart from what is done to the job.
 */
final class ValueField extends StyledText {
    /** What was copied last, with its values; pasting the same words puts the values back. */
    private static ValueText copied = ValueText.words("");
    private final Consumer<ValueText.Mark> refused;
    private final Runnable changed;
    private final Deque<State> before = new ArrayDeque<>();
    private final Deque<State> after = new ArrayDeque<>();
    private ValueText now = ValueText.words("");
    private boolean applying;

    private record State(ValueText text, int caret) {
    }

    /**
     * @param refused told the value that a key would have changed
     * @param changed told after each change
     */
    ValueField(Composite parent, Consumer<ValueText.Mark> refused, Runnable changed) {
        super(parent, SWT.MULTI | SWT.WRAP | SWT.BORDER);
        this.refused = refused;
        this.changed = changed;
        setMargins(4, 2, 4, 2);
        addVerifyListener(this::verify);
    }

    @Override
    protected void checkSubclass() {
        // copying is all that differs
    }

    @Override
    public void copy() {
        keepCopied();
        super.copy();
    }

    @Override
    public void cut() {
        keepCopied();
        super.cut();
    }

    private void keepCopied() {
        copied = now.part(getSelection().x, getSelection().y);
    }

    ValueText written() {
        return now;
    }

    /** Shows a text of which nothing can be taken back, with what is typed at its end: measuring it takes long, and is done once. */
    void show(ValueText text, String typed) {
        before.clear();
        after.clear();
        int end = text.text().length();
        if (typed.isEmpty()) {
            put(text, end);
        } else {
            before.push(new State(text, end));
            put(text.write(end, end, ValueText.words(typed)).text(), end + typed.length());
        }
    }

    private void verify(VerifyEvent event) {
        if (applying) {
            return;
        }
        event.doit = false;
        String words = event.text.replace("\r\n", "\n").replace('\r', '\n');
        ValueText typed = !words.isEmpty() && words.equals(copied.text()) ? copied : ValueText.words(words);
        ValueText.Written written = now.write(event.start, event.end, typed);
        if (written.refused().isPresent()) {
            refused.accept(written.refused().get());
            return;
        }
        before.push(new State(now, getCaretOffset()));
        after.clear();
        put(written.text(), written.caret());
        changed.run();
    }

    void undo() {
        step(before, after);
    }

    void redo() {
        step(after, before);
    }

    private void step(Deque<State> from, Deque<State> to) {
        if (!from.isEmpty()) {
            State state = from.pop();
            to.push(new State(now, getCaretOffset()));
            put(state.text(), state.caret());
            changed.run();
        }
    }

    private void put(ValueText text, int caret) {
        now = text;
        applying = true;
        try {
            if (!getText().equals(text.text())) {
                setText(text.text());
            }
        } finally {
            applying = false;
        }
        setStyleRanges(styles().toArray(StyleRange[]::new));
        setSelection(Math.min(caret, getCharCount()));
    }

    private List<StyleRange> styles() {
        List<StyleRange> styles = new ArrayList<>();
        for (ValueText.Mark value : now.values()) {
            StyleRange style = new StyleRange(value.start(), value.end() - value.start(), null, Ui.highlight(this));
            style.borderStyle = SWT.BORDER_SOLID;
            styles.add(style);
        }
        return styles;
    }
}

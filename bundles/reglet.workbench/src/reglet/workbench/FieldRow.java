package reglet.workbench;

import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.workbench.Fields.Line;

/**
 * The controls of one value of {@link Fields}. They serve one value after the other, for making controls takes much longer than
 * filling them.
 */
final class FieldRow {
    private final Owner owner;
    private final Label label;
    private final Control field;
    private final Label aside;
    private final Label wrong;
    private Line line;
    /** What was handed over last and not answered by another value yet; null for nothing. */
    private String handed;

    /** Whoever shows the rows. */
    interface Owner {
        /** Whether the fields are being filled, so that what they tell is not typed. */
        boolean isFilling();

        /** @param text what stands in a field, not taken over yet */
        void typed(Line line, String text);

        /** @param refused given the reason in words when the value can't be used */
        void take(Line line, String value, Consumer<String> refused);

        /** The row takes another height. @param shown what is to be in sight then */
        void grown(Control shown);
    }

    /** @param chosen whether its value is chosen from words, not typed */
    FieldRow(Composite page, boolean chosen, Owner owner) {
        this.owner = owner;
        label = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(Ui.characters(label, 18), SWT.DEFAULT)
            .applyTo(label);
        field = Ui.named(chosen ? chosen(page) : typed(page), "");
        // a narrow pane takes from both: of large text, whole words of the label stay in its column
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(Ui.characters(field, 23), SWT.DEFAULT)
            .applyTo(field);
        aside = Ui.named(new Label(page, SWT.NONE), "");
        GridDataFactory.fillDefaults().indent(Ui.characters(aside, 1), 0).applyTo(aside);
        wrong = Ui.named(new Label(page, SWT.WRAP), "");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 24), SWT.DEFAULT).applyTo(wrong);
    }

    private Text typed(Composite page) {
        Text text = new Text(page, SWT.BORDER | SWT.SINGLE);
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> take()));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> take()));
        text.addModifyListener(event -> {
            if (!owner.isFilling()) {
                owner.typed(line, text.getText().strip());
            }
        });
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                text.setText(line.value());
                explain("");
            }
        }));
        return text;
    }

    private Combo chosen(Composite page) {
        Combo combo = new Combo(page, SWT.READ_ONLY);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> take()));
        return combo;
    }

    /** Whether the row has the control for this value. */
    boolean takes(Line other) {
        return field instanceof Combo != other.words().isEmpty();
    }

    String name() {
        return line == null ? "" : line.name();
    }

    /** Shows another value. */
    void put(Line now) {
        line = now;
        handed = null;
        label.setText(now.label());
        String help = now.help().isEmpty() ? null : now.help();
        label.setToolTipText(help);
        field.setToolTipText(help);
        field.setData(Ui.NAME, now.name());
        aside.setData(Ui.NAME, now.name() + ", in the other unit");
        wrong.setData(Ui.NAME, now.name() + ", what is wrong");
        ((GridData) label.getLayoutData()).verticalSpan = now.beside().isEmpty() ? 1 : 2;
        if (field instanceof Text text) {
            text.setMessage(now.hint());
        } else if (field instanceof Combo combo) {
            combo.setItems(Stream.concat(Stream.of("").filter(empty -> now.clears()), now.words().stream())
                .toArray(String[]::new));
        }
        write(now.value());
        aside.setText(now.aside());
        wrong.setText("");
        show(label, true);
        show(field, true);
        show(aside, !now.beside().isEmpty());
        show(wrong, false);
    }

    /** Another value of the same property; what the person is typing meanwhile stays. */
    void refresh(Line now) {
        Line before = line;
        String text = text();
        boolean typing = field.isFocusControl() && !text.equals(before.value()) && !text.strip().equals(handed);
        line = now;
        if (!before.label().equals(now.label())) {
            label.setText(now.label());
        }
        if (!before.aside().equals(now.aside())) {
            aside.setText(now.aside());
        }
        if (!typing && !text.equals(now.value())) {
            write(now.value());
        }
        if (!before.value().equals(now.value())) {
            handed = null;
            explain("");
        }
    }

    /** Shows no value until the next is put. */
    void hide() {
        for (Control control : controls()) {
            show(control, false);
        }
    }

    /** Stands behind another control. */
    Control moveBelow(Control before) {
        Control last = before;
        for (Control control : controls()) {
            control.moveBelow(last);
            last = control;
        }
        return last;
    }

    /** The last of its controls. */
    Control end() {
        return wrong;
    }

    boolean setFocus() {
        return field.setFocus();
    }

    private Control[] controls() {
        return new Control[] {label, field, aside, wrong};
    }

    private static void show(Control control, boolean shown) {
        GridData room = (GridData) control.getLayoutData();
        if (room.exclude == shown) {
            room.exclude = !shown;
            control.setVisible(shown);
        }
    }

    private String text() {
        return field instanceof Text text ? text.getText() : ((Combo) field).getText();
    }

    private void write(String value) {
        if (field instanceof Text text) {
            text.setText(value);
        } else {
            ((Combo) field).setText(value);
        }
    }

    private void take() {
        if (owner.isFilling() || field.isDisposed()) {
            return;
        }
        Line taken = line;
        String typed = text();
        String value = typed.isBlank() ? taken.own() : typed.strip();
        if (value.equals(taken.value()) || value.equals(taken.written())) {
            explain("");
        } else if ((!value.isEmpty() || taken.clears()) && !value.equals(handed)) {
            // leaving a field after Enter hands the same value over only once
            handed = value;
            owner.typed(taken, taken.value());
            owner.take(taken, value, why -> {
                if (!field.isDisposed() && line.key().equals(taken.key()) && line.name().equals(taken.name())) {
                    explain(why);
                }
            });
        }
    }

    private void explain(String why) {
        String words = why.isEmpty() ? "" : "≠ " + why;
        if (!words.equals(wrong.getText())) {
            wrong.setText(words);
            show(wrong, !why.isEmpty());
            owner.grown(why.isEmpty() ? field : wrong);
        }
    }
}

package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.model.Property;
import reglet.model.PropertyType;

/**
 * Values one below the other, typed with units as people write them or chosen from words. Enter or leaving a field takes its value
 * over, Escape puts the old one back. A value that can't be used is explained below its field and changes nothing.
 */
public final class Fields {
    private static final String HANDED = "handed over";
    private static final String LINE = "line";
    private final ScrolledComposite scroll;
    private final List<Control> controls = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final Taker taker;
    private Hearer hearer = (line, text) -> { };
    private Composite page;
    private Object about = "";
    private List<Line> shown = List.of();
    private String instead = "";
    private boolean filling;

    /**
     * A field.
     *
     * @param key    what the taker knows it by
     * @param name   its name, for screen readers too
     * @param label  the words before it
     * @param help   what a person has to know to fill it in; may be ""
     * @param words  the words that it takes; empty for anything typed
     * @param hint   shown while it is empty, such as a unit
     * @param value  what holds; "" when it isn't known
     * @param own    what an emptied field stands for; "" for nothing
     * @param clears whether it may be emptied where it stands for nothing then
     */
    public record Line(String key, String name, String label, String help, List<String> words, String hint, String value, String own,
            boolean clears) {
        public Line {
            words = List.copyOf(words);
        }

        /** A line for a property; its label says the sense of a measured requirement, and where the value is from. */
        public static Line of(Property property, boolean senseful, String source, String value, String own, boolean clears) {
            PropertyType type = property.type();
            boolean measured = type.kind() == PropertyType.Kind.QUANTITY || type.kind() == PropertyType.Kind.RANGE
                || type.kind() == PropertyType.Kind.GRADE;
            return new Line(property.name(), property.label(), Marks.sentence(property.label())
                + (measured && senseful ? ", " + property.compare().text() : "") + (source.isEmpty() ? "" : " (" + source + ")"),
                property.help(), words(type), type.unit().map(unit -> unit.symbol()).orElse(""), value, own, clears);
        }

        private static List<String> words(PropertyType type) {
            return switch (type.kind()) {
                case WORD, GRADE -> type.words();
                case FLAG -> List.of("yes", "no");
                default -> List.of();
            };
        }
    }

    /** Takes values over. */
    public interface Taker {
        /** @param refused given the reason in words when the value can't be used */
        void take(Line line, String value, Consumer<String> refused);
    }

    /** Hears of what is being typed and not taken over. */
    public interface Hearer {
        /** @param text the text now; the field's own value when the person thought better of it */
        void typed(Line line, String text);
    }

    /** Tells after each key what stands in a typed field. */
    public void hear(Hearer told) {
        hearer = told;
    }

    public Fields(Composite parent, Taker taker) {
        this.taker = taker;
        Composite frame = new Composite(parent, SWT.NONE);
        frame.setLayout(new FillLayout());
        scroll = new ScrolledComposite(frame, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.addListener(SWT.Resize, event -> {
            if (!filling) {
                size();
            }
        });
    }

    /**
     * Shows fields; the one in focus stays so when they are about the same thing.
     *
     * @param thing what they are about
     * @param words shown when there are none
     */
    public void show(Object thing, List<Line> lines, String words) {
        if (thing.equals(about) && lines.equals(shown) && words.equals(instead) && page != null) {
            return;
        }
        if (thing.equals(about) && words.equals(instead) && page != null && alike(lines)) {
            refresh(lines);
            return;
        }
        String typing = thing.equals(about) ? focused() : "";
        about = thing;
        shown = List.copyOf(lines);
        instead = words;
        fill();
        if (!typing.isEmpty()) {
            for (Control control : page.getChildren()) {
                if (typing.equals(control.getData(Ui.NAME))) {
                    control.setFocus();
                }
            }
        }
    }

    private boolean alike(List<Line> lines) {
        boolean alike = lines.size() == shown.size();
        for (int i = 0; alike && i < lines.size(); i++) {
            Line before = shown.get(i);
            Line now = lines.get(i);
            alike = before.key().equals(now.key()) && before.words().equals(now.words()) && before.clears() == now.clears();
        }
        return alike;
    }

    /** Other values in the same fields; what the person is typing meanwhile stays. */
    private void refresh(List<Line> lines) {
        filling = true;
        for (int i = 0; i < lines.size(); i++) {
            Control control = controls.get(i);
            Line before = line(control);
            Line now = lines.get(i);
            String text = control instanceof Text field ? field.getText() : ((Combo) control).getText();
            boolean typing = control.isFocusControl() && !text.equals(before.value()) && !text.strip().equals(control.getData(HANDED));
            control.setData(LINE, now);
            if (!before.label().equals(now.label())) {
                labels.get(i).setText(now.label());
            }
            if (!typing && !text.equals(now.value())) {
                if (control instanceof Text field) {
                    field.setText(now.value());
                } else {
                    ((Combo) control).setText(now.value());
                }
            }
            if (!before.value().equals(now.value())) {
                control.setData(HANDED, null);
                explain(control, "");
            }
        }
        shown = List.copyOf(lines);
        size();
        filling = false;
    }

    private static Line line(Control control) {
        return (Line) control.getData(LINE);
    }

    private String focused() {
        Control control = scroll.getDisplay().getFocusControl();
        return page != null && control != null && control.getParent() == page && control.getData(Ui.NAME) instanceof String name
            ? name : "";
    }

    /** Gives the keyboard to the first field. */
    public boolean setFocus() {
        return page != null && page.setFocus();
    }

    private void fill() {
        filling = true;
        if (page != null) {
            page.dispose();
            scroll.setContent(null);
        }
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(Ui.characters(page, 1), 2).spacing(Ui.characters(page, 1), 3).applyTo(page);
        if (!instead.isEmpty()) {
            Label words = new Label(page, SWT.WRAP);
            GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(words, 24), SWT.DEFAULT).applyTo(words);
            words.setText(instead);
        }
        controls.clear();
        labels.clear();
        shown.forEach(this::field);
        // the height first: with a content the scroll would lay it out for a height that is wrong, and then again
        int width = scroll.getClientArea().width;
        scroll.setMinHeight(height());
        scroll.setContent(page);
        filling = false;
        if (scroll.getClientArea().width != width) {
            size();
        }
    }

    private void field(Line line) {
        Label label = new Label(page, SWT.WRAP);
        label.setToolTipText(line.help().isEmpty() ? null : line.help());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(Ui.characters(label, 18), SWT.DEFAULT)
            .applyTo(label);
        label.setText(line.label());
        Control control = line.words().isEmpty() ? typed(line) : chosen(line);
        Ui.named(control, line.name());
        control.setToolTipText(line.help().isEmpty() ? null : line.help());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(Ui.characters(control, 21), SWT.DEFAULT).applyTo(control);
        Label wrong = Ui.named(new Label(page, SWT.WRAP), line.name() + ", what is wrong");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 24), SWT.DEFAULT).exclude(true)
            .applyTo(wrong);
        wrong.setVisible(false);
        control.setData("wrong", wrong);
        control.setData(LINE, line);
        controls.add(control);
        labels.add(label);
    }

    private Text typed(Line line) {
        Text text = new Text(page, SWT.BORDER | SWT.SINGLE);
        text.setText(line.value());
        text.setMessage(line.hint());
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> take(line(text), text, text.getText())));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> take(line(text), text, text.getText())));
        text.addModifyListener(event -> {
            if (!filling) {
                hearer.typed(line(text), text.getText().strip());
            }
        });
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                text.setText(line(text).value());
                explain(text, "");
            }
        }));
        return text;
    }

    private Combo chosen(Line line) {
        Combo combo = new Combo(page, SWT.READ_ONLY);
        if (line.clears()) {
            combo.add("");
        }
        line.words().forEach(combo::add);
        combo.setText(line.value());
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> take(line(combo), combo, combo.getText())));
        return combo;
    }

    private void take(Line line, Control control, String typed) {
        if (filling || control.isDisposed()) {
            return;
        }
        String value = typed.isBlank() ? line.own() : typed.strip();
        if (value.equals(line.value())) {
            explain(control, "");
        } else if ((!value.isEmpty() || line.clears()) && !value.equals(control.getData(HANDED))) {
            // leaving a field after Enter hands the same value over only once
            control.setData(HANDED, value);
            hearer.typed(line, line.value());
            taker.take(line, value, why -> {
                if (!control.isDisposed()) {
                    explain(control, why);
                }
            });
        }
    }

    private void explain(Control control, String why) {
        Label wrong = (Label) control.getData("wrong");
        String words = why.isEmpty() ? "" : "≠ " + why;
        if (!words.equals(wrong.getText())) {
            wrong.setText(words);
            wrong.setVisible(!why.isEmpty());
            ((GridData) wrong.getLayoutData()).exclude = why.isEmpty();
            size();
            scroll.showControl(why.isEmpty() ? control : wrong);
        }
    }

    private void size() {
        if (page != null && !page.isDisposed()) {
            scroll.setMinHeight(height());
            page.layout(false);
        }
    }

    private int height() {
        return page.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y;
    }
}

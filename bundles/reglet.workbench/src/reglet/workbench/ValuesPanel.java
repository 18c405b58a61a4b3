package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Requirement;
import reglet.model.Value;

/**
 * The values of the component in focus. They are typed with units, as people write them; Enter or leaving the field takes a value
 * over, Escape puts the old one back. A value that can't be used is explained below its field and changes nothing.
 */
final class ValuesPanel {
    private final Session session;
    private final ScrolledComposite scroll;
    private Composite fields;
    private Shown shown;
    private boolean filling;

    /** What the panel was filled for. */
    private record Shown(String wall, String component, String option, List<Line> lines) {
    }

    /**
     * A property that applies.
     *
     * @param value  the value that holds; "" when it isn't known
     * @param source who gives the value when it isn't the option, in words; else ""
     * @param own    the value without what a person set; "" for none
     */
    record Line(Property property, String value, String source, String own) {
    }

    ValuesPanel(Composite parent, Session session) {
        this.session = session;
        Composite frame = new Composite(parent, SWT.NONE);
        frame.setLayout(new FillLayout());
        scroll = new ScrolledComposite(frame, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.addListener(SWT.Resize, event -> size());
    }

    /** Shows the values of the component in focus. */
    void follow() {
        Snapshot now = session.snapshot().orElseThrow();
        Focus focus = session.focus();
        Optional<Component> component = now.component(focus.component());
        Optional<Choice> choice = now.wall(focus.wall()).flatMap(wall -> wall.choice(focus.component()));
        Shown next = component.isEmpty() ? new Shown("", "", "", List.of())
            : choice.isEmpty() ? new Shown(focus.wall(), component.get().id(), "", List.of())
            : new Shown(focus.wall(), component.get().id(), choice.get().accept().get(0),
                lines(now, focus.wall(), component.get(), choice.get()));
        if (next.equals(shown)) {
            return;
        }
        boolean same = shown != null && next.wall.equals(shown.wall) && next.component.equals(shown.component);
        String typing = same ? focused() : "";
        shown = next;
        fill();
        if (!typing.isEmpty()) {
            for (Control control : fields.getChildren()) {
                if (typing.equals(control.getData(Ui.NAME))) {
                    control.setFocus();
                }
            }
        }
    }

    private String focused() {
        Control control = scroll.getDisplay().getFocusControl();
        return control != null && control.getParent() == fields && control.getData(Ui.NAME) instanceof String name ? name : "";
    }

    /** The properties that apply to the first accepted option; alternatives share the values that a person sets. */
    static List<Line> lines(Snapshot now, String wall, Component component, Choice choice) {
        String id = choice.accept().get(0);
        Optional<Option> option = component.option(id);
        Map<String, Requirement> required = new java.util.LinkedHashMap<>();
        now.job().assembly().requirements(wall, component.id(), id)
            .forEach(requirement -> required.put(requirement.property().name(), requirement));
        List<String> missing = now.findings(wall).stream().flatMap(finding -> finding.missing().stream()).toList();
        List<Line> lines = new ArrayList<>();
        for (Property property : component.properties()) {
            Requirement requirement = required.get(property.name());
            boolean unknown = missing.contains(component.id() + "." + property.name());
            if (requirement == null && !unknown && !choice.values().containsKey(property.name())) {
                continue;
            }
            String own = option.flatMap(found -> found.value(property.name())).or(property::usual).map(Value::text).orElse("");
            String source = choice.values().containsKey(property.name()) ? "set here"
                : option.flatMap(found -> found.value(property.name())).isPresent() ? "" : property.usual().isPresent() ? "usual"
                    : "○ not known";
            lines.add(new Line(property, requirement == null ? "" : requirement.value().text(), source, own));
        }
        return lines;
    }

    private void fill() {
        filling = true;
        if (fields != null) {
            fields.dispose();
        }
        fields = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(Ui.characters(fields, 1), 2).spacing(Ui.characters(fields, 1), 3)
            .applyTo(fields);
        if (shown.lines.isEmpty()) {
            Label words = new Label(fields, SWT.WRAP);
            GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(words, 24), SWT.DEFAULT).applyTo(words);
            words.setText(shown.component.isEmpty() ? "" : shown.option.isEmpty()
                ? "Its values can be typed here once an option is accepted."
                : "This option takes no values.");
        }
        shown.lines.forEach(this::field);
        scroll.setContent(fields);
        size();
        filling = false;
    }

    private void field(Line line) {
        Label label = new Label(fields, SWT.WRAP);
        label.setToolTipText(line.property().help().isEmpty() ? null : line.property().help());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(Ui.characters(label, 18), SWT.DEFAULT)
            .applyTo(label);
        PropertyType type = line.property().type();
        boolean measured = type.kind() == PropertyType.Kind.QUANTITY || type.kind() == PropertyType.Kind.RANGE
            || type.kind() == PropertyType.Kind.GRADE;
        label.setText(Marks.sentence(line.property().label()) + (measured ? ", " + line.property().compare().text() : "")
            + (line.source().isEmpty() ? "" : " (" + line.source() + ")"));
        Control control = words(type).isEmpty() ? typed(line) : chosen(line, words(type));
        Ui.named(control, line.property().label());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(Ui.characters(control, 21), SWT.DEFAULT).applyTo(control);
        Label wrong = Ui.named(new Label(fields, SWT.WRAP), line.property().label() + ", what is wrong");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 24), SWT.DEFAULT).exclude(true)
            .applyTo(wrong);
        wrong.setVisible(false);
        control.setData("wrong", wrong);
    }

    private static List<String> words(PropertyType type) {
        return switch (type.kind()) {
            case WORD, GRADE -> type.words();
            case FLAG -> List.of("yes", "no");
            default -> List.of();
        };
    }

    private Text typed(Line line) {
        Text text = new Text(fields, SWT.BORDER | SWT.SINGLE);
        text.setText(line.value());
        line.property().type().unit().ifPresent(unit -> text.setMessage(unit.symbol()));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> take(line, text, text.getText())));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> take(line, text, text.getText())));
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                text.setText(line.value());
                explain(text, "");
            }
        }));
        return text;
    }

    private Combo chosen(Line line, List<String> words) {
        Combo combo = new Combo(fields, SWT.READ_ONLY);
        combo.setItems(words.toArray(String[]::new));
        combo.setText(line.value());
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> take(line, combo, combo.getText())));
        return combo;
    }

    /** Hands a typed value over; an empty one stands for the option's own. */
    private void take(Line line, Control control, String typed) {
        if (filling || control.isDisposed()) {
            return;
        }
        String value = typed.isBlank() ? line.own() : typed.strip();
        if (value.equals(line.value())) {
            explain(control, "");
            return;
        }
        if (value.isEmpty()) {
            return;
        }
        session.set(shown.wall, shown.component, line.property().name(), value, why -> {
            if (!control.isDisposed()) {
                explain(control, why);
            }
        });
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
        if (fields != null && !fields.isDisposed()) {
            scroll.setMinHeight(fields.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
            fields.layout();
        }
    }
}

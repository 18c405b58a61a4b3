package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.ShownUnits.Sense;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.workbench.settings.Units;

/**
 * Values one below the other, typed with units as people write them or chosen from words. Enter or leaving a field takes its value
 * over, Escape puts the old one back. A value that can't be used is explained below its field and changes nothing.
 */
public final class Fields implements FieldRow.Owner {
    private final ScrolledComposite scroll;
    private final Composite page;
    private final Label none;
    /** As they stand one below the other; those behind the shown ones are hidden until they are needed again. */
    private final List<FieldRow> rows = new ArrayList<>();
    private final Taker taker;
    private Hearer hearer = (line, text) -> { };
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
     * @param value  what holds, in the units that the person set; "" when it isn't known
     * @param written the same as it is written in the job
     * @param beside the same in the other unit; "" where there is none
     * @param own    what an emptied field stands for; "" for nothing
     * @param clears whether it may be emptied where it stands for nothing then
     */
    public record Line(String key, String name, String label, String help, List<String> words, String hint, String value, String written,
            String beside, String own, boolean clears) {
        public Line {
            words = List.copyOf(words);
        }

        /** A line for a text. */
        public static Line of(String key, String name, String hint, String value) {
            return new Line(key, name, name, "", List.of(), hint, value, value, "", "", true);
        }

        /**
         * A line for a property; its label says the sense of a measured requirement, and where the value is from.
         *
         * @param required whether it is a requirement, and no fact
         */
        public static Line of(Property property, boolean required, String source, Optional<Value> value, String own, boolean clears) {
            PropertyType type = property.type();
            boolean measured = type.kind() == PropertyType.Kind.QUANTITY || type.kind() == PropertyType.Kind.RANGE;
            boolean senseful = required && (measured || type.kind() == PropertyType.Kind.GRADE || type.kind() == PropertyType.Kind.DATE);
            Sense sense = required ? Sense.required(property) : Sense.stated(property);
            return new Line(property.name(), property.label(), Marks.sentence(property.label())
                + (senseful ? ", " + property.compare().text() : "") + (source.isEmpty() ? "" : " (" + source + ")"),
                property.help(), words(type), hint(type),
                value.map(known -> Units.shown().alone(known, sense)).orElse(""), value.map(Value::text).orElse(""),
                value.map(known -> Units.shown().beside(known, sense)).orElse(""), own, clears);
        }

        /** What stands below the field. */
        String aside() {
            return beside.isEmpty() ? "" : "= " + beside;
        }

        private static String hint(PropertyType type) {
            return type.kind() == PropertyType.Kind.DATE ? "such as 2026-11-29" : type.unit().map(Unit::symbol).orElse("");
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
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(Ui.characters(page, 1), 2).spacing(Ui.characters(page, 1), 3).applyTo(page);
        none = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(none, 24), SWT.DEFAULT).exclude(true).applyTo(none);
        none.setVisible(false);
        scroll.setContent(page);
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
        boolean same = thing.equals(about) && words.equals(instead);
        if (same && lines.equals(shown)) {
            return;
        }
        filling = true;
        boolean alike = same && alike(lines);
        if (alike) {
            for (int i = 0; i < lines.size(); i++) {
                rows.get(i).refresh(lines.get(i));
            }
        } else {
            fill(lines, words, thing.equals(about));
        }
        about = thing;
        shown = List.copyOf(lines);
        instead = words;
        if (alike) {
            size();
        } else {
            // what was made is laid out in a turn of its own
            Ui.later(page, this::size);
        }
        filling = false;
    }

    private boolean alike(List<Line> lines) {
        boolean alike = lines.size() == shown.size();
        for (int i = 0; alike && i < lines.size(); i++) {
            Line before = shown.get(i);
            Line now = lines.get(i);
            alike = before.key().equals(now.key()) && before.words().equals(now.words()) && before.clears() == now.clears()
                && before.beside().isEmpty() == now.beside().isEmpty();
        }
        return alike;
    }

    /** Gives the keyboard to the first field. */
    public boolean setFocus() {
        return page.setFocus();
    }

    /** @param same whether they are about the same thing as before, so that the field in focus stays so */
    private void fill(List<Line> lines, String words, boolean same) {
        String typing = focused();
        if (!typing.isEmpty()) {
            // what stands in the field is not of the value that it shows next
            page.forceFocus();
        }
        none.setText(words);
        none.setVisible(!words.isEmpty());
        ((GridData) none.getLayoutData()).exclude = words.isEmpty();
        Control above = none;
        for (int i = 0; i < lines.size(); i++) {
            FieldRow row = row(i, lines.get(i), above);
            row.put(lines.get(i));
            above = row.end();
        }
        rows.subList(lines.size(), rows.size()).forEach(FieldRow::hide);
        if (!same) {
            scroll.setOrigin(0, 0);
        } else if (!typing.isEmpty()) {
            rows.subList(0, lines.size()).stream().filter(row -> row.name().equals(typing)).findFirst().ifPresent(FieldRow::setFocus);
        }
    }

    /** The row at a place that takes a value: one that is there already, else a new one. */
    private FieldRow row(int place, Line line, Control above) {
        int found = place;
        while (found < rows.size() && !rows.get(found).takes(line)) {
            found++;
        }
        FieldRow row = found < rows.size() ? rows.remove(found) : new FieldRow(page, !line.words().isEmpty(), this);
        rows.add(place, row);
        if (found != place) {
            row.moveBelow(above);
        }
        return row;
    }

    /** Name of the field in focus; "" for none. */
    private String focused() {
        Control control = page.getDisplay().getFocusControl();
        return control != null && control.getParent() == page && control.getData(Ui.NAME) instanceof String name ? name : "";
    }

    @Override
    public boolean isFilling() {
        return filling;
    }

    @Override
    public void typed(Line line, String text) {
        hearer.typed(line, text);
    }

    @Override
    public void take(Line line, String value, Consumer<String> refused) {
        taker.take(line, value, refused);
    }

    @Override
    public void grown(Control shown) {
        size();
        scroll.showControl(shown);
    }

    private void size() {
        if (page.isDisposed()) {
            return;
        }
        Point before = page.getSize();
        int width = scroll.getClientArea().width;
        scroll.setMinHeight(page.computeSize(width, SWT.DEFAULT).y);
        if (scroll.getClientArea().width != width) {
            // a scroll bar came or went
            scroll.setMinHeight(page.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
        }
        if (page.getSize().equals(before)) {
            page.layout(false);
        }
    }
}

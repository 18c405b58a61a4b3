package reglet.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Grade;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.model.Word;
import reglet.reading.Citations.Citation;
import reglet.reading.Labels.Label;
import reglet.reading.Layout.Line;
import reglet.reading.Reading.Read;

/** Takes down the values of one component as they are come across, and what could not be understood. */
final class Taken {
    private static final double HIDDEN = 0.6;
    private static final double ELSEWHERE = 0.45;
    private static final double REPEATED = 0.9;

    private final Component component;
    private final Citations citations;
    private final Reading reading;
    private final Sections sections;
    private final List<Found> found = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    /** The title above the table that a value stands in. */
    private final Map<Found, String> titles = new IdentityHashMap<>();
    private Layout layout;
    private String title = "";
    private final Topics topics = new Topics();
    private boolean elsewhere;

    /**
     * What is known of a value beside its own words.
     *
     * @param unit    that a heading or a cell beside it states; ""
     * @param methods standards that it is shown by
     * @param model   the model that it is of; ""
     * @param sense   that a heading states
     * @param share   how sure such a place on a sheet makes one, from 0 to 1
     */
    record Around(String unit, List<Citation> methods, String model, Optional<Compare> sense, double share) {
        static Around of(List<Citation> methods, double share) {
            return new Around("", methods, "", Optional.empty(), share);
        }
    }

    Taken(Component component, Citations citations, Reading reading, Sections sections) {
        this.component = component;
        this.citations = citations;
        this.reading = reading;
        this.sections = sections;
    }

    void page(Layout next) {
        layout = next;
        title = "";
        topics.page();
        elsewhere = false;
    }

    Layout layout() {
        return layout;
    }

    /** The title of the table that is read; "" outside tables. */
    void title(String next) {
        title = next;
    }

    /** The row that is read next: it may head others. */
    void row(Line row) {
        topics.row(row);
        elsewhere = false;
    }

    /** The label of the values that are taken down next. */
    void labelled(Cell label) {
        elsewhere = topics.elsewhere(label);
    }

    /** What was found. Where several tables state the same property, each under a title of its own, the titles name the models. */
    List<Found> found() {
        Set<String> several = new HashSet<>();
        for (Found one : found) {
            String own = titles.getOrDefault(one, "");
            boolean elsewhere = found.stream().anyMatch(other -> other.value().property().equals(one.value().property())
                && !titles.getOrDefault(other, "").isEmpty() && !titles.get(other).equals(own));
            if (one.model().isEmpty() && !own.isEmpty() && elsewhere) {
                several.add(own);
            }
        }
        return found.stream().map(one -> several.contains(titles.getOrDefault(one, "")) && one.model().isEmpty()
            ? new Found(one.value(), one.label(), titles.get(one), one.confidence(), one.doubt()) : one).toList();
    }

    List<Unread> unread() {
        return unread;
    }

    /** The words of a cell without the standards in it. */
    static String bare(Cell cell, List<Citation> cited) {
        return Citations.without(cell.text(), cited).replaceAll("[(\\[]\\s*[)\\]]", " ")
            .replaceAll("(?i)\\b(?:per|to|by|tested to|when tested to|in accordance with)\\s*[.,;]?\\s*$", "")
            .replaceAll("[\\s,;:–-]+$", "").replaceAll("\\s+", " ").strip();
    }

    /** Whether a value of a property was taken down that will be shown. */
    boolean has(Property property) {
        String path = component.id() + "." + property.name();
        return found.stream().anyMatch(one -> one.value().property().equals(path) && one.confidence() >= SheetReader.LEAST_CONFIDENCE);
    }

    /** How many models values were taken down of. */
    int models() {
        return (int) found.stream().map(Found::model).filter(model -> !model.isEmpty()).distinct().count();
    }

    /** Takes down a word that running text says in other words. */
    void said(Property property, String word, Cell cell, Around around) {
        Label label = new Label(List.of(property), 1, "", Optional.empty(), List.of());
        Value value = property.type().kind() == Kind.GRADE ? new Grade(word, property.type().words()) : new Word(word);
        labelled(cell);
        add(property, label, property.label(), cell, new Read(value, Optional.empty(), 1, ""), around);
    }

    /** Takes down a value; false when there is none or it can't be understood. */
    boolean quietly(Label label, String written, Cell cell, Around around) {
        String text = bare(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(text)) {
            return false;
        }
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? around.unit : label.unit());
            if (read.isPresent()) {
                add(property, label, written, cell, read.get(), around);
                return true;
            }
        }
        return !repeated(label, written, text).equals(text) && repeating(label, written, cell, around, repeated(label, written, text));
    }

    private boolean repeating(Label label, String written, Cell cell, Around around, String text) {
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? around.unit : label.unit());
            if (property.type().unit().isPresent() && read.isPresent()) {
                add(property, label, written, cell, read.get().with(REPEATED, ""), around);
                return true;
            }
        }
        return false;
    }

    /** A text without the words at its end that say once more what the label says: "hem: 1/2 in hemmed edge". */
    private static String repeated(Label label, String written, String text) {
        Set<String> said = new HashSet<>(List.of("edge", "thick", "total"));
        said.addAll(List.of(Labels.plain(written).split(" ")));
        label.properties().forEach(property -> said.addAll(List.of(Labels.plain(property.label()).split(" "))));
        String rest = text;
        while (rest.matches("(?s).*\\d.*\\s\\p{L}{3,}\\.?") && said.contains(Labels.plain(rest.substring(rest.lastIndexOf(' '))))) {
            rest = rest.substring(0, rest.lastIndexOf(' ')).strip();
        }
        return rest;
    }

    /** Takes down a value, or that it can't be understood. */
    boolean value(Label label, String written, Cell cell, Around around) {
        String text = bare(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(text)) {
            return false;
        }
        if (quietly(label, written, cell, around)) {
            return true;
        }
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), written.strip() + ": " + cell.text(),
            "it is no value of this property that can be understood"));
        return false;
    }

    private void add(Property property, Label label, String written, Cell cell, Read read, Around around) {
        Optional<Citation> method = method(property, around.methods);
        boolean amount = property.type().kind() == Kind.QUANTITY;
        Optional<Compare> compare = read.compare().or(() -> amount ? label.sense().or(around::sense) : Optional.empty());
        if (amount && property.type().unit().orElseThrow().dimension() == Dimension.TIME && property.compare() == Compare.AT_LEAST) {
            // what may stand so long at most stands so long
            compare = compare.filter(one -> one != Compare.AT_MOST);
        }
        SheetValue value = new SheetValue(component.id() + "." + property.name(), read.value(), compare,
            method.map(Citation::name).orElse(""), method.map(Citation::edition).orElse(""), cell.text().replaceAll("\\s+", " ").strip(),
            layout.page(), Optional.of(layout.shown(cell)), false);
        boolean another = sections.elsewhere(layout, cell, component.id());
        double confidence = Math.round(100 * around.share * label.quality() * read.quality() * (cell.hidden() ? HIDDEN : 1)
            * (elsewhere || another ? ELSEWHERE : 1)) / 100.0;
        Found one = new Found(value, written.replaceAll("\\s+", " ").strip(), around.model.replaceAll("\\s+", " ").strip(), confidence,
            another ? "It stands under the heading of another product." : cell.hidden() ? "Read by text recognition from a picture."
                : read.doubt());
        found.add(one);
        if (!title.isEmpty()) {
            titles.put(one, title);
        }
    }

    /** Of several standards the one that the pack asks for, else the first. */
    private static Optional<Citation> method(Property property, List<Citation> methods) {
        String asked = property.method().standard();
        return methods.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).findFirst()
            .or(() -> methods.stream().findFirst());
    }

    void unread(Cell cell, Cell label, String why) {
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), label.text().replaceAll("\\s+", " ") + ": " + cell.text(),
            why));
    }
}

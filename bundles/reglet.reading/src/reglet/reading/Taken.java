package reglet.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Grade;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
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
    private static final Pattern UNTESTED = Pattern.compile("(?i)\\s*(?:not|never|not yet) (?:been )?(?:tested|run|evaluated)\\b.*");
    private static final double HIDDEN = 0.6;
    private static final double ELSEWHERE = 0.45;
    private static final double REPEATED = 0.9;
    /** Of an amount that no such product is known to have. */
    private static final double OUTSIDE = 0.5;
    /** What running text says is less sure: there an amount that can't be is none. */
    private static final double RUNNING = 0.9;
    private static final double WITHIN = 0.82;
    private static final double BY_NOTE = 0.97;
    private static final double ANOTHER = 0.88;
    /** Answers whatever is asked. */
    private static final Pattern ANSWER = Pattern.compile("(?i)(?:yes|no|none|pass(?:ed|es)?|fail(?:ed|s)?|n|y|included|required"
        + "|provided|not .*)\\b.*");

    private final Component component;
    private final Citations citations;
    private final Reading reading;
    private final Sections sections;
    private final Bounds bounds;
    private final Footnotes footnotes;
    private final List<Found> found = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    /** The title above the table that a value stands in. */
    private final Map<Found, String> titles = new IdentityHashMap<>();
    private Layout layout;
    private String title = "";
    private final Topics topics = new Topics();
    private boolean elsewhere;
    private Cell labelled;

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

    Taken(Component component, Citations citations, Reading reading, Sections sections, Bounds bounds, Footnotes footnotes) {
        this.bounds = bounds;
        this.footnotes = footnotes;
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
        labelled = null;
    }

    /** The label of the values that are taken down next. */
    void labelled(Cell label) {
        labelled = label;
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
            ? one.of(titles.get(one)) : one).toList();
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

    /** Whether a value of a property was taken down of one of several models. */
    boolean hasOfModels(Property property) {
        return found.stream().anyMatch(one -> one.value().property().equals(path(property)) && !one.model().isEmpty());
    }

    /** Whether a value of a property was taken down that will be shown. */
    boolean has(Property property) {
        String path = path(property);
        return found.stream().anyMatch(one -> one.value().property().equals(path) && one.confidence() >= SheetReader.LEAST_CONFIDENCE);
    }

    /** Whether a value of the property with that name was taken down that will be shown. */
    boolean has(String name) {
        return component.property(name).filter(this::has).isPresent();
    }

    /** The models that values were taken down of. */
    Set<String> models() {
        return found.stream().map(Found::model).filter(model -> !model.isEmpty()).collect(Collectors.toSet());
    }

    /** The models of which a word was taken down that some words in one spelling, between blanks, hold. */
    Set<String> modelsOf(String plain) {
        return found.stream().filter(one -> !one.model().isEmpty() && one.value().value() instanceof Word && plain.contains(" " + Labels
            .plain(one.value().value().text()) + " ")).map(Found::model).collect(Collectors.toCollection(LinkedHashSet::new));
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
        if (several(label, written, cell, around)) {
            return true;
        }
        Property first = null;
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? around.unit : label.unit());
            if (read.isPresent() && bounds.holds(path(property), read.get().value())) {
                add(property, label, written, cell, read.get(), around);
                if (property.type().kind() == Kind.FLAG) {
                    // "furring: V-grooves 3/8 in. deep" is an answer to "self-furring?" and an amount
                    within(label, written, cell, text, around);
                }
                return true;
            }
            first = first == null && read.isPresent() ? property : first;
        }
        if (first != null) {
            Read read = reading.read(first, text, label.unit().isEmpty() ? around.unit : label.unit()).orElseThrow();
            if (around.share >= RUNNING) {
                add(first, label, written, cell, read.with(OUTSIDE, "No such product is known to have so much, or so little."), around);
            }
            return around.share >= RUNNING;
        }
        return !repeated(label, written, text).equals(text) && repeating(label, written, cell, around, repeated(label, written, text));
    }

    /** "Staining | Not tested" answers whether it was tested; false where nobody asks that. */
    boolean untested(Label label, String written, Cell cell, List<Citation> methods) {
        Property property = label.properties().get(0);
        boolean asked = property.type().kind() == Kind.FLAG && (property.name().endsWith("tested") || property.label().endsWith("tested"));
        if (!asked || !UNTESTED.matcher(cell.text()).matches()) {
            return false;
        }
        add(property, label, written, cell, new Read(new Word("no"), Optional.empty(), WITHIN, ""), Around.of(methods, RUNNING));
        return true;
    }

    /** Takes down each of several amounts in one cell, by the method that is named at its place or behind it. */
    private boolean several(Label label, String written, Cell cell, Around around) {
        Property property = label.properties().get(0);
        List<Cell> parts = property.type().kind() == Kind.QUANTITY ? Paired.amounts(cell) : List.of();
        List<Read> reads = parts.stream().map(part -> reading.read(property, bare(part, citations.in(part.text())), ""))
            .flatMap(Optional::stream).filter(read -> read.value() instanceof Quantity && bounds.holds(path(property),
                read.value())).toList();
        if (parts.isEmpty() || reads.size() < parts.size()) {
            return false;
        }
        List<Citation> paired = Paired.methods(around.methods, parts.size());
        for (int i = 0; i < parts.size(); i++) {
            List<Citation> own = citations.in(parts.get(i).text());
            List<Citation> methods = !own.isEmpty() ? own : paired.isEmpty() ? citations.narrowed(around.methods, parts.get(i).text())
                : List.of(paired.get(i));
            add(property, label, written, parts.get(i), reads.get(i).with(REPEATED, ""), new Around(around.unit, methods, around.model,
                around.sense, around.share));
        }
        return true;
    }

    private boolean repeating(Label label, String written, Cell cell, Around around, String text) {
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? around.unit : label.unit());
            if (property.type().unit().isPresent() && read.isPresent() && bounds.holds(path(property), read.get().value())) {
                add(property, label, written, cell, read.get().with(REPEATED, ""), around);
                return true;
            }
        }
        return false;
    }

    /** A text without words at its ends that say once more what the label says: "hem: 1/2 in hemmed edge", "fire: flame spread 25". */
    private static String repeated(Label label, String written, String text) {
        Set<String> said = new HashSet<>(List.of("edge", "thick", "total"));
        said.addAll(List.of(Labels.plain(written).split(" ")));
        label.properties().forEach(property -> said.addAll(List.of(Labels.plain(property.label()).split(" "))));
        String rest = text;
        while (rest.matches("(?s).*\\d.*\\s\\p{L}{3,}\\.?") && said.contains(Labels.plain(rest.substring(rest.lastIndexOf(' '))))) {
            rest = rest.substring(0, rest.lastIndexOf(' ')).strip();
        }
        while (rest.matches("(?s)\\p{L}{3,}[:,]?\\s.*\\d.*") && said.contains(Labels.plain(rest.substring(0, rest.indexOf(' '))))) {
            rest = rest.substring(rest.indexOf(' ')).strip();
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
            for (int comma = text.equals(cell.text()) ? text.indexOf(", ") : -1; comma > 0; comma = text.indexOf(", ", comma + 1)) {
                // "Diamond mesh, self-furring"
                int end = text.indexOf(", ", comma + 1) < 0 ? text.length() : text.indexOf(", ", comma + 1);
                another(label, written, cell.part(comma + 2, end), text.substring(comma + 2, end), around);
            }
            return true;
        }
        if (within(label, written, cell, text, around) || another(label, written, cell, text, around)) {
            return true;
        }
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), written.strip() + ": " + cell.text(),
            "it is no value of this property that can be understood"));
        return false;
    }

    /** Takes down the only amount among other words that may be one. */
    private boolean within(Label label, String written, Cell cell, String text, Around around) {
        for (Property property : around.model.isEmpty() ? label.properties() : List.<Property>of()) {
            if (property.type().unit().filter(unit -> !unit.symbol().isEmpty()).isEmpty()) {
                continue;
            }
            List<String> amounts = Amounts.in(text, property, reading).stream().filter(words -> reading.read(property, words, "")
                .filter(read -> bounds.holds(path(property), read.value())).isPresent()).toList();
            int from = amounts.size() == 1 ? cell.text().indexOf(amounts.get(0)) : -1;
            // "2.5 or 3.4 lb"
            boolean either = from > 0 && cell.text().substring(0, from).matches("(?s).*\\d\\S*\\s*(?:or|and|&|/|,|to|[-–—])\\s*");
            if (from >= 0 && !either) {
                Cell part = cell.part(from, from + amounts.get(0).length());
                add(property, label, written, part, reading.read(property, amounts.get(0), "").orElseThrow().with(WITHIN,
                    "Other words stand with it: " + cell.text() + "."), around);
                return true;
            }
        }
        return false;
    }

    /** "Type: flat" tells of another property than which type it is: the only one that has such a word. */
    private boolean another(Label label, String written, Cell cell, String text, Around around) {
        if (label.properties().stream().anyMatch(property -> property.type().kind() != Kind.WORD) || ANSWER.matcher(text).matches()) {
            return false;
        }
        List<Property> others = component.properties().stream().filter(property -> !label.properties().contains(property)
            && (property.type().kind() == Kind.WORD || property.type().kind() == Kind.FLAG) && !property.type().words().equals(List.of())
            == (property.type().kind() == Kind.WORD) && reading.read(property, text, "").isPresent()).toList();
        if (others.size() == 1) {
            add(others.get(0), label, written, cell, reading.read(others.get(0), text, "").orElseThrow().with(ANOTHER, ""), around);
        }
        return others.size() == 1;
    }

    /** Whether a cell stands under the heading of another product. */
    boolean isOfAnother(Layout where, Cell cell) {
        return sections.elsewhere(where, cell, component.id());
    }

    private String path(Property property) {
        return component.id() + "." + property.name();
    }

    private void add(Property property, Label label, String written, Cell cell, Read read, Around around) {
        List<Citation> noted = around.methods.isEmpty() ? footnotes.of(layout.page(), cell, labelled) : List.of();
        Optional<Citation> method = method(property, noted.isEmpty() ? around.methods : noted);
        boolean amount = property.type().kind() == Kind.QUANTITY;
        Optional<Compare> compare = read.compare().or(() -> amount ? label.sense().or(around::sense) : Optional.empty());
        if (amount && property.type().unit().orElseThrow().dimension() == Dimension.TIME && property.compare() == Compare.AT_LEAST) {
            // what may stand so long at most stands so long
            compare = compare.filter(one -> one != Compare.AT_MOST);
        }
        if (amount && property.type().unit().orElseThrow().dimension() == Dimension.TEMPERATURE) {
            // "above 90 °F fog the coat" says where a limit lies, and not that it may lie higher
            compare = compare.filter(one -> !property.label().contains(" above ") || one != Compare.AT_LEAST);
        }
        SheetValue value = new SheetValue(path(property), read.value(), compare,
            method.map(Citation::name).orElse(""), method.map(Citation::edition).orElse(""), cell.text().replaceAll("\\s+", " ").strip(),
            layout.page(), Optional.of(layout.shown(cell)), false);
        boolean another = sections.elsewhere(layout, cell, component.id());
        double confidence = Math.round(100 * around.share * label.quality() * read.quality() * (cell.hidden() ? HIDDEN : 1)
            * (elsewhere || another ? ELSEWHERE : 1) * (noted.isEmpty() ? 1 : BY_NOTE)) / 100.0;
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
        return methods.stream().filter(citation -> !asked.isEmpty() && citation.name().equals(asked + " " + property.method().part()))
            .findFirst().or(() -> methods.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).findFirst())
            .or(() -> methods.stream().findFirst());
    }

    void unread(Cell cell, Cell label, String why) {
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), label.text().replaceAll("\\s+", " ") + ": " + cell.text(),
            why));
    }
}

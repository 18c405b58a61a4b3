package reglet.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
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
    private static final Pattern SALT = Pattern.compile("(?i)\\bsalt[ -](?:spray|fog)");
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
    private static final Pattern SENSE_BEFORE = Pattern.compile("(?i)(?:[≥≤<>]=?|\\b(?:min(?:imum)?|max(?:imum)?)\\b\\.?(?: of)?|\\b(?:at (?:least|most)"
        + "|(?:not|no) (?:less|more) than|up to|within))\\s*$");
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
    private final Set<String> headed = new LinkedHashSet<>();
    private final TableTitles titles = new TableTitles();
    private Layout layout;
    private final Topics topics = new Topics();
    private boolean elsewhere;
    /** Whether the title of the table at hand says that it is about what else the maker has. */
    private boolean others;
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
        titles.title("");
        topics.page();
        elsewhere = false;
    }

    Layout layout() {
        return layout;
    }

    /** The title of the table that is read; "" outside tables. */
    void title(String next) {
        titles.title(next);
        others = Topics.isOfOthers(next);
    }

    /** The row that is read next: it may head others. */
    void row(Line row) {
        topics.row(row);
        elsewhere = false;
        labelled = null;
    }

    /** What is taken down next says something of the product wherever it stands. */
    void anywhere() {
        elsewhere = false;
    }

    /** The label of the values that are taken down next. */
    void labelled(Cell label) {
        labelled = label;
        elsewhere = topics.elsewhere(label, false) || others;
    }

    /** The sentence whose values are taken down next. */
    void running(Cell sentence) {
        labelled = sentence;
        elsewhere = topics.elsewhere(sentence, true);
    }

    /** What was found. Where several tables state the same property, each under a title of its own, the titles name the models. */
    List<Found> found() {
        return titles.named(found);
    }

    List<Unread> unread() {
        return unread;
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

    /**
     * What a column or row is about that no name says: the only property that isn't taken down yet of which each of the cells says a word,
     * not all of them the same.
     */
    Optional<Property> told(List<Cell> cells) {
        List<Property> told = component.properties().stream().filter(property -> property.type().kind() == Kind.WORD && !property.type()
            .words().isEmpty() && !has(property) && !hasOfModels(property)).filter(property -> {
                List<String> words = cells.stream().map(cell -> reading.read(property, cell.text(), "")).flatMap(Optional::stream)
                    .map(read -> read.value().text()).toList();
                return words.size() == cells.size() && words.stream().distinct().count() > 1;
            }).toList();
        return told.size() == 1 ? Optional.of(told.get(0)) : Optional.empty();
    }

    /** Whether two texts are different amounts of a property. */
    boolean differ(Property property, String one, String other) {
        Optional<Value> first = reading.read(property, one, "").map(Read::value);
        Optional<Value> second = reading.read(property, other, "").map(Read::value);
        return first.isPresent() && second.isPresent() && first.get() instanceof Quantity a && second.get() instanceof Quantity b
            && Math.abs(a.si() - b.si()) > 0.06 * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }

    /** Notes the models that head the columns of a table, of which it may say nothing that can be read. */
    void headed(List<String> models) {
        headed.addAll(models);
    }

    Set<String> headed() {
        return headed;
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
        String text = Bare.of(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(text)) {
            return false;
        }
        if (several(label, written, cell, around)) {
            return true;
        }
        Property first = null;
        for (Property property : label.properties()) {
            if (isOfOther(property, cell.text(), text)) {
                continue;
            }
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
        return !Bare.unrepeated(label, written, text).equals(text) && repeating(label, written, cell, around, Bare.unrepeated(label,
            written, text));
    }

    /** "D226 Type I" is no type by the standard that a property is classified by. */
    private boolean isOfOther(Property property, String written, String bare) {
        String asked = property.method().standard();
        List<Citation> cited = asked.isEmpty() || !bare.matches("(?i)type \\w{1,3}") ? List.of() : citations.in(written);
        return !cited.isEmpty() && cited.stream().noneMatch(one -> one.name().startsWith(asked)) && cited.stream().allMatch(one -> one
            .name().startsWith("ASTM"));
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
        List<Read> reads = parts.stream().map(part -> reading.read(property, Bare.of(part, citations.in(part.text())), ""))
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

    /** Takes down a value, or that it can't be understood. */
    boolean value(Label label, String written, Cell cell, Around around) {
        String text = Bare.of(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(text)) {
            return false;
        }
        if (quietly(label, written, cell, around)) {
            others(label, written, cell, text, around);
            return true;
        }
        if (within(label, written, cell, text, around)) {
            return true;
        }
        if (another(label, written, cell, text, around)) {
            others(label, written, cell, text, around);
            return true;
        }
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), written.strip() + ": " + cell.text(),
            "it is no value of this property that can be understood"));
        return false;
    }

    /**
     * "Diamond mesh, self-furring", "Self-furring, paper backed (Grade D, 60 min.)": what stands behind commas may tell other properties.
     */
    private void others(Label label, String written, Cell cell, String text, Around around) {
        for (int[] part : text.equals(cell.text()) ? Bare.behindCommas(text) : List.<int[]>of()) {
            another(label, written, cell.part(part[0], part[1]), text.substring(part[0], part[1]), around);
        }
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
            boolean either = from > 0 && cell.text().substring(0, from).matches("(?s).*\\d\\S*\\s*(?:or|and|&|/|,|to|x|×|by|[-–—])\\s*");
            if (from >= 0 && !either) {
                // "min. 2 in. on all edges"
                Matcher sense = SENSE_BEFORE.matcher(cell.text().substring(0, from));
                int start = sense.find() && reading.read(property, cell.text().substring(sense.start(), from + amounts.get(0).length()), "")
                    .isPresent() ? sense.start() : from;
                Cell part = cell.part(start, from + amounts.get(0).length());
                add(property, label, written, part, reading.read(property, part.text(), "").orElseThrow().with(WITHIN,
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
        // how long a coat stands salt spray isn't what shows which it is
        boolean endures = property.type().kind() == Kind.WORD && property.method().isNone() && SALT.matcher(cell.text()).find();
        Optional<Citation> method = endures ? Optional.empty() : method(property, noted.isEmpty() ? around.methods : noted);
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
        if (amount && read.value() instanceof Quantity share && share.dimension() == Dimension.RATIO && share.si() >= 1) {
            // "over 100 % of its back" tells where
            compare = compare.filter(one -> one != Compare.AT_LEAST);
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
        titles.note(one);
    }

    /** Gives the amounts of a property on a page that are told without a sense the one that a note says they have. */
    void meant(Property property, int page, Compare sense) {
        for (int i = 0; i < found.size(); i++) {
            Found one = found.get(i);
            SheetValue value = one.value();
            if (value.property().equals(path(property)) && value.page() == page && value.compare().isEmpty() && value
                .value() instanceof Quantity) {
                Found limit = new Found(new SheetValue(value.property(), value.value(), Optional.of(sense), value.method(), value.edition(),
                    value.text(), page, value.box(), value.confirmed()), one.label(), one.model(), one.confidence(), one.doubt(),
                        one.also());
                found.set(i, limit);
                titles.replace(one, limit);
            }
        }
    }

    /** Gives the amounts of a property on a page, where none stands with a standard of its own, the one that a note names for them. */
    void by(Property property, int page, Citation citation) {
        boolean own = found.stream().anyMatch(one -> one.value().property().equals(path(property)) && !one.value().method().isEmpty());
        for (int i = 0; i < found.size() && !own; i++) {
            Found one = found.get(i);
            if (one.value().property().equals(path(property)) && one.value().page() == page) {
                SheetValue value = one.value();
                Found shown = new Found(new SheetValue(value.property(), value.value(), value.compare(), citation.name(),
                    citation.edition(),
                    value.text(), page, value.box(), value.confirmed()), one.label(), one.model(), one.confidence(), one.doubt(),
                        one.also());
                found.set(i, shown);
                titles.replace(one, shown);
            }
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

package reglet.reading.value;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Grade;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.model.Word;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.value.Pieces.Piece;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.PerArea;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;

/** Takes down the values of one component as they are come across, and what could not be understood. */
public final class Taken {
    /** A value less sure than this is not shown as one. */
    public static final double LEAST_CONFIDENCE = 0.5;
    private static final Pattern TYPE = Pattern.compile("(?i)type \\w{1,3}");
    private static final Pattern UNTESTED = Pattern.compile("(?i)\\s*(?:not|never|not yet) (?:been )?(?:tested|run|evaluated)\\b.*");
    /** Words of a sentence at least. */
    private static final int SENTENCE = 8;
    /** Before an item of a list, which is no part of its label. */
    private static final Pattern DOT = Pattern.compile("^\\s*[•▪■●◦‣]\\s*");
    private static final Pattern SALT = Pattern.compile("(?i)\\bsalt[ -](?:spray|fog)");
    private static final double HIDDEN = 0.6;
    private static final double ELSEWHERE = 0.45;
    /** Of an amount that no such product is known to have. */
    private static final double OUTSIDE = 0.5;
    /** What running text says is less sure: there an amount that can't be is none. */
    private static final double RUNNING = 0.9;
    private static final double BY_NOTE = 0.97;
    private static final double BY_OTHERS = 0.9;

    private final Component component;
    private final Citations citations;
    private final Reading reading;
    private final Sections sections;
    private final Bounds bounds;
    private final Pieces pieces;
    private final Footnotes footnotes;
    private final Models models;
    private final Findings findings;
    private final List<Unread> unread = new ArrayList<>();
    private final List<Unnamed> unnamed = new ArrayList<>();
    private final Set<String> headed = new LinkedHashSet<>();
    private Layout layout;
    private final Topics topics = new Topics();
    private boolean elsewhere;
    /** Whether the title of the table at hand says that it is about what else the maker has. */
    private boolean others;
    private Cell labelled;

    public Taken(Component component, Citations citations, Reading reading, Sections sections, Bounds bounds, Footnotes footnotes,
            Models models) {
        this.models = models;
        this.findings = new Findings(models);
        this.bounds = bounds;
        this.pieces = new Pieces(component, reading, bounds);
        this.footnotes = footnotes;
        this.component = component;
        this.citations = citations;
        this.reading = reading;
        this.sections = sections;
    }

    public void page(Layout next) {
        layout = next;
        ended();
        topics.page();
        elsewhere = false;
    }

    /** The tables and lists of a page have been read. */
    public void ended() {
        findings.ended();
    }

    public Layout layout() {
        return layout;
    }

    /** The title of the table that is read; "" outside tables. */
    public void title(String next) {
        findings.title(next);
        others = Topics.isOfOthers(next);
    }

    /** The row that is read next: it may head others. */
    public void row(Line row) {
        topics.row(row);
        findings.row(row);
        anywhere();
        labelled = null;
    }

    /** What is taken down next says something of the product wherever it stands. */
    public void anywhere() {
        elsewhere = false;
        findings.words("");
    }

    /** The label of the values that are taken down next. */
    public void labelled(Cell label) {
        labelled = label;
        findings.words(label.text());
        elsewhere = topics.elsewhere(label, false) || others;
    }

    /** The size of a model that is taken down next may well stand under "Packaging". */
    public void sized() {
        elsewhere = others;
    }

    /** The sentence whose values are taken down next. */
    public void running(Cell sentence) {
        labelled = sentence;
        findings.words(sentence.text());
        elsewhere = topics.elsewhere(sentence, true);
    }

    /** What was found. Where several tables state the same property, each under a title of its own, the titles name the models. */
    public List<Found> found() {
        return findings.all();
    }

    public List<Unread> unread() {
        return unread;
    }

    /** Whether a value of a property was taken down of one of several models. */
    public boolean hasOfModels(Property property) {
        return findings.hasOfModels(path(property));
    }

    /** Whether a value of a property was taken down of a model. */
    public boolean hasOf(String model, Property property) {
        return findings.hasOf(model, path(property));
    }

    /** Whether a value of a property was taken down that will be shown. */
    public boolean has(Property property) {
        return findings.has(path(property));
    }

    /** Whether a value of the property with that name was taken down that will be shown. */
    public boolean has(String name) {
        return component.property(name).filter(this::has).isPresent();
    }

    /**
     * What a column or row is about that no name says: the only property that isn't taken down yet of which each of the cells says a word,
     * not all of them the same.
     */
    public Optional<Property> told(List<Cell> cells) {
        List<Property> told = component.properties().stream().filter(property -> property.type().kind() == Kind.WORD && !property.type()
            .words().isEmpty() && !has(property) && !hasOfModels(property)).filter(property -> {
                List<String> words = cells.stream().map(cell -> reading.read(property, cell.text(), "")).flatMap(Optional::stream)
                    .map(read -> read.value().text()).toList();
                return words.size() == cells.size() && words.stream().distinct().count() > 1;
            }).toList();
        return told.size() == 1 ? Optional.of(told.get(0)) : Optional.empty();
    }

    /** Whether some words are a value of a property. */
    public boolean isValue(Property property, String words) {
        return reading.read(property, words, "").isPresent();
    }

    /** Notes the models that head the columns of a table, of which it may say nothing that can be read. */
    public void headed(List<String> names) {
        names.forEach(name -> headed.add(models.own(name)));
    }

    public Set<String> headed() {
        return headed;
    }

    /** The models that values were taken down of, and those by which parts of the sheet are headed; else those that head columns. */
    public Set<String> models() {
        Set<String> all = new LinkedHashSet<>(findings.models());
        all.addAll(models.parts());
        List<String> named = headed.stream().filter(models::isName).toList();
        if (all.isEmpty() && named.size() > 1) {
            // a table may say nothing that is asked for, and sentences beside it all
            all.addAll(named);
        }
        return all;
    }

    /** The models of which a word was taken down that some words in one spelling, between blanks, hold. */
    public Set<String> modelsOf(String plain) {
        return findings.modelsOf(plain);
    }

    /** Takes down a word that running text says in other words. */
    public void said(Property property, String word, Cell cell, Around around) {
        Value value = property.type().kind() == Kind.GRADE ? new Grade(word, property.type().words()) : new Word(word);
        labelled(cell);
        add(property, Label.of(property), property.label(), cell, new Read(value, Optional.empty(), 1, ""), around);
    }

    /** Takes down a value; false when there is none or it can't be understood. */
    public boolean quietly(Label label, String written, Cell cell, Around around) {
        String text = PerArea.of(written, Bare.of(cell, citations.in(cell.text())));
        if (text.isEmpty() || Reading.isMissing(label, text)) {
            return false;
        }
        if (several(label, written, cell, around)) {
            return true;
        }
        String unit = PerArea.of(written, label.unit().isEmpty() ? around.unit() : label.unit());
        Property first = null;
        for (Property property : label.properties()) {
            if (TYPE.matcher(text).matches() && Citations.areOfOthers(property, citations.in(cell.text()))) {
                continue;
            }
            Optional<Read> read = reading.read(property, text, unit);
            if (read.isPresent() && bounds.holds(path(property), read.get().value())) {
                add(property, label, written, cell, read.get(), around);
                part(pieces.beside(label, property, cell, text, around), label, written, around);
                return true;
            }
            first = first == null && read.isPresent() ? property : first;
        }
        if (first != null) {
            Read read = reading.read(first, text, unit).orElseThrow();
            if (around.share() >= RUNNING) {
                add(first, label, written, cell, read.with(OUTSIDE, "No such product is known to have so much, or so little."), around);
            }
            return around.share() >= RUNNING;
        }
        String unrepeated = Bare.unrepeated(label, written, text);
        return !unrepeated.equals(text) && part(pieces.unrepeated(label, cell, unrepeated, around), label, written, around);
    }

    /** "Staining | Not tested" answers whether it was tested; false where nobody asks that. */
    public boolean untested(Label label, String written, Cell cell, List<Citation> methods) {
        Property property = label.properties().get(0);
        if (property.type().kind() != Kind.FLAG || !(property.name() + property.label()).contains("tested") || !UNTESTED.matcher(cell
            .text()).matches()) {
            return false;
        }
        add(property, label, written, cell, new Read(new Word("no"), Optional.empty(), Pieces.WITHIN, ""), Around.of(methods, RUNNING));
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
        List<Citation> paired = Paired.methods(around.methods(), parts.size());
        for (int i = 0; i < parts.size(); i++) {
            List<Citation> own = citations.in(parts.get(i).text());
            List<Citation> methods = !own.isEmpty() ? own : paired.isEmpty() ? citations.narrowed(around.methods(), parts.get(i).text())
                : List.of(paired.get(i));
            add(property, label, written, parts.get(i), reads.get(i).with(Pieces.REPEATED, ""), new Around(around.unit(), methods,
                around.model(), around.sense(), around.share()));
        }
        return true;
    }

    /** Takes down a value, or that it can't be understood. */
    public boolean value(Label label, String written, Cell cell, Around around) {
        String text = Bare.of(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(label, text)) {
            return false;
        }
        if (quietly(label, written, cell, around)) {
            others(label, written, cell, text, around);
            return true;
        }
        if (around.model().isEmpty() && within(label, written, cell, around)) {
            return true;
        } else if (part(pieces.turned(label, cell, text), label, written, around)) {
            return true;
        } else if (part(pieces.another(label, cell, text), label, written, around)) {
            others(label, written, cell, text, around);
            return true;
        }
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), written.strip() + ": " + cell.text(),
            "it is no value of this property that can be understood"));
        return false;
    }

    /** "Diamond mesh, self-furring", "Self-furring, paper backed (Grade D, 60 min.)": behind commas other properties may be told. */
    private void others(Label label, String written, Cell cell, String text, Around around) {
        for (int[] part : text.equals(cell.text()) ? Bare.behindCommas(text) : List.<int[]>of()) {
            part(pieces.another(label, cell.part(part[0], part[1]), text.substring(part[0], part[1])), label, written, around);
        }
    }

    /** Takes down what a part of a cell says, if it says anything. */
    private boolean part(Optional<Piece> piece, Label label, String written, Around around) {
        piece.ifPresent(one -> add(one.property(), label, written, one.cell(), one.read(), around));
        return piece.isPresent();
    }

    /** Takes down the only amount among other words that may be one. */
    public boolean within(Label label, String written, Cell cell, Around around) {
        return part(pieces.amount(label, cell, Bare.of(cell, citations.in(cell.text()))), label, written, around);
    }

    /** Whether a cell stands under the heading of another product. */
    public boolean isOfAnother(Layout where, Cell cell) {
        return sections.elsewhere(where, cell, component.id());
    }

    private String path(Property property) {
        return component.id() + "." + property.name();
    }

    private void add(Property property, Label label, String written, Cell cell, Read read, Around around) {
        List<Citation> noted = around.methods().isEmpty() ? footnotes.of(layout.page(), cell, labelled) : List.of();
        // how long a coat stands salt spray isn't what shows which it is
        boolean unasked = property.type().kind() == Kind.WORD && property.method().isNone();
        // and in a whole sentence a standard may be any part's
        boolean lasts = unasked && (SALT.matcher(cell.text()).find() || cell.text().split("\\s+").length > SENTENCE);
        Optional<Citation> method = lasts ? Optional.empty() : pieces.by(property, read, cell, noted.isEmpty() ? around.methods() : noted);
        Optional<Compare> sense = StatedSense.of(property, label, read, around.sense().isPresent() ? around : new Around(around.unit(),
            around.methods(), around.model(), footnotes.sense(layout.page(), cell, labelled), around.share()));
        SheetValue value = new SheetValue(path(property), read.value(), sense,
            method.map(Citation::name).orElse(""), method.map(Citation::edition).orElse(""), cell.text().replaceAll("\\s+", " ").strip(),
            layout.page(), Optional.of(layout.shown(cell)), false);
        boolean another = sections.elsewhere(layout, cell, component.id());
        double confidence = Math.round(100 * around.share() * label.quality() * read.quality() * (cell.hidden() ? HIDDEN : 1)
            * (elsewhere || another ? ELSEWHERE : 1) * (noted.isEmpty() ? 1 : BY_NOTE)
            * (Citations.isOfOthers(property, method) ? BY_OTHERS : 1)) / 100.0;
        findings.add(new Found(value, DOT.matcher(written.replaceAll("\\s+", " ")).replaceFirst("").strip(), around.model(), confidence,
            another ? "It stands under the heading of another product." : cell.hidden() ? "Read by text recognition from a picture."
                : read.doubt()));
    }

    /** Gives the amounts of a property on a page that are told without a sense the one that a note says they have. */
    public void meant(Property property, int page, Compare sense) {
        findings.meant(path(property), page, sense);
    }

    /** Gives the amounts of a property on a page, where none stands with a standard of its own, the one that a note names for them. */
    public void by(Property property, int page, Citation citation) {
        findings.by(path(property), page, citation);
    }

    /** Keeps a label that no name is in: when all is read, its words may tell what it is of. */
    public void unnamed(Unnamed one) {
        if (!elsewhere && !sections.elsewhere(layout, one.label(), component.id())) {
            unnamed.add(one);
        }
    }

    public List<Unnamed> unnamed() {
        return unnamed;
    }

    public void unread(Cell cell, Cell label, String why) {
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), label.text().replaceAll("\\s+", " ") + ": " + cell.text(),
            why));
    }
}

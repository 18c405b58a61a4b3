package reglet.reading.sheet;

import java.util.List;
import java.util.Set;

import reglet.model.Component;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Rows;
import reglet.reading.table.Cards;
import reglet.reading.table.ListReader;
import reglet.reading.table.Rolls;
import reglet.reading.table.Stacks;
import reglet.reading.table.TableReader;
import reglet.reading.table.Titled;
import reglet.reading.text.Cues;
import reglet.reading.text.Designations;
import reglet.reading.text.Kinds;
import reglet.reading.text.Limits;
import reglet.reading.text.Mentions;
import reglet.reading.text.Prose;
import reglet.reading.text.Sayings;
import reglet.reading.text.Sentences;
import reglet.reading.text.Standing;
import reglet.reading.text.Worded;
import reglet.reading.value.Bounds;
import reglet.reading.value.Footnotes;
import reglet.reading.value.Models;
import reglet.reading.value.Sections;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Labels;
import reglet.reading.words.Naming;
import reglet.reading.words.Reading;
import reglet.reading.words.Vocabulary;

/** Finds the values of one component's properties on the pages of a sheet: in tables, lists, designations and sentences. */
final class ValueReader {
    private final Taken taken;
    private final Titled titled;
    private final TableReader tables;
    private final ListReader lists;
    private final Designations designations;
    private final Sentences sentences;
    private final Mentions mentions;
    private final Stacks stacks;
    private final Cards cards;
    private final Rolls rolls;
    private final Kinds kinds;
    private final Sayings sayings;
    private final Reported reported;
    private final Worded worded;
    private final Prose prose;
    private boolean report;
    private final Standing standing;

    ValueReader(Vocabulary vocabulary, Component component, Citations citations, Sections sections, Bounds bounds,
            Footnotes footnotes, Models models, Naming naming, Cues cues) {
        Labels labels = new Labels(vocabulary, component, citations);
        Reading reading = new Reading(vocabulary, component);
        taken = new Taken(component, citations, reading, sections, bounds, footnotes, models);
        titled = new Titled(vocabulary, component);
        designations = new Designations(component, citations, reading, taken);
        mentions = new Mentions(component, vocabulary, labels, reading, citations, taken, naming);
        tables = new TableReader(labels, citations, taken, titled, designations, footnotes, naming, mentions);
        lists = new ListReader(labels, citations, reading, taken);
        sentences = new Sentences(labels, citations, taken, new Limits(vocabulary, component, reading), mentions);
        stacks = new Stacks(labels, citations, taken);
        cards = new Cards(labels, citations, taken);
        rolls = new Rolls(labels, taken);
        kinds = new Kinds(vocabulary, component, taken);
        sayings = new Sayings(component, vocabulary, citations, taken);
        reported = new Reported(component, taken);
        worded = new Worded(component, cues, bounds, naming, reading, taken);
        prose = new Prose(component, cues, bounds, naming, reading, mentions, taken);
        standing = new Standing(labels, citations, taken);
    }

    List<Found> found() {
        return taken.found();
    }

    /** The models that head columns of tables. */
    Set<String> headed() {
        return taken.headed();
    }

    List<Unread> unread() {
        return taken.unread();
    }

    /** Reads the pages, each of them first by its tables and lists, and all of them for what is said in words alone. */
    ValueReader read(List<Layout> layouts) {
        report = ReportReader.isReport(layouts);
        mentions.report(report);
        sentences.report(report && !ReportReader.isCertificate(layouts));
        sayings.report(report);
        layouts.forEach(this::read);
        titled.take(taken);
        sayings.ofModels(layouts);
        sayings.ofRows(tables.described());
        sayings.read(layouts);
        reported.read(layouts);
        standing.read(layouts);
        return this;
    }

    /** Reads once more, for amounts that only words beside or round them tell of: of the component that the sheet is about. */
    ValueReader further(List<Layout> layouts) {
        worded.read(report);
        prose.read(layouts, report);
        return this;
    }

    private void read(Layout layout) {
        taken.page(layout);
        tables.page(layout);
        lists.page();
        designations.listed(layout);
        layout.sentences().forEach(sentence -> designations.read(sentence.cell()));
        List<Line> rows = Rows.of(layout);
        for (int i = 0; i < rows.size(); i++) {
            taken.row(rows.get(i));
            int heading = tables.heading(rows, i);
            if (heading > 0) {
                i += heading - 1;
                continue;
            }
            if (!tables.read(rows.get(i)) && !stacks.figures(rows.get(i))) {
                lists.read(rows.get(i));
                stacks.read(rows, i);
            }
            designations.read(rows.get(i), layout);
        }
        taken.ended();
        cards.read(layout);
        sentences.items(layout);
        rolls.read(layout);
        sentences.read(layout);
        taken.anywhere();
        kinds.read(layout);
    }
}

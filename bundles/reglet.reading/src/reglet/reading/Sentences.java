package reglet.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Numbers;
import reglet.model.Property;
import reglet.reading.Citations.Citation;
import reglet.reading.Labels.Label;
import reglet.reading.Layout.Line;
import reglet.reading.Limits.Limit;
import reglet.reading.Taken.Around;

/** Reads sentences that say one thing of one property: "its permeance is 15 perms by ASTM E96", "12 mils dry film thickness". */
final class Sentences {
    private static final double SURE = 0.82;
    private static final double ASKED = 0.78;
    private static final int LETTERS = 8;
    private static final int LONGEST = 8;
    private static final Pattern SENTENCE = Pattern.compile("[.;]\\s+|[.;]$");
    private static final Pattern SAYS = Pattern.compile("(?i)\\s(?:is|are|was|were|of|measures?|exceeds?|equals"
        + "|averages)\\s(?=\\D{0,24}\\d)");
    private static final Pattern ARTICLE = Pattern.compile("(?i)^(?:its|the|their|this|all|and|with a|has a|a|an)\\s+");
    private static final Pattern AMOUNT_FIRST = Pattern.compile("(" + Numbers.pattern() + ")\\s*([\\p{L}\"%°][^\\s,]*)\\s+");
    /** What may follow a value without changing it. */
    private static final Pattern SAFE = Pattern.compile("(?i)^\\s*(?:$|[,(]?\\s*(?:by|per|when|as|in accordance|according|to ASTM|ASTM|at|"
        + "after|tested|thick)\\b.*|\\).*)", Pattern.DOTALL);

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;
    private final Limits limits;

    Sentences(Labels labels, Citations citations, Taken taken, Limits limits) {
        this.limits = limits;
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    void read(Layout layout) {
        boolean conditions = false;
        for (Cell paragraph : paragraphs(layout.lines())) {
            // what a report asks of those who use the product isn't what the product is
            conditions = ReportReader.isConditions(paragraph.text()) || conditions && !ReportReader.isHeading(paragraph.text());
            Matcher stop = SENTENCE.matcher(paragraph.text());
            int from = 0;
            while (stop.find()) {
                sentence(paragraph.part(from, stop.start()), conditions);
                from = stop.end();
            }
            if (from < paragraph.text().length()) {
                sentence(paragraph.part(from, paragraph.text().length()), conditions);
            }
        }
    }

    /** Lines of one cell each that follow each other closely, joined. */
    static List<Cell> paragraphs(List<Line> lines) {
        List<Cell> all = new ArrayList<>();
        Line last = null;
        for (Line line : lines) {
            boolean alone = line.cells().size() == 1;
            boolean follows = last != null && alone && line.y() - last.y() < 1.6 * line.size() && Math.abs(line.left() - last.left()) < 3
                && Math.abs(line.size() - last.size()) < 0.5 && !last.text().endsWith(":");
            if (follows) {
                all.set(all.size() - 1, all.get(all.size() - 1).with(line.cells().get(0)));
            } else if (alone) {
                all.add(line.cells().get(0));
            }
            last = alone ? line : null;
        }
        return all;
    }

    private void sentence(Cell sentence, boolean conditions) {
        String text = sentence.text();
        if (text.split("\\s+").length < 3) {
            return;
        }
        if (!conditions) {
            limits(sentence);
        }
        Matcher says = SAYS.matcher(text);
        while (says.find()) {
            Optional<Label> label = subject(text.substring(0, says.start()));
            if (label.isPresent() && value(label.get(), text.substring(0, says.start()), sentence, says.end())) {
                return;
            }
        }
        Matcher first = AMOUNT_FIRST.matcher(text);
        while (first.find()) {
            String behind = text.substring(first.end()).replaceAll("[,(].*$", "").replaceAll("^(?:of|in)\\s+", "").strip();
            Optional<Label> label = labels.read(behind.matches("thick(?: .*)?") ? "thickness" : behind).map(ListReader::amounts);
            if (label.isPresent() && !label.get().properties().isEmpty()) {
                taken.quietly(label.get(), behind, sentence.part(first.start(), first.end()), Around.of(cited(sentence, label.get()), SURE));
            }
        }
    }

    /** "Overlap horizontal seams at least 6 in.": what a sentence asks by a name long enough to be no chance. */
    private void limits(Cell sentence) {
        String text = sentence.text();
        for (Limit limit : limits.in(text, taken.layout().page(), taken.layout().shown(sentence))) {
            int from = text.indexOf(limit.written());
            Optional<Property> property = labels.component().properties().stream().filter(one -> limit.value().property()
                .endsWith("." + one.name()) && !Labels.isOfTheWork(one)).findFirst();
            if (from >= 0 && property.isPresent() && limit.letters() >= LETTERS) {
                taken.quietly(new Label(List.of(property.get()), 1, "", Optional.empty(), List.of()), property.get().label(),
                    sentence.part(from, from + limit.written().length()), Around.of(List.of(), ASKED));
            }
        }
    }

    private Optional<Label> subject(String words) {
        String clause = words.replaceAll("^.*(?:,| and | that | has | with | at )\\s*", "");
        for (String written : List.of(words, clause)) {
            String bare = written.strip();
            while (ARTICLE.matcher(bare).find()) {
                bare = ARTICLE.matcher(bare).replaceFirst("");
            }
            Optional<Label> label = labels.read(bare).map(ListReader::amounts).filter(found -> !found.properties().isEmpty());
            if (label.isPresent()) {
                return label;
            }
        }
        return Optional.empty();
    }

    /** The shortest run of words from a place on that is a value, where nothing behind it may change it. */
    private boolean value(Label label, String written, Cell sentence, int from) {
        String text = sentence.text();
        List<Integer> ends = new ArrayList<>();
        for (int at = text.indexOf(' ', from); at > 0 && ends.size() < LONGEST; at = text.indexOf(' ', at + 1)) {
            ends.add(at);
        }
        if (ends.size() < LONGEST) {
            ends.add(text.length());
        }
        boolean exceeds = text.substring(0, from).strip().matches("(?is).*exceeds?");
        for (int end : ends) {
            if (SAFE.matcher(text.substring(end)).matches()) {
                Cell part = sentence.part(from, end);
                Around around = Around.of(cited(sentence, label), SURE);
                if (taken.quietly(label, written, exceeds ? part.named("exceeds " + part.text()) : part, around)) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<Citation> cited(Cell sentence, Label label) {
        List<Citation> own = citations.in(sentence.text());
        return own.isEmpty() ? label.methods() : own;
    }
}

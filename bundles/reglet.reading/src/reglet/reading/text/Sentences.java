package reglet.reading.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Numbers;
import reglet.model.Property;
import reglet.reading.page.Cell;
import reglet.reading.page.Items;
import reglet.reading.page.Layout;
import reglet.reading.page.Sentence;
import reglet.reading.text.Limits.Limit;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** Reads sentences that say one thing of one property: "its permeance is 15 perms by ASTM E96", "12 mils dry film thickness". */
public final class Sentences {
    private static final double SURE = 0.82;
    private static final double ASKED = 0.78;
    private static final int LETTERS = 8;
    private static final int LONGEST = 8;
    private static final Pattern SAYS = Pattern.compile("(?i)\\s(?:is|are|was|were|of|measures?|exceeds?|equals"
        + "|averages)\\s(?=\\D{0,24}\\d)");
    private static final Pattern ARTICLE = Pattern.compile("(?i)^(?:its|the|their|this|all|and|with a|has a|a|an)\\s+");
    private static final Pattern AMOUNT_FIRST = Pattern.compile("(" + Numbers.pattern() + ")\\s*([\\p{L}\"%°][^\\s,]*)\\s+");
    /** Two figures for what a property asks of both. */
    private static final Pattern SIDES_AND_ENDS = Pattern.compile("(?is).*\\b(?:sides?|edges?)\\b.*\\d.*\\bends?\\b.*\\d.*");
    /** What may follow a value without changing it. */
    private static final Pattern SAFE = Pattern.compile("(?i)^\\s*(?:$|[,(]?\\s*(?:by|per|when|as|in accordance|according|to ASTM|ASTM|at|"
        + "after|tested|thick)\\b.*|\\).*)", Pattern.DOTALL);

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;
    private final Limits limits;
    private final Mentions mentions;
    private boolean report;

    public Sentences(Labels labels, Citations citations, Taken taken, Limits limits, Mentions mentions) {
        this.mentions = mentions;
        this.limits = limits;
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    /** Whether the sheet is a report: only there "limitations" are conditions that others have to keep. */
    public void report(boolean is) {
        report = is;
    }

    /** Reads lists whose items each begin with the designation of a model, or of a series of models. */
    public void items(Layout layout) {
        Told told = new Told(taken.models());
        Items.of(layout).forEach(item -> told.each(item.model()).forEach(model -> mentions.of(model, item.sentence())));
    }

    public void read(Layout layout) {
        Told told = new Told(taken.models());
        if (!told.isOfSeveral()) {
            layout.sentences().forEach(this::sentence);
            return;
        }
        told.of(layout).forEach(about -> {
            if (about.told()) {
                about.models().forEach(model -> {
                    mentions.of(model, about.sentence());
                    says(about.sentence().cell(), model);
                });
            } else {
                sentence(about.sentence());
            }
        });
    }

    private void sentence(Sentence whole) {
        Cell sentence = whole.cell();
        boolean conditions = report && mentions.isCondition(whole);
        String text = sentence.text();
        if (text.split("\\s+").length < 3) {
            return;
        }
        taken.running(sentence);
        if (!conditions) {
            limits(sentence);
            mentions.read(whole);
        } else {
            mentions.conditions(whole);
        }
        if (says(sentence, "")) {
            return;
        }
        Matcher first = AMOUNT_FIRST.matcher(text);
        while (!Mentions.isPacked(text) && first.find()) {
            if (text.substring(0, first.start()).matches("(?is).*(?:\\bup to\\s+|\\(|\\d ?\\S{0,2} (?:to|[-–—])\\s+|\\d[-–—])")
                || mentions.isAnothersAt(whole.said(),
                first.start())) {
                continue;
            }
            String behind = text.substring(first.end()).replaceAll("[,(].*$", "").replaceAll("^(?:of|in)\\s+", "").strip();
            Optional<Label> label = labels.read(behind.matches("thick(?: .*)?") ? "thickness" : behind).map(Label::amounts);
            if (label.isPresent() && !label.get().properties().isEmpty()) {
                taken.quietly(label.get(), behind, sentence.part(first.start(), first.end()), Around.of(cited(sentence, label.get()),
                    SURE));
            }
        }
    }

    /** "Openings are 2 inches by 2 inches": a label, and what is said of it; false where there is none. */
    private boolean says(Cell sentence, String model) {
        String text = sentence.text();
        Matcher says = SAYS.matcher(text);
        while (says.find()) {
            Optional<Label> label = subject(text.substring(0, says.start()));
            if (label.isPresent() && value(label.get(), text.substring(0, says.start()), sentence, says.end(), model)) {
                return true;
            }
        }
        return false;
    }

    /** "Overlap horizontal seams at least 6 in.": what a sentence asks by a name long enough to be no chance. */
    private void limits(Cell sentence) {
        String text = sentence.text();
        for (Limit limit : limits.in(text, taken.layout().page(), taken.layout().shown(sentence))) {
            int from = text.indexOf(limit.written());
            Optional<Property> property = labels.component().properties().stream().filter(one -> limit.value().property()
                .endsWith("." + one.name()) && !Labels.isOfTheWork(one)).findFirst();
            boolean parted = property.filter(one -> one.label().contains(" and ")).isPresent() && SIDES_AND_ENDS.matcher(text).matches();
            boolean place = from >= 0 && Prose.isOfPlaces(text.substring(from + limit.written().length()));
            if (from >= 0 && !place && property.isPresent() && limit.letters() >= LETTERS && !parted) {
                Cell whole = sentence.part(from, from + limit.written().length());
                Cell at = limit.written().startsWith("within ") ? whole
                    : sentence.part(from + amount(limit.written()), from + limit.written()
                    .length());
                taken.quietly(Label.of(property.get()), property.get().label(), at.named(limit.written()), Around.of(List.of(), ASKED));
            }
        }
    }

    /** Where the figures of a limit begin. */
    private static int amount(String limit) {
        Matcher figure = Pattern.compile("[.\\d½¼¾⅛⅜⅝⅞⅓⅔]").matcher(limit);
        return figure.find() ? figure.start() : 0;
    }

    private Optional<Label> subject(String words) {
        String clause = words.replaceAll("^.*(?:,| and | that | has | with | at )\\s*", "");
        // "efficiency, as measured by ASTM E2273, was"
        String plain = words.replaceFirst("(?is),\\s*(?:as|when|tested|measured|determined|by|per|according)\\b.*$", "");
        for (String written : List.of(words, clause, plain)) {
            String bare = written.strip();
            while (ARTICLE.matcher(bare).find()) {
                bare = ARTICLE.matcher(bare).replaceFirst("");
            }
            Optional<Label> label = labels.read(bare).map(Label::amounts).filter(found -> !found.properties().isEmpty());
            if (label.isPresent()) {
                return label;
            }
        }
        return Optional.empty();
    }

    /** The shortest run of words from a place on that is a value, where nothing behind it may change it. */
    private boolean value(Label label, String written, Cell sentence, int from, String model) {
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
                Around around = new Around("", cited(sentence, label), model, Optional.empty(), SURE);
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

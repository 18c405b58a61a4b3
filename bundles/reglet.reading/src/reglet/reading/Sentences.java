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
    private static final int NEAREST = 6;
    private static final int RUNNING = 4;
    /** "Thickness: 3/8 in" begins anew. */
    private static final Pattern LABELLED = Pattern.compile("\\p{Lu}[^:.]{2,40}:\\s+\\S");
    private static final Pattern BULLET = Pattern.compile("\\s*(?:[•·▪■●◦‣*+✓✔→»-]|\\d{1,2}[.)]|[a-z][.)])\\s+");
    /** A heading in capitals ends where words in small letters begin. */
    private static final Pattern CAPITALS = Pattern.compile("(?=.*\\p{Lu}{4})[^\\p{Ll}]{4,60}");
    private static final Pattern SENTENCE = Pattern.compile("[.;]\\s+|[.;]$");
    /** A stop that ends no sentence: "1/4 in. ground", "No. 15". */
    private static final Pattern ABBREVIATED = Pattern.compile("(?is).*(?:[\\d½¼¾⅛⅜⅝⅞⅓⅔]\\s*-?(?:in|ft|lbs?|oz|sq|yd|ga|min|max|hr"
        + "|deg)|\\b(?:no"
        + "|approx|nom|thk|avg|temp|wt|dia|min|max|incl"
        + "|sq|cu|e\\.g|i\\.e|fig|o\\.c|avg|galv|proc|cat|(?:sq|cu|lin)\\.? ?(?:ft|in|yd)))\\.");
    /** "ASTM E96 Proc. A" goes on, though with a capital. */
    private static final Pattern NAMED = Pattern.compile("(?is).*\\b(?:proc|no|cat|fig)\\.");
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

    Sentences(Labels labels, Citations citations, Taken taken, Limits limits, Mentions mentions) {
        this.mentions = mentions;
        this.limits = limits;
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    /**
     * A sentence of running text.
     *
     * @param conditions whether it stands among what a report asks of those who use the product, which isn't what the product is
     * @param before     what the same paragraph says before it
     */
    record Sentence(Cell cell, Said said, boolean conditions, String before) {
        static Sentence of(Cell cell, boolean conditions, String before) {
            return new Sentence(cell, new Said(cell.text()), conditions, before);
        }
    }

    /** Whether the sheet is a report: only there "limitations" are conditions that others have to keep. */
    void report(boolean is) {
        report = is;
    }

    void read(Layout layout) {
        layout.sentences().forEach(this::sentence);
    }

    static List<Sentence> of(List<Line> lines) {
        List<Sentence> all = new ArrayList<>();
        boolean conditions = false;
        for (Cell paragraph : paragraphs(lines)) {
            conditions = ReportReader.isConditions(paragraph.text()) || conditions && !ReportReader.isHeading(paragraph.text());
            Matcher stop = SENTENCE.matcher(paragraph.text());
            int from = 0;
            while (stop.find()) {
                boolean starts = stop.end() >= paragraph.text().length() || Character.isUpperCase(paragraph.text().charAt(stop.end()));
                String said = paragraph.text().substring(0, stop.start() + 1);
                boolean named = NAMED.matcher(said).matches() && paragraph.text().substring(stop.end())
                    .matches("(?s)(?:\\p{Lu}\\b|\\p{Lu}*-?\\d).*");
                if (!named && (starts || !ABBREVIATED.matcher(said).matches())) {
                    all.add(Sentence.of(paragraph.part(from, stop.start()), conditions, paragraph.text().substring(0, from)));
                    from = stop.end();
                }
            }
            if (from < paragraph.text().length()) {
                all.add(Sentence.of(paragraph.part(from, paragraph.text().length()), conditions, paragraph.text().substring(0,
                    from)));
            }
        }
        return all;
    }

    /** Cells of lines that follow each other closely, joined; beside other cells only such as hold running text. */
    static List<Cell> paragraphs(List<Line> lines) {
        List<Cell> all = new ArrayList<>();
        List<Cell> last = new ArrayList<>();
        Broken broken = new Broken();
        for (Line line : lines) {
            broken.line(line, last);
            for (Cell cell : line.cells()) {
                boolean alone = line.cells().size() == 1;
                int above = -1;
                for (int i = Math.max(0, all.size() - NEAREST); i < all.size(); i++) {
                    boolean first = all.get(i) == last.get(i);
                    above = follows(last.get(i), cell) || first && isSetIn(last.get(i), cell) ? i : above;
                }
                above = above < 0 ? broken.goesOn(cell) : above;
                if (above >= 0 && (alone || isRunning(cell) || isRunning(last.get(above)))) {
                    all.set(above, all.get(above).with(cell));
                    last.set(above, cell);
                } else if (alone || isRunning(cell)) {
                    all.add(cell);
                    last.add(cell);
                }
            }
        }
        return all;
    }

    private static boolean isRunning(Cell cell) {
        return cell.text().split("\\s+").length >= RUNNING;
    }

    /** Whether a cell goes on with the one above it: right below, in line with it or with its words behind a dot. */
    private static boolean follows(Cell last, Cell cell) {
        boolean bullet = BULLET.matcher(last.text()).lookingAt();
        double in = cell.left() - last.left();
        return cell.y() > last.y() && cell.y() - last.y() < 1.6 * cell.size() && (Math.abs(in) < 3 || bullet && in > 0
            && in < 3 * cell.size())
            && Math.abs(cell.size() - last.size()) < 0.5 && !last.text().endsWith(":") && !BULLET.matcher(cell.text()).lookingAt()
            && !LABELLED.matcher(cell.text()).lookingAt() && !Items.isItem(cell.text()) && !(CAPITALS.matcher(last.text()).matches()
                && !CAPITALS.matcher(cell.text()).matches());
    }

    /** Whether a line is the first of a paragraph, set in or as a hanging title is, and the one below it goes on with it. */
    private static boolean isSetIn(Cell first, Cell cell) {
        double in = first.left() - cell.left();
        return in >= 3 && in < 4 * cell.size() && first.right() > cell.right() - 4 * cell.size() && isRunning(first)
            && cell.y() > first.y() && cell.y() - first.y() < 1.6 * cell.size() && Math.abs(cell.size() - first.size()) < 0.5
            && !first.text().matches("(?s).*[.:]\\s*") && Character.isLowerCase(cell.text().codePointAt(0));
    }

    private void sentence(Sentence whole) {
        Cell sentence = whole.cell();
        boolean conditions = report && whole.conditions();
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
        Matcher says = SAYS.matcher(text);
        while (says.find()) {
            Optional<Label> label = subject(text.substring(0, says.start()));
            if (label.isPresent() && value(label.get(), text.substring(0, says.start()), sentence, says.end())) {
                return;
            }
        }
        Matcher first = AMOUNT_FIRST.matcher(text);
        while (!Mentions.isPacked(text) && first.find()) {
            if (text.substring(0, first.start()).matches("(?is).*(?:\\bup to\\s+|\\()") || mentions.isAnothersAt(whole.said(),
                first.start())) {
                continue;
            }
            String behind = text.substring(first.end()).replaceAll("[,(].*$", "").replaceAll("^(?:of|in)\\s+", "").strip();
            Optional<Label> label = labels.read(behind.matches("thick(?: .*)?") ? "thickness" : behind).map(ListReader::amounts);
            if (label.isPresent() && !label.get().properties().isEmpty()) {
                taken.quietly(label.get(), behind, sentence.part(first.start(), first.end()), Around.of(cited(sentence, label.get()),
                    SURE));
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
            boolean parted = property.filter(one -> one.label().contains(" and ")).isPresent() && SIDES_AND_ENDS.matcher(text).matches();
            boolean place = from >= 0 && Prose.isOfPlaces(text.substring(from + limit.written().length()));
            if (from >= 0 && !place && property.isPresent() && limit.letters() >= LETTERS && !parted) {
                taken.quietly(new Label(List.of(property.get()), 1, "", Optional.empty(), List.of()), property.get().label(),
                    sentence.part(from + amount(limit.written()), from + limit.written().length()).named(limit.written()), Around.of(
                        List.of(), ASKED));
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

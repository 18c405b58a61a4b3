package reglet.reading.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.reading.page.Cell;
import reglet.reading.page.Sentence;
import reglet.reading.text.Candidates.Candidate;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;
import reglet.reading.words.Naming;
import reglet.reading.words.Reading;
import reglet.reading.words.Said;
import reglet.reading.words.Stretches;
import reglet.reading.words.Turn;
import reglet.reading.words.Vocabulary;

/** Finds amounts in running text: behind or before the name of a property, or where a turn of phrase of the pack says one. */
public final class Mentions {
    private static final double TURN = 0.82;
    /** Of a turn of two words beside the amount. */
    private static final int SAYS_MUCH = 30;
    private static final Pattern COMPLIES = Pattern.compile("(?is).*\\b(?:compl(?:y|ies)|conforms?|meets?|tested|determined"
        + "|measured|tests? (?:per|to|by))\\b.*");
    private static final Pattern TESTS = Pattern.compile("(?is).*\\b(?:tested|determined|measured|tests? (?:per|to|by))\\b.*");
    /** Between an amount and the standard that shows it. */
    private static final Pattern BY = Pattern.compile("(?i)\\W*(?:(?:when )?tested )?(?:per|by|to|in accordance with)?\\W*"
        + "|[^.;,(]{0,40}\\(");
    /** Between a standard and the amount that it shows: "strength per ASTM C39, average 2740 psi". */
    private static final Pattern TO = Pattern.compile("(?i)[\\s,:=–-]*(?:(?:averages?|averaged|avg\\.?|mean|typical|of|is|was"
        + "|result)\\s*)*[\\s,:]*");
    /** "60 ft² per bag, 1/2 in. joint" says what a bag is enough for. */
    private static final Pattern PACKED = Pattern.compile("(?i)\\b(?:per|a|each) (?:\\d+[- ](?:lb|gal|oz)\\.? )?(?:bag|pail"
        + "|gallon|carton|cartridge|sausage|box|bundle|pallet)\\b"
        + "|\\b(?:yields?|gives|covers) (?:about )?[\\d.]+ ?(?:cu|sq|ft|m)\\b");
    /** A data sheet that tells what the product's report covers. */
    private static final Pattern REPORT = Pattern.compile("(?i)\\b(?:conditions|limits|terms) of (?:the|its) report\\b"
        + "|\\bevaluation report\\b");
    /** "130 psi at 7 days and 210 psi at 28 days": the later one is meant. */
    private static final Pattern MEASURED = Pattern.compile("(?is).*\\b(?:measured|tested|test|determined)\\b.*");
    private static final Pattern AGED = Pattern.compile("(?i)\\W*(?:(?:at|after|in)\\s+)?\\d{1,2}[- ]?d(?:ays?)?\\)?\\s*(?:,|;|and|/)+\\s*"
        + "(?:and\\s+)?([\\d.,]+\\s?\\p{L}+)\\s*\\(?(?:at|after|in)?\\s*28[- ]?d(?:ays?)?\\b");

    private final Citations citations;
    private final Taken taken;
    private final Others others;
    private final Stretches stretches;
    private final Candidates found;
    private final Conditions conditions;
    private final Map<Sentence, boolean[]> amounts = new IdentityHashMap<>();
    private boolean report;
    private String model = "";
    private Optional<Compare> sense = Optional.empty();

    public Mentions(Component component, Vocabulary vocabulary, Labels labels, Reading reading, Citations citations, Taken taken,
            Naming naming) {
        this.citations = citations;
        this.conditions = new Conditions(vocabulary, component);
        this.taken = taken;
        Map<Property, List<Turn>> turns = Candidates.turns(component, vocabulary);
        others = new Others(component, naming);
        stretches = new Stretches(reading, turns);
        found = new Candidates(component, vocabulary, labels, turns, stretches, others);
    }

    /** Whether a sentence of a report stands among conditions that others have to keep. */
    boolean isCondition(Sentence whole) {
        return conditions.areOfOthers(whole);
    }

    /** What a report says among its conditions of what it covers. */
    void conditions(Sentence whole) {
        read(whole, property -> property.name().startsWith("report_"));
    }

    void read(Sentence whole) {
        read(whole, property -> true);
    }

    /** Reads what is said of one model. */
    public void of(String one, Sentence whole) {
        of(one, Optional.empty(), whole);
    }

    /** Reads what is said of one model; false when nothing is. Where the words tell no sense of their own, the one at hand holds. */
    public boolean of(String one, Optional<Compare> meant, Sentence whole) {
        // the same amount is one of each of several models
        amounts.remove(whole);
        model = one;
        sense = meant;
        boolean any = read(whole, property -> true);
        model = "";
        sense = Optional.empty();
        return any;
    }

    /** The index behind the amount of a property that starts at a word; -1 where none does. */
    int end(Property property, Said said, int from) {
        return stretches.end(property, said, from);
    }

    /** Whether the amount at a word was taken down as one of some property: no other words are needed to tell what it is of. */
    boolean isTaken(Sentence whole, int word) {
        boolean[] used = amounts.get(whole);
        return used != null && used[word];
    }

    /** Takes down an amount that the words round it tell to be one of a property. */
    boolean lean(Property property, Sentence whole, int from, int end, double share) {
        return take(new Candidate(property, property.label(), Stretches.start(whole.said(), from, end), end, share, 0), whole.said(),
            whole);
    }

    private boolean read(Sentence whole, Predicate<Property> asked) {
        Cell sentence = whole.cell();
        Said said = whole.said();
        boolean figures = false;
        for (int i = 0; i < said.size(); i++) {
            figures |= Stretches.isFigure(said.at(i).plain());
        }
        if (said.size() < 2 || !figures) {
            return false;
        }
        boolean covers = report || REPORT.matcher(whole.before() + said.text()).find();
        List<Candidate> candidates = found.in(said, covers);
        candidates.removeIf(one -> !asked.test(one.property()));
        if (isPacked(said.text())) {
            // "60 ft² per bag, which dries to 12 mils": a turn that says much, in a clause of its own
            candidates.removeIf(one -> one.strength() < SAYS_MUCH || isPacked(clause(said, one)));
        }
        candidates.sort(Comparator.comparing((Candidate one) -> -one.strength()).thenComparing(one -> -one.share()));
        Set<Property> done = parted(candidates, said);
        candidates.stream().map(Candidate::property).distinct().filter(property -> divided(property, said, sentence)).forEach(done::add);
        boolean[] used = amounts.computeIfAbsent(whole, fresh -> new boolean[said.size()]);
        for (Candidate one : candidates) {
            boolean free = !done.contains(one.property());
            for (int i = one.from(); i < one.end(); i++) {
                free &= !used[i];
            }
            if (free && take(one, said, whole)) {
                done.add(one.property());
                for (int i = one.from(); i < one.end(); i++) {
                    used[i] = true;
                }
            }
        }
        return !done.isEmpty();
    }

    /** The words between commas that an amount stands among. */
    private static String clause(Said said, Candidate one) {
        int from = one.from();
        int end = one.end();
        while (from > 0 && !said.at(from - 1).stop()) {
            from--;
        }
        while (end < said.size() && !said.at(end - 1).stop()) {
            end++;
        }
        return said.text().substring(said.at(from).from(), said.at(end - 1).to());
    }

    /** "Lap sides 1/2 in. and ends 1 in." has no one answer to the lap of sides and ends. */
    private static Set<Property> parted(List<Candidate> candidates, Said said) {
        Set<Property> parted = new HashSet<>();
        for (Candidate one : candidates) {
            if (one.property().label().contains(" and ") && candidates.stream().anyMatch(other -> other.property() == one.property()
                && other.from() >= one.end() && !said.between(other.from(), other.end()).equals(said.between(one.from(), one.end())))) {
                parted.add(one.property());
            }
        }
        return parted;
    }

    /** "25 to 33% for closed cell, 25 to 50% for open cell": of each model by a word that was taken down of it. */
    private boolean divided(Property property, Said said, Cell sentence) {
        List<int[]> amounts = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            int end = taken.models().size() > 1 && Stretches.isFigure(said.at(i).plain()) ? stretches.end(property, said, i) : -1;
            if (end > 0) {
                amounts.add(new int[] {i, end});
                i = end - 1;
            }
        }
        boolean any = false;
        for (int i = 0; amounts.size() > 1 && i < amounts.size(); i++) {
            int[] amount = amounts.get(i);
            String behind = " " + said.plain(amount[1], i + 1 < amounts.size() ? amounts.get(i + 1)[0] : said.size()) + " ";
            String whose = behind.contains(" for ") ? behind.substring(behind.indexOf(" for ") + 4) : "";
            any |= takeOf(taken.modelsOf(whose), property, said, amount, sentence);
        }
        return any || amounts.size() > 1 && named(property, said, amounts, sentence);
    }

    /** "KL staples 3/4 in., KN nails 1-1/8 in.", "3/4 in. of KL staples and 1-1/8 in. of KN nails": of each model that is named beside
     * it. */
    private boolean named(Property property, Said said, List<int[]> amounts, Cell sentence) {
        for (boolean before : List.of(true, false)) {
            List<Set<String>> models = beside(said, amounts, before);
            Set<String> all = new HashSet<>();
            if (models.stream().allMatch(own -> !own.isEmpty() && own.stream().allMatch(all::add))) {
                for (int i = 0; i < amounts.size(); i++) {
                    takeOf(models.get(i), property, said, amounts.get(i), sentence);
                }
                return true;
            }
        }
        return false;
    }

    /** The models that are named before each of some amounts, or behind it. */
    private List<Set<String>> beside(Said said, List<int[]> amounts, boolean before) {
        Told told = new Told(taken.models());
        List<Set<String>> models = new ArrayList<>();
        for (int i = 0; i < amounts.size(); i++) {
            int from = !before ? amounts.get(i)[1] : i == 0 ? 0 : amounts.get(i - 1)[1];
            int end = before ? amounts.get(i)[0] : i + 1 < amounts.size() ? amounts.get(i + 1)[0] : said.size();
            models.add(from < end ? told.named(said.between(from, end)) : Set.of());
        }
        return models;
    }

    private boolean takeOf(Set<String> models, Property property, Said said, int[] amount, Cell sentence) {
        Cell place = sentence.part(said.at(amount[0]).from(), said.to(amount[0], amount[1]));
        boolean any = false;
        for (String model : models) {
            any |= taken.quietly(Label.of(property), property.label(), place.named(said.between(amount[0], amount[1])),
                new Around("", Citations.own(property, citations.in(sentence.text())), model, Optional.empty(), TURN));
        }
        return any;
    }

    /** "Every 100 ft up to 1,000 ft": how often, without how far. */
    private static Candidate often(Candidate one, Said said) {
        boolean each = one.from() > 0 && Set.of("every", "each").contains(said.at(one.from() - 1).plain());
        for (int i = one.from() + 1; each && i + 1 < one.end(); i++) {
            if (said.plain(i, i + 2).equals("up to")) {
                return new Candidate(one.property(), one.written(), one.from(), i, one.share(), one.strength());
            }
        }
        return one;
    }

    /** "75 mm (3 in.) over the lower one": what is in brackets behind an amount says that amount once more. */
    private Candidate outer(Candidate one, Said said) {
        int figure = one.from();
        while (figure < one.end() && !Stretches.isFigure(said.at(figure).plain())) {
            figure++;
        }
        boolean inside = figure > 0 && figure < one.end() && said.text().startsWith("(", said.at(figure).from() - 1);
        for (int i = Math.max(0, figure - Stretches.MOST_BETWEEN); inside && i < figure; i++) {
            int end = Stretches.isFigure(said.at(i).plain()) ? stretches.end(one.property(), said, i) : -1;
            if (end > figure) {
                return new Candidate(one.property(), one.written(), Stretches.start(said, i, end), Math.max(end, one.end()), one.share(),
                    one.strength());
            }
        }
        return one;
    }

    private boolean take(Candidate told, Said said, Sentence whole) {
        Candidate one = often(outer(told, said), said);
        Cell sentence = whole.cell();
        List<Citation> cited = citations.in(sentence.text());
        // what the words round an amount tell of is shown by the only standard there, whichever the pack asks for
        List<Citation> methods = one.strength() == 0 && cited.size() == 1 ? cited : Citations.own(one.property(), cited);
        if (cited.isEmpty() && COMPLIES.matcher(whole.before()).matches()) {
            // "The units comply with ASTM C1670. Their compressive strength is 2,100 psi."; what no test is asked for needs a test named
            List<Citation> before = citations.in(whole.before());
            methods = one.property().method().isNone() && before.size() == 1 && (one.property().evidence() == Evidence.TEST_REPORT
                || TESTS.matcher(whole.before()).matches()) ? before
                : Citations.own(one.property(), before);
        }
        if (cited.isEmpty() && methods.isEmpty()) {
            // a cell of a row that begins with the standard
            methods = Citations.own(one.property(), taken.layout().lines().stream().filter(line -> line.cells().size() > 1
                && line.cells().indexOf(sentence)
                > 0).findFirst().map(line -> citations.in(line.cells().get(0).text())).orElse(List.of()));
        }
        if (methods.isEmpty() && (one.property().evidence() == Evidence.TEST_REPORT || !one.property().method().isNone())) {
            int end = said.to(one.from(), one.end());
            // "by 90 % (ASTM C67)", "200 psi per ASTM C482"
            int from = said.at(one.from()).from();
            methods = cited.stream().filter(citation -> citation.from() >= from && (citation.from() < end || BY.matcher(said.text()
                .substring(end, citation.from())).matches()) || citation.to() <= from && TO.matcher(said.text().substring(citation.to(),
                    from)).matches()).toList();
        }
        if (one.property().type().unit().orElseThrow().dimension() == Dimension.LENGTH && one.property().evidence()
            != Evidence.TEST_REPORT && Citations.own(one.property(), methods).isEmpty() && !MEASURED.matcher(said.text()).matches()) {
            // "zinc alloy, ASTM B69, 0.0207 in. thick": what it is made of
            int amount = said.at(one.from()).from();
            methods = methods.stream().filter(citation -> citation.from() >= amount || !citations.in(sentence.text()).contains(citation))
                .toList();
        }
        Matcher aged = AGED.matcher(said.text()).region(said.to(one.from(), one.end()), said.text().length());
        boolean later = one.property().type().unit().orElseThrow().dimension() == Dimension.PRESSURE && aged.lookingAt();
        Cell place = later ? sentence.part(aged.start(1), aged.end(1)) : sentence.part(said.at(one.from()).from(), said.to(one.from(),
            one.end()));
        String asked = one.property().method().standard();
        String part = asked.isEmpty() ? "" : citations.part(asked, said.text());
        if (!part.equals(asked) && !one.property().method().part().isEmpty() && !part.endsWith(one.property().method().part())) {
            // "11 perms by the wet cup method" is no answer where the other cup is asked for
            return false;
        }
        String start = said.text().substring(0, said.at(one.from()).from());
        String behind = said.text().substring(said.to(one.from(), one.end()));
        if (one.property().type().unit().orElseThrow().dimension() == Dimension.TEMPERATURE && Senses.isOfStorage(start, behind)) {
            return false;
        }
        String whose = model.isEmpty() && one.strength() == 0 && !taken.hasOfModels(one.property()) ? named(said.text()) : model;
        if (one.property().type().unit().orElseThrow().dimension() == Dimension.LENGTH && Prose.isOfPlaces(behind)) {
            return false;
        }
        if (isOneOfSeveral(one, said)) {
            return false;
        }
        String words = Senses.said(one.property(), start, later ? aged.group(1) : said.between(one.from(), one.end()));
        Optional<Compare> stated = Senses.beside(one.property(), start, behind).or(() -> sense);
        return taken.quietly(new Label(List.of(one.property()), 1, "", stated, List.of()), one.written(), place.named(words), new Around("",
            methods, whose, Optional.empty(), one.share()));
    }

    /** "Legs are 1 in., 1-1/4 in. or 1-1/2 in. long": the last of what can be chosen is not what the product is. */
    private boolean isOneOfSeveral(Candidate one, Said said) {
        int next = one.end() < said.size() && said.at(one.end()).plain().equals("or") ? one.end() + 1 : one.end();
        int after = next < said.size() && Stretches.isFigure(said.at(next).plain()) ? stretches.end(one.property(), said, next) : -1;
        boolean choice = after > 0 && (next > one.end() || after < said.size() && said.at(after).plain().equals("or"));
        if (choice && stretches.differ(one.property(), said.between(one.from(), one.end()), said.between(next, after))) {
            return true;
        }
        boolean or = one.from() > 1 && said.at(one.from() - 1).plain().equals("or");
        for (int i = 0; or && i < one.from() - 1; i++) {
            if (Stretches.isFigure(said.at(i).plain()) && stretches.end(one.property(), said, i) == one.from() - 1) {
                return stretches.differ(one.property(), said.between(i, one.from() - 1), said.between(one.from(), one.end()));
            }
        }
        return false;
    }

    /** The only one of several models that a sentence names; "" for none. */
    private String named(String text) {
        Told told = new Told(taken.models());
        Set<String> named = told.isOfSeveral() ? told.named(text) : Set.of();
        return named.size() == 1 && taken.models().containsAll(named) ? named.iterator().next() : "";
    }

    /** Whether a sentence says what a bag or pail holds or is enough for. */
    static boolean isPacked(String sentence) {
        return PACKED.matcher(sentence).find();
    }

    /** Whether the words right before a place of the text name another component. */
    boolean isAnothersAt(Said said, int place) {
        return others.isAnothersAt(said, place);
    }

    /** Whether the sheet is a report, which says of products what it covers: only there limits of the report are looked for. */
    public void report(boolean is) {
        report = is;
    }
}

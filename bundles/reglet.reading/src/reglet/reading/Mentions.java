package reglet.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.Citations.Citation;
import reglet.reading.Labels.Label;
import reglet.reading.Sentences.Sentence;
import reglet.reading.Taken.Around;
import reglet.reading.Turn.Place;

/** Finds amounts in running text: behind or before the name of a property, or where a turn of phrase of the pack says one. */
final class Mentions {
    private static final double TURN = 0.82;
    private static final double BEHIND = 0.78;
    private static final double BEFORE = 0.74;
    /** Of a turn of two words beside the amount. */
    private static final int SAYS_MUCH = 30;
    private static final int LONGEST_NAME = 6;
    private static final int FAR_BETWEEN = 2;
    private static final Set<String> BEFORE_NAME = Set.of("the", "a", "an", "its", "their", "this", "nominal", "average", "minimum",
        "maximum",
        "total", "overall", "typical", "with", "and", "of", "has", "actual", "mean", "all", "is", "by", "in", "at", "for", "approximate");
    private static final Pattern COMPLIES = Pattern.compile("(?is).*\\b(?:compl(?:y|ies)|conforms?|meets?|tested|determined"
        + "|measured|tests? (?:per|to|by))\\b.*");
    /** "60 ft² per bag, 1/2 in. joint" says what a bag is enough for. */
    private static final Pattern PACKED = Pattern.compile("(?i)\\b(?:per|a|each) (?:\\d+[- ](?:lb|gal|oz)\\.? )?(?:bag|pail"
        + "|gallon|carton|cartridge|sausage|box|bundle|pallet)\\b"
        + "|\\b(?:yields?|gives|covers) (?:about )?[\\d.]+ ?(?:cu|sq|ft|m)\\b");
    /** A data sheet that tells what the product's report covers. */
    private static final Pattern REPORT = Pattern.compile("(?i)\\b(?:conditions|limits|terms) of (?:the|its) report\\b"
        + "|\\bevaluation report\\b");
    /** "130 psi at 7 days and 210 psi at 28 days": the later one is meant. */
    private static final Pattern AGED = Pattern.compile("(?i)\\W*(?:(?:at|after|in)\\s+)?\\d{1,2}[- ]?d(?:ays?)?\\)?\\s*(?:,|;|and|/)+\\s*"
        + "(?:and\\s+)?([\\d.,]+\\s?\\p{L}+)\\s*\\(?(?:at|after|in)?\\s*28[- ]?d(?:ays?)?\\b");

    private final Component component;
    private final Labels labels;
    private final Citations citations;
    private final Taken taken;
    private final Others others;
    private boolean report;
    private String model = "";
    private final Map<Property, List<Turn>> turns = new HashMap<>();
    private final Set<String> own = new HashSet<>();
    private final Stretches stretches;

    Mentions(Component component, Vocabulary vocabulary, Labels labels, Reading reading, Citations citations, Taken taken,
            Naming naming) {
        this.others = new Others(component, naming);
        this.component = component;
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
        for (Property property : component.properties()) {
            List<Turn> said = vocabulary.turns(component.id() + "." + property.name()).stream().filter(Turn::hasAmount).toList();
            if (isAmount(property) && !said.isEmpty()) {
                turns.put(property, said);
            }
        }
        stretches = new Stretches(reading, turns);
        own.addAll(List.of(Labels.plain(component.title()).split(" ")));
        vocabulary.names(component.id()).forEach(name -> own.addAll(List.of(Labels.plain(name).split(" "))));
    }

    private static boolean isAmount(Property property) {
        return (property.type().kind() == Kind.QUANTITY || property.type().kind() == Kind.RANGE);
    }

    /** An amount that may be one of a property: the words of the amount, and how much speaks for it. */
    private record Candidate(Property property, String written, int from, int end, double share, int strength) {
    }

    /** What a report says among its conditions of what it covers. */
    void conditions(Sentence whole) {
        read(whole, property -> property.name().startsWith("report_"));
    }

    void read(Sentence whole) {
        read(whole, property -> true);
    }

    /** Reads what is said of one model. */
    void of(String one, Sentence whole) {
        model = one;
        read(whole);
        model = "";
    }

    /** The index behind the amount of a property that starts at a word; -1 where none does. */
    int end(Property property, Said said, int from) {
        return stretches.end(property, said, from);
    }

    /** Takes down an amount that the words round it tell to be one of a property. */
    boolean lean(Property property, Sentence whole, int from, int end, double share) {
        return take(new Candidate(property, property.label(), Stretches.start(whole.said(), from, end), end, share, 0), whole.said(),
            whole);
    }

    private void read(Sentence whole, Predicate<Property> asked) {
        Cell sentence = whole.cell();
        Said said = whole.said();
        boolean figures = false;
        for (int i = 0; i < said.size(); i++) {
            figures |= Stretches.isFigure(said.at(i).plain());
        }
        if (said.size() < 2 || !figures) {
            return;
        }
        List<Candidate> candidates = new ArrayList<>();
        boolean covers = report || REPORT.matcher(whole.before() + said.text()).find();
        turns(said, covers, candidates);
        names(said, candidates);
        candidates.removeIf(one -> !asked.test(one.property));
        if (isPacked(said.text())) {
            // "60 ft² per bag, which dries to 12 mils": a turn that says much, in a clause of its own
            candidates.removeIf(one -> one.strength < SAYS_MUCH || isPacked(clause(said, one)));
        }
        candidates.sort(Comparator.comparing((Candidate one) -> -one.strength).thenComparing(one -> -one.share));
        Set<Property> done = parted(candidates, said);
        candidates.stream().map(Candidate::property).distinct().filter(property -> divided(property, said, sentence)).forEach(done::add);
        boolean[] used = new boolean[said.size()];
        for (Candidate one : candidates) {
            boolean free = !done.contains(one.property);
            for (int i = one.from; i < one.end; i++) {
                free &= !used[i];
            }
            if (free && take(one, said, whole)) {
                done.add(one.property);
                for (int i = one.from; i < one.end; i++) {
                    used[i] = true;
                }
            }
        }
    }

    /** The words between commas that an amount stands among. */
    private static String clause(Said said, Candidate one) {
        int from = one.from;
        int end = one.end;
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
            if (one.property.label().contains(" and ") && candidates.stream().anyMatch(other -> other.property == one.property
                && other.from >= one.end && !said.between(other.from, other.end).equals(said.between(one.from, one.end)))) {
                parted.add(one.property);
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
            Cell place = sentence.part(said.at(amount[0]).from(), said.to(amount[0], amount[1]));
            for (String model : taken.modelsOf(whose)) {
                any |= taken.quietly(Sayings.label(property), property.label(), place.named(said.between(amount[0], amount[1])),
                    new Around("", own(property, citations.in(sentence.text())), model, Optional.empty(), TURN));
            }
        }
        return any;
    }

    /** "Every 100 ft up to 1,000 ft": how often, without how far. */
    private static Candidate often(Candidate one, Said said) {
        boolean each = one.from > 0 && Set.of("every", "each").contains(said.at(one.from - 1).plain());
        for (int i = one.from + 1; each && i + 1 < one.end; i++) {
            if (said.plain(i, i + 2).equals("up to")) {
                return new Candidate(one.property, one.written, one.from, i, one.share, one.strength);
            }
        }
        return one;
    }

    private boolean take(Candidate told, Said said, Sentence whole) {
        Candidate one = often(told, said);
        Cell sentence = whole.cell();
        List<Citation> cited = citations.in(sentence.text());
        // what the words round an amount tell of is shown by the only standard there, whichever the pack asks for
        List<Citation> methods = one.strength == 0 && cited.size() == 1 ? cited : own(one.property, cited);
        if (cited.isEmpty() && COMPLIES.matcher(whole.before()).matches()) {
            // "The units comply with ASTM C1670. Their compressive strength is 2,100 psi."
            List<Citation> before = citations.in(whole.before());
            methods = one.property.method().isNone() && before.size() == 1 ? before : own(one.property, before);
        }
        if (cited.isEmpty() && methods.isEmpty()) {
            // a cell of a row that begins with the standard
            methods = own(one.property, taken.layout().lines().stream().filter(line -> line.cells().size() > 1 && line.cells().indexOf(sentence)
                > 0).findFirst().map(line -> citations.in(line.cells().get(0).text())).orElse(List.of()));
        }
        Matcher aged = AGED.matcher(said.text()).region(said.to(one.from, one.end), said.text().length());
        boolean later = one.property.type().unit().orElseThrow().dimension() == Dimension.PRESSURE && aged.lookingAt();
        Cell place = later ? sentence.part(aged.start(1), aged.end(1)) : sentence.part(said.at(one.from).from(), said.to(one.from,
            one.end));
        String asked = one.property.method().standard();
        String part = asked.isEmpty() ? "" : citations.part(asked, said.text());
        if (!part.equals(asked) && !one.property.method().part().isEmpty() && !part.endsWith(one.property.method().part())) {
            // "11 perms by the wet cup method" is no answer where the other cup is asked for
            return false;
        }
        String start = said.text().substring(0, said.at(one.from).from());
        String behind = said.text().substring(said.to(one.from, one.end));
        if (one.property.type().unit().orElseThrow().dimension() == Dimension.TEMPERATURE && Senses.isOfStorage(start, behind)) {
            return false;
        }
        String whose = model.isEmpty() && one.strength == 0 && !taken.hasOfModels(one.property) ? named(said.text()) : model;
        if (one.property.type().unit().orElseThrow().dimension() == Dimension.LENGTH && Prose.isOfPlaces(behind)) {
            return false;
        }
        if (isOneOfSeveral(one, said)) {
            return false;
        }
        String words = Senses.said(one.property, start, later ? aged.group(1) : said.between(one.from, one.end));
        Optional<Compare> sense = Senses.beside(one.property, start, behind);
        return taken.quietly(new Label(List.of(one.property), 1, "", sense, List.of()), one.written, place.named(words), new Around("",
            methods, whose, Optional.empty(), one.share));
    }

    /** "Legs are 1 in., 1-1/4 in. or 1-1/2 in. long": the last of what can be chosen is not what the product is. */
    private boolean isOneOfSeveral(Candidate one, Said said) {
        int next = one.end < said.size() && said.at(one.end).plain().equals("or") ? one.end + 1 : one.end;
        int after = next < said.size() && Stretches.isFigure(said.at(next).plain()) ? stretches.end(one.property, said, next) : -1;
        boolean choice = after > 0 && (next > one.end || after < said.size() && said.at(after).plain().equals("or"));
        if (choice && taken.differ(one.property, said.between(one.from, one.end), said.between(next, after))) {
            return true;
        }
        boolean or = one.from > 1 && said.at(one.from - 1).plain().equals("or");
        for (int i = 0; or && i < one.from - 1; i++) {
            if (Stretches.isFigure(said.at(i).plain()) && stretches.end(one.property, said, i) == one.from - 1) {
                return taken.differ(one.property, said.between(i, one.from - 1), said.between(one.from, one.end));
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

    /** A sentence cites standards for several things: of those the one that the pack asks for shows the amount. */
    static List<Citation> own(Property property, List<Citation> cited) {
        String asked = property.method().standard();
        return cited.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).toList();
    }

    private void turns(Said said, boolean covers, List<Candidate> candidates) {
        turns.forEach((property, list) -> {
            for (Turn turn : !covers && property.name().startsWith("report_") ? List.<Turn>of() : list) {
                for (int i = 0; i < said.size(); i++) {
                    Place place = turn.at(said, i, at -> stretches.end(property, said, at));
                    if (place != null && !(place.from() == place.amount() && others.isAnothers(said, place.from()))
                        && !Others.isOtherUnit(said, place.amount()) && !Others.isPassed(said, place)) {
                        int end = Math.max(place.amountEnd(), stretches.end(property, said, place.amount()));
                        candidates.add(new Candidate(property, property.label(), Stretches.start(said, place.amount(), end), end, TURN,
                            10 + 10 * turn.fixed()));
                        break;
                    }
                }
            }
        });
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
    void report(boolean is) {
        report = is;
    }

    private void names(Said said, List<Candidate> candidates) {
        for (int i = 0; i < said.size(); i++) {
            for (int end = Math.min(said.size(), i + LONGEST_NAME); end > i; end--) {
                String name = said.plain(i, end);
                List<Property> properties = labels.named(name).stream().filter(Mentions::isAmount).toList();
                if (properties.isEmpty() || end == i + 1 && !isFree(said, i) || others.isOfAnother(said, i)) {
                    continue;
                }
                for (Property property : properties) {
                    int before = candidates.size();
                    behind(property, said, i, end, candidates);
                    if (candidates.size() == before) {
                        before(property, said, i, end, candidates);
                    }
                    if (candidates.size() > before) {
                        break;
                    }
                }
                break;
            }
        }
    }

    /** Whether a name of one word is no part of another name: "width" in "joint width". */
    private boolean isFree(Said said, int index) {
        String word = index == 0 ? "" : said.at(index - 1).plain();
        return index == 0 || said.at(index - 1).stop() || BEFORE_NAME.contains(word) || own.contains(word) || Stretches.isFigure(word)
            || index > 1 && UnitSpelling.isUnit(said.text().substring(said.at(index - 1).from(), said.at(index - 1).to()));
    }

    private void behind(Property property, Said said, int from, int nameEnd, List<Candidate> candidates) {
        int word = nameEnd;
        int cited = 0;
        while (word < said.size() && word - nameEnd < Stretches.MOST_BETWEEN && !Stretches.isFigure(said.at(word).plain()) && Stretches.LINKS.contains(said.at(word)
            .plain())) {
            word++;
        }
        if (word >= said.size() || !Stretches.isFigure(said.at(word).plain()) || cited > FAR_BETWEEN) {
            return;
        }
        int end = stretches.end(property, said, word);
        if (end > 0) {
            candidates.add(new Candidate(property, said.between(from, nameEnd), Stretches.start(said, word, end), end, BEHIND, 10 * (nameEnd - from)
                + 5));
        }
    }

    /** "98 % drainage efficiency", "2 in. side laps". */
    private void before(Property property, Said said, int from, int nameEnd, List<Candidate> candidates) {
        for (int i = Math.max(0, from - Stretches.LONGEST_AMOUNT); i < from; i++) {
            if (Stretches.isFigure(said.at(i).plain()) && (i == 0 || !Stretches.isFigure(said.at(i - 1).plain()))) {
                int end = stretches.end(property, said, i);
                boolean unit = property.type().unit().filter(one -> !one.symbol().isEmpty()).isPresent();
                if (end == from && !said.at(end - 1).stop() && unit) {
                    candidates.add(new Candidate(property, said.between(from, nameEnd), Stretches.start(said, i, end), end, BEFORE,
                        10 * (nameEnd - from)));
                    return;
                }
            }
        }
    }
}

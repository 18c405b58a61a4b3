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
    private static final int LONGEST_NAME = 6;
    private static final int LONGEST_AMOUNT = 10;
    private static final int MOST_BETWEEN = 7;
    private static final int FAR_BETWEEN = 2;
    /** Words that may stand between a name and its amount, or before a number. */
    private static final Set<String> LINKS = Set.of("of", "is", "are", "was", "were", "be", "been", "a", "an", "the", "to", "at", "about",
        "by",
        "only", "just", "must", "shall", "should", "will", "may", "can", "has", "have", "with", "measure", "measured", "average",
            "averaged",
        "equal", "typically", "nominally", "nominal", "approximately", "approx", "around", "roughly", "overall", "total", "tested", "test",
        "result", "value", "rated", "least", "minimum", "most", "maximum", "less", "more", "not", "no", "than", "exceed", "exceeding",
        "greater", "over", "above", "up", "within", "run", "typical", "come", "reach", "from", "between");
    private static final Set<String> SENSES = Set.of("at", "least", "minimum", "maximum", "most", "not", "no", "less", "more", "than",
        "exceed",
        "exceeding", "up", "over", "above", "within", "greater");
    private static final Set<String> COMPARATIVES = Set.of("thicker", "thinner", "wider", "longer", "shorter", "heavier", "higher", "lower",
        "fewer", "later", "deeper", "farther", "further", "closer", "nearer", "narrower", "smaller", "larger");
    private static final Set<String> BEFORE_NAME = Set.of("the", "a", "an", "its", "their", "this", "nominal", "average", "minimum",
        "maximum",
        "total", "overall", "typical", "with", "and", "of", "has", "actual", "mean", "all", "is", "by", "in", "at", "for", "approximate");
    /** "Not less than 3 inches, vertical laps 6 inches": the sense goes on. */
    private static final Pattern LEAST = Pattern.compile("(?i)\\b(?:not less than|at least|a minimum of)\\b.*\\d.*(?:,|\\band\\b)");
    /** "2 inches, and vertical laps are 6 inches as a minimum": the sense behind holds for both. */
    private static final Pattern BEHIND_ALL = Pattern.compile("(?is)^[^.;]{0,70}?\\b(?:as a minimum|at the least|minimum)\\b.*");
    /** "6 in. on center or closer", "3/4 in. thick, at least, between …": the sense right behind an amount. */
    private static final Pattern SENSE_BEHIND = Pattern.compile("(?is)^[\"\\s.]*(?:\\([^)]*\\)\\s*)?(?:on cent(?:er|re)s?|o\\.?\\s?c\\.?"
        + "|thick|wide|apart)?\\s*(?:,\\s*)?(?:(or (?:closer|less|fewer|nearer)|max(?:imum|\\.)|at (?:the )?most)|(or more"
        + "|at (?:the )?least(?=\\s*[,.]|$)))(?!\\w).*");
    private static final Pattern COMPLIES = Pattern.compile("(?is).*\\b(?:compl(?:y|ies)|conforms?|meets?|tested|determined"
        + "|measured)\\b.*");
    /** "60 ft² per bag, 1/2 in. joint" says what a bag is enough for. */
    private static final Pattern PACKED = Pattern.compile("(?i)\\b(?:per|a|each) (?:\\d+[- ](?:lb|gal|oz)\\.? )?(?:bag|pail"
        + "|gallon|carton|cartridge|sausage|box|bundle|pallet)\\b");
    /** A data sheet that tells what the product's report covers. */
    private static final Pattern REPORT = Pattern.compile("(?i)\\b(?:conditions|limits|terms) of (?:the|its) report\\b"
        + "|\\bevaluation report\\b");
    private static final Pattern NEGATED = Pattern.compile("(?i).*\\b(?:not|no|never|nor)\\b.*");
    private static final Pattern FIGURE = Pattern.compile("[-+−±–]?[.\\d].*");

    private final Component component;
    private final Labels labels;
    private final Reading reading;
    private final Citations citations;
    private final Taken taken;
    private final Naming naming;
    private boolean report;
    private final Map<Property, List<Turn>> turns = new HashMap<>();
    private final Set<String> own = new HashSet<>();
    /** Where amounts of a property end that start at the words of the sentence at hand. */
    private final Map<Property, int[]> ends = new HashMap<>();

    Mentions(Component component, Vocabulary vocabulary, Labels labels, Reading reading, Citations citations, Taken taken,
            Naming naming) {
        this.naming = naming;
        this.component = component;
        this.labels = labels;
        this.reading = reading;
        this.citations = citations;
        this.taken = taken;
        for (Property property : component.properties()) {
            List<Turn> said = vocabulary.turns(component.id() + "." + property.name()).stream().filter(Turn::hasAmount).toList();
            if (isAmount(property) && !said.isEmpty()) {
                turns.put(property, said);
            }
        }
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

    private void read(Sentence whole, Predicate<Property> asked) {
        Cell sentence = whole.cell();
        Said said = whole.said();
        ends.clear();
        boolean figures = false;
        for (int i = 0; i < said.size(); i++) {
            figures |= isFigure(said.at(i).plain());
        }
        if (said.size() < 2 || !figures || isPacked(said.text())) {
            return;
        }
        List<Candidate> candidates = new ArrayList<>();
        boolean covers = report || REPORT.matcher(whole.before() + said.text()).find();
        turns(said, covers, candidates);
        names(said, candidates);
        candidates.removeIf(one -> !asked.test(one.property));
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
            int end = taken.models().size() > 1 && isFigure(said.at(i).plain()) ? end(property, said, i) : -1;
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

    private boolean take(Candidate one, Said said, Sentence whole) {
        Cell sentence = whole.cell();
        List<Citation> cited = citations.in(sentence.text());
        List<Citation> methods = own(one.property, cited);
        if (cited.isEmpty() && COMPLIES.matcher(whole.before()).matches()) {
            // "The units comply with ASTM C1670. Their compressive strength is 2,100 psi."
            List<Citation> before = citations.in(whole.before());
            methods = one.property.method().isNone() && before.size() == 1 ? before : own(one.property, before);
        }
        Cell place = sentence.part(said.at(one.from).from(), said.to(one.from, one.end));
        String asked = one.property.method().standard();
        String part = asked.isEmpty() ? "" : citations.part(asked, said.text());
        if (!part.equals(asked) && !one.property.method().part().isEmpty() && !part.endsWith(one.property.method().part())) {
            // "11 perms by the wet cup method" is no answer where the other cup is asked for
            return false;
        }
        boolean least = one.property.compare() == Compare.AT_LEAST && one.property.type().unit().orElseThrow()
            .dimension() == Dimension.LENGTH
            && LEAST.matcher(said.text().substring(0, said.at(one.from).from())).find();
        boolean behind = one.property.compare() == Compare.AT_LEAST && one.property.type().unit().orElseThrow()
            .dimension() == Dimension.LENGTH && BEHIND_ALL.matcher(said.text().substring(said.to(one.from, one.end))).matches();
        // "must not be over 15 psf"
        String words = said.between(one.from, one.end).replaceFirst("(?i)^not be (?=over|above|more|greater|less|under)", "not ");
        if (one.property.type().unit().orElseThrow().dimension() == Dimension.TIME && NEGATED.matcher(said.text().substring(0, said.at(
            one.from).from())).matches()) {
            // "don't leave it uncovered for more than 120 days"
            words = words.replaceFirst("(?i)^(?:more|longer|greater) than\\s+|^(?:over|above|beyond)\\s+", "");
        }
        Optional<Compare> sense = least || behind ? Optional.of(Compare.AT_LEAST) : senseBehind(one.property, said.text().substring(said.to(
            one.from, one.end)));
        return taken.quietly(new Label(List.of(one.property), 1, "", sense, List.of()), one.written, place.named(words), Around.of(methods,
            one.share));
    }

    private static Optional<Compare> senseBehind(Property property, String behind) {
        Matcher sense = SENSE_BEHIND.matcher(behind);
        Compare said = !sense.matches() ? null : sense.group(1) == null ? Compare.AT_LEAST : Compare.AT_MOST;
        return Optional.ofNullable(said).filter(one -> one == property.compare());
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
                    Place place = turn.at(said, i, at -> end(property, said, at));
                    if (place != null && !(place.from() == place.amount() && isAnothers(said, place.from()))) {
                        int end = Math.max(place.amountEnd(), end(property, said, place.amount()));
                        candidates.add(new Candidate(property, property.label(), start(said, place.amount(), end), end, TURN,
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

    /** As {@link #isAnothers(Said, int)}, of an amount at a place of the text. */
    boolean isAnothersAt(Said said, int place) {
        for (int i = 0; i < said.size(); i++) {
            if (said.at(i).from() >= place) {
                return isAnothers(said, i);
            }
        }
        return false;
    }

    /** Whether the sheet is a report, which says of products what it covers: only there limits of the report are looked for. */
    void report(boolean is) {
        report = is;
    }

    /** "A scratch coat 1/2 inch thick" says nothing of the units on it: the name of another component right before an amount. */
    private boolean isAnothers(Said said, int amount) {
        int end = amount;
        while (end > 0 && !said.at(end - 1).stop() && LINKS.contains(said.at(end - 1).plain())) {
            end--;
        }
        return end > 0 && !said.at(end - 1).stop() && naming.before(said, end).filter(named -> !named.contains(component)).isPresent();
    }

    private void names(Said said, List<Candidate> candidates) {
        for (int i = 0; i < said.size(); i++) {
            for (int end = Math.min(said.size(), i + LONGEST_NAME); end > i; end--) {
                String name = said.plain(i, end);
                List<Property> properties = labels.named(name).stream().filter(Mentions::isAmount).toList();
                if (properties.isEmpty() || end == i + 1 && !isFree(said, i)) {
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
        return index == 0 || said.at(index - 1).stop() || BEFORE_NAME.contains(word) || own.contains(word) || isFigure(word)
            || index > 1 && UnitSpelling.isUnit(said.text().substring(said.at(index - 1).from(), said.at(index - 1).to()));
    }

    private void behind(Property property, Said said, int from, int nameEnd, List<Candidate> candidates) {
        int word = nameEnd;
        int cited = 0;
        while (word < said.size() && word - nameEnd < MOST_BETWEEN && !isFigure(said.at(word).plain()) && LINKS.contains(said.at(word)
            .plain())) {
            word++;
        }
        if (word >= said.size() || !isFigure(said.at(word).plain()) || cited > FAR_BETWEEN) {
            return;
        }
        int end = end(property, said, word);
        if (end > 0) {
            candidates.add(new Candidate(property, said.between(from, nameEnd), start(said, word, end), end, BEHIND, 10 * (nameEnd - from)
                + 5));
        }
    }

    /** "98 % drainage efficiency", "2 in. side laps". */
    private void before(Property property, Said said, int from, int nameEnd, List<Candidate> candidates) {
        for (int i = Math.max(0, from - LONGEST_AMOUNT); i < from; i++) {
            if (isFigure(said.at(i).plain()) && (i == 0 || !isFigure(said.at(i - 1).plain()))) {
                int end = end(property, said, i);
                boolean unit = property.type().unit().filter(one -> !one.symbol().isEmpty()).isPresent();
                if (end == from && !said.at(end - 1).stop() && unit) {
                    candidates.add(new Candidate(property, said.between(from, nameEnd), start(said, i, end), end, BEFORE,
                        10 * (nameEnd - from)));
                    return;
                }
            }
        }
    }

    static boolean isFigure(String plain) {
        return FIGURE.matcher(plain).matches() || Figures.isNumber(plain);
    }

    /** The first of the words before a number that say its sense. */
    private static int start(Said said, int from, int end) {
        int start = from;
        while (start < end && !isFigure(said.at(start).plain())) {
            start++;
        }
        int sense = start;
        while (start > 0 && !said.at(start - 1).stop() && LINKS.contains(said.at(start - 1).plain())) {
            start--;
            // "turned up 4 in." is no limit, as "up to 4 in." is
            boolean one = SENSES.contains(said.at(start).plain()) && !Set.of("at", "up").contains(said.at(start).plain());
            sense = one || said.plain(start, start + 2).equals("up to") || said.plain(start, start + 2)
                .equals("at least")
                || said.plain(start, start + 2).equals("at most") ? start : sense;
        }
        return said.at(sense).plain().equals("than") ? comparative(said, sense) : sense;
    }

    /** "No thicker than 1/2 in.": where the words before "than" begin; behind it where they say no limit. */
    private static int comparative(Said said, int than) {
        // "no farther apart than 6 in."
        int word = than > 2 && said.at(than - 1).plain().equals("apart") ? than - 2 : than - 1;
        boolean denied = word > 0 && COMPARATIVES.contains(said.at(word).plain()) && Set.of("no", "not").contains(said.at(word - 1)
            .plain());
        return denied ? word - 1 : than + 1;
    }

    /** The index behind the amount of a property that starts at a word, or after a few words that change nothing; -1 for none. */
    private int end(Property property, Said said, int from) {
        int[] known = ends.computeIfAbsent(property, fresh -> new int[said.size()]);
        if (known[from] == 0) {
            known[from] = found(property, said, from);
        }
        return known[from];
    }

    private int found(Property property, Said said, int from) {
        int number = from;
        while (number < said.size() && number - from < MOST_BETWEEN && LINKS.contains(said.at(number).plain()) && !isFigure(said.at(number)
            .plain())) {
            number++;
        }
        if (number >= said.size() || !isFigure(said.at(number).plain())) {
            return -1;
        }
        int found = -1;
        boolean range = property.type().kind() == Kind.RANGE;
        for (int end = number + 1; end <= said.size() && end <= number + LONGEST_AMOUNT; end++) {
            if (found > 0 && Set.of("at", "after", "when").contains(said.at(end - 1).plain())) {
                // "3 in. at sides and 6 in. at ends"
                break;
            }
            boolean read = reading.read(property, said.between(number, end), "").filter(value -> !range || !isSingle(value)).isPresent();
            if (!read && found > 0 && end - found > 3) {
                break;
            }
            boolean to = found > 0 && Set.of("to", "up", "–", "—", "through").contains(said.at(found).plain());
            if (read && (found < 0 || end == found + 1 || to)) {
                found = end;
            } else if (found > 0 && !to) {
                break;
            }
            if (said.at(end - 1).stop() && !said.at(end - 1).plain().isEmpty() && said.text().charAt(said.at(end - 1).to() - 1) != ')'
                && !said.text().startsWith("–", said.at(end - 1).to()) && found > 0) {
                break;
            }
        }
        if (found > 0 && found < said.size() && Set.of("per", "x", "×").contains(said.at(found).plain()) && !isOfAFoot(property, said,
            found)) {
            return -1;
        }
        if (found > 0 && found < said.size() && said.text().charAt(Math.max(0, said.at(found).from() - 1)) == '(') {
            // "1/2 in. (13 mm) thick"
            for (int end = found + 1; end <= Math.min(said.size(), found + LONGEST_AMOUNT); end++) {
                boolean closes = said.to(end) < said.text().length() && said.text().charAt(said.to(end)) == ')';
                if (closes) {
                    String whole = said.text().substring(said.at(number).from(), said.to(end) + 1);
                    found = reading.read(property, whole, "").isPresent() ? end : found;
                    break;
                }
            }
        }
        for (int end = found + 2; found > 0 && end <= Math.min(said.size(), found + 3); end++) {
            // "3/4 in. or more"
            if (reading.read(property, said.between(number, end), "").filter(read -> read.compare().isPresent()).isPresent()) {
                return end;
            }
        }
        return found;
    }

    /** "1/4 in. per foot" of a property that is told so. */
    private boolean isOfAFoot(Property property, Said said, int per) {
        return per + 1 < said.size() && Set.of("foot", "ft").contains(said.at(per + 1).plain())
            && turns.getOrDefault(property, List.of()).stream().anyMatch(turn -> turn.parts().contains("per"));
    }

    private static boolean isSingle(Reading.Read read) {
        return read.value() instanceof reglet.model.Range range && range.low().equals(range.high());
    }
}

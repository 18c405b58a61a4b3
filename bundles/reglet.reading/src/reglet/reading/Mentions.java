package reglet.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.Citations.Citation;
import reglet.reading.Labels.Label;
import reglet.reading.Taken.Around;
import reglet.reading.Turn.Place;

/** Finds amounts in running text: behind or before the name of a property, or where a turn of phrase of the pack says one. */
final class Mentions {
    private static final double TURN = 0.82;
    private static final double BEHIND = 0.78;
    private static final double BEFORE = 0.74;
    private static final int LONGEST_NAME = 6;
    private static final int LONGEST_AMOUNT = 8;
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
    private static final Set<String> BEFORE_NAME = Set.of("the", "a", "an", "its", "their", "this", "nominal", "average", "minimum",
        "maximum",
        "total", "overall", "typical", "with", "and", "of", "has", "actual", "mean", "all", "is", "by", "in", "at", "for", "approximate");
    /** "Not less than 3 inches, vertical laps 6 inches": the sense goes on. */
    private static final Pattern LEAST = Pattern.compile("(?i)\\b(?:not less than|at least|a minimum of)\\b.*\\d.*(?:,|\\band\\b)");
    private static final Pattern FIGURE = Pattern.compile("[-+−±–]?[.\\d].*");

    private final Component component;
    private final Labels labels;
    private final Reading reading;
    private final Citations citations;
    private final Taken taken;
    private final Map<Property, List<Turn>> turns = new HashMap<>();
    private final Set<String> own = new HashSet<>();
    /** Where amounts of a property end that start at the words of the sentence at hand. */
    private final Map<Property, int[]> ends = new HashMap<>();

    Mentions(Component component, Vocabulary vocabulary, Labels labels, Reading reading, Citations citations, Taken taken) {
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

    void read(Cell sentence, Said said) {
        ends.clear();
        boolean figures = false;
        for (int i = 0; i < said.size(); i++) {
            figures |= isFigure(said.at(i).plain());
        }
        if (said.size() < 2 || !figures) {
            return;
        }
        List<Candidate> candidates = new ArrayList<>();
        turns(said, candidates);
        names(said, candidates);
        candidates.sort(Comparator.comparing((Candidate one) -> -one.strength).thenComparing(one -> -one.share));
        Set<Property> done = new HashSet<>();
        boolean[] used = new boolean[said.size()];
        for (Candidate one : candidates) {
            boolean free = !done.contains(one.property);
            for (int i = one.from; i < one.end; i++) {
                free &= !used[i];
            }
            if (free && take(one, said, sentence)) {
                done.add(one.property);
                for (int i = one.from; i < one.end; i++) {
                    used[i] = true;
                }
            }
        }
    }

    private boolean take(Candidate one, Said said, Cell sentence) {
        List<Citation> methods = own(one.property, citations.in(sentence.text()));
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
        return taken.quietly(new Label(List.of(one.property), 1, "", least ? Optional.of(Compare.AT_LEAST) : Optional.empty(), List.of()),
            one.written, place.named(said.between(
            one.from, one.end)), Around.of(methods, one.share));
    }

    /** A sentence cites standards for several things: of those the one that the pack asks for shows the amount. */
    static List<Citation> own(Property property, List<Citation> cited) {
        String asked = property.method().standard();
        return cited.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).toList();
    }

    private void turns(Said said, List<Candidate> candidates) {
        turns.forEach((property, list) -> {
            for (Turn turn : list) {
                for (int i = 0; i < said.size(); i++) {
                    Place place = turn.at(said, i, at -> end(property, said, at));
                    if (place != null) {
                        candidates.add(new Candidate(property, property.label(), start(said, place.amount(), place.amountEnd()),
                            place.amountEnd(),
                            TURN, 10 + 10 * turn.fixed()));
                        break;
                    }
                }
            }
        });
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

    private static boolean isFigure(String plain) {
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
            sense = SENSES.contains(said.at(start).plain()) && !said.at(start).plain().equals("at") || said.plain(start, start + 2)
                .equals("at least")
                || said.plain(start, start + 2).equals("at most") ? start : sense;
        }
        return sense;
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
            boolean read = reading.read(property, said.between(number, end), "").filter(value -> !range || !isSingle(value)).isPresent();
            if (!read && found > 0 && end - found > 3) {
                break;
            }
            boolean to = found > 0 && Set.of("to", "–", "—", "through").contains(said.at(found).plain());
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
        if (found > 0 && found < said.size() && Set.of("per", "x", "×").contains(said.at(found).plain())) {
            return -1;
        }
        return found;
    }

    private static boolean isSingle(Reading.Read read) {
        return read.value() instanceof reglet.model.Range range && range.low().equals(range.high());
    }
}

package reglet.reading.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.words.Labels;
import reglet.reading.words.Plain;
import reglet.reading.words.Said;
import reglet.reading.words.Stretches;
import reglet.reading.words.Turn;
import reglet.reading.words.Turn.Place;
import reglet.reading.words.UnitSpelling;
import reglet.reading.words.Vocabulary;

/** Finds in a sentence the amounts that may be one of a property: beside its name, or where a turn of phrase says one. */
final class Candidates {
    private static final double TURN = 0.82;
    private static final double BEHIND = 0.78;
    private static final double BEFORE = 0.74;
    private static final int LONGEST_NAME = 6;
    private static final int FAR_BETWEEN = 2;
    private static final Set<String> BEFORE_NAME = Set.of("the", "a", "an", "its", "their", "this", "nominal", "average", "minimum",
        "maximum",
        "total", "overall", "typical", "with", "and", "of", "has", "actual", "mean", "all", "is", "by", "in", "at", "for", "approximate");

    private final Labels labels;
    private final Map<Property, List<Turn>> turns;
    private final Stretches stretches;
    private final Others others;
    private final Set<String> own = new HashSet<>();

    Candidates(Component component, Vocabulary vocabulary, Labels labels, Map<Property, List<Turn>> turns, Stretches stretches,
            Others others) {
        this.labels = labels;
        this.turns = turns;
        this.stretches = stretches;
        this.others = others;
        own.addAll(List.of(Plain.of(component.title()).split(" ")));
        vocabulary.names(component.id()).forEach(name -> own.addAll(List.of(Plain.of(name).split(" "))));
    }

    /** The turns of phrase that say an amount of a component's properties. */
    static Map<Property, List<Turn>> turns(Component component, Vocabulary vocabulary) {
        Map<Property, List<Turn>> turns = new LinkedHashMap<>();
        for (Property property : component.properties()) {
            List<Turn> said = vocabulary.turns(component.id() + "." + property.name()).stream().filter(Turn::hasAmount).toList();
            if (isAmount(property) && !said.isEmpty()) {
                turns.put(property, said);
            }
        }
        return turns;
    }

    /** What a thing does that lies over another: "paper laps over the leg by 2 in." is of the paper. */
    private static final Set<String> LAPS = Set.of("lap", "overlap");

    /** An amount that may be one of a property: the words of the amount, and how much speaks for it. */
    record Candidate(Property property, String written, int from, int end, double share, int strength) {
    }

    /**
     * All of a sentence, those of turns of phrase first.
     *
     * @param covers whether the sentence tells what the product's report covers
     */
    List<Candidate> in(Said said, boolean covers) {
        List<Candidate> candidates = new ArrayList<>();
        said(said, covers, candidates);
        names(said, candidates);
        return candidates;
    }

    private void said(Said said, boolean covers, List<Candidate> candidates) {
        turns.forEach((property, list) -> {
            for (Turn turn : !covers && property.name().startsWith("report_") ? List.<Turn>of() : list) {
                for (int i = 0; i < said.size(); i++) {
                    Place place = turn.at(said, i, at -> stretches.end(property, said, at));
                    if (place != null && !(place.from() == place.amount() ? others.isAnothers(said, place.from())
                        : LAPS.contains(said.at(place.from()).plain()) && others.isOfAnother(said, place.from()))
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

    private void names(Said said, List<Candidate> candidates) {
        for (int i = 0; i < said.size(); i++) {
            for (int end = Math.min(said.size(), i + LONGEST_NAME); end > i; end--) {
                String name = said.plain(i, end);
                List<Property> properties = labels.named(name).stream().filter(Candidates::isAmount).toList();
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
        while (word < said.size() && word - nameEnd < Stretches.MOST_BETWEEN && !Stretches.isFigure(said.at(word).plain())
            && Stretches.LINKS.contains(said.at(word)
            .plain())) {
            word++;
        }
        if (word >= said.size() || !Stretches.isFigure(said.at(word).plain()) || cited > FAR_BETWEEN) {
            return;
        }
        int end = stretches.end(property, said, word);
        if (end > 0) {
            candidates.add(new Candidate(property, said.between(from, nameEnd), Stretches.start(said, word, end), end, BEHIND,
                10 * (nameEnd - from)
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

    private static boolean isAmount(Property property) {
        return property.type().kind() == Kind.QUANTITY || property.type().kind() == Kind.RANGE;
    }
}

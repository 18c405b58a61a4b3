package reglet.reading.text;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.Value;
import reglet.reading.page.Layout;
import reglet.reading.page.Sentence;
import reglet.reading.value.Bounds;
import reglet.reading.value.Taken;
import reglet.reading.words.Labels;
import reglet.reading.words.Naming;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;
import reglet.reading.words.Said;
import reglet.reading.words.Stretches;

/**
 * Finds in running text what neither a name beside an amount nor a turn of phrase told: an amount whose clause holds words that speak for
 * one property, and for none other of the pack. The rarest kind of finding, and the least sure: it only fills what nothing else filled.
 */
public final class Prose {
    private static final double LEAST = 2.6;
    private static final double AHEAD = 1.5;
    private static final int NEAR = 3;
    private static final int FAR = 14;
    private static final double WELL = 0.74;
    private static final double BARELY = 0.66;
    private static final double GOOD = 4.5;
    private static final int RUNNING = 6;
    private static final Set<String> SMALL = Set.of("the", "a", "an", "is", "are", "was", "be", "must", "shall", "should", "may", "can",
        "will", "with", "by", "for", "at", "of", "to", "in", "on", "it", "its", "that", "which", "do", "not", "and", "or", "than");
    private static final double STOPPED = 0.85;
    private static final double PARTED = 0.5;
    /** "4 in. above soil", "1/4 x 1/4 in. trowel", "12 in. from the edge": where something stands, or one of two sides of a thing. */
    private static final Pattern OF_PLACES = Pattern.compile("(?is)[\\s.,]*(?:\\([^)]*\\)\\s*)?(?:(?:x|×|by)"
        + "\\s*[\\d½¼¾⅛⅜⅝⅞].*|of (?:its|the|their|each|either) (?:\\w+ )?(?:edges?|ends?|corners?|rim)\\b.*|(?:above|over|off|from) "
            + "(?:\\w+ )?"
        + "(?:soil|earth|grade|ground|paving|paved|pavement|walks?|mulch)\\b.*|(?:below|beneath) (?:the |any )?(?:\\w+ ){0,2}"
        + "(?:joint|sill|plate|foundation|footing|slab)\\b.*)");
    /** "Never less than 1/4 in. and not more than 1/2 in.". */
    private static final Pattern TWO_ENDS = Pattern.compile("(?is).*\\d.*\\b(?:and|but|nor)\\s+(?:not?|never|more|at (?:least|most))\\b.*\\d.*");
    private static final Pattern SIDE = Pattern.compile("(?is).*\\d\\S*\\s*(?:in\\.?|ft\\.?|mm)?\\s*(?:x|×|by)\\s*");

    private final Component component;
    private final Cues cues;
    private final Bounds bounds;
    private final Naming naming;
    private final Reading reading;
    private final Mentions mentions;
    private final Taken taken;

    public Prose(Component component, Cues cues, Bounds bounds, Naming naming, Reading reading, Mentions mentions, Taken taken) {
        this.component = component;
        this.cues = cues;
        this.bounds = bounds;
        this.naming = naming;
        this.reading = reading;
        this.mentions = mentions;
        this.taken = taken;
    }

    /** An amount in a sentence and how much speaks for its being one of a property. */
    private record Leaning(Layout layout, Sentence sentence, int from, int end, Value value, double score) {
    }

    public void read(List<Layout> layouts, boolean report) {
        for (Property property : component.properties()) {
            if (Cues.isAmount(property) && !property.name().startsWith("report_") && !taken.has(property)) {
                best(property, layouts, report).ifPresent(one -> {
                    taken.page(one.layout);
                    mentions.lean(property, one.sentence, one.from, one.end, one.score >= GOOD ? WELL : BARELY);
                });
            }
        }
    }

    /** The amount that most speaks for; none where another sentence says another one nearly as well. */
    private Optional<Leaning> best(Property property, List<Layout> layouts, boolean report) {
        Leaning best = null;
        double other = 0;
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                if (report && sentence.conditions() || taken.isOfAnother(layout, sentence.cell()) || Mentions.isPacked(sentence.said()
                    .text())) {
                    continue;
                }
                Leaning one = leaning(property, layout, sentence);
                if (one != null && (best == null || one.score > best.score)) {
                    other = best == null || best.value.equals(one.value) ? other : best.score;
                    best = one;
                } else if (one != null && !one.value.equals(best.value)) {
                    other = Math.max(other, one.score);
                }
            }
        }
        return best == null || best.score <= AHEAD * other ? Optional.empty() : Optional.of(best);
    }

    private Leaning leaning(Property property, Layout layout, Sentence sentence) {
        Said said = sentence.said();
        if (said.size() < RUNNING || !isSentence(said)) {
            return null;
        }
        boolean[] amounts = new boolean[said.size()];
        for (int i = 0; i < said.size(); i++) {
            amounts[i] = Stretches.isFigure(said.at(i).plain()) && mentions.end(property, said, i) > 0;
        }
        if ((property.label().contains(" and ") || Labels.isOfTheWork(property) && TWO_ENDS.matcher(said.text()).matches()) && differ(property, said, amounts)) {
            // sides and ends have no one lap, and "never less than 1/4 in. and not more than 1/2 in." is no one depth
            return null;
        }
        Leaning best = null;
        String path = component.id() + "." + property.name();
        for (int i = 0; i < said.size(); i++) {
            int end = amounts[i] ? mentions.end(property, said, i) : -1;
            Optional<Read> read = end < 0 || mentions.isTaken(sentence, i) ? Optional.empty() : reading.read(property, said.between(i, end),
                "");
            if (read.isEmpty() || isOfPlaces(said, i, end) || !bounds.holds(path, read.get().value())) {
                continue;
            }
            Map<String, Double> words = around(said, i, end, amounts);
            double score = cues.speaksFor(path, words);
            if (score >= LEAST && cues.isClear(path, words) && cues.areSeveral(path, words.keySet()) && (best == null || score > best.score)
                && score > AHEAD * cues.speaksAgainst(path, words, read.get().value(), named(said))) {
                best = new Leaning(layout, sentence, i, end, read.get().value(), score);
            }
            i = end - 1;
        }
        return best;
    }

    /** The words round an amount, as far as the next amounts: the nearer, the more they count; those of its own clause count most. */
    private static Map<String, Double> around(Said said, int from, int end, boolean[] amounts) {
        Map<String, Double> words = new HashMap<>();
        double clause = 1;
        for (int i = from - 1; i >= Math.max(0, from - FAR); i--) {
            clause = said.at(i).stop() ? clause * STOPPED : clause;
            clause = amounts[i] ? clause * PARTED : clause;
            words.merge(said.at(i).plain(), clause * weight(from - i), Math::max);
        }
        clause = end > 0 && said.at(end - 1).stop() ? STOPPED : 1;
        for (int i = end; i < Math.min(said.size(), end + FAR); i++) {
            if (Stretches.isFigure(said.at(i).plain()) && said.at(i).plain().matches(".*\\d.*")) {
                clause *= 0.5;
            }
            words.merge(said.at(i).plain(), clause * weight(i - end + 1), Math::max);
            clause = said.at(i).stop() ? clause * STOPPED : clause;
        }
        return words;
    }

    private boolean differ(Property property, Said said, boolean[] amounts) {
        Set<String> values = new HashSet<>();
        for (int i = 0; i < amounts.length; i++) {
            if (amounts[i]) {
                reading.read(property, said.between(i, mentions.end(property, said, i)), "")
                    .ifPresent(read -> values.add(read.value().text()));
            }
        }
        return values.size() > 1;
    }

    /** Whether words are running text, and no row of a table or heading. */
    private static boolean isSentence(Said said) {
        int small = 0;
        for (int i = 0; i < said.size(); i++) {
            small += SMALL.contains(said.at(i).plain()) ? 1 : 0;
        }
        return small > 0;
    }

    private static double weight(int words) {
        return words <= NEAR ? 1 : words <= 2 * NEAR + NEAR ? 0.8 : 0.6;
    }

    /** Whether the words behind an amount say where something stands. */
    static boolean isOfPlaces(String behind) {
        return OF_PLACES.matcher(behind).matches();
    }

    private static boolean isOfPlaces(Said said, int from, int end) {
        return OF_PLACES.matcher(said.text().substring(said.to(from, end))).matches()
            || SIDE.matcher(said.text().substring(0, said.at(from).from())).matches();
    }

    private Set<Component> named(Said said) {
        Set<Component> named = new HashSet<>();
        for (int end = 1; end <= said.size(); end++) {
            naming.before(said, end).ifPresent(named::addAll);
        }
        return named;
    }
}

package reglet.reading.text;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Value;
import reglet.reading.value.Bounds;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/**
 * Which words speak for which amount. The words of a property's names and turns of phrase are its cues: the fewer properties share one,
 * and the more of its names hold it, the more it says. All components of the pack are weighed, so that a sentence about the lath's
 * fasteners is not taken for one about the lath.
 */
public final class Cues {
    /** Words that stand in names of many kinds, and say nothing of which. */
    private static final Set<String> EMPTY = Set.of("in", "on", "and", "or", "for", "from", "inch", "the", "of", "to", "at", "by", "per",
        "a",
        "an", "it", "is", "are", "be", "x", "foot", "ft", "mil", "mm", "day", "hour", "c", "o", "center", "i", "ii", "asked", "required",
        "recommended", "all",
        "each", "when", "where", "that", "which", "as", "its", "not", "no", "than", "least", "less", "most", "more", "d", "e", "f",
            "month", "test");

    private final Bounds bounds;
    private final Map<String, Entry> entries = new HashMap<>();
    private final Map<String, Set<String>> shared = new HashMap<>();

    /** A property with the share of its names that hold a word. */
    private record Entry(Component component, Property property, Map<String, Double> shares) {
    }

    public Cues(Pack pack, Vocabulary vocabulary, Bounds bounds) {
        this.bounds = bounds;
        for (Component component : pack.components()) {
            component.properties().stream().filter(Cues::isAmount).forEach(property -> {
                String path = component.id() + "." + property.name();
                Map<String, Integer> counts = new HashMap<>();
                count(List.of(Plain.of(property.label()).split(" ")), counts);
                vocabulary.names(path).forEach(name -> count(List.of(Plain.of(name).split(" ")), counts));
                vocabulary.turns(path).forEach(turn -> count(turn.parts().stream().flatMap(part -> List.of(part.split("\\|")).stream())
                    .toList(), counts));
                entries.put(path, new Entry(component, property, counts.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                    entry -> entry.getValue() / (entry.getValue() + 1.0)))));
                counts.keySet().forEach(word -> shared.computeIfAbsent(word, fresh -> new HashSet<>()).add(property.label() + property
                    .name()));
            });
        }
    }

    private static void count(List<String> words, Map<String, Integer> counts) {
        new HashSet<>(words).stream().filter(word -> word.length() > 1 && !EMPTY.contains(word) && !word.matches(".*[\\d{*].*"))
            .forEach(word -> counts.merge(word, 1, Integer::sum));
    }

    /** Whether a property is an amount with a unit, or two of them. */
    static boolean isAmount(Property property) {
        return (property.type().kind() == Kind.QUANTITY || property.type().kind() == Kind.RANGE) && property.type().unit()
            .filter(unit -> !unit.symbol().isEmpty()).isPresent();
    }

    /** How much words, each with a weight by how near it stands, speak for a property. */
    double speaksFor(String path, Map<String, Double> words) {
        Entry entry = entries.get(path);
        double sum = 0;
        for (Map.Entry<String, Double> word : words.entrySet()) {
            double share = entry.shares.getOrDefault(word.getKey(), 0.0);
            sum += share == 0 ? 0 : share * word.getValue() * Math.log((entries.size() + 1.0) / shared.get(word.getKey()).size());
        }
        return sum;
    }

    /** Whether of the words that say something at least half stand in names of a property. */
    boolean areOf(String path, Set<String> words) {
        List<String> saying = words.stream().filter(word -> !EMPTY.contains(word) && !word.matches(".*\\d.*")).toList();
        return 2 * saying.stream().filter(entries.get(path).shares::containsKey).count() >= saying.size();
    }

    /** Whether at least two of the words speak for a property: one may say it of another thing. */
    boolean areSeveral(String path, Set<String> words) {
        return words.stream().filter(entries.get(path).shares::containsKey).count() > 1;
    }

    /** Whether one of the words stands in more than one name of a property: no chance likeness. */
    boolean isClear(String path, Map<String, Double> words) {
        return words.keySet().stream().anyMatch(word -> entries.get(path).shares.getOrDefault(word, 0.0) > 0.6);
    }

    /**
     * How much words speak for another amount than that of a property: one of the same dimension that may be as large.
     *
     * @param named the components that the words name
     */
    double speaksAgainst(String path, Map<String, Double> words, Value value, Set<Component> named) {
        Entry own = entries.get(path);
        Dimension dimension = own.property.type().unit().orElseThrow().dimension();
        double most = 0;
        for (Map.Entry<String, Entry> entry : entries.entrySet()) {
            Entry other = entry.getValue();
            boolean same = other.property.name().equals(own.property.name()) || other.property.label().equals(own.property.label());
            boolean foreign = other.component != own.component;
            // of what two components have alike, the sheet's own is meant
            boolean rival = !entry.getKey().equals(path) && !(foreign && same && !named.contains(other.component))
                && other.property.type().unit().orElseThrow().dimension() == dimension && bounds.holds(entry.getKey(), value);
            most = rival ? Math.max(most, speaksFor(entry.getKey(), words) + (foreign && named.contains(other.component) ? 1 : 0)) : most;
        }
        return most;
    }
}

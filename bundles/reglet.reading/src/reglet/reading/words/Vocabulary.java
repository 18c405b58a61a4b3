package reglet.reading.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

import reglet.model.Compare;
import reglet.model.Dimension;
import reglet.model.Pack;
import reglet.model.PropertyType;
import reglet.model.Synonym;
import reglet.reading.words.Reading.Read;

/**
 * The pack's synonyms, by what they stand for: names, which label a value or are one, and turns of phrase, by which running text says
 * it. In a turn {@code {}} stands for an amount and {@code *} for a few words; "…" begins one that says a word or a flag. A name that ends
 * in a colon is one beside a value alone: "depth:" says too little in running text.
 */
public final class Vocabulary {
    private final Map<String, List<String>> names = new HashMap<>();
    private final Map<String, List<String>> labels = new HashMap<>();
    private final Map<String, List<Turn>> turns = new HashMap<>();

    private final Set<String> words = new HashSet<>();
    /** Amounts that were read: components are tried one after the other on the same words. */
    private final Map<String, Optional<Read>> amounts = new ConcurrentHashMap<>();
    private final Map<String, Integer> dimensions = new ConcurrentHashMap<>();

    public Vocabulary(Pack pack) {
        pack.components().forEach(one -> one.properties().forEach(property -> note(property.label())));
        for (Synonym synonym : pack.synonyms()) {
            String key = key(synonym.property());
            for (String label : synonym.labels()) {
                if (isTurn(label)) {
                    turns.computeIfAbsent(key, fresh -> new ArrayList<>()).add(Turn.of(label));
                } else if (label.endsWith(":")) {
                    labels.computeIfAbsent(key, fresh -> new ArrayList<>()).add(label.substring(0, label.length() - 1));
                } else {
                    names.computeIfAbsent(key, fresh -> new ArrayList<>()).add(label);
                    note(label);
                }
            }
        }
    }

    /** Whether a text holds a word of a unit of a dimension; one without a unit of its own needs none. */
    boolean holds(Dimension dimension, String text) {
        return dimension == Dimension.COUNT || (dimensions.computeIfAbsent(text, UnitSpelling::dimensions) & 1 << dimension.ordinal()) != 0;
    }

    /**
     * An amount as it was read before, or as it is read now.
     *
     * @param side name of a property that is the longer of two sides, for which "4 x 6" is an amount; "" for others
     */
    Optional<Read> amount(PropertyType type, Compare compare, String side, String text, String unit, Supplier<Optional<Read>> fresh) {
        String key = side + type.kind().ordinal() + "." + type.unit().orElseThrow().dimension().ordinal() + "." + compare + "\n"
            + unit + "\n"
            + text;
        Optional<Read> kept = amounts.get(key);
        if (kept == null) {
            kept = fresh.get();
            amounts.put(key, kept);
        }
        return kept;
    }

    private void note(String label) {
        words.addAll(List.of(Plain.of(label).split(" ")));
    }

    private static String key(String path) {
        return path.toLowerCase(Locale.ROOT);
    }

    private static boolean isTurn(String label) {
        return label.startsWith("…") || label.contains("{}");
    }

    /** What a component, a property or a word of one is also called. */
    public List<String> names(String path) {
        return names.getOrDefault(key(path), List.of());
    }

    /** What labels a property beside its values, and isn't said of it elsewhere. */
    List<String> labels(String path) {
        return labels.getOrDefault(key(path), List.of());
    }

    public List<Turn> turns(String path) {
        return turns.getOrDefault(key(path), List.of());
    }

    /** Every word of every name in the pack. */
    Set<String> words() {
        return words;
    }
}

package reglet.reading.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Component;
import reglet.model.Pack;

/**
 * Tells which components some words name. Of names that lie in each other the longest counts, and before another name one only tells which
 * kind is meant: "stone veneer mortar" is a mortar, "butyl flashing" a flashing.
 */
public final class Naming {
    /** What a name says that is within a longer one. */
    private static final double SHORTER = 0.75;
    private final Map<String, Set<Component>> names = new HashMap<>();
    private int longest = 1;

    /** A name from a word of the text to another. */
    private record Hit(int from, int to, Set<Component> components) {
    }

    public Naming(Pack pack, Vocabulary vocabulary) {
        for (Component component : pack.components()) {
            name(component.title(), component);
            vocabulary.names(component.id()).forEach(name -> name(name, component));
        }
    }

    private void name(String name, Component component) {
        String plain = Plain.of(name);
        names.computeIfAbsent(plain, fresh -> new LinkedHashSet<>()).add(component);
        longest = Math.max(longest, plain.split(" ").length);
    }

    /** How many names of each component some stretches of words hold. */
    public Map<Component, Integer> in(List<String> stretches) {
        Map<Component, Integer> named = new HashMap<>();
        for (String stretch : stretches) {
            List<Hit> hits = hits(Plain.of(stretch).split(" "));
            for (int i = 0; i < hits.size(); i++) {
                boolean tellsWhich = i + 1 < hits.size() && hits.get(i + 1).from == hits.get(i).to
                    && hits.get(i + 1).components.stream().noneMatch(hits.get(i).components::contains);
                if (!tellsWhich) {
                    hits.get(i).components.forEach(component -> named.merge(component, 1, Integer::sum));
                }
            }
        }
        return named;
    }

    /**
     * The components that a title ends in a name of, and how much that says from 0 to 1: "Veneer setting mortar" is a mortar, and, by a
     * shorter name, less surely another one.
     */
    public Map<Component, Double> kinds(String title) {
        String[] words = Plain.of(title).split(" ");
        Map<Component, Double> kinds = new HashMap<>();
        for (int from = Math.max(0, words.length - longest); from < words.length; from++) {
            double share = kinds.isEmpty() ? 1 : SHORTER;
            named(String.join(" ", List.of(words).subList(from, words.length))).forEach(one -> kinds.putIfAbsent(one, share));
        }
        return kinds;
    }

    /** The components that some words in one spelling are a name of. */
    public Set<Component> named(String plain) {
        return names.getOrDefault(plain, Set.of());
    }

    /** The components whose name the words before a place are; empty where these are no name. */
    public Optional<Set<Component>> before(Said said, int end) {
        for (int from = Math.max(0, end - longest); from < end; from++) {
            Set<Component> components = names.get(said.plain(from, end));
            if (components != null) {
                return Optional.of(components);
            }
        }
        return Optional.empty();
    }

    private List<Hit> hits(String[] words) {
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < words.length; i++) {
            Hit best = longest(words, i);
            for (int within = i + 1; best != null && within < best.to; within++) {
                // "rubberized asphalt flashing" goes on in "flashing membrane", a name of the same
                Hit on = longest(words, within);
                best = on != null && on.to > best.to && on.components.stream().anyMatch(best.components::contains)
                    ? new Hit(i, on.to, on.components) : best;
            }
            if (best != null) {
                hits.add(best);
                i = best.to - 1;
            }
        }
        return hits;
    }

    /** The longest name that starts at a word; null for none. */
    private Hit longest(String[] words, int from) {
        StringBuilder name = new StringBuilder();
        Hit best = null;
        for (int end = from; end < Math.min(words.length, from + longest); end++) {
            name.append(end == from ? "" : " ").append(words[end]);
            Set<Component> components = names.get(name.toString());
            best = components == null ? best : new Hit(from, end + 1, components);
        }
        return best;
    }
}

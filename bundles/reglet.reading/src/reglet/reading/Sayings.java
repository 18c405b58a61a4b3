package reglet.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.Labels.Label;
import reglet.reading.Sentences.Sentence;
import reglet.reading.Taken.Around;
import reglet.reading.Turn.Place;

/** Finds what running text says in words alone, by the pack's turns of phrase: that a fabric keeps mortar out, what a thing is made of. */
final class Sayings {
    private static final double SURE = 0.8;
    private static final double LESS = 0.72;
    private static final Set<String> NOT = Set.of("not", "non", "without", "no", "never", "un", "nor", "unless", "if", "avoid", "optional");
    private static final int NEAR = 3;
    private static final Pattern EACH = Pattern.compile("(?is).*\\b(?:each|every|all)\\b.*");

    private final Component component;
    private final Citations citations;
    private final Taken taken;
    private final Map<Property, Map<String, List<Turn>>> turns = new HashMap<>();

    Sayings(Component component, Vocabulary vocabulary, Citations citations, Taken taken) {
        this.component = component;
        this.citations = citations;
        this.taken = taken;
        for (Property property : component.properties()) {
            Kind kind = property.type().kind();
            Map<String, List<Turn>> words = new HashMap<>();
            for (String word : kind == Kind.FLAG ? List.of("yes", "no") : property.type().words()) {
                List<Turn> said = vocabulary.turns(component.id() + "." + property.name() + "." + word);
                if (!said.isEmpty()) {
                    words.put(word, said);
                }
            }
            if (!words.isEmpty()) {
                turns.put(property, words);
            }
        }
    }

    private record Hit(String word, Sentence sentence, Layout layout, Place place, int fixed) {
    }

    void read(List<Layout> layouts) {
        for (Property property : component.properties()) {
            // of several models a word in passing may be said of one alone, unless it is said of each
            boolean several = property.type().kind() == Kind.FLAG && taken.models() > 1;
            if (turns.containsKey(property) && !taken.has(property)) {
                read(property, layouts, several);
            }
        }
    }

    private void read(Property property, List<Layout> layouts, boolean several) {
        List<Hit> hits = new ArrayList<>();
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                if (!sentence.conditions() && (!several || EACH.matcher(sentence.cell().text()).matches())) {
                    best(property, sentence, layout).ifPresent(hits::add);
                }
            }
        }
        if (hits.isEmpty()) {
            return;
        }
        Hit first = hits.stream().filter(hit -> !Mentions.own(property, citations.in(hit.sentence.cell().text())).isEmpty()).findFirst()
            .orElse(hits.get(0));
        boolean one = hits.stream().allMatch(hit -> hit.word.equals(first.word));
        if (!one && hits.stream().filter(hit -> hit.word.equals(first.word)).count() * 3 < hits.size() * 2) {
            return;
        }
        taken.page(first.layout);
        Cell cell = first.sentence.cell();
        Cell part = cell.part(first.sentence.said().at(first.place.from()).from(), first.sentence.said().to(first.place.from(),
            first.place.to()));
        taken.said(property, first.word, part, Around.of(Mentions.own(property, citations.in(cell.text())), one ? SURE : LESS));
    }

    /** The word that a sentence says by the longest turn; none where it says two of them. */
    private Optional<Hit> best(Property property, Sentence sentence, Layout layout) {
        Hit best = null;
        boolean two = false;
        for (Map.Entry<String, List<Turn>> word : turns.get(property).entrySet()) {
            for (Turn turn : word.getValue()) {
                for (int i = 0; i < sentence.said().size(); i++) {
                    Place place = turn.at(sentence.said(), i, at -> -1);
                    boolean says = place != null && !isDenied(sentence.said(), i, turn);
                    two = best != null && says && turn.fixed() == best.fixed && !best.word.equals(word.getKey()) || two && !(says
                        && turn.fixed() > best.fixed);
                    if (says && (best == null || turn.fixed() > best.fixed)) {
                        best = new Hit(word.getKey(), sentence, layout, place, turn.fixed());
                    }
                }
            }
        }
        return two ? Optional.empty() : Optional.ofNullable(best);
    }

    /** "Not self-furring", unless the turn says the "not" itself. */
    private static boolean isDenied(Said said, int start, Turn turn) {
        if (turn.parts().stream().anyMatch(NOT::contains)) {
            return false;
        }
        if (start > 0 && said.at(start - 1).plain().equals("or")) {
            // "wood or steel framing" leaves it open
            return true;
        }
        for (int i = Math.max(0, start - NEAR); i < start; i++) {
            if (NOT.contains(said.at(i).plain()) && !said.at(i).stop()) {
                return true;
            }
        }
        return false;
    }

    static Label label(Property property) {
        return new Label(List.of(property), 1, "", Optional.empty(), List.of());
    }
}

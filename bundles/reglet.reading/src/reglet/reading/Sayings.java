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
    private static final Set<String> NOT = Set.of("not", "without", "no", "never", "nor", "unless", "if", "avoid", "optional");
    /** Words that deny what stands right behind them alone: "non-woven polyolefin" is polyolefin. */
    private static final Set<String> RIGHT_BEFORE = Set.of("non", "un");
    private static final Pattern SOME = Pattern.compile("(?is).*\\b(?:some|optional(?:ly)?|available|where|only|except|version|versions|suffix"
        + "|models? with|types? with|either|upon request|on request|options?)\\b.*");
    /** What is offered beside the product at hand. */
    private static final Pattern OFFERED = Pattern.compile("(?is).*\\b(?:ask for|(?:up)?on request|(?:if|where|when) \\w+(?: \\w+)? "
        + "(?:is|are) (?:wanted|desired))\\b.*");
    private static final int NEAR = 3;
    private static final int RUNNING = 6;
    private static final Pattern VERB = Pattern.compile("(?is)\\s*\\S+ (?:.* )?(?:is|are|will|can|does|do) .*");
    private static final Pattern EACH = Pattern.compile("(?is).*\\b(?:each|every|all)\\b.*");

    private final Component component;
    private final Citations citations;
    private final Taken taken;
    private final Map<Property, Map<String, List<Turn>>> turns = new HashMap<>();
    private boolean report;

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

    /** As {@link Sentences#report}. */
    void report(boolean is) {
        report = is;
    }

    private record Hit(String word, Sentence sentence, Layout layout, Place place, int fixed) {
    }

    void read(List<Layout> layouts) {
        for (Property property : component.properties()) {
            // of several models a word in passing may be said of one alone, unless it is said of each
            boolean several = property.type().kind() == Kind.FLAG && taken.models().size() > 1;
            if (turns.containsKey(property) && !taken.has(property)) {
                read(property, layouts, several);
            }
        }
    }

    /** Whether what is said is said of all models: of each, or of none of them by name and without a hint at a choice. */
    private boolean isOfAll(Sentence sentence) {
        String text = sentence.cell().text();
        return EACH.matcher(text).matches() || isRunning(text) && !SOME.matcher(text).matches()
            && taken.models().stream().noneMatch(text::contains);
    }

    /** Running text, not a heading: "Polypropylene will burn". */
    private static boolean isRunning(String text) {
        return text.split("\\s+").length >= RUNNING || VERB.matcher(text).matches();
    }

    private void read(Property property, List<Layout> layouts, boolean several) {
        List<Hit> hits = new ArrayList<>();
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                boolean offered = property.type().kind() == Kind.FLAG && OFFERED.matcher(sentence.cell().text()).matches();
                boolean others = report && sentence.conditions() || taken.isOfAnother(layout, sentence.cell());
                if (!offered && !others && (!several || isOfAll(sentence))) {
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
        boolean tested = !Mentions.own(property, citations.in(first.sentence.cell().text())).isEmpty();
        if (!one && !tested && hits.stream().filter(hit -> hit.word.equals(first.word)).count() * 3 < hits.size() * 2) {
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
        if (start > 0 && RIGHT_BEFORE.contains(said.at(start - 1).plain())) {
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

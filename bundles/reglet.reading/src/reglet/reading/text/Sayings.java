package reglet.reading.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Sentence;
import reglet.reading.text.Told.About;
import reglet.reading.value.Around;
import reglet.reading.value.Described;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Plain;
import reglet.reading.words.Said;
import reglet.reading.words.Turn;
import reglet.reading.words.Turn.Place;
import reglet.reading.words.Vocabulary;

/** Finds what running text says in words alone, by the pack's turns of phrase: that a fabric keeps mortar out, what a thing is made of. */
public final class Sayings {
    private static final double SURE = 0.8;
    private static final double LESS = 0.72;
    private static final Pattern SOME = Pattern.compile("(?is).*\\b(?:some(?! (?:sealants?|primers?|cleaners?|acids?|woods?))"
        + "|optional(?:ly)?|available|only(?! (?:as|by|after|where|when|if|and is not|non-?combustible)\\b)"
        + "|except|version|versions|suffix|where(?! the codes?\\b)(?: \\w+){0,3} (?:order|requir|specif|ask|mark|need|request|want"
            + "|call)\\w*"
        + "|models? with|types? with|either|upon request|on request|options?)\\b.*");
    /** What is offered beside the product at hand. */
    private static final Pattern OFFERED = Pattern.compile("(?is).*\\b(?:special[- ]order|not (?:in stock|stocked|offered)|ask for"
        + "|call for (?:lead|price|availability)|(?:up)?on (?:request|order)|(?:is|are) (?:in stock"
        + "|stocked|sold) as|(?:can|may) be had in|(?:if|where|when) \\w+(?: \\w+)? "
        + "(?:is|are) (?:wanted|desired))\\b.*");
    /** What holds for the most part. */
    private static final Pattern MOSTLY = Pattern.compile("(?is).*\\b(?:most|many|mostly|usually|often|generally|normally|sometimes)\\b.*");
    /** "Fasten cornerite to the lath only" says what to do, and not what all of the models are. */
    private static final Pattern TO_DO = Pattern.compile("\\W*(?:\\d+[.)]\\s*)?(?:Fasten|Place|Lap|Set|Apply|Install|Cut|Do not|Use"
        + "|Tie|Attach"
        + "|Keep|Hold|Butt|Run|Carry|Fix|Nail|Screw|Start|Leave)\\b");
    private static final int RUNNING = 6;
    private static final int ALONE = 2;
    /** Sentences at the beginning of a sheet that describe its product. */
    private static final int DESCRIBING = 3;
    private static final Pattern VERB = Pattern.compile("(?is)\\s*\\S+ (?:.* )?(?:is|are|will|can|does|do) .*"
        + "|\\W*(?:it )?(?:burn|melt|ignite)s? .*");
    private static final Pattern EACH = Pattern.compile("(?is).*\\b(?:each|every|all)\\b.*");

    private final Component component;
    private final Vocabulary vocabulary;
    private final Citations citations;
    private final Taken taken;
    private final Map<Property, Map<String, List<Turn>>> turns = new HashMap<>();
    /** Of properties of several words at once. */
    private final Map<Property, Map<String, List<Turn>>> sets = new HashMap<>();
    private final Conditions conditions;
    /** The sheet's title, which is said of all models. */
    private String title = "";
    private boolean report;

    public Sayings(Component component, Vocabulary vocabulary, Citations citations, Taken taken) {
        this.component = component;
        this.vocabulary = vocabulary;
        this.citations = citations;
        this.conditions = new Conditions(vocabulary, component);
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
            Frames.of(component, property, vocabulary).forEach((word, framed) -> words.merge(word, framed, (one, other) -> Stream.concat(
                one.stream(), other.stream()).toList()));
            if (!words.isEmpty()) {
                (kind == Kind.SET ? sets : turns).put(property, words);
            }
        }
    }

    /** As {@link Sentences#report}. */
    public void report(boolean is) {
        report = is;
    }

    private record Hit(String word, Sentence sentence, Layout layout, Place place, int fixed) {
        /** Whether the words that say it stand in a name. */
        boolean isIn(String name) {
            return (" " + Plain.of(name) + " ").contains(" " + sentence.said().plain(place.from(), place.to()) + " ");
        }
    }

    public void read(List<Layout> layouts) {
        title = Titles.product(layouts);
        for (Property property : component.properties()) {
            // of several models a word in passing may be said of one alone, unless it is said of each
            boolean several = property.type().kind() == Kind.FLAG && taken.models().size() > 1;
            if (turns.containsKey(property) && !taken.has(property)) {
                read(property, layouts, several);
            }
            if (sets.containsKey(property) && !taken.has(property) && !taken.hasOfModels(property)) {
                readSet(property, layouts);
            }
        }
    }

    /** "Test it by water spray, hand pull of the sealant and tapping": of several words that may be said the sentence that says most. */
    private void readSet(Property property, List<Layout> layouts) {
        Told told = new Told(taken.models());
        List<Hit> most = List.of();
        Set<String> models = Set.of();
        for (Layout layout : layouts) {
            for (About about : told.isOfSeveral() ? told.of(layout) : layout.sentences().stream().map(About::ofAll).toList()) {
                List<Hit> hits = isOfProduct(layout, about.sentence()) ? property.type().words().stream().filter(sets.get(property)
                    ::containsKey).map(word -> hit(word, sets.get(property).get(word), about.sentence(), layout)).flatMap(Optional::stream)
                    .toList() : List.of();
                if (hits.size() > most.size()) {
                    most = hits;
                    models = about.models();
                }
            }
        }
        if (most.size() > 1 && models.isEmpty() != told.isOfSeveral()) {
            Sentence sentence = most.get(0).sentence;
            taken.page(most.get(0).layout);
            int from = most.stream().mapToInt(hit -> hit.place.from()).min().orElseThrow();
            int to = most.stream().mapToInt(hit -> hit.place.to()).max().orElseThrow();
            Cell said = sentence.cell().part(sentence.said().at(from).from(), sentence.said().to(from, to));
            String words = most.stream().map(Hit::word).collect(Collectors.joining(", "));
            (models.isEmpty() ? Set.of("") : models).forEach(model -> taken.quietly(Label.of(property), property.label(), said.named(words),
                new Around("", List.of(), model, Optional.empty(), SURE)));
        }
    }

    private static Optional<Hit> hit(String word, List<Turn> said, Sentence sentence, Layout layout) {
        for (Turn turn : said) {
            for (int i = 0; i < sentence.said().size(); i++) {
                Place place = turn.at(sentence.said(), i, at -> -1);
                if (place != null && !Denials.isDenied(sentence.said(), place, turn)) {
                    return Optional.of(new Hit(word, sentence, layout, place, turn.fixed()));
                }
            }
        }
        return Optional.empty();
    }

    /** Reads what is said of some models by name: "RX-2 and RX-3 are not rated". */
    public void ofModels(List<Layout> layouts) {
        Told told = new Told(taken.models());
        if (!told.isOfSeveral()) {
            return;
        }
        Map<Layout, List<About>> sentences = new LinkedHashMap<>();
        layouts.forEach(layout -> sentences.put(layout, told.of(layout)));
        for (Property property : component.properties()) {
            if (!turns.containsKey(property)) {
                continue;
            }
            Map<String, Hit> said = new LinkedHashMap<>();
            Set<String> unclear = new HashSet<>();
            Set<String> ofAll = new HashSet<>();
            Set<String> toDo = new HashSet<>();
            for (Layout layout : layouts) {
                for (About about : sentences.get(layout)) {
                    Optional<Hit> hit = about.models().isEmpty() || report && conditions.areOfOthers(about
                        .sentence()) || OFFERED.matcher(about.sentence().cell().text()).matches() ? Optional.empty()
                        : best(property, about.sentence(), layout).filter(one -> !isCalled(property, one));
                    if (about.models().isEmpty()) {
                        best(property, about.sentence(), layout).ifPresent(one -> (TO_DO.matcher(about.sentence().cell().text())
                            .lookingAt() ? toDo : ofAll).add(one.word));
                    }
                    hit.ifPresent(one -> about.models().forEach(model -> {
                        // a heading says it less plainly than a sentence with its standard
                        Hit before = said.merge(model, one, (first, next) -> next.word.equals(first.word) && !isCiting(first) && isCiting(
                            next) ? next : first);
                        if (!before.word.equals(one.word)) {
                            unclear.add(model);
                        }
                    }));
                }
            }
            said.keySet().removeAll(unclear);
            if (said.values().stream().noneMatch(hit -> hit.sentence.cell().bold())) {
                // beside what headings say of their tables, what to do with a part says nothing of all of them
                ofAll.addAll(toDo);
            }
            // where others are told apart already, a name that holds the word says nothing new
            said.entrySet().removeIf(one -> taken.hasOf(one.getKey(), property) || taken.hasOfModels(property) && one.getValue().isIn(one
                .getKey()) || ofAll.stream().anyMatch(word -> isMore(word, one.getValue().word)));
            boolean one = said.values().stream().map(Hit::word).distinct().count() == 1;
            boolean alike = one && ofAll.equals(Set.of(said.values().iterator().next().word));
            if (said.size() == 1 && !ofAll.isEmpty() || alike || one && said.keySet().containsAll(taken.models())) {
                // said of the product as a whole too
                continue;
            }
            said.forEach((model, hit) -> take(property, hit, new Around("", cited(property, hit), model, Optional.empty(), SURE)));
        }
    }

    private boolean isCiting(Hit hit) {
        return !citations.in(hit.sentence.cell().text()).isEmpty();
    }

    /** "G series, metal weep screed" says of no model that it has weeps. */
    private static boolean isCalled(Property property, Hit hit) {
        return property.type().kind() == Kind.FLAG && hit.fixed == 1 && (hit.sentence.said().size() <= RUNNING || hit.sentence.cell()
            .bold());
    }

    /** Reads what rows of tables say of their models in words alone. */
    public void ofRows(List<Described> rows) {
        for (Property property : component.properties()) {
            if (!turns.containsKey(property)) {
                continue;
            }
            Map<Described, Hit> said = new LinkedHashMap<>();
            rows.forEach(row -> best(property, Sentence.of(row.cell()), row.layout()).ifPresent(hit -> said.put(row, hit)));
            // what all rows say, the sheet as a whole may say too
            boolean apart = !property.name().equals("kind") && said.size() < rows.size() || said.values().stream().map(Hit::word).distinct()
                .count() > 1;
            boolean general = taken.has(property);
            if (apart || !general) {
                said.keySet().removeIf(row -> taken.hasOf(row.model(), property) || general && !taken.models().contains(row.model()));
                said.forEach((row, hit) -> take(property, hit, new Around("", cited(property, hit), row.model(), Optional.empty(), SURE)));
            }
        }
    }

    /** The standard asked for, else the only one that the sentence cites of a property that is tested. */
    private List<Citation> cited(Property property, Hit hit) {
        List<Citation> all = citations.in(hit.sentence.cell().text());
        List<Citation> own = Citations.own(property, all);
        return own.isEmpty() && all.size() == 1 && !property.method().isNone() && property.type().kind() != Kind.WORD ? all : own;
    }

    private void take(Property property, Hit hit, Around around) {
        taken.page(hit.layout);
        Said said = hit.sentence.said();
        taken.said(property, hit.word, hit.sentence.cell().part(said.at(hit.place.from()).from(), said.to(hit.place.from(), hit.place
            .to())), around);
    }

    /** The standard among some words that is itself a name of what they say: "ANSI A118.4 and A118.15". */
    private List<Citation> naming(Property property, String word, Cell part) {
        List<String> names = vocabulary.names(component.id() + "." + property.name() + "." + word).stream().map(Plain::of).toList();
        return citations.in(part.text()).stream().filter(citation -> names.contains(Plain.of(citation.name()))).toList();
    }

    /** Whether a sentence may be said of the product, and not of what is offered beside it or of another's. */
    private boolean isOfProduct(Layout layout, Sentence sentence) {
        return !OFFERED.matcher(sentence.cell().text()).matches() && !(report && conditions.areOfOthers(sentence)) && !taken.isOfAnother(
            layout, sentence.cell());
    }

    /** Whether what is said is said of all models: of each, or of none of them by name and without a hint at a choice. */
    private boolean isOfAll(Hit hit) {
        String whole = hit.sentence.cell().text();
        // "use the weeping bead at heads only: at jambs the solid one"
        String text = whole.substring(whole.lastIndexOf(": ", hit.sentence.said().at(hit.place.from()).from()) + 1);
        return isOfEach(text) || (isRunning(text) || isTitle(hit)) && !SOME.matcher(text).matches()
            && taken.models().stream().noneMatch(text::contains);
    }

    static boolean isOfEach(String text) {
        return EACH.matcher(text).matches();
    }

    private boolean isTitle(Hit hit) {
        return hit.sentence.cell().text().equals(title);
    }

    /** Running text, not a heading: "Polypropylene will burn". */
    private static boolean isRunning(String text) {
        return text.split("\\s+").length >= RUNNING || VERB.matcher(text).matches();
    }

    private void read(Property property, List<Layout> layouts, boolean several) {
        List<Hit> hits = new ArrayList<>();
        for (Layout layout : layouts) {
            layout.sentences().stream().filter(sentence -> isOfProduct(layout, sentence)).forEach(sentence -> best(property, sentence,
                layout).filter(hit -> !several || isOfAll(hit)).ifPresent(hits::add));
        }
        if (hits.isEmpty()) {
            return;
        }
        List<String> words = hits.stream().map(Hit::word).toList();
        hits.removeIf(hit -> words.stream().anyMatch(word -> isMore(word, hit.word)));
        if (several && hits.stream().anyMatch(hit -> !isTitle(hit))) {
            // a sentence says more plainly what the title only calls it
            hits.removeIf(this::isTitle);
        }
        List<Hit> naming = hits.stream().filter(hit -> isNamed(property, hit)).toList();
        boolean contrary = property.type().kind() == Kind.FLAG && hits.stream().map(Hit::word).distinct().count() > 1;
        if (contrary && !naming.isEmpty() && naming.stream().map(Hit::word).distinct().count() == 1) {
            // "wears no fabric" says more of a fabric than "keeps mortar away"
            hits.retainAll(naming);
        }
        boolean differ = property.type().kind() == Kind.WORD && hits.stream().map(Hit::word).distinct().count() > 1;
        List<Hit> plainly = hits.stream().filter(hit -> !MOSTLY.matcher(hit.sentence.cell().text()).matches()).toList();
        if (differ && !plainly.isEmpty()) {
            // "primerless on most faces", but "primed where the test on site asks for it"
            hits.retainAll(plainly);
        }
        List<Hit> claimed = hits.stream().filter(hit -> !isMethod(hit)).toList();
        if (differ && !claimed.isEmpty()) {
            // "ASTM C109 / ANSI A118.4" tells by what a strength was found
            hits.retainAll(claimed);
        }
        List<String> described = Titles.described(layouts, DESCRIBING);
        List<Hit> describing = hits.stream().filter(hit -> described.contains(hit.sentence.cell().text())).toList();
        if (describing.stream().map(Hit::word).distinct().count() == 1 && property.type().kind() == Kind.WORD
            && hits.get(0).word.equals(describing.get(0).word)) {
            // what the first sentences say that the product is
            boolean others = hits.removeIf(hit -> !hit.word.equals(describing.get(0).word) && !describing.contains(hit));
            if (others && hits.removeAll(describing)) {
                hits.addAll(0, describing);
            }
        }
        // of those that say the same the one that says it in most words: "weep holes" beside "weep screed"
        Hit plainest = hits.stream().filter(hit -> property.type().kind() == Kind.FLAG && hit.word.equals(hits.get(0).word))
            .max(Comparator.comparingInt(Hit::fixed)).filter(hit -> hit.fixed > hits.get(0).fixed).orElse(hits.get(0));
        Hit first = hits.stream().filter(hit -> !Citations.own(property, citations.in(hit.sentence.cell().text())).isEmpty()).findFirst()
            .orElse(plainest);
        boolean one = hits.stream().allMatch(hit -> hit.word.equals(first.word));
        boolean tested = !Citations.own(property, citations.in(first.sentence.cell().text())).isEmpty();
        if (!one && !tested && hits.stream().filter(hit -> hit.word.equals(first.word)).count() * 3 < hits.size() * 2) {
            return;
        }
        taken.page(first.layout);
        Cell cell = first.sentence.cell();
        Cell part = cell.part(first.sentence.said().at(first.place.from()).from(), first.sentence.said().to(first.place.from(),
            first.place.to()));
        List<Citation> cited = citations.in(cell.text());
        boolean shown = property.type().kind() == Kind.FLAG && property.evidence() == Evidence.TEST_REPORT && cited.size() == 1;
        // "each was put through freeze-thaw testing to ASTM C666"
        List<Citation> own = !property.method().isNone() ? Citations.own(property, cited) : shown ? cited : naming(property, first.word,
            part);
        // "PV-C is a rod of closed-cell foam" says nothing of PV-B
        Set<String> named = new Told(taken.models()).named(cell.text());
        String model = taken.models().size() > 1 && property.type().kind() == Kind.WORD && named.size() == 1 && taken.models()
            .containsAll(named) ? named.iterator().next() : "";
        taken.said(property, first.word, part, new Around("", own, model, Optional.empty(), one ? SURE : LESS));
    }

    /** Whether what says a word are the standards in a cell of a table's row. */
    private boolean isMethod(Hit hit) {
        Cell cell = hit.sentence.cell();
        return Citations.without(cell.text(), citations.in(cell.text())).matches("[\\s,;/.()]*") && hit.layout.lines().stream()
            .anyMatch(line -> line.cells().size() > 1 && line.cells().get(0) != cell && line.y() == cell.y() && line.right() >= cell
                .right());
    }

    /** Whether the words of a turn hold a name of the property itself. */
    private boolean isNamed(Property property, Hit hit) {
        String plain = " " + hit.sentence.said().plain(hit.place.from(), hit.place.to()) + " ";
        return vocabulary.names(component.id() + "." + property.name()).stream().anyMatch(name -> plain.contains(" " + Plain.of(name)
            + " "));
    }

    /** The word that a sentence says by the longest turn; none where it says two of them. */
    private Optional<Hit> best(Property property, Sentence sentence, Layout layout) {
        Hit best = null;
        boolean two = false;
        Said alone = sentence.said();
        if (property.type().kind() == Kind.FLAG && alone.size() <= ALONE) {
            // "Combustible." among cautions
            String plain = alone.plain(0, alone.size());
            for (String word : List.of("yes", "no")) {
                List<String> names = vocabulary.names(component.id() + "." + property.name()).stream().map(Plain::of).toList();
                boolean says = vocabulary.names(component.id() + "." + property.name() + "." + word).stream().map(Plain::of)
                    .anyMatch(name -> name.equals(plain) && (names.contains(name) || names.stream().anyMatch(name::endsWith)));
                if (says && sentence.cell().text().matches("\\p{Lu}.*")) {
                    return Optional.of(new Hit(word, sentence, layout, new Place(0, alone.size(), 0, 0), alone.size()));
                }
            }
        }
        for (Map.Entry<String, List<Turn>> word : turns.get(property).entrySet()) {
            for (Turn turn : word.getValue()) {
                for (int i = 0; i < sentence.said().size(); i++) {
                    Place place = turn.at(sentence.said(), i, at -> -1);
                    boolean says = place != null && !Denials.isDenied(sentence.said(), place, turn)
                        && !Denials.isOpen(property, word.getKey(), sentence.said(), place.to());
                    if (!says || best != null && isMore(best.word, word.getKey())) {
                        continue;
                    }
                    boolean longer = best == null || turn.fixed() > best.fixed || isMore(word.getKey(), best.word);
                    two = !longer && (two || turn.fixed() == best.fixed && !best.word.equals(word.getKey()));
                    best = longer ? new Hit(word.getKey(), sentence, layout, place, turn.fixed()) : best;
                }
            }
        }
        return two ? Optional.empty() : Optional.ofNullable(best);
    }

    /** "At joints of the backing and at a spacing" says all that "at joints of the backing" does. */
    private static boolean isMore(String word, String other) {
        return word.startsWith(other + " ");
    }
}

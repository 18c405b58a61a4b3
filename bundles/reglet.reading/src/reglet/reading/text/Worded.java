package reglet.reading.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.Value;
import reglet.reading.page.Cell;
import reglet.reading.value.Bounds;
import reglet.reading.value.Taken;
import reglet.reading.value.Unnamed;
import reglet.reading.words.Label;
import reglet.reading.words.Naming;
import reglet.reading.words.Plain;
import reglet.reading.words.PropertyNames;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;
import reglet.reading.words.UnitSpelling;

/**
 * Tells labels that no name is in by what their words speak for, as {@link Prose} does running text: "Must reach past steel at least",
 * "Wait before stone is set". It only fills what nothing else filled.
 */
public final class Worded {
    private static final double LEAST = 3;
    private static final double AHEAD = 1.5;
    private static final double QUALITY = 0.84;
    /** Of the best label's score: another that comes as near leaves open which is meant. */
    private static final double CLOSE = 0.8;

    private final Component component;
    private final Cues cues;
    private final Bounds bounds;
    private final Naming naming;
    private final Reading reading;
    private final Taken taken;

    public Worded(Component component, Cues cues, Bounds bounds, Naming naming, Reading reading, Taken taken) {
        this.component = component;
        this.cues = cues;
        this.bounds = bounds;
        this.naming = naming;
        this.reading = reading;
        this.taken = taken;
    }

    /** What a label may mean: the same heading may stand above the values of several rows. */
    private record Meant(Property property, List<Unnamed> labels, String unit, double score) {
    }

    /** @param report whether the sheet is a report: only there limits of the report are looked for */
    public void read(boolean report) {
        Map<Cell, List<Unnamed>> labels = new IdentityHashMap<>();
        List<List<Unnamed>> inOrder = new ArrayList<>();
        taken.unnamed().forEach(one -> labels.computeIfAbsent(one.label(), fresh -> {
            inOrder.add(new ArrayList<>());
            return inOrder.get(inOrder.size() - 1);
        }).add(one));
        List<Property> lacking = component.properties().stream().filter(property -> Cues.isAmount(property) && (report || !property.name()
            .startsWith("report_")) && !taken.has(property)).toList();
        List<Meant> all = new ArrayList<>();
        inOrder.forEach(same -> meant(same, lacking, all));
        all.sort(Comparator.comparing((Meant one) -> -one.score));
        Set<Object> done = new HashSet<>();
        for (Meant one : all) {
            boolean unclear = all.stream().anyMatch(other -> other.property == one.property && other != one
                && other.score > CLOSE * one.score);
            if (!unclear && !done.contains(one.property) && !done.contains(one.labels) && take(one)) {
                done.add(one.property);
                done.add(one.labels);
            }
        }
    }

    private boolean take(Meant one) {
        boolean any = false;
        for (Unnamed label : one.labels) {
            taken.page(label.layout());
            taken.labelled(label.label());
            any |= label.take().test(new Label(List.of(one.property), QUALITY, one.unit, PropertyNames.sense(Plain.of(label.label()
                .text())), List.of()));
        }
        return any;
    }

    /** The properties that a label speaks for and of which a value stands beside it. */
    private void meant(List<Unnamed> labels, List<Property> lacking, List<Meant> all) {
        String text = labels.get(0).label().text();
        String unit = UnitSpelling.atEnd(text).or(() -> Stream.of(text.split("[^\\p{L}]+")).filter(word -> word.length() > 2
            && UnitSpelling.isUnit(word)).findFirst()).orElse("");
        Map<String, Double> words = new HashMap<>();
        Stream.of(Plain.of(text).split(" ")).forEach(word -> words.put(word, 1.0));
        for (Property property : lacking) {
            String path = component.id() + "." + property.name();
            double score = cues.speaksFor(path, words);
            if (score < LEAST || PropertyNames.areOfAnotherLoad(property, words.keySet()) || !cues.isClear(path, words)
                || !cues.areOf(path, words.keySet())) {
                continue;
            }
            Optional<Value> value = labels.stream().flatMap(one -> one.values().stream()).map(cell -> reading.read(property, cell.text(),
                unit)).flatMap(Optional::stream).map(Read::value).findFirst().filter(one -> bounds.holds(path, one));
            if (value.isPresent() && score > AHEAD * cues.speaksAgainst(path, words, value.get(), naming.in(List.of(text)).keySet())) {
                all.add(new Meant(property, labels, unit, score));
            }
        }
    }
}

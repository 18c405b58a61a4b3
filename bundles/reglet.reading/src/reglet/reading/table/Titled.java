package reglet.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/**
 * What the titles of several tables, or the lines between the rows of one, say of the models below each: "Staples, 16 gauge" above one
 * table and "Nails, smooth shank" above another, "Galvanized, G60" above some rows and "Stainless steel" above others.
 */
public final class Titled {
    private static final double SHARE = 0.85;
    /** Letters of a title at most, and of a word that says yes at least. */
    private static final int LONGEST = 90;
    private static final int SHORTEST = 5;

    private final Map<Property, Map<String, String>> words = new LinkedHashMap<>();
    /** The component's own names, the longest first. */
    private final List<String> called;
    private final List<Part> parts = new ArrayList<>();
    private List<Part> open = List.of();
    /** The models below any title. */
    private final Set<String> titled = new LinkedHashSet<>();

    /** Models below words that name one word of a property. */
    private record Part(Layout layout, Cell title, Property property, String word, Set<String> models) {
    }

    public Titled(Vocabulary vocabulary, Component component) {
        called = vocabulary.names(component.id()).stream().map(Plain::of).sorted(Comparator.comparingInt(String::length).reversed()).toList();
        component.properties().stream().filter(Titled::isTold).forEach(property -> {
            Map<String, String> own = new LinkedHashMap<>();
            boolean flag = property.type().kind() == Kind.FLAG;
            // what a thing has is told by its name, what it lacks by words that say little elsewhere: "none", "open"
            (flag ? List.of("yes") : property.type().words()).forEach(word -> {
                if (!flag) {
                    own.put(Plain.of(word), word);
                }
                vocabulary.names(component.id() + "." + property.name() + "." + word).stream().filter(name -> !flag
                    || name.length() >= SHORTEST).forEach(name -> own.put(Plain.of(name), word));
            });
            words.put(property, own);
        });
    }

    private static boolean isTold(Property property) {
        return property.type().kind() == Kind.WORD || property.type().kind() == Kind.FLAG;
    }

    /** A table of models begins, or a part of one, below a title. */
    void part(Layout layout, Optional<Cell> title) {
        open = title.filter(cell -> cell.text().length() <= LONGEST).map(cell -> parts(layout, cell)).orElse(List.of());
        parts.addAll(open);
    }

    private List<Part> parts(Layout layout, Cell title) {
        String whole = " " + Plain.of(title.text()) + " ";
        // "weep screed" says nothing of weeps
        String bare = called.stream().reduce(whole, (text, name) -> text.replace(" " + name + " ", " | "));
        List<Part> all = new ArrayList<>();
        words.forEach((property, own) -> {
            String plain = property.type().kind() == Kind.FLAG ? bare : whole;
            List<String> names = own.keySet().stream().filter(name -> plain.contains(" " + name + " ")).toList();
            // "flat rib" is no rib
            List<String> named = names.stream().filter(name -> names.stream().noneMatch(other -> other.length() > name.length() && (" "
                + other + " ").contains(" " + name + " "))).map(own::get).distinct().toList();
            if (named.size() == 1) {
                all.add(new Part(layout, title, property, named.get(0), new LinkedHashSet<>()));
            }
        });
        return all;
    }

    /** A row of the open part is of a model. */
    void model(String name) {
        titled.add(name);
        open.stream().filter(part -> !name.isEmpty()).forEach(part -> part.models.add(name.replaceAll("\\s+", " ").strip()));
    }

    /** Takes the words down where titles tell models apart by them: else the sheet as a whole says what it is about. */
    public void take(Taken taken) {
        for (Property property : words.keySet()) {
            List<Part> own = parts.stream().filter(part -> part.property == property && !part.models.isEmpty()).toList();
            // a flag tells the models below some titles from those below others
            boolean apart = property.type().kind() == Kind.FLAG ? !own.isEmpty() && own.stream().flatMap(part -> part.models.stream())
                .distinct().count() < titled.size() : own.stream().map(Part::word).distinct().count() > 1;
            if (apart && !taken.hasOfModels(property)) {
                for (Part part : own) {
                    taken.page(part.layout);
                    part.models.forEach(model -> taken.said(property, part.word, part.title, new Around("", List.of(), model,
                        Optional.empty(), SHARE)));
                }
            }
        }
    }
}

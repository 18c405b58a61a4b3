package reglet.reading.text;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Paragraphs;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Label;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/**
 * Reads what a product is out of the head of its sheet: "a silicone sealant", "butyl self-adhered flashing". It counts when the name of
 * the component stands in the same sentence and the head says no other word of that property.
 */
public final class Kinds {
    private static final double SURE = 0.82;
    private static final int HEAD = 16;
    /** Paragraphs in which what the title names need not be named again. */
    private static final int FIRST = 3;
    private static final int SHORTEST = 5;
    private static final int TITLE = 4;
    /** A shorter word may say anything. */
    private static final int LONG = 10;
    /** "In natural colour", "granite look": how it looks, and not what it is. */
    private static final Pattern LOOKS = Pattern.compile(" \\S+ (?:colou?r|look|appearance|shade|tone)s?(?= )");
    /** "Neither an air barrier nor a vapor retarder". */
    private static final Pattern DENIED = Pattern.compile(" (?:not|no|nor|neither|without)(?: \\S+){0,2}$");

    private final Component component;
    private final Taken taken;
    private final List<String> names;
    private final Map<String, String> words = new LinkedHashMap<>();
    /** Of the other properties that are told in words, what titles may say, and which word it is. */
    private final Map<Property, Map<String, String>> titles = new LinkedHashMap<>();

    public Kinds(Vocabulary vocabulary, Component component, Taken taken) {
        this.component = component;
        this.taken = taken;
        this.names = vocabulary.names(component.id()).stream().map(Plain::of).toList();
        first().ifPresent(property -> {
            for (String word : property.type().words()) {
                words.put(Plain.of(word), word);
                String path = component.id() + "." + property.name() + "." + word;
                vocabulary.names(path).forEach(label -> words.put(Plain.of(label), word));
            }
            words.keySet().removeIf(word -> word.length() < SHORTEST);
        });
        component.properties().stream().filter(property -> property.type().kind() == Kind.WORD && !first().equals(Optional.of(property)))
            .forEach(property -> {
                Map<String, String> own = new LinkedHashMap<>();
                for (String word : property.type().words()) {
                    own.put(Plain.of(word), word);
                    vocabulary.names(component.id() + "." + property.name() + "." + word).forEach(name -> own.put(Plain.of(name),
                        word));
                }
                own.keySet().removeIf(name -> name.length() < LONG);
                titles.put(property, own);
            });
    }

    /** The property that tells what a product is: a component's first, where that is one of several words. */
    private Optional<Property> first() {
        return component.properties().stream().findFirst().filter(property -> property.type().kind() == Kind.WORD);
    }

    public void read(Layout layout) {
        if (layout.page() == 1) {
            named(layout);
            titled(layout);
        }
        if (layout.page() != 1 || first().isEmpty()) {
            return;
        }
        Cell place = null;
        String kind = "";
        String written = "";
        int count = 0;
        boolean titled = named(" " + Plain.of(Titles.product(List.of(layout))) + " ");
        double largest = layout.lines().stream().limit(HEAD).mapToDouble(Layout.Line::size).max().orElse(0);
        // the title before what stands beside it, such as the maker's division for nails and screws
        List<Cell> paragraphs = Paragraphs.joined(layout.lines().stream().limit(HEAD).collect(Collectors.toList())).stream()
            .sorted(Comparator.comparing(cell -> cell.size() < largest - 0.1)).toList();
        for (Cell paragraph : paragraphs) {
            boolean first = count++ < FIRST;
            for (String sentence : paragraph.text().split("(?<=[.;])\\s+")) {
                String plain = LOOKS.matcher(" " + Plain.of(sentence) + " ").replaceAll(" ");
                String longest = longest(plain);
                if (longest.isEmpty() || !named(plain) && !(titled && first)) {
                    continue;
                }
                if (!kind.isEmpty() && !words.get(longest).equals(kind) || isOpen(plain, longest)) {
                    return;
                }
                if (kind.isEmpty()) {
                    kind = words.get(longest);
                    written = longest;
                    place = paragraph;
                }
            }
        }
        if (place != null) {
            taken.quietly(Label.of(first().orElseThrow()), first().orElseThrow().label(),
                part(place, written), Around.of(List.of(), SURE));
        }
    }

    /** Words beside the name of their property: "a low-modulus sealant". */
    private void named(Layout layout) {
        for (Property property : component.properties()) {
            String label = Plain.of(property.label());
            if (property.type().kind() != Kind.WORD || property.type().words().isEmpty() || label.contains(" ")
                || label.length() < SHORTEST) {
                continue;
            }
            for (Cell cell : layout.lines().stream().limit(HEAD).flatMap(line -> line.cells().stream()).toList()) {
                List<String> said = property.type().words().stream().filter(word -> (" " + Plain.of(cell.text()) + " ")
                    .contains(" " + Plain.of(word) + " " + label + " ")).toList();
                // "a modified dry-set mortar and an improved modified dry-set one"
                boolean more = said.size() == 1 && property.type().words().stream().anyMatch(word -> !word.equals(said.get(0))
                    && word.contains(said.get(0)) && (" " + Plain.of(cell.text()) + " ").contains(" " + Plain.of(word) + " "));
                if (said.size() == 1 && !more) {
                    Label own = Label.of(property);
                    Cell place = part(cell, Plain.of(said.get(0)) + " " + label);
                    taken.quietly(own, property.label(), place.named(said.get(0)), Around.of(List.of(), SURE));
                    break;
                }
            }
        }
    }

    /** What the title or the line below it says the product is: "Preblended scratch coat", "Ready-mixed mortar for joints". */
    private void titled(Layout layout) {
        List<Cell> cells = layout.lines().stream().limit(TITLE).flatMap(line -> line.cells().stream()).toList();
        titles.forEach((property, names) -> {
            Map<String, Cell> said = new LinkedHashMap<>();
            Map<String, String> written = new LinkedHashMap<>();
            cells.forEach(cell -> names.forEach((name, word) -> {
                String plain = " " + Plain.of(Titles.ofItself(cell.text())) + " ";
                if (plain.contains(" " + name + " ") && !DENIED.matcher(plain.substring(0, plain.indexOf(" " + name + " "))).find()
                    && said.putIfAbsent(word, cell) == null) {
                    written.put(word, name);
                }
            }));
            if (said.size() == 1) {
                String word = said.keySet().iterator().next();
                taken.quietly(Label.of(property), property.label(), part(said.get(word), written.get(word)).named(word), Around.of(List
                    .of(), SURE));
            }
        });
    }

    private boolean named(String plain) {
        return names.stream().anyMatch(name -> plain.contains(" " + name + " "));
    }

    private String longest(String plain) {
        return words.keySet().stream().filter(word -> plain.contains(" " + word + " ")).reduce("", (a, b) -> b.length() > a.length() ? b
            : a);
    }

    /** Whether a sentence says two of the words, or one of them only to say what the product isn't or goes with. */
    private boolean isOpen(String plain, String longest) {
        String rest = plain.replace(" " + longest + " ", " ");
        return words.entrySet().stream().anyMatch(entry -> !entry.getValue().equals(words.get(longest)) && !longest.contains(entry.getKey())
            && rest.contains(" " + entry.getKey() + " ")) || plain.matches(".* (?:not|non|without|(?:compatible with|replace"
                + "|replaces|instead of|"
                + "alternative to|over|under|behind)(?: \\w+)?) " + longest + " .*");
    }

    /** The words in a cell, whatever marks stand between them. */
    private static Cell part(Cell cell, String plain) {
        int from = -1;
        String[] wanted = plain.split(" ");
        Matcher matcher = Pattern.compile("[^\\s/-]+").matcher(cell.text());
        int at = 0;
        while (matcher.find() && at < wanted.length) {
            boolean same = Plain.of(matcher.group()).equals(wanted[at]);
            at = same ? at + 1 : Plain.of(matcher.group()).equals(wanted[0]) ? 1 : 0;
            from = at == 1 ? matcher.start() : from;
            if (at == wanted.length) {
                return cell.part(from, matcher.end());
            }
        }
        return cell.named(plain);
    }
}

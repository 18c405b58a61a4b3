package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.reading.page.Layout;
import reglet.reading.page.Pages;
import reglet.reading.page.SheetPage;
import reglet.reading.table.ModelNames;
import reglet.reading.text.Cues;
import reglet.reading.text.Titles;
import reglet.reading.value.Bounds;
import reglet.reading.value.Footnotes;
import reglet.reading.value.Models;
import reglet.reading.value.Sections;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Naming;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/** Reads a data sheet as a person would: by its tables, lists and lines of dots. Pure: the same pages and pack give the same reading. */
public final class SheetReader {
    /** What running text says speaks less for a component than a table. */
    private static final double CLEAR = 0.85;
    private static final int IN_NAME = 4;
    private static final int IN_SUBJECT = 7;
    private static final int IS_KIND = 8;
    private static final int IN_TITLE = 1;
    private static final int IN_TEXT = 1;
    private static final int MOST_IN_TEXT = 3;
    private static final int PER_VALUE = 3;
    private static final int BY_METHOD = 2;
    /** For a sheet that tells all that is asked of a component. */
    private static final int WHOLE = 6;
    private static final int MOST_UNREAD = 60;
    /** "Oxbow Ledge, typical" heads the results of Oxbow Ledge. */
    private static final Pattern RESULTS = Pattern.compile("(?i)(?<=\\S)[,:]?\\s+(?:typical|average|tested|results?|values?|data)"
        + "(?:\\s+(?:results?|values?))?$");
    /** Properties told of no model, from which on a sheet is about one product. */
    private static final int BESIDE_MODELS = 3;
    /** Properties that a sheet tells of what it is about, and hardly of anything else. */
    private static final int MANY = 4;
    private static final double ANOTHERS = 0.45;
    private static final int FAR_MORE = 3;

    private final List<SheetPage> pages;
    private final Pack pack;
    private final Citations citations;
    private final Vocabulary vocabulary;
    private final List<Layout> layouts = new ArrayList<>();

    private SheetReader(List<SheetPage> pages, Pack pack) {
        this.pages = pages;
        this.pack = pack;
        this.citations = new Citations(pack);
        this.vocabulary = new Vocabulary(pack);
        pages.forEach(page -> layouts.addAll(Layout.of(page)));
    }

    /** @param component id of the component that the product is for; "" to find it out */
    public static SheetReading read(List<SheetPage> pages, Pack pack, String component) {
        return new SheetReader(pages, pack).read(component);
    }

    private SheetReading read(String asked) {
        Map<Component, Integer> scores = new LinkedHashMap<>();
        Sections sections = Sections.of(layouts, pack, vocabulary);
        Bounds bounds = new Bounds(pack);
        Cues cues = new Cues(pack, vocabulary, bounds);
        Footnotes footnotes = new Footnotes(layouts, citations);
        Naming naming = new Naming(pack, vocabulary);
        Models models = ModelNames.of(layouts, naming);
        String title = Plain.of(Titles.head(layouts));
        Map<Component, Integer> product = naming.in(List.of(Titles.product(layouts)));
        Map<Component, Integer> subject = naming.in(Titles.subject(layouts));
        Map<Component, Double> kinds = new HashMap<>();
        Titles.kinds(layouts).forEach(words -> naming.kinds(words).forEach((component, share) -> kinds.merge(component, share, Math::max)));
        String text = Plain.of(text());
        List<Component> all = pack.components().stream().filter(component -> asked.isEmpty() || component.id().equals(asked)).toList();
        Map<Component, Integer> inTitle = all.stream().collect(Collectors.toMap(Function.identity(), one -> named(one, title)));
        Map<Component, Integer> inText = all.stream().collect(Collectors.toMap(Function.identity(), one -> named(one, text)));
        // each component reads for itself, and what they share is safe for several threads
        Function<List<Component>, Map<Component, ValueReader>> reading = tried -> tried.parallelStream().collect(Collectors.toConcurrentMap(
            component -> component, component -> new ValueReader(vocabulary, component, citations, sections, bounds, footnotes, models,
                naming, cues).read(layouts)));
        List<Component> called = all.stream().filter(component -> subject.containsKey(component) || product.containsKey(component)
            || kinds.containsKey(component) || inTitle.get(component) + inText.get(component) > 0).toList();
        // a sheet hardly ever leaves out what its product is: the others are read only where nothing much is said of those it calls by name
        Map<Component, ValueReader> read = new HashMap<>(reading.apply(called));
        if (read.values().stream().noneMatch(reader -> properties(reader).size() >= MANY)) {
            read.putAll(reading.apply(all.stream().filter(component -> !read.containsKey(component)).toList()));
        }
        Map<Component, ValueReader> readers = new LinkedHashMap<>();
        all.stream().filter(read::containsKey).forEach(component -> readers.put(component, read.get(component)));
        readers.forEach((component, reader) -> {
            int values = (int) reader.found().stream().filter(found -> found.confidence() >= CLEAR)
                .map(found -> found.value().property()).distinct().count();
            // any report or certificate has a number and a date
            int said = (int) reader.found().stream().filter(found -> found.confidence() >= Taken.LEAST_CONFIDENCE && !found.value()
                .property().matches(".*\\.report(?:_number|_until|_editions)?") || found.confidence() >= CLEAR).map(found -> found.value()
                    .property()).distinct().count() - values;
            int shown = (int) reader.found().stream().filter(found -> pack.property(found.value().property())
                .filter(property -> !property.method().isNone() && found.value().method().startsWith(property.method().standard()))
                    .isPresent())
                .map(found -> found.value().property()).distinct().count();
            int properties = component.properties().size();
            scores.put(component, PER_VALUE * values + said + BY_METHOD * shown + (values + said) * WHOLE / properties
                + Math.min(1, subject.getOrDefault(component, 0)) * IN_SUBJECT
                + Math.min(1, product.getOrDefault(component, 0)) * IN_NAME + (int) (kinds.getOrDefault(component, 0.0) * IS_KIND)
                + (values + said == 0 ? 0 : inTitle.get(component) * IN_TITLE + Math.min(MOST_IN_TEXT, inText.get(component)
                    * IN_TEXT)));
        });
        int most = scores.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        List<Component> likely = scores.entrySet().stream().filter(entry -> most > 0 && entry.getValue() * 10 >= most * 8)
            .sorted(Comparator.comparing((Map.Entry<Component, Integer> entry) -> -entry.getValue()).thenComparing(entry ->
                // of which far more is said, then that which asks for less than the sheet says
                -properties(readers.get(entry.getKey())).size() / FAR_MORE).thenComparing(entry -> entry.getKey().properties().size()
                    - properties(readers.get(entry.getKey())).size())).map(Map.Entry::getKey).toList();
        List<Component> components = likely.isEmpty() && !asked.isEmpty() ? List.copyOf(readers.keySet()) : fuller(likely, readers, scores);
        List<Found> found = components.isEmpty() ? List.of() : new MadeTo(layouts, citations).show(Fitting.fit(Settling.settle(alone(readers
            .get(components.get(0)).further(layouts).found(), unmarked(Titles.product(layouts)), unmarked(Titles.head(layouts)),
            readers.get(components.get(0)).headed()), pack), components.get(0)), pack);
        List<Unread> unread = new ArrayList<>(pictures());
        if (!components.isEmpty()) {
            unread.addAll(readers.get(components.get(0)).unread());
        }
        found.stream().filter(value -> value.confidence() < Taken.LEAST_CONFIDENCE).forEach(value -> unread.add(new Unread(
            value.value().page(),
            value.value().box(), value.label() + ": " + value.value().text(), value.doubt().isEmpty()
                ? "not sure enough" : value.doubt())));
        return new SheetReading(Titles.product(layouts), Titles.maker(layouts), components.stream().map(Component::id).toList(),
            found.stream().filter(value -> value.confidence() >= Taken.LEAST_CONFIDENCE).toList(),
            unread.stream().limit(MOST_UNREAD).toList(),
            ReportReader.read(layouts, new Asks(pack, vocabulary, components.isEmpty() ? "" : components.get(0).id())));
    }

    /** The likely components; before the likeliest another, when the sheet says all of it that it says of the likeliest, and more. */
    private static List<Component> fuller(List<Component> likely, Map<Component, ValueReader> readers, Map<Component, Integer> scores) {
        if (likely.isEmpty()) {
            return likely;
        }
        Set<String> said = properties(readers.get(likely.get(0)));
        // a sheet that calls its product by name over and over is of that, whatever else its figures would fit
        Optional<Component> fuller = readers.keySet().stream().filter(one -> 3 * scores.get(one) >= scores.get(likely.get(0)) && isFuller(
            properties(readers.get(one)), said)).findFirst();
        return fuller.filter(one -> said.size() > 1).map(one -> Stream.concat(Stream.of(one), likely.stream()).distinct().toList())
            .orElse(likely);
    }

    /** Whether more is said: all the same and further things, or twice as much with all but one of the same. */
    private static boolean isFuller(Set<String> more, Set<String> said) {
        long same = said.stream().filter(more::contains).count();
        return more.size() > said.size() && same == said.size()
            || more.size() >= 2 * said.size() - 1 && same + 1 >= said.size() && (said.size() > 2 || more.size() > MANY);
    }

    /** The names of the properties that a value would be shown of. */
    private static Set<String> properties(ValueReader reader) {
        return reader.found().stream().filter(found -> found.confidence() >= Taken.LEAST_CONFIDENCE)
            .map(found -> found.value().property().substring(found.value().property().indexOf('.') + 1)).collect(Collectors.toSet());
    }

    /**
     * The only model of a sheet, when it is what the sheet is about, is no model among others: "Oxbow 60 (each ply)" below "Oxbow 60".
     * Of several models the one that the sheet's title names is its own, the others are told of beside it.
     */
    private static List<Found> alone(List<Found> found, String product, String title, Set<String> headed) {
        Set<String> models = new LinkedHashSet<>();
        // what stands under "Other boards" doesn't tell which is the sheet's own
        found.stream().filter(one -> one.confidence() >= Taken.LEAST_CONFIDENCE).map(Found::model).filter(model -> !model.isEmpty())
            .forEach(models::add);
        if (!models.isEmpty()) {
            // the sheet's own product may head a column beside others that says nothing new of it: "see front"
            headed.stream().filter(model -> names(product, model)).forEach(models::add);
        }
        List<String> own = models.stream().filter(model -> names(models.size() == 1 ? title : product, model) || models.size() == 1
            && isOfWords(title, model)).toList();
        if (own.size() == 1 && models.size() > 1 && areApart(found, own.get(0))) {
            // "Oxbow Ledge" above results that hold for each of its profiles
            return found.stream().map(one -> one.model().equals(own.get(0)) ? one.of("") : one).toList();
        }
        boolean told = found.stream().filter(one -> one.model().isEmpty() && one.confidence() >= Taken.LEAST_CONFIDENCE)
            .map(one -> one.value().property()).distinct().count() >= BESIDE_MODELS;
        // a sheet that bears the very name of one of them is its own
        boolean named = own.size() == 1 && names(own.get(0).replaceAll("\\s*\\([^()]*\\)$", ""), product);
        // "Dimple 8" and "Dimple 8G" are of one family, though the title bears the name of the first
        boolean family = own.size() == 1 && models.stream().anyMatch(model -> !model.equals(own.get(0)) && model.startsWith(own.get(0)));
        if (own.size() != 1 || family || models.size() > 1 && !told && !named) {
            return found;
        }
        return found.stream().map(one -> one.model().isEmpty() ? one : one.model().equals(own.get(0)) ? one.of("")
            : one.with(Math.min(one.confidence(), ANOTHERS), "It is of another product than the sheet's own.")).toList();
    }

    /** Whether nothing that is told of one model is told of any other too. */
    private static boolean areApart(List<Found> found, String model) {
        Set<String> own = new LinkedHashSet<>();
        Set<String> others = new LinkedHashSet<>();
        found.stream().filter(one -> one.confidence() >= Taken.LEAST_CONFIDENCE && !one.model().isEmpty()).forEach(one -> (one.model()
            .equals(model) ? own : others).add(one.value().property()));
        return !own.isEmpty() && !others.isEmpty() && own.stream().noneMatch(others::contains);
    }

    /** "Type S sample wall" below "Sample wall, type S". */
    private static boolean isOfWords(String title, String model) {
        List<String> words = List.of(Plain.of(model).split(" "));
        return words.size() > 2 && List.of(Plain.of(title).split(" ")).containsAll(words);
    }

    private static boolean names(String title, String model) {
        String bare = RESULTS.matcher(model.replaceAll("\\s*\\([^()]*\\)$", "")).replaceFirst("");
        return (" " + unmarked(title) + " ").contains(" " + unmarked(bare) + " ");
    }

    /** A name without the marks of a trade name, which may be set as letters at its end. */
    private static String unmarked(String name) {
        return Plain.of(name.replaceAll("[™®©℠]", " ").replaceAll("(?<=\\p{L})(?:TM|SM)\\b|\\((?:TM|R|SM)\\)", " "));
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        layouts.forEach(layout -> layout.lines().forEach(line -> text.append(line.text()).append(' ')));
        return text.toString();
    }

    /** How many of a component's names a text holds; names within longer ones are not told again. */
    private int named(Component component, String plain) {
        String text = " " + plain + " ";
        List<String> names = new ArrayList<>(new LinkedHashSet<>(Stream.concat(Stream.of(component.title()),
            vocabulary.names(component.id()).stream()).map(name -> " " + Plain.of(name) + " ").toList()));
        names.sort(Comparator.comparingInt(String::length).reversed());
        int named = 0;
        for (String name : names) {
            named += text.contains(name) ? 1 : 0;
            text = text.replace(name, " | ");
        }
        return named;
    }

    private List<Unread> pictures() {
        List<Unread> unread = new ArrayList<>();
        for (SheetPage page : pages) {
            if (page.picture()) {
                unread.add(new Unread(page.number(), Optional.empty(), "", "picture without text"));
            } else if (page.width() == 0) {
                unread.add(new Unread(page.number(), Optional.empty(), "", "only the first " + Pages.MOST + " pages are read"));
            }
        }
        return unread;
    }
}

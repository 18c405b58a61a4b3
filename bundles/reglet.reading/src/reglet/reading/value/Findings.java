package reglet.reading.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Compare;
import reglet.model.Quantity;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.Word;
import reglet.reading.page.Layout.Line;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Plain;

/** The values that were taken down so far. Properties are named by their paths: COMPONENT.PROPERTY. */
final class Findings {
    /** "TS", "TS screw, for steel", "KG-7 series". */
    private static final Pattern SERIES = Pattern.compile("(\\p{Lu}[\\p{Lu}\\d-]+)(?:[ ,].*)?");
    private static final Pattern APART = Pattern.compile("\\s*(?:,|&|/|\\band\\b)\\s*");

    private final List<Found> found = new ArrayList<>();
    private final Models models;
    private final TableTitles titles;
    /** The only model that the words at hand name; "" for none. */
    private String spoken = "";
    /** The model whose list is read; "" outside such lists. */
    private String listed = "";
    /** Values whose models only the words round them name. */
    private final Set<Found> told = Collections.newSetFromMap(new IdentityHashMap<>());

    Findings(Models models) {
        this.models = models;
        this.titles = new TableTitles(models);
    }

    /** The words that the values which are added next stand in or beside. */
    void words(String words) {
        spoken = models.only(words);
    }

    /** The title of the table that is read; "" outside tables. */
    void title(String next) {
        titles.title(next);
    }

    /** The row that is read next: a line by itself heads the list of a model, or ends that of another. */
    void row(Line row) {
        if (row.cells().size() == 1 && !row.text().contains(": ")) {
            String line = row.text().replaceAll("\\s+", " ").strip();
            listed = models.isHeading(line) ? models.own(line) : "";
        }
    }

    /** No table or list is open. */
    void ended() {
        title("");
        listed = "";
    }

    void add(Found added) {
        Found one = added.of(added.model().isEmpty() ? spoken.isEmpty() ? listed : spoken : models.own(added.model()));
        if (added.model().isEmpty() && !spoken.isEmpty()) {
            told.add(one);
        }
        found.add(one);
        titles.note(one);
    }

    /** All of them. Where several tables state the same property, each under a title of its own, the titles name the models. */
    List<Found> all() {
        Set<String> known = models();
        // what is said of one model in passing is no further value where the sheet says what holds for all
        return titles.named(found.stream().map(one -> told.contains(one) && found.stream().anyMatch(other -> other.model().isEmpty()
            && other.confidence() >= Taken.LEAST_CONFIDENCE && other.value().property().equals(one.value().property())) ? one.of("") : one)
            .toList()).stream().flatMap(one -> each(one, known).stream().map(model -> model.equals(one.model()) ? one : one.of(
                model))).toList();
    }

    /**
     * The models that a name in a table is of: "D-3, D-5" is of two that other tables name apart, "D-2 (light)" of D-2, and "TS screw, for
     * steel" of TS-114 and TS-200.
     */
    private List<String> each(Found one, Set<String> known) {
        String model = one.model();
        List<String> items = known.stream().filter(item -> isOfSeries(item, model)).sorted().toList();
        List<Found> own = found.stream().filter(other -> items.contains(other.model()) && other.confidence() >= Taken.LEAST_CONFIDENCE
            && other.value().property().equals(one.value().property())).toList();
        // "DM-34SF" has a row of its own beside "DM-34SF-P", "TS screw, for steel" hasn't beside "TS-114"
        if (!items.isEmpty() && own.stream().allMatch(other -> !model.equals(series(model)) && other.value().value().equals(one.value()
            .value()))) {
            return items.stream().filter(item -> own.stream().noneMatch(other -> other.model().equals(item))).toList();
        }
        String bare = model.replaceFirst("\\s*\\([^()]*\\)$", "");
        List<String> parts = List.of(APART.split(bare));
        return !bare.equals(model) && known.contains(bare) ? List.of(bare) : parts.size() > 1 && known.containsAll(parts) ? parts
            : List.of(model);
    }

    /** Whether there is a value of a property of one of several models. */
    boolean hasOfModels(String property) {
        return found.stream().anyMatch(one -> one.value().property().equals(property) && !one.model().isEmpty());
    }

    /** Whether there is a value of a property of a model, or of the series that it is an item of. */
    boolean hasOf(String model, String property) {
        return found.stream().filter(one -> one.value().property().equals(property)).anyMatch(one -> one.model().equals(model)
            || isOfSeries(model, one.model()));
    }

    /** Whether a list of a series, "TS screw, for steel", tells of an item: "TS-114". */
    private static boolean isOfSeries(String item, String list) {
        String series = series(list);
        return !series.isEmpty() && item.startsWith(series + "-");
    }

    /** The mark that the name of a series begins with, or that it is; "" for none. */
    private static String series(String list) {
        Matcher series = SERIES.matcher(list);
        return series.matches() ? series.group(1) : "";
    }

    /** Whether there is a value of a property that will be shown. */
    boolean has(String property) {
        return found.stream().anyMatch(one -> one.value().property().equals(property) && one.confidence() >= Taken.LEAST_CONFIDENCE);
    }

    /** The models that values were taken down of. */
    Set<String> models() {
        return found.stream().map(Found::model).filter(model -> !model.isEmpty()).collect(Collectors.toSet());
    }

    /** The models of which a word was taken down that some words in one spelling, between blanks, hold. */
    Set<String> modelsOf(String plain) {
        return found.stream().filter(one -> !one.model().isEmpty() && one.value().value() instanceof Word
            && plain.contains(" " + Plain.of(one.value().value().text()) + " ")).map(Found::model)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Gives the amounts of a property on a page that are told without a sense the one that a note says they have. */
    void meant(String property, int page, Compare sense) {
        for (int i = 0; i < found.size(); i++) {
            Found one = found.get(i);
            SheetValue value = one.value();
            if (value.property().equals(property) && value.page() == page && value.compare().isEmpty() && value
                .value() instanceof Quantity) {
                Found limit = new Found(new SheetValue(value.property(), value.value(), Optional.of(sense), value.method(), value.edition(),
                    value.text(), page, value.box(), value.confirmed()), one.label(), one.model(), one.confidence(), one.doubt(),
                        one.also());
                found.set(i, limit);
                titles.replace(one, limit);
            }
        }
    }

    /** Gives the amounts of a property on a page, where none stands with a standard of its own, the one that a note names for them. */
    void by(String property, int page, Citation citation) {
        boolean own = found.stream().anyMatch(one -> one.value().property().equals(property) && !one.value().method().isEmpty()
            && one.confidence() >= Taken.LEAST_CONFIDENCE);
        for (int i = 0; i < found.size() && !own; i++) {
            Found one = found.get(i);
            if (one.value().property().equals(property) && one.value().page() == page) {
                SheetValue value = one.value();
                Found shown = new Found(new SheetValue(value.property(), value.value(), value.compare(), citation.name(),
                    citation.edition(),
                    value.text(), page, value.box(), value.confirmed()), one.label(), one.model(), one.confidence(), one.doubt(),
                        one.also());
                found.set(i, shown);
                titles.replace(one, shown);
            }
        }
    }
}

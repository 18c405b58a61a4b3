package reglet.reading.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Property;

/** The names of a component's properties: which of them some words in one spelling are, with or without words that change nothing. */
public final class PropertyNames {
    /** Words that change nothing of what a label names. */
    private static final Set<String> BENIGN = Set.of("nominal", "typical", "average", "avg", "mean", "overall", "actual", "approximate",
        "approx",
        "test", "tested", "result", "value", "property", "product", "material", "of", "the", "a", "and", "per", "method", "minimum", "min",
        "maximum", "max", "in", "by", "to", "standard", "recommended", "suggested", "required", "rated", "our", "its", "stated",
            "declared", "published", "certified", "this", "like");
    /** Words of the conditions under which something was measured. */
    private static final Pattern CONDITION = Pattern.compile("\\d+(?:\\.\\d+)?%?|%|day|d|h|hr|hour|hrs|at|after|when|average|avg|of|"
        + "five|three|ten|unit|specimen|"
        + "sample|mean|typical|nominal|min|minimum|max|maximum|pa|psf|f|c|°f|°c|degree|dry|cure|cured|initial|per|test|both|way|direction|"
        + "rh|lb|ft2|load|granite|limestone|marble|brick|concrete|aluminum|wood|osb|plywood|cmu|masonry|substrate|porous|"
        + "stone|veneer|"
        + "msv|unit|quarry|tile|ceramic|porcelain|metal|anodized|mill|finish|painted|glass|gypsum|sheathing|block|prism|cube|mortar|cycle|"
        + "vertical|\\d+[fc]|modified|strain|compression|deflection|desiccant|cup|procedure|method|mat|only|and|to|the|a|b|c|"
        + "scratch|coat|coated|without|liner|immersion|water|wet|aged|aging|heat|uv|squeeze|film|release|carrier|facing|as"
        + "|received|original|unaged|md|cd|individual|unprimed"
        + "|primed|hg|wc|"
        + "mil|inch|in|mm|dft|measured|under|installed|density|pcf|kpa|pass|number|no|year|month|week|cement|specimens|lab"
        + "|laboratory|faced|foam|mass|loss|impervious|proc|temperature|deformation|yield|applied"
        + "|white|vinyl|plastic|pvc|steel|galvanized|copper|precast|stucco|plaster|eifs|bare|clay|bonded"
        + "|core|ga|gage|gauge|manufactured|natural|thin|dynamic|less|excluding|excl|including|incl|release|liners|backing");

    /** Words that say that a value is the least: of a name alone where they stand by themselves or last. */
    private static final Pattern LEAST = Pattern.compile("(?:.* )?min(?:imum)?(?: .*)?|(?:at )?least|(?:.* )?(?:at least"
        + "|not? (?:less|thinner|shorter|lower) than|not (?:under|below)|lowest)(?: .*)?");
    private static final Pattern MOST = Pattern.compile("(?:.* )?(?:max(?:imum)?|greatest)(?: .*)?|(?:at )?most|(?:.* )?(?:at most"
        + "|not? (?:more|thicker|longer|greater|higher|wider) than|not (?:over|above|exceeding|to exceed)|up to)(?: .*)?");

    private static final Pattern EXTREME = Pattern.compile("\\b(?:longest|lowest|highest|least|most|greatest|largest|smallest)\\b");

    private final Map<String, List<Property>> names = new LinkedHashMap<>();
    private final Map<String, List<Property>> turned = new HashMap<>();
    /** Every word of the names of the component's properties: a text without any names none, which is soon told. */
    private final Set<String> said = new HashSet<>();
    /** Every word of every name in the pack. */
    private final Set<String> words;
    private final Set<String> own = new LinkedHashSet<>();

    PropertyNames(Vocabulary vocabulary, Component component) {
        for (Property property : component.properties()) {
            if (Labels.isOfTheWork(property)) {
                continue;
            }
            name(property.label(), property);
            vocabulary.names(component.id() + "." + property.name()).forEach(label -> name(label, property));
        }
        vocabulary.names(component.id()).forEach(label -> own.addAll(List.of(Plain.of(label).split(" "))));
        own.addAll(List.of(Plain.of(component.title()).split(" ")));
        this.words = vocabulary.words();
        names.keySet().forEach(name -> said.addAll(List.of(name.split(" "))));
        names.forEach((name, properties) -> turned.merge(sorted(name, Set.of()), properties, (one, other) -> one.equals(other) ? one
            : List.of()));
        turned.remove("");
        turned.values().removeIf(List::isEmpty);
    }

    private void name(String label, Property property) {
        List<Property> same = names.computeIfAbsent(Plain.of(label), key -> new ArrayList<>());
        if (!same.contains(property)) {
            same.add(property);
        }
    }

    /** The properties that words in one spelling name, without anything else. */
    List<Property> of(String plain) {
        return names.getOrDefault(plain, List.of());
    }

    /** Whether a word of a text in one spelling stands in a name. */
    boolean holdWordOf(String plain) {
        return List.of(plain.split(" ")).stream().anyMatch(said::contains);
    }

    /** Whether a word stands in a name of the pack, of whatever it be. */
    boolean isOfThePack(String word) {
        return words.contains(word);
    }

    /** A text in one spelling, with its slips of the pen mended; empty when it has none that can be. */
    Optional<String> mended(String plain) {
        return Spelling.mended(plain, said, words);
    }

    /** Whether some words hold one by which a property is called, and which says something of it. */
    boolean areHintedAt(Property property, Set<String> words) {
        return names.entrySet().stream().filter(name -> name.getValue().contains(property)).flatMap(name -> Stream
            .of(name.getKey().split(" "))).anyMatch(word -> word.length() > 3 && !BENIGN.contains(word) && !own.contains(word)
                && !CONDITION.matcher(word).matches() && words.contains(word));
    }

    /** Whether all words in one spelling are of the conditions under which something was measured. */
    public static boolean isCondition(String plain) {
        return plain.isEmpty() || List.of(plain.split(" ")).stream().allMatch(word -> CONDITION.matcher(word).matches());
    }

    /** @param quality of a label that is such a name and nothing else */
    Optional<Label> exact(String plain, double quality) {
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        Optional<Compare> sense = sense(plain);
        if (names.containsKey(plain)) {
            // "minimum application temperature" and "maximum face dimension" are what is asked for, and no limit of it
            return Optional.of(new Label(names.get(plain), quality, "", sense.filter(one -> names.get(plain).stream().noneMatch(
                PropertyNames::isExtreme)), List.of()));
        }
        String without = List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word)).reduce((a, b) -> a + " " + b).orElse("");
        if (names.containsKey(without)) {
            return Optional.of(new Label(names.get(without), quality * 0.97, "", sense, List.of()));
        }
        String others = List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word) && !own.contains(word))
            .reduce((a, b) -> a + " " + b).orElse("");
        if (names.containsKey(others)) {
            return Optional.of(new Label(names.get(others), quality * 0.94, "", sense, List.of()));
        }
        // names of the pack may themselves hold words that change nothing, and makers turn words round: "unit weight, saturated"
        return others.isEmpty() ? Optional.empty() : Optional.ofNullable(turned.getOrDefault(sorted(plain, Set.of()),
            turned.get(sorted(others,
            own)))).map(properties -> new Label(properties, quality * 0.88, "", sense, List.of()));
    }

    /** Whether a property is itself the least or the most of something. */
    private static boolean isExtreme(Property property) {
        return property.type().unit().filter(unit -> unit.dimension() == Dimension.TEMPERATURE).isPresent()
            || EXTREME.matcher(property.label()).find();
    }

    /** The words that say something, in the order of the alphabet. */
    private static String sorted(String plain, Set<String> without) {
        return List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word) && !without.contains(word)).sorted()
            .reduce((a, b) -> a + " " + b).orElse("");
    }

    /** The sense that words in one spelling state: "minimum thickness". */
    static Optional<Compare> sense(String plain) {
        boolean least = LEAST.matcher(plain).matches();
        boolean most = MOST.matcher(plain).matches();
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }
}

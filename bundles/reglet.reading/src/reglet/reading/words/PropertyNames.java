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
import reglet.model.PropertyType.Kind;

/** The names of a component's properties: which of them some words in one spelling are, with or without words that change nothing. */
public final class PropertyNames {
    /** Words that change nothing of what a label names. */
    private static final Set<String> BENIGN = Set.of("nominal", "typical", "average", "avg", "mean", "overall", "actual", "approximate",
        "approx",
        "test", "tested", "result", "value", "property", "product", "material", "of", "the", "a", "and", "per", "method", "minimum", "min",
        "maximum", "max", "in", "by", "to", "standard", "recommended", "suggested", "required", "rated", "our", "its", "stated",
            "declared", "published", "certified", "this", "like");
    /** Words of the conditions under which something was measured. */
    /** "Flame spread index, all depths". */
    private static final Pattern OF_ALL = Pattern.compile("(?:all|both|each|every|any) (?:model|depth|size|thickness|thicknesse|width|weight"
        + "|grade|type|color|profile|style|version|face|variant|product|item|one)?");
    private static final Pattern CONDITION = Pattern.compile("\\d+(?:\\.\\d+)?%?|%|day|d|h|hr|hour|hrs|at|after|when|average|avg|of|"
        + "five|three|ten|unit|specimen|"
        + "sample|mean|typical|nominal|min|minimum|max|maximum|pa|psf|f|c|°f|°c|degree|dry|cure|cured|initial|per|test|both|way|direction|"
        + "rh|lb|ft2|load|granite|limestone|marble|brick|concrete|aluminum|wood|osb|plywood|cmu|masonry|substrate|porous|"
        + "stone|veneer|"
        + "msv|unit|quarry|tile|ceramic|porcelain|metal|anodized|mill|finish|painted|glass|gypsum|sheathing|block|prism|cube|mortar|cycle|"
        + "vertical|\\d+[fc]|modified|strain|compression|deflection|desiccant|cup|procedure|method|mat|only|and|to|the|a|b|c|"
        + "scratch|coat|coated|without|liner|immersion|water|wet|aged|aging|heat|uv|squeeze|film|release|carrier|facing|as"
        + "|received|set|supplied|furnished|delivered|rest|original|unaged|md|cd|individual|unprimed"
        + "|primed|hg|wc|"
        + "mil|inch|in|mm|dft|measured|under|installed|density|pcf|kpa|pass|number|no|year|month|week|cement|specimens|lab"
        + "|laboratory|faced|foam|mass|loss|impervious|proc|temperature|deformation|yield|applied"
        + "|white|vinyl|plastic|pvc|steel|galvanized|copper|precast|stucco|plaster|eifs|bare|clay|bonded"
        + "|saturated|core|ga|gage|gauge|manufactured|natural|thin|dynamic|less|excluding|excl|including|incl|release|liners|backing");

    /** Words that say that a value is the least: of a name alone where they stand by themselves or last. */
    private static final Pattern LEAST = Pattern.compile("(?:.* )?min(?:imum)?(?: .*)?|(?:at )?least|(?:.* )?(?:at least"
        + "|least (?:number|count)"
        + "|not? (?:less|thinner|shorter|lower) than|not (?:under|below)|lowest)(?: .*)?");
    private static final Pattern MOST = Pattern.compile("(?:.* )?(?:max(?:imum)?|greatest)(?: .*)?|(?:permitted|permissible|allowed"
        + "|allowable) (?:.* )?(?:deviation|tolerance|variation|departure)(?: .*)?|(?:at )?most|(?:.* )?(?:at most"
        + "|not? (?:more|thicker|longer|greater|higher|wider) than|not (?:over|above|exceeding|to exceed)|up to)(?: .*)?");

    /** Where the head of a label ends. */
    private static final Pattern APART = Pattern.compile("\\s*[,;|]\\s*|\\s+[-–—/]\\s+|\\s+(?:of|for|over|on|in|to|from|between|before"
        + "|after|at|with|without|behind|within|per|under|against|by|during|through|along|into|if|when|where|until|and)\\s+");
    /** Words of what is no property of a product, or of what is changed in one. */
    private static final Set<String> OTHER = Set.of("roll", "carton", "bag", "box", "pallet", "bundle", "package", "packaging", "packing",
        "shipping", "shipment", "storage", "shelf", "unopened", "pot", "wet", "uncured", "liner", "tolerance", "deviation", "variation",
        "price", "warranty", "quantity", "piece", "recovery", "change", "loss", "increase", "reduction", "retained", "retention", "gain",
        "yield", "covered", "other", "per", "not", "no", "unit", "lot", "pail", "drum", "cartridge", "truck", "flow", "color", "available",
        "stock");
    /** Words of a way of loading something: strength in one says nothing of strength in another. */
    private static final Set<String> LOADED = Set.of("tensile", "flexural", "flexure", "tension", "shear", "bending", "tear", "puncture",
        "impact", "modulus", "elongation");
    /** Behind these stands what an answer holds for. */
    private static final Set<String> WHERE = Set.of("for", "at", "on", "from", "off");
    private static final Set<String> TOWARDS = Set.of("with", "to", "for", "on", "over", "against", "if", "when");
    private static final double BESIDE = 0.9;
    private static final double AT_HEAD = 0.86;
    private static final double SPREAD = 0.82;
    private static final int MOST_WORDS = 10;
    /** How far a name's word stands from the one before it at most. */
    private static final int FARTHEST = 3;
    private static final Pattern EXTREME = Pattern.compile("\\b(?:longest|lowest|highest|least|most|greatest|largest|smallest)\\b");

    private final Map<String, List<Property>> names = new LinkedHashMap<>();
    /** Names that hold beside a value alone. */
    private final Map<String, List<Property>> beside = new HashMap<>();
    private final Map<String, List<Property>> turned = new HashMap<>();
    /** Every word of the names of the component's properties: a text without any names none, which is soon told. */
    private final Set<String> said = new HashSet<>();
    /** Every word of every name in the pack. */
    private final Set<String> words;
    private final Set<String> own = new LinkedHashSet<>();
    /** The words of the names of each property. */
    private final Map<Property, Set<String>> wordsOf = new HashMap<>();
    /** Names that hold several words which say something, by their first. */
    private final Map<String, List<String>> byFirst = new HashMap<>();

    PropertyNames(Vocabulary vocabulary, Component component) {
        for (Property property : component.properties()) {
            if (Labels.isOfTheWork(property)) {
                continue;
            }
            name(property.label(), property);
            vocabulary.names(component.id() + "." + property.name()).forEach(label -> name(label, property));
            vocabulary.labels(component.id() + "." + property.name()).forEach(label -> {
                String plain = Plain.of(label);
                Stream.of(plain, without(plain, Set.of())).filter(name -> !name.isEmpty()).distinct().forEach(name -> beside
                    .computeIfAbsent(name, fresh -> new ArrayList<>()).add(property));
                said.addAll(List.of(Plain.of(label).split(" ")));
                wordsOf.computeIfAbsent(property, fresh -> new HashSet<>()).addAll(List.of(Plain.of(label).split(" ")));
            });
        }
        vocabulary.names(component.id()).forEach(label -> own.addAll(List.of(Plain.of(label).split(" "))));
        own.addAll(List.of(Plain.of(component.title()).split(" ")));
        this.words = vocabulary.words();
        names.forEach((name, properties) -> {
            List<String> parts = List.of(name.split(" "));
            said.addAll(parts);
            properties.forEach(property -> wordsOf.computeIfAbsent(property, fresh -> new HashSet<>()).addAll(parts));
            if (parts.stream().filter(word -> !BENIGN.contains(word) && !own.contains(word)).count() > 1) {
                byFirst.computeIfAbsent(parts.get(0), fresh -> new ArrayList<>()).add(name);
            }
        });
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

    /** Whether some words hold one of a way of loading that the property's own names and label don't. */
    public static boolean areOfAnotherLoad(Property property, Set<String> words) {
        List<String> own = List.of((Plain.of(property.label()) + " " + property.name()).split(" "));
        return words.stream().anyMatch(word -> LOADED.contains(word) && !own.contains(word));
    }

    /** Whether all words in one spelling are of the conditions under which something was measured. */
    public static boolean isCondition(String plain) {
        return plain.isEmpty() || OF_ALL.matcher(plain).matches() || List.of(plain.split(" ")).stream().allMatch(word -> CONDITION.matcher(
            word).matches());
    }

    /** @param quality of a label that is such a name and nothing else */
    Optional<Label> exact(String plain, double quality) {
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        Optional<Label> found = in(names, plain, quality);
        if (found.isPresent()) {
            return found;
        }
        Optional<Compare> sense = sense(plain);
        String others = without(plain, own);
        // names of the pack may themselves hold words that change nothing, and makers turn words round: "unit weight, saturated"
        return others.isEmpty() ? Optional.empty() : Optional.ofNullable(turned.getOrDefault(sorted(plain, Set.of()),
            turned.get(sorted(others,
            own)))).map(properties -> new Label(properties, quality * 0.88, "", sense, List.of()));
    }

    /** A name that holds beside a value alone, word by word: it says more than one that is put together of words that change nothing. */
    Optional<Label> beside(String plain) {
        return names.containsKey(plain) || names.containsKey(without(plain, Set.of())) ? Optional.empty() : in(beside, plain, BESIDE);
    }

    /**
     * A name that a label holds with other words: at its head, before a comma or a preposition, or with words between its own. None where
     * one of the others says that it is about something else.
     *
     * @param text  the label without what stands in brackets
     * @param whole all that it says, in one spelling
     */
    Optional<Label> held(String text, String whole) {
        String head = Plain.of(APART.split(text, 2)[0]);
        String[] said = Plain.of(text).split(" ");
        if (said.length > MOST_WORDS || text.contains(": ")) {
            return Optional.empty();
        }
        Optional<Label> only = in(beside, Plain.of(text), BESIDE);
        if (only.isPresent()) {
            return only;
        }
        Optional<Label> first = exact(head, AT_HEAD).or(() -> in(beside, head, AT_HEAD)).filter(label -> label.properties().stream()
            .allMatch(property -> isOnly(property, head, whole)));
        return first.or(() -> spread(said, whole)).map(label -> new Label(label.properties(), label.quality(), "", sense(whole),
            List.of()));
    }

    /** The longest name of several words that a label holds in their order. */
    private Optional<Label> spread(String[] said, String whole) {
        String best = "";
        for (int i = 0; i < said.length; i++) {
            for (String name : byFirst.getOrDefault(said[i], List.of())) {
                boolean flag = names.get(name).stream().anyMatch(property -> property.type().kind() == Kind.FLAG);
                if (name.length() > best.length() && !flag && isSpread(name.split(" "), said, i) && names.get(name).stream()
                    .allMatch(property -> isOnly(property, name, whole))) {
                    best = name;
                }
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(new Label(names.get(best), SPREAD, "", Optional.empty(), List.of()));
    }

    private static boolean isSpread(String[] name, String[] said, int from) {
        int at = from;
        for (int i = 1; i < name.length; i++) {
            int next = at + 1;
            while (next < said.length && next <= at + FARTHEST && !said[next].equals(name[i])) {
                next++;
            }
            if (next >= said.length || next > at + FARTHEST) {
                return false;
            }
            at = next;
        }
        return true;
    }

    /** Whether what a label says beside a name of a property is of nothing else: neither of another property nor of other things. */
    private boolean isOnly(Property property, String name, String whole) {
        Set<String> without = new HashSet<>(List.of(name.split(" ")));
        Set<String> of = wordsOf.getOrDefault(property, Set.of());
        boolean flag = property.type().kind() == Kind.FLAG;
        return List.of(whole.split(" ")).stream().filter(word -> !without.contains(word)).allMatch(word -> !OTHER.contains(word)
            && !LOADED.contains(word) && !(flag && TOWARDS.contains(word)) && (of.contains(word) || !said.contains(word) || BENIGN.contains(word)
                || CONDITION.matcher(word).matches()));
    }

    /** A name among some, with or without words that say nothing new. */
    private Optional<Label> in(Map<String, List<Property>> known, String plain, double quality) {
        Optional<Compare> sense = sense(plain);
        if (known.containsKey(plain)) {
            // "minimum application temperature" and "maximum face dimension" are what is asked for, and no limit of it
            return Optional.of(new Label(known.get(plain), quality, "", sense.filter(one -> known.get(plain).stream().noneMatch(
                PropertyNames::isExtreme)), List.of()));
        }
        String without = without(plain, Set.of());
        String others = without(plain, own);
        return known.containsKey(without) ? Optional.of(new Label(known.get(without), quality * 0.97, "", sense, List.of()))
            : known.containsKey(others) ? Optional.of(new Label(known.get(others), quality * 0.94, "", sense, List.of()))
            : Optional.empty();
    }

    private static String without(String plain, Set<String> own) {
        return List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word) && !own.contains(word)).reduce((a, b) -> a + " "
            + b).orElse("");
    }

    /** Whether a property is itself the least or the most of something. */
    private static boolean isExtreme(Property property) {
        return property.type().unit().filter(unit -> unit.dimension() == Dimension.TEMPERATURE).isPresent()
            || EXTREME.matcher(property.label()).find();
    }

    /** The words that say something, in the order of the alphabet: "weep holes for heads" are "weep holes at heads". */
    private static String sorted(String plain, Set<String> without) {
        return List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word) && !without.contains(word)
            && !WHERE.contains(word)).sorted()
            .reduce((a, b) -> a + " " + b).orElse("");
    }

    /** The sense that words in one spelling state: "minimum thickness". */
    public static Optional<Compare> sense(String plain) {
        boolean least = LEAST.matcher(plain).matches();
        boolean most = MOST.matcher(plain).matches();
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }
}

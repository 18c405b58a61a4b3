package reglet.drafting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Numbers;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.Synonym;

/** Values and kinds that a person typed into a text: those that the choices require, and others. */
final class OwnValues {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])" + Numbers.pattern());
    /** A unit has at most so many words: "lb per sq yd". */
    private static final int UNIT_WORDS = 4;
    /** A shorter kind says too little without its label. */
    private static final int TELLING = 4;
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.;])\\s+(?=[\\p{Lu}])");
    private static final Pattern LEAST = Pattern.compile("\\b(?:at least|not less than|no less than|minimum(?: of)?|or more)\\b",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern MOST = Pattern.compile("\\b(?:at most|not more than|no more than|maximum(?: of)?|not "
        + "exceed(?:ing)?|or less)\\b",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern NOT = Pattern.compile("\\b(?:not|no|never|without|nor|other than|instead of)\\b",
        Pattern.CASE_INSENSITIVE);

    private final Assembly assembly;
    private final OwnText text;
    private final List<Contradiction> found = new ArrayList<>();
    private final Set<Requirement> stated = new LinkedHashSet<>();

    /** A value that is stated in two ways. */
    record Contradiction(PaperRule rule, Place at, String component, String says, String fix) {
    }

    private OwnValues(Assembly assembly, OwnText text) {
        this.assembly = assembly;
        this.text = text;
    }

    /** What a text says otherwise than the choices. */
    static List<Contradiction> of(Assembly assembly, OwnText text) {
        return read(assembly, text).found;
    }

    /** The requirements that a text speaks of in its own words: rightly, or so that {@link #of} tells the contradiction. */
    static Set<Requirement> stated(Assembly assembly, OwnText text) {
        return read(assembly, text).stated;
    }

    private static OwnValues read(Assembly assembly, OwnText text) {
        OwnValues values = new OwnValues(assembly, text);
        for (String sentence : SENTENCE.split(text.text())) {
            values.sentence(Designations.without(assembly.pack(), sentence));
        }
        return values;
    }

    private void sentence(String sentence) {
        List<Component> named = named(sentence);
        if (named.isEmpty()) {
            named = named(text.above());
        }
        if (named.isEmpty()) {
            named = text.about().map(List::of).orElse(List.of());
        }
        for (Component component : named) {
            words(component, sentence);
            spelled(component, sentence);
        }
        List<Component> meant = named;
        Matcher number = NUMBER.matcher(sentence);
        while (number.find()) {
            quantity(number.group(), sentence.substring(number.end())).ifPresent(quantity -> {
                List<Meant> labelled = meant(meant, sentence, number.start(), quantity.dimension());
                compare(labelled, quantity, sentence, number.start(), number.end());
                if (labelled.isEmpty()) {
                    // "Lath: 3.4 lb/yd2" has no label, and only one thing that it can mean.
                    assembly.requirements().stream().filter(requirement ->
                        fits(requirement.property(), quantity.dimension()) && same(requirement, quantity) && meant.stream()
                            .anyMatch(component -> component.id().equals(requirement.component()))).forEach(stated::add);
                }
            });
        }
    }

    /** Kinds, grades and dates that a text spells as the choices do: "expanded metal", "movement class 50", "2028-05-01". */
    private void spelled(Component component, String sentence) {
        for (Requirement requirement : assembly.requirements()) {
            Kind kind = requirement.property().type().kind();
            if (!requirement.component().equals(component.id()) || kind != Kind.WORD && kind != Kind.GRADE && kind != Kind.DATE) {
                continue;
            }
            String value = "\\b" + Pattern.quote(requirement.value().text()) + "(?![\\w/.-]*\\w)";
            String label = requirement.property().label();
            Matcher found = Pattern.compile(kind != Kind.GRADE && requirement.value().text().length() >= TELLING ? value
                : "\\b" + Pattern.quote(label.substring(label.lastIndexOf(' ') + 1)) + "\\s+" + value, Pattern.CASE_INSENSITIVE)
                .matcher(sentence);
            if (found.find() && !NOT.matcher(sentence.substring(0, found.start())).find()) {
                stated.add(requirement);
            }
        }
    }

    private static Optional<Quantity> quantity(String number, String rest) {
        String[] words = rest.strip().split("\\s+");
        for (int count = Math.min(UNIT_WORDS, words.length); count > 0; count--) {
            String unit = String.join(" ", Arrays.copyOf(words, count));
            for (String written : List.of(unit, unit.replaceFirst("[.,;:)]+$", ""))) {
                Optional<Quantity> quantity = written.isEmpty() ? Optional.empty() : Quantity.parse(number + " " + written);
                if (quantity.isPresent() && quantity.get().dimension() != Dimension.COUNT) {
                    return quantity;
                }
            }
        }
        return Optional.empty();
    }

    /** Components that a text names, the longest names first, so that "lath fasteners" are not lath. */
    private List<Component> named(String sentence) {
        String left = sentence.toLowerCase(Locale.ROOT);
        List<Component> named = new ArrayList<>();
        List<Component> longest = assembly.pack().components().stream()
            .sorted(Comparator.comparingInt((Component component) -> -component.id().length())).toList();
        for (Component component : longest) {
            for (String name : names(component)) {
                Matcher matcher = Pattern.compile("\\b" + Pattern.quote(name) + "s?\\b").matcher(left);
                if (matcher.find()) {
                    named.add(component);
                    left = matcher.replaceAll("|");
                }
            }
        }
        return named.stream().distinct().toList();
    }

    private static List<String> names(Component component) {
        return Stream.of(component.title().toLowerCase(Locale.ROOT).replaceFirst("s$", ""), component.id().replace('_', ' ')).distinct()
            .toList();
    }

    /** A property of a component that a text names. */
    private record Meant(Component component, Property property) {
    }

    /**
     * The properties of that dimension whose label stands nearest before the number, else nearest after it; several where components
     * that the text names have the same label, such as a thickness.
     */
    private List<Meant> meant(List<Component> components, String sentence, int at, Dimension dimension) {
        List<Meant> nearest = new ArrayList<>();
        int distance = Integer.MAX_VALUE;
        for (Component component : components) {
            for (Property property : component.properties()) {
                int away = fits(property, dimension) ? away(labels(component, property), sentence, at) : Integer.MAX_VALUE;
                if (away < distance) {
                    nearest.clear();
                    distance = away;
                }
                if (away == distance && away < Integer.MAX_VALUE) {
                    nearest.add(new Meant(component, property));
                }
            }
        }
        return nearest;
    }

    private static boolean fits(Property property, Dimension dimension) {
        return (property.type().kind() == Kind.QUANTITY || property.type().kind() == Kind.RANGE)
            && property.type().unit().orElseThrow().dimension() == dimension;
    }

    /** How far labels stand from a number. */
    private static int away(Set<String> labels, String sentence, int at) {
        int nearest = Integer.MAX_VALUE;
        for (String label : labels) {
            Matcher matcher = Pattern.compile("\\b" + Pattern.quote(label) + "(?:s|es|ed|ped|ing)?\\b", Pattern.CASE_INSENSITIVE)
                .matcher(sentence);
            while (matcher.find()) {
                // what is said before its number is meant; what follows is the next thing
                int away = matcher.end() <= at ? at - matcher.end() : matcher.start() - at + sentence.length();
                // of two labels at the same place the longer says more: "end lap" and "lap"
                nearest = Math.min(nearest, away * 100 - Math.min(99, label.length()));
            }
        }
        return nearest;
    }

    private Set<String> labels(Component component, Property property) {
        Set<String> labels = new LinkedHashSet<>(List.of(property.label(), property.name().replace('_', ' ')));
        assembly.pack().synonyms().stream().filter(synonym -> synonym.property().equals(component.id() + "." + property.name()))
            .map(Synonym::labels).forEach(labels::addAll);
        return labels;
    }

    private List<Requirement> required(Component component, Property property) {
        return assembly.requirements().stream().filter(requirement -> requirement.component().equals(component.id())
            && requirement.property().name().equals(property.name())).toList();
    }

    private void compare(List<Meant> meant, Quantity typed, String sentence, int start, int end) {
        List<Meant> required = meant.stream().filter(one -> !required(one.component(), one.property()).isEmpty()).toList();
        List<Meant> agreeing = required.stream().filter(one -> agrees(one, typed, sentence, start, end)).toList();
        agreeing.forEach(one -> required(one.component(), one.property()).stream().filter(requirement -> same(requirement, typed))
            .forEach(stated::add));
        if (required.isEmpty() || !agreeing.isEmpty()) {
            return;
        }
        Meant first = required.get(0);
        String said = (sense(LEAST, sentence, start, end) ? "at least " : sense(MOST, sentence, start, end) ? "at most " : "")
            + typed.text();
        contradiction(first.component(), first.property(), typed.amount(), said,
            required(first.component(), first.property()).stream().map(Phrases::required).distinct().toList());
    }

    /** Whether a typed value is one that is required, in the same sense. */
    private boolean agrees(Meant meant, Quantity typed, String sentence, int start, int end) {
        boolean otherSense = meant.property().compare() == Compare.AT_LEAST && sense(MOST, sentence, start, end)
            || meant.property().compare() == Compare.AT_MOST && sense(LEAST, sentence, start, end);
        return !otherSense && required(meant.component(), meant.property()).stream().anyMatch(requirement -> same(requirement, typed));
    }

    /** Whether words of a sense stand close around a number. */
    private static boolean sense(Pattern words, String sentence, int start, int end) {
        return words.matcher(sentence.substring(Math.max(0, start - 25), start)).find()
            || words.matcher(sentence.substring(end, Math.min(sentence.length(), end + 20))).find();
    }

    private static boolean same(Requirement requirement, Quantity typed) {
        if (requirement.value() instanceof Range range) {
            return range.low().compareWith(typed) == 0 || range.high().compareWith(typed) == 0;
        }
        return requirement.value() instanceof Quantity quantity && quantity.compareWith(typed) == 0;
    }

    /** Kinds named right before the component that are not the kind required: "polyurethane sealant". */
    private void words(Component component, String sentence) {
        for (Property property : component.properties()) {
            Set<String> required = required(component, property).stream().map(requirement -> requirement.value().text())
                .collect(Collectors.toCollection(LinkedHashSet::new));
            if (property.type().kind() != Kind.WORD || required.isEmpty()) {
                continue;
            }
            String nouns = names(component).stream().map(name -> name.substring(name.lastIndexOf(' ') + 1)).distinct().map(Pattern::quote)
                .collect(Collectors.joining("|"));
            for (String word : property.type().words()) {
                Matcher matcher = Pattern.compile("\\b" + Pattern.quote(word) + "(?: \\p{L}+)? (?:" + nouns + ")s?\\b",
                    Pattern.CASE_INSENSITIVE)
                    .matcher(sentence);
                if (!required.contains(word) && matcher.find() && !NOT.matcher(sentence.substring(0, matcher.start())).find()) {
                    contradiction(component, property, word, word, List.copyOf(required));
                }
            }
        }
    }

    private void contradiction(Component component, Property property, String phrase, String said, List<String> required) {
        stated.addAll(required(component, property));
        boolean other = !component.section().equals(text.section());
        found.add(new Contradiction(other ? PaperRule.SECTIONS : PaperRule.VALUES, text.at(phrase), component.id(), "Paragraph "
            + text.path()
            + " of Section " + text.section() + " says " + said + " for " + component.title() + ", " + property.label() + "; "
            + (other ? "Section " + component.section() + " requires " : "the choices require ") + Phrases.list(required, "or") + ".",
            "Print it with the slot ${" + component.id() + "." + property.name() + "}, or change the choice."));
    }
}

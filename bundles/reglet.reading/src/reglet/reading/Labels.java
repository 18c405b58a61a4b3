package reglet.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Synonym;
import reglet.reading.Citations.Citation;

/** Tells which property of a component a maker's label names. A label with a word too many, such as "roll width", names none. */
final class Labels {
    /** Words that change nothing of what a label names. */
    private static final Set<String> BENIGN = Set.of("nominal", "typical", "average", "avg", "mean", "overall", "actual", "approximate",
        "approx",
        "test", "tested", "result", "value", "property", "product", "material", "of", "the", "a", "and", "per", "method", "minimum", "min",
        "maximum", "max", "in", "by", "to", "standard");
    /** Words of the conditions under which something was measured. */
    private static final Pattern CONDITION = Pattern.compile("\\d+(?:\\.\\d+)?%?|%|day|d|h|hr|hour|hrs|at|after|when|average|avg|of|"
        + "five|three|ten|unit|specimen|"
        + "sample|mean|typical|nominal|min|minimum|max|maximum|pa|psf|f|c|°f|°c|degree|dry|cure|cured|initial|per|test|both|way|direction|"
        + "rh|lb|ft2|strain|compression|deflection|desiccant|cup|procedure|method|mat|only|and|to|the");
    private static final Pattern MARKS = Pattern.compile("[‐-―−/_,;:()\\[\\]\"“”'’+.\\s\\u00a0-]+");
    private static final Map<String, String> SHORT = Map.of("max", "maximum", "min", "minimum", "temp", "temperature", "grey", "gray");
    /** "Weight lb/yd²": a unit at the end that can be nothing else. */
    private static final Pattern UNIT_LAST = Pattern.compile("(.*\\S)\\s+((?:\\S*[/²%°]\\S*|mm|psi|psf|perms?|mils?|mil|kPa|MPa|days"
        + "|inches|in\\.?|ft\\.?))\\s*");
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");

    private final Component component;
    private final Citations citations;
    private final Map<String, List<Property>> names = new LinkedHashMap<>();
    private final Map<String, List<Property>> turned = new HashMap<>();
    private final Map<String, Optional<Label>> seen = new HashMap<>();
    /** Every word of the names of the component's properties: a text without any names none, which is soon told. */
    private final Set<String> said = new HashSet<>();
    /** Every word of every name in the pack. */
    private final Set<String> words = new HashSet<>();
    private final Set<String> own = new LinkedHashSet<>();

    /**
     * What a label says.
     *
     * @param properties that it may name, in the order of the pack
     * @param quality    from 0 to 1
     * @param unit       the unit that it states for its values; ""
     * @param sense      the sense that it states
     * @param methods    the standards that it names
     */
    record Label(List<Property> properties, double quality, String unit, Optional<Compare> sense, List<Citation> methods) {
    }

    Labels(Pack pack, Component component, Citations citations) {
        this.component = component;
        this.citations = citations;
        for (Property property : component.properties()) {
            name(property.label(), property);
            for (Synonym synonym : pack.synonyms()) {
                if (synonym.property().equals(component.id() + "." + property.name())) {
                    synonym.labels().forEach(label -> name(label, property));
                }
                if (synonym.property().equals(component.id())) {
                    synonym.labels().forEach(label -> own.addAll(List.of(plain(label).split(" "))));
                }
            }
        }
        own.addAll(List.of(plain(component.title()).split(" ")));
        pack.components().forEach(one -> one.properties().forEach(property -> words.addAll(List.of(plain(property.label()).split(" ")))));
        pack.synonyms().forEach(synonym -> synonym.labels().forEach(label -> words.addAll(List.of(plain(label).split(" ")))));
        names.keySet().forEach(name -> said.addAll(List.of(name.split(" "))));
        names.forEach((name, properties) -> turned.merge(sorted(name), properties, (one, other) -> one.equals(other) ? one : List.of()));
        turned.remove("");
        turned.values().removeIf(List::isEmpty);
    }

    private void name(String label, Property property) {
        List<Property> same = names.computeIfAbsent(plain(label), key -> new ArrayList<>());
        if (!same.contains(property)) {
            same.add(property);
        }
    }

    Component component() {
        return component;
    }

    /** What a label says; empty when it names no property of the component. */
    Optional<Label> read(String written) {
        return seen.computeIfAbsent(written, this::find);
    }

    private Optional<Label> find(String written) {
        if (written.length() > 120 || written.isBlank()) {
            return Optional.empty();
        }
        if (List.of(plain(written).split(" ")).stream().noneMatch(said::contains)) {
            return Optional.empty();
        }
        List<Citation> methods = citations.in(written);
        String text = Citations.without(written, methods).replaceAll("^[\\s•·▪■*-]+", "").replaceAll("[:=\\s]+$", "");
        String unit = "";
        StringBuilder bare = new StringBuilder();
        StringBuilder whole = new StringBuilder();
        Matcher inside = PARENTHESES.matcher(text);
        int from = 0;
        while (inside.find()) {
            bare.append(text, from, inside.start()).append(' ');
            whole.append(text, from, inside.start()).append(' ');
            from = inside.end();
            String content = inside.group(1).strip();
            if (!content.isEmpty() && UnitSpelling.isUnit(content)) {
                unit = content;
            } else {
                whole.append(content).append(' ');
            }
        }
        bare.append(text.substring(from));
        whole.append(text.substring(from));
        int comma = bare.lastIndexOf(",");
        if (unit.isEmpty() && comma > 0 && UnitSpelling.isUnit(bare.substring(comma + 1))) {
            unit = bare.substring(comma + 1).strip();
            bare.setLength(comma);
            whole = new StringBuilder(bare);
        }
        Matcher last = UNIT_LAST.matcher(bare);
        if (unit.isEmpty() && last.matches() && UnitSpelling.isUnit(last.group(2)) && named(last.group(1), 1).isPresent()) {
            unit = last.group(2);
            bare = new StringBuilder(last.group(1));
            whole = new StringBuilder(bare);
        }
        String hint = unit;
        String outside = bare.toString();
        return named(whole.toString(), 1).or(() -> named(outside, PARENTHESES.matcher(text).results()
            .allMatch(match -> isCondition(plain(match.group(1))) || UnitSpelling.isUnit(match.group(1).strip())
                || names.containsKey(plain(match.group(1)))) ? 0.97 : 0))
            .filter(label -> label.quality() > 0)
            .map(label -> new Label(label.properties, label.quality, hint, label.sense, methods));
    }

    private Optional<Label> named(String text, double quality) {
        int stroke = text.indexOf(" / ");
        if (stroke > 0 && text.indexOf(" / ", stroke + 1) < 0) {
            // the same in another language, of which the pack knows no word
            String other = plain(text.substring(stroke + 3));
            boolean foreign = !other.isEmpty() && List.of(other.split(" ")).stream().noneMatch(words::contains);
            return foreign ? named(text.substring(0, stroke), quality * 0.95) : Optional.empty();
        }
        if (text.contains(":") && !text.strip().endsWith(":")) {
            // "surface burning: flame spread index"
            return exact(plain(text.substring(text.lastIndexOf(':') + 1)), quality * 0.93);
        }
        Optional<Label> whole = exact(plain(text), quality);
        if (whole.isPresent()) {
            return whole;
        }
        // "compressive strength, average of five units", "permeance after 7 days"
        String[] parts = text.split("[,;@]|\\s[-–—]\\s|\\bat\\b|\\bafter\\b|\\bwhen\\b");
        if (parts.length > 1) {
            Optional<Label> first = exact(plain(parts[0]), quality * 0.97);
            boolean conditions = true;
            for (int i = 1; i < parts.length; i++) {
                conditions &= isCondition(plain(parts[i]));
            }
            if (first.isPresent() && conditions) {
                return first;
            }
        }
        return Optional.empty();
    }

    private static boolean isCondition(String plain) {
        return plain.isEmpty() || List.of(plain.split(" ")).stream().allMatch(word -> CONDITION.matcher(word).matches());
    }

    private Optional<Label> exact(String plain, double quality) {
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        if (names.containsKey(plain)) {
            return Optional.of(new Label(names.get(plain), quality, "", Optional.empty(), List.of()));
        }
        Optional<Compare> sense = sense(plain);
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
        return others.isEmpty() ? Optional.empty() : Optional.ofNullable(turned.get(sorted(others)))
            .map(properties -> new Label(properties, quality * 0.92, "", sense, List.of()));
    }

    /** The words that say something, in the order of the alphabet. */
    private String sorted(String plain) {
        return List.of(plain.split(" ")).stream().filter(word -> !BENIGN.contains(word) && !own.contains(word)).sorted()
            .reduce((a, b) -> a + " " + b).orElse("");
    }

    private static Optional<Compare> sense(String plain) {
        boolean least = plain.matches("(?:.* )?min(?:imum)?(?: .*)?");
        boolean most = plain.matches("(?:.* )?max(?:imum)?(?: .*)?");
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }

    /** Words in one spelling: lower case, American, singular, without marks. */
    static String plain(String words) {
        String text = MARKS.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" ").replace("&", " and ").replace("vapour", "vapor")
            .replace("colour", "color").replace("aluminium", "aluminum").replace("fibre", "fiber").replace("mould", "mold")
            .replace("galvanis", "galvaniz").replace("metre", "meter");
        StringBuilder plain = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!word.isEmpty()) {
                plain.append(plain.length() == 0 ? "" : " ").append(SHORT.getOrDefault(word, singular(word)));
            }
        }
        return plain.toString();
    }

    private static String singular(String word) {
        boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
            && Character.isLetter(word.charAt(word.length() - 2));
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}

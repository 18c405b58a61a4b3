package reglet.reading.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.reading.page.Items;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Sentence;

/**
 * Which of a sheet's models a sentence is about: those that it names, by their whole names or by the part that tells them apart ("FF" of
 * "Quillseal FF"); one that begins with "it" is about those of the sentence before.
 */
final class Told {
    private static final Pattern GOES_ON = Pattern.compile("(?i)\\W*(?:it|its|they|this one|the same)\\b.*");
    /** What may stand before the first name of a sentence that tells of several models apart. */
    private static final Pattern BEFORE = Pattern.compile("\\s*(?:.*:\\s*)?(?:(?:The|Choose|Use|Take|Set|Order|Pick|Select)\\s+)?");
    private static final Pattern FIRST = Pattern.compile("\\W*(?:(?:[Tt]he|Choose|Use|Take|Set|Order|Pick|Select|With|For) "
        + ")*(?:\\p{Ll}+er )?");
    private static final Pattern AND = Pattern.compile("\\s*(?:,|&|/|,? ?\\b(?:and|or)\\b)\\s*");
    private static final Pattern NEXT = Pattern.compile("(?s)\\s*\\S.*(?:[,;]|,? and|,? while|; and)\\s+(?:the\\s+)?");
    /** "ZCJ: zinc alloy", "SM blocks: cellular PVC". */
    private static final Pattern SERIES = Pattern.compile("\\W*([\\p{Lu}\\d][\\p{Lu}\\d-]*)(?:[ -](?:series|blocks?|plates?|profiles?"
        + "|types?|models?|units?|joints?|beads?))?\\s*(?::|=|[–—-](?=\\s))\\s");
    /** "The dimples of the MS items", "PS and PC items may be tied". */
    private static final String MARKS = "((?:[\\p{Lu}\\d][\\p{Lu}\\d-]*(?:, ?(?:and |or )?| and | or | & |/))*[\\p{Lu}\\d][\\p{Lu}\\d-]*)";
    private static final String KINDS = "(?i:series|items|blocks?|plates?|profiles?|types?|models?|units?|joints?|beads?|rods?|screeds?"
        + "|clips?|strips?|sizes|parts|products?|nails|screws|staples)";
    private static final Pattern KIND_OF_SERIES = Pattern.compile("(?<![\\w-])(?:" + MARKS + "[ -]" + KINDS + "\\b|" + KINDS + " " + MARKS
        + "(?![\\w-]))");
    private static final Pattern AS = Pattern.compile("\\W*(?i:as|like|same as|similar to|identical to) (?i:the "
        + ")?(?=\\S*[\\p{Lu}\\d])[\\p{Lu}\\d]");
    private static final Pattern CODED = Pattern.compile("(\\p{Lu}[\\p{Lu}\\d]*-?\\d[\\p{L}\\d-]*) \\p{L}.*");
    private static final Pattern STEM = Pattern.compile("(?<=-\\d{1,4})\\p{Lu}{1,2}$");
    private static final Pattern MARK = Pattern.compile("(?=.*[\\p{Lu}\\d])[\\p{Lu}\\d][\\p{L}\\d./-]*");

    /** "30 days" names no model "30". */
    private static final String UNITS = "|\\s?(?:[%°\"]|(?:d|days?|h|hours?|weeks?|months?|years?|in|inch(?:es)?|mm|cm|ft|feet"
        + "|mils?|psi|psf|lbf?|lbs"
        + "|perms?|pcf|ga|gauge|degrees?|cycles|minutes?|min|to|or)\\b)";

    private final Map<String, String> names = new LinkedHashMap<>();

    Told(Set<String> models) {
        models.forEach(model -> names.put(model, model));
        Stream.<UnaryOperator<String>>of(Told::part, Told::code,
            Told::stem).forEach(shorter -> models.stream().collect(Collectors.groupingBy(shorter))
            .forEach((part, own) -> {
                if (own.size() == 1 && part.length() > 1 && MARK.matcher(part).matches()) {
                    names.putIfAbsent(part, own.get(0));
                }
            }));
    }

    /** The last word of a name, which tells it from its like. */
    private static String part(String model) {
        String[] words = model.strip().split("\\s+");
        return words[words.length - 1];
    }

    /** The code before a name's words: "MU-2" of "MU-2 Wall mock-up"; "" for none. */
    private static String code(String model) {
        Matcher code = CODED.matcher(model.strip());
        return code.matches() ? code.group(1) : "";
    }

    /** A code without the letters behind it: "TB-40" of "TB-40Z". */
    private static String stem(String model) {
        return STEM.matcher(model.strip()).replaceFirst("");
    }

    boolean isOfSeveral() {
        return Set.copyOf(names.values()).size() > 1;
    }

    /**
     * A sentence, and the models that it is about; none for all of them.
     *
     * @param told whether a heading or a mark before it tells whose it is, and not a name within it
     */
    record About(Sentence sentence, Set<String> models, boolean told) {
        static About ofAll(Sentence sentence) {
            return new About(sentence, Set.of(), false);
        }
    }

    List<About> of(Layout layout) {
        List<About> all = new ArrayList<>();
        Set<String> last = Set.of();
        Set<String> headed = Set.of();
        Pattern any = any();
        boolean series = false;
        Headings headings = new Headings(layout, this);
        for (Sentence sentence : layout.sentences()) {
            List<About> parts = isOfSeveral() ? parts(sentence, any) : List.of();
            if (!parts.isEmpty()) {
                all.addAll(parts);
                last = Set.of();
                continue;
            }
            Set<String> named = named(sentence.cell().text());
            headed = headings.from(sentence, headed);
            if (!headed.isEmpty() && AS.matcher(sentence.cell().text()).lookingAt()) {
                // "As QM-16, with a paper backing" below the heading of another
                named = Set.of();
            }
            boolean begins = SERIES.matcher(sentence.cell().text()).lookingAt() && !named.isEmpty();
            // "KG7: Roll formed of steel. Base metal 0.0172 in."
            series = begins || series && named.isEmpty() && !sentence.before().isBlank() && !Sayings.isOfEach(sentence.cell().text());
            boolean told = named.isEmpty() && (!headed.isEmpty() || series) || begins || named.size() > 1 && isOneGroup(sentence, any)
                || named.size() == 1 && beginsShort(sentence, any);
            named = named.isEmpty() && !series ? headed : named;
            boolean goesOn = named.isEmpty() && !sentence.before().isBlank() && (series || GOES_ON.matcher(sentence.cell().text())
                .matches());
            Set<String> about = goesOn ? last : named;
            all.add(new About(sentence, about, told));
            last = about;
        }
        return all;
    }

    /** The model whose row of a table a line is; "" for none. */
    String model(Line line) {
        return line.cells().size() < 2 ? "" : names.getOrDefault(line.cells().get(0).text().replaceAll("\\s+", " ").strip(), "");
    }

    /** Any of the names as a word of its own, the longer one where one begins with another. */
    private Pattern any() {
        return Pattern.compile("(?<![\\w-])(?:" + names.keySet().stream().sorted(Comparator.comparing(String::length).reversed())
            .map(Pattern::quote).collect(Collectors.joining("|")) + ")(?![\\w-]|\\.\\d)");
    }

    /** "Oxbow CC is Type C, Oxbow SB and Oxbow SF Type B": the parts of a sentence, each of which begins with names of other models. */
    private List<About> parts(Sentence sentence, Pattern any) {
        String text = sentence.cell().text();
        List<About> parts = new ArrayList<>();
        Set<String> models = new LinkedHashSet<>();
        int from = -1;
        int end = 0;
        Matcher name = any.matcher(text);
        while (name.find()) {
            String between = text.substring(end, name.start());
            if (from < 0 ? !BEFORE.matcher(between).matches() : !AND.matcher(between).matches() && !NEXT.matcher(between).matches()) {
                return List.of();
            }
            if (from >= 0 && !AND.matcher(between).matches()) {
                parts.add(new About(Sentence.of(sentence.cell().part(from, name.start())), models, true));
                models = new LinkedHashSet<>();
                from = -1;
            }
            from = from < 0 ? name.start() : from;
            models.add(names.get(name.group()));
            end = name.end();
        }
        if (parts.isEmpty() || text.substring(end).isBlank()) {
            return List.of();
        }
        parts.add(new About(Sentence.of(sentence.cell().part(from, text.length())), models, true));
        return parts;
    }

    /** Whether several models are named in one breath, or by their series alone: "set PC-2 or PC-3 over them". */
    private static boolean isOneGroup(Sentence sentence, Pattern any) {
        String text = sentence.cell().text();
        Matcher name = any.matcher(text);
        int end = -1;
        while (name.find()) {
            if (end >= 0 && !AND.matcher(text.substring(end, name.start())).matches()) {
                return false;
            }
            end = name.end();
        }
        return true;
    }

    /** "Choose CC 25% to 33% larger than the joint", of "Oxbow CC": what a sentence begins with is its model, though it isn't named
     * whole. */
    private boolean beginsShort(Sentence sentence, Pattern any) {
        String text = sentence.cell().text();
        Matcher name = any.matcher(text);
        return name.find() && !names.get(name.group()).equals(name.group()) && FIRST.matcher(text.substring(0, name.start())).matches();
    }

    /** The models that a heading is of: those that it names, or a series: "66X, expanded flange" of 66X-50 and 66X-75. */
    Set<String> headed(String heading) {
        Set<String> named = named(heading);
        if (!named.isEmpty()) {
            return named.size() < Set.copyOf(names.values()).size() ? named : Set.of();
        }
        for (String word : heading.split("[\\s,:;()]+")) {
            Set<String> series = series(word);
            if (!series.isEmpty()) {
                return series;
            }
        }
        return Set.of();
    }

    /** Some of the models, whose names begin with a mark: "ZCJ" of ZCJ-38 and ZCJ-50, "FWS-G" of FWS-G38. */
    private Set<String> series(String mark) {
        Set<String> series = MARK.matcher(mark).matches() && mark.length() > 1 ? names.values().stream().filter(model -> model.matches(
            Pattern.quote(mark) + "(?:[-–/. ].+|(?<=\\p{L})\\d.*)")).collect(Collectors.toCollection(LinkedHashSet::new)) : Set.of();
        return series.size() < Set.copyOf(names.values()).size() ? series : Set.of();
    }

    /** Some of the models, whose names end with a mark: "the M types" of "Oxbow 6M", "Oxbow 10M" and "Oxbow 10". */
    private Set<String> ending(String mark) {
        return names.containsKey(mark) ? Set.of(names.get(mark)) : names.values().stream().filter(model -> model.matches(".*[\\d -]"
            + Pattern.quote(mark))).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The models that a designation is of: those of its series, else the one that is called so. */
    Set<String> each(String designation) {
        Set<String> series = names.containsKey(designation) ? Set.of() : series(designation);
        return series.isEmpty() ? Set.of(names.getOrDefault(designation, designation)) : series;
    }

    Set<String> named(String text) {
        Set<String> named = new LinkedHashSet<>();
        String item = Items.model(text);
        if (!item.isEmpty()) {
            // "No. KS-114, same as KX-114 but without holes"
            return each(item);
        }
        Matcher series = SERIES.matcher(text);
        Set<String> own = series.lookingAt() ? series(series.group(1)) : Set.of();
        if (!own.isEmpty()) {
            return own;
        }
        names.forEach((name, model) -> {
            if (Pattern.compile("(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-]|\\.\\d" + (
                name.matches("\\d+") ? UNITS : "") + ")").matcher(text).find()) {
                named.add(model);
            }
        });
        return named.isEmpty() ? ofSeries(text) : named;
    }

    /** "The dimples of the MS items hold the mesh 1/4 in. off": the models of the series that a sentence names. */
    private Set<String> ofSeries(String text) {
        Set<String> all = new LinkedHashSet<>();
        Matcher marks = KIND_OF_SERIES.matcher(text);
        while (marks.find()) {
            for (String mark : AND.split(marks.group(1) == null ? marks.group(2) : marks.group(1))) {
                Set<String> series = series(mark);
                all.addAll(series.isEmpty() ? ending(mark) : series);
            }
        }
        return all.size() < Set.copyOf(names.values()).size() ? all : Set.of();
    }
}

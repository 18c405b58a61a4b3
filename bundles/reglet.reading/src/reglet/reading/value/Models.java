package reglet.reading.value;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the models of a sheet are called, told once from all its tables: where one table gives each a name and a code, both are names of the
 * same product, and one of them is its name all over the sheet.
 */
public final class Models {
    /** "OW-140", "Stud-Drain 8F", "CW-G"; no word that a sentence may say of anything. */
    private static final Pattern CODE = Pattern.compile("(?=.*\\p{Lu})(?=.*(?:\\d|-\\p{Lu}))\\S+(?: \\S+){0,3}");
    private static final int SHORTEST = 3;

    private final Map<String, String> own = new LinkedHashMap<>();
    private final Map<String, Pattern> codes = new LinkedHashMap<>();
    private final Set<String> headings = new LinkedHashSet<>();
    private final Set<String> parts = new LinkedHashSet<>();

    /** A name that some table gives a model. */
    public void name(String name) {
        if (name.length() >= SHORTEST && !name.contains(":") && CODE.matcher(name).matches()) {
            known(name);
        }
    }

    /** Names of one family, "Oxbow CC" and "Oxbow SB", which head columns beside each other: names, though they hold no number. */
    public void family(List<String> names) {
        names.forEach(this::known);
    }

    /** Whether some table gives a model such a name. */
    public boolean isName(String name) {
        return codes.containsKey(name);
    }

    private void known(String name) {
        codes.putIfAbsent(name, Pattern.compile("(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-]|\\.\\d)"));
    }

    /** A second name of a model. */
    public void alias(String other, String name) {
        own.putIfAbsent(other, name);
        name(other);
        name(name);
    }

    /** A heading above a list that says of a model what another list, below another heading, says of another one. */
    public void heads(String heading) {
        headings.add(heading);
        name(heading);
    }

    /**
     * Designations that each begin a heading of a part of the sheet: "SHS-16 Wide crown staple". None where a table has their sizes by
     * name: "SHS-16-100".
     */
    public void parts(List<String> names) {
        if (codes.keySet().stream().noneMatch(code -> names.stream().anyMatch(name -> code.startsWith(name + "-")))) {
            parts.addAll(names);
            names.forEach(this::name);
        }
    }

    /** The designations by which parts of the sheet are headed. */
    Set<String> parts() {
        return parts;
    }

    /** Whether a line heads the list of a model. */
    boolean isHeading(String line) {
        return headings.contains(line);
    }

    /** The name by which a model is told of, whichever of its names a table or sentence uses. */
    String own(String model) {
        String plain = model.replaceAll("\\s+", " ").strip();
        return own.getOrDefault(plain, plain);
    }

    /** Some of the models, but not all of them, that some words name by their codes; none where they name all. */
    List<String> some(String words) {
        Set<String> named = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>();
        codes.forEach((code, pattern) -> {
            all.add(own(code));
            if (words.contains(code) && pattern.matcher(words).find()) {
                named.add(own(code));
            }
        });
        return named.size() == all.size() ? List.of() : new ArrayList<>(named);
    }

    /** The only one of several models that some words name by its code; "" for none. */
    String only(String words) {
        List<String> named = some(words);
        return named.size() == 1 ? named.get(0) : "";
    }
}

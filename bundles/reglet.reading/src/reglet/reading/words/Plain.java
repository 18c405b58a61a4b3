package reglet.reading.words;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Words in one spelling, by which labels and names are compared. */
public final class Plain {
    private static final Pattern MARKS = Pattern.compile("[‐-―−/_,;:()\\[\\]\"“”'’+.\\s\\u00a0-]+");
    private static final Map<String, String> SHORT = Map.ofEntries(
        Map.entry("max", "maximum"), Map.entry("min", "minimum"), Map.entry("comp", "compressive"), Map.entry("temp", "temperature"),
        Map.entry("grey", "gray"), Map.entry("dia", "diameter"), Map.entry("wt", "weight"), Map.entry("thk", "thickness"),
        Map.entry("galv", "galvanized"), Map.entry("ht", "height"), Map.entry("dim", "dimension"),
        Map.entry("dims", "dimension"), Map.entry("compr", "compressive"), Map.entry("absorp", "absorption"),
        Map.entry("tens", "tensile"), Map.entry("mtl", "material"), Map.entry("appl", "application"), Map.entry("reqd", "required"),
        Map.entry("req", "required"), Map.entry("nom", "nominal"), Map.entry("matl", "material"), Map.entry("elong", "elongation"));
    private static final Pattern ON_CENTER = Pattern.compile("\\bo c\\b");
    private static final Set<String> SINGULAR = Set.of("series", "species");
    /** Components are tried one after the other on the same words. */
    private static final Map<String, String> SPELT = new ConcurrentHashMap<>();
    private static final int MOST_SPELT = 20_000;

    private Plain() {
    }

    /** Words in one spelling: lower case, American, singular, without marks. */
    public static String of(String words) {
        if (SPELT.size() > MOST_SPELT) {
            SPELT.clear();
        }
        return SPELT.computeIfAbsent(words, Plain::spelt);
    }

    private static String spelt(String words) {
        String text = MARKS.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" ").replace("&", " and ").replace("@", " at ")
            .replace("vapour", "vapor")
            .replace("colour", "color").replace("aluminium", "aluminum").replace("fibre", "fiber").replace("mould", "mold")
            .replace("galvanis", "galvaniz").replace("metre", "meter");
        text = text.contains("req d") ? text.replace("req d", "required") : text;
        // "o.c.", "o/c"
        text = text.contains("o c") ? ON_CENTER.matcher(text).replaceAll("oc") : text;
        StringBuilder plain = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!word.isEmpty()) {
                plain.append(plain.length() == 0 ? "" : " ").append(SHORT.getOrDefault(word, singular(word)));
            }
        }
        return plain.toString();
    }

    private static String singular(String word) {
        if (word.length() > 4 && word.endsWith("ies")) {
            // "properties", but "series" and "species" are no plurals
            return SINGULAR.contains(word) ? word : word.substring(0, word.length() - 3) + "y";
        }
        boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
            && Character.isLetter(word.charAt(word.length() - 2));
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}

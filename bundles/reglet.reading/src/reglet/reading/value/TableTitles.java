package reglet.reading.value;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.SheetReading.Found;
import reglet.reading.words.Plain;

/** The titles above tables, which name models where several tables state the same property. */
final class TableTitles {
    /** Heads a table of whatever product. */
    private static final Pattern GENERAL = Pattern.compile("(?:table \\w+ )?(?:(?:typical|physical|technical|test|lab|laboratory"
        + "|performance|product|material|general|key|mechanical|performance|tested|nominal|and|of|summary|result|by) )*(?:data|property"
        + "|result|value|characteristic|performance|test|information|specification|test result|specimen|sample)(?: \\d+)?");

    private final Map<Found, String> titles = new IdentityHashMap<>();
    private final Models models;
    private String title = "";

    TableTitles(Models models) {
        this.models = models;
    }

    /** The title of the table that is read; "" outside tables. */
    void title(String next) {
        // "Technical data @ 73 °F, 50 % RH"
        String bare = next.replaceFirst("(?i)\\s(?:@|at|after)\\s.*\\d.*|\\s*\\([^()]*\\)\\s*$", "");
        title = GENERAL.matcher(Plain.of(bare)).matches() ? "" : next;
    }

    /** A value of the table that is read. */
    void note(Found one) {
        if (!title.isEmpty()) {
            titles.put(one, title);
        }
    }

    void replace(Found one, Found other) {
        String above = titles.remove(one);
        if (above != null) {
            titles.put(other, above);
        }
    }

    /** The same values, those under titles of their own as of models, those under titles that name some models as of these. */
    List<Found> named(List<Found> found) {
        Set<String> several = new HashSet<>();
        for (Found one : found) {
            String own = titles.getOrDefault(one, "");
            boolean elsewhere = found.stream().anyMatch(other -> other.value().property().equals(one.value().property())
                && !titles.getOrDefault(other, "").isEmpty() && !titles.get(other).equals(own));
            if (one.model().isEmpty() && !own.isEmpty() && elsewhere) {
                several.add(own);
            }
        }
        // "Other test data, OW-140 only" says whose they are
        return found.stream().flatMap(one -> {
            List<String> named = one.model().isEmpty() ? models.some(titles.getOrDefault(one, "")) : List.of();
            return !named.isEmpty() ? named.stream().map(one::of) : Stream.of(one.model().isEmpty() && several.contains(titles
                .getOrDefault(one, "")) ? one.of(titles.get(one)) : one);
        }).toList();
    }
}

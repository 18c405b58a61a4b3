package reglet.reading.sheet;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Property;

/**
 * Tells whether a property has a meaning beside the words that a sheet was found to say, by the plain forms of the pack's conditions: a
 * word compared to one or some others, or a property that is either so or not, joined by "and" or "or". What it doesn't understand, or
 * what the sheet doesn't say, applies.
 */
final class Applying {
    private static final Pattern COMPARED = Pattern.compile("\\s*\\w+\\.(\\w+)\\s*(==|!=|in)\\s*(\"[^\"]*\"|\\[[^\\]]*\\])\\s*");
    private static final Pattern FLAG = Pattern.compile("\\s*\\w+\\.(\\w+)\\s*");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

    private Applying() {
    }

    /** @param words what was found for a property by its name; null for nothing */
    static boolean applies(Property property, Function<String, String> words) {
        return property.only().isEmpty() || Stream.of(property.only().split("\\|\\|")).anyMatch(either -> Stream.of(either.split("&&"))
            .allMatch(each -> holds(each, words)));
    }

    private static boolean holds(String condition, Function<String, String> words) {
        Matcher flag = FLAG.matcher(condition);
        if (flag.matches()) {
            return !"no".equals(words.apply(flag.group(1)));
        }
        Matcher compared = COMPARED.matcher(condition);
        String word = compared.matches() ? words.apply(compared.group(1)) : null;
        if (word == null) {
            return true;
        }
        List<String> named = QUOTED.matcher(compared.group(3)).results().map(match -> match.group(1)).toList();
        return compared.group(2).equals("!=") != named.contains(word);
    }
}

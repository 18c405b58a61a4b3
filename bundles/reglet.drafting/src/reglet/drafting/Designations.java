package reglet.drafting;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Pack;

/** Standards that a text names in words. */
final class Designations {

    private Designations() {
    }

    /** "ASTM C847" of "ASTM C 847-18", each once in the order of the text. */
    static Set<String> of(Pack pack, String text) {
        Set<String> found = new LinkedHashSet<>();
        Matcher matcher = pattern(pack).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1) + " " + matcher.group(2) + matcher.group(3));
        }
        return found;
    }

    /** The text without the standards that it names, whose numbers are no quantities. */
    static String without(Pack pack, String text) {
        return pattern(pack).matcher(text).replaceAll("|");
    }

    private static Pattern pattern(Pack pack) {
        return Pattern.compile("\\b(" + String.join("|", ClauseLint.issuers(pack))
            + ")[ -]+([A-Z]{0,2})[ -]?(\\d+(?:\\.\\d+)*)(?:[-–]\\d{2,4}[a-z]?)?");
    }
}

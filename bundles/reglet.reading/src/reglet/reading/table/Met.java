package reglet.reading.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;

/** A test that is passed where what was measured keeps the limit beside it: "Freeze-thaw | mass loss ≤ 3.0 % | 0.7 %". */
final class Met {
    private static final Pattern LIMIT = Pattern.compile("(?is)[^\\d%]*(?:≤|<|\\bmax(?:imum|\\.)?|\\bnot (?:more|over)(?: than)?"
        + "|\\bat most)"
        + "\\s*(\\d+(?:\\.\\d+)?)\\s*%[^\\d]*|[^\\d%]*?(\\d+(?:\\.\\d+)?)\\s*%[^\\d]*\\bmax(?:imum|\\.)?[^\\d]*");
    private static final Pattern SHARE = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*%(?: loss)?");

    private Met() {
    }

    static boolean isMet(Property property, Cell required, Cell value) {
        Matcher limit = LIMIT.matcher(required.text());
        Matcher measured = SHARE.matcher(value.text().strip());
        return property.type().kind() == Kind.FLAG && limit.matches() && measured.matches() && Double.parseDouble(measured.group(1))
            <= Double.parseDouble(limit.group(1) == null ? limit.group(2) : limit.group(1));
    }
}

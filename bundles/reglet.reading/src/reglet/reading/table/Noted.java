package reglet.reading.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.reading.page.Cell;
import reglet.reading.value.Footnotes;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/**
 * The standards that notes or the table's title name for a column of properties: by a mark at its heading, or behind its name in the title,
 * or where the title cites the standard that the pack asks for: "Sizes and R-values (ASTM C518)".
 *
 * @param page that the table stands on
 */
record Noted(Footnotes footnotes, Labels labels, Citations citations, int page, Optional<Cell> title) {
    /** What a title names last before it goes on in brackets or with "per". */
    private static final Pattern LAST = Pattern.compile("([^,;&(]*?)\\s*(?:\\(|,? (?:per|by|to|as tested)\\b)");

    List<Citation> of(Cell head, Label label) {
        List<Citation> own = footnotes.of(page, head);
        if (!own.isEmpty() || title.isEmpty()) {
            return own;
        }
        // "Thicknesses, R-value § and permeance"
        List<Citation> behind = footnotes.behind(page, title.get(), words -> labels.read(words).map(Label::properties)
            .equals(Optional.of(label.properties())));
        return behind.isEmpty() ? titled(label) : behind;
    }

    /** The sense of what stands below a heading: "¹ Minimum, uncoated". */
    Optional<Compare> sense(Cell head) {
        return footnotes.sense(page, head);
    }

    private List<Citation> titled(Label label) {
        String text = title.get().text();
        List<Citation> cited = citations.in(text);
        Matcher last = cited.isEmpty() ? null : LAST.matcher(text);
        // "Sizes and R-values (mean temperature 75 °F, ASTM C518)"
        boolean named = last != null && last.find() && labels.read(last.group(1).replaceFirst("(?i).*\\band ", "")).map(Label::properties)
            .equals(Optional.of(label.properties()));
        return named ? cited : Citations.own(label.properties().get(0), cited);
    }
}

package reglet.reading.text;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Layout;
import reglet.reading.page.Sentence;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** What a note says of the standards that figures were found by: "All per ASTM C1670", "Weights are per ASTM C847". */
public final class Standing {
    private static final Pattern NOTE = Pattern.compile("(?i)\\s*(?:(all(?: of (?:the )?(?:above|these|them))?"
        + "|the (?:figures|values|results|data)"
        + "(?: above)?|tests?|tested|values|results|figures|data)"
        + "|(\\p{L}[\\p{L}\\s-]{2,40}?))(?: (?:tests?|testing|values?|results?|figures|data|above"
        + "|is|are|was|were|done|given|stated|shown|measured|tested|determined|found|run|made))*\\s+(?:per|by|to|under|in accordance with"
        + "|according to|as per)\\s+(?=\\p{Lu}).*");
    /** "All thicknesses are minimums", "Weights given are the greatest that …". */
    private static final Pattern LIMIT = Pattern.compile("(?i)\\s*(?:all |the |listed |stated )*(\\p{L}[\\p{L} -]{2,40}?)"
        + "(?: (?:of|for) (?:the )?\\p{L}+)?"
        + "(?: (?:given|listed|stated|shown|above))* (?:is|are) (?:the |a |given as )*(?:(least|minimums?|lowest|thinnest)"
        + "|most|maximums?|largest|greatest)\\b[^\\d]*(?:\\b(?:by|per|to|of|in)\\b.*)?");
    /** "Thermal resistance per inch at 75 °F": what the figures of each thickness were found from. */
    private static final Pattern PER_INCH = Pattern.compile("(?i)(\\p{L}[\\p{L} -]{2,40}?),? (?:per|for (?:1|one)) (?:inch|in\\b).*");
    private static final Pattern EXCEPT = Pattern.compile("(?i)\\bexcept(?:ing)?(?: for| that)?\\s+");
    private static final Pattern FIGURES = Pattern.compile("\\d");

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;

    public Standing(Labels labels, Citations citations, Taken taken) {
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    /** "Thickness is the least base metal thickness": the sense of the figures in a table above. */
    private void limits(String text, int page, List<Citation> cited) {
        Matcher limit = LIMIT.matcher(text);
        Optional<Label> label = limit.matches() ? labels.read(limit.group(1).strip()) : Optional.empty();
        Compare sense = label.isEmpty() || limit.group(2) == null ? Compare.AT_MOST : Compare.AT_LEAST;
        label.ifPresent(one -> one.properties().stream().filter(property -> property.compare() == sense).forEach(property -> {
            taken.meant(property, page, sense);
            Citations.own(property, cited).stream().findFirst().ifPresent(citation -> taken.by(property, page, citation));
        }));
    }

    /**
     * "Tested according to ASTM C1670 except flame spread": also what the pack asks no standard for, when the one named is the product's.
     */
    private void all(String text, List<Citation> cited, int page) {
        Matcher except = EXCEPT.matcher(text);
        int end = except.find() ? except.start() : text.length();
        List<Citation> covering = cited.stream().filter(citation -> citation.from() < end).toList();
        List<Property> properties = labels.component().properties();
        if (covering.size() == 1 && properties.stream().anyMatch(property -> !Citations.own(property, covering).isEmpty())) {
            properties.stream().filter(property -> property.method().isNone() && property.evidence() == Evidence.TEST_REPORT
                && property.type().kind() == Kind.FLAG && (end == text.length() || labels.read(text.substring(except.end(),
                    cited.stream().mapToInt(Citation::from).filter(from -> from > end).min().orElse(text.length()))
                    .replaceAll("[\\s,.;(]+$", "")).filter(label -> label.properties().contains(property)).isEmpty()))
                .forEach(property -> taken.by(property, page, covering.get(0)));
        }
    }

    private void by(List<Property> properties, List<Citation> cited, int page) {
        properties.forEach(property -> Citations.own(property, cited).stream().findFirst().ifPresent(citation -> taken.by(property, page,
            citation)));
    }

    /**
     * Gives the values that no method stands with the one that a note on the sheet, or the row of what they follow from, names for them.
     */
    public void read(List<Layout> layouts) {
        for (Layout layout : layouts) {
            layout.lines().stream().filter(line -> line.cells().size() > 1).forEach(line -> {
                Matcher perInch = PER_INCH.matcher(line.cells().get(0).text());
                Optional<Label> one = perInch.matches() ? labels.read(perInch.group(1).strip()) : Optional.empty();
                List<Citation> cited = one.isEmpty() ? List.of() : citations.in(line.text());
                if (cited.size() == 1) {
                    one.get().properties().forEach(property -> taken.by(property, layout.page(), cited.get(0)));
                }
            });
            for (Sentence sentence : layout.sentences()) {
                String text = sentence.cell().text();
                List<Citation> cited = citations.in(text);
                limits(text, layout.page(), cited);
                Matcher note = NOTE.matcher(text);
                if (cited.isEmpty() || FIGURES.matcher(text.substring(0, cited.get(0).from())).find() || !note.matches()) {
                    continue;
                }
                Optional<Label> one = note.group(2) == null ? Optional.empty() : labels.read(note.group(2).strip());
                by(note.group(1) != null ? labels.component().properties() : one.map(Label::properties).orElse(List.of()), cited, layout
                    .page());
                if (note.group(1) != null) {
                    all(text, cited, layout.page());
                }
            }
        }
    }
}

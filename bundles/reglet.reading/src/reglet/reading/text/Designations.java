package reglet.reading.text;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Paragraphs;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Reading;

/** Reads "ASTM C920, Type S, Grade NS, Class 50": names and words of the properties that a standard classifies by. */
public final class Designations {
    private static final double SURE = 0.95;
    private static final int LONGEST = 200;
    /** Traffic in editions of ASTM C920 before it was parted in two. */
    private static final String OLDER = "|T";
    /** "• Uses NT, T1 and M" below "• ASTM C920: Type S; Grade NS". */
    private static final Pattern FURTHER = Pattern.compile("[•\\s]*(?:Type|Grade|Class|Uses?)s?:? [\\p{Lu}\\d][\\p{Lu}\\d]{0,2}\\b.*");
    private static final Pattern ALONE = Pattern.compile("\\s*(?:[,:;(–-]|\\b(?:as|for)\\b(?: an?\\b)?)?\\s*"
        + "((?:Type|Grade|Class|Level|Style)\\s+[\\w./-]+)");

    private final Component component;
    private final Citations citations;
    private final Reading reading;
    private final Taken taken;
    /** Sentences whose words were taken down. */
    private final Set<Cell> whole = Collections.newSetFromMap(new IdentityHashMap<>());

    public Designations(Component component, Citations citations, Reading reading, Taken taken) {
        this.component = component;
        this.citations = citations;
        this.reading = reading;
        this.taken = taken;
    }

    /** Reads a row of a table or list; what goes on in the next line of running text is left to its sentences. */
    public void read(Line row, Layout layout) {
        List<Citation> cited = citations.in(row.text());
        for (Cell cell : cited.isEmpty() ? List.<Cell>of() : row.cells()) {
            boolean broken = layout.sentences().stream().filter(sentence -> whole.contains(sentence.cell()))
                .anyMatch(sentence -> sentence.cell().low() > sentence.cell().y() + 1
                && sentence.cell().top() <= cell.y() && sentence.cell().bottom() >= cell.y() && sentence.cell().left() <= cell.left() + 1
                && sentence.cell().right() >= cell.right() - 1);
            if (!broken) {
                read(cell, cited);
            }
        }
    }

    /** "ASTM C920: Type S; Grade NS; Class 50; Use NT", which semicolons part into sentences, or the items of a list. */
    public void listed(Layout layout) {
        Cell last = null;
        for (Cell paragraph : Paragraphs.joined(layout.lines())) {
            boolean goesOn = last != null && FURTHER.matcher(paragraph.text()).matches() && paragraph.left() == last.left();
            Cell whole = goesOn ? last.with(paragraph) : paragraph;
            if ((goesOn || paragraph.text().contains(";")) && whole.text().length() <= LONGEST) {
                read(whole);
            }
            last = paragraph;
        }
    }

    public void read(Cell sentence) {
        List<Citation> cited = citations.in(sentence.text());
        if (!cited.isEmpty() && read(sentence, cited)) {
            whole.add(sentence);
        }
    }

    private boolean read(Cell cell, List<Citation> cited) {
        boolean any = false;
        Map<Integer, Property> starts = new TreeMap<>();
        Map<Integer, Integer> ends = new HashMap<>();
        for (Property property : component.properties()) {
            if (isListed(property) && cited.stream().anyMatch(citation -> citation.name().equals(property.method().standard()))) {
                Matcher name = Pattern.compile("(?i)\\b(?:" + Pattern.quote(property.label().replaceAll("s$", "")) + ")s?\\b\\s*:?")
                    .matcher(cell.text());
                while (name.find()) {
                    starts.put(name.start(), property);
                    ends.put(name.start(), name.end());
                }
            }
        }
        if (starts.isEmpty()) {
            return alone(cell, "");
        }
        List<Integer> order = List.copyOf(starts.keySet());
        for (int i = 0; order.size() > 1 && i < order.size(); i++) {
            int to = i + 1 < order.size() ? order.get(i + 1) : cell.text().length();
            String words = cell.text().substring(ends.get(order.get(i)), to);
            boolean cut = i + 1 == order.size() && words.strip().endsWith(",");
            Property property = starts.get(order.get(i));
            int end = ends.get(order.get(i)) + words.replaceAll("[\\s,;.·•|/–—-]+$", "").length();
            String own = cell.text().substring(ends.get(order.get(i)), end).replaceAll("(?:,|;|\\band\\b)\\s*$", "");
            if (property.type().kind() == Kind.SET) {
                // "Use NT, M and O, on substrates …"
                Matcher listed = Pattern.compile("^\\s*:?\\s*((?:(?:" + String.join("|", property.type().words())
                    + OLDER + ")\\b[*†‡]*(?:\\s*,\\s*|\\s*&\\s*|\\s+and\\s+|\\s+|$)?)+)")
                    .matcher(own);
                if (listed.find()) {
                    own = listed.group(1).replaceAll("(?:[,&\\s*†‡]|\\band)+$", "");
                    end = ends.get(order.get(i)) + listed.start(1) + own.length();
                    own = own.replaceAll("[*†‡]", "").replaceAll("\\b(?:X" + OLDER + ")\\b\\s*,?", "");
                }
            }
            if (!cut && reading.read(property, own, "").isPresent()) {
                any |= taken.value(Label.of(property), property.label(),
                    cell.part(order.get(i), end).named(own), Around.of(cited.stream()
                        .filter(citation -> citation.name().equals(property.method().standard())).toList(), SURE));
            }
        }
        return any;
    }

    /** "ASTM E2556, Type II": a word behind the only standard by which the component has just one such property. */
    public boolean alone(Cell cell, String model) {
        for (Citation citation : citations.in(cell.text())) {
            List<Property> properties = component.properties().stream().filter(property -> isListed(property) && citation.name()
                .equals(property.method().standard())).toList();
            // a standard may also be named in a cell beside it
            Matcher behind = ALONE.matcher(cell.text()).region(Math.min(citation.to(), cell.text().length()), cell.text().length());
            if (properties.size() == 1 && behind.lookingAt() && reading.read(properties.get(0), behind.group(1), "").isPresent()) {
                return taken.value(Label.of(properties.get(0)), properties.get(0).label(), cell.part(behind.start(1), behind.end(1)),
                    new Around("", List.of(citation), model, Optional.empty(), SURE));
            }
        }
        return false;
    }

    private static boolean isListed(Property property) {
        Kind kind = property.type().kind();
        return kind == Kind.WORD || kind == Kind.GRADE || kind == Kind.SET;
    }
}

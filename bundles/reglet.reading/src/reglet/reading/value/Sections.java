package reglet.reading.value;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/**
 * The parts of a sheet that are each about a product of their own, under a heading that names its kind: "Weep screed WS-9" above one list,
 * "Casing bead CB-9" above another. Where fewer than two kinds are told apart so, the sheet has no such parts.
 */
public final class Sections {
    private static final int MOST_WORDS = 6;
    private static final int DESCRIBED = 7;
    private static final int LEAST_COLUMNS = 3;
    /** What may stand beside the kind in a heading: a designation. */
    private static final String DESIGNATION = "(?:\\S*\\d\\S*|\\p{Lu}+|No\\.?|[-–—])";

    /** "Companion part: Brackwell casing bead" heads what is said of another product than the sheet's own. */
    private static final Pattern COMPANION = Pattern.compile("(?i)(?:companion|accessory|related|matching|optional)(?: (?:part|product|item"
        + "|piece|trim))?s?\\s*[:–—-]\\s*(\\S.*)");

    private final Map<Layout, List<Heading>> headings = new HashMap<>();

    /** A heading and the components that it may be about. */
    private record Heading(double y, Set<String> components) {
    }

    private Sections() {
    }

    public static Sections of(List<Layout> layouts, Pack pack, Vocabulary vocabulary) {
        Sections sections = new Sections();
        for (Layout layout : layouts) {
            List<Heading> own = new ArrayList<>();
            List<Line> lines = layout.lines();
            for (int i = 0; i + 1 < lines.size(); i++) {
                Line line = lines.get(i);
                Set<String> components = line.cells().size() == 1 && (lines.get(i + 1).cells().size() > 1 || line.cells().get(0).bold()
                    && hasTable(lines.subList(i + 1, Math.min(lines.size(), i + DESCRIBED)))) ? named(line.text(), pack, vocabulary)
                        : Set.of();
                Matcher companion = COMPANION.matcher(line.text().strip());
                Set<String> other = line.cells().size() == 1 && companion.matches() ? last(companion.group(1), pack, vocabulary) : Set.of();
                if (!components.isEmpty()) {
                    own.add(new Heading(line.y(), components));
                } else if (!other.isEmpty()) {
                    own.add(0, new Heading(Double.NEGATIVE_INFINITY, pack.components().stream().map(Component::id)
                        .filter(id -> !other.contains(id)).collect(Collectors.toSet())));
                    own.add(new Heading(line.y(), other));
                }
            }
            if (own.stream().anyMatch(one -> own.stream().anyMatch(other -> other.components.stream()
                .noneMatch(one.components::contains)))) {
                sections.headings.put(layout, own);
            }
        }
        return sections;
    }

    /** Whether a table stands below a few lines that describe what it is of. */
    private static boolean hasTable(List<Line> below) {
        return below.stream().anyMatch(line -> line.cells().size() >= LEAST_COLUMNS);
    }

    /** The components that the last words of a heading name. */
    private static Set<String> last(String heading, Pack pack, Vocabulary vocabulary) {
        String words = heading;
        Set<String> components = named(words, pack, vocabulary);
        while (components.isEmpty() && words.indexOf(' ') > 0) {
            words = words.substring(words.indexOf(' ')).strip();
            components = named(words, pack, vocabulary);
        }
        return components;
    }

    /** The components that a heading names with nothing but a designation beside them. */
    private static Set<String> named(String heading, Pack pack, Vocabulary vocabulary) {
        Set<String> components = new LinkedHashSet<>();
        String[] words = heading.strip().split("\\s+");
        int from = 0;
        int to = words.length;
        while (to > 0 && words[to - 1].matches(DESIGNATION)) {
            to--;
        }
        while (from < to && words[from].matches(DESIGNATION)) {
            from++;
        }
        if (from < to && words.length <= MOST_WORDS) {
            String kind = Plain.of(String.join(" ", List.of(words).subList(from, to)));
            for (Component component : pack.components()) {
                boolean names = Plain.of(component.title()).equals(kind) || vocabulary.names(component.id()).stream()
                    .anyMatch(name -> Plain.of(name).equals(kind));
                if (names) {
                    components.add(component.id());
                }
            }
        }
        return components;
    }

    /** Whether a cell stands in a part that is about other components. */
    boolean elsewhere(Layout layout, Cell cell, String component) {
        boolean elsewhere = false;
        for (Heading heading : headings.getOrDefault(layout, List.of())) {
            elsewhere = heading.y < cell.y() - 1 ? !heading.components.contains(component) : elsewhere;
        }
        return elsewhere;
    }
}

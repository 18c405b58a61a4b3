package reglet.drafting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Assembly;
import reglet.model.Property;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.Standard;
import reglet.model.Value;

/** The references of a section: every standard that its paragraphs cite, with the edition that the job's code lists. */
final class References {
    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");
    /** ASTM C90 before ASTM C270: numbers count as numbers. */
    private static final Comparator<String> NATURAL = (one, other) -> {
        Matcher a = RUN.matcher(one);
        Matcher b = RUN.matcher(other);
        while (a.find() && b.find()) {
            boolean numbers = Character.isDigit(a.group().charAt(0)) && Character.isDigit(b.group().charAt(0));
            int order = numbers && a.group().length() != b.group().length() ? a.group().length() - b.group().length()
                : a.group().compareTo(b.group());
            if (order != 0) {
                return order;
            }
        }
        return one.length() - other.length();
    };

    private References() {
    }

    static List<Draft> of(Assembly assembly, List<Draft> paragraphs) {
        Set<String> cited = new TreeSet<>(NATURAL);
        paragraphs.stream().flatMap(draft -> draft.text().stream()).forEach(span -> cite(assembly, span, cited));
        return cited.stream().map(standard -> paragraph(assembly, standard)).toList();
    }

    /** Adds the standards that a piece of text cites. */
    static void cite(Assembly assembly, Span span, Set<String> cited) {
        if (span instanceof Cited standard) {
            cited.add(standard.standard());
        } else if (span instanceof Slot slot && !slot.ref().endsWith(SlotNames.VALUE)) {
            assembly.pack().property(SlotNames.path(slot.ref())).map(Property::method)
                .filter(method -> !method.isNone() && (slot.ref().endsWith(SlotNames.METHOD) || !slot.requirements().isEmpty()))
                .ifPresent(method -> cited.add(method.standard()));
        }
    }

    private static Draft paragraph(Assembly assembly, String id) {
        Optional<Standard> standard = assembly.pack().standard(id);
        String edition = standard.flatMap(found -> found.edition(code(assembly, "name"), code(assembly, "edition")))
            .map(year -> "-" + year).orElse("");
        String title = standard.map(found -> ", " + found.title()).orElse("");
        return Draft.of("references." + SlotNames.key(id), List.of(new Cited(id, id), new Plain(edition + title + ".")));
    }

    private static String code(Assembly assembly, String property) {
        return assembly.job().fact("code", property).map(Value::text).orElse("");
    }
}

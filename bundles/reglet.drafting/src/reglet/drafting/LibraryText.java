package reglet.drafting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.model.Assembly;
import reglet.model.Clause;
import reglet.model.Pack;
import reglet.model.RegisterEntry;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.TextChange;

/** Texts with their slots, as a person reads and changes them. */
public final class LibraryText {

    private LibraryText() {
    }

    /**
     * The library's text of a paragraph, Markdown with slots: of a clause the whole, with the lists below it; of a text below one
     * ("lath.metal/1") that one alone; of a submittal its entry. Empty for what the program makes, such as references, and for a
     * paragraph that the library doesn't have.
     *
     * @param paragraph id, with or without the walls and options that it was drafted for
     */
    public static Optional<String> of(Pack pack, String section, String paragraph) {
        String id = withoutPlaces(paragraph);
        String head = id.replaceFirst("/.*", "");
        Optional<String> whole = pack.clauses().stream().filter(clause -> clause.section().equals(section) && clause.id().equals(head))
            .findFirst().map(Clause::body)
            .or(() -> pack.entries().stream().filter(entry -> entry.section().equals(section) && entry.id().equals(head))
                .findFirst().map(RegisterEntry::text))
            .map(body -> Body.plain(body).strip());
        return id.equals(head) ? whole : whole.flatMap(body -> below(body, head, id));
    }

    /** The text of a clause without what stands below it. */
    static String first(String body) {
        return written(texts(body).get(0).text());
    }

    /** A drafted paragraph as a person would write it: with its slots, and with the walls it names; an alternate's without its name. */
    public static String written(Paragraph paragraph) {
        return written(unled(paragraph));
    }

    /** The text of a paragraph without the name of the alternate that it prints for. */
    static List<Span> unled(Paragraph paragraph) {
        List<Span> text = paragraph.text();
        boolean led = TextChange.alternate(paragraph.id()) > 0 && !text.isEmpty() && text.get(0) instanceof Strong;
        return led ? text.subList(1, text.size()) : text;
    }

    /** What the slots of a drafted paragraph print, by their names as a person writes them: "lath.weight", "std.ASTM_C847". */
    public static Map<String, String> printed(Paragraph paragraph) {
        Map<String, String> printed = new LinkedHashMap<>();
        paragraph.text().stream().filter(span -> !(span instanceof Plain || span instanceof Strong)).forEach(span -> {
            String slot = written(span);
            printed.putIfAbsent(slot.substring(2, slot.length() - 1), span.text());
        });
        return printed;
    }

    /** A person's text with the library's new words taken in; empty when there are none, or they touch the person's own. */
    public static Optional<String> merged(Pack pack, TextChange change) {
        return LibraryMove.of(pack, change).filter(move -> move.kind() == LibraryMove.Kind.TAKEN_IN).map(LibraryMove::text);
    }

    /** The block that a paragraph of a person's comes from. */
    public static Optional<TextChange> block(Assembly assembly, String section, Paragraph paragraph) {
        return OwnText.change(assembly, section, paragraph);
    }

    private static Optional<String> below(String body, String head, String id) {
        try {
            return texts(body).get(0).named(head, false, List.of()).all().stream().filter(draft -> draft.id().equals(id)).findFirst()
                .map(draft -> written(draft.text()));
        } catch (IllegalArgumentException unusable) {
            return Optional.empty();
        }
    }

    /** The paragraphs of a text; slots print their names. */
    static List<Draft> texts(String body) {
        return ClauseText.paragraphs(SlotTemplate.fill(Body.plain(body), slot -> ClauseText.link(slot, slot)),
            slot -> new Slot(slot, slot, List.of()));
    }

    private static String withoutPlaces(String paragraph) {
        return paragraph.replaceFirst("[@~][^/+]*", "");
    }

    private static String written(List<Span> text) {
        return text.stream().map(LibraryText::written).collect(Collectors.joining()).strip();
    }

    private static String written(Span span) {
        if (span instanceof Slot slot) {
            return "${" + slot.ref() + "}";
        }
        if (span instanceof Cited cited) {
            return "${" + SlotNames.STANDARD + SlotNames.key(cited.standard()) + "}";
        }
        if (span instanceof CrossReference reference) {
            boolean number = reference.target().matches("\\d\\d \\d\\d \\d\\d.*");
            return "${" + SlotNames.SEE + (number ? "S" : "") + SlotNames.key(reference.target()) + "}";
        }
        return span instanceof Strong ? Markdown.strong(span.text()) : ClauseText.escape(((Plain) span).text());
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import reglet.model.Kept;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;

/**
 * The paragraphs of a text with a mark where each slot stands. What a slot prints is inert in the text, so that its paragraphs are
 * the same for every wall type and option: each text is read once, and filled as often as there are settings.
 */
final class Skeleton {
    /** Texts kept at most: those of a large pack, and of a person who types all day. */
    private static final int MOST = 2_000;
    private static final Kept<String, List<Draft>> READ = new Kept<>(MOST);

    private Skeleton() {
    }

    /**
     * The paragraphs of a text that {@link SlotTemplate#refused} lets pass, filled.
     *
     * @param spans what each slot of the text prints, by its name
     * @throws IllegalArgumentException with what is wrong with the text, or when it comes out longer than {@link SlotTemplate#LONGEST}
     */
    static List<Draft> filled(String text, Map<String, Span> spans) {
        int[] length = {0};
        return READ.get(text, Skeleton::read).stream().map(draft -> filled(draft, slot -> {
            Span span = spans.get(slot);
            length[0] += span.text().length();
            if (length[0] > SlotTemplate.LONGEST) {
                throw new IllegalArgumentException("the text is longer than " + SlotTemplate.LONGEST + " characters");
            }
            return span;
        })).toList();
    }

    private static Draft filled(Draft draft, Function<String, Span> spans) {
        List<Span> text = new ArrayList<>(draft.text().size());
        draft.text().forEach(span -> text.add(span instanceof Slot slot ? spans.apply(slot.ref()) : span));
        return draft.with(text).withChildren(draft.children().stream().map(child -> filled(child, spans)).toList());
    }

    private static List<Draft> read(String text) {
        Map<String, Span> marks = new LinkedHashMap<>();
        SlotTemplate.slots(text).forEach(slot -> marks.put(slot, new Slot(slot, "", List.of())));
        return List.copyOf(ClauseText.paragraphs(SlotTemplate.fill(text, slot -> ClauseText.link(slot, "")),
            slot -> Optional.ofNullable(marks.get(slot))
                .orElseThrow(() -> new IllegalArgumentException("the link '" + slot + "' is no slot; write ${" + slot + "}"))));
    }
}

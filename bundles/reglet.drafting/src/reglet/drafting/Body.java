package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.model.Kept;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Scope;
import reglet.model.SectionDocument.Span;

/**
 * A text with slots, checked and ready to be filled for any setting.
 *
 * @param at   where it stands
 * @param text the text as written
 */
record Body(Place at, String text, List<String> slots) {
    /** A slot as it stands in a drafted text that somebody copied. */
    private static final Pattern DRAFTED_SLOT = Pattern.compile("\\[(?:[^\\]\\\\]|\\\\.)*\\]\\(slot:([A-Za-z0-9_.-]+)\\)");

    /** Texts that are kept as read: more than a library has. */
    private static final int MOST = 2_000;
    private static final Kept<String, Read> READ = new Kept<>(MOST);

    /** What a text says by itself, whatever pack it stands in. */
    private record Read(String text, Optional<String> refused, List<String> slots) {
        static Read of(String written) {
            String text = plain(written);
            return new Read(text, SlotTemplate.refused(text), SlotTemplate.slots(text).stream().distinct().toList());
        }
    }

    /**
     * Checks a text.
     *
     * @param name what the text is called in problems: "clause 'lath.metal'"
     * @param problems takes what is wrong
     */
    static Optional<Body> check(Pack pack, String section, Scope each, String subject, String name, String written, Place at,
            List<Problem> problems) {
        Read read = READ.get(written, Read::of);
        if (read.refused().isPresent()) {
            problems.add(new Problem(at, name + " has '" + read.refused().get() + "'",
                "a text holds plain slots such as ${lath.weight}, and no directive, operator or function"));
            return Optional.empty();
        }
        int before = problems.size();
        read.slots().forEach(slot -> SlotNames.check(pack, section, each, subject, slot)
            .ifPresent(wrong -> problems.add(new Problem(at, name + ": " + wrong.what(), wrong.expected()))));
        return problems.size() == before ? Optional.of(new Body(at, read.text(), read.slots())) : Optional.empty();
    }

    /** The text with its slots as the library writes them, where it was copied from a drafted one. */
    static String plain(String written) {
        return DRAFTED_SLOT.matcher(written).replaceAll("\\${$1}");
    }

    /**
     * The paragraphs of the text for some settings.
     *
     * @throws IllegalArgumentException with what is wrong with the text
     */
    List<Draft> fill(Slots printed, List<Setting> settings) {
        Map<String, Span> spans = new LinkedHashMap<>();
        slots.forEach(slot -> spans.put(slot, printed.span(slot, settings)));
        return Skeleton.filled(text, spans);
    }

    /** As {@link #fill}, for a text that has to be one paragraph. */
    Draft one(Slots printed, List<Setting> settings) {
        List<Draft> paragraphs = new ArrayList<>(fill(printed, settings));
        if (paragraphs.size() > 1) {
            throw new IllegalArgumentException("the text has " + paragraphs.size() + " paragraphs; expected one, with lists below it");
        }
        return paragraphs.get(0);
    }
}

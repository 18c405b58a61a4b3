package reglet.drafting;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Pack;
import reglet.model.TextChange;

/**
 * What the library made of a text after a person changed or struck it.
 *
 * @param madeOn the library's text that the person changed
 * @param now    the library's text of today
 * @param text   what prints: the person's text, with the library's new words where they touch none of the person's; "" when struck
 * @param kind   what became of the library's new words
 */
public record LibraryMove(String madeOn, String now, String text, Kind kind) {
    public enum Kind {
        /** They are in the text that prints. */
        TAKEN_IN,
        /** The person's text prints without them. */
        LEFT_OUT,
        /** They need another slot, which only a person can put in or take out. */
        SLOTS
    }

    private static final Pattern LIST = Pattern.compile("(?m)^\\s*(?:[-*+]|\\d+[.)])\\s");
    private static final String GAP = "\u0000";
    private static final Pattern BREAK = Pattern.compile("\\n\\s*\\n");

    /** Empty when the library's text is the one that the change was made on, or when the block doesn't quote it. */
    public static Optional<LibraryMove> of(Pack pack, TextChange change) {
        if (change.madeOn().isEmpty()) {
            return Optional.empty();
        }
        return LibraryText.of(pack, change.section(), change.paragraph()).flatMap(now -> of(change, now));
    }

    private static Optional<LibraryMove> of(TextChange change, String body) {
        String madeOn = oneLine(change.madeOn());
        // Who changes the text above a list may quote it without the list.
        String text = several(body) && !several(change.madeOn()) ? LibraryText.first(body) : body;
        String now = oneLine(text);
        if (madeOn.equals(now) || madeOn.equals(oneLine(body)) || isPrinted(madeOn, now)) {
            return Optional.empty();
        }
        String own = Body.plain(change.text());
        if (!SlotTemplate.slots(madeOn).equals(SlotTemplate.slots(now))) {
            return Optional.of(new LibraryMove(madeOn, now, change.text(), Kind.SLOTS));
        }
        // The lines of a list and of several paragraphs mean something, which a merge of words doesn't know.
        if (change.kind() == TextChange.Kind.STRIKE || several(own) || several(text)) {
            return Optional.of(new LibraryMove(madeOn, now, change.text(), Kind.LEFT_OUT));
        }
        WordMerge.Merged merged = WordMerge.merge(madeOn, oneLine(own), now);
        return Optional.of(merged.conflicts() == 0 ? new LibraryMove(madeOn, now, merged.text(), Kind.TAKEN_IN)
            : new LibraryMove(madeOn, now, change.text(), Kind.LEFT_OUT));
    }

    /** Whether a quote without slots, copied from a printed page, says what a text with slots says. */
    private static boolean isPrinted(String quote, String text) {
        return !SlotTemplate.slots(text).isEmpty() && SlotTemplate.slots(quote).isEmpty()
            && Pattern.matches(Stream.of(SlotTemplate.without(text, GAP).split(GAP, -1)).map(LibraryMove::words).map(Pattern::quote)
                .collect(Collectors.joining(".+?")), words(quote));
    }

    private static String words(String markdown) {
        return markdown.replaceAll("[\\\\*_`]", "");
    }

    private static boolean several(String text) {
        return LIST.matcher(text).find() || BREAK.matcher(text.strip()).find();
    }

    private static String oneLine(String text) {
        return Body.plain(text).replaceAll("\\s+", " ").strip();
    }
}

package reglet.model;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person did to a drafted paragraph. The person's wording wins and stays.
 *
 * @param section   section number
 * @param paragraph id of the paragraph that is changed, struck or moved, or after which one is added; of what is left out the property
 *                  ("lath.weight"), or the component for its kind ("lath")
 * @param kind      change, strike, add or move; or that the section leaves a requirement out on purpose
 * @param text      Markdown of the person's text; "" when struck or moved; the reason why a requirement is left out
 * @param madeOn    the library's text that the change was made on; "" for an added or moved paragraph
 * @param after     id of the paragraph behind which it is moved; "" unless moved
 * @param at        place of the block's heading
 * @param textAt    place at which the person's text begins; the heading's when struck or moved
 */
public record TextChange(String section, String paragraph, Kind kind, String text, String madeOn, String after, Place at,
        Place textAt) {
    private static final Pattern OF_ALTERNATE = Pattern.compile("~alternate-(\\d{1,9})");

    public enum Kind { CHANGE, STRIKE, ADD, MOVE, LEAVE_OUT }

    /** Number of the alternate that a paragraph with this id prints for, as in "lath.metal~alternate-1"; 0 for the base bid's. */
    public static int alternate(String paragraph) {
        Matcher found = OF_ALTERNATE.matcher(paragraph);
        return found.find() ? Integer.parseInt(found.group(1)) : 0;
    }

    /** Number of the alternate whose paragraph it is about; 0 for the base bid's. */
    public int alternate() {
        return alternate(paragraph);
    }

    /** The same about the paragraph that stands there when the alternate is accepted: "lath.metal" for "lath.metal~alternate-1". */
    TextChange accepted() {
        return new TextChange(section, OF_ALTERNATE.matcher(paragraph).replaceAll(""), kind, text, madeOn, after, at, textAt);
    }

    /** Whether it gives a paragraph another text, or none. */
    boolean takesTextOf(String id) {
        return (kind == Kind.CHANGE || kind == Kind.STRIKE) && paragraph.equals(id);
    }

    /** The place of a phrase in the person's text; where the text begins when it doesn't hold the phrase. */
    public Place placeOf(String phrase) {
        int start = text.indexOf(phrase);
        if (start < 0) {
            return textAt;
        }
        int line = (int) text.substring(0, start).chars().filter(letter -> letter == '\n').count();
        return new Place(textAt.file(), textAt.line() + line, start - text.lastIndexOf('\n', start));
    }
}

package reglet.reading.page;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands on a page of a sheet. Lengths are in points; places are measured from the upper left of the page as it is shown,
 * or, for pieces and rules of a turn, from the upper left of the page turned so that their text reads upright.
 *
 * @param number  page counted from 1
 * @param width   of the page as it is shown
 * @param height  of the page as it is shown
 * @param picture whether it shows something, and no text that could be read
 * @param pieces  words, in the order in which the page draws them
 * @param rules   straight lines, level or upright, among them the edges of filled and stroked rectangles
 */
public record SheetPage(int number, double width, double height, boolean picture, List<Piece> pieces, List<Rule> rules) {

    /** This part of a page with another one of the same page after it. */
    public SheetPage with(SheetPage more) {
        return new SheetPage(number, width, height, picture, joined(pieces, more.pieces), joined(rules, more.rules));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /**
     * A word.
     *
     * @param text   its letters
     * @param x      left end
     * @param y      its line
     * @param width  its width
     * @param size   of the letters
     * @param turn   how the text runs on the page as it is shown, in degrees against the clock: 0, 90, 180, 270
     * @param spaced whether a blank was drawn before it
     * @param bold   whether its font is called bold
     * @param hidden whether it is not drawn but lies under a picture, as text recognition leaves it
     */
    public record Piece(String text, double x, double y, double width, double size, int turn, boolean spaced, boolean bold,
            boolean hidden) {
        double end() {
            return x + width;
        }
    }

    /** A line, on the page as it is shown. */
    public record Rule(double x1, double y1, double x2, double y2) {
    }
}

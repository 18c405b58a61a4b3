package reglet.drafting;

import java.util.List;

/**
 * A form that somebody fills in on site: sentences, tables with room to write, and lines to sign.
 *
 * @param id    file name: "hold-barrier"
 * @param texts what has to be known to fill it in
 * @param signs who signs, each with a line for name and date
 */
public record Form(String id, String title, List<String> texts, List<Grid> grids, List<String> signs) {

    public Form {
        texts = List.copyOf(texts);
        grids = List.copyOf(grids);
        signs = List.copyOf(signs);
    }

    /**
     * A table. Empty cells are to be written in.
     *
     * @param widths widths of the columns, relative to each other
     */
    public record Grid(List<String> titles, List<Integer> widths, List<List<String>> rows) {
        public Grid {
            titles = List.copyOf(titles);
            widths = List.copyOf(widths);
            rows = List.copyOf(rows);
        }
    }

    /** A line to sign on. */
    static String line(String who) {
        return who + ": ______________________________    Date: ______________";
    }
}

package reglet.worksheets;

/** One of a set of words that an input may be. */
public interface Worded {

    /** The word as people type and read it: "spruce-pine-fir". */
    String text();
}

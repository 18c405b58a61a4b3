package reglet.model;

import java.util.List;

/**
 * A point at which work stops until somebody has looked.
 *
 * @param id        "barrier"
 * @param component the component that has to be in the wall for it
 * @param stop      what may not begin before: "before lath covers it"
 * @param looks     what is looked at and tested, in order
 */
public record HoldPoint(String id, String title, String component, String stop, List<Look> looks, Place at) {

    public HoldPoint {
        looks = List.copyOf(looks);
    }

    /**
     * One thing to look at or test.
     *
     * @param test  whether it is a test and not only a look
     * @param text  what is done
     * @param shows properties whose required values stand beside it
     * @param often where and how often
     */
    public record Look(boolean test, String text, List<String> shows, String often, List<Basis> basis, Place at) {
        public Look {
            shows = List.copyOf(shows);
            basis = List.copyOf(basis);
        }
    }
}

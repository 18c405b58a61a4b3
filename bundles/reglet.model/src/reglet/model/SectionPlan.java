package reglet.model;

import java.util.List;

/**
 * The plan of a section: its parts' articles in order.
 *
 * @param number "04 73 00"
 * @param title  "Manufactured Stone Masonry"
 */
public record SectionPlan(String number, String title, List<Article> articles, Place at) {

    /** General, products, execution. */
    public static final int PARTS = 3;

    public SectionPlan {
        articles = List.copyOf(articles);
    }

    /**
     * An article of the plan.
     *
     * @param id   "lath"
     * @param part 1, 2 or 3
     * @param title "LATH"
     * @param made what the program makes in it besides clauses
     */
    public record Article(String id, int part, String title, Made made) {
    }

    /** What stands in an article besides clauses: nothing, the references, the submittals of one kind, what is priced apart. */
    public enum Made { NOTHING, REFERENCES, ACTION_SUBMITTALS, INFORMATIONAL_SUBMITTALS, CLOSEOUT_SUBMITTALS, RELATED_SECTIONS,
        ALTERNATES, ALLOWANCES, UNIT_PRICES }
}

package reglet.model;

import java.util.List;

/**
 * What can be done about a finding.
 *
 * @param all   the best first; of the smallest number of changes, and some with one more
 * @param none  when there is none, why, in a sentence; else ""
 */
public record Remedies(List<Remedy> all, String none) {

    public Remedies {
        all = List.copyOf(all);
    }
}

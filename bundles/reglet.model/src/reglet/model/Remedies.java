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

    /**
     * The same with changes that reach the versions of accepted alternates. What takes a component away has no place in a version, which
     * can only choose otherwise.
     */
    public Remedies inForce(Job job) {
        List<Remedy> possible = all.stream().map(remedy -> new Remedy(remedy.changes().stream()
            .map(change -> new Change(job.inForce(change.set()), change.to())).toList(), remedy.cost(), remedy.clears()))
            .filter(remedy -> remedy.changes().stream().noneMatch(change -> change.to().isEmpty() && change.isOfVersion())).toList();
        return new Remedies(possible, possible.isEmpty() && none.isEmpty()
            ? "Only to do without what the alternate chooses would clear it; take the alternate's choice out of the wall's file." : none);
    }
}

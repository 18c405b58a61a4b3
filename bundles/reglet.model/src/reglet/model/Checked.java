package reglet.model;

import java.util.List;
import java.util.Map;

/**
 * The result of checking a job.
 *
 * @param findings  findings that stand, in the order of walls, build-up and rule id
 * @param accepted  findings that a person accepted
 * @param rules     number of rules in the pack
 * @param instances how often each result came, over all rules and what they were looked at for
 */
public record Checked(List<Finding> findings, List<Finding> accepted, int rules, Map<Rule.Result, Integer> instances) {

    public Checked {
        findings = List.copyOf(findings);
        accepted = List.copyOf(accepted);
        instances = Ordered.copy(instances);
    }

    /** Whether nothing but cautions stands. */
    public boolean isClean() {
        return findings.stream().allMatch(finding -> finding.kind() == Finding.Kind.CAUTION);
    }

    public long count(Finding.Kind kind) {
        return findings.stream().filter(finding -> finding.kind() == kind).count();
    }
}

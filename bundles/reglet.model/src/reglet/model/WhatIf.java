package reglet.model;

import java.util.List;

/**
 * What would be if an option were the one accepted for a component.
 *
 * @param clears findings there now that would be gone
 * @param brings findings that would be new
 */
public record WhatIf(String wall, String component, String option, List<Finding> clears, List<Finding> brings) {

    public WhatIf {
        clears = List.copyOf(clears);
        brings = List.copyOf(brings);
    }

    /** Whether it brings nothing but cautions. */
    public boolean fits() {
        return brings.stream().allMatch(finding -> finding.kind() == Finding.Kind.CAUTION);
    }
}

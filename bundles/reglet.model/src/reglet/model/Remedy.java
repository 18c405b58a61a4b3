package reglet.model;

import java.util.List;

/**
 * A smallest set of changes that clears a finding and adds none.
 *
 * @param changes in the order in which they are made
 * @param cost    cost class of what is chosen less that of what goes; a changed fact or value counts as 1
 * @param clears  keys of all findings that it clears, the one asked for among them
 */
public record Remedy(List<Change> changes, int cost, List<String> clears) {

    public Remedy {
        changes = List.copyOf(changes);
        clears = List.copyOf(clears);
    }

    /** "W1.lath = metal-3.4; W1.mat = filament-3-8". */
    public String text() {
        return String.join("; ", changes.stream().map(Change::text).toList());
    }
}

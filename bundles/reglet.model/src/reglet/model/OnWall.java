package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Assembly.ClauseUse;

/**
 * What of a pack applies to one wall type. It is the same object for a wall type that stands as before in a job whose own facts do,
 * so that what follows from it alone can be kept by it: a change of one wall type leaves the work done for the others as it is.
 */
public final class OnWall {
    private final Map<String, List<ClauseUse>> uses;
    private final List<Requirement> requirements;
    private final Set<String> entries;
    private final Set<String> cautions;
    private final Map<Of, List<Requirement>> byOption;

    /** An option of a component. */
    private record Of(String component, String option) {
    }

    /**
     * @param uses         of clauses, by clause id
     * @param requirements in the order of build-up, options, properties
     * @param entries      ids of the register entries that apply
     * @param cautions     ids of the cautions in force
     */
    public OnWall(Map<String, List<ClauseUse>> uses, List<Requirement> requirements, Set<String> entries, Set<String> cautions) {
        this.uses = Ordered.copy(uses);
        this.requirements = List.copyOf(requirements);
        this.entries = Set.copyOf(entries);
        this.cautions = Set.copyOf(cautions);
        this.byOption = this.requirements.stream().collect(Collectors.groupingBy(
            requirement -> new Of(requirement.component(), requirement.option()), Collectors.toUnmodifiableList()));
    }

    /** The uses of a clause. */
    public List<ClauseUse> uses(String clause) {
        return uses.getOrDefault(clause, List.of());
    }

    /** In the order of build-up, options, properties. */
    public List<Requirement> requirements() {
        return requirements;
    }

    /** Those of one option of a component. */
    public List<Requirement> requirements(String component, String option) {
        return byOption.getOrDefault(new Of(component, option), List.of());
    }

    /** Whether a register entry applies. */
    public boolean hasEntry(String id) {
        return entries.contains(id);
    }

    /** Whether a caution is in force. */
    public boolean hasCaution(String id) {
        return cautions.contains(id);
    }
}

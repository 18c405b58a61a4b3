package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job resolved against its pack: which clauses, requirements, register entries and cautions apply. Everything that
 * needed an expression has been evaluated; what follows evaluates nothing.
 *
 * @param clauses      clauses that apply, in the order of plan, article, order, id, wall
 * @param requirements in the order of walls, build-up, options, properties
 * @param entries      register entries that apply
 * @param cautions     cautions that apply
 */
public record Assembly(Pack pack, Job job, List<ClauseUse> clauses, List<Requirement> requirements, List<RegisterEntry> entries,
        List<Pack.Caution> cautions) {

    public Assembly {
        clauses = List.copyOf(clauses);
        requirements = List.copyOf(requirements);
        entries = List.copyOf(entries);
        cautions = List.copyOf(cautions);
    }

    /**
     * A clause that applies to a wall type with some of its accepted options.
     *
     * @param clause  the clause
     * @param wall    wall type id; "" for a clause that stands once a job
     * @param meeting meeting id; ""
     * @param options the option of each component that the clause reads, by component id
     */
    public record ClauseUse(Clause clause, String wall, String meeting, Map<String, String> options) {
        public ClauseUse {
            options = Ordered.copy(options);
        }
    }

    /** The requirements of one option of a component on a wall. */
    public List<Requirement> requirements(String wall, String component, String option) {
        return requirements.stream().filter(requirement -> requirement.wall().equals(wall)
            && requirement.component().equals(component) && requirement.option().equals(option)).toList();
    }

    public Optional<Requirement> requirement(String wall, String component, String option, String property) {
        return requirements(wall, component, option).stream().filter(found -> found.property().name().equals(property)).findFirst();
    }
}

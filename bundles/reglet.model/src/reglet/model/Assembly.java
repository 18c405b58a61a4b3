package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A job resolved against its pack: which clauses, requirements, register entries and cautions apply. Everything that
 * needed an expression has been evaluated; what follows evaluates nothing. Immutable; what a slot of a text asks for is found
 * at once however many wall types there are.
 */
public final class Assembly {
    private final Pack pack;
    private final Job job;
    private final List<ClauseUse> clauses;
    private final List<Requirement> requirements;
    private final List<RegisterEntry> entries;
    private final List<Pack.Caution> cautions;
    private final Map<Integer, Assembly> alternates;
    private final Map<Of, List<Requirement>> byOption;

    /** An option of a component on a wall. */
    private record Of(String wall, String component, String option) {
    }

    /**
     * @param clauses      clauses that apply, in the order of plan, article, order, id, wall
     * @param requirements in the order of walls, build-up, options, properties
     * @param entries      register entries that apply
     * @param cautions     cautions that apply
     */
    public Assembly(Pack pack, Job job, List<ClauseUse> clauses, List<Requirement> requirements, List<RegisterEntry> entries,
            List<Pack.Caution> cautions) {
        this(pack, job, clauses, requirements, entries, cautions, Map.of());
    }

    /** @param alternates the assembly of the job with one alternate taken up, by its number */
    public Assembly(Pack pack, Job job, List<ClauseUse> clauses, List<Requirement> requirements, List<RegisterEntry> entries,
            List<Pack.Caution> cautions, Map<Integer, Assembly> alternates) {
        this.alternates = Ordered.copy(alternates);
        this.pack = pack;
        this.job = job;
        this.clauses = List.copyOf(clauses);
        this.requirements = List.copyOf(requirements);
        this.entries = List.copyOf(entries);
        this.cautions = List.copyOf(cautions);
        this.byOption = this.requirements.stream().collect(Collectors.groupingBy(
            requirement -> new Of(requirement.wall(), requirement.component(), requirement.option()), Collectors.toUnmodifiableList()));
    }

    public Pack pack() {
        return pack;
    }

    public Job job() {
        return job;
    }

    /** Clauses that apply, in the order of plan, article, order, id, wall. */
    public List<ClauseUse> clauses() {
        return clauses;
    }

    /** All requirements in the order of walls, build-up, options, properties. */
    public List<Requirement> requirements() {
        return requirements;
    }

    /** Register entries that apply. */
    public List<RegisterEntry> entries() {
        return entries;
    }

    /** The assembly of the job with one alternate taken up, by its number; empty without such. */
    public Map<Integer, Assembly> alternates() {
        return alternates;
    }

    /** Cautions that apply. */
    public List<Pack.Caution> cautions() {
        return cautions;
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

    @Override
    public boolean equals(Object other) {
        return other instanceof Assembly assembly && pack.equals(assembly.pack) && job.equals(assembly.job)
            && clauses.equals(assembly.clauses) && requirements.equals(assembly.requirements) && entries.equals(assembly.entries)
            && cautions.equals(assembly.cautions);
    }

    @Override
    public int hashCode() {
        return Objects.hash(pack, job, clauses, requirements, entries, cautions);
    }

    /** The requirements of one option of a component on a wall. */
    public List<Requirement> requirements(String wall, String component, String option) {
        return byOption.getOrDefault(new Of(wall, component, option), List.of());
    }

    public Optional<Requirement> requirement(String wall, String component, String option, String property) {
        return requirements(wall, component, option).stream().filter(found -> found.property().name().equals(property)).findFirst();
    }
}

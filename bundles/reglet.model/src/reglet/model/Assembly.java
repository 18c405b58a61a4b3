package reglet.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
    private final Map<List<Integer>, Assembly> without;
    private final Map<String, OnWall> walls;

    /**
     * @param clauses      clauses that apply, in the order of plan, article, order, id, wall
     * @param requirements in the order of walls, build-up, options, properties
     * @param entries      register entries that apply
     * @param cautions     cautions that apply
     */
    public Assembly(Pack pack, Job job, List<ClauseUse> clauses, List<Requirement> requirements, List<RegisterEntry> entries,
            List<Pack.Caution> cautions) {
        this(pack, job, clauses, requirements, entries, cautions, Map.of(), Map.of(), walls(requirements));
    }

    /**
     * @param alternates the assembly of the job with one offered or declined alternate taken up besides, by its number
     * @param without    the assembly of the job without one accepted alternate, and without all where there are several, by their numbers
     * @param walls      what of it applies to each wall type, by its id
     */
    public Assembly(Pack pack, Job job, List<ClauseUse> clauses, List<Requirement> requirements, List<RegisterEntry> entries,
            List<Pack.Caution> cautions, Map<Integer, Assembly> alternates, Map<List<Integer>, Assembly> without,
            Map<String, OnWall> walls) {
        this.without = Ordered.copy(without);
        this.alternates = Ordered.copy(alternates);
        this.pack = pack;
        this.job = job;
        this.clauses = List.copyOf(clauses);
        this.requirements = List.copyOf(requirements);
        this.entries = List.copyOf(entries);
        this.cautions = List.copyOf(cautions);
        this.walls = Ordered.copy(walls);
    }

    private static Map<String, OnWall> walls(List<Requirement> requirements) {
        Map<String, OnWall> walls = new LinkedHashMap<>();
        requirements.stream().collect(Collectors.groupingBy(Requirement::wall, LinkedHashMap::new, Collectors.toList()))
            .forEach((wall, some) -> walls.put(wall, new OnWall(Map.of(), some, Set.of(), Set.of())));
        return walls;
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

    /** The assembly of the job with one offered or declined alternate taken up besides, by its number; empty without such. */
    public Map<Integer, Assembly> alternates() {
        return alternates;
    }

    /** The assembly of the job without one accepted alternate, and without all where there are several, by their numbers. */
    public Map<List<Integer>, Assembly> without() {
        return without;
    }

    /** Numbers of the accepted alternates without which a requirement wouldn't ask for this value. */
    public List<Integer> broughtBy(Requirement requirement) {
        return without.entrySet().stream().filter(other -> other.getKey().size() == 1
            && other.getValue().requirements().stream().noneMatch(same -> same.wall().equals(requirement.wall())
                && same.path().equals(requirement.path()) && same.value().equals(requirement.value())))
            .flatMap(other -> other.getKey().stream()).toList();
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
        return on(wall).map(found -> found.requirements(component, option)).orElse(List.of());
    }

    /** What of the assembly applies to a wall type. */
    public Optional<OnWall> on(String wall) {
        return Optional.ofNullable(walls.get(wall));
    }

    public Optional<Requirement> requirement(String wall, String component, String option, String property) {
        return requirements(wall, component, option).stream().filter(found -> found.property().name().equals(property)).findFirst();
    }
}

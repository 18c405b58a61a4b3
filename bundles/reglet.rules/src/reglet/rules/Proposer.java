package reglet.rules;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.sat4j.core.Vec;
import org.sat4j.core.VecInt;
import org.sat4j.pb.IPBSolver;
import org.sat4j.pb.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.TimeoutException;

import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Option;
import reglet.model.Proposal.Fixed;
import reglet.model.Proposal.Pick;
import reglet.model.WallType;

/**
 * Fills what is undecided in a wall type. A constraint solver picks an option for every component; the rules look at the wall; what they
 * find becomes a clause that excludes every wall from which the same would be read; and so on, until the rules find nothing. That shows
 * whether any wall stands. Then the same within a bound on cost, nothing above the cheapest options first, until one stands: the
 * solver has proved of every lower bound that none does.
 */
final class Proposer {
    /** What a caution costs beside cost classes: rather a special product than a caution, but not two. */
    private static final int CAUTION = 2;
    /** Bounds the work and not the time, so that the same job gets the same proposal. */
    private static final int MOST_ROUNDS = 3_000;
    private static final int MOST_ABOVE = 60;
    private static final int LARGEST_PROVED = 3;

    private final Inquiry inquiry;
    private final WallType wall;
    /** What each component may be: option ids, a fixed choice of alternatives joined, "" for none. */
    private final Map<String, List<String>> domains = new LinkedHashMap<>();
    private final Map<String, Map<String, Integer>> variables = new LinkedHashMap<>();
    private final IPBSolver solver = SolverFactory.newDefault();
    /** What a component can't be whatever the others are. */
    private final Map<String, Set<String>> excluded = new LinkedHashMap<>();
    private final Map<String, Integer> cautions = new LinkedHashMap<>();
    private final Map<String, Finding> left = new LinkedHashMap<>();
    private Check check;
    private int variable;
    private int rounds;
    private boolean contradiction;

    /** Where the search ended. */
    record Outcome(Map<String, Pick> picks, int cost, boolean optimal, List<Fixed> together, boolean smallest, List<Finding> left) {
    }

    private Proposer(Check check, WallType wall) {
        this.check = check;
        this.inquiry = check.inquiry();
        this.wall = wall;
    }

    static Outcome of(Check check, WallType wall) {
        return new Proposer(check, wall).propose();
    }

    private Outcome propose() {
        solver.newVar(4_096);
        solver.setTimeout(3_600);
        inquiry.book.pack.components().forEach(this::declare);
        int[] fixed = fixed(wall.choices().keySet());
        Optional<WallType> first = solve(fixed);
        if (first.isEmpty()) {
            return together(wall.choices().keySet());
        }
        for (int above = 0; above < MOST_ABOVE; above++) {
            Optional<WallType> cheapest = within(above, fixed);
            if (cheapest.isPresent()) {
                return found(cheapest.get(), true);
            }
        }
        return found(first.get(), false);
    }

    private Outcome found(WallType best, boolean optimal) {
        return new Outcome(picks(best), picked(best), optimal, List.of(), false, List.copyOf(left.values()));
    }

    private void declare(Component component) {
        List<String> domain = new ArrayList<>(component.options().stream().map(Option::id).toList());
        wall.choice(component.id()).map(choice -> String.join(", ", choice.accept())).filter(chosen -> !domain.contains(chosen))
            .ifPresent(domain::add);
        if (!component.needed().isEmpty()) {
            domain.add("");
        }
        Map<String, Integer> own = new LinkedHashMap<>();
        VecInt exactly = new VecInt();
        for (String member : domain) {
            own.put(member, ++variable);
            exactly.push(variable);
        }
        domains.put(component.id(), domain);
        variables.put(component.id(), own);
        add(() -> solver.addExactly(exactly, 1));
    }

    private static int cost(Component component, String member) {
        return member.isEmpty() ? 0 : List.of(member.split(", ")).stream().mapToInt(option -> component.option(option).map(Option::cost)
            .orElse(0)).max().orElse(0);
    }

    /** Literals that hold choices to what a person made them. */
    private int[] fixed(Set<String> components) {
        return components.stream().filter(variables::containsKey).mapToInt(component -> variables.get(component)
            .get(String.join(", ", wall.choice(component).orElseThrow().accept()))).toArray();
    }

    /** A wall that the rules find neither conflict nor gap in, under assumptions; learns on the way. */
    private Optional<WallType> solve(int[] assumptions) {
        try {
            while (!contradiction && rounds++ < MOST_ROUNDS && solver.isSatisfiable(new VecInt(assumptions))) {
                WallType candidate = wall(solver.model());
                check = check.after(inquiry.job.with(candidate));
                if (!learn(candidate)) {
                    return Optional.of(candidate);
                }
            }
        } catch (TimeoutException late) {
            // as good as too many rounds
        }
        return Optional.empty();
    }

    private WallType wall(int[] model) {
        Set<Integer> chosen = new LinkedHashSet<>();
        for (int literal : model) {
            if (literal > 0) {
                chosen.add(literal);
            }
        }
        WallType filled = wall;
        for (Component component : inquiry.book.pack.components()) {
            for (Map.Entry<String, Integer> member : variables.get(component.id()).entrySet()) {
                if (chosen.contains(member.getValue())) {
                    filled = Blame.with(filled, component, member.getKey());
                }
            }
        }
        return filled;
    }

    /** Learns a clause of each finding; whether a conflict or gap was among them, or a caution that the solver didn't reckon with. */
    private boolean learn(WallType candidate) {
        boolean again = false;
        for (Finding finding : check.checked().findings()) {
            if (!finding.wall().equals(wall.id()) || left.containsKey(finding.key())) {
                continue;
            }
            Map<String, Set<String>> same = Blame.of(check.inquiry(), candidate, finding, domains);
            VecInt others = new VecInt();
            same.forEach((component, members) -> variables.get(component).forEach((member, literal) -> {
                if (!members.contains(member)) {
                    others.push(literal);
                }
            }));
            if (others.isEmpty()) {
                left.put(finding.key(), finding);
            } else if (finding.kind() == Finding.Kind.CAUTION) {
                Integer known = cautions.putIfAbsent(finding.key() + " " + others, variable + 1);
                if (known == null) {
                    int allowed = ++variable;
                    others.push(allowed);
                    add(() -> solver.addClause(others));
                    again = true;
                }
            } else {
                if (same.size() == 1) {
                    same.forEach((component, members) -> excluded.computeIfAbsent(component, key -> new LinkedHashSet<>()).addAll(members));
                }
                add(() -> solver.addClause(others));
                again = true;
            }
        }
        return again;
    }

    private interface Adding {
        void run() throws ContradictionException;
    }

    private void add(Adding adding) {
        try {
            adding.run();
        } catch (ContradictionException impossible) {
            contradiction = true;
        }
    }

    private static int sum(Map<String, Set<String>> sets) {
        return sets.values().stream().mapToInt(Set::size).sum();
    }

    /**
     * Only what an option costs above the cheapest that its component can be: a solver that learns clauses takes long to find out that
     * every component costs something.
     */
    private void weigh(VecInt literals, Vec<BigInteger> weights) {
        for (Component component : inquiry.book.pack.components()) {
            if (wall.choice(component.id()).isEmpty()) {
                Map<String, Integer> members = new LinkedHashMap<>(variables.get(component.id()));
                members.keySet().removeAll(excluded.getOrDefault(component.id(), Set.of()));
                int least = members.keySet().stream().mapToInt(member -> cost(component, member)).min().orElse(0);
                members.forEach((member, literal) -> {
                    if (cost(component, member) > least) {
                        literals.push(literal);
                        weights.push(BigInteger.valueOf(cost(component, member) - least));
                    }
                });
            }
        }
        cautions.values().forEach(literal -> {
            literals.push(literal);
            weights.push(BigInteger.valueOf(CAUTION));
        });
    }

    /** A wall that stands and costs no more than so much above the cheapest options. */
    private Optional<WallType> within(int above, int[] fixed) {
        while (!contradiction && rounds < MOST_ROUNDS) {
            int known = cautions.size();
            int excludedBefore = sum(excluded);
            VecInt literals = new VecInt();
            Vec<BigInteger> weights = new Vec<>();
            weigh(literals, weights);
            // the bound holds only under its guard: without, what it rules out would stay ruled out for good
            int guard = ++variable;
            BigInteger all = BigInteger.ZERO;
            for (int i = 0; i < weights.size(); i++) {
                all = all.add(weights.get(i));
            }
            literals.push(guard);
            weights.push(all.add(BigInteger.ONE));
            BigInteger most = all.add(BigInteger.valueOf(above + 1L));
            add(() -> solver.addPseudoBoolean(literals, weights, false, most));
            int[] assumptions = Arrays.copyOf(fixed, fixed.length + 1);
            assumptions[fixed.length] = guard;
            Optional<WallType> found = solve(assumptions);
            add(() -> solver.addClause(new VecInt(new int[] {-guard})));
            // what was met on the way has no weight in this bound yet
            if (cautions.size() == known && sum(excluded) == excludedBefore) {
                return found;
            }
        }
        return Optional.empty();
    }

    private int picked(WallType filled) {
        return filled.choices().values().stream().filter(choice -> wall.choice(choice.component()).isEmpty())
            .mapToInt(choice -> cost(inquiry.book.component(choice.component()), String.join(", ", choice.accept()))).sum();
    }

    /** Each pick with the rules that something no dearer would break. */
    private Map<String, Pick> picks(WallType best) {
        Map<String, Pick> picks = new LinkedHashMap<>();
        Check standing = check.after(inquiry.job.with(best));
        Set<String> stands = keys(standing);
        for (Component component : inquiry.book.pack.components()) {
            if (wall.choice(component.id()).isPresent() || best.choice(component.id()).isEmpty()) {
                continue;
            }
            String option = best.choice(component.id()).orElseThrow().accept().get(0);
            int cost = cost(component, option);
            Set<String> because = new LinkedHashSet<>();
            for (String member : domains.get(component.id())) {
                if (!member.equals(option) && cost(component, member) <= cost) {
                    standing.after(inquiry.job.with(Blame.with(best, component, member))).checked().findings().stream()
                        .filter(finding -> !stands.contains(finding.key())).forEach(finding -> because.add(finding.rule()));
                }
            }
            picks.put(component.id(), new Pick(option, because.stream().sorted().toList()));
        }
        return picks;
    }

    private static Set<String> keys(Check check) {
        Set<String> keys = new LinkedHashSet<>();
        check.checked().findings().forEach(finding -> keys.add(finding.key()));
        return keys;
    }

    /** A smallest set of fixed choices that no wall can have together. */
    private Outcome together(Set<String> all) {
        List<String> core = new ArrayList<>(all);
        for (String component : List.copyOf(all)) {
            List<String> fewer = new ArrayList<>(core);
            fewer.remove(component);
            if (impossible(fewer)) {
                core = fewer;
            }
        }
        boolean smallest = core.size() <= 1;
        if (core.size() > 1 && core.size() <= LARGEST_PROVED) {
            List<String> candidates = List.copyOf(all);
            Optional<List<String>> smaller = Optional.empty();
            for (int size = 1; size < core.size() && smaller.isEmpty(); size++) {
                smaller = subsets(candidates, size).stream().filter(this::impossible).findFirst();
            }
            core = smaller.orElse(core);
            smallest = true;
        }
        List<String> found = core;
        return new Outcome(Map.of(), 0, false, inquiry.book.pack.components().stream().map(Component::id).filter(found::contains)
            .map(component -> new Fixed(wall.id(), component, String.join(", ", wall.choice(component).orElseThrow().accept()))).toList(),
            smallest && rounds < MOST_ROUNDS, List.copyOf(left.values()));
    }

    private boolean impossible(List<String> components) {
        return solve(fixed(new LinkedHashSet<>(components))).isEmpty() && rounds < MOST_ROUNDS;
    }

    private static List<List<String>> subsets(List<String> all, int size) {
        if (size == 0) {
            return List.of(List.of());
        }
        List<List<String>> subsets = new ArrayList<>();
        for (int i = 0; i <= all.size() - size; i++) {
            for (List<String> rest : subsets(all.subList(i + 1, all.size()), size - 1)) {
                List<String> one = new ArrayList<>(List.of(all.get(i)));
                one.addAll(rest);
                subsets.add(one);
            }
        }
        return subsets;
    }
}

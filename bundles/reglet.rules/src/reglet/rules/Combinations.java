package reglet.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import reglet.model.Alternate.State;
import reglet.model.Checked;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.WallType;

/**
 * What alternates bring, each combination looked at as a whole wall: the accepted ones together, every offered one with these, every two
 * offered ones, and more of them where some rule reads choices of them all; no other combination could bring what its parts don't. A
 * finding names the fewest alternates that bring it.
 */
final class Combinations {
    /** The rule of a finding that says which combinations were left out. */
    static final String LEFT_OUT = "alternates.combinations";
    /** More combinations of three and more would keep whoever chooses waiting. */
    private static final int MOST = 120;
    /** Of more accepted ones than these, what three and more bring together names all of them. */
    private static final int MANY = 5;
    private final Check check;
    private final Job written;
    private final List<Integer> accepted;
    /** Findings by the alternates taken up. */
    private final Map<Set<Integer>, List<Finding>> looked = new HashMap<>();

    Combinations(Check check) {
        this.check = check;
        this.written = check.job();
        this.accepted = written.versions(State.ACCEPTED);
    }

    /**
     * The findings with the alternates that bring them, and behind them what offered alternates would bring.
     *
     * @param built what stands in the job as it will be built
     */
    List<Finding> told(List<Finding> built) {
        List<Integer> offered = written.versions(State.OFFERED);
        if (accepted.isEmpty() && offered.isEmpty()) {
            return built;
        }
        List<Finding> all = new ArrayList<>(built.stream().map(finding -> finding.with(fewest(finding, Set.of()))).toList());
        Set<String> known = texts(built);
        offered.forEach(number -> bring(all, known, Set.of(number)));
        of(offered, 2).stream().filter(this::isPossible).forEach(pair -> bring(all, known, pair));
        Set<Set<Integer>> read = read(offered);
        int left = MOST;
        for (int size = 3; size <= offered.size(); size++) {
            Set<Set<Integer>> some = new LinkedHashSet<>();
            for (Set<Integer> together : read) {
                of(List.copyOf(together), size).stream().filter(this::isPossible).forEach(some::add);
            }
            if (some.size() > left) {
                all.add(leftOut(offered.size(), size - 1));
                break;
            }
            left -= some.size();
            some.forEach(numbers -> bring(all, known, numbers));
        }
        return all;
    }

    private boolean isPossible(Set<Integer> numbers) {
        return numbers.stream().noneMatch(one -> numbers.stream().anyMatch(other -> one < other && written.exclude(one, other)));
    }

    /** The offered alternates that have choices for components which one rule reads on one wall type; sets of three and more. */
    private Set<Set<Integer>> read(List<Integer> offered) {
        Set<Set<Integer>> all = new LinkedHashSet<>();
        for (WallType wall : offered.size() < 3 ? List.<WallType>of() : written.walls()) {
            for (Rule rule : check.rulebook().rules()) {
                Set<Integer> numbers = new TreeSet<>();
                check.rulebook().owners(rule).forEach(owner -> wall.choice(owner).ifPresent(choice -> numbers.addAll(choice.alternates()
                    .keySet())));
                numbers.retainAll(offered);
                if (numbers.size() > 2) {
                    all.add(numbers);
                }
            }
        }
        return all;
    }

    /** All sets of a size, in the order listed. */
    private static List<Set<Integer>> of(List<Integer> numbers, int size) {
        if (size == 0) {
            return List.of(Set.of());
        }
        List<Set<Integer>> all = new ArrayList<>();
        for (int i = 0; i + size <= numbers.size(); i++) {
            for (Set<Integer> rest : of(numbers.subList(i + 1, numbers.size()), size - 1)) {
                Set<Integer> some = new TreeSet<>(rest);
                some.add(numbers.get(i));
                all.add(some);
            }
        }
        return all;
    }

    private Finding leftOut(int offered, int size) {
        return new Finding(LEFT_OUT, Finding.Kind.CAUTION, Scope.JOB, "", "", "", Map.of(), written.at(), offered + " alternates are "
            + "offered; what they bring together was looked at for up to " + size + " of them at a time.",
            "Look at larger combinations one by one, as if they were accepted: check with --alternate and their numbers.", Map.of(),
            List.of(), List.of());
    }

    /** Tells what stands with these and with no fewer of them. */
    private void bring(List<Finding> all, Set<String> known, Set<Integer> offered) {
        List<Finding> with = with(offered);
        Set<String> before = new HashSet<>(known);
        List<Integer> kept = kept(offered);
        looked.forEach((fewer, findings) -> {
            boolean part = fewer.size() < kept.size() + offered.size() && fewer.containsAll(kept)
                && fewer.stream().allMatch(number -> kept.contains(number) || offered.contains(number));
            if (part) {
                before.addAll(texts(findings));
            }
        });
        with.stream().filter(finding -> !before.contains(text(finding)))
            .forEach(finding -> all.add(finding.with(fewest(finding, offered))));
    }

    /** What stands when these are taken up besides the accepted ones. */
    private List<Finding> with(Set<Integer> offered) {
        Set<Integer> numbers = new TreeSet<>(kept(offered));
        numbers.addAll(offered);
        return look(numbers);
    }

    /** The accepted ones that can stand beside these; one that chooses otherwise stands back for the one that is looked at. */
    private List<Integer> kept(Set<Integer> offered) {
        return accepted.stream().filter(one -> offered.stream().noneMatch(other -> written.exclude(one, other))).toList();
    }

    /** The fewest alternates that bring a finding: those asked of, with the fewest of the accepted ones. */
    private List<Integer> fewest(Finding finding, Set<Integer> asked) {
        List<Integer> kept = kept(asked);
        List<Set<Integer>> smaller = new ArrayList<>();
        for (int size = 0; size <= (kept.size() > MANY ? 2 : kept.size()); size++) {
            smaller.addAll(of(kept, size));
        }
        Optional<List<Integer>> found = smaller.stream().map(some -> {
            Set<Integer> numbers = new TreeSet<>(asked);
            numbers.addAll(some);
            return numbers;
        }).filter(numbers -> texts(look(numbers)).contains(text(finding))).findFirst().map(List::copyOf);
        return found.orElseGet(() -> {
            Set<Integer> all = new TreeSet<>(asked);
            all.addAll(kept);
            return List.copyOf(all);
        });
    }

    private List<Finding> look(Set<Integer> numbers) {
        List<Finding> known = looked.get(numbers);
        if (known == null) {
            Checked checked = check.after(written.taking(List.copyOf(numbers))).checked();
            known = Stream.concat(checked.findings().stream(), checked.accepted().stream()).toList();
            looked.put(numbers, known);
        }
        return known;
    }

    private static Set<String> texts(List<Finding> findings) {
        Set<String> texts = new HashSet<>();
        findings.forEach(finding -> texts.add(text(finding)));
        return texts;
    }

    private static String text(Finding finding) {
        return finding.place() + " " + finding.says();
    }
}

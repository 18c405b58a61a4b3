package reglet.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
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

/**
 * What alternates bring, each combination looked at as a whole wall: the accepted ones together, every offered one with these, and
 * every two offered ones. A finding names the fewest alternates that bring it.
 */
final class Combinations {
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
        for (int number : offered) {
            bring(all, known, Set.of(number));
        }
        for (int i = 0; i < offered.size(); i++) {
            for (int other : offered.subList(i + 1, offered.size())) {
                int one = offered.get(i);
                if (!written.exclude(one, other)) {
                    Set<String> before = new HashSet<>(known);
                    before.addAll(texts(with(Set.of(one))));
                    before.addAll(texts(with(Set.of(other))));
                    bring(all, before, Set.of(one, other));
                }
            }
        }
        return all;
    }

    private void bring(List<Finding> all, Set<String> before, Set<Integer> offered) {
        with(offered).stream().filter(finding -> !before.contains(text(finding)))
            .forEach(finding -> all.add(finding.with(fewest(finding, offered))));
    }

    /** What stands when these are taken up besides the accepted ones. */
    private List<Finding> with(Set<Integer> offered) {
        Set<Integer> numbers = new TreeSet<>(accepted);
        numbers.addAll(offered);
        return look(numbers);
    }

    /** The fewest alternates that bring a finding: those asked of, with none, one, two or all of the accepted ones. */
    private List<Integer> fewest(Finding finding, Set<Integer> asked) {
        List<Set<Integer>> smaller = new ArrayList<>(List.of(Set.of()));
        accepted.forEach(one -> smaller.add(Set.of(one)));
        for (int i = 0; i < accepted.size(); i++) {
            for (int other : accepted.subList(i + 1, accepted.size())) {
                smaller.add(Set.of(accepted.get(i), other));
            }
        }
        Optional<List<Integer>> found = smaller.stream().map(some -> {
            Set<Integer> numbers = new TreeSet<>(asked);
            numbers.addAll(some);
            return numbers;
        }).filter(numbers -> texts(look(numbers)).contains(text(finding))).findFirst().map(List::copyOf);
        return found.orElseGet(() -> {
            Set<Integer> all = new TreeSet<>(asked);
            all.addAll(accepted);
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

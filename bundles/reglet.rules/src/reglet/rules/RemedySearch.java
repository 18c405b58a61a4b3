package reglet.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Change;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Quantity;
import reglet.model.Remedies;
import reglet.model.Remedy;
import reglet.model.Rule;
import reglet.model.UnusableInput;
import reglet.rules.Candidates.Candidate;
import reglet.rules.Checker.Part;

/**
 * Looks for the smallest changes that clear a finding and add none: first every single change of what its rule reads, then every two of
 * them, and where a change clears it but brings another finding, changes of what that one's rule reads. Up to three changes.
 */
final class RemedySearch {
    private static final int MOST_CHANGES = 3;
    private static final int MOST_REMEDIES = 6;
    /** Bounds the search and not the time, so that the same job gets the same remedies. */
    private static final int MOST_LOOKS = 3_000;
    private static final int MOST_CHECKS = 100;

    private final Check before;
    private final Inquiry inquiry;
    private final Finding finding;
    private final Set<String> keys;
    private final Map<Set<Change>, Remedy> found = new LinkedHashMap<>();
    private int looks;
    private int checks;

    /** Changes that clear the finding and bring others. */
    private record Trial(List<Candidate> changes, Check after, List<Finding> brings) {

        int cost() {
            return changes.stream().mapToInt(Candidate::cost).sum();
        }

        boolean touches(Change change) {
            // an option may be followed by a value of it, but not the other way round
            return changes.stream().anyMatch(made -> made.change().set().equals(change.set())
                || made.change().set().startsWith(change.set() + "."));
        }
    }

    private RemedySearch(Check before, Finding finding) {
        this.before = before;
        // of its own, for a check may be asked by several threads
        this.inquiry = before.inquiry().of(before.job());
        this.finding = finding;
        this.keys = before.checked().findings().stream().map(Finding::key).collect(Collectors.toSet());
    }

    static Remedies of(Check check, Finding finding) {
        return new RemedySearch(check, finding).search();
    }

    private Remedies search() {
        List<Candidate> candidates = Candidates.of(inquiry, finding);
        List<Trial> open = new ArrayList<>();
        for (Candidate candidate : candidates) {
            attempt(List.of(candidate), List.of()).ifPresent(open::add);
        }
        for (int size = 2; size <= MOST_CHANGES && (found.isEmpty() || size == 2); size++) {
            List<Trial> wider = new ArrayList<>();
            for (Trial trial : hopeful(open)) {
                Finding brought = trial.brings.get(0);
                for (Candidate candidate : Candidates.of(trial.after.inquiry(), brought)) {
                    if (!trial.touches(candidate.change())) {
                        List<Candidate> more = new ArrayList<>(trial.changes);
                        more.add(candidate);
                        attempt(more, List.of(brought)).ifPresent(wider::add);
                    }
                }
            }
            if (size == 2 && found.isEmpty()) {
                pairs(candidates);
            }
            open = wider;
        }
        return new Remedies(best(), found.isEmpty() ? none(candidates) : "");
    }

    /** Those that clear the finding with few new ones, cheapest first. */
    private static List<Trial> hopeful(List<Trial> open) {
        return open.stream().sorted(Comparator.<Trial>comparingInt(trial -> trial.brings.size())
            .thenComparingInt(Trial::cost)).limit(8).toList();
    }

    /** Two changes of what the rule itself reads, of which neither is enough. */
    private void pairs(List<Candidate> candidates) {
        for (int i = 0; i < candidates.size(); i++) {
            for (int j = i + 1; j < candidates.size(); j++) {
                if (!candidates.get(i).change().set().equals(candidates.get(j).change().set())) {
                    attempt(List.of(candidates.get(i), candidates.get(j)), List.of());
                }
            }
        }
    }

    /**
     * Tries changes; keeps them as a remedy when they are one. Empty when they can't be made, leave the finding or what they are meant
     * to clear besides, or were enough.
     */
    private Optional<Trial> attempt(List<Candidate> changes, List<Finding> besides) {
        if (looks >= MOST_LOOKS || checks >= MOST_CHECKS) {
            return Optional.empty();
        }
        looks++;
        Set<Change> set = changes.stream().map(Candidate::change).collect(Collectors.toSet());
        if (found.keySet().stream().anyMatch(set::containsAll)) {
            return Optional.empty();
        }
        Job changed;
        try {
            changed = Changes.apply(inquiry.book.pack, inquiry.job, changes.stream().map(Candidate::change).toList());
        } catch (UnusableInput impossible) {
            return Optional.empty();
        }
        // most changes leave the finding: its own rule tells so without looking at the others
        Inquiry trial = inquiry.of(changed);
        if (stands(trial, finding) || besides.stream().anyMatch(one -> stands(trial, one))) {
            return Optional.empty();
        }
        checks++;
        Check after = before.after(changed);
        List<Finding> now = after.checked().findings();
        boolean clears = now.stream().noneMatch(one -> one.key().equals(finding.key()));
        List<Finding> brings = now.stream().filter(one -> !keys.contains(one.key())).toList();
        if (!clears) {
            return Optional.empty();
        }
        Trial made = new Trial(changes, after, brings);
        if (brings.isEmpty()) {
            Set<String> left = now.stream().map(Finding::key).collect(Collectors.toCollection(HashSet::new));
            found.put(set, new Remedy(changes.stream().map(Candidate::change).toList(), made.cost(),
                before.checked().findings().stream().map(Finding::key).filter(key -> !left.contains(key)).distinct().toList()));
            return Optional.empty();
        }
        return Optional.of(made);
    }

    /** Whether a rule's finding still stands; of a gap it can't be told so quickly. */
    private boolean stands(Inquiry changed, Finding asked) {
        Optional<Rule> rule = changed.book.pack.rule(asked.rule());
        if (rule.isEmpty()) {
            return false;
        }
        Part part = Checker.once(rule.get()) ? Checker.look(changed, rule.get())
            : Checker.look(changed, rule.get(), changed.job.wall(asked.wall()).orElseThrow());
        return part.findings().stream().anyMatch(one -> one.key().equals(asked.key()));
    }

    /** Of remedies that differ only in a quantity, the one that is nearest to what is there; none that does more than another needs. */
    private List<Remedy> best() {
        Map<Set<String>, Remedy> nearest = new LinkedHashMap<>();
        found.values().forEach(remedy -> nearest.merge(remedy.changes().stream()
            .map(change -> change.set() + "=" + (Quantity.parse(change.to()).isPresent() ? "" : change.to())).collect(Collectors.toSet()),
            remedy, (one, other) -> distance(other) < distance(one) ? other : one));
        List<Set<String>> kinds = List.copyOf(nearest.keySet());
        nearest.keySet().removeIf(one -> kinds.stream().anyMatch(other -> one != other && one.containsAll(other)));
        return nearest.values().stream().sorted(Comparator.<Remedy>comparingInt(remedy -> remedy.changes().size())
            .thenComparingInt(Remedy::cost).thenComparing(remedy -> -remedy.clears().size()).thenComparing(Remedy::text))
            .limit(MOST_REMEDIES).toList();
    }

    /** How far the quantities of a remedy are from those there now, as ratios. */
    private double distance(Remedy remedy) {
        return remedy.changes().stream().mapToDouble(change -> Quantity.parse(change.to()).map(to -> now(change.set())
            .filter(is -> is.si() > 0 && to.si() > 0).map(is -> Math.abs(Math.log(to.si() / is.si()))).orElse(0.0)).orElse(0.0)).sum();
    }

    private Optional<Quantity> now(String address) {
        return Changes.at(inquiry, address).filter(Quantity.class::isInstance).map(Quantity.class::cast);
    }

    private String none(List<Candidate> candidates) {
        return candidates.isEmpty() ? "Only facts decide this that no design changes: see whether they are stated right."
            : "No change of up to " + MOST_CHANGES + " choices or facts clears this without another finding.";
    }
}

package reglet.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import reglet.model.Alternate.State;
import reglet.model.Change;
import reglet.model.Checked;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Proposal;
import reglet.model.Remedies;
import reglet.model.Rule;
import reglet.model.Rule.Result;
import reglet.model.Subject;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.model.WhatIf;
import reglet.rules.Checker.GapAt;
import reglet.rules.Checker.Part;

/**
 * The check of a job, kept rule by rule and wall by wall, so that when the job changes only those rules run again that read what
 * changed. Immutable.
 */
public final class Check {
    /** The subject whose facts stand in the wall's own file, once a wall. */
    private static final String WALL = "wall";

    private final Inquiry inquiry;
    /** By wall type, "" for the job as a whole; then by rule, "" for what is decided. */
    private final Map<String, Map<String, Part>> parts;
    private Checked checked;

    private Check(Inquiry inquiry, Map<String, Map<String, Part>> parts) {
        this.inquiry = inquiry;
        this.parts = parts;
    }

    static Check of(Inquiry inquiry) {
        return look(inquiry, Optional.empty());
    }

    Inquiry inquiry() {
        return inquiry;
    }

    /** What every option of a component that is not taken would clear and bring, were it the one accepted. */
    public List<WhatIf> whatIf(String wall, String component) {
        Check plain = plain(job());
        WallType now = plain.job().wall(wall).orElseThrow();
        Component asked = inquiry.book.component(component);
        List<String> accepted = now.choice(component).map(Choice::accept).orElse(List.of());
        Map<String, Finding> before = plain.byKey();
        return asked.options().stream().map(Option::id).filter(option -> !accepted.equals(List.of(option))).map(option -> {
            Map<String, Finding> after = plain.after(plain.job().with(Blame.with(now, asked, option))).byKey();
            return new WhatIf(wall, component, option,
                before.entrySet().stream().filter(found -> !after.containsKey(found.getKey())).map(Map.Entry::getValue).toList(),
                after.entrySet().stream().filter(found -> !before.containsKey(found.getKey())).map(Map.Entry::getValue).toList());
        }).toList();
    }

    private Map<String, Finding> byKey() {
        Map<String, Finding> findings = new LinkedHashMap<>();
        checked().findings().forEach(finding -> findings.putIfAbsent(finding.key(), finding));
        return findings;
    }

    /** Options for everything that is undecided in the wall types, the cheapest that leave no conflict and no gap. */
    public Proposal propose() {
        Map<String, Map<String, Proposal.Pick>> picks = new LinkedHashMap<>();
        List<Finding> left = new ArrayList<>();
        int cost = 0;
        boolean optimal = true;
        Check plain = plain(job());
        for (WallType wall : plain.job().walls()) {
            Proposer.Outcome outcome = Proposer.of(plain, wall);
            if (!outcome.together().isEmpty() || outcome.picks().isEmpty() && !outcome.optimal()) {
                return new Proposal(Map.of(), 0, false, outcome.together(), outcome.smallest(), outcome.left());
            }
            picks.put(wall.id(), outcome.picks());
            cost += outcome.cost();
            optimal &= outcome.optimal();
            left.addAll(outcome.left());
        }
        return new Proposal(picks, cost, optimal, List.of(), false, left);
    }

    /** The smallest changes that clear a finding of this check and add none. */
    public Remedies remedies(Finding finding) {
        Job asked = job().accepting(finding.alternates());
        Check plain = plain(asked);
        if (plain == this) {
            return RemedySearch.of(this, finding);
        }
        return plain.checked().findings().stream().filter(same -> same.place().equals(finding.place())).findFirst()
            .map(same -> RemedySearch.of(plain, same).inForce(asked)).orElse(new Remedies(List.of(), "It does not stand any more."));
    }

    /** The check of a job with what alternates are accepted in it worked in, and none to be told apart; this one where none is. */
    private Check plain(Job asked) {
        return asked.alternates(State.ACCEPTED).isEmpty() ? this : after(asked.built().taking(List.of()));
    }

    /**
     * The check after changes.
     *
     * @throws UnusableInput when one of them can't be made
     */
    public Check after(List<Change> changes) throws UnusableInput {
        return after(Changes.apply(inquiry.book.pack, job(), changes));
    }

    Rulebook rulebook() {
        return inquiry.book;
    }

    /** The job as its files have it. */
    public Job job() {
        return inquiry.written;
    }

    /** The check of the job after a change; parts that nothing changed in are taken over. */
    public Check after(Job changed) {
        return look(inquiry.of(changed), Optional.of(this));
    }

    private static Check look(Inquiry inquiry, Optional<Check> before) {
        Map<String, Map<String, Part>> parts = new LinkedHashMap<>();
        Set<String> ofJob = before.map(check -> changed(check.inquiry, inquiry)).orElse(Set.of());
        Map<String, Part> whole = new LinkedHashMap<>();
        for (Rule rule : inquiry.book.rules()) {
            if (Checker.once(rule)) {
                whole.put(rule.id(), kept(before, "", rule, inquiry, ofJob, false).orElseGet(() -> Checker.look(inquiry, rule)));
            }
        }
        parts.put("", whole);
        for (WallType wall : inquiry.job.walls()) {
            Optional<WallType> old = before.flatMap(check -> check.inquiry.job.wall(wall.id()));
            Set<String> changes = new HashSet<>(ofJob);
            old.ifPresent(found -> changes.addAll(changed(found, wall)));
            boolean anew = old.map(found -> !found.at().equals(wall.at())).orElse(true);
            if (!anew && changes.isEmpty()) {
                parts.put(wall.id(), before.orElseThrow().parts.get(wall.id()));
                continue;
            }
            Map<String, Part> ofWall = new LinkedHashMap<>();
            for (Rule rule : inquiry.book.rules()) {
                if (!Checker.once(rule)) {
                    ofWall.put(rule.id(), kept(before, wall.id(), rule, inquiry, changes, anew)
                        .orElseGet(() -> Checker.look(inquiry, rule, wall)));
                }
            }
            ofWall.put("", Checker.decided(inquiry, wall));
            parts.put(wall.id(), ofWall);
        }
        return new Check(inquiry, parts);
    }

    private static Optional<Part> kept(Optional<Check> before, String wall, Rule rule, Inquiry inquiry, Set<String> changes, boolean anew) {
        return anew || before.isEmpty() || inquiry.book.owners(rule).stream().anyMatch(changes::contains)
            ? Optional.empty() : Optional.ofNullable(before.get().parts.get(wall)).map(parts -> parts.get(rule.id()));
    }

    /** Job-wide subjects whose facts differ. */
    private static Set<String> changed(Inquiry before, Inquiry after) {
        Set<String> changed = new HashSet<>();
        for (Subject subject : after.book.pack.subjects()) {
            if (!before.job.facts().getOrDefault(subject.id(), Map.of()).equals(after.job.facts().getOrDefault(subject.id(), Map.of()))) {
                changed.add(subject.id());
            }
        }
        return changed;
    }

    /** Components and subjects of a wall type that differ. */
    private static Set<String> changed(WallType before, WallType after) {
        if (before == after) {
            return Set.of();
        }
        Set<String> changed = new HashSet<>();
        Set<String> components = new HashSet<>(before.choices().keySet());
        components.addAll(after.choices().keySet());
        components.stream().filter(component -> !before.choice(component).equals(after.choice(component))).forEach(changed::add);
        if (!before.facts().equals(after.facts())) {
            changed.add(WALL);
        }
        if (!before.meetings().equals(after.meetings())) {
            Set<Meeting> one = new HashSet<>(before.meetings());
            Set<Meeting> other = new HashSet<>(after.meetings());
            one.stream().filter(meeting -> !other.contains(meeting)).forEach(meeting -> changed.add(meeting.subject()));
            other.stream().filter(meeting -> !one.contains(meeting)).forEach(meeting -> changed.add(meeting.subject()));
        }
        return changed;
    }

    /** What stands, what is accepted and how often each result came. */
    public synchronized Checked checked() {
        if (checked == null) {
            checked = gathered();
        }
        return checked;
    }

    private Checked gathered() {
        Map<Result, Integer> instances = new EnumMap<>(Result.class);
        for (Result result : Result.values()) {
            instances.put(result, 0);
        }
        List<Finding> findings = new ArrayList<>();
        Map<GapAt, Set<String>> gaps = new LinkedHashMap<>();
        parts.values().forEach(ofWall -> ofWall.values().forEach(part -> {
            part.instances().forEach((result, number) -> instances.merge(result, number, Integer::sum));
            findings.addAll(part.findings());
            part.gaps().forEach((at, rules) -> gaps.computeIfAbsent(at, key -> new TreeSet<>()).addAll(rules));
        }));
        gaps.forEach((at, rules) -> findings.add(Checker.missing(inquiry, at, rules)));
        return sorted(new Combinations(this).told(findings), instances);
    }

    private Checked sorted(List<Finding> findings, Map<Result, Integer> instances) {
        Job job = inquiry.job;
        Map<String, Integer> walls = new TreeMap<>();
        job.walls().forEach(wall -> walls.put(wall.id(), walls.size() + 1));
        Map<String, Integer> order = new TreeMap<>();
        inquiry.book.pack.components().forEach(component -> order.put(component.id(), component.order()));
        Comparator<Finding> sorted = Comparator.<Finding>comparingInt(finding -> walls.getOrDefault(finding.wall(), 0))
            .thenComparing(finding -> order.getOrDefault(finding.component(), 0)).thenComparing(Finding::rule)
            .thenComparing(finding -> finding.alternates().toString()).thenComparing(Finding::meeting)
            .thenComparing(finding -> finding.options().toString());
        Set<String> said = new LinkedHashSet<>();
        List<Finding> standing = new ArrayList<>();
        List<Finding> accepted = new ArrayList<>();
        findings.stream().sorted(sorted).filter(finding -> said.add(finding.key() + " " + finding.says()))
            .forEach(finding -> (isAccepted(finding) ? accepted : standing).add(finding));
        return new Checked(standing, accepted, inquiry.book.rules().size(), instances);
    }

    private boolean isAccepted(Finding finding) {
        return job().accepted().stream().anyMatch(accepted -> accepted.covers(finding));
    }
}

package reglet.rules;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Meeting;
import reglet.model.Rule;
import reglet.model.Specifying;
import reglet.model.WallType;

/**
 * Which choices a finding comes of: the components whose facts were read on the way to it, each with the options that would read the
 * same. As long as every one of these components has one of these options, the finding stands.
 */
final class Blame {
    private final Inquiry inquiry;
    private final WallType wall;

    private Blame(Inquiry inquiry, WallType wall) {
        this.inquiry = inquiry;
        this.wall = wall;
    }

    /**
     * @param domains what each component may be: option ids joined as in a choice, "" for none
     * @return by component the members of its domain that read the same as what is chosen now
     */
    static Map<String, Set<String>> of(Inquiry inquiry, WallType wall, Finding finding, Map<String, List<String>> domains) {
        // of its own: settings kept for other rules have read more
        Blame blame = new Blame(inquiry.of(inquiry.job), wall);
        Map<String, Set<String>> facts = new LinkedHashMap<>();
        for (String fact : blame.read(finding)) {
            String owner = fact.substring(0, fact.indexOf('.'));
            if (domains.containsKey(owner)) {
                facts.computeIfAbsent(owner, key -> new LinkedHashSet<>()).add(fact);
            }
        }
        Map<String, Set<String>> same = new LinkedHashMap<>();
        facts.forEach((component, read) -> same.put(component, blame.same(component, read, domains.get(component), finding)));
        return same;
    }

    private Set<String> read(Finding finding) {
        Optional<Rule> rule = inquiry.book.pack.rule(finding.rule());
        if (rule.isPresent()) {
            return read(rule.get(), finding);
        }
        if (finding.missing().equals(List.of(finding.component()))) {
            Setting setting = setting(finding);
            setting.of(Expression.needed(finding.component()));
            Set<String> read = new LinkedHashSet<>(setting.read());
            read.add(finding.component() + ".chosen");
            return read;
        }
        // a fact that isn't stated: any one of the rules that ask for it
        String missing = finding.missing().get(0);
        return inquiry.book.rules().stream().filter(asking -> inquiry.book.reads(asking).contains(missing))
            .filter(asking -> Checker.look(inquiry.of(inquiry.job), asking, wall).gaps().keySet().stream()
                .anyMatch(gap -> gap.name().equals(missing))).findFirst().map(asking -> read(asking, finding)).orElse(Set.of());
    }

    private Set<String> read(Rule rule, Finding finding) {
        Set<String> read = new LinkedHashSet<>();
        if (finding.meeting().isEmpty() && !rule.subject().isEmpty()) {
            for (Meeting meeting : wall.meetings()) {
                if (meeting.subject().equals(rule.subject())) {
                    read.addAll(looked(rule, inquiry.of(inquiry.job).setting(wall, meeting, finding.options())));
                }
            }
            return read;
        }
        return looked(rule, setting(finding));
    }

    private Set<String> looked(Rule rule, Setting setting) {
        Look.at(rule, setting, inquiry.book);
        return setting.read();
    }

    private Setting setting(Finding finding) {
        Inquiry fresh = inquiry.of(inquiry.job);
        return wall.meetings().stream().filter(meeting -> meeting.id().equals(finding.meeting())).findFirst()
            .map(meeting -> fresh.setting(wall, meeting, finding.options())).orElseGet(() -> fresh.setting(wall, finding.options()));
    }

    /** Members of a domain with which all of these facts come out as they do now. */
    private Set<String> same(String component, Set<String> facts, List<String> domain, Finding finding) {
        String now = wall.choice(component).map(choice -> String.join(", ", choice.accept())).orElse("");
        Map<String, Outcome> is = outcomes(wall, facts, finding);
        Set<String> same = new LinkedHashSet<>();
        same.add(now);
        for (String member : domain) {
            if (!member.equals(now) && outcomes(with(wall, inquiry.book.component(component), member), facts, finding).equals(is)) {
                same.add(member);
            }
        }
        return same;
    }

    private Map<String, Outcome> outcomes(WallType changed, Set<String> facts, Finding finding) {
        Inquiry other = inquiry.of(inquiry.job.with(changed));
        Setting setting = changed.meetings().stream().filter(meeting -> meeting.id().equals(finding.meeting())).findFirst()
            .map(meeting -> other.setting(changed, meeting, Map.of())).orElseGet(() -> other.setting(changed, Map.of()));
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        facts.forEach(fact -> outcomes.put(fact, setting.fact(fact)));
        return outcomes;
    }

    /** The wall type with a component as a member of its domain says. */
    static WallType with(WallType wall, Component component, String member) {
        Map<String, Choice> choices = new LinkedHashMap<>(wall.choices());
        if (member.isEmpty()) {
            choices.remove(component.id());
        } else {
            Optional<Choice> before = wall.choice(component.id());
            choices.put(component.id(), new Choice(component.id(), List.of(member.split(", ")),
                before.map(Choice::values).orElse(Map.of()), before.map(Choice::by).orElse(""), before.map(Choice::because).orElse(""),
                Specifying.PERFORMANCE, before.map(Choice::alternates).orElse(Map.of()), before.map(Choice::at).orElse(wall.at())));
        }
        return new WallType(wall.id(), wall.title(), wall.facts(), wall.meetings(), choices, wall.at());
    }
}

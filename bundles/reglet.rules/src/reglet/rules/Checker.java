package reglet.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Explanation;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.Rule;
import reglet.model.Rule.Result;
import reglet.model.Scope;
import reglet.model.Specifying;
import reglet.model.WallType;
import reglet.model.Wording;
import reglet.rules.Outcome.Missing;

/** Looks at a rule in a wall type, or in the job as a whole, and says what it finds. */
final class Checker {
    /** What a gap's id ends with: a component to be decided, a fact to be stated, a product to be named. */
    private static final String DECIDED = ".decided";
    private static final String STATED = ".stated";
    private static final String SPECIFIED = ".specified";

    private final Inquiry inquiry;
    private final Rulebook book;
    private final Job job;
    private final Map<Result, Integer> instances = new EnumMap<>(Result.class);
    private final List<Finding> findings = new ArrayList<>();
    private final Map<GapAt, Set<String>> gaps = new LinkedHashMap<>();

    /** Where a fact is missing. */
    record GapAt(String wall, String meeting, String name) {
    }

    /**
     * What came of it.
     *
     * @param gaps rules that a missing fact keeps from a result, by where it is missing and its name
     */
    record Part(List<Finding> findings, Map<GapAt, Set<String>> gaps, Map<Result, Integer> instances) {
    }

    private Checker(Inquiry inquiry) {
        this.inquiry = inquiry;
        this.book = inquiry.book;
        this.job = inquiry.job;
    }

    private Part part() {
        return new Part(findings, gaps, instances);
    }

    /** A rule for the whole job. */
    static Part look(Inquiry inquiry, Rule rule) {
        Checker checker = new Checker(inquiry);
        checker.look(rule, inquiry.setting());
        return checker.part();
    }

    /** A rule in a wall type, with every way to pick one of its accepted options. */
    static Part look(Inquiry inquiry, Rule rule, WallType wall) {
        Checker checker = new Checker(inquiry);
        settings(inquiry, rule, wall).forEach(setting -> checker.look(rule, setting));
        return checker.part();
    }

    /** What has to be decided in a wall type and isn't. */
    static Part decided(Inquiry inquiry, WallType wall) {
        Checker checker = new Checker(inquiry);
        checker.undecided(wall);
        return checker.part();
    }

    /** Whether a rule is looked at once for the whole job. */
    static boolean once(Rule rule) {
        return rule.each() == Scope.JOB || rule.each() == Scope.SECTION;
    }

    /** How a rule came out in each setting. */
    static List<Explanation> explain(Inquiry inquiry, Rule rule) {
        List<Explanation> all = new ArrayList<>();
        for (Setting setting : settings(inquiry, rule)) {
            Look look = Look.at(rule, setting, inquiry.book);
            all.add(new Explanation(rule.id(), setting.wallId(), setting.meetingId(), setting.picks(), look.when(), look.read(),
                look.lets(),
                look.result(), look.missing(), look.error()));
        }
        return all;
    }

    private static List<Setting> settings(Inquiry inquiry, Rule rule) {
        return once(rule) ? List.of(inquiry.setting())
            : inquiry.job.walls().stream().flatMap(wall -> settings(inquiry, rule, wall).stream()).toList();
    }

    private static List<Setting> settings(Inquiry inquiry, Rule rule, WallType wall) {
        List<Setting> settings = new ArrayList<>();
        for (Map<String, String> picks : Setting.picks(wall, inquiry.book.components(rule))) {
            if (rule.each() == Scope.WALL) {
                settings.add(inquiry.setting(wall, picks));
            } else {
                wall.meetings().stream().filter(meeting -> meeting.subject().equals(rule.subject()))
                    .forEach(meeting -> settings.add(inquiry.setting(wall, meeting, picks)));
            }
        }
        return settings;
    }

    private void look(Rule rule, Setting setting) {
        Look look = Look.at(rule, setting, book);
        instances.merge(look.result(), 1, Integer::sum);
        switch (look.result()) {
            case BREAKS -> findings.add(finding(look, setting, rule.kind(), look.filled(rule.says()), look.filled(rule.fix())));
            case ERROR -> findings.add(finding(look, setting, Finding.Kind.CAUTION,
                Wording.of("The rule can't be worked out: " + look.error() + "."), Wording.of("Look at this by hand, and mend the rule.")));
            case GAP -> look.missing().forEach(name -> gap(rule, setting, name));
            default -> {
            }
        }
    }

    private Finding finding(Look look, Setting setting, Finding.Kind kind, Wording says, Wording fix) {
        Rule rule = look.rule();
        return new Finding(rule.id(), kind, rule.each(), setting.wallId(), setting.meetingId(), rule.component(), setting.picks(),
            place(rule.component(), setting), says, fix, look.read(), look.missing(), rule.basis());
    }

    /** The choice that the rule points at; else the meeting, the wall type or the job. */
    private Place place(String component, Setting setting) {
        Optional<Place> meeting = setting.meeting().map(Meeting::at);
        Optional<Place> choice = setting.wall().flatMap(wall -> wall.choice(component)).map(Choice::at);
        return meeting.or(() -> choice).or(() -> setting.wall().map(WallType::at)).orElse(job.at());
    }

    /** Notes a missing fact; facts of a component that is not decided yet are covered by that one gap. */
    private void gap(Rule rule, Setting setting, String name) {
        int dot = name.indexOf('.');
        String owner = dot < 0 || name.indexOf(' ') >= 0 ? "" : name.substring(0, dot);
        Component component = book.component(owner);
        if (component != null && setting.wall().flatMap(wall -> wall.choice(owner)).isEmpty()) {
            return;
        }
        Scope scope = component != null ? Scope.WALL : book.subject(owner) != null ? book.subject(owner).scope() : rule.each();
        GapAt at = new GapAt(scope == Scope.JOB ? "" : setting.wallId(), scope == Scope.MEETING ? setting.meetingId() : "", name);
        gaps.computeIfAbsent(at, key -> new TreeSet<>()).add(rule.id());
    }

    /** A missing fact as a finding. */
    static Finding missing(Inquiry inquiry, GapAt at, Set<String> rules) {
        return new Checker(inquiry).gap(at, rules);
    }

    private Finding gap(GapAt at, Set<String> rules) {
        WallType wall = at.wall().isEmpty() ? null : job.wall(at.wall()).orElseThrow();
        Optional<Meeting> meeting = wall == null ? Optional.empty()
            : wall.meetings().stream().filter(found -> found.id().equals(at.meeting())).findFirst();
        Scope scope = wall == null ? Scope.JOB : meeting.isPresent() ? Scope.MEETING : Scope.WALL;
        String needs = rules.size() == 1 ? "the rule " + rules.iterator().next() + " needs it" : rules.size() + " rules need it: "
            + String.join(", ", rules);
        Optional<Property> property = book.pack.property(at.name());
        String owner = property.isPresent() ? at.name().substring(0, at.name().indexOf('.')) : "";
        Component component = book.component(owner);
        Place place = meeting.map(Meeting::at)
            .or(() -> Optional.ofNullable(component).flatMap(found -> wall.choice(found.id())).map(Choice::at))
            .or(() -> Optional.ofNullable(wall).map(WallType::at)).orElse(job.at());
        String says;
        String fix;
        if (property.isPresent()) {
            String title = component != null ? component.title() : book.subject(owner).title();
            says = title + ": the " + property.get().label() + " is not stated; " + needs + ".";
            fix = "State " + at.name() + (property.get().help().isEmpty() ? "." : ". " + property.get().help());
        } else {
            says = "No entry for " + at.name() + "; " + needs + ".";
            fix = "Choose what the table holds, or have it shown by the maker or an engineer.";
        }
        String id = property.isPresent() ? at.name() + STATED : rules.iterator().next();
        return new Finding(id, Finding.Kind.GAP, scope, at.wall(), at.meeting(), component == null ? "" : component.id(), Map.of(),
            place, says, fix, Map.of(), List.of(at.name()), List.of());
    }

    private void undecided(WallType wall) {
        Setting setting = inquiry.setting(wall, Map.of());
        for (Component component : book.pack.components()) {
            Optional<Choice> choice = wall.choice(component.id());
            if (choice.isPresent()) {
                unnamed(wall, component, choice.get()).ifPresent(findings::add);
                continue;
            }
            Outcome needed = setting.of(Expression.needed(component.id()));
            if (needed.is(true)) {
                findings.add(new Finding(component.id() + DECIDED, Finding.Kind.GAP, Scope.WALL, wall.id(), "", component.id(), Map.of(),
                    wall.at(), component.title() + " is not decided.", "Choose an option for " + component.id() + ".", Map.of(),
                    List.of(component.id()), List.of()));
            } else if (needed instanceof Missing missing) {
                missing.names().forEach(name -> gaps.computeIfAbsent(new GapAt(scopeWall(name, wall), "", name), key -> new TreeSet<>())
                    .add(component.id() + DECIDED));
            }
        }
    }

    /** What the way of specifying needs and the choice doesn't give. */
    private Optional<Finding> unnamed(WallType wall, Component component, Choice choice) {
        Specifying specified = choice.specified();
        List<String> missing = new ArrayList<>();
        if (specified.namesProduct()) {
            if (specified.product().isEmpty()) {
                missing.add(Specifying.PRODUCT.name());
            }
            if (specified.maker().isEmpty()) {
                missing.add(Specifying.MAKER.name());
            }
        } else if (specified.how() == Specifying.How.REFERENCE_STANDARD) {
            choice.accept().stream().filter(option -> component.properties().stream().noneMatch(property -> !property.method().isNone()
                && inquiry.setting(wall, Map.of(component.id(), option)).required(component, property).isPresent())).findFirst()
                .ifPresent(option -> missing.add("standard"));
        }
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        String says = component.title() + " is specified by " + specified.how().text() + ", and no " + String.join(" and no ", missing)
            + " is named.";
        String fix = specified.namesProduct() ? "Name product and maker beside \"specify\", or specify by performance."
            : "None of its requirements is shown by a standard; specify by performance.";
        return Optional.of(new Finding(component.id() + SPECIFIED, Finding.Kind.GAP, Scope.WALL, wall.id(), "", component.id(), Map.of(),
            choice.at(), says, fix, Map.of(), missing.stream().map(name -> component.id() + "." + name).toList(), List.of()));
    }

    private String scopeWall(String name, WallType wall) {
        String owner = name.substring(0, name.indexOf('.'));
        return book.subject(owner) != null && book.subject(owner).scope() == Scope.JOB ? "" : wall.id();
    }
}

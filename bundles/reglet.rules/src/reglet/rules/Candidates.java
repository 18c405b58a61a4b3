package reglet.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Day;
import reglet.model.Evidence;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Worksheet;
import reglet.rules.Outcome.Known;

/** Single changes of a job that could have to do with a finding: those of what its rule reads. */
final class Candidates {
    /** A change of a fact or a value: cheaper than any other product. */
    private static final int FACT = 1;

    private final Inquiry inquiry;
    private final Rulebook book;
    private final Job job;
    private final Finding finding;
    private final Map<String, Candidate> found = new LinkedHashMap<>();

    /** A change with its cost class. */
    record Candidate(Change change, int cost) {
    }

    /** What a rule compares with. */
    private record Limits(List<Quantity> amounts, List<Day> days) {
    }

    private Candidates(Inquiry inquiry, Finding finding) {
        this.inquiry = inquiry;
        this.book = inquiry.book;
        this.job = inquiry.job;
        this.finding = finding;
    }

    /** Each address with each value once, in the order of what the rule reads. */
    static List<Candidate> of(Inquiry inquiry, Finding finding) {
        Candidates candidates = new Candidates(inquiry, finding);
        Optional<WallType> wall = inquiry.job.wall(finding.wall());
        Collection<WallType> walls = wall.isPresent() ? List.of(wall.get()) : inquiry.job.walls();
        Set<String> facts = candidates.facts();
        Limits limits = candidates.limits(wall);
        facts.forEach(fact -> candidates.ofJob(fact, limits));
        for (WallType one : walls) {
            Set<String> components = new LinkedHashSet<>();
            for (String fact : facts) {
                int dot = fact.indexOf('.');
                String owner = fact.substring(0, dot);
                Component component = inquiry.book.component(owner);
                Subject subject = inquiry.book.subject(owner);
                if (component != null) {
                    if (components.add(owner)) {
                        candidates.options(one, component);
                    }
                    component.property(fact.substring(dot + 1)).ifPresent(property -> candidates.value(one, component, property, limits));
                } else if (subject != null && subject.scope() != Scope.JOB && !subject.given().contains(fact.substring(dot + 1))) {
                    candidates.fact(one, subject, subject.property(fact.substring(dot + 1)).orElseThrow(), limits);
                }
            }
        }
        return List.copyOf(candidates.found.values());
    }

    private Set<String> facts() {
        Optional<Rule> rule = book.pack.rule(finding.rule());
        if (rule.isPresent()) {
            return book.reads(rule.get());
        }
        Set<String> facts = new LinkedHashSet<>();
        for (String missing : finding.missing()) {
            // an undecided component is named without a property
            facts.add(missing.indexOf('.') < 0 ? missing + ".option" : missing);
        }
        if (!finding.component().isEmpty()) {
            facts.addAll(book.needs(finding.component()));
        }
        return facts;
    }

    /** Quantities and days that the rule compares with: written in it, worked out by it, read by it, or given by a worksheet. */
    private Limits limits(Optional<WallType> wall) {
        Set<Value> limits = new LinkedHashSet<>();
        Collection<Rule> rules = book.pack.rule(finding.rule()).map(List::of).orElseGet(() -> book.rules().stream()
            .filter(rule -> finding.missing().stream().anyMatch(book.reads(rule)::contains)).toList());
        Setting setting = wall.map(found -> found.meetings().stream().filter(meeting -> meeting.id().equals(finding.meeting())).findFirst()
            .map(meeting -> inquiry.setting(found, meeting, finding.options())).orElseGet(() -> inquiry.setting(found, finding.options())))
            // a fact of the job is read by rules of walls too
            .orElseGet(() -> job.walls().isEmpty() ? inquiry.setting() : inquiry.setting(job.walls().get(0), Map.of()));
        for (Rule rule : rules) {
            Expression.of(rule).forEach(expression -> book.tree(expression.key()).ifPresent(tree -> constants(tree, limits)));
            Evaluator evaluator = new Evaluator(setting, book.tables, book.trees(rule).lets());
            for (String let : rule.let().keySet()) {
                limit(evaluator.let(let), limits);
            }
            for (String fact : book.facts(rule)) {
                limit(setting.fact(fact), limits);
                book.calculation(fact).map(calculation -> inquiry.worksheet(calculation, setting)).ifPresent(outcome -> {
                    if (outcome instanceof Known known && known.value() instanceof Worksheet worksheet) {
                        worksheet.results().values().forEach(amount -> limits.add(amount.quantity()));
                    }
                });
            }
        }
        // of 3 in and the 3.003 in that a worksheet came to, the shorter
        List<Quantity> tidy = new ArrayList<>();
        limits.stream().filter(Quantity.class::isInstance).map(Quantity.class::cast)
            .sorted(Comparator.comparingInt((Quantity limit) -> limit.amount().length())).forEach(limit -> {
            if (tidy.stream().noneMatch(kept -> kept.dimension() == limit.dimension() && kept.compareWith(limit) == 0)) {
                tidy.add(limit);
            }
        });
        return new Limits(tidy, limits.stream().filter(Day.class::isInstance).map(Day.class::cast).toList());
    }

    private static void limit(Outcome outcome, Set<Value> limits) {
        if (outcome instanceof Known known && (known.value() instanceof Quantity || known.value() instanceof Day)) {
            limits.add((Value) known.value());
        } else if (outcome instanceof Known known && known.value() instanceof Range range) {
            limits.add(range.low());
            limits.add(range.high());
        }
    }

    private static void constants(Node node, Set<Value> limits) {
        if (node instanceof Node.Constant constant && constant.value() instanceof Value value) {
            limits.add(value);
        } else if (node instanceof Node.Call call) {
            call.arguments().forEach(argument -> constants(argument, limits));
        } else if (node instanceof Node.Lookup lookup) {
            lookup.arguments().forEach(argument -> constants(argument, limits));
        }
    }

    private void options(WallType wall, Component component) {
        String address = wall.id() + "." + component.id();
        Optional<Choice> choice = wall.choice(component.id());
        if (choice.isEmpty()) {
            component.options().forEach(option -> add(address, option.id(), option.cost()));
            return;
        }
        List<String> accept = choice.get().accept();
        int cost = accept.stream().mapToInt(option -> component.option(option).map(Option::cost).orElse(0)).max().orElse(0);
        if (accept.size() > 1) {
            accept.forEach(option -> add(address, String.join(", ", accept.stream().filter(other -> !other.equals(option)).toList()), 0));
        }
        component.options().stream().filter(option -> !accept.contains(option.id()))
            .forEach(option -> add(address, option.id(), option.cost() - cost));
        if (!component.needed().isEmpty()) {
            add(address, "", -cost);
        }
    }

    /** A value that a person may set: one that no option gives, or a dimension that no product brings along. */
    private void value(WallType wall, Component component, Property property, Limits limits) {
        boolean offered = component.options().stream().anyMatch(option -> option.value(property.name()).isPresent());
        boolean dimension = (property.type().kind() == Kind.QUANTITY || property.type().kind() == Kind.RANGE)
            && (property.evidence() == Evidence.NONE
            || property.evidence() == Evidence.FIELD_CHECK || property.evidence() == Evidence.SHOP_DRAWING);
        Optional<Choice> choice = wall.choice(component.id());
        String address = wall.id() + "." + component.id() + "." + property.name();
        Optional<Stated> now = choice.map(found -> found.values().get(property.name()));
        if (now.isPresent()) {
            // what a person set over an option's value can always be taken away again
            add(address, "", FACT);
        }
        if (choice.isPresent() && (!offered || dimension)) {
            List<Quantity> values = new ArrayList<>(limits.amounts());
            component.options().forEach(option -> option.value(property.name()).filter(Quantity.class::isInstance)
                .ifPresent(value -> values.add((Quantity) value)));
            values(address, property.type(), now.map(Stated::value).or(property::usual), new Limits(values, limits.days()));
        }
    }

    private void ofJob(String fact, Limits limits) {
        String owner = fact.substring(0, fact.indexOf('.'));
        String name = fact.substring(owner.length() + 1);
        Subject subject = book.subject(owner);
        if (subject != null && subject.scope() == Scope.JOB && !subject.given().contains(name)) {
            Property property = subject.property(name).orElseThrow();
            values(fact, property.type(), Optional.ofNullable(job.facts().getOrDefault(owner, Map.of()).get(name)).map(Stated::value)
                .or(property::usual), limits);
        }
    }

    private void fact(WallType wall, Subject subject, Property property, Limits limits) {
        if (subject.scope() == Scope.WALL) {
            values(wall.id() + "." + subject.id() + "." + property.name(), property.type(),
                Optional.ofNullable(wall.facts().get(property.name())).map(Stated::value).or(property::usual), limits);
            return;
        }
        for (Meeting meeting : wall.meetings()) {
            if (meeting.subject().equals(subject.id()) && (finding.meeting().isEmpty() || finding.meeting().equals(meeting.id()))) {
                values(wall.id() + "." + meeting.id() + "." + property.name(), property.type(),
                    Optional.ofNullable(meeting.facts().get(property.name())).map(Stated::value).or(property::usual), limits);
            }
        }
    }

    /** Other values of a type than the one there now. */
    private void values(String address, PropertyType type, Optional<Value> now, Limits limits) {
        switch (type.kind()) {
            case FLAG -> List.of("yes", "no").forEach(word -> other(address, now, word));
            case WORD, GRADE -> type.words().forEach(word -> other(address, now, word));
            case QUANTITY -> limits.amounts().stream().filter(limit -> limit.dimension() == type.unit().orElseThrow().dimension())
                .filter(limit -> now.isEmpty() || ((Quantity) now.get()).compareWith(limit) != 0)
                .forEach(limit -> add(address, limit.text(), FACT));
            case RANGE -> now.map(Range.class::cast).ifPresent(range -> limits.amounts().stream()
                .filter(limit -> limit.dimension() == range.low().dimension()).forEach(limit -> {
                    if (limit.compareWith(range.high()) > 0) {
                        add(address, new Range(range.low(), limit).text(), FACT);
                    } else if (limit.compareWith(range.low()) < 0) {
                        add(address, new Range(limit, range.high()).text(), FACT);
                    }
                }));
            case DATE -> limits.days().forEach(day -> other(address, now, day.text()));
            case SET -> {
            }
        }
    }

    private void other(String address, Optional<Value> now, String word) {
        if (now.isEmpty() || !now.get().text().equals(word)) {
            add(address, word, FACT);
        }
    }

    private void add(String address, String to, int cost) {
        found.putIfAbsent(address + "=" + to, new Candidate(new Change(address, to), cost));
    }
}

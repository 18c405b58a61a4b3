package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Property;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.rules.Outcome.Inapplicable;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/**
 * One thing that expressions are looked at for: the job, a wall type, or a meeting of one, with one option picked for each
 * component that has alternatives.
 */
final class Setting implements Facts {
    private final Rulebook book;
    private final Job job;
    private final Optional<WallType> wall;
    private final Optional<Meeting> meeting;
    private final Map<String, String> picks;
    private final Map<String, Outcome> known = new LinkedHashMap<>();

    Setting(Rulebook book, Job job, Optional<WallType> wall, Optional<Meeting> meeting, Map<String, String> picks) {
        this.book = book;
        this.job = job;
        this.wall = wall;
        this.meeting = meeting;
        this.picks = picks;
    }

    Optional<WallType> wall() {
        return wall;
    }

    Optional<Meeting> meeting() {
        return meeting;
    }

    String wallId() {
        return wall.map(WallType::id).orElse("");
    }

    String meetingId() {
        return meeting.map(Meeting::id).orElse("");
    }

    /** The options picked where there are alternatives. */
    Map<String, String> picks() {
        return picks;
    }

    /** Every way to pick one of the accepted options of these components of a wall type. */
    static List<Map<String, String>> picks(WallType wall, Set<String> components) {
        List<Map<String, String>> all = List.of(Map.of());
        for (String component : components) {
            Optional<Choice> choice = wall.choice(component);
            if (choice.isPresent() && choice.get().accept().size() > 1) {
                List<Map<String, String>> wider = new ArrayList<>();
                for (Map<String, String> before : all) {
                    for (String option : choice.get().accept()) {
                        Map<String, String> with = new LinkedHashMap<>(before);
                        with.put(component, option);
                        wider.add(with);
                    }
                }
                all = wider;
            }
        }
        return all;
    }

    Outcome of(Node node, Map<String, Node> lets) {
        return new Evaluator(this, book.tables, lets).of(node);
    }

    /** An expression of the pack by key; true where none is written. */
    Outcome of(String key) {
        return book.tree(key).map(tree -> of(tree, Map.of())).orElse(Outcome.TRUE);
    }

    @Override
    public Outcome fact(String name) {
        Outcome found = known.get(name);
        if (found == null) {
            // a property that applies only under a condition on itself would never come to an end
            known.put(name, new Outcome.Failed(name + " depends on itself"));
            found = find(name);
            known.put(name, found);
        }
        return found;
    }

    private Outcome find(String name) {
        int dot = name.indexOf('.');
        String owner = name.substring(0, dot);
        String property = name.substring(dot + 1);
        Component component = book.component(owner);
        return component == null ? described(name, book.subject(owner), property) : chosen(name, component, property);
    }

    private Outcome described(String name, Subject subject, String property) {
        Map<String, Stated> stated = switch (subject.scope()) {
            case WALL -> wall.map(WallType::facts).orElse(Map.of());
            case MEETING -> meeting.map(Meeting::facts).orElse(Map.of());
            default -> job.facts().getOrDefault(subject.id(), Map.of());
        };
        return value(name, subject.id(), subject.property(property).orElseThrow(), stated, Optional.empty());
    }

    private Outcome chosen(String name, Component component, String property) {
        Optional<Choice> choice = wall.flatMap(found -> found.choice(component.id()));
        if (property.equals("chosen")) {
            return new Known(choice.isPresent());
        }
        if (choice.isEmpty()) {
            Outcome needed = of(Expression.needed(component.id()));
            return needed.is(false) ? new Inapplicable(name) : needed instanceof Known ? new Missing(Set.of(name)) : needed;
        }
        String option = picks.getOrDefault(component.id(), choice.get().accept().get(0));
        if (property.equals("option")) {
            return new Known(option);
        }
        Optional<Value> offered = component.option(option).flatMap(found -> found.value(property));
        return value(name, component.id(), component.property(property).orElseThrow(), choice.get().values(), offered);
    }

    private Outcome value(String name, String owner, Property property, Map<String, Stated> stated, Optional<Value> offered) {
        Outcome applies = of(Expression.only(owner, property.name()));
        if (applies.is(false) || applies instanceof Inapplicable) {
            return new Inapplicable(name);
        }
        if (!(applies instanceof Known)) {
            return applies;
        }
        return Optional.ofNullable(stated.get(property.name())).map(Stated::value).or(() -> offered).or(property::usual)
            .<Outcome>map(value -> new Known(FactValues.plain(property.type(), value))).orElse(new Missing(Set.of(name)));
    }

    /** The value that a choice gives a property: set by a person, of the option, or the usual one; empty when it has none or no meaning. */
    Optional<Value> required(Component component, Property property) {
        if (!(fact(component.id() + "." + property.name()) instanceof Known)) {
            return Optional.empty();
        }
        Choice choice = wall.orElseThrow().choice(component.id()).orElseThrow();
        String option = picks.getOrDefault(component.id(), choice.accept().get(0));
        return Optional.ofNullable(choice.values().get(property.name())).map(Stated::value)
            .or(() -> component.option(option).flatMap(found -> found.value(property.name()))).or(property::usual);
    }
}

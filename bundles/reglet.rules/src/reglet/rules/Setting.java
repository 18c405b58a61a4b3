package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Calculation;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Meeting;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Specifying;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Worksheet;
import reglet.rules.Outcome.Inapplicable;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/**
 * One thing that expressions are looked at for: the job, a wall type, or a meeting of one, with one option picked for each
 * component that has alternatives.
 */
final class Setting implements Facts {
    /** Where a value comes from that nobody stated. */
    private static final String USUAL = "usual value";
    /** Facts that are no property's value. */
    private static final Set<String> ABOUT_CHOICE = Set.of("option", "chosen", Specifying.HOW, Specifying.COMPARABLE);

    private final Inquiry inquiry;
    private final Rulebook book;
    private final Optional<WallType> wall;
    private final Optional<Meeting> meeting;
    private final Map<String, String> picks;
    private final Map<String, Outcome> known = new LinkedHashMap<>();

    Setting(Inquiry inquiry, Optional<WallType> wall, Optional<Meeting> meeting, Map<String, String> picks) {
        this.inquiry = inquiry;
        this.book = inquiry.book;
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
        Optional<Calculation> calculation = book.calculation(name);
        if (calculation.isPresent()) {
            Outcome worksheet = inquiry.worksheet(calculation.get(), this);
            return worksheet instanceof Known known ? result(name, calculation.get(), (Worksheet) known.value()) : worksheet;
        }
        int dot = name.indexOf('.');
        String owner = name.substring(0, dot);
        String property = name.substring(dot + 1);
        Component component = book.component(owner);
        return component == null ? described(name, book.subject(owner), property) : chosen(name, component, property);
    }

    /** What a worksheet came to; a result that it doesn't give here, such as a spacing in steel, has no meaning here. */
    private static Outcome result(String name, Calculation calculation, Worksheet worksheet) {
        String key = name.substring(Calculation.OWNER.length() + calculation.id().length() + 2);
        if (key.equals("margin")) {
            return worksheet.margin().isPresent() ? new Known(Quantity.of(worksheet.margin().getAsDouble(), Unit.ONE))
                : new Inapplicable(name);
        }
        return Optional.ofNullable(worksheet.results().get(key))
            .<Outcome>map(amount -> new Known(amount.quantity()))
            .orElse(new Inapplicable(name));
    }

    /** Where a known fact comes from: a file of the job, an option, the usual value, a worksheet. */
    Optional<String> origin(String name) {
        if (!(fact(name) instanceof Known)) {
            return Optional.empty();
        }
        Optional<Calculation> calculation = book.calculation(name);
        if (calculation.isPresent()) {
            return Optional.of("worksheet \"" + calculation.get().title() + "\"");
        }
        int dot = name.indexOf('.');
        String property = name.substring(dot + 1);
        Component component = book.component(name.substring(0, dot));
        if (component == null) {
            return Optional.of(Optional.ofNullable(stated(book.subject(name.substring(0, dot))).get(property))
                .map(stated -> stated.at().file()).orElse(USUAL));
        }
        Optional<Choice> choice = wall.flatMap(found -> found.choice(component.id()));
        if (choice.isEmpty()) {
            return Optional.empty();
        }
        String option = picks.getOrDefault(component.id(), choice.get().accept().get(0));
        if (ABOUT_CHOICE.contains(property)) {
            return Optional.of(choice.get().at().file());
        }
        return Optional.of(Optional.ofNullable(choice.get().values().get(property)).map(stated -> stated.at().file())
            .or(() -> component.option(option).flatMap(found -> found.value(property)).map(value -> "option " + option)).orElse(USUAL));
    }

    private Outcome described(String name, Subject subject, String property) {
        return value(name, subject.id(), subject.property(property).orElseThrow(), stated(subject), Optional.empty());
    }

    private Map<String, Stated> stated(Subject subject) {
        return switch (subject.scope()) {
            case WALL -> wall.map(WallType::facts).orElse(Map.of());
            case MEETING -> meeting.map(Meeting::facts).orElse(Map.of());
            default -> inquiry.job.facts().getOrDefault(subject.id(), Map.of());
        };
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
        if (property.equals(Specifying.HOW)) {
            return new Known(choice.get().specified().how().text());
        }
        if (property.equals(Specifying.COMPARABLE)) {
            return new Known(choice.get().specified().comparable());
        }
        Optional<Value> offered = component.option(option).flatMap(found -> found.value(property));
        return value(name, component.id(), component.property(property).orElseThrow(), choice.get().values(), offered);
    }

    private Outcome value(String name, String owner, Property property, Map<String, Stated> stated, Optional<Value> offered) {
        Outcome applies = book.only(owner, property).map(tree -> of(tree, Map.of())).orElse(Outcome.TRUE);
        if (applies.is(false) || applies instanceof Inapplicable) {
            return new Inapplicable(name);
        }
        if (!(applies instanceof Known)) {
            return applies;
        }
        return Optional.ofNullable(stated.get(property.name())).map(Stated::value).or(() -> offered).or(property::usual)
            .<Outcome>map(value -> new Known(FactValues.plain(property.type(), value))).orElse(new Missing(Set.of(name)));
    }

    /** Every fact that was read here so far; of a worksheet, all that it may read. */
    Set<String> read() {
        Set<String> read = new LinkedHashSet<>();
        known.keySet().forEach(fact -> {
            if (book.calculation(fact).isPresent()) {
                read.addAll(book.reads(Set.of(fact)));
            } else {
                read.add(fact);
            }
        });
        return read;
    }

    /** The value of a fact, when it is known. */
    Optional<Value> value(String name) {
        return fact(name) instanceof Known known ? Optional.of(FactValues.model(known.value())) : Optional.empty();
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

package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Dates;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Nearest;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WallType;

/** Makes changes in a job. */
final class Changes {
    private static final String WALL = "wall";

    private final Pack pack;
    private final Job job;
    private final Change change;
    private final Place at;

    private Changes(Pack pack, Job job, Change change) {
        this.pack = pack;
        this.job = job;
        this.change = change;
        this.at = Place.of(change.set());
    }

    /**
     * The job after a change.
     *
     * @throws UnusableInput when there is nothing at the address, or it can't be what the change says; with the nearest right word
     */
    static Job apply(Pack pack, Job job, Change change) throws UnusableInput {
        return new Changes(pack, job, change).applied();
    }

    static Job apply(Pack pack, Job job, List<Change> changes) throws UnusableInput {
        Job changed = job;
        for (Change change : changes) {
            changed = apply(pack, changed, change);
        }
        return changed;
    }

    /** The value at the address of a fact or of a component's property: stated, of the first accepted option, or the usual one. */
    static Optional<Value> at(Inquiry inquiry, String address) {
        String[] parts = address.split("\\.", 3);
        if (parts.length == 2) {
            return inquiry.setting().value(address);
        }
        return inquiry.job.wall(parts[0]).flatMap(wall -> {
            Optional<Meeting> meeting = wall.meetings().stream().filter(found -> found.id().equals(parts[1])).findFirst();
            return meeting.isPresent() ? inquiry.setting(wall, meeting.get(), Map.of()).value(meeting.get().subject() + "." + parts[2])
                : inquiry.setting(wall, Map.of()).value(parts[1] + "." + parts[2]);
        });
    }

    private Job applied() throws UnusableInput {
        String[] parts = change.set().split("\\.", 3);
        Optional<WallType> wall = job.wall(parts[0]);
        if (wall.isPresent() && parts.length > 1) {
            return job.with(wall(wall.get(), parts));
        }
        Optional<Subject> subject = pack.subject(parts[0]).filter(found -> found.scope() == Scope.JOB);
        if (subject.isPresent() && parts.length == 2) {
            Map<String, Map<String, Stated>> facts = new LinkedHashMap<>(job.facts());
            facts.put(parts[0], stating(facts.getOrDefault(parts[0], Map.of()), subject.get().properties(), parts[1]));
            return job.with(facts);
        }
        List<String> known = new ArrayList<>(job.walls().stream().map(WallType::id).toList());
        pack.subjects().stream().filter(found -> found.scope() == Scope.JOB).forEach(found -> known.add(found.id()));
        throw wrong("there is no wall type or fact \"" + parts[0] + "\"", parts[0], known);
    }

    private WallType wall(WallType wall, String[] parts) throws UnusableInput {
        if (parts.length == 3 && parts[1].equals(WALL)) {
            return new WallType(wall.id(), wall.title(), stating(wall.facts(), pack.subject(WALL).orElseThrow().properties(), parts[2]),
                wall.meetings(), wall.choices(), wall.at());
        }
        Optional<Meeting> meeting = wall.meetings().stream().filter(found -> found.id().equals(parts[1])).findFirst();
        if (meeting.isPresent() && parts.length == 3) {
            Meeting changed = new Meeting(parts[1], meeting.get().subject(),
                stating(meeting.get().facts(), pack.subject(meeting.get().subject()).orElseThrow().properties(), parts[2]),
                meeting.get().at());
            return new WallType(wall.id(), wall.title(), wall.facts(),
                wall.meetings().stream().map(found -> found.id().equals(parts[1]) ? changed : found).toList(), wall.choices(), wall.at());
        }
        Optional<Component> component = pack.component(parts[1]);
        if (component.isPresent()) {
            if (parts.length == 3 && parts[2].startsWith(Choice.VERSIONS + ".")) {
                return version(wall, component.get(), parts[2].split("\\.", 3));
            }
            return parts.length == 2 ? choosing(wall, component.get()) : setting(wall, component.get(), parts[2]);
        }
        List<String> known = new ArrayList<>(pack.components().stream().map(Component::id).toList());
        wall.meetings().forEach(found -> known.add(found.id()));
        known.add(WALL);
        throw wrong("wall type " + wall.id() + " has no \"" + parts[1] + "\"", parts[1], known);
    }

    private WallType choosing(WallType wall, Component component) throws UnusableInput {
        if (change.to().isEmpty()) {
            Map<String, Choice> choices = new LinkedHashMap<>(wall.choices());
            choices.remove(component.id());
            return new WallType(wall.id(), wall.title(), wall.facts(), wall.meetings(), choices, wall.at());
        }
        List<String> accept = options(component);
        return wall.with(wall.choice(component.id()).map(before -> before.accepting(accept))
            .orElseGet(() -> new Choice(component.id(), accept, Map.of(), "", "", wall.at())));
    }

    private List<String> options(Component component) throws UnusableInput {
        List<String> accept = List.of(change.to().split("\\s*,\\s*"));
        for (String option : accept) {
            if (component.option(option).isEmpty()) {
                throw wrong("there is no option \"" + option + "\"", option, component.options().stream().map(Option::id).toList());
            }
        }
        return accept;
    }

    /** Another choice or value in what an alternate has for a component: {@code [alternates, 1]} or {@code [alternates, 1, weight]}. */
    private WallType version(WallType wall, Component component, String[] parts) throws UnusableInput {
        Map<Integer, Choice> versions = wall.choice(component.id()).map(Choice::alternates).orElse(Map.of());
        List<String> numbers = versions.keySet().stream().map(String::valueOf).toList();
        if (!numbers.contains(parts[1])) {
            throw wrong("no alternate \"" + parts[1] + "\" has a choice of its own here", parts[1], numbers);
        }
        int number = Integer.parseInt(parts[1]);
        Choice before = versions.get(number);
        if (parts.length == 2 && change.to().isEmpty()) {
            throw new UnusableInput(new Problem(at, "an alternate can't do without what the base has", "name an option"));
        }
        Choice after = parts.length == 2 ? before.accepting(options(component))
            : before.setting(stating(before.values(), component.properties(), parts[2]));
        return wall.with(wall.choice(component.id()).orElseThrow().with(number, after));
    }

    private WallType setting(WallType wall, Component component, String property) throws UnusableInput {
        Choice before = wall.choice(component.id()).orElseThrow(() -> new UnusableInput(new Problem(at, component.title()
            + " is not decided", "choose an option before setting a value")));
        return wall.with(before.setting(stating(before.values(), component.properties(), property)));
    }

    private Map<String, Stated> stating(Map<String, Stated> before, List<Property> properties, String name) throws UnusableInput {
        Property property = properties.stream().filter(found -> found.name().equals(name)).findFirst().orElse(null);
        if (property == null) {
            throw wrong("there is no \"" + name + "\" here", name, properties.stream().map(Property::name).toList());
        }
        Map<String, Stated> stated = new LinkedHashMap<>(before);
        if (change.to().isEmpty()) {
            stated.remove(name);
            return stated;
        }
        Value value = property.type().read(property.type().written(change.to())).orElse(null);
        if (value == null && property.type().kind() == PropertyType.Kind.DATE) {
            throw new UnusableInput(new Problem(at, "can't be \"" + change.to() + "\"", Dates.expected(change.to())));
        }
        if (value == null) {
            throw property.type().words().isEmpty() ? new UnusableInput(new Problem(at, "can't be \"" + change.to() + "\"",
                property.type().unit().map(unit -> "expected a value such as 1 " + unit.symbol()).orElse("expected yes or no")))
                : wrong("can't be \"" + change.to() + "\"", change.to(), property.type().words());
        }
        stated.put(name, new Stated(value, Optional.ofNullable(before.get(name)).map(Stated::at).orElse(at)));
        return stated;
    }

    private UnusableInput wrong(String what, String word, List<String> known) {
        String near = Nearest.hint(word, known);
        return new UnusableInput(new Problem(at, what, near.isEmpty() ? "expected one of: " + String.join(", ", known) : near));
    }
}

package reglet.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Day;
import reglet.model.Grade;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Numbers;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.WordSet;

/**
 * One thing changed in a job.
 *
 * @param where what it is changed in: the sample, the wall type, the meeting
 * @param what  the kind of change: "lath = rib-3.4", "lath.weight down", "site.climate marine", "sealant.use without M", "opening dropped"
 * @param name  the change for {@link SampleJob#with}
 * @param value the new value; null takes away
 */
record Mutation(String where, String what, String name, JsonNode value) {
    /** Up and down lead past what is plausible for any quantity of the trade. */
    private static final double FACTOR = 3;
    /** Temperatures have no factor; this leads from work on a fine day to work on an impossible one. */
    private static final double KELVIN = 55;
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** Every one of a job: other options, other values, things taken away. In a fixed order. */
    static List<Mutation> all(String sample, Job job, Engine engine) {
        List<Mutation> all = new ArrayList<>();
        for (Subject subject : engine.pack().subjects()) {
            if (subject.scope() == Scope.JOB) {
                facts(all, sample, subject.id(), subject, job.facts().getOrDefault(subject.id(), Map.of()));
            }
        }
        List<Requirement> requirements = engine.resolve(job).requirements();
        for (WallType wall : job.walls()) {
            String where = sample + " " + wall.id();
            for (Subject subject : engine.pack().subjects()) {
                if (subject.scope() == Scope.WALL) {
                    facts(all, where, wall.id() + ".wall", subject, wall.facts());
                }
            }
            for (Meeting meeting : wall.meetings()) {
                Subject subject = engine.pack().subjects().stream().filter(met -> met.id().equals(meeting.subject())).findFirst()
                    .orElseThrow();
                String name = wall.id() + ".meets." + meeting.id();
                facts(all, where + " " + meeting.id(), name, subject, meeting.facts());
                all.add(new Mutation(where + " " + meeting.id(), subject.id() + " dropped", name, JSON.nullNode()));
            }
            for (Component component : engine.pack().components()) {
                choices(all, where, wall, component);
                Set<String> done = new TreeSet<>();
                requirements.stream().filter(asked -> asked.wall().equals(wall.id()) && asked.component().equals(component.id()))
                    .filter(asked -> done.add(asked.property().name())).forEach(asked ->
                        values(all, where, wall.id() + "." + asked.path(), asked.path(), asked.property(), asked.value()));
            }
        }
        return all;
    }

    private static void choices(List<Mutation> all, String where, WallType wall, Component component) {
        Optional<Choice> choice = wall.choice(component.id());
        String name = wall.id() + "." + component.id();
        for (Option option : component.options()) {
            if (choice.isEmpty() || !choice.get().accept().contains(option.id())) {
                all.add(new Mutation(where, component.id() + " = " + option.id(), name, JSON.textNode(option.id())));
            }
        }
        if (choice.isPresent()) {
            all.add(new Mutation(where, component.id() + " dropped", name, JSON.nullNode()));
        }
    }

    private static void facts(List<Mutation> all, String where, String place, Subject subject, Map<String, Stated> facts) {
        for (Property property : subject.properties()) {
            String name = place + "." + property.name();
            String what = subject.id() + "." + property.name();
            Optional<Value> now = Optional.ofNullable(facts.get(property.name())).map(Stated::value)
                .or(() -> property.only().isEmpty() ? property.usual() : Optional.empty());
            now.ifPresent(value -> values(all, where, name, what, property, value));
            if (facts.containsKey(property.name())) {
                all.add(new Mutation(where, what + " dropped", name, JSON.nullNode()));
            }
        }
    }

    private static void values(List<Mutation> all, String where, String name, String what, Property property, Value now) {
        if (now instanceof Quantity quantity) {
            both(all, where, name, what, moved(quantity, false), moved(quantity, true), quantity.text());
        } else if (now instanceof Range range) {
            both(all, where, name, what, moved(range, false), moved(range, true), range.text());
        } else if (now instanceof Day day) {
            both(all, where, name, what, Day.of(day.date().minusYears(1)).text(), Day.of(day.date().plusYears(1)).text(), day.text());
        } else if (now instanceof WordSet set) {
            set.words().forEach(word -> all.add(new Mutation(where, what + " without " + word, name,
                JSON.arrayNode().addAll(set.words().stream().filter(kept -> !kept.equals(word)).map(kept -> (JsonNode) JSON.textNode(kept))
                    .toList()))));
        } else {
            List<String> words = now instanceof Grade grade ? grade.scale() : property.type().words();
            List<String> others = now instanceof Word word && words.isEmpty() ? List.of(word.text().equals("yes") ? "no" : "yes") : words;
            others.stream().filter(word -> !word.equals(now.text()))
                .forEach(word -> all.add(new Mutation(where, what + " " + word, name, JSON.textNode(word))));
        }
    }

    private static void both(List<Mutation> all, String where, String name, String what, String down, String up, String now) {
        // nothing has no third, and a share ends at the whole
        if (!down.equals(now)) {
            all.add(new Mutation(where, what + " down", name, JSON.textNode(down)));
        }
        if (!up.equals(now)) {
            all.add(new Mutation(where, what + " up", name, JSON.textNode(up)));
        }
    }

    private static String moved(Range range, boolean up) {
        return Numbers.plain(number(range.low(), up)) + " to " + moved(range.high(), up);
    }

    private static String moved(Quantity quantity, boolean up) {
        return Quantity.of(number(quantity, up), quantity.unit()).text();
    }

    private static double number(Quantity quantity, boolean up) {
        Unit unit = quantity.unit();
        double now = unit.fromSi(quantity.si());
        if (unit == Unit.DEG_F) {
            return unit.fromSi(quantity.si() + (up ? KELVIN : -KELVIN));
        }
        double moved = up ? now * FACTOR : now / FACTOR;
        return Double.parseDouble(Numbers.significant(unit == Unit.PERCENT ? Math.min(100, moved) : moved, 3, Numbers.Side.NEAREST));
    }
}

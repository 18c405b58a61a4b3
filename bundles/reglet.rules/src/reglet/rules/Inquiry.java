package reglet.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import reglet.model.Calculation;
import reglet.model.Calculation.How;
import reglet.model.Calculation.Source;
import reglet.model.Calculator;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.Worksheet;
import reglet.model.Worksheet.Supplied;
import reglet.rules.Outcome.Failed;
import reglet.rules.Outcome.Inapplicable;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/** A job that is looked at with a pack. Works out each worksheet once, when something first reads it. */
final class Inquiry {
    /** Kept at most: a person who tries options all day must not fill the memory. */
    private static final int MOST_RUNS = 1_000;

    final Rulebook book;
    /** The job as its files have it. */
    final Job written;
    /** The job as it will be built, which is what is looked at. */
    final Job job;
    private final Calculator calculator;
    private final UnitSystem system;
    private final Map<Seen, Setting> settings = new HashMap<>();
    private final Map<String, Outcome> worksheets = new HashMap<>();
    /** What the same worksheet came to on the same inputs: alternatives often don't change them, and neither do most changes of a job. */
    private final Map<Run, Outcome> runs;

    /** What facts are read for. */
    private record Seen(String wall, String meeting, Map<String, String> picks) {
    }

    private record Run(String worksheet, Map<String, Supplied> given) {
    }

    Inquiry(Rulebook book, Job job, Calculator calculator) {
        this(book, job, calculator, new ConcurrentHashMap<>());
    }

    private Inquiry(Rulebook book, Job job, Calculator calculator, Map<Run, Outcome> runs) {
        this.runs = runs;
        this.book = book;
        this.written = job;
        this.job = job.built();
        this.calculator = calculator;
        this.system = system(job);
    }

    /** Another job with the same pack. */
    Inquiry of(Job other) {
        return new Inquiry(book, other, calculator, system(other) == system ? runs : new ConcurrentHashMap<>());
    }

    /** The system that worksheets are worked out in. */
    UnitSystem system() {
        return system;
    }

    /** The job as a whole. */
    Setting setting() {
        return setting(Optional.empty(), Optional.empty(), Map.of());
    }

    Setting setting(WallType wall, Map<String, String> picks) {
        return setting(Optional.of(wall), Optional.empty(), picks);
    }

    Setting setting(WallType wall, Meeting meeting, Map<String, String> picks) {
        return setting(Optional.of(wall), Optional.of(meeting), picks);
    }

    /** Rules that are looked at for the same thing read the same facts, each worked out once. */
    private Setting setting(Optional<WallType> wall, Optional<Meeting> meeting, Map<String, String> picks) {
        return settings.computeIfAbsent(new Seen(wall.map(WallType::id).orElse(""), meeting.map(Meeting::id).orElse(""), picks),
            seen -> new Setting(this, wall, meeting, picks));
    }

    /** The system that the job's own facts are written in; inch-pound when both are mixed. */
    private static UnitSystem system(Job job) {
        Stream<Map<String, Stated>> facts = Stream.concat(job.facts().values().stream(), job.walls().stream().flatMap(wall ->
            Stream.concat(Stream.of(wall.facts()), wall.meetings().stream().map(Meeting::facts))));
        List<UnitSystem> written = facts.flatMap(stated -> stated.values().stream()).map(Stated::value).filter(Quantity.class::isInstance)
            .flatMap(value -> ((Quantity) value).unit().system().stream()).distinct().toList();
        return written.equals(List.of(UnitSystem.SI)) ? UnitSystem.SI : UnitSystem.INCH_POUND;
    }

    /** A worksheet as a known value; or why there is none. */
    Outcome worksheet(Calculation calculation, Setting setting) {
        Map<String, String> picks = new TreeMap<>(setting.picks());
        picks.keySet().retainAll(book.components(calculation));
        String key = calculation.id() + " " + setting.wallId() + " "
            + (calculation.each() == Scope.MEETING ? setting.meetingId() : "") + " " + picks;
        Outcome found = worksheets.get(key);
        if (found == null) {
            worksheets.put(key, new Failed("the worksheet " + calculation.id() + " depends on itself"));
            found = run(calculation, setting);
            worksheets.put(key, found);
        }
        return found;
    }

    private Outcome run(Calculation calculation, Setting setting) {
        Outcome when = setting.of(Expression.worksheet(calculation.id()));
        if (when.is(false)) {
            return new Inapplicable(Calculation.OWNER + "." + calculation.id());
        }
        if (!(when instanceof Known)) {
            return when;
        }
        Map<String, Supplied> given = new LinkedHashMap<>();
        Outcome wrong = when;
        for (Map.Entry<String, Source> input : calculation.inputs().entrySet()) {
            Outcome value = value(calculation, input.getKey(), input.getValue(), setting);
            if (value instanceof Known known) {
                given.put(input.getKey(), (Supplied) known.value());
            } else if (!(value instanceof Inapplicable) && !(value instanceof Missing && input.getValue().maybe())) {
                wrong = Outcome.worse(wrong, value);
            }
        }
        if (!(wrong instanceof Known)) {
            return wrong;
        }
        if (runs.size() > MOST_RUNS) {
            runs.clear();
        }
        Outcome run = runs.computeIfAbsent(new Run(calculation.worksheet(), given), this::run);
        return run instanceof Known known ? new Known(((Worksheet) known.value()).at(calculation, setting.wallId(),
            calculation.each() == Scope.MEETING ? setting.meetingId() : "")) : run;
    }

    private Outcome run(Run run) {
        try {
            return new Known(calculator.run(run.worksheet(), run.given(), system));
        } catch (UnusableInput refused) {
            return new Failed(String.join("; ", refused.problems().stream().map(Problem::what).toList()));
        }
    }

    private Outcome value(Calculation calculation, String input, Source source, Setting setting) {
        if (source.how() == How.VALUE) {
            String key = Expression.input(calculation.id(), input, 0);
            return supplied(setting.of(key), origins(key, setting));
        }
        List<Value> values = new ArrayList<>();
        Set<String> origins = new LinkedHashSet<>();
        Outcome wrong = Outcome.TRUE;
        for (Meeting meeting : setting.wall().orElseThrow().meetings()) {
            if (!meeting.subject().equals(source.subject())) {
                continue;
            }
            Setting there = setting(setting.wall().orElseThrow(), meeting, setting.picks());
            Outcome counts = there.of(Expression.counts(calculation.id(), input));
            if (counts.is(false) || counts instanceof Inapplicable) {
                continue;
            }
            List<String> item = new ArrayList<>();
            wrong = Outcome.worse(wrong, counts);
            for (int part = 0; part < source.parts().size(); part++) {
                String key = Expression.input(calculation.id(), input, part);
                Outcome value = there.of(key);
                wrong = Outcome.worse(wrong, value);
                if (value instanceof Known known) {
                    Value read = FactValues.model(known.value());
                    // "48 in x 60 in x 8", but "12 ft floor line"
                    item.add((item.isEmpty() ? "" : read instanceof Quantity ? " x " : " ") + read.text());
                    values.add(read);
                    origins.addAll(origins(key, there));
                }
            }
            if (source.how() == How.LIST) {
                values.subList(values.size() - item.size(), values.size()).clear();
                values.add(new Word(String.join("", item)));
            }
        }
        if (!(wrong instanceof Known)) {
            return wrong;
        }
        if (values.isEmpty()) {
            return new Inapplicable(input);
        }
        return supplied(new Known(source.how() == How.SUM ? sum(values)
            : values.stream().map(Value::text).toList()), origins);
    }

    private static Outcome supplied(Outcome value, Set<String> origins) {
        return value instanceof Known known
            ? new Known(new Supplied(FactValues.model(known.value()), origins.isEmpty() ? "the pack" : String.join(", ", origins))) : value;
    }

    private static Quantity sum(List<Value> values) {
        Unit unit = ((Quantity) values.get(0)).unit();
        return Quantity.of(unit.fromSi(values.stream().mapToDouble(value -> ((Quantity) value).si()).sum()), unit);
    }

    /** Where the facts that an expression reads come from. */
    private Set<String> origins(String expression, Setting setting) {
        Set<String> origins = new LinkedHashSet<>();
        book.tree(expression).ifPresent(tree -> tree.facts(fact -> setting.origin(fact).ifPresent(origins::add)));
        return origins;
    }
}

package reglet.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Alternate;
import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Choice;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.OnWall;
import reglet.model.Pack.Caution;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.RegisterEntry;
import reglet.model.Requirement;
import reglet.model.Scope;
import reglet.model.Specifying;
import reglet.model.Stated;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.WordSet;
import reglet.rules.Outcome.Inapplicable;

/** Works out which clauses, requirements, register entries and cautions apply to a job. */
final class Resolver {
    private final Inquiry inquiry;
    private final Rulebook book;
    private final Job job;

    private Resolver(Inquiry inquiry) {
        this.inquiry = inquiry;
        this.book = inquiry.book;
        this.job = inquiry.job;
    }

    static Assembly resolve(Inquiry inquiry) {
        Resolver resolver = new Resolver(inquiry);
        Map<Integer, Assembly> alternates = new LinkedHashMap<>();
        Stream.of(Alternate.State.OFFERED, Alternate.State.DECLINED).flatMap(state -> inquiry.job.versions(state).stream())
            .forEach(number -> alternates.put(number, resolve(inquiry.of(inquiry.job.taking(List.of(number))))));
        List<Integer> accepted = inquiry.written.versions(Alternate.State.ACCEPTED);
        Map<List<Integer>, Assembly> without = new LinkedHashMap<>();
        accepted.forEach(number -> without.put(List.of(number), resolve(inquiry.of(inquiry.written.taking(accepted.stream()
            .filter(other -> !other.equals(number)).toList())))));
        if (accepted.size() > 1) {
            without.put(accepted, resolve(inquiry.of(inquiry.written.taking(List.of()))));
        }
        Map<String, OnWall> walls = new LinkedHashMap<>();
        inquiry.job.walls().forEach(wall -> walls.put(wall.id(), resolver.on(wall)));
        return new Assembly(inquiry.book.pack, inquiry.job, resolver.clauses(walls.values()),
            walls.values().stream().flatMap(wall -> wall.requirements().stream()).toList(),
            inquiry.book.pack.entries().stream().filter(entry -> walls.values().stream().anyMatch(wall ->
                wall.hasEntry(entry.id()))).toList(),
            inquiry.book.pack.cautions().stream().filter(caution -> walls.values().stream().anyMatch(wall -> wall.hasCaution(caution.id())))
                .toList(), alternates, without, walls);
    }

    private OnWall on(WallType wall) {
        return book.walls.get(new Rulebook.From(job.facts(), inquiry.system(), wall), from -> {
            List<Requirement> requirements = new ArrayList<>();
            for (Component component : book.pack.components()) {
                wall.choice(component.id()).ifPresent(choice -> choice.accept().forEach(option -> requirements(requirements, wall,
                    component,
                    choice, option)));
            }
            Map<String, List<ClauseUse>> uses = new LinkedHashMap<>();
            book.clauses().stream().filter(clause -> clause.each() != Scope.JOB).forEach(clause -> uses.put(clause.id(), uses(clause,
                wall)));
            return new OnWall(uses, List.copyOf(requirements), entries(wall), cautions(wall));
        });
    }

    private void requirements(List<Requirement> all, WallType wall, Component component, Choice choice, String option) {
        Setting setting = inquiry.setting(wall, Map.of(component.id(), option));
        for (Property property : component.properties()) {
            setting.required(component, property).ifPresent(value -> {
                Place at = Optional.ofNullable(choice.values().get(property.name())).map(Stated::at).orElse(choice.at());
                all.add(new Requirement(wall.id(), component.id(), option, property, value, at));
            });
        }
        named(wall, choice, option, all);
    }

    /** What the way of specifying asks besides the values. */
    private static void named(WallType wall, Choice choice, String option, List<Requirement> all) {
        Specifying specified = choice.specified();
        if (specified.how() == Specifying.How.REFERENCE_STANDARD) {
            List<String> standards = all.stream().filter(other -> other.wall().equals(wall.id())
                && other.component().equals(choice.component()) && other.option().equals(option) && !other.property().method().isNone())
                .map(other -> other.property().method().standard()).distinct().toList();
            if (!standards.isEmpty()) {
                all.add(new Requirement(wall.id(), choice.component(), option, Specifying.STANDARDS, new WordSet(standards), choice.at()));
            }
        }
        if (specified.namesProduct() && !specified.product().isEmpty()) {
            all.add(new Requirement(wall.id(), choice.component(), option, Specifying.PRODUCT, new Word(specified.product()), choice.at()));
        }
        if (specified.namesProduct() && !specified.maker().isEmpty()) {
            all.add(new Requirement(wall.id(), choice.component(), option, Specifying.MAKER, new Word(specified.maker()), choice.at()));
        }
    }

    private List<ClauseUse> clauses(Collection<OnWall> walls) {
        List<ClauseUse> uses = new ArrayList<>();
        for (Clause clause : book.clauses()) {
            if (clause.each() != Scope.JOB) {
                walls.forEach(wall -> uses.addAll(wall.uses(clause.id())));
            } else if (inquiry.setting().of(Expression.clause(clause.id())).is(true)) {
                uses.add(new ClauseUse(clause, "", "", Map.of()));
            }
        }
        return uses;
    }

    private List<ClauseUse> uses(Clause clause, WallType wall) {
        List<ClauseUse> uses = new ArrayList<>();
        Set<String> slots = book.slots(clause);
        Set<String> components = book.components(clause);
        for (Map<String, String> picks : Setting.picks(wall, components)) {
            if (clause.each() == Scope.WALL) {
                use(uses, clause, inquiry.setting(wall, picks), components, slots);
            } else {
                wall.meetings().stream().filter(meeting -> meeting.subject().equals(clause.subject()))
                    .forEach(meeting -> use(uses, clause, inquiry.setting(wall, meeting, picks), components, slots));
            }
        }
        return List.copyOf(uses);
    }

    private void use(List<ClauseUse> uses, Clause clause, Setting setting, Set<String> components, Set<String> slots) {
        // a clause that prints something without meaning here, such as a component that isn't there, doesn't apply
        if (!setting.of(Expression.clause(clause.id())).is(true)
            || slots.stream().anyMatch(slot -> setting.fact(slot) instanceof Inapplicable)) {
            return;
        }
        WallType wall = setting.wall().orElseThrow();
        Map<String, String> options = new LinkedHashMap<>();
        components.forEach(component -> wall.choice(component)
            .ifPresent(choice -> options.put(component, setting.picks().getOrDefault(component, choice.accept().get(0)))));
        uses.add(new ClauseUse(clause, wall.id(), setting.meetingId(), options));
    }

    private Set<String> entries(WallType wall) {
        return book.pack.entries().stream()
            .filter(entry -> (entry.component().isEmpty() || wall.choice(entry.component()).isPresent())
                && anyPick(wall, Expression.entry(entry.id()), outcome -> outcome.is(true)))
            .map(RegisterEntry::id).collect(Collectors.toUnmodifiableSet());
    }

    /** Cautions in force; one whose condition can't be told yet is said, for silence would be the worse mistake. */
    private Set<String> cautions(WallType wall) {
        return book.pack.cautions().stream().filter(caution -> anyPick(wall, Expression.caution(caution.id()),
            outcome -> !outcome.is(false) && !(outcome instanceof Inapplicable))).map(Caution::id).collect(Collectors.toUnmodifiableSet());
    }

    private boolean anyPick(WallType wall, String key, java.util.function.Predicate<Outcome> wanted) {
        Set<String> facts = new LinkedHashSet<>();
        book.tree(key).ifPresent(tree -> tree.facts(facts::add));
        return Setting.picks(wall, book.components(facts)).stream()
            .anyMatch(picks -> wanted.test(inquiry.setting(wall, picks).of(key)));
    }
}

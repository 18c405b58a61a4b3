package reglet.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Choice;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Pack.Caution;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.RegisterEntry;
import reglet.model.Requirement;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.Specifying;
import reglet.model.Stated;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.WordSet;
import reglet.rules.Outcome.Inapplicable;

/** Works out which clauses, requirements, register entries and cautions apply to a job. */
final class Resolver {
    private static final Pattern SLOT = Pattern.compile("\\$\\{([a-z_]+)(?:\\.([a-z_0-9]+))?[^}]*}");

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
        inquiry.job.versions().forEach(number -> alternates.put(number, resolve(inquiry.of(inquiry.job.taking(List.of(number))))));
        return new Assembly(inquiry.book.pack, inquiry.job, resolver.clauses(), resolver.requirements(), resolver.entries(),
            resolver.cautions(), alternates);
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>();
        for (WallType wall : job.walls()) {
            for (Component component : book.pack.components()) {
                wall.choice(component.id()).ifPresent(choice -> choice.accept().forEach(option -> requirements(all, wall, component, choice,
                    option)));
            }
        }
        return all;
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

    private List<ClauseUse> clauses() {
        List<ClauseUse> uses = new ArrayList<>();
        for (Clause clause : book.pack.clauses()) {
            if (clause.each() == Scope.JOB) {
                if (inquiry.setting().of(Expression.clause(clause.id())).is(true)) {
                    uses.add(new ClauseUse(clause, "", "", Map.of()));
                }
            } else {
                job.walls().forEach(wall -> uses(uses, clause, wall));
            }
        }
        Map<String, Integer> walls = new LinkedHashMap<>();
        job.walls().forEach(wall -> walls.put(wall.id(), walls.size()));
        uses.sort(Comparator.<ClauseUse>comparingInt(use -> plan(use.clause())).thenComparingInt(use -> article(use.clause()))
            .thenComparingInt(use -> use.clause().order()).thenComparing(use -> use.clause().id())
            .thenComparingInt(use -> walls.getOrDefault(use.wall(), -1)));
        return uses;
    }

    private int plan(Clause clause) {
        List<String> numbers = book.pack.plans().stream().map(SectionPlan::number).toList();
        return numbers.indexOf(clause.section());
    }

    private int article(Clause clause) {
        return book.pack.plan(clause.section()).orElseThrow().articles().stream().map(SectionPlan.Article::id).toList()
            .indexOf(clause.article());
    }

    private void uses(List<ClauseUse> uses, Clause clause, WallType wall) {
        Set<String> facts = new LinkedHashSet<>();
        Set<String> slots = new LinkedHashSet<>();
        Matcher slot = SLOT.matcher(clause.body());
        while (slot.find()) {
            if (book.component(slot.group(1)) != null) {
                String property = slot.group(2);
                boolean named = property != null && book.component(slot.group(1)).property(property).isPresent();
                slots.add(slot.group(1) + "." + (named ? property : "option"));
            }
        }
        facts.addAll(slots);
        book.tree(Expression.clause(clause.id())).ifPresent(tree -> tree.facts(facts::add));
        Set<String> components = book.components(facts);
        for (Map<String, String> picks : Setting.picks(wall, components)) {
            if (clause.each() == Scope.WALL) {
                use(uses, clause, inquiry.setting(wall, picks), components, slots);
            } else {
                wall.meetings().stream().filter(meeting -> meeting.subject().equals(clause.subject()))
                    .forEach(meeting -> use(uses, clause, inquiry.setting(wall, meeting, picks), components, slots));
            }
        }
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

    private List<RegisterEntry> entries() {
        return book.pack.entries().stream().filter(entry -> job.walls().stream().anyMatch(wall ->
            (entry.component().isEmpty() || wall.choice(entry.component()).isPresent())
            && anyPick(wall, Expression.entry(entry.id()), outcome -> outcome.is(true)))).toList();
    }

    /** Cautions in force; one whose condition can't be told yet is said, for silence would be the worse mistake. */
    private List<Caution> cautions() {
        return book.pack.cautions().stream().filter(caution -> job.walls().stream().anyMatch(wall ->
            anyPick(wall, Expression.caution(caution.id()), outcome -> !outcome.is(false) && !(outcome instanceof Inapplicable)))).toList();
    }

    private boolean anyPick(WallType wall, String key, java.util.function.Predicate<Outcome> wanted) {
        Set<String> facts = new LinkedHashSet<>();
        book.tree(key).ifPresent(tree -> tree.facts(facts::add));
        return Setting.picks(wall, book.components(facts)).stream()
            .anyMatch(picks -> wanted.test(inquiry.setting(wall, picks).of(key)));
    }
}

package reglet.rules;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Calculation;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Kept;
import reglet.model.OnWall;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Rule;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.UnitSystem;
import reglet.model.WallType;

/** A pack with its checked expressions, indexed for looking up. */
final class Rulebook {
    private static final Pattern IN_BRACES = Pattern.compile("\\{([^}]*)}");
    private static final Pattern SLOT = Pattern.compile("\\$\\{([a-z_]+)(?:\\.([a-z_0-9]+))?[^}]*}");
    private static final int MOST_WALLS = 500;

    final Pack pack;
    final Tables tables;
    private final Map<String, Node> trees;
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<String, Subject> subjects = new LinkedHashMap<>();
    private final Map<String, Calculation> calculations = new LinkedHashMap<>();
    private final Map<String, Set<String>> componentsOf = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> ownersOf = new ConcurrentHashMap<>();
    private final Map<String, RuleTrees> ruleTrees = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> slotsOf = new ConcurrentHashMap<>();
    private final List<Clause> clauses;
    /** What applies to wall types that were looked at lately: a change of one leaves the others as they are. */
    final Kept<From, OnWall> walls = new Kept<>(MOST_WALLS);

    /**
     * All that follows for a wall type follows from this and the pack.
     *
     * @param facts  of the job
     * @param system that worksheets are worked out in
     */
    record From(Map<String, Map<String, Stated>> facts, UnitSystem system, WallType wall) {
    }

    Rulebook(Pack pack, Map<String, Node> trees) {
        this.pack = pack;
        this.trees = trees;
        this.tables = new Tables(pack.tables());
        pack.components().forEach(component -> components.put(component.id(), component));
        pack.subjects().forEach(subject -> subjects.put(subject.id(), subject));
        pack.calculations().forEach(calculation -> calculations.put(calculation.id(), calculation));
        this.clauses = sorted(pack);
    }

    private static List<Clause> sorted(Pack pack) {
        Map<String, Integer> articles = new LinkedHashMap<>();
        pack.plans().forEach(plan -> plan.articles().forEach(article -> articles.put(plan.number() + " " + article.id(), articles.size())));
        return pack.clauses().stream().sorted(Comparator.<Clause>comparingInt(clause -> articles.getOrDefault(clause.section() + " "
            + clause.article(), -1)).thenComparingInt(Clause::order).thenComparing(Clause::id)).toList();
    }

    /** The clauses in the order of plan, article, order, id. */
    List<Clause> clauses() {
        return clauses;
    }

    /** What a clause prints of components: "lath.weight", and "lath.option" for the option itself. */
    Set<String> slots(Clause clause) {
        return slotsOf.computeIfAbsent(clause.id(), unknown -> {
            Set<String> slots = new LinkedHashSet<>();
            Matcher slot = SLOT.matcher(clause.body());
            while (slot.find()) {
                Component component = components.get(slot.group(1));
                if (component != null) {
                    String property = slot.group(2);
                    boolean named = property != null && component.property(property).isPresent();
                    slots.add(slot.group(1) + "." + (named ? property : "option"));
                }
            }
            return slots;
        });
    }

    /** Components whose choice can change whether a clause applies, or what it prints. */
    Set<String> components(Clause clause) {
        return componentsOf.computeIfAbsent("clause " + clause.id(), unknown -> {
            Set<String> facts = new LinkedHashSet<>(slots(clause));
            tree(Expression.clause(clause.id())).ifPresent(tree -> tree.facts(facts::add));
            return components(facts);
        });
    }

    Map<String, Node> trees() {
        return trees;
    }

    Optional<Node> tree(String key) {
        return Optional.ofNullable(trees.get(key));
    }

    Component component(String id) {
        return components.get(id);
    }

    Subject subject(String id) {
        return subjects.get(id);
    }

    /** The worksheet behind a fact such as "worksheets.wind_corner.pressure.out". */
    Optional<Calculation> calculation(String fact) {
        if (!fact.startsWith(Calculation.OWNER + ".")) {
            return Optional.empty();
        }
        int start = Calculation.OWNER.length() + 1;
        return Optional.ofNullable(calculations.get(fact.substring(start, fact.indexOf('.', start))));
    }

    private Set<String> facts(Calculation calculation) {
        Set<String> facts = new LinkedHashSet<>();
        Expression.of(calculation).forEach(expression -> tree(expression.key()).ifPresent(tree -> tree.facts(facts::add)));
        return facts;
    }

    /** The expressions of a rule: whether it applies, its intermediate values, what must hold. */
    RuleTrees trees(Rule rule) {
        return ruleTrees.computeIfAbsent(rule.id(), id -> {
            Map<String, Node> lets = new LinkedHashMap<>();
            rule.let().keySet().forEach(name -> lets.put(name, trees.get(Expression.let(id, name))));
            return new RuleTrees(tree(Expression.when(id)), lets, trees.get(Expression.holds(id)));
        });
    }

    record RuleTrees(Optional<Node> when, Map<String, Node> lets, Node holds) {
    }

    /** The condition on which a property has a meaning. */
    Optional<Node> only(String owner, Property property) {
        return property.only().isEmpty() ? Optional.empty() : tree(Expression.only(owner, property.name()));
    }

    /** Names of the facts that a rule's own expressions read, in the order in which they stand there. */
    Set<String> facts(Rule rule) {
        Set<String> names = new LinkedHashSet<>();
        Expression.of(rule).forEach(expression -> tree(expression.key()).ifPresent(tree -> tree.facts(names::add)));
        return names;
    }

    /** Components whose choice can change what a rule comes to. */
    Set<String> components(Rule rule) {
        return componentsOf.computeIfAbsent("rule " + rule.id(), unknown -> components(facts(rule)));
    }

    /** Components whose choice can change a worksheet. */
    Set<String> components(Calculation calculation) {
        return componentsOf.computeIfAbsent("worksheet " + calculation.id(), unknown -> components(facts(calculation)));
    }

    /** Components whose choice can change these facts. */
    Set<String> components(Set<String> facts) {
        Set<String> found = new LinkedHashSet<>();
        reads(facts).stream().map(Rulebook::owner).filter(components::containsKey).forEach(found::add);
        return found;
    }

    /** Components and subjects that can change what a rule comes to. */
    Set<String> owners(Rule rule) {
        return ownersOf.computeIfAbsent(rule.id(), unknown -> {
            Set<String> found = new LinkedHashSet<>();
            Set<String> facts = facts(rule);
            // the finding's words read facts too
            Matcher said = IN_BRACES.matcher(rule.says() + rule.fix());
            while (said.find()) {
                if (said.group(1).indexOf('.') > 0) {
                    facts.add(said.group(1));
                }
            }
            reads(facts).forEach(fact -> found.add(owner(fact)));
            if (!rule.subject().isEmpty()) {
                found.add(rule.subject());
            }
            if (!rule.component().isEmpty()) {
                // a finding stands at its component's place
                found.add(rule.component());
            }
            return found;
        });
    }

    /** The facts that say whether a component must be decided. */
    Set<String> needs(String component) {
        Set<String> facts = new LinkedHashSet<>();
        tree(Expression.needed(component)).ifPresent(tree -> tree.facts(facts::add));
        return reads(facts);
    }

    /** Every fact that a rule reads: in its own expressions, in what applies or is needed, and in the inputs of worksheets. */
    Set<String> reads(Rule rule) {
        return reads(facts(rule));
    }

    Set<String> reads(Set<String> facts) {
        Set<String> read = new LinkedHashSet<>();
        facts.forEach(fact -> follow(fact, read));
        return read;
    }

    private void follow(String fact, Set<String> read) {
        if (!read.add(fact)) {
            return;
        }
        Optional<Calculation> calculation = calculation(fact);
        if (calculation.isPresent()) {
            facts(calculation.get()).forEach(next -> follow(next, read));
            return;
        }
        String owner = owner(fact);
        tree(Expression.only(owner, fact.substring(owner.length() + 1))).ifPresent(tree -> tree.facts(next -> follow(next, read)));
        if (components.containsKey(owner)) {
            tree(Expression.needed(owner)).ifPresent(tree -> tree.facts(next -> follow(next, read)));
        }
    }

    private static String owner(String fact) {
        return fact.substring(0, fact.indexOf('.'));
    }

    List<Rule> rules() {
        return pack.rules();
    }
}

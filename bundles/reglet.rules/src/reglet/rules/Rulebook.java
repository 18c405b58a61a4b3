package reglet.rules;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import reglet.model.Calculation;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Rule;
import reglet.model.Subject;

/** A pack with its checked expressions, indexed for looking up. */
final class Rulebook {
    final Pack pack;
    final Tables tables;
    private final Map<String, Node> trees;
    private final Map<String, Component> components = new LinkedHashMap<>();
    private final Map<String, Subject> subjects = new LinkedHashMap<>();
    private final Map<String, Calculation> calculations = new LinkedHashMap<>();
    private final Map<String, Set<String>> componentsOf = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> ownersOf = new ConcurrentHashMap<>();

    Rulebook(Pack pack, Map<String, Node> trees) {
        this.pack = pack;
        this.trees = trees;
        this.tables = new Tables(pack.tables());
        pack.components().forEach(component -> components.put(component.id(), component));
        pack.subjects().forEach(subject -> subjects.put(subject.id(), subject));
        pack.calculations().forEach(calculation -> calculations.put(calculation.id(), calculation));
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

    /** The rule's intermediate values. */
    Map<String, Node> lets(Rule rule) {
        Map<String, Node> lets = new LinkedHashMap<>();
        rule.let().keySet().forEach(name -> lets.put(name, trees.get(Expression.let(rule.id(), name))));
        return lets;
    }

    /** Names of the facts that a rule's own expressions read, in the order in which they stand there. */
    Set<String> facts(Rule rule) {
        Set<String> names = new LinkedHashSet<>();
        Expression.of(rule).forEach(expression -> tree(expression.key()).ifPresent(tree -> tree.facts(names::add)));
        return names;
    }

    /** Components whose choice can change what a rule comes to. */
    Set<String> components(Rule rule) {
        return components("rule " + rule.id(), facts(rule));
    }

    /** Components whose choice can change a worksheet. */
    Set<String> components(Calculation calculation) {
        return components("worksheet " + calculation.id(), facts(calculation));
    }

    private Set<String> components(String key, Set<String> facts) {
        return componentsOf.computeIfAbsent(key, unknown -> components(facts));
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
            reads(rule).forEach(fact -> found.add(owner(fact)));
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

    /** Every fact that a rule reads: in its own expressions, in what applies or is needed, and in the inputs of worksheets. */
    Set<String> reads(Rule rule) {
        return reads(facts(rule));
    }

    private Set<String> reads(Set<String> facts) {
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

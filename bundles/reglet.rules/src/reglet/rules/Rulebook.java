package reglet.rules;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
    /** What an expression with this key reads of components, through what applies and what is needed too. */
    private final Map<String, Set<String>> reads = new LinkedHashMap<>();

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

    /** Components whose choice can change a worksheet. */
    Set<String> components(Calculation calculation) {
        return reads.computeIfAbsent("worksheet " + calculation.id(), key -> components(facts(calculation)));
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
        return reads.computeIfAbsent("rule " + rule.id(), key -> components(facts(rule)));
    }

    /** Components whose choice can change these facts. */
    Set<String> components(Set<String> facts) {
        Set<String> found = new LinkedHashSet<>();
        facts.forEach(fact -> follow(fact, found, new LinkedHashSet<>()));
        return found;
    }

    private void follow(String fact, Set<String> found, Set<String> followed) {
        if (!followed.add(fact)) {
            return;
        }
        Optional<Calculation> calculation = calculation(fact);
        if (calculation.isPresent()) {
            facts(calculation.get()).forEach(next -> follow(next, found, followed));
            return;
        }
        int dot = fact.indexOf('.');
        String owner = fact.substring(0, dot);
        tree(Expression.only(owner, fact.substring(dot + 1))).ifPresent(tree -> tree.facts(next -> follow(next, found, followed)));
        if (components.containsKey(owner)) {
            found.add(owner);
            tree(Expression.needed(owner)).ifPresent(tree -> tree.facts(next -> follow(next, found, followed)));
        }
    }

    List<Rule> rules() {
        return pack.rules();
    }
}

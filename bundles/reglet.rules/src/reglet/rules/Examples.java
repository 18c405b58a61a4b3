package reglet.rules;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Component;
import reglet.model.Problem;
import reglet.model.Property;
import reglet.model.Rule;
import reglet.model.Rule.Example;
import reglet.model.Rule.Result;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.rules.Outcome.Inapplicable;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/**
 * The examples that rules carry. In an example a component with any fact given counts as chosen, and one without as undecided;
 * usual values and conditions of properties count as in a job.
 */
public final class Examples {

    private Examples() {
    }

    /** Every example that does not come out as stated, and every rule that has too few. */
    public static List<Problem> failures(Engine engine) {
        return failures(engine, engine.pack().rules());
    }

    /** The same of some of the engine's rules. */
    public static List<Problem> failures(Engine engine, List<Rule> rules) {
        List<Problem> failures = new ArrayList<>();
        for (Rule rule : rules) {
            Set<Result> shown = EnumSet.noneOf(Result.class);
            for (Example example : rule.examples()) {
                shown.add(example.result());
                Look look = Look.at(rule, new Given(engine.book(), example.facts()), engine.book());
                if (look.result() != example.result()) {
                    String why = look.missing().isEmpty() ? look.error() : "missing " + String.join(", ", look.missing());
                    failures.add(new Problem(example.at(), "the example of " + rule.id() + " comes to \"" + look.result().text() + "\""
                        + (why.isEmpty() ? "" : " (" + why + ")"), "it is stated as \"" + example.result().text() + "\""));
                }
            }
            for (Result needed : List.of(Result.HOLDS, Result.BREAKS, Result.GAP)) {
                if (!shown.contains(needed)) {
                    failures.add(new Problem(rule.at(), "rule " + rule.id() + " has no example for \"" + needed.text() + "\"", "add one"));
                }
            }
        }
        return failures;
    }

    /** The facts of an example. */
    private static final class Given implements Facts {
        private final Rulebook book;
        private final Map<String, Stated> given;
        private final Set<String> chosen;

        Given(Rulebook book, Map<String, Stated> given) {
            this.book = book;
            this.given = given;
            this.chosen = given.keySet().stream().map(name -> name.substring(0, name.indexOf('.'))).collect(Collectors.toSet());
        }

        @Override
        public Outcome fact(String name) {
            if (book.calculation(name).isPresent()) {
                return result(name);
            }
            int dot = name.indexOf('.');
            String owner = name.substring(0, dot);
            String property = name.substring(dot + 1);
            Component component = book.component(owner);
            Stated stated = given.get(name);
            if (component != null && property.equals("chosen")) {
                return new Known(stated == null ? chosen.contains(owner) : stated.value().text().equals("yes"));
            }
            if (component != null && property.equals("option")) {
                return stated == null ? new Missing(Set.of(name)) : new Known(stated.value().text());
            }
            if (component != null && given.containsKey(owner + ".chosen") && given.get(owner + ".chosen").value().text().equals("no")) {
                return new Inapplicable(name);
            }
            Subject subject = book.subject(owner);
            Property declared = component != null ? component.property(property).orElseThrow() : subject.property(property).orElseThrow();
            Outcome applies = book.tree(Expression.only(owner, property))
                .map(tree -> new Evaluator(this, book.tables, Map.of()).of(tree)).orElse(Outcome.TRUE);
            if (stated == null && (applies.is(false) || applies instanceof Inapplicable)) {
                return new Inapplicable(name);
            }
            if (stated != null) {
                return new Known(FactValues.plain(declared.type(), stated.value()));
            }
            if (component != null && !chosen.contains(owner)) {
                return new Missing(Set.of(name));
            }
            return declared.usual().<Outcome>map(value -> new Known(FactValues.plain(declared.type(), value)))
                .orElse(new Missing(Set.of(name)));
        }

        /** Results of worksheets are given as they are: an example runs none. */
        private Outcome result(String name) {
            return Optional.ofNullable(given.get(name)).<Outcome>map(stated -> new Known(stated.value()))
                .orElse(new Missing(Set.of(name)));
        }
    }
}

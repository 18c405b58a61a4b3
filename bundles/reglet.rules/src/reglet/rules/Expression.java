package reglet.rules;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Calculation;
import reglet.model.Calculation.How;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.Subject;

/**
 * An expression of a pack.
 *
 * @param key   names it among all of the pack: "rule lath.weight holds"
 * @param text  as written
 * @param scope what it may read
 * @param truth whether it must be true or false; an intermediate value may be anything
 * @param at    the file that it stands in
 */
record Expression(String key, String text, Sight scope, boolean truth, Place at) {

    /**
     * What an expression sees: job-wide subjects; with a wall also the wall and its components; with a meeting also its subject.
     *
     * @param subject id of the meeting's subject; ""
     */
    record Sight(Scope each, String subject) {
        static final Sight JOB = new Sight(Scope.JOB, "");
        static final Sight WALL = new Sight(Scope.WALL, "");

        static Sight of(Scope each, String subject) {
            return each == Scope.MEETING ? new Sight(each, subject) : each == Scope.WALL ? WALL : JOB;
        }
    }

    static String only(String owner, String property) {
        return "property " + owner + "." + property + " only";
    }

    static String needed(String component) {
        return "component " + component + " needed";
    }

    static String clause(String id) {
        return "clause " + id + " when";
    }

    static String caution(String id) {
        return "caution " + id + " when";
    }

    static String entry(String id) {
        return "register entry " + id + " when";
    }

    static String worksheet(String calculation) {
        return "worksheet " + calculation + " when";
    }

    /** Whether a meeting counts for an input that goes through meetings. */
    static String counts(String calculation, String input) {
        return "worksheet " + calculation + " input " + input + " when";
    }

    static String input(String calculation, String input, int part) {
        return "worksheet " + calculation + " input " + input + " " + part;
    }

    static String when(String rule) {
        return "rule " + rule + " when";
    }

    static String let(String rule, String name) {
        return "rule " + rule + " let " + name;
    }

    static String holds(String rule) {
        return "rule " + rule + " holds";
    }

    /** Every expression of a pack but those of its rules, in a stable order. */
    static List<Expression> besidesRules(Pack pack) {
        List<Expression> all = new ArrayList<>();
        for (Subject subject : pack.subjects()) {
            properties(all, subject.id(), subject.properties(), Sight.of(subject.scope(), subject.id()));
        }
        for (Component component : pack.components()) {
            properties(all, component.id(), component.properties(), Sight.WALL);
            add(all, needed(component.id()), component.needed(), Sight.WALL, component.at());
        }
        pack.clauses().forEach(clause -> add(all, clause(clause.id()), clause.when(), Sight.of(clause.each(), clause.subject()),
            clause.at()));
        pack.cautions().forEach(caution -> add(all, caution(caution.id()), caution.when(), Sight.WALL, caution.at()));
        pack.entries().forEach(entry -> add(all, entry(entry.id()), entry.when(), Sight.WALL, entry.at()));
        pack.calculations().forEach(calculation -> all.addAll(of(calculation)));
        return all;
    }

    /** The expressions of a worksheet that the pack asks for. */
    static List<Expression> of(Calculation calculation) {
        List<Expression> all = new ArrayList<>();
        Sight sight = Sight.of(calculation.each(), calculation.subject());
        add(all, worksheet(calculation.id()), calculation.when(), sight, calculation.at());
        calculation.inputs().forEach((name, source) -> {
            Sight seen = source.how() == How.VALUE ? sight : Sight.of(Scope.MEETING, source.subject());
            add(all, counts(calculation.id(), name), source.when(), seen, calculation.at());
            for (int part = 0; part < source.parts().size(); part++) {
                all.add(new Expression(input(calculation.id(), name, part), source.parts().get(part), seen, false, calculation.at()));
            }
        });
        return all;
    }

    private static void properties(List<Expression> all, String owner, List<Property> properties, Sight sight) {
        properties.forEach(property -> add(all, only(owner, property.name()), property.only(), sight, property.at()));
    }

    private static void add(List<Expression> all, String key, String text, Sight sight, Place at) {
        if (!text.isEmpty()) {
            all.add(new Expression(key, text, sight, true, at));
        }
    }

    /** The expressions of a rule in the order in which they are worked out: when, lets, holds. */
    static List<Expression> of(Rule rule) {
        List<Expression> all = new ArrayList<>();
        Sight sight = Sight.of(rule.each(), rule.subject());
        add(all, when(rule.id()), rule.when(), sight, rule.at());
        rule.let().forEach((name, text) -> all.add(new Expression(let(rule.id(), name), text, sight, false, rule.at())));
        add(all, holds(rule.id()), rule.holds(), sight, rule.at());
        return all;
    }
}

package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.model.Day;
import reglet.model.Grade;
import reglet.model.Numbers;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Unit;
import reglet.rules.Node.Call;
import reglet.rules.Node.Constant;
import reglet.rules.Node.Fact;
import reglet.rules.Node.Let;
import reglet.rules.Node.ListOf;
import reglet.rules.Node.Lookup;
import reglet.rules.Outcome.Failed;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/**
 * Works out checked expressions. As in the expression language, "and" and "or" are decided by one side when it suffices, whatever
 * is missing on the other; everything else needs all its arguments.
 */
final class Evaluator {
    private static final int SHOWN_FIGURES = 3;

    private final Facts facts;
    private final Tables tables;
    private final Map<String, Node> lets;
    private final Map<String, Outcome> letsKnown = new LinkedHashMap<>();

    Evaluator(Facts facts, Tables tables, Map<String, Node> lets) {
        this.facts = facts;
        this.tables = tables;
        this.lets = lets;
    }

    Outcome of(Node node) {
        if (node instanceof Constant constant) {
            return new Known(constant.value());
        }
        if (node instanceof Fact fact) {
            return facts.fact(fact.name());
        }
        if (node instanceof Let let) {
            return let(let.name());
        }
        if (node instanceof ListOf list) {
            return all(list.items(), values -> new Known(List.copyOf(values)));
        }
        if (node instanceof Lookup lookup) {
            return all(lookup.arguments(), values -> tables.find(lookup.table(), values));
        }
        Call call = (Call) node;
        return switch (call.operation()) {
            case AND -> decided(call, false);
            case OR -> decided(call, true);
            case IF -> choice(call);
            default -> all(call.arguments(), values -> apply(call.operation(), values));
        };
    }

    /** An intermediate value, worked out once. */
    Outcome let(String name) {
        Outcome known = letsKnown.get(name);
        if (known == null) {
            known = of(lets.get(name));
            letsKnown.put(name, known);
        }
        return known;
    }

    private Outcome decided(Call call, boolean decides) {
        Outcome left = of(call.arguments().get(0));
        if (left.is(decides)) {
            return left;
        }
        Outcome right = of(call.arguments().get(1));
        if (right.is(decides)) {
            return right;
        }
        return Outcome.worse(left, right);
    }

    private Outcome choice(Call call) {
        Outcome which = of(call.arguments().get(0));
        if (which instanceof Known known) {
            return of(call.arguments().get((Boolean) known.value() ? 1 : 2));
        }
        return which;
    }

    private interface Use {
        Outcome of(List<Object> values);
    }

    private Outcome all(List<Node> arguments, Use use) {
        List<Object> values = new ArrayList<>(arguments.size());
        Outcome worst = Outcome.TRUE;
        for (Node argument : arguments) {
            Outcome outcome = of(argument);
            if (outcome instanceof Known known) {
                values.add(known.value());
            } else {
                worst = Outcome.worse(worst, outcome);
            }
        }
        if (!(worst instanceof Known)) {
            return worst;
        }
        try {
            return use.of(values);
        } catch (ArithmeticException | IllegalArgumentException impossible) {
            return new Failed(impossible.getMessage());
        }
    }

    private static Outcome apply(Operation operation, List<Object> values) {
        Object one = values.get(0);
        Object other = values.size() > 1 ? values.get(1) : null;
        return new Known(switch (operation) {
            case NOT -> !(Boolean) one;
            case EQUAL -> same(one, other);
            case UNEQUAL -> !same(one, other);
            case LESS -> compare(one, other) < 0;
            case LESS_OR_EQUAL -> compare(one, other) <= 0;
            case MORE -> compare(one, other) > 0;
            case MORE_OR_EQUAL -> compare(one, other) >= 0;
            case IN -> ((List<?>) other).stream().anyMatch(item -> same(one, item));
            case MIN -> compare(one, other) <= 0 ? one : other;
            case MAX -> compare(one, other) >= 0 ? one : other;
            case LOW -> ((Range) one).low();
            case HIGH -> ((Range) one).high();
            case SIZE -> (double) ((List<?>) one).size();
            case PLUS, MINUS, TIMES, OVER, NEGATE, ABS -> one instanceof Day || other instanceof Day ? dated(operation, one, other)
                : arithmetic(operation, one, other);
            case AND, OR, IF -> throw new IllegalStateException("decided elsewhere");
        });
    }

    /** The days between two dates, or a date some days away from another. */
    private static Object dated(Operation operation, Object one, Object other) {
        if (one instanceof Day to && other instanceof Day from) {
            return Quantity.of(to.since(from), Unit.DAY);
        }
        Day day = (Day) (one instanceof Day ? one : other);
        Quantity time = (Quantity) (one instanceof Day ? other : one);
        return day.plus(operation == Operation.MINUS ? shown(-time.si(), time.unit()) : time);
    }

    private static Object arithmetic(Operation operation, Object one, Object other) {
        double left = number(one);
        double right = other == null ? 0 : number(other);
        double result = switch (operation) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
            case NEGATE -> -left;
            default -> Math.abs(left);
        };
        if (!Double.isFinite(result)) {
            throw new ArithmeticException("a calculation in the rule has no finite result");
        }
        if (one instanceof Quantity && other instanceof Quantity && operation == Operation.OVER) {
            return result;
        }
        Unit unit = one instanceof Quantity quantity ? quantity.unit() : other instanceof Quantity quantity ? quantity.unit() : null;
        return unit == null ? result : shown(result, unit);
    }

    /** A calculated quantity, shown in the unit that the rule's facts came in. */
    private static Quantity shown(double si, Unit unit) {
        return new Quantity(si, unit, Numbers.significant(unit.fromSi(si), SHOWN_FIGURES, Numbers.Side.NEAREST));
    }

    private static double number(Object value) {
        return value instanceof Quantity quantity ? quantity.si() : (Double) value;
    }

    private static boolean same(Object one, Object other) {
        if (one instanceof Quantity || one instanceof Double) {
            return compare(one, other) == 0;
        }
        return word(one).equals(word(other));
    }

    private static Object word(Object value) {
        return value instanceof Grade grade ? grade.text() : value;
    }

    private static int compare(Object one, Object other) {
        if (one instanceof Quantity left && other instanceof Quantity right) {
            return left.compareWith(right);
        }
        if (one instanceof Day day) {
            return day.compareTo((Day) other);
        }
        if (one instanceof Grade grade) {
            return Integer.compare(grade.rank(), rank(other, grade.scale()));
        }
        if (other instanceof Grade grade) {
            return Integer.compare(rank(one, grade.scale()), grade.rank());
        }
        return Quantity.compareSi((Double) one, (Double) other);
    }

    private static int rank(Object step, List<String> scale) {
        return scale.indexOf(step instanceof Grade grade ? grade.text() : step);
    }

    /** A missing entry of a table, named with what was looked up. */
    static Missing miss(String what) {
        return new Missing(Set.of(what));
    }
}

package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelReference;

import reglet.model.Day;
import reglet.model.Nearest;
import reglet.model.Pack;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Table;
import reglet.rules.Node.Call;
import reglet.rules.Node.Constant;
import reglet.rules.Node.Fact;
import reglet.rules.Node.Let;
import reglet.rules.Node.ListOf;
import reglet.rules.Node.Lookup;

/**
 * Turns a checked tree of the expression language into ours. Looks over the words written in it on the way: a word that is none
 * of those a property can take would never be met.
 */
final class TreeBuilder {
    private final CelAbstractSyntaxTree tree;
    private final Names names;
    private final Set<String> lets;
    private final Map<String, Table> tables = new LinkedHashMap<>();
    private final List<Wrong> wrong = new ArrayList<>();

    /** A word that can't be met. */
    record Wrong(String what, String expected) {
    }

    TreeBuilder(CelAbstractSyntaxTree tree, Names names, Set<String> lets, Pack pack) {
        this.tree = tree;
        this.names = names;
        this.lets = lets;
        pack.tables().forEach(table -> tables.put(table.id(), table));
    }

    Node node() {
        return node(tree.getExpr());
    }

    List<Wrong> wrong() {
        return wrong;
    }

    private Node node(CelExpr expression) {
        return switch (expression.getKind()) {
            case CONSTANT -> constant(expression.constant());
            case IDENT, SELECT -> name(expression);
            case LIST -> new ListOf(expression.list().elements().stream().map(this::node).toList());
            case CALL -> call(expression.call());
            default -> unknown("this form of expression");
        };
    }

    private Node unknown(String what) {
        wrong.add(new Wrong(what + " has no use in rules", ""));
        return new Constant(false);
    }

    private static Node constant(CelConstant constant) {
        return new Constant(switch (constant.getKind()) {
            case BOOLEAN_VALUE -> constant.booleanValue();
            case INT64_VALUE -> (double) constant.int64Value();
            case DOUBLE_VALUE -> constant.doubleValue();
            default -> constant.stringValue();
        });
    }

    private Node name(CelExpr expression) {
        String name = tree.getReference(expression.id()).map(CelReference::name).orElseGet(() ->
            expression.getKind() == CelExpr.ExprKind.Kind.IDENT ? expression.ident().name() : "");
        if (lets.contains(name)) {
            return new Let(name);
        }
        return names.type(name).isPresent() ? new Fact(name) : unknown("\"" + name + "\"");
    }

    private Node call(CelExpr.CelCall call) {
        Optional<reglet.model.Quantity> quantity = Language.quantity(call);
        if (quantity.isPresent()) {
            return new Constant(quantity.get());
        }
        Optional<Day> day = Language.day(call);
        if (day.isPresent()) {
            return new Constant(day.get());
        }
        List<Node> arguments = new ArrayList<>();
        call.target().ifPresent(target -> arguments.add(node(target)));
        call.args().forEach(argument -> arguments.add(node(argument)));
        Table table = tables.get(call.function());
        if (table != null) {
            for (int i = 0; i < arguments.size(); i++) {
                words(table.given().get(i).type(), arguments.get(i));
            }
            return new Lookup(table.id(), arguments);
        }
        Optional<Operation> operation = Operation.of(call.function());
        if (operation.isEmpty()) {
            return unknown("\"" + call.function() + "\"");
        }
        if (arguments.size() == 2) {
            type(arguments.get(0)).ifPresent(type -> words(type, arguments.get(1)));
            type(arguments.get(1)).ifPresent(type -> words(type, arguments.get(0)));
            scales(arguments.get(0), arguments.get(1));
        }
        return new Call(operation.get(), arguments);
    }

    private Optional<PropertyType> type(Node node) {
        return node instanceof Fact fact ? names.type(fact.name()) : Optional.empty();
    }

    /** Whether the words written on the other side are words that the property can take. */
    private void words(PropertyType type, Node node) {
        if (node instanceof ListOf list) {
            list.items().forEach(item -> words(type, item));
        } else if (node instanceof Constant constant && constant.value() instanceof String word && !type.words().isEmpty()
            && !type.words().contains(word)) {
            String near = Nearest.hint(word, type.words());
            wrong.add(new Wrong("\"" + word + "\" is never the case", near.isEmpty() ? "expected one of: " + String.join(", ", type.words())
                : near));
        }
    }

    private void scales(Node one, Node other) {
        Optional<PropertyType> left = type(one).filter(type -> type.kind() == Kind.GRADE);
        Optional<PropertyType> right = type(other).filter(type -> type.kind() == Kind.GRADE);
        if (left.isPresent() && right.isPresent() && !left.get().words().equals(right.get().words())) {
            wrong.add(new Wrong("compares steps of two different scales", left.get().words() + " and " + right.get().words()));
        }
    }
}

package reglet.rules;

import java.util.List;
import java.util.function.Consumer;

/** A checked expression. */
sealed interface Node {

    /**
     * A value written in the expression.
     *
     * @param value a Boolean, Double, String, Quantity or Day
     */
    record Constant(Object value) implements Node {
    }

    /** A fact by its full name: "lath.weight". */
    record Fact(String name) implements Node {
    }

    /** An intermediate value of the same rule. */
    record Let(String name) implements Node {
    }

    /** An operation. */
    record Call(Operation operation, List<Node> arguments) implements Node {
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    /** A table looked up. */
    record Lookup(String table, List<Node> arguments) implements Node {
        public Lookup {
            arguments = List.copyOf(arguments);
        }
    }

    /** A list written in the expression. */
    record ListOf(List<Node> items) implements Node {
        public ListOf {
            items = List.copyOf(items);
        }
    }

    /** Hands over the name of each fact in this expression. */
    default void facts(Consumer<String> names) {
        if (this instanceof Fact fact) {
            names.accept(fact.name());
        } else if (this instanceof Call call) {
            call.arguments().forEach(argument -> argument.facts(names));
        } else if (this instanceof Lookup lookup) {
            lookup.arguments().forEach(argument -> argument.facts(names));
        } else if (this instanceof ListOf list) {
            list.items().forEach(item -> item.facts(names));
        }
    }
}

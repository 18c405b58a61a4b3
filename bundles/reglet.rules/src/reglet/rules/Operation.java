package reglet.rules;

import java.util.Arrays;
import java.util.Optional;

/** What an expression can do, with the name that the expression language gives it. Stored by name: rename none. */
enum Operation {
    AND("_&&_"), OR("_||_"), NOT("!_"), IF("_?_:_"), EQUAL("_==_"), UNEQUAL("_!=_"), LESS("_<_"), LESS_OR_EQUAL("_<=_"), MORE("_>_"),
    MORE_OR_EQUAL("_>=_"), PLUS("_+_"), MINUS("_-_"), TIMES("_*_"), OVER("_/_"), NEGATE("-_"), IN("@in"), MIN("min"), MAX("max"),
    ABS("abs"), LOW("low"), HIGH("high"), SIZE("size");

    private final String function;

    Operation(String function) {
        this.function = function;
    }

    String function() {
        return function;
    }

    static Optional<Operation> of(String function) {
        return Arrays.stream(values()).filter(operation -> operation.function.equals(function)).findFirst();
    }
}

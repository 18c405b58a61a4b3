package reglet.worksheets;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

import reglet.model.Chart;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;
import reglet.model.Worksheet.Supplied;

/**
 * A worksheet as the list of them knows it.
 *
 * @param <R>    the record of its inputs; a component for each key
 * @param charts what may be drawn beside it
 */
record Definition<R extends Record>(String name, String title, Class<R> type, List<InputSpec> inputs, Calculation<R> calculation,
        Function<R, List<Chart>> charts) {

    /** Writes the sheet from the inputs, all of them within their ranges. */
    interface Calculation<R extends Record> {
        void write(R inputs, Sheet sheet) throws UnusableInput;
    }

    Definition(String name, String title, Class<R> type, List<InputSpec> inputs, Calculation<R> calculation) {
        this(name, title, type, inputs, calculation, given -> List.of());
    }

    Worksheet run(R given) throws UnusableInput {
        return run(Given.of(name, inputs, given));
    }

    Worksheet run(Map<String, String> typed, String origin) throws UnusableInput {
        return run(Given.read(name, inputs, typed, origin));
    }

    Worksheet run(Map<String, Supplied> supplied, UnitSystem system) throws UnusableInput {
        return run(Given.supplied(name, inputs, supplied, system));
    }

    /** The curves beside a worksheet that has been run. */
    List<Chart> charts(Map<String, Supplied> supplied, UnitSystem system) throws UnusableInput {
        return charts.apply(Given.supplied(name, inputs, supplied, system).as(type));
    }

    private Worksheet run(Given given) throws UnusableInput {
        Sheet sheet = new Sheet(name, title, given);
        calculation.write(given.as(type), sheet);
        return sheet.done();
    }
}

package reglet.worksheets;

import java.util.LinkedHashMap;
import java.util.Map;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Runs worksheets as a person types them. */
final class Run {
    private Run() {
    }

    static Map<String, String> typed(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String pair : pairs) {
            int equals = pair.indexOf('=');
            map.put(pair.substring(0, equals), pair.substring(equals + 1));
        }
        return map;
    }

    static Worksheet of(String name, String... pairs) throws UnusableInput {
        return Worksheets.run(name, typed(pairs), "typed");
    }

    /** A result in a unit. */
    static double result(Worksheet worksheet, String key, Unit unit) {
        return unit.fromSi(worksheet.results().get(key).si());
    }

    /** The value of the first step with a symbol, in a unit. */
    static double step(Worksheet worksheet, String symbol, Unit unit) {
        return unit.fromSi(worksheet.steps().stream().filter(step -> step.symbol().equals(symbol)).findFirst().orElseThrow().value().si());
    }

    /** The rows of a table written as text, cells split at bars or blanks. */
    static String[][] table(String text) {
        return text.lines().filter(line -> !line.isBlank()).map(line -> line.strip().split("\\s*\\|\\s*|\\s+")).toArray(String[][]::new);
    }
}

package reglet.desk;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Calculation;
import reglet.model.Calculation.How;
import reglet.model.Nearest;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.worksheets.InputSpec;
import reglet.worksheets.Worksheets;

/** Whether the worksheets that a pack asks for are there, and ask for what the pack gives. */
final class CalculationLint {

    private CalculationLint() {
    }

    static List<Problem> problems(Pack pack) {
        List<Problem> problems = new ArrayList<>();
        pack.calculations().forEach(calculation -> {
            try {
                inputs(calculation, Worksheets.describe(calculation.worksheet()), problems);
            } catch (UnusableInput unknown) {
                problems.add(new Problem(calculation.at(), "there is no worksheet \"" + calculation.worksheet() + "\"",
                    Nearest.hint(calculation.worksheet(), Worksheets.names())));
            }
        });
        return problems;
    }

    private static void inputs(Calculation calculation, List<InputSpec> inputs, List<Problem> problems) {
        List<String> keys = inputs.stream().map(InputSpec::key).toList();
        calculation.inputs().keySet().stream().filter(key -> !keys.contains(key)).forEach(key -> problems.add(new Problem(calculation.at(),
            "the worksheet " + calculation.worksheet() + " has no input \"" + key + "\"", Nearest.hint(key, keys))));
        for (InputSpec input : inputs) {
            Calculation.Source source = calculation.inputs().get(input.key());
            if (source == null && input.required()) {
                problems.add(new Problem(calculation.at(), "the worksheet " + calculation.worksheet() + " needs the input \"" + input.key()
                    + "\"", "say what it is: " + input.label()));
            }
            boolean list = input.kind() == InputSpec.Kind.RECTANGLES || input.kind() == InputSpec.Kind.JOINTS;
            if (source != null && list != (source.how() == How.LIST)) {
                problems.add(new Problem(calculation.at(), "the input \"" + input.key() + "\" is " + (list ? "a list" : "no list"),
                    list ? "list: [expressions]" : "an expression, or a sum"));
            }
        }
    }
}

package reglet.worksheets;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import reglet.model.Numbers;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** The calculations of the workbench, by name. Every one is a pure function: the same inputs give the same worksheet. */
public final class Worksheets {

    /** The last assumption of every worksheet. */
    public static final String CAUTION = "This calculation replaces neither the local code, the manufacturer's instructions nor the "
        + "judgement of "
        + "a licensed professional.";

    private static final List<Definition<?>> ALL = List.of(Weight.DEFINITION, Wind.DEFINITION, Seismic.DEFINITION, LathFastening.DEFINITION,
        SealantJoint.DEFINITION, MovementJoints.DEFINITION, Takeoff.DEFINITION);

    private Worksheets() {
    }

    /** Names in the order a job needs them. */
    public static List<String> names() {
        return ALL.stream().map(Definition::name).toList();
    }

    /** The title of a worksheet, in words for people. */
    public static String title(String name) throws UnusableInput {
        return definition(name).title();
    }

    /** What a worksheet asks for, in order. */
    public static List<InputSpec> describe(String name) throws UnusableInput {
        return definition(name).inputs();
    }

    /**
     * Runs a worksheet on texts by key.
     *
     * @param typed  "3/8 in" by key; a key that isn't there takes its usual value
     * @param origin where the texts come from, printed with each input and each problem: "typed" or a file
     * @throws UnusableInput naming every key that is unknown, missing, unreadable or out of range, with the range and its source
     */
    public static Worksheet run(String name, Map<String, String> typed, String origin) throws UnusableInput {
        return definition(name).run(typed, origin);
    }

    /** Curves to be drawn beside the worksheet of the same inputs; may be none. */
    public static List<Chart> charts(String name, Map<String, String> typed, String origin) throws UnusableInput {
        return definition(name).charts(typed, origin);
    }

    /** The results as CSV (RFC 4180, lines end CR LF): key, label, amount, unit. */
    public static String csv(Worksheet worksheet) {
        return worksheet.results().entrySet().stream()
            .map(result -> String.join(",", cell(result.getKey()), cell(result.getValue().label()), amount(result.getValue()),
                cell(result.getValue().unit() == Unit.ONE ? "each" : result.getValue().unit().symbol())))
            .collect(Collectors.joining("\r\n", "key,label,amount,unit\r\n", "\r\n"));
    }

    private static String amount(Worksheet.Amount amount) {
        return Numbers.significant(amount.unit().fromSi(amount.si()), 7, Numbers.Side.NEAREST);
    }

    private static String cell(String text) {
        return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private static Definition<?> definition(String name) throws UnusableInput {
        return ALL.stream().filter(worksheet -> worksheet.name().equals(name)).findFirst().orElseThrow(() -> new UnusableInput(
            new Problem(Place.of("worksheet"), "there is no worksheet " + name, "one of: " + String.join(", ", names()))));
    }
}

package reglet.worksheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Chart;
import reglet.model.Drawing;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;
import reglet.model.Worksheet.Supplied;

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

    /**
     * Runs a worksheet on values of a job, by key, each with where it comes from.
     *
     * @param system the system of units that results are shown in
     * @throws UnusableInput as {@link #run(String, Map, String)} does
     */
    public static Worksheet run(String name, Map<String, Supplied> given, UnitSystem system) throws UnusableInput {
        return definition(name).run(given, system);
    }

    /** Sections to scale to be drawn beside a worksheet that was run; may be none. */
    public static List<Drawing> drawings(Worksheet worksheet) {
        return worksheet.name().equals(SealantJoint.DEFINITION.name()) ? List.of(JointSection.of(worksheet)) : List.of();
    }

    /** Curves to be drawn beside a worksheet that was run; may be none. */
    public static List<Chart> charts(Worksheet worksheet) {
        Map<String, Supplied> given = new LinkedHashMap<>();
        worksheet.inputs().forEach((key, input) -> given.put(key, new Supplied(input.value(), input.from())));
        try {
            return definition(worksheet.name()).charts(given, UnitSystem.INCH_POUND);
        } catch (UnusableInput impossible) {
            throw new IllegalArgumentException("a worksheet that was run can be run again", impossible);
        }
    }

    private static Definition<?> definition(String name) throws UnusableInput {
        return ALL.stream().filter(worksheet -> worksheet.name().equals(name)).findFirst().orElseThrow(() -> new UnusableInput(
            new Problem(Place.of("worksheet"), "there is no worksheet " + name, "one of: " + String.join(", ", names()))));
    }
}

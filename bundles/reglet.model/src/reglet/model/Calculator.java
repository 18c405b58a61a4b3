package reglet.model;

import java.util.Map;

/** Runs worksheets by name. */
@FunctionalInterface
public interface Calculator {

    /**
     * @param worksheet name of the worksheet: "wind"
     * @param given     values by key, each with where it comes from; a key that isn't there takes the worksheet's usual value
     * @param system    the system of units that results are shown in
     * @throws UnusableInput when the worksheet can't be run on these values: one is missing, of the wrong kind or out of range
     */
    Worksheet run(String worksheet, Map<String, Worksheet.Supplied> given, UnitSystem system) throws UnusableInput;
}

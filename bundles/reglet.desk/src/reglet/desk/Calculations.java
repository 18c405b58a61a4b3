package reglet.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import reglet.model.UnusableInput;
import reglet.model.Worksheet;
import reglet.worksheets.Worksheets;

/** Worksheets that run alone, without a job. */
public final class Calculations {

    private Calculations() {
    }

    /** Names in the order a job needs them. */
    public static List<String> names() {
        return Worksheets.names();
    }

    /** A line for each: name and title. */
    public static List<String> titles() throws UnusableInput {
        List<String> lines = new ArrayList<>();
        for (String name : names()) {
            lines.add(String.format("%-16s %s", name, Worksheets.title(name)));
        }
        return lines;
    }

    /**
     * Runs a worksheet.
     *
     * @param typed  texts by key
     * @param origin where they come from, printed with each input
     * @throws UnusableInput with everything wrong with the inputs
     */
    public static Worksheet run(String name, Map<String, String> typed, String origin) throws UnusableInput {
        return Worksheets.run(name, typed, origin);
    }
}

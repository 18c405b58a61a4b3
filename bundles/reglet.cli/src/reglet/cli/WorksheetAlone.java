package reglet.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Calculations;
import reglet.desk.Forms;
import reglet.desk.WorksheetForms;
import reglet.desk.WorksheetReport;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** One calculation on what is typed, without a job. */
@Command(name = "worksheet", description = {"Run one worksheet on typed inputs, such as:",
    "  worksheet wind speed=115mph exposure=B height=30ft zone=5 area=10ft2"})
final class WorksheetAlone implements Callable<Integer> {
    private static final String TYPED = "typed";

    private final Session session;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The worksheet; --list shows the names.")
    private String name;

    @Parameters(index = "1..*", paramLabel = "KEY=VALUE", description = "Inputs with their units; --inputs shows the keys.")
    private List<String> inputs = List.of();

    @Option(names = "--list", description = "Show the names of the worksheets.")
    private boolean list;

    @Option(names = "--inputs", description = "Show what the worksheet asks for: keys, units, ranges and usual values.")
    private boolean asks;

    @Option(names = "--json", description = "Print for programs.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    WorksheetAlone(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() throws UnusableInput {
        if (list) {
            session.out.print(json ? Forms.text(WorksheetForms.names(Calculations.names()))
                : String.join("\n", Calculations.titles()) + "\n");
            return ExitCodes.CLEAN;
        }
        if (name == null) {
            throw new UnusableInput(new Problem(Place.of("worksheet"), "no name is given",
                "one of: " + String.join(", ", Calculations.names())));
        }
        if (asks) {
            session.out.print(json ? Forms.text(WorksheetForms.inputs(name))
                : WorksheetReport.inputs(name));
            return ExitCodes.CLEAN;
        }
        Worksheet worksheet = Calculations.run(name, typed(), TYPED);
        session.out.print(json ? Forms.text(WorksheetForms.worksheets(List.of(worksheet))) : WorksheetReport.text(worksheet));
        return WorksheetReport.fallsShort(worksheet) ? ExitCodes.FINDINGS : ExitCodes.CLEAN;
    }

    private Map<String, String> typed() throws UnusableInput {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String input : inputs) {
            int equals = input.indexOf('=');
            if (equals < 1) {
                throw new UnusableInput(new Problem(Place.of(TYPED), "\"" + input + "\" is no input", "key=value, such as speed=115mph"));
            }
            if (typed.put(input.substring(0, equals), input.substring(equals + 1)) != null) {
                throw new UnusableInput(new Problem(Place.of(TYPED), "\"" + input.substring(0, equals) + "\" is given twice",
                    "give it once"));
            }
        }
        return typed;
    }
}

package reglet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Confirming;
import reglet.desk.DataSheets;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.SheetForms;
import reglet.model.Comparison.Result;
import reglet.model.ConditionCheck;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.SheetReading;
import reglet.model.UnusableInput;

/** Reads a paper that somebody else made. */
@Command(name = "read", description = {"Read a data sheet: its values with their places on the page, for a person to confirm.",
    "  read lath.pdf --as sheet",
    "  read lath.pdf --as sheet --model ML-34 --confirm JOB"})
final class Read implements Callable<Integer> {
    private static final String SHEET = "sheet";

    private final Session session;

    @Parameters(index = "0", paramLabel = "FILE", description = "The PDF to read.")
    private Path file;

    @Option(names = "--as", paramLabel = "KIND", required = true, description = "What it is: sheet.")
    private String kind;

    @Option(names = "--component", paramLabel = "ID", description = "What the product is, such as lath; found out from the sheet "
        + "when left out.")
    private String component = "";

    @Option(names = "--confirm", paramLabel = "JOB", description = "Confirm what was read, as the person who looked at it, into the "
        + "product "
        + "data of this job.")
    private Path job;

    @Option(names = "--against", paramLabel = "JOB", description = "Tell also what the conditions of use of an evaluation report ask"
        + " of this job.")
    private Path against;

    @Option(names = "--model", paramLabel = "NAME", description = "The model to confirm, where the sheet shows several.")
    private String model = "";

    @Option(names = "--id", paramLabel = "ID", description = "Name of the product data; made from the product's name when left out.")
    private String id = "";

    @Option(names = "--only", paramLabel = "PROPERTY", split = ",", description = "Confirm only these properties, such as lath.weight.")
    private List<String> only = List.of();

    @Option(names = "--json", description = "Print for programs.")
    private boolean json;

    @Option(names = "--pack", paramLabel = "FOLDER", description = "A pack folder to use besides the installed packs.")
    private List<Path> packs = List.of();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    Read(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() throws Exception {
        if (!kind.equals(SHEET)) {
            throw new UnusableInput(new Problem(Place.of("--as"), "\"" + kind + "\" can't be read", "expected: " + SHEET));
        }
        if (job != null) {
            return confirm(session.open(job, packs));
        }
        if (against != null) {
            return conditions(session.open(against, packs));
        }
        SheetReading reading = DataSheets.read(file, session.pack("", packs), component);
        session.out.print(json ? Forms.text(SheetForms.sheet(reading)) : DataSheets.report(file, reading));
        return needsAPerson(reading) ? ExitCodes.FINDINGS : ExitCodes.CLEAN;
    }

    private int conditions(OpenJob open) throws Exception {
        SheetReading reading = DataSheets.read(file, open.pack(), component);
        List<ConditionCheck> checks = DataSheets.conditions(open, reading);
        session.out.print(json ? Forms.text(SheetForms.sheet(reading, checks)) : DataSheets.report(file, reading)
            + DataSheets.report(checks));
        return needsAPerson(reading) || checks.stream().anyMatch(check -> check.result() != Result.MEETS)
            ? ExitCodes.FINDINGS : ExitCodes.CLEAN;
    }

    private int confirm(OpenJob open) throws Exception {
        SheetReading reading = DataSheets.read(file, open.pack(), component);
        Confirming read = Confirming.of(open, file, reading, model, id);
        for (String property : only) {
            if (read.proposals().stream().noneMatch(proposal -> proposal.property().equals(property))) {
                throw new UnusableInput(new Problem(Place.of(file.toString()), "no value of " + property + " was read",
                    "expected one of: " + String.join(", ", read.proposals().stream().map(Confirming.Proposal::property).distinct()
                        .toList())));
            }
        }
        Confirming confirmed = only.isEmpty() ? read.takeOpen() : read;
        for (String property : only) {
            confirmed = confirmed.take(property);
        }
        if (!only.isEmpty()) {
            for (Confirming.Proposal proposal : read.proposals()) {
                confirmed = only.contains(proposal.property()) ? confirmed : confirmed.leaveOut(proposal.property());
            }
        }
        session.out.print(confirmed.table());
        OpenJob after;
        try {
            after = confirmed.write(open);
        } catch (UnusableInput unusable) {
            throw unusable.below(job.toString());
        }
        after.job().products().stream().filter(product -> open.job().products().stream().noneMatch(before -> before.equals(product)))
            .forEach(product -> session.out.println(job.resolve("products").resolve(product.id() + ".yaml")));
        return ExitCodes.CLEAN;
    }

    private static boolean needsAPerson(SheetReading reading) {
        return reading.values().isEmpty() || reading.unread().stream().anyMatch(unread -> unread.text().isEmpty());
    }
}

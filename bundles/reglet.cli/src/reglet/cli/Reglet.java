package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The root command: what the program is and which verbs it has. */
@Command(name = "reglet", mixinStandardHelpOptions = false, synopsisSubcommandLabel = "VERB", subcommands = {Check.class, Try.class,
    Propose.class, Draft.class,
    Register.class, Read.class, Assemble.class, Compare.class, ReviewOfSubmittal.class, FormsOfJob.class, WorksheetsOfJob.class,
        WorksheetAlone.class, DetailsOfJob.class, IssueVerb.class,
    ChangesVerb.class, QuestionsVerb.class, AnswerVerb.class, All.class, HelpCommand.class},
    description = "From the choices of a drained and ventilated cladding wall to checked, specified, submitted and compared paper.",
    footer = {"", "Exit code: 0 clean, 1 conflicts, gaps or shortfalls, 2 input that can't be used, 3 our own fault.",
        "What it writes replaces neither the local building code, the manufacturer's instructions nor a licensed professional."})
final class Reglet implements Runnable {

    @picocli.CommandLine.Spec
    private picocli.CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

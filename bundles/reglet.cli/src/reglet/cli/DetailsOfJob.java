package reglet.cli;

import picocli.CommandLine.Command;
import reglet.desk.Outputs;

/** The details of a job, drawn. */
@Command(name = "details", description = "Draw the details of a job's wall types as PDF, SVG and DXF into its out folder.")
final class DetailsOfJob extends SupposingVerb {

    DetailsOfJob(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        write(Outputs.of(open()).details());
        return ExitCodes.CLEAN;
    }
}

package reglet.cli;

import picocli.CommandLine.Command;
import reglet.desk.Outputs;

/** The forms for the site. */
@Command(name = "forms", description = "Write hold points, closeout, extra stock and compatibility of a job as forms for the site, "
    + "as PDF and DOCX in its out folder.")
final class FormsOfJob extends JobVerb {

    FormsOfJob(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        write(Outputs.of(open()).forms());
        return ExitCodes.CLEAN;
    }
}

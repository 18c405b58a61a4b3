package reglet.cli;

import java.nio.file.Path;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Outputs;

/** The forms for the site. */
@Command(name = "forms", description = "Write hold points, closeout, extra stock and compatibility of a job as forms for the site, "
    + "as PDF and DOCX in its out folder.")
final class FormsOfJob extends SupposingVerb {

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead the forms bear.")
    private Path office;

    FormsOfJob(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        write(Outputs.of(open()).office(office).forms());
        return ExitCodes.CLEAN;
    }
}

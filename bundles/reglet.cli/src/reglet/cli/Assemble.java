package reglet.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.PackageDivision;
import reglet.model.Submittal;

/** Puts a submittal package together. */
@Command(name = "assemble", description = "Put a submittal's package together, as one PDF or divided into several, in the job's out folder.")
final class Assemble extends JobVerb {

    @Parameters(index = "1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    @Option(names = "--limit", paramLabel = "SIZE", description = "The largest size that a file may have, such as 20MB; a larger package is "
        + "divided into parts.")
    private String limit = "";

    @Option(names = "--split", paramLabel = "kind", description = "kind: divide the package into front matter, data sheets, certificates and "
        + "reports, worksheets and details.")
    private String split = "";

    Assemble(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        PackageDivision division = PackageDivision.read(limit, split);
        OpenJob job = open();
        Submittal asked = submittal(job, submittal);
        List<Path> files = write(Outputs.of(job).submittalPackage(asked, division));
        boolean sound = true;
        for (Path file : files) {
            if (division.limit() > 0 && Files.size(file) > division.limit()) {
                session.err.println(file + ": " + Files.size(file) / 1000 + " kB are more than the limit of " + division.limit() / 1000
                    + " kB, and it can't be divided further");
                sound = false;
            }
        }
        for (Path earlier : PackageDivision.earlier(asked, files)) {
            session.err.println(earlier + ": belongs to an earlier package of another division, not to this one");
        }
        if (asked.statement().isBlank()) {
            session.err.println(asked.at() + ": NOT READY: the contractor's statement of review is missing; add a line \"statement: …\"");
            sound = false;
        }
        return sound ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

package reglet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
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
final class Assemble extends SupposingVerb {

    @Parameters(index = "1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    @Option(names = "--limit", paramLabel = "SIZE",
        description = "The largest size that a file may have, such as 20MB; a larger package is "
        + "divided into parts.")
    private String limit = "";

    @Option(names = "--split", paramLabel = "kind",
        description = "kind: divide the package into front matter, data sheets, certificates and "
        + "reports, worksheets and details.")
    private String split = "";

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead our own pages bear.")
    private Path office;

    Assemble(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        PackageDivision division = PackageDivision.read(limit, split);
        OpenJob job = open();
        Submittal asked = submittal(job, submittal);
        List<String> larger = new ArrayList<>();
        List<Path> files = write(Outputs.of(job).office(office).submittalPackage(asked, division, larger::add));
        larger.forEach(session.err::println);
        boolean sound = larger.isEmpty();
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

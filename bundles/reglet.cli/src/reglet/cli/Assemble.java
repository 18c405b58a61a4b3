package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;

/** Puts a submittal package together. */
@Command(name = "assemble", description = "Put a submittal's package together as one PDF in the job's out folder.")
final class Assemble extends JobVerb {

    @Parameters(index = "1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    Assemble(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        write(Outputs.of(job).submittalPackage(submittal(job, submittal)));
        return ExitCodes.CLEAN;
    }
}

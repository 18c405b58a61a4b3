package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Report;
import reglet.model.Comparison;
import reglet.model.Submittal;

/** Compares what was submitted with what is required. */
@Command(name = "compare", description = "Compare a submittal's products with what the job requires, as JSON and PDF in its out folder.")
final class Compare extends JobVerb {

    @Parameters(index = "1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    @Option(names = "--json", description = "Print the comparison for programs and write nothing.")
    private boolean json;

    Compare(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        Submittal compared = submittal(job, submittal);
        Comparison comparison = job.compare(compared);
        if (json) {
            session.out.print(Forms.text(Forms.comparison(job, comparison)));
        } else {
            write(Outputs.of(job).comparison(compared));
            session.out.println(Report.summary(comparison));
        }
        return Report.isClean(comparison) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

package reglet.cli;

import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Report;
import reglet.desk.ReviewReports;
import reglet.model.Comparison;
import reglet.model.Submittal;

/** The report of a review. */
@Command(name = "review", description = "Report the review of a submittal, with the flagged sheets behind it, as PDF and JSON in the job's "
    + "out folder. The action is the reviewer's, from submittal.yaml.")
final class ReviewOfSubmittal extends SupposingVerb {

    @Parameters(index = "1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    @Option(names = "--json", description = "Print the report for programs and write nothing.")
    private boolean json;

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead the report bears.")
    private Path office;

    ReviewOfSubmittal(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        Submittal reviewed = submittal(job, submittal);
        Comparison comparison = job.compare(reviewed);
        if (json) {
            session.out.print(Forms.text(ReviewReports.form(job, reviewed)));
        } else {
            write(Outputs.of(job).office(office).review(reviewed));
            session.out.println(Report.summary(comparison));
        }
        List<String> unplaced = ReviewReports.unplaced(job, reviewed);
        unplaced.forEach(line -> session.err.println(folder + "/" + line));
        return Report.isClean(comparison) && unplaced.isEmpty() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

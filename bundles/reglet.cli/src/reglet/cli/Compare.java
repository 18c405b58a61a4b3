package reglet.cli;

import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.DataSheets;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Report;
import reglet.desk.Reviews;
import reglet.model.Candidates;
import reglet.model.Comparison;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.ReportCheck;
import reglet.model.Resubmittal;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/** Compares what was submitted with what is required. */
@Command(name = "compare", description = "Compare a submittal's products with what the job requires, as JSON and PDF in its out folder.")
final class Compare extends SupposingVerb {

    @Parameters(index = "1", arity = "0..1", paramLabel = "SUBMITTAL", description = "The submittal, such as 04-73-00-01.")
    private String submittal;

    @Option(names = "--last", paramLabel = "SUBMITTAL", description = "Tell what changed since this submittal, and write nothing.")
    private String last;

    @Option(names = "--candidates", paramLabel = "PRODUCT", split = ",", description = "Instead of a submittal: compare these "
        + "products of the "
        + "job side by side, and write nothing.")
    private List<String> candidates = List.of();

    @Option(names = "--json", description = "Print the comparison for programs and write nothing.")
    private boolean json;

    Compare(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        if (!candidates.isEmpty()) {
            Candidates beside = Reviews.candidates(job, candidates);
            session.out.print(json ? Forms.text(Reviews.form(job, beside)) : Reviews.report(beside));
            return candidates.stream().anyMatch(beside::complies) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
        }
        if (submittal == null) {
            throw new UnusableInput(new Problem(Place.of(folder.toString()), "no submittal is named",
                "name one, or products with --candidates"));
        }
        if (last != null) {
            Resubmittal changes = Reviews.since(job, submittal(job, last), submittal(job, submittal));
            session.out.print(json ? Forms.text(Reviews.form(changes)) : Reviews.report(changes));
            return changes.isSettled() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
        }
        Submittal compared = submittal(job, submittal);
        Comparison comparison = job.compare(compared);
        List<ReportCheck> reports = DataSheets.reports(job, compared);
        if (json) {
            session.out.print(Forms.text(Forms.comparison(job, comparison, reports)));
        } else {
            write(Outputs.of(job).comparison(compared));
            session.out.println(Report.summary(comparison));
            comparison.remarks().forEach(session.out::println);
            session.out.print(DataSheets.reports(reports));
        }
        return Report.isClean(comparison) && reports.stream().allMatch(ReportCheck::isClean) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

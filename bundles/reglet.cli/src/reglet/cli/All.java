package reglet.cli;

import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.DataSheets;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Report;
import reglet.model.Comparison;
import reglet.model.ReportCheck;
import reglet.model.Submittal;

/** Everything a job has, into its out folder. */
@Command(name = "all", description = "Check, draft, list, assemble and compare everything of a job into its out folder.")
final class All extends SupposingVerb {

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead the papers bear.")
    private Path office;

    All(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        write(Outputs.of(job).office(office).all());
        session.out.println(Report.summary(job.checked()));
        boolean clean = job.checked().isClean() & paper(job);
        for (Submittal submittal : job.job().submittals()) {
            Comparison comparison = job.compare(submittal);
            session.out.println("submittal " + submittal.id() + ": " + Report.summary(comparison));
            List<ReportCheck> reports = DataSheets.reports(job, submittal);
            session.out.print(DataSheets.reports(reports));
            clean &= Report.isClean(comparison) && reports.stream().allMatch(ReportCheck::isClean);
        }
        return clean ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.OpenJob;
import reglet.desk.Forms;
import reglet.desk.Outputs;
import reglet.desk.WorksheetForms;
import reglet.desk.WorksheetReport;

/** The calculations of a job. */
@Command(name = "worksheets", description = "Calculate weight, wind, earthquake, fastening, joints and quantities of a job into its out folder.")
final class WorksheetsOfJob extends SupposingVerb {

    @Option(names = "--json", description = "Print the worksheets for programs and write nothing.")
    private boolean json;

    WorksheetsOfJob(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        if (json) {
            session.out.print(Forms.text(WorksheetForms.worksheets(job.worksheets())));
        } else {
            write(Outputs.of(job).worksheets());
            session.out.print(WorksheetReport.summary(job.worksheets()));
        }
        return WorksheetReport.isClean(job.worksheets()) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

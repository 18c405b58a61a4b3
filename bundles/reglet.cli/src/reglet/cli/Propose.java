package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.RemedyForms;
import reglet.desk.RemedyReport;
import reglet.model.Proposal;

/** Options for everything that a job leaves undecided. Writes nothing. */
@Command(name = "propose", description = "Propose an option for every undecided component: no conflict, no gap, the lowest cost class; or say "
    + "which fixed choices can't stand together.")
final class Propose extends SupposingVerb {

    @Option(names = "--json", description = "Print the proposal for programs.")
    private boolean json;

    Propose(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        Proposal proposal = job.propose();
        session.out.print(json ? Forms.text(RemedyForms.proposal(proposal)) : RemedyReport.proposal(job.pack(), proposal));
        return proposal.stands() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }
}

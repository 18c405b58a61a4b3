package reglet.cli;

import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Report;
import reglet.model.Explanation;
import reglet.model.Nearest;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Rule;
import reglet.model.UnusableInput;

/** Checks the choices of a job for conflicts and gaps. */
@Command(name = "check", description = "Check the choices of a job for conflicts, gaps and cautions.")
final class Check extends JobVerb {

    @Option(names = "--json", description = "Print the findings for programs.")
    private boolean json;

    @Option(names = "--explain", paramLabel = "RULE", description = "Show how a rule came out at each place it looks at, with its basis.")
    private String explain;

    Check(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        if (explain != null) {
            explain(job);
            return ExitCodes.CLEAN;
        }
        if (json) {
            session.out.print(Forms.text(Forms.check(job.job(), job.checked())));
        } else {
            job.checked().findings().forEach(finding -> session.out.println(folder + "/" + Report.line(finding)));
            session.out.println(Report.summary(job.checked()));
        }
        return job.checked().isClean() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }

    private void explain(OpenJob job) throws UnusableInput {
        Rule rule = job.pack().rule(explain).orElseThrow(() -> new UnusableInput(new Problem(Place.of("--explain"),
            "there is no rule \"" + explain + "\"", Nearest.hint(explain, job.pack().rules().stream().map(Rule::id).toList()))));
        List<Explanation> explanations = job.explain(rule.id());
        if (json) {
            session.out.print(Forms.text(Forms.explanations(rule, explanations)));
        } else {
            session.out.print(Report.explanation(rule, explanations));
        }
    }
}

package reglet.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.RemedyForms;
import reglet.desk.RemedyReport;
import reglet.desk.Report;
import reglet.model.Amendment;
import reglet.model.Explanation;
import reglet.model.Nearest;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Rule;
import reglet.model.UnusableInput;

/** Checks the choices of a job for conflicts and gaps. */
@Command(name = "check", description = "Check the choices of a job for conflicts, gaps and cautions.")
final class Check extends SupposingVerb {

    @Option(names = "--json", description = "Print the findings for programs.")
    private boolean json;

    @Option(names = "--remedies", description = "Say below each finding which smallest changes clear it and add none.")
    private boolean remedies;

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
            session.out.print(Forms.text(RemedyForms.check(job)));
        } else {
            job.checked().findings().forEach(finding -> {
                session.out.println(folder + "/" + Report.line(finding));
                session.out.print(remedies ? RemedyReport.lines(job.remedies(finding)) : "");
            });
            session.out.println(Report.summary(job.checked()));
        }
        return job.checked().isClean() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }

    private void explain(OpenJob job) throws UnusableInput {
        Optional<Rule> rule = job.pack().rule(explain);
        if (rule.isEmpty()) {
            withoutInstances(job);
            return;
        }
        List<Explanation> explanations = job.explain(explain);
        if (json) {
            session.out.print(Forms.text(Forms.explanations(rule.get(), explanations)));
        } else {
            session.out.print(Report.explanation(rule.get(), explanations));
        }
    }

    /** A rule that looks at no wall: one for papers, or one that the jurisdiction struck. */
    private void withoutInstances(OpenJob job) throws UnusableInput {
        Optional<PaperRule> paper = PaperRule.of(explain);
        if (paper.isPresent()) {
            session.out.print(json ? Forms.text(Forms.explanations(paper.get(), job.paper())) : Report.explanation(paper.get(),
                job.paper()));
            return;
        }
        Amendment struck = job.amended().stream().flatMap(amended -> amended.amendments().stream())
            .filter(amendment -> amendment.what() == Amendment.What.STRIKE && amendment.target().equals(explain)).findFirst()
            .orElseThrow(() -> new UnusableInput(new Problem(Place.of("--explain"), "there is no rule \"" + explain + "\"",
                Nearest.hint(explain, known(job)))));
        session.out.println(json ? "[]" : Report.amendment(struck));
    }

    private static List<String> known(OpenJob job) {
        return Stream.concat(job.pack().rules().stream().map(Rule::id), Stream.of(PaperRule.values()).map(PaperRule::id)).toList();
    }
}

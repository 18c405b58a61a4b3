package reglet.cli;

import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.OpenJob;
import reglet.desk.Questions;
import reglet.desk.Report;
import reglet.model.UnusableInput;

/** Answers a question about a job's papers. */
@Command(name = "answer", description = {"Answer a question of a job, and make what the answer changes:",
    "  answer JOB 12 --set W1.lath=metal-3.4 --because \"the heavier lath\"",
        "Every choice that it changes cites the question from then on."})
final class AnswerVerb extends JobVerb {

    @Parameters(index = "1", paramLabel = "NUMBER", description = "The question's number.")
    private int number;

    @Option(names = "--set", paramLabel = "ADDRESS=VALUE", description = "A change, as \"try\" takes it; may be given several times.")
    private List<String> changes = List.of();

    @Option(names = "--because", paramLabel = "TEXT", required = true, description = "The answer's words; also the reason of the choices.")
    private String because;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The day of the answer.")
    private String date;

    AnswerVerb(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        try {
            OpenJob answered = Questions.answer(job, number, Try.changes(changes), because, IssueVerb.day(date));
            session.out.println(Report.summary(answered.checked()));
            return answered.checked().isClean() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        }
    }
}

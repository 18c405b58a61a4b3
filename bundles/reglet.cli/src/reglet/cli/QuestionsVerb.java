package reglet.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.QuestionForms;
import reglet.desk.Questions;
import reglet.model.Job;

/** Lists the questions that were asked about a job's papers. */
@Command(name = "questions", description = "List the questions (requests for information) of a job, their answers, and what these changed.")
final class QuestionsVerb extends JobVerb {

    @Option(names = "--json", description = "Print the questions for programs.")
    private boolean json;

    QuestionsVerb(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        Job job = open().job();
        session.out.print(json ? Forms.text(QuestionForms.of(job)) : Questions.report(job));
        return ExitCodes.CLEAN;
    }
}

package reglet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.ChangePapers;
import reglet.desk.Forms;
import reglet.model.Issue;
import reglet.model.IssueChanges;

/** Tells what changed between two issues, or an issue and the present draft. */
@Command(name = "changes", description = {"Tell what changed between two issues or drafts, paragraph by paragraph:",
    "  changes JOB/issues/\"Bid set\" JOB --out FOLDER"})
final class ChangesVerb implements Callable<Integer> {
    private final Session session;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "A job folder, or the folder of an issue.")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "A job folder, or the folder of an issue.")
    private Path after;

    @Option(names = "--json", description = "Print the changes for programs.")
    private boolean json;

    @Option(names = "--out", paramLabel = "FOLDER", description = "Write the papers there: told in words, and marked in each section (DOCX "
        + "with tracked changes, PDF, Markdown).")
    private Path out;

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead the papers bear.")
    private Path office;

    @Option(names = "--pack", paramLabel = "FOLDER", description = "A pack folder to use besides the installed packs.")
    private List<Path> packs = List.of();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    ChangesVerb(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() throws Exception {
        IssueChanges changes = ChangePapers.between(issue(before), issue(after));
        if (json) {
            session.out.print(Forms.text(ChangePapers.form(changes)));
        } else {
            session.out.print(ChangePapers.report(changes));
        }
        if (out != null) {
            for (Path file : ChangePapers.write(changes, out, ChangePapers.office(after, office))) {
                (json ? session.err : session.out).println(file);
            }
        }
        return ExitCodes.CLEAN;
    }

    private Issue issue(Path folder) throws Exception {
        return session.issue(folder, packs);
    }
}

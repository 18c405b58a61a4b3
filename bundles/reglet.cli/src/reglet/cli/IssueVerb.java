package reglet.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Issues;
import reglet.desk.OpenJob;
import reglet.model.Dates;
import reglet.model.Issue;
import reglet.model.Nearest;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** Gives a job's sections out: freezes them, with their papers, in the job's issues folder. */
@Command(name = "issue", description = {"Freeze the sections of a job, with their papers, as an issue, an addendum or a bulletin:",
    "  issue JOB \"Bid set\" --date 2026-03-02", "An addendum or bulletin numbers itself and tells what changed since the last issue."})
final class IssueVerb extends JobVerb {

    @Parameters(index = "1", arity = "0..1", paramLabel = "NAME", description = "Its name; an addendum or bulletin may go without.")
    private String name = "";

    @Option(names = "--kind", paramLabel = "KIND",
        description = "issue (usual), addendum (before the contract is signed), bulletin (after it).")
    private String kind = "issue";

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The date that its papers bear; none without it.")
    private String date;

    @Option(names = "--note", paramLabel = "TEXT", description = "A line about it.")
    private String note = "";

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead its papers bear.")
    private Path office;

    @Option(names = "--with-open-conflicts", description = "Issue it though conflicts stand; they are listed in it.")
    private boolean withOpenConflicts;

    IssueVerb(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        Issues.Request request = new Issues.Request(name.strip(), kind(), day(date), note, withOpenConflicts,
            Optional.ofNullable(office));
        OpenJob job = open();
        try {
            Issues.freeze(job, request, new TerminalProgress(session.err)).forEach(session.out::println);
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        }
        return ExitCodes.CLEAN;
    }

    private Issue.Kind kind() throws UnusableInput {
        Issue.Kind meant = Issue.Kind.words().get(kind);
        if (meant == null) {
            throw new UnusableInput(new Problem(Place.of("--kind"), "unknown kind of issue \"" + kind + "\"",
                Nearest.hint(kind, Issue.Kind.words().keySet()) + " expected one of: " + String.join(", ", Issue.Kind.words().keySet())));
        }
        return meant;
    }

    /** A day as a person types it; empty for none. */
    static Optional<LocalDate> day(String date) throws UnusableInput {
        if (date == null) {
            return Optional.empty();
        }
        return Optional.of(Dates.meant(date).orElseThrow(() -> new UnusableInput(new Problem(Place.of("--date"), "\"" + date
            + "\" is no date", Dates.expected(date)))).date());
    }
}

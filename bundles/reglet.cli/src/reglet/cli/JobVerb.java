package reglet.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Cancelled;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.Report;
import reglet.model.Finding;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/** What all verbs that work on a job folder have in common. */
abstract class JobVerb implements Callable<Integer> {
    final Session session;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job folder: the one with job.yaml in it.")
    Path folder;

    @Option(names = "--pack", paramLabel = "FOLDER", description = "A pack folder to use besides the installed packs.")
    List<Path> packs = List.of();

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    boolean help;

    JobVerb(Session session) {
        this.session = session;
    }

    OpenJob open() throws Exception {
        return session.open(folder, packs);
    }

    /** Writes the papers and says where they are. */
    final List<Path> write(Outputs outputs) throws UnusableInput, IOException, Cancelled {
        List<Path> written;
        try {
            written = outputs.write(new TerminalProgress(session.err));
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        }
        written.forEach(session.out::println);
        return written;
    }

    /** Prints what is found in the drafted sections; true when that is nothing but cautions. */
    final boolean paper(OpenJob job) {
        job.paper().forEach(finding -> session.out.println(folder + "/" + Report.line(finding)));
        return job.paper().stream().allMatch(finding -> finding.kind() == Finding.Kind.CAUTION);
    }

    /** A submittal of the job, or the problem that there is none of that name. */
    final Submittal submittal(OpenJob job, String id) throws UnusableInput {
        return job.submittal(id).orElseThrow(() -> new UnusableInput(new Problem(Place.of(folder.resolve("submittals").toString()),
            "there is no submittal \"" + id + "\"", job.job().submittals().isEmpty() ? "this job has none yet"
                : "expected one of: " + String.join(", ", job.job().submittals().stream().map(Submittal::id).toList()))));
    }
}

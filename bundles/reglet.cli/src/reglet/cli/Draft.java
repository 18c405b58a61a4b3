package reglet.cli;

import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** Drafts the sections of a job. */
@Command(name = "draft", description = "Draft the sections of a job as DOCX, PDF, HTML and Markdown into its out folder.")
final class Draft extends JobVerb {

    @Option(names = "--section", paramLabel = "NUMBER", description = "Only this section, such as \"04 73 00\".")
    private String section;

    Draft(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        Outputs outputs = Outputs.of(job);
        sections(job, section).forEach(outputs::section);
        write(outputs);
        return paper(job) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }

    /** The sections asked for: one, or all that the job writes. */
    static List<String> sections(OpenJob job, String asked) throws UnusableInput {
        if (asked == null) {
            return job.job().sections();
        }
        String number = asked.replace('-', ' ');
        if (!job.job().sections().contains(number)) {
            throw new UnusableInput(new Problem(Place.of("--section"), "the job writes no section \"" + asked + "\"",
                "expected one of: " + String.join(", ", job.job().sections())));
        }
        return List.of(number);
    }
}

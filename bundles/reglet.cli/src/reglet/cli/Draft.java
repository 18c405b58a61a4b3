package reglet.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.OwnTexts;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

/** Drafts the sections of a job. */
@Command(name = "draft", description = "Draft the sections of a job as DOCX, PDF, HTML and Markdown into its out folder.")
final class Draft extends SupposingVerb {

    @Option(names = "--section", paramLabel = "NUMBER", description = "Only this section, such as \"04 73 00\".")
    private String section;

    @Option(names = "--office", paramLabel = "FOLDER", description = "The office whose letterhead the sections bear.")
    private Path office;

    @Option(names = "--notes", description = "Also the notes to the specifier, as a paper of their own: why a paragraph stands as it does.")
    private boolean notes;

    @Option(names = "--settle", paramLabel = "PARAGRAPH", description = "Instead of drafting, say that you have looked at what the library "
        + "made of a paragraph that you changed or struck: its block then quotes the library's text of today.")
    private String settle;

    Draft(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        if (settle != null) {
            return settle(job);
        }
        Outputs outputs = Outputs.of(job).office(office);
        sections(job, section).forEach(outputs::section);
        if (notes) {
            sections(job, section).forEach(outputs::notes);
        }
        write(outputs);
        return paper(job) ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }

    private int settle(OpenJob job) throws UnusableInput, IOException {
        List<String> numbers = job.job().changes().stream().filter(change -> change.paragraph().equals(settle))
            .map(TextChange::section).distinct().toList();
        // An unknown paragraph is told of in the section asked for, or the first that was changed.
        String number = section != null ? sections(job, section).get(0) : numbers.stream().findFirst()
            .orElseGet(() -> job.job().changes().stream().map(TextChange::section).findFirst().orElse(job.job().sections().get(0)));
        OwnTexts.Settled settled = OwnTexts.settle(job, number, settle);
        session.out.println(settled.says());
        return ExitCodes.CLEAN;
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

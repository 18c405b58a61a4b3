package reglet.cli;

import java.util.List;

import com.google.gson.JsonArray;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;

/** Lists what the sections ask to be sent. */
@Command(name = "register", description = "List what the sections of a job ask to be sent, as CSV into its out folder.")
final class Register extends JobVerb {

    @Option(names = "--section", paramLabel = "NUMBER", description = "Only this section, such as \"04 73 00\".")
    private String section;

    @Option(names = "--json", description = "Print the register for programs and write nothing.")
    private boolean json;

    Register(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob job = open();
        List<String> sections = Draft.sections(job, section);
        if (json) {
            print(job, sections);
        } else {
            Outputs outputs = Outputs.of(job);
            sections.forEach(outputs::register);
            if (section == null) {
                outputs.register();
            }
            write(outputs);
        }
        return ExitCodes.CLEAN;
    }

    private void print(OpenJob job, List<String> sections) throws Exception {
        if (sections.size() == 1) {
            session.out.print(Forms.text(Forms.register(sections.get(0), job.register(sections.get(0)))));
            return;
        }
        JsonArray all = new JsonArray();
        for (String number : sections) {
            all.add(Forms.register(number, job.register(number)));
        }
        session.out.print(Forms.text(all));
    }
}

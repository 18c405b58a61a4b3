package reglet.cli;

import java.util.List;

import com.google.gson.JsonArray;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.Outputs;
import reglet.desk.RegisterReport;
import reglet.model.Finding;
import reglet.model.PaperRule;

/** Lists what the sections ask to be sent. */
@Command(name = "register", description = "List what the sections of a job ask to be sent, as CSV and XLSX into its out folder.")
final class Register extends SupposingVerb {

    @Option(names = "--section", paramLabel = "NUMBER", description = "Only this section, such as \"04 73 00\".")
    private String section;

    @Option(names = "--dates", description = "Print the items by the last day to hand them in and write nothing.")
    private boolean dates;

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
        } else if (dates) {
            session.out.print(RegisterReport.dates(job, sections));
        } else {
            Outputs outputs = Outputs.of(job);
            sections.forEach(outputs::register);
            if (section == null) {
                outputs.register();
            }
            write(outputs);
        }
        List<Finding> lost = job.paper().stream().filter(finding -> finding.rule().equals(PaperRule.REGISTER.id())).toList();
        lost.forEach(finding -> session.err.println(folder + "/" + RegisterReport.line(finding)));
        return lost.isEmpty() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
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

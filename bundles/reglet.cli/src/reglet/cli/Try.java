package reglet.cli;

import java.util.ArrayList;
import java.util.List;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reglet.desk.Forms;
import reglet.desk.OpenJob;
import reglet.desk.RemedyForms;
import reglet.desk.RemedyReport;
import reglet.model.Change;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.model.WhatIf;

/** What findings changes of a job would clear and bring. Writes nothing. */
@Command(name = "try", description = {"Show what changes of a job would clear and bring, without making them, such as:",
    "  try JOB W1.lath=woven-17 W1.base-1.clearance=\"4 in\"", "or of every option of a component: try JOB W1.lath"})
final class Try extends SupposingVerb {

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "ADDRESS=VALUE",
        description = "WALL.COMPONENT=OPTION, WALL.COMPONENT.PROPERTY=VALUE, WALL.MEETING.PROPERTY=VALUE, SUBJECT.PROPERTY=VALUE; nothing "
            + "after the = takes it away.")
    private List<String> changes;

    @Option(names = "--json", description = "Print the findings before and after for programs.")
    private boolean json;

    Try(Session session) {
        super(session);
    }

    @Override
    public Integer call() throws Exception {
        OpenJob before = open();
        if (changes.size() == 1 && changes.get(0).indexOf('=') < 0) {
            return each(before, changes.get(0));
        }
        // what is tried is the version that would be built
        OpenJob after = before.after(changes(changes).stream()
            .map(change -> new Change(before.job().inForce(change.set()), change.to())).toList());
        session.out.print(json ? Forms.text(RemedyForms.tried(before, after)) : RemedyReport.tried(before, after));
        return after.checked().isClean() ? ExitCodes.CLEAN : ExitCodes.FINDINGS;
    }

    /** Every option of a component that is not taken. */
    private int each(OpenJob job, String address) throws UnusableInput {
        int dot = address.indexOf('.');
        String wall = address.substring(0, Math.max(0, dot));
        String component = address.substring(dot + 1);
        if (job.job().wall(wall).isEmpty() || job.pack().component(component).isEmpty()) {
            throw new UnusableInput(new Problem(Place.of(address), "is no component of a wall type",
                "expected an address such as W1.lath, or a "
                + "change such as W1.lath=metal-3.4"));
        }
        List<WhatIf> each = job.whatIf(wall, component);
        session.out.print(json ? Forms.text(RemedyForms.whatIf(each)) : RemedyReport.whatIf(job.pack(), each));
        return ExitCodes.CLEAN;
    }

    /** Changes as a person types them. */
    static List<Change> changes(List<String> typed) throws UnusableInput {
        List<Change> made = new ArrayList<>();
        for (String change : typed) {
            int equals = change.indexOf('=');
            if (equals < 1) {
                throw new UnusableInput(new Problem(Place.of(change), "is no change", "expected an address, = and a value, such as "
                    + "W1.lath=metal-3.4"));
            }
            made.add(new Change(change.substring(0, equals).strip(), change.substring(equals + 1).strip()));
        }
        return made;
    }
}

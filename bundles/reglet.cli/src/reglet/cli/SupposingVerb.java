package reglet.cli;

import java.util.List;

import picocli.CommandLine.Option;
import reglet.desk.OpenJob;
import reglet.model.UnusableInput;

/** What verbs have in common that work out papers of a job: they can be asked for an alternate that isn't accepted. */
abstract class SupposingVerb extends JobVerb {

    @Option(names = "--alternate", paramLabel = "NUMBER", split = ",", description = "As if this alternate, or several apart by commas, "
        + "were accepted; papers go to a folder of their own in the out folder.")
    private List<Integer> alternates = List.of();

    SupposingVerb(Session session) {
        super(session);
    }

    @Override
    OpenJob open() throws Exception {
        OpenJob job = super.open();
        try {
            return job.supposing(alternates);
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        }
    }
}

package reglet.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import reglet.drafting.ClauseLint;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.rules.Engine;
import reglet.rules.Examples;
import reglet.store.Packs;
import reglet.store.StoredPack;
import reglet.worksheets.Worksheets;

/**
 * Builds a pack: reads it, checks every expression, runs the examples of every rule, looks over the clauses, and writes the
 * pack, made ready to run, to a file. The pack's bundle runs it.
 */
public final class PackBuild {

    private PackBuild() {
    }

    /** Arguments: the pack's folder and the file to write. Exit code 2 with all problems when the pack can't be used. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length != 2) {
            System.err.println("usage: PackBuild PACK-FOLDER FILE");
            System.exit(2);
        }
        Path folder = Path.of(arguments[0]);
        try {
            StoredPack pack = Packs.read(folder);
            Engine engine = Engine.compile(pack.pack(), Worksheets::run);
            List<Problem> problems = new ArrayList<>(Examples.failures(engine));
            problems.addAll(ClauseLint.problems(pack.pack()));
            problems.addAll(CalculationLint.problems(pack.pack()));
            if (!problems.isEmpty()) {
                throw new UnusableInput(problems);
            }
            BuiltPack.write(Path.of(arguments[1]), pack, engine);
            System.out.println(pack.pack().title() + ": " + pack.pack().components().size() + " components, "
                + pack.pack().rules().size() + " rules, "
                + pack.pack().calculations().size() + " worksheets, " + pack.pack().clauses().size() + " clauses");
        } catch (UnusableInput unusable) {
            unusable.problems().forEach(problem -> System.err.println(folder + "/" + problem));
            System.exit(2);
        }
    }
}

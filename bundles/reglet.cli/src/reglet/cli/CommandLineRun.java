package reglet.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import reglet.desk.Cancelled;
import reglet.desk.Faults;
import reglet.desk.Shelf;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** Runs one command line: finds the verb, and turns what goes wrong into messages and exit codes. */
public final class CommandLineRun {

    private CommandLineRun() {
    }

    /**
     * @param packs     the packs at hand; asked only when a verb needs one
     * @param arguments verb first
     * @return the exit code, see {@link ExitCodes}
     */
    public static int run(Callable<Shelf> packs, String[] arguments, PrintWriter out, PrintWriter err) {
        Session session = new Session(packs, out, err);
        CommandLine line = new CommandLine(new Reglet(), new Verbs(session))
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setExecutionExceptionHandler((thrown, verb, parsed) -> explain(thrown, err))
            .setExitCodeExceptionMapper(thrown -> ExitCodes.UNUSABLE);
        int code = line.execute(arguments);
        out.flush();
        err.flush();
        return code;
    }

    private static int explain(Exception thrown, PrintWriter err) {
        if (thrown instanceof UnusableInput unusable) {
            for (Problem problem : unusable.problems()) {
                err.println(problem);
            }
            return ExitCodes.UNUSABLE;
        }
        if (thrown instanceof Cancelled) {
            err.println("cancelled; what was written is whole");
            return ExitCodes.UNUSABLE;
        }
        if (thrown instanceof NoSuchFileException missing) {
            err.println(missing.getFile() + ": there is no such file; expected a file that can be read");
            return ExitCodes.UNUSABLE;
        }
        if (thrown instanceof IOException unreachable) {
            err.println(unreachable.getMessage() + "; expected a file that can be read or written");
            return ExitCodes.UNUSABLE;
        }
        Path log = Faults.log(thrown);
        err.println("reglet: our own fault: " + thrown + "; please keep the log " + log);
        return ExitCodes.FAULT;
    }
}

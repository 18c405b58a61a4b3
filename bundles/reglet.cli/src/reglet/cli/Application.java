package reglet.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

import reglet.desk.InstalledPacks;

/** The headless application that the start script runs. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        context.applicationRunning();
        return CommandLineRun.run(InstalledPacks::shelf, arguments, new PrintWriter(System.out, true, StandardCharsets.UTF_8),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8));
    }

    @Override
    public void stop() {
        // every verb ends by itself
    }
}

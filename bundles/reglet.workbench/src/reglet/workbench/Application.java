package reglet.workbench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferenceConstants;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;

import reglet.desk.Drafts;
import reglet.workbench.settings.Appearance;
import reglet.workbench.settings.Settings;

/** The window's application. Argument: a job folder; without one the window offers to open one. */
public final class Application implements IApplication {
    static final String BUNDLE = "reglet.workbench";
    private static final String PLATFORM = "org.eclipse.ui";

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Optional<Path> job = Arrays.stream(arguments).filter(argument -> !argument.startsWith("-")).findFirst().map(Path::of);
        return run(job, () -> { }) == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
    }

    /**
     * Opens the window on the calling thread, which becomes the window's own, and returns when it is closed.
     *
     * @param job    folder of the job to open; empty for none
     * @param opened called when the window is up
     */
    static int run(Optional<Path> job, Runnable opened) {
        var defaults = DefaultScope.INSTANCE.getNode(PLATFORM);
        // keys of our own commands only: nothing of the platform's that has no place in this window
        defaults.put("KEY_CONFIGURATION_ID", "reglet.workbench.keys");
        defaults.putBoolean(IWorkbenchPreferenceConstants.SHOW_PROGRESS_ON_STARTUP, false);
        defaults.putBoolean(IWorkbenchPreferenceConstants.SHOW_MEMORY_MONITOR, false);
        // charts are drawn into memory; no second window toolkit may start beside this one
        System.setProperty("java.awt.headless", "true");
        System.setProperty(Renderers.SETTING, Renderers.PLACE);
        Display display = PlatformUI.createDisplay();
        try {
            Display.setAppName("Reglet");
            // our own style sheet leaves fonts and colours to the system, so that dark and high contrast themes reach every control
            InstanceScope.INSTANCE.getNode("org.eclipse.e4.ui.css.swt.theme")
                .put("themeid", Appearance.theme(Settings.store().getString(Settings.THEME)));
            Session session = new Session(display, () -> PlatformUI.getWorkbench().getOperationSupport().getOperationHistory(),
                () -> PlatformUI.getWorkbench().getOperationSupport().getUndoContext(), new Recent(InstanceScope.INSTANCE.getNode(BUNDLE)),
                new Drafts(Platform.getStateLocation(FrameworkUtil.getBundle(Application.class)).append("typed").toPath()));
            job.ifPresent(session::open);
            return PlatformUI.createAndRunWorkbench(display, new Advisor(session, new Appearance(display), opened));
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}

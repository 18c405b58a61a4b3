package reglet.workbench;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.WorkbenchAdvisor;

/** A workbench of the platform with an empty perspective, which closes as soon as it is open: what the window is measured by. */
public final class EmptyWindow implements IApplication {
    private static final String NOTHING = "reglet.workbench.nothing";

    /** Shows nothing. */
    public static final class Nothing implements IPerspectiveFactory {
        @Override
        public void createInitialLayout(IPageLayout layout) {
            layout.setEditorAreaVisible(false);
        }
    }

    @Override
    public Object start(IApplicationContext context) {
        Display display = PlatformUI.createDisplay();
        try {
            PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {
                @Override
                public String getInitialWindowPerspectiveId() {
                    return NOTHING;
                }

                @Override
                public void postStartup() {
                    display.asyncExec(() -> {
                        WindowBench.usable();
                        PlatformUI.getWorkbench().close();
                    });
                }
            });
            return EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        // the window closes itself
    }
}

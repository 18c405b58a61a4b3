package reglet.workbench;

import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.events.ShellAdapter;
import org.eclipse.swt.events.ShellEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import reglet.workbench.settings.Appearance;

/** Sets the window up: what it shows of the platform, its title and its status line. */
final class Advisor extends WorkbenchAdvisor {
    /** Milliseconds. */
    private static final long CLASSES_AFTER = 1000;
    private final Session session;
    private final Appearance appearance;
    private final Runnable opened;

    Advisor(Session session, Appearance appearance, Runnable opened) {
        this.session = session;
        this.appearance = appearance;
        this.opened = opened;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public void preStartup() {
        // parts and handlers ask their site for the session
        PlatformUI.getWorkbench().getService(IEclipseContext.class).set(Session.class, session);
    }

    @Override
    public void postStartup() {
        appearance.follow(PlatformUI.getWorkbench().getService(IThemeEngine.class), session::showAnew);
        session.started();
        // behind what the person waits for
        new ClassesAhead().schedule(CLASSES_AFTER);
        opened.run();
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return DraftPerspective.ID;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new Window(configurer);
    }

    /** The one window. */
    private final class Window extends WorkbenchWindowAdvisor implements Session.Listener {

        Window(IWorkbenchWindowConfigurer configurer) {
            super(configurer);
        }

        @Override
        public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
            return new ActionBarAdvisor(configurer) {
                @Override
                protected void fillStatusLine(IStatusLineManager line) {
                    line.add(new StatusWords(session));
                    line.add(new RunningItem(session.work()));
                }
            };
        }

        @Override
        public void preWindowOpen() {
            IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
            Rectangle screen = PlatformUI.getWorkbench().getDisplay().getPrimaryMonitor().getClientArea();
            configurer.setInitialSize(new Point(Math.min(1500, screen.width), Math.min(1000, screen.height)));
            configurer.setShowMenuBar(true);
            configurer.setShowCoolBar(false);
            configurer.setShowPerspectiveBar(false);
            configurer.setShowStatusLine(true);
            // what runs is told in the status line, with the way to stop it
            configurer.setShowProgressIndicator(false);
            configurer.setTitle("Reglet");
        }

        @Override
        public void postWindowOpen() {
            session.listen(this);
            getWindowConfigurer().getWindow().getShell().addShellListener(new ShellAdapter() {
                @Override
                public void shellActivated(ShellEvent event) {
                    session.lookForChanges();
                }
            });
            jobChanged();
        }

        @Override
        public void postWindowClose() {
            session.leave(this);
            session.end();
        }

        @Override
        public void jobChanged() {
            getWindowConfigurer().setTitle(session.snapshot().map(now -> "Reglet – " + now.job().job().title()).orElse("Reglet"));
        }
    }
}

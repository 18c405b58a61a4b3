package reglet.workbench;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** What is to be done on the window's thread, one after the other, each in a turn of its own. Safe for use by several threads. */
final class Turns {
    private final Display display;
    private final Queue<Runnable> waiting = new ConcurrentLinkedQueue<>();

    Turns(Display display) {
        this.display = display;
    }

    /** Does it when its turn comes, unless the window is gone by then. */
    void take(Runnable work) {
        if (!display.isDisposed()) {
            waiting.add(work);
            display.asyncExec(this::next);
        }
    }

    private boolean next() {
        Runnable work = waiting.poll();
        if (work != null) {
            work.run();
        }
        return work != null;
    }

    /**
     * While the window starts, the platform lets everything wait that is to be done on its thread. A view that is being made then asks for
     * it: a job that has been opened meanwhile is shown at once, and nothing is made for a window without one.
     */
    void catchUp() {
        if (PlatformUI.getWorkbench().isStarting()) {
            while (next()) {
                // until nothing waits
            }
        }
    }
}

package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

import org.eclipse.swt.widgets.Display;

/** What is to be done on the window's thread, one after the other, each in a turn of its own. Safe for use by several threads. */
final class Turns {
    private static final String KEY = "reglet.turns";
    private final Display display;
    private final Queue<Runnable> waiting = new ConcurrentLinkedQueue<>();
    /** What may wait until the window has started; none once it has. Of the window's thread. */
    private List<Runnable> afterwards = new ArrayList<>();

    private Turns(Display display) {
        this.display = display;
    }

    /** Those of a window; there is one order of turns, whoever asks for them. */
    static Turns of(Display display) {
        if (display.getData(KEY) instanceof Turns turns) {
            return turns;
        }
        Turns turns = new Turns(display);
        display.setData(KEY, turns);
        return turns;
    }

    /** Does it now, or once the window has started: what is worked out beside it would keep the window's own thread from getting there. */
    void afterStart(Runnable work) {
        if (afterwards != null) {
            afterwards.add(work);
        } else {
            work.run();
        }
    }

    /** Whether the window stands, with all its views. */
    boolean areStarted() {
        return afterwards == null;
    }

    /** The window stands, with all its views. */
    void started() {
        List<Runnable> all = afterwards;
        afterwards = null;
        display.asyncExec(() -> all.forEach(Runnable::run));
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
        if (afterwards != null) {
            while (next()) {
                // until nothing waits
            }
        }
    }
}

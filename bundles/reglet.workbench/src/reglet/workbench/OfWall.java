package reglet.workbench;

import java.util.function.Consumer;

import org.eclipse.swt.widgets.Control;

/**
 * What is worked out beside the window's thread for the wall type in focus, anew whenever the job or the wall type is another.
 *
 * @param <T> what comes of it
 */
final class OfWall<T> {
    private final Latest latest;
    private final String name;
    private final Work<T> work;
    private final Consumer<T> answer;
    private Snapshot asked;
    private String wall = "";

    /** Works it out; takes time. */
    interface Work<T> {
        T of(Snapshot now, String wall) throws Exception;
    }

    /** How what is shown stands to what is in focus. */
    enum State { NO_JOB, ASKED, SAME }

    /**
     * @param name   what is done, in words before the wall type's id
     * @param answer given the result on the window's thread
     */
    OfWall(Control control, String name, Work<T> work, Consumer<T> answer) {
        this.latest = new Latest(control);
        this.name = name;
        this.work = work;
        this.answer = answer;
    }

    /** Asks for the wall type in focus unless it was asked for already. */
    State follow(Session session) {
        Snapshot now = session.seen().orElse(null);
        String focus = session.focus().wall();
        if (now == null || focus.isEmpty()) {
            latest.cancel();
            asked = null;
            return State.NO_JOB;
        }
        if (now == asked && focus.equals(wall)) {
            return State.SAME;
        }
        asked = now;
        wall = focus;
        latest.ask(name + " " + focus, monitor -> work.of(now, focus), answer);
        return State.ASKED;
    }

    /** The job that was asked about last; null for none. */
    Snapshot asked() {
        return asked;
    }

    String wall() {
        return wall;
    }
}

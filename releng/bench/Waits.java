package reglet.workbench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;

import org.eclipse.swt.widgets.Display;

/**
 * How long the window's thread works at a stretch before it could answer a key or the mouse: a timer stands in its queue of events, as
 * a key does, and the time between two of its turns counts, on the clock and in the thread's own processor time, to which a busy
 * machine adds little.
 */
final class Waits {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    /** Milliseconds between two turns of the timer. */
    private static final int TURN = 2;
    /** Milliseconds of processor time from which on a stretch is told with its moment, for whoever looks for its reason. */
    private static final double TOLD = Double.parseDouble(System.getProperty("reglet.bench.told", "1000000"));
    private final Display display;
    private volatile String flow = "";
    private volatile double longest;
    private volatile double busiest;
    private long last;
    private long worked;

    Waits(Display display) {
        this.display = display;
        display.syncExec(() -> {
            last = System.nanoTime();
            worked = THREADS.getCurrentThreadCpuTime();
            display.timerExec(TURN, this::turn);
        });
    }

    private void turn() {
        long now = System.nanoTime();
        long work = THREADS.getCurrentThreadCpuTime();
        double waited = (now - last) / 1e6 - TURN;
        double busy = (work - worked) / 1e6;
        longest = Math.max(longest, waited);
        busiest = Math.max(busiest, busy);
        last = now;
        worked = work;
        if (busy > TOLD) {
            long moment = System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
            System.out.printf(Locale.ROOT, "stretch %s: %.0f ms, from %.0f to %d ms%n", flow, busy, moment - waited, moment);
        }
        display.timerExec(TURN, this::turn);
    }

    /** What is done from now on, in words. */
    void begin(String name) {
        flow = name;
        longest = 0;
        busiest = 0;
    }

    /** Says what the longest stretches since the beginning were. */
    void end(String size) {
        System.out.printf(Locale.ROOT, "bench %s, window's thread at a stretch, %s: on the clock %.1f ms, processor time %.1f ms%n", size,
            flow,
            longest, busiest);
    }
}

package reglet.workbench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.swt.widgets.Display;

/**
 * Watches the window's thread: how long it works at a stretch before it answers again, in its own processor time, so that a busy
 * machine changes nothing, and whose code it runs meanwhile.
 */
final class Watch implements AutoCloseable {
    /**
     * Longest stretch that is let pass, in milliseconds: three times the 50 that a person doesn't notice, for tests run code that has
     * run only a few times. The window's bench measures against the 50.
     */
    private static final double LIMIT = 150;
    /** Code that works things out or writes files; none of it may run on the window's thread. */
    private static final Pattern SLOW = Pattern.compile(
        "OpenJob\\.(checked|assembly|details|calculated|worksheets|section|choosing)|Snapshot\\.of|SafeFile|Saving\\.(choose|set|apply)");
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private final Display display = Workbench.display();
    private final Thread window = display.getThread();
    private final List<String> tooLong = new CopyOnWriteArrayList<>();
    private final Set<String> misplaced = new LinkedHashSet<>();
    private final Thread watch = new Thread(this::look, "watch");
    private volatile boolean over;
    private volatile boolean waiting;

    Watch() {
        watch.setDaemon(true);
        watch.start();
    }

    private void look() {
        List<String> seen = List.of();
        while (!over && !display.isDisposed()) {
            if (!waiting) {
                seen = new CopyOnWriteArrayList<>();
                ask(seen);
            }
            try {
                Thread.sleep(3);
            } catch (InterruptedException stopped) {
                return;
            }
            String stack = stack();
            if (SLOW.matcher(stack).find()) {
                misplaced.add(stack);
            }
            if (waiting && seen.size() < 200) {
                seen.add(stack);
            }
        }
    }

    private void ask(List<String> seen) {
        waiting = true;
        long before = THREADS.getThreadCpuTime(window.getId());
        display.asyncExec(() -> {
            double took = (THREADS.getThreadCpuTime(window.getId()) - before) / 1e6;
            if (took > LIMIT) {
                tooLong.add(String.format(Locale.ROOT, "%.0f ms at a stretch:%n", took) + String.join("\n", seen));
            }
            waiting = false;
        });
    }

    private String stack() {
        return Arrays.stream(window.getStackTrace()).filter(frame -> !frame.getClassName().startsWith("java.")).limit(60)
            .map(frame -> frame.getClassName().replaceFirst(".*\\.", "") + "." + frame.getMethodName() + ":" + frame.getLineNumber())
            .collect(Collectors.joining(" < "));
    }

    /** The stretches over the limit, each with where the thread stood every few milliseconds. */
    List<String> tooLong() {
        return List.copyOf(tooLong);
    }

    /** Ends watching; gives where the thread stood in code that has no place there. */
    List<String> misplaced() {
        close();
        return List.copyOf(misplaced);
    }

    @Override
    public void close() {
        over = true;
        try {
            watch.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}

package reglet.workbench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.WallType;

/**
 * The window's times, measured within the window. Arguments: a job folder that may be changed, and "start" to end as soon as the
 * window can be used, "flows" for the sample, or a number of wall types to grow the job to first.
 */
public final class WindowBench implements IApplication {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WARM = 40;
    /** Milliseconds within which what a start does beside the window is over. */
    private static final int STARTED = 5_000;
    private static final int ROUNDS = 100;

    @Override
    public Object start(IApplicationContext context) throws Exception {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Path job = Path.of(arguments[0]);
        String what = arguments[1];
        if (!what.equals("start") && !what.equals("flows")) {
            grow(job, Integer.parseInt(what));
        }
        AtomicBoolean failed = new AtomicBoolean();
        Application.run(Optional.of(job), () -> {
            Thread flows = new Thread(() -> {
                try {
                    Session session = PlatformUI.getWorkbench().getService(Session.class);
                    WindowFlows.await(() -> session.snapshot().isPresent() && !session.focus().wall().isEmpty());
                    if (!what.equals("start")) {
                        flows(session);
                    }
                } catch (Exception | Error thrown) {
                    thrown.printStackTrace();
                    failed.set(true);
                } finally {
                    Display display = PlatformUI.getWorkbench().getDisplay();
                    display.asyncExec(() -> {
                        usable();
                        PlatformUI.getWorkbench().close();
                    });
                }
            }, "flows");
            flows.setDaemon(true);
            flows.start();
        });
        return failed.get() ? Integer.valueOf(3) : EXIT_OK;
    }

    @Override
    public void stop() {
        // the window closes itself
    }

    /** Says how long the process has run; called on the window's thread, which is free then. */
    static void usable() {
        long clock = System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
        long process = ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
        System.out.printf("usable after %d ms; processor time of its thread %d ms, of all %d ms%n", clock,
            THREADS.getCurrentThreadCpuTime() / 1_000_000, process / 1_000_000);
    }

    /** Copies the first wall type until there are so many. */
    private static void grow(Path job, int walls) throws IOException {
        String page = Files.readString(job.resolve("job.yaml"), StandardCharsets.UTF_8);
        String wall = Files.readString(job.resolve("walls/W1.yaml"), StandardCharsets.UTF_8);
        List<String> ids = new ArrayList<>();
        for (int i = 1; i <= walls; i++) {
            ids.add("W" + i);
            Files.writeString(job.resolve("walls/W" + i + ".yaml"), wall, StandardCharsets.UTF_8);
        }
        Files.writeString(job.resolve("job.yaml"), page.replaceFirst("(?m)^walls: .*$", "walls: [" + String.join(", ", ids) + "]"),
            StandardCharsets.UTF_8);
    }

    private static void flows(Session session) throws Exception {
        Snapshot now = session.snapshot().orElseThrow();
        String size = now.job().job().walls().size() + " wall types";
        Component lath = now.component("lath").orElseThrow();
        Job job = now.job().job();
        WallType wall = job.wall("W1").orElseThrow();
        Choice choice = wall.choice(lath.id()).orElseThrow();
        double[] findings = new double[ROUNDS];
        double[] drawing = new double[ROUNDS];
        double[] section = new double[ROUNDS];
        double[] worked = new double[ROUNDS];
        long begun = System.currentTimeMillis();
        for (int round = -WARM; round < ROUNDS; round++) {
            if (round == 0 && System.currentTimeMillis() - begun < STARTED) {
                round = -1;
            }
            Option option = lath.options().get(Math.floorMod(round, lath.options().size()));
            // with a reason of its own each time: nothing kept from a round before may serve this one
            Job changed = job.with(wall.with(new Choice(lath.id(), List.of(option.id()), choice.values(), choice.by(), "round " + round,
                choice.at())));
            long work = THREADS.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            Snapshot next = Snapshot.of(now.job().with(changed));
            long checked = System.nanoTime();
            next.job().details("W1");
            long drawn = System.nanoTime();
            next.job().section(lath.section());
            long drafted = System.nanoTime();
            if (round >= 0) {
                findings[round] = (checked - start) / 1e6;
                drawing[round] = (drawn - checked) / 1e6;
                section[round] = (drafted - drawn) / 1e6;
                worked[round] = (THREADS.getCurrentThreadCpuTime() - work) / 1e6;
            }
        }
        say(size, "choice to findings", findings);
        say(size, "drawing", drawing);
        say(size, "section preview", section);
        say(size, "all three, processor time", worked);
        new WindowFlows(session, lath, size).run();
    }

    private static void say(String size, String what, double[] took) {
        Arrays.sort(took);
        System.out.printf(Locale.ROOT, "bench %s, %s: half of them %.1f ms, p95 %.1f ms%n", size, what, took[took.length / 2],
            took[(int) (took.length * 0.95)]);
    }
}

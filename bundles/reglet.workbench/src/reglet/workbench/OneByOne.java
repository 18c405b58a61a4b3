package reglet.workbench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.ProgressMonitorWrapper;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;

import reglet.desk.Faults;
import reglet.desk.Progress;
import reglet.model.UnusableInput;

/** Work beside the window's thread, one piece after the other; tells what is under way, and can be asked to stop it. */
public final class OneByOne {
    private final BiConsumer<String, Boolean> say;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    /** What the person sees of the work under way, the newest last. */
    private final List<Running> told = new ArrayList<>();
    private volatile Optional<Running> running = Optional.empty();

    private final ISchedulingRule rule = new ISchedulingRule() {
        @Override
        public boolean contains(ISchedulingRule other) {
            return other == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule other) {
            return other == this;
        }
    };

    /** A piece of work. */
    public interface Work {
        void on(IProgressMonitor monitor) throws IOException, UnusableInput;
    }

    /**
     * Work that is under way.
     *
     * @param name what is done
     * @param step what of it just now; "" when it has no steps
     * @param done share done, from 0 to 1; negative when that isn't known
     */
    record Running(String name, String step, double done, Job job) {
        String words() {
            return name + (step.isEmpty() ? "" : ": " + step) + (done < 0 ? "" : " (" + Math.round(done * 100) + " %)");
        }
    }

    /** @param say told what went wrong, in words */
    OneByOne(BiConsumer<String, Boolean> say) {
        this.say = say;
    }

    /** Told beside the window's thread when {@link #running} changes. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    void leave(Runnable listener) {
        listeners.remove(listener);
    }

    /** The work under way that the person should see; empty when there is none. */
    Optional<Running> running() {
        return running;
    }

    /** Asks the work under way to stop where it can. */
    void cancel() {
        running.ifPresent(now -> now.job().cancel());
    }

    /** @param shown whether the person sees that it runs and can stop it */
    public void run(String name, boolean shown, Work work) {
        Job[] self = new Job[1];
        self[0] = Job.create(name, (ICoreRunnable) monitor -> {
            if (shown) {
                begin(name, self[0]);
            }
            try {
                work.on(shown ? new Told(monitor, name, self[0]) : monitor);
            } catch (UnusableInput unusable) {
                say.accept(name + ": " + unusable.getMessage(), true);
            } catch (IOException unreachable) {
                say.accept(name + ": " + unreachable.getMessage(), true);
            } catch (RuntimeException | Error fault) {
                say.accept("This is our own fault, not yours; a log is at " + Faults.log(fault), true);
                throw fault;
            } finally {
                end(self[0]);
            }
        });
        self[0].setRule(rule);
        self[0].setSystem(!shown);
        self[0].setPriority(shown ? Job.LONG : Job.INTERACTIVE);
        self[0].schedule();
    }

    /** Tells of work that doesn't wait for its turn here; {@link #end} has to follow. */
    void begin(String name, Job job) {
        tell(job, Optional.of(new Running(name, "", -1, job)));
    }

    /** Work is over, whether it was told of or not. */
    void end(Job job) {
        tell(job, Optional.empty());
    }

    private void tell(Job job, Optional<Running> now) {
        synchronized (told) {
            told.removeIf(one -> one.job() == job);
            now.ifPresent(told::add);
            running = told.isEmpty() ? Optional.empty() : Optional.of(told.get(told.size() - 1));
        }
        listeners.forEach(Runnable::run);
    }

    /** Passes on to the platform, and tells the window. */
    private final class Told extends ProgressMonitorWrapper {
        private final String name;
        private final Job job;
        private int total;
        private int worked;
        private String step = "";

        Told(IProgressMonitor monitor, String name, Job job) {
            super(monitor);
            this.name = name;
            this.job = job;
        }

        @Override
        public void beginTask(String task, int of) {
            total = of;
            super.beginTask(task, of);
        }

        @Override
        public void worked(int work) {
            worked += work;
            super.worked(work);
            told();
        }

        @Override
        public void subTask(String now) {
            step = now;
            super.subTask(now);
            told();
        }

        private void told() {
            tell(job, Optional.of(new Running(name, step, total > 0 ? Math.min(1, (double) worked / total) : -1, job)));
        }
    }

    /** Progress of the desk as the platform's. */
    public static final class MonitorProgress implements Progress {
        private final IProgressMonitor monitor;
        private int done;

        public MonitorProgress(IProgressMonitor monitor) {
            this.monitor = monitor;
        }

        @Override
        public void step(int now, int of, String what) {
            if (now == 0) {
                monitor.beginTask("", of);
            }
            monitor.worked(now - done);
            done = now;
            monitor.subTask(what);
        }

        @Override
        public boolean cancelled() {
            return monitor.isCanceled();
        }
    }
}

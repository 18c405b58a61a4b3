package reglet.workbench;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/**
 * Work beside the window's thread whose newest question alone is answered: asking again cancels what runs, and an answer that
 * comes too late, or after the control is gone, is dropped. Used on the window's thread.
 */
public final class Latest {
    private final Control control;
    private final Optional<OneByOne> told;
    private Job running;

    /** Work that may be cancelled between its steps. */
    public interface Work<T> {
        T of(IProgressMonitor monitor) throws Exception;
    }

    public Latest(Control control) {
        this(control, Optional.empty());
    }

    /** Work that the status line tells of and lets the person stop; its thread is interrupted when nobody waits for it any more. */
    public Latest(Control control, OneByOne told) {
        this(control, Optional.of(told));
    }

    private Latest(Control control, Optional<OneByOne> told) {
        this.control = control;
        this.told = told;
        control.addDisposeListener(event -> cancel());
    }

    /**
     * @param name   what is done, in words
     * @param work   done beside the window's thread
     * @param answer given the result on the window's thread
     */
    public <T> void ask(String name, Work<T> work, Consumer<T> answer) {
        cancel();
        Job job = new Job(name) {
            @Override
            protected void canceling() {
                Thread thread = getThread();
                if (told.isPresent() && thread != null) {
                    thread.interrupt();
                }
            }

            @Override
            protected IStatus run(IProgressMonitor monitor) {
                told.ifPresent(work -> work.begin(name, this));
                try {
                    T result = work.of(monitor);
                    Ui.later(control, () -> {
                        if (running == this) {
                            running = null;
                            answer.accept(result);
                        }
                    });
                    return Status.OK_STATUS;
                } catch (OperationCanceledException cancelled) {
                    return Status.CANCEL_STATUS;
                } catch (Exception failed) {
                    return Status.error(name + ": " + failed.getMessage(), failed);
                } finally {
                    told.ifPresent(work -> work.end(this));
                    Thread.interrupted();
                }
            }
        };
        job.setSystem(true);
        job.setPriority(Job.INTERACTIVE);
        running = job;
        Turns.of(control.getDisplay()).afterStart(() -> {
            if (running == job) {
                job.schedule();
            }
        });
    }

    public void cancel() {
        if (running != null) {
            running.cancel();
            running = null;
        }
    }
}

package reglet.workbench;

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
    private Job running;

    /** Work that may be cancelled between its steps. */
    public interface Work<T> {
        T of(IProgressMonitor monitor) throws Exception;
    }

    Latest(Control control) {
        this.control = control;
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
            protected IStatus run(IProgressMonitor monitor) {
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
                }
            }
        };
        job.setSystem(true);
        job.setPriority(Job.INTERACTIVE);
        running = job;
        job.schedule();
    }

    public void cancel() {
        if (running != null) {
            running.cancel();
            running = null;
        }
    }
}

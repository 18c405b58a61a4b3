package reglet.workbench;

import java.io.IOException;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

import reglet.desk.OpenJob;
import reglet.desk.Saving;
import reglet.model.UnusableInput;

/**
 * A change of one of the job's files that can be taken back. Undo puts the earlier text of the file back, but only over the text
 * that this change left: what another program wrote since is never overwritten.
 */
final class Edit extends AbstractOperation {
    private final String file;
    private final Session session;
    private final Change change;
    private String before;
    private String after;

    /** What the change does: a job to the job that is read afterwards. */
    interface Change {
        OpenJob of(OpenJob job) throws UnusableInput, IOException;
    }

    Edit(String label, String file, Session session, Change change, IUndoContext context) {
        super(label);
        this.file = file;
        this.session = session;
        this.change = change;
        addContext(context);
    }

    @Override
    public IStatus execute(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return take("", () -> {
            OpenJob job = session.job();
            before = Saving.text(job, file);
            OpenJob changed = change.of(job);
            after = Saving.text(changed, file);
            return changed;
        });
    }

    @Override
    public IStatus undo(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return put(after, before, "Undone: " + getLabel());
    }

    @Override
    public IStatus redo(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return put(before, after, "Done again: " + getLabel());
    }

    private IStatus put(String expected, String text, String words) throws ExecutionException {
        try {
            if (!Saving.text(session.job(), file).equals(expected)) {
                return Status.error(file + " was changed outside since \"" + getLabel() + "\"; it is left as it is.");
            }
        } catch (IOException unreachable) {
            throw new ExecutionException(file + ": " + unreachable.getMessage(), unreachable);
        }
        return take(words, () -> Saving.restore(session.job(), file, text));
    }

    private interface Step {
        OpenJob take() throws UnusableInput, IOException;
    }

    private IStatus take(String words, Step step) throws ExecutionException {
        try {
            session.changed(step.take(), words);
            return Status.OK_STATUS;
        } catch (UnusableInput | IOException refused) {
            throw new ExecutionException(refused.getMessage(), refused);
        }
    }
}

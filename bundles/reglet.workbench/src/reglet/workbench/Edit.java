package reglet.workbench;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

import reglet.desk.Brought;
import reglet.desk.OpenJob;
import reglet.desk.Saving;
import reglet.model.UnusableInput;

/**
 * A change of some of the job's files that can be taken back. Undo puts the earlier texts of the files back, but only over those
 * that this change left: what another program wrote since is never overwritten. A data sheet that the change copied goes with it.
 */
public final class Edit extends AbstractOperation {
    private final List<String> files;
    private final List<String> copies;
    private final Session session;
    private final Change change;
    private Map<String, String> before = Map.of();
    private Map<String, String> after = Map.of();
    private Brought brought;

    /** What the change does: a job to the job that is read afterwards. */
    public interface Change {
        OpenJob of(OpenJob job) throws UnusableInput, IOException;
    }

    /**
     * @param files  the texts that it may change
     * @param copies other files that it may bring into the job's folder
     */
    Edit(String label, List<String> files, List<String> copies, Session session, Change change, IUndoContext context) {
        super(label);
        this.files = List.copyOf(files);
        this.copies = List.copyOf(copies);
        this.session = session;
        this.change = change;
        addContext(context);
    }

    List<String> files() {
        return files;
    }

    /** The text of one of the files before the change. */
    String before(String file) {
        return before.getOrDefault(file, "");
    }

    /** The text of one of the files as the change left it. */
    String after(String file) {
        return after.getOrDefault(file, "");
    }

    @Override
    public IStatus execute(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return take("", () -> {
            OpenJob job = session.job();
            before = texts(job);
            List<String> absent = Brought.absent(job, copies);
            OpenJob changed = change.of(job);
            after = texts(changed);
            brought = Brought.of(changed, absent);
            return changed;
        });
    }

    @Override
    public IStatus undo(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return put(after, before, "Undone: " + getLabel(), texts -> {
            OpenJob job = Saving.restore(session.job(), texts);
            brought.takeBack(job);
            return job;
        });
    }

    @Override
    public IStatus redo(IProgressMonitor monitor, IAdaptable info) throws ExecutionException {
        return put(before, after, "Done again: " + getLabel(), texts -> {
            brought.again(session.job());
            return Saving.restore(session.job(), texts);
        });
    }

    private Map<String, String> texts(OpenJob job) throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String file : files) {
            texts.put(file, Saving.text(job, file));
        }
        return texts;
    }

    /** Puts texts in the place of others. */
    private interface Putting {
        OpenJob of(Map<String, String> texts) throws UnusableInput, IOException;
    }

    private IStatus put(Map<String, String> expected, Map<String, String> texts, String words, Putting putting) throws ExecutionException {
        try {
            Map<String, String> now = texts(session.job());
            for (String file : files) {
                if (!now.get(file).equals(expected.get(file))) {
                    return Status.error(file + " was changed outside since \"" + getLabel() + "\"; it is left as it is.");
                }
            }
        } catch (IOException unreachable) {
            throw new ExecutionException(String.join(", ", files) + ": " + unreachable.getMessage(), unreachable);
        }
        return take(words, () -> putting.of(texts));
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

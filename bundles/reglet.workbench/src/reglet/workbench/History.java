package reglet.workbench;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;

/** The changes of the open job that can be taken back; they stand in the platform's own history, which is there once the window is. */
final class History {
    private final Supplier<IOperationHistory> operations;
    private final Supplier<IUndoContext> context;

    History(Supplier<IOperationHistory> operations, Supplier<IUndoContext> context) {
        this.operations = operations;
        this.context = context;
    }

    /**
     * Makes a change; it can be taken back from now on.
     *
     * @throws ExecutionException when it can't be made, with the reason as its cause; nothing is changed then
     */
    void make(Session session, String label, List<String> files, List<String> copies, Edit.Change change, IProgressMonitor monitor)
            throws ExecutionException {
        operations.get().execute(new Edit(label, files, copies, session, change, context.get()), monitor, null);
    }

    IStatus undo() throws ExecutionException {
        return operations.get().undo(context.get(), null, null);
    }

    IStatus redo() throws ExecutionException {
        return operations.get().redo(context.get(), null, null);
    }

    /** The changes that could be taken back, the oldest first. */
    List<Edit> edits() {
        return Arrays.stream(operations.get().getUndoHistory(context.get())).filter(Edit.class::isInstance).map(Edit.class::cast).toList();
    }

    /** Changes of files whose texts are now another program's can't be taken back or made again any more. */
    void forget(Set<String> files) {
        IOperationHistory all = operations.get();
        for (IUndoableOperation[] some : List.of(all.getUndoHistory(context.get()), all.getRedoHistory(context.get()))) {
            for (IUndoableOperation operation : some) {
                if (operation instanceof Edit edit && edit.files().stream().anyMatch(files::contains)) {
                    all.replaceOperation(edit, new IUndoableOperation[0]);
                }
            }
        }
    }

    /** Another job: nothing of the one before can be taken back. */
    void clear() {
        operations.get().dispose(context.get(), true, true, false);
    }
}

package reglet.workbench;

import java.nio.file.Path;
import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IOperationHistoryListener;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

import reglet.workbench.section.SectionView;

/** What the commands do. */
public final class Handlers {

    private Handlers() {
    }

    /** A command on the session. */
    abstract static class OnSession extends AbstractHandler {

        @Override
        public final Object execute(ExecutionEvent event) throws ExecutionException {
            run(session(), HandlerUtil.getActiveWorkbenchWindowChecked(event), event);
            return null;
        }

        static Session session() {
            return PlatformUI.getWorkbench().getService(Session.class);
        }

        abstract void run(Session session, IWorkbenchWindow window, ExecutionEvent event) throws ExecutionException;
    }

    /** A command on an open job. */
    abstract static class OnJob extends OnSession {

        @Override
        public boolean isEnabled() {
            return session() != null && session().snapshot().isPresent();
        }
    }

    /** Opens the job folder given as the parameter, or asks for one. */
    public static final class Open extends OnSession {
        static final String COMMAND = "reglet.workbench.open";
        static final String FOLDER = "reglet.workbench.open.folder";

        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            String folder = event.getParameter(FOLDER);
            if (folder == null) {
                DirectoryDialog dialog = new DirectoryDialog(window.getShell(), SWT.OPEN);
                dialog.setText("Open a job folder");
                dialog.setMessage("The folder that holds the job.yaml");
                session.snapshot().ifPresent(now -> dialog.setFilterPath(now.job().folder().getParent().toString()));
                folder = dialog.open();
            }
            if (folder != null) {
                session.open(Path.of(folder));
            }
        }
    }

    /** Closes the job. */
    public static final class Close extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            session.close();
        }
    }

    /** Reads the job's files again. */
    public static final class Reload extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            session.reload();
        }
    }

    /** Writes the papers. */
    public static final class Write extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            session.writePapers();
        }
    }

    /** Goes back to drafting: the wall and its paper. */
    public static final class Draft extends OnSession {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) throws ExecutionException {
            try {
                window.getWorkbench().showPerspective(DraftPerspective.ID, window);
            } catch (WorkbenchException unavailable) {
                throw new ExecutionException("the wall and its paper can't be shown", unavailable);
            }
        }
    }

    /** Gives the section the width of a page, to write in it. */
    public static final class Page extends OnSession {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) throws ExecutionException {
            try {
                // a section that was in focus before counts as activated, though the new layout took the keyboard from it
                window.getWorkbench().showPerspective(WritePerspective.ID, window).showView(SectionView.ID).setFocus();
            } catch (WorkbenchException unavailable) {
                throw new ExecutionException("the section can't be shown", unavailable);
            }
        }
    }

    /** Goes to the next finding. */
    public static final class NextFinding extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) throws ExecutionException {
            step(window, 1);
        }
    }

    /** Goes to the finding before. */
    public static final class PreviousFinding extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) throws ExecutionException {
            step(window, -1);
        }
    }

    private static void step(IWorkbenchWindow window, int by) throws ExecutionException {
        try {
            FindingsView view = (FindingsView) window.getActivePage().showView(FindingsView.ID);
            view.onceFilled(() -> view.step(by));
        } catch (PartInitException unavailable) {
            throw new ExecutionException("the findings can't be shown", unavailable);
        }
    }

    /** Accepts the selected option. */
    public static final class Accept extends OnJob {
        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            if (window.getActivePage().findView(WallView.ID) instanceof WallView wall) {
                wall.onceFilled(() -> wall.options().accept(false));
            }
        }
    }

    /** Takes the last change back, or makes it again; its label says which. */
    abstract static class Step extends OnSession implements IElementUpdater {
        private final String command;
        private final String word;
        private final IOperationHistoryListener listener = event -> changed();

        Step(String command, String word) {
            this.command = command;
            this.word = word;
            history().addOperationHistoryListener(listener);
        }

        static IOperationHistory history() {
            return PlatformUI.getWorkbench().getOperationSupport().getOperationHistory();
        }

        static IUndoContext context() {
            return PlatformUI.getWorkbench().getOperationSupport().getUndoContext();
        }

        /** The change that the command would take back or make again; null for none. */
        abstract IUndoableOperation next();

        private void changed() {
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
                setBaseEnabled(next() != null);
                ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
                if (commands != null) {
                    commands.refreshElements(command, null);
                }
            });
        }

        @Override
        public boolean isEnabled() {
            return next() != null;
        }

        @Override
        public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
            element.setText(next() == null ? word : word + ": " + next().getLabel());
        }

        @Override
        public void dispose() {
            history().removeOperationHistoryListener(listener);
            super.dispose();
        }
    }

    /** Takes the last change back. */
    public static final class Undo extends Step {
        public Undo() {
            super("org.eclipse.ui.edit.undo", "Undo");
        }

        @Override
        IUndoableOperation next() {
            return history().getUndoOperation(context());
        }

        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            session.undo();
        }
    }

    /** Makes the change taken back last again. */
    public static final class Redo extends Step {
        public Redo() {
            super("org.eclipse.ui.edit.redo", "Redo");
        }

        @Override
        IUndoableOperation next() {
            return history().getRedoOperation(context());
        }

        @Override
        void run(Session session, IWorkbenchWindow window, ExecutionEvent event) {
            session.redo();
        }
    }
}

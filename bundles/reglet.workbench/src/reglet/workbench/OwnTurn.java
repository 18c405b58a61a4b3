package reglet.workbench;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;

/**
 * When the perspective changes the platform lays all views of all perspectives out at a stretch. What stands in a view waits for a turn of
 * its own, so that keys and the mouse are answered between.
 */
final class OwnTurn extends PerspectiveAdapter {
    private final Composite content;
    private boolean waits;

    private OwnTurn(Composite content) {
        this.content = content;
    }

    static void of(IWorkbenchWindow window, Composite content) {
        OwnTurn turn = new OwnTurn(content);
        window.addPerspectiveListener(turn);
        content.addDisposeListener(event -> window.removePerspectiveListener(turn));
    }

    @Override
    public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
        if (waits || content.isDisposed()) {
            return;
        }
        waits = true;
        content.setLayoutDeferred(true);
        // behind the platform's turn, which is asked for already, and that of the perspective, which is asked for there
        Ui.later(content, () -> Ui.later(content, () -> {
            waits = false;
            content.setLayoutDeferred(false);
        }));
    }
}

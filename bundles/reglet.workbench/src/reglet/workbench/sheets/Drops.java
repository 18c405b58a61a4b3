package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;

/** Files dropped onto a control. */
final class Drops {
    private Drops() {
    }

    /** @param dropped given the first of the files */
    static void on(Control control, Consumer<Path> dropped) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] files && files.length > 0) {
                    dropped.accept(Path.of(files[0]));
                }
            }
        });
    }
}

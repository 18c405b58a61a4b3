package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.handlers.HandlerUtil;

import reglet.workbench.Part;
import reglet.workbench.ReviewPerspective;
import reglet.workbench.Ui;

/** What the commands on data sheets and on the comparison do; each brings its view to the front. */
public final class SheetHandlers {
    private SheetHandlers() {
    }

    /** Opens a data sheet in its view. */
    public static void openSheet(IWorkbenchWindow window, Path file) {
        inFront(window, SheetsView.ID, SheetsView.class, view -> view.open(file));
    }

    /** Compares a submittal in the view for it. */
    public static void compare(IWorkbenchWindow window, String submittal) {
        inFront(window, ComparisonView.ID, ComparisonView.class, view -> view.compare(submittal));
    }

    /** Brings a view to the front where it has room, in the perspective for reviewing, and does something with it once it is filled. */
    private static <V extends Part> void inFront(IWorkbenchWindow window, String id, Class<V> type, Consumer<V> work) {
        Runnable front = () -> {
            try {
                V view = type.cast(window.getActivePage().showView(id));
                view.onceFilled(() -> work.accept(view));
            } catch (PartInitException unavailable) {
                throw new IllegalStateException(unavailable);
            }
        };
        IViewPart there = window.getActivePage().findView(id);
        if (there != null && window.getActivePage().isPartVisible(there)) {
            front.run();
            return;
        }
        try {
            window.getWorkbench().showPerspective(ReviewPerspective.ID, window);
        } catch (WorkbenchException unavailable) {
            throw new IllegalStateException(unavailable);
        }
        // the platform takes its time for each of both
        Ui.later(window.getShell(), front);
    }

    /** Shows a view where it has room: in the perspective for reviewing. */
    abstract static class OnView<V extends Part> extends AbstractHandler {
        private final String id;
        private final Class<V> type;

        OnView(String id, Class<V> type) {
            this.id = id;
            this.type = type;
        }

        @Override
        public final Object execute(ExecutionEvent event) throws ExecutionException {
            inFront(HandlerUtil.getActiveWorkbenchWindowChecked(event), id, type, this::on);
            return null;
        }

        abstract void on(V view);
    }

    /** Shows the data sheets. */
    public static final class ShowSheets extends OnView<SheetsView> {
        public ShowSheets() {
            super(SheetsView.ID, SheetsView.class);
        }

        @Override
        void on(SheetsView view) {
            // shown, and that is all
        }
    }

    /** Asks for a data sheet. */
    public static final class Open extends OnView<SheetsView> {
        public Open() {
            super(SheetsView.ID, SheetsView.class);
        }

        @Override
        void on(SheetsView view) {
            view.openAFile();
        }
    }

    /** Takes every value that is sure. */
    public static final class TakeSure extends OnView<SheetsView> {
        public TakeSure() {
            super(SheetsView.ID, SheetsView.class);
        }

        @Override
        void on(SheetsView view) {
            view.takeSure();
        }
    }

    /** Writes the values that are taken. */
    public static final class Write extends OnView<SheetsView> {
        public Write() {
            super(SheetsView.ID, SheetsView.class);
        }

        @Override
        void on(SheetsView view) {
            view.write();
        }
    }

    /** Shows the comparison. */
    public static final class ShowComparison extends OnView<ComparisonView> {
        public ShowComparison() {
            super(ComparisonView.ID, ComparisonView.class);
        }

        @Override
        void on(ComparisonView view) {
            // shown, and that is all
        }
    }

    /** Goes to the next requirement that is not met. */
    public static final class NextShortfall extends OnView<ComparisonView> {
        public NextShortfall() {
            super(ComparisonView.ID, ComparisonView.class);
        }

        @Override
        void on(ComparisonView view) {
            view.step(1);
        }
    }

    /** Goes to the requirement before that is not met. */
    public static final class PreviousShortfall extends OnView<ComparisonView> {
        public PreviousShortfall() {
            super(ComparisonView.ID, ComparisonView.class);
        }

        @Override
        void on(ComparisonView view) {
            view.step(-1);
        }
    }
}

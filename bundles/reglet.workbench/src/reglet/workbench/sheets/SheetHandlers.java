package reglet.workbench.sheets;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.handlers.HandlerUtil;

import reglet.workbench.Part;
import reglet.workbench.ReviewPerspective;

/** What the commands on data sheets and on the comparison do; each brings its view to the front. */
public final class SheetHandlers {
    private SheetHandlers() {
    }

    /** Opens a data sheet in its view. */
    public static void openSheet(IWorkbenchWindow window, Path file) {
        try {
            SheetsView view = (SheetsView) shown(window, SheetsView.ID);
            view.onceFilled(() -> view.open(file));
        } catch (WorkbenchException unavailable) {
            throw new IllegalStateException(unavailable);
        }
    }

    /** Compares a submittal in the view for it. */
    public static void compare(IWorkbenchWindow window, String submittal) {
        try {
            ComparisonView view = (ComparisonView) shown(window, ComparisonView.ID);
            view.onceFilled(() -> view.compare(submittal));
        } catch (WorkbenchException unavailable) {
            throw new IllegalStateException(unavailable);
        }
    }

    /** A view in front, where it has room. */
    private static IViewPart shown(IWorkbenchWindow window, String id) throws WorkbenchException {
        IViewPart there = window.getActivePage().findView(id);
        if (there == null || !window.getActivePage().isPartVisible(there)) {
            window.getWorkbench().showPerspective(ReviewPerspective.ID, window);
        }
        return window.getActivePage().showView(id);
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
            try {
                V view = type.cast(shown(HandlerUtil.getActiveWorkbenchWindowChecked(event), id));
                view.onceFilled(() -> on(view));
                return null;
            } catch (WorkbenchException unavailable) {
                throw new ExecutionException("the view can't be shown", unavailable);
            }
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

package reglet.workbench.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the help page of the view in focus. */
public final class HelpHandler extends AbstractHandler {
    private static final String PAGE = "reglet.workbench.help.page";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        String view = HandlerUtil.getActivePartId(event);
        String page = event.getParameter(PAGE);
        try {
            HelpView help = (HelpView) window.getActivePage().showView(HelpView.ID);
            if (page != null) {
                help.show(page);
            } else if (view != null && !view.equals(HelpView.ID)) {
                help.show(HelpPages.of(view));
            }
            return null;
        } catch (PartInitException unavailable) {
            throw new ExecutionException("the help can't be shown", unavailable);
        }
    }
}

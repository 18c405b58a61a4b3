package reglet.workbench.section;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** The commands on the section; plugin.xml names the one behind the class: "…SectionHandler:WRITE". */
public final class SectionHandler extends AbstractHandler implements IExecutableExtension {
    private SectionView.Command command;

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object data) {
        command = SectionView.Command.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        try {
            SectionView view = (SectionView) window.getActivePage().showView(SectionView.ID);
            view.onceFilled(() -> view.run(command));
            return null;
        } catch (PartInitException unavailable) {
            throw new ExecutionException("the section can't be shown", unavailable);
        }
    }
}

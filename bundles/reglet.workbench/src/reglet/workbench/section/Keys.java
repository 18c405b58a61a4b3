package reglet.workbench.section;

import java.util.Optional;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;

/** Which keys lead to the commands of a view: of the section those for reading it, those for writing in a paragraph, or none. */
public final class Keys {
    private final IContextService contexts;
    private Optional<IContextActivation> active = Optional.empty();

    public Keys(IWorkbenchPartSite site) {
        contexts = site.getWorkbenchWindow().getWorkbench().getService(IContextService.class);
    }

    /** The menu of the text; plugin.xml says what stands in it. */
    public static void menu(Control text, String id, IWorkbenchPartSite site) {
        MenuManager menu = new MenuManager();
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        text.setMenu(menu.createContextMenu(text));
        site.registerContextMenu(id, menu, null);
    }

    /** From now on these and no others. */
    public void on(String context) {
        none();
        active = Optional.of(contexts.activateContext(context));
    }

    /** No longer these. */
    public void off(String context) {
        if (active.filter(now -> now.getContextId().equals(context)).isPresent()) {
            none();
        }
    }

    public void none() {
        active.ifPresent(contexts::deactivateContext);
        active = Optional.empty();
    }
}

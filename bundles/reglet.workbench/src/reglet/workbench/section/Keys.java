package reglet.workbench.section;

import java.util.Optional;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;

/** Which keys lead to the commands of the section: those for reading it, those for writing in a paragraph, or none. */
final class Keys {
    private final IContextService contexts;
    private Optional<IContextActivation> active = Optional.empty();

    Keys(IWorkbenchPartSite site) {
        contexts = site.getWorkbenchWindow().getWorkbench().getService(IContextService.class);
    }

    /** The menu of the text; plugin.xml says what stands in it. */
    static void menu(Control text, String id, IWorkbenchPartSite site) {
        MenuManager menu = new MenuManager();
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        text.setMenu(menu.createContextMenu(text));
        site.registerContextMenu(id, menu, null);
    }

    /** From now on these and no others. */
    void on(String context) {
        none();
        active = Optional.of(contexts.activateContext(context));
    }

    /** No longer these. */
    void off(String context) {
        if (active.filter(now -> now.getContextId().equals(context)).isPresent()) {
            none();
        }
    }

    void none() {
        active.ifPresent(contexts::deactivateContext);
        active = Optional.empty();
    }
}

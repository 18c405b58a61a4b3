package reglet.workbench;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** The job folders opened before, in the menu. */
public final class RecentMenu extends CompoundContributionItem {

    @Override
    protected IContributionItem[] getContributionItems() {
        Session session = PlatformUI.getWorkbench().getService(Session.class);
        List<Path> folders = session == null ? List.of() : session.recent().folders();
        return folders.stream().map(RecentMenu::item).toArray(IContributionItem[]::new);
    }

    private static IContributionItem item(Path folder) {
        CommandContributionItemParameter item = new CommandContributionItemParameter(PlatformUI.getWorkbench()
            .getActiveWorkbenchWindow(), null,
            Handlers.Open.COMMAND, CommandContributionItem.STYLE_PUSH);
        item.label = folder.getFileName() + "  (" + folder.getParent() + ")";
        item.parameters = Map.of(Handlers.Open.FOLDER, folder.toString());
        return new CommandContributionItem(item);
    }
}

package reglet.workbench.settings;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the platform's dialog on the window's settings. */
public final class SettingsHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        PreferencesUtil.createPreferenceDialogOn(HandlerUtil.getActiveShellChecked(event), SettingsPage.ID, new String[] {SettingsPage.ID},
            null).open();
        return null;
    }
}

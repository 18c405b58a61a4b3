package reglet.workbench.settings;

import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** The window's settings; they hold as soon as they are applied. */
public final class SettingsPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {
    static final String ID = "reglet.workbench.settings";

    public SettingsPage() {
        super(GRID);
        setPreferenceStore(Settings.store());
        setDescription("They change what the window shows, and nothing in a job or on paper.");
    }

    @Override
    public void init(IWorkbench workbench) {
        // nothing of the workbench's is needed
    }

    @Override
    protected void createFieldEditors() {
        group(Settings.UNITS, "Units shown first", Settings.UNITS_WORDS);
        group(Settings.THEME, "Colours", Settings.THEME_WORDS);
        group(Settings.TEXT, "Text", Settings.TEXT_WORDS);
    }

    private void group(String key, String title, String[][] words) {
        Composite parent = getFieldEditorParent();
        addField(new RadioGroupFieldEditor(key, title, 1, words, parent, true));
    }
}

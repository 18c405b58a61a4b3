package reglet.workbench.settings;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** Where the window's settings stand, and the words that they take. */
public final class Settings {
    public static final String UNITS = "units";
    public static final String THEME = "theme";
    public static final String TEXT = "text size";
    static final String[][] UNITS_WORDS = {{"As the &job states them", "job"}, {"As the job states them, the &other beside", "both"},
        {"&Metric", "metric"}, {"&Inches, feet and pounds", "inch-pound"}};
    static final String[][] THEME_WORDS = {{"As the &system", "system"}, {"&Light", "light"}, {"&Dark", "dark"}};
    static final String[][] TEXT_WORDS = {{"As the system's", "100"}, {"A q&uarter larger", "125"}, {"&Half as large again", "150"}};
    private static final IPreferenceStore STORE = made();

    private Settings() {
    }

    private static IPreferenceStore made() {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, "reglet.workbench");
        store.setDefault(UNITS, "job");
        store.setDefault(THEME, "system");
        store.setDefault(TEXT, "100");
        return store;
    }

    public static IPreferenceStore store() {
        return STORE;
    }
}

package reglet.workbench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.osgi.service.prefs.BackingStoreException;

/** The job folders opened last, the newest first; kept among the person's preferences. */
public final class Recent {
    private static final String KEY = "recent jobs";
    private static final int MOST = 8;
    private final IEclipsePreferences preferences;

    Recent(IEclipsePreferences preferences) {
        this.preferences = preferences;
    }

    /** Those that are still there. */
    public List<Path> folders() {
        return preferences.get(KEY, "").lines().filter(line -> !line.isBlank()).map(Path::of)
            .filter(folder -> Files.exists(folder.resolve("job.yaml"))).toList();
    }

    void put(Path folder) {
        List<Path> all = new ArrayList<>(folders());
        all.remove(folder);
        all.add(0, folder);
        preferences.put(KEY, String.join("\n", all.stream().limit(MOST).map(Path::toString).toList()));
        try {
            preferences.flush();
        } catch (BackingStoreException unwritable) {
            // the list is only a convenience; the job opens all the same
        }
    }
}

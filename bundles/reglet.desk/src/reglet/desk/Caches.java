package reglet.desk;

import java.nio.file.Path;

/** Where things are kept that cost time to make and nothing to lose. */
public final class Caches {

    private Caches() {
    }

    /** The person's own cache folder for this program: {@code $XDG_CACHE_HOME/reglet}, or {@code .cache/reglet} at home. */
    public static Path folder() {
        String base = System.getenv("XDG_CACHE_HOME");
        Path caches = base == null || base.isBlank() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(base);
        return caches.resolve("reglet");
    }
}

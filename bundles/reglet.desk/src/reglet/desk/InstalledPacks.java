package reglet.desk;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.FileLocator;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

import reglet.desk.Shelf.ShelvedPack;
import reglet.model.UnusableInput;
import reglet.store.Packs;

/**
 * Finds the packs among the installed bundles: those whose manifest says {@code Reglet-Pack: FOLDER}. A new trade is a new
 * bundle with that line and touches nothing else.
 */
public final class InstalledPacks {
    private static final String HEADER = "Reglet-Pack";
    private static final String BUILT = "pack-compiled/built.pack";

    private InstalledPacks() {
    }

    /** @throws UnusableInput when the pack's own page can't be read */
    public static Shelf shelf() throws UnusableInput, IOException {
        BundleContext context = FrameworkUtil.getBundle(InstalledPacks.class).getBundleContext();
        List<ShelvedPack> packs = new ArrayList<>();
        for (Bundle bundle : context.getBundles()) {
            // as written: no bundle is asked for its words in the person's language
            String folder = bundle.getHeaders("").get(HEADER);
            if (folder != null) {
                Path root = folder(bundle, folder);
                Path built = root.resolveSibling(BUILT);
                packs.add(new ShelvedPack(Packs.name(root), root, Files.exists(built) ? Optional.of(built) : Optional.empty()));
            }
        }
        packs.sort(Comparator.comparing(ShelvedPack::name));
        return new Shelf(packs);
    }

    private static Path folder(Bundle bundle, String folder) throws IOException {
        URL entry = bundle.getEntry(folder);
        if (entry == null) {
            throw new IOException("bundle " + bundle.getSymbolicName() + " names a pack folder " + folder + " that it does not hold");
        }
        // the bundle is installed as a folder (Eclipse-BundleShape: dir), so this copies nothing
        return Path.of(FileLocator.toFileURL(entry).getPath());
    }
}

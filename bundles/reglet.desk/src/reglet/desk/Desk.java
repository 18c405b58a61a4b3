package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import reglet.desk.Shelf.ShelvedPack;
import reglet.model.Job;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.rules.Engine;
import reglet.store.Jobs;
import reglet.store.Packs;
import reglet.store.StoredPack;

/** Opens jobs with the packs at hand. Keeps the packs it has loaded; safe for use by several threads. */
public final class Desk {
    private final Shelf shelf;
    private final CheckedTrees kept;
    private final java.util.Map<String, Loaded> loaded = new java.util.HashMap<>();

    /** A pack that was read, with its rules ready to run. */
    private record Loaded(StoredPack pack, Engine engine) {
    }

    /**
     * @param shelf the packs at hand
     * @param cache folder for the checked expressions of packs outside the build; made when needed, safe to delete
     */
    public Desk(Shelf shelf, Path cache) {
        this.shelf = shelf;
        this.kept = new CheckedTrees(cache);
    }

    /**
     * Opens a job folder.
     *
     * @throws UnusableInput when job or pack can't be used; carries every problem
     * @throws IOException   when files can't be reached
     */
    public OpenJob open(Path folder) throws UnusableInput, IOException {
        if (!Files.isDirectory(folder)) {
            throw new UnusableInput(new Problem(Place.of(folder.toString()), "there is no such folder",
                "expected a job folder, with a job.yaml in it"));
        }
        Loaded ready = load(Jobs.packName(folder));
        Job job = Jobs.read(folder, ready.pack().pack());
        return new OpenJob(folder, job, ready.engine());
    }

    private synchronized Loaded load(String name) throws UnusableInput, IOException {
        Loaded known = loaded.get(name);
        if (known == null) {
            ShelvedPack found = shelf.find(name).orElseThrow(() -> new UnusableInput(new Problem(Place.of("job.yaml"),
                "there is no pack \"" + name + "\"", "expected one of: " + String.join(", ", shelf.names()))));
            StoredPack pack = Packs.read(found.folder());
            known = new Loaded(pack, engine(pack, found.checkedTrees()));
            loaded.put(name, known);
        }
        return known;
    }

    private Engine engine(StoredPack pack, Optional<Path> built) throws UnusableInput, IOException {
        Optional<byte[]> trees = built.isPresent() ? CheckedTrees.read(built.get(), pack.digest()) : Optional.empty();
        if (trees.isEmpty()) {
            trees = kept.find(pack.digest());
        }
        if (trees.isPresent()) {
            return Engine.load(pack.pack(), trees.get());
        }
        Engine engine = Engine.compile(pack.pack());
        kept.keep(pack.digest(), engine.checkedTrees());
        return engine;
    }
}

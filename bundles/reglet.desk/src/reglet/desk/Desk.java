package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import reglet.desk.Shelf.ShelvedPack;
import reglet.model.AmendedPack;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.rules.Engine;
import reglet.rules.Examples;
import reglet.store.Amendments;
import reglet.store.Jobs;
import reglet.store.Packs;
import reglet.store.StoredPack;
import reglet.worksheets.Worksheets;

/** Opens jobs with the packs at hand. Keeps the packs it has loaded; safe for use by several threads. */
public final class Desk {
    private final Shelf shelf;
    private final Path cache;
    private final Map<String, Engine> ready = new HashMap<>();
    private final Map<String, String> digests = new ConcurrentHashMap<>();

    /**
     * @param shelf the packs at hand
     * @param cache folder in which packs outside the build are kept ready to run; made when needed, safe to delete
     */
    public Desk(Shelf shelf, Path cache) {
        this.shelf = shelf;
        this.cache = cache;
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
        Engine engine = engine(Jobs.packName(folder));
        Optional<AmendedPack> amended = Amendments.read(folder, engine.pack());
        if (amended.isPresent()) {
            engine = amended(engine, amended.get());
        }
        return new OpenJob(folder, Jobs.read(folder, engine.pack()), engine, amended, digests.get(engine.pack().name()));
    }

    /** The pack as the job's jurisdiction amends it; rules of the jurisdiction's own have to come out as their examples say. */
    private static Engine amended(Engine engine, AmendedPack amended) throws UnusableInput {
        Engine made = engine.amended(amended.pack());
        List<Problem> failures = Examples.failures(made, amended.pack().rules().stream()
            .filter(rule -> engine.pack().rule(rule.id()).filter(old -> old.examples().equals(rule.examples())).isEmpty()).toList());
        if (!failures.isEmpty()) {
            throw new UnusableInput(failures);
        }
        return made;
    }

    /** The pack of a name; "" for the only one at hand. */
    public Pack pack(String name) throws UnusableInput, IOException {
        if (name.isEmpty() && shelf.packs().size() != 1) {
            throw new UnusableInput(new Problem(Place.of("packs"), shelf.packs().isEmpty() ? "there is none" : "there are several",
                "name one of: " + String.join(", ", shelf.names())));
        }
        return engine(name.isEmpty() ? shelf.names().get(0) : name).pack();
    }

    private synchronized Engine engine(String name) throws UnusableInput, IOException {
        Engine known = ready.get(name);
        if (known == null) {
            known = engine(shelf.find(name).orElseThrow(() -> new UnusableInput(new Problem(Place.of("job.yaml"),
                "there is no pack \"" + name + "\"", "expected one of: " + String.join(", ", shelf.names())))));
            ready.put(name, known);
        }
        return known;
    }

    private Engine engine(ShelvedPack pack) throws UnusableInput, IOException {
        String digest = Packs.digest(pack.folder());
        digests.put(pack.name(), digest);
        Path kept = cache.resolve(digest + ".pack");
        Optional<Engine> engine = pack.built().flatMap(file -> BuiltPack.read(file, digest)).or(() -> BuiltPack.read(kept, digest));
        if (engine.isPresent()) {
            return engine.get();
        }
        StoredPack read = Packs.read(pack.folder());
        Engine made = Engine.compile(read.pack(), Worksheets::run);
        try {
            BuiltPack.write(cache.resolve(read.digest() + ".pack"), read, made);
        } catch (IOException unwritable) {
            // a cache that can't be written only costs time: the next start makes the pack ready again
        }
        return made;
    }
}

package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import reglet.model.UnusableInput;
import reglet.store.Packs;

/**
 * The packs at hand, by name.
 *
 * @param packs in the order of their names
 */
public record Shelf(List<ShelvedPack> packs) {

    public Shelf {
        packs = List.copyOf(packs);
    }

    /**
     * A pack at hand.
     *
     * @param name   the name that jobs give
     * @param folder its text files
     * @param built  the pack made ready to run when it was built; empty for a pack outside the build
     */
    public record ShelvedPack(String name, Path folder, Optional<Path> built) {
    }

    public Optional<ShelvedPack> find(String name) {
        return packs.stream().filter(pack -> pack.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return packs.stream().map(ShelvedPack::name).toList();
    }

    /**
     * Packs in folders outside the build.
     *
     * @throws UnusableInput when a folder's own page can't be read
     */
    public static List<ShelvedPack> folders(List<Path> folders) throws UnusableInput, IOException {
        List<ShelvedPack> packs = new ArrayList<>();
        for (Path folder : folders) {
            packs.add(new ShelvedPack(Packs.name(folder), folder, Optional.empty()));
        }
        return packs;
    }

    /** The same shelf with other packs put before those of the same name. */
    public Shelf with(List<ShelvedPack> others) {
        TreeMap<String, ShelvedPack> byName = new TreeMap<>();
        packs.forEach(pack -> byName.put(pack.name(), pack));
        others.forEach(pack -> byName.put(pack.name(), pack));
        return new Shelf(List.copyOf(byName.values()));
    }
}

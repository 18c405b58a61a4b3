package reglet.store;

import java.nio.file.Path;

import reglet.model.Pack;

/**
 * A pack with where it came from.
 *
 * @param digest see {@link Packs#digest}
 */
public record StoredPack(Path folder, Pack pack, String digest) {
}

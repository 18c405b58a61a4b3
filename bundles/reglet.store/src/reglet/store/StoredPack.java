package reglet.store;

import java.nio.file.Path;

import reglet.model.Pack;

/**
 * A pack with where it came from.
 *
 * @param digest SHA-256, in hexadecimal, over names and bytes of its files in sorted order
 */
public record StoredPack(Path folder, Pack pack, String digest) {
}

package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import reglet.store.SafeFile;

/**
 * Checked expressions on disk. A file is the pack's digest in hexadecimal, a line end, and the trees; a file whose digest is
 * not the pack's is as good as none.
 */
final class CheckedTrees {
    private final Path cache;

    CheckedTrees(Path cache) {
        this.cache = cache;
    }

    static Optional<byte[]> read(Path file, String digest) throws IOException {
        byte[] head = head(digest);
        byte[] all = Files.readAllBytes(file);
        boolean same = all.length > head.length && Arrays.equals(all, 0, head.length, head, 0, head.length);
        return same ? Optional.of(Arrays.copyOfRange(all, head.length, all.length)) : Optional.empty();
    }

    static void write(Path file, String digest, byte[] trees) throws IOException {
        byte[] head = head(digest);
        byte[] all = Arrays.copyOf(head, head.length + trees.length);
        System.arraycopy(trees, 0, all, head.length, trees.length);
        SafeFile.write(file, all);
    }

    Optional<byte[]> find(String digest) throws IOException {
        Path file = file(digest);
        return Files.exists(file) ? read(file, digest) : Optional.empty();
    }

    /** Keeps trees for the next start; a cache that can't be written only costs time. */
    void keep(String digest, byte[] trees) {
        try {
            write(file(digest), digest, trees);
        } catch (IOException unwritable) {
            // the next start checks the expressions again
        }
    }

    private Path file(String digest) {
        return cache.resolve(digest + ".checked");
    }

    private static byte[] head(String digest) {
        return (digest + "\n").getBytes(StandardCharsets.US_ASCII);
    }
}

package reglet.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * The one class that writes files.
 *
 * <p>A file gets its new content whole or keeps its old content whole, whatever happens in between: the content goes to a new file
 * beside it, named after it with a dot in front, is forced to the disk, and is renamed over it in one step; then the folder is
 * forced to the disk, so that the rename is not lost either. When anything fails, the new file is removed and the failure is
 * thrown; the old file has not been touched. A new file left by a crash is overwritten by the next write and never read, for
 * names with a dot in front are skipped by readers.
 *
 * <p>On systems where another program may hold the old file open (virus scanners on Windows), the rename is tried again for a
 * short while. Where the target is a link, the link's target is written and the link stays.
 */
public final class SafeFile {
    private static final int RENAMES = 10;
    private static final int BUFFER = 1 << 16;
    private static final long PAUSE_MILLISECONDS = 20;

    private SafeFile() {
    }

    /**
     * Writes a file, and the folders above it where they are missing.
     *
     * @throws IOException when it can't be written; the old content, if any, is still there
     */
    public static void write(Path target, byte[] content) throws IOException {
        write(target, out -> out.write(content));
    }

    /** What a file gets, piece by piece, so that it never has to be held as a whole. */
    public interface Content {
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes a file as it is made, and the folders above it where they are missing.
     *
     * @return bytes written
     * @throws IOException when it can't be made or written; the old content, if any, is still there
     */
    public static long write(Path target, Content content) throws IOException {
        Path file = Files.isSymbolicLink(target) ? target.toRealPath() : target.toAbsolutePath();
        if (Files.isDirectory(file)) {
            throw new FileAlreadyExistsException(file.toString(), null, "is a folder");
        }
        Files.createDirectories(file.getParent());
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
        long size;
        try {
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER);
                content.to(out);
                out.flush();
                size = channel.position();
                channel.force(true);
            }
            rename(fresh, file);
        } catch (IOException | RuntimeException | Error failure) {
            try {
                Files.deleteIfExists(fresh);
            } catch (IOException left) {
                failure.addSuppressed(left);
            }
            throw failure;
        }
        force(file.getParent());
        return size;
    }

    /**
     * Removes a file; does nothing where there is none.
     *
     * @throws IOException when it can't be removed; it is still there then
     */
    public static void remove(Path target) throws IOException {
        if (Files.deleteIfExists(target)) {
            force(target.toAbsolutePath().getParent());
        }
    }

    private static void rename(Path from, Path to) throws IOException {
        for (int attempt = 1;; attempt++) {
            try {
                Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                return;
            } catch (AtomicMoveNotSupportedException never) {
                throw never;
            } catch (AccessDeniedException held) {
                if (attempt == RENAMES) {
                    throw held;
                }
                pause(held);
            }
        }
    }

    private static void pause(IOException meanwhile) throws IOException {
        try {
            Thread.sleep(PAUSE_MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw meanwhile;
        }
    }

    private static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException | UnsupportedOperationException notForThisSystem) {
            // Windows opens no folders, and forces a rename with the file
        }
    }
}

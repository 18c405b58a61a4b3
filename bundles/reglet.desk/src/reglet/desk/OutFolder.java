package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import reglet.store.SafeFile;

/** The folder into which a job's papers are written. */
final class OutFolder implements Packages.Sink {
    private final Path folder;
    private final List<Path> written;

    /** @param written gets the files, in order */
    OutFolder(Path folder, List<Path> written) {
        this.folder = folder;
        this.written = written;
    }

    @Override
    public long take(String name, SafeFile.Content content) throws IOException {
        Path file = folder.resolve(name);
        long size = SafeFile.write(file, content);
        written.add(file);
        return size;
    }

    @Override
    public void drop(String name) throws IOException {
        SafeFile.remove(folder.resolve(name));
        written.remove(folder.resolve(name));
    }
}

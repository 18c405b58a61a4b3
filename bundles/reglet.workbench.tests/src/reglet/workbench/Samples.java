package reglet.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Copies of the sample jobs, to be changed at will. */
final class Samples {

    private Samples() {
    }

    /** Copies a sample job below a folder, without its papers. */
    static Path copy(String name, Path to) throws IOException {
        Path from = Path.of(System.getProperty("reglet.root")).resolve("sample-specs").resolve(name);
        Path copy = to.resolve(name);
        List<Path> files;
        try (var all = Files.walk(from)) {
            files = all.filter(file -> Files.isRegularFile(file) && !from.relativize(file).startsWith("out")).toList();
        }
        for (Path file : files) {
            Path target = copy.resolve(from.relativize(file));
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
        return copy;
    }
}

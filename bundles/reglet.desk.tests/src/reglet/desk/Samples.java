package reglet.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import reglet.model.UnusableInput;

/** The pack and the sample jobs of this checkout. */
final class Samples {
    static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    static final Path PACK = ROOT.resolve("bundles/reglet.pack.adheredveneer/pack");
    static final List<String> JOBS = List.of("harbour-clinic", "mesa-library", "orchard-row");

    private static Desk desk;

    private Samples() {
    }

    static Path job(String name) {
        return ROOT.resolve("sample-specs").resolve(name);
    }

    static synchronized Desk desk() throws UnusableInput, IOException {
        if (desk == null) {
            desk = new Desk(new Shelf(Shelf.folders(List.of(PACK))), cache());
        }
        return desk;
    }

    /** A folder that is gone when the tests are. */
    private static Path cache() throws IOException {
        Path cache = Files.createTempDirectory("reglet-cache");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            try (Stream<Path> files = Files.walk(cache)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }));
        return cache;
    }

    static OpenJob open(String name) throws UnusableInput, IOException {
        return desk().open(job(name));
    }

    /** A copy of a sample job that a test may change. */
    static Path copy(String name, Path to) throws IOException {
        return copyFolder(job(name), to);
    }

    /** A copy of a folder, without what was written to its {@code out}. */
    static Path copyFolder(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.filter(file -> !from.relativize(file).startsWith("out")).forEach(file -> copy(from, file, to));
        }
        return to;
    }

    private static void copy(Path from, Path file, Path to) {
        try {
            Path target = to.resolve(from.relativize(file).toString());
            if (Files.isDirectory(file)) {
                Files.createDirectories(target);
            } else {
                Files.copy(file, target);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

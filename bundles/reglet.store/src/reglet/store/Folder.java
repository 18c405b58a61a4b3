package reglet.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Place;

/** A folder of text files, read with limits; nothing outside it is ever reached. */
final class Folder {
    /** A text file of a job or pack is a few kilobytes; a megabyte is an accident or an attack. */
    private static final long LARGEST = 1 << 20;
    private static final int MOST_FILES = 10_000;

    private final Path root;
    private final Problems problems;

    Folder(Path root, Problems problems) {
        this.root = root.toAbsolutePath().normalize();
        this.problems = problems;
    }

    /** Names of the files directly in a folder with an ending, relative to the root and sorted; none when there is no such folder. */
    List<String> files(String folder, String ending) throws IOException {
        return list(folder, path -> Files.isRegularFile(path) && path.getFileName().toString().endsWith(ending));
    }

    /** Names of the folders directly in a folder, relative to the root and sorted. */
    List<String> folders(String folder) throws IOException {
        return list(folder, Files::isDirectory);
    }

    private List<String> list(String folder, java.util.function.Predicate<Path> wanted) throws IOException {
        Path place = root.resolve(folder);
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        try (Stream<Path> paths = Files.list(place)) {
            paths.filter(path -> !path.getFileName().toString().startsWith(".")).filter(wanted).limit(MOST_FILES + 1L)
                .forEach(path -> names.add(folder.isEmpty() ? path.getFileName().toString() : folder + "/" + path.getFileName()));
        }
        if (names.size() > MOST_FILES) {
            problems.add(Place.of(folder), "more than " + MOST_FILES + " files", "expected a folder of one job or pack");
            return List.of();
        }
        names.sort(null);
        return names;
    }

    boolean exists(String name) {
        return Files.exists(root.resolve(name));
    }

    /** Whether a path written in a file stays in this folder, links followed. */
    boolean holds(String name) {
        try {
            Path path = root.resolve(name).normalize();
            if (name.isEmpty() || Path.of(name).isAbsolute() || !path.startsWith(root)) {
                return false;
            }
            return !Files.exists(path, LinkOption.NOFOLLOW_LINKS) || path.toRealPath().startsWith(root.toRealPath());
        } catch (IOException | java.nio.file.InvalidPathException unreachable) {
            return false;
        }
    }

    /** A file's bytes; empty, with a problem, when it can't be used. */
    Optional<byte[]> bytes(String name) throws IOException {
        return bytes(name, LARGEST, "expected a text file of a few kilobytes");
    }

    /** The same for files that may be larger than texts. */
    Optional<byte[]> bytes(String name, long largest, String expected) throws IOException {
        Path path = root.resolve(name);
        if (!Files.isRegularFile(path)) {
            problems.add(Place.of(name), "there is no such file", "");
            return Optional.empty();
        }
        if (!holds(name)) {
            problems.add(Place.of(name), "leads out of the folder", "expected a file, not a link to a place outside");
            return Optional.empty();
        }
        if (Files.size(path) > largest) {
            problems.add(Place.of(name), largest == LARGEST ? "is larger than a megabyte" : "is larger than " + (largest >> 20)
                + " megabytes", expected);
            return Optional.empty();
        }
        return Optional.of(Files.readAllBytes(path));
    }

    /** A file's text in UTF-8, without a byte order mark; empty, with a problem, when it can't be used. */
    Optional<String> text(String name) throws IOException {
        return bytes(name).flatMap(bytes -> decode(name, bytes));
    }

    private Optional<String> decode(String name, byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException notUtf8) {
            problems.add(Place.of(name), "is not UTF-8 text", "save it in the encoding UTF-8");
            return Optional.empty();
        }
    }
}

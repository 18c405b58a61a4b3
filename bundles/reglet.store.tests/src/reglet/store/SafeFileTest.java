package reglet.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
    @TempDir
    Path folder;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aFileIsWrittenWithTheFoldersAboveIt() throws IOException {
        Path file = folder.resolve("a/b/c.txt");
        SafeFile.write(file, "text".getBytes());
        assertEquals("text", Files.readString(file));
        assertEquals(List.of("c.txt"), names(file.getParent()));
    }

    @Test
    void aFileIsReplacedWhole() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "a long old text");
        SafeFile.write(file, "new".getBytes());
        assertArrayEquals("new".getBytes(), Files.readAllBytes(file));
    }

    @Test
    void whatIsInTheWayStaysAndNothingIsLeftBehind() throws IOException {
        Path inTheWay = Files.createDirectories(folder.resolve("a.txt/inside")).getParent();
        assertThrows(IOException.class, () -> SafeFile.write(inTheWay, "new".getBytes()));
        assertTrue(Files.isDirectory(inTheWay.resolve("inside")));
        assertEquals(List.of("a.txt"), names(folder));
    }

    @Test
    void aFailedRenameKeepsTheOldFileAndRemovesTheNewOne() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "old");
        // the place of the fresh file is taken by a folder, so that it can't even be begun
        Files.createDirectories(folder.resolve(".a.txt.new/x"));
        assertThrows(IOException.class, () -> SafeFile.write(file, "new".getBytes()));
        assertEquals("old", Files.readString(file));
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path target = Files.writeString(folder.resolve("target.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), target);
        SafeFile.write(link, "new".getBytes());
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(target));
    }

    @Test
    void aFreshFileLeftByACrashIsNoObstacleAndNeverRead() throws Exception {
        Files.writeString(folder.resolve(".a.txt.new"), "half writ");
        SafeFile.write(folder.resolve("a.txt"), "whole".getBytes());
        assertEquals(List.of("a.txt"), names(folder));
    }
}

package reglet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettleTest {

    @TempDir
    Path folder;

    @Test
    void draftSettlesAParagraphThatTheLibraryMovedAndSaysWhatWasDone() throws Exception {
        Path from = Run.ROOT.resolve("sample-specs/harbour-clinic");
        Path job = folder.resolve("job");
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).filter(file -> !from.relativize(file).startsWith("out")).toList();
        }
        for (Path file : files) {
            Path target = job.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
        Path section = Files.createDirectories(job.resolve("sections")).resolve("04-73-00.md");
        Files.writeString(section, "## strike mortar.water\n> Water: Any.\n");
        Run settled = Run.run("draft", job.toString(), "--settle", "mortar.water");
        assertEquals(0, settled.code(), settled.err());
        assertTrue(settled.out().contains("it stays struck"), settled.out());
        assertEquals("## strike mortar.water\n> Water: Clean, and fit to drink.\n", Files.readString(section));
        Run unknown = Run.run("draft", job.toString(), "--settle", "mortar.wather");
        assertEquals(2, unknown.code());
        assertTrue(unknown.err().contains("did you mean 'mortar.water'?"), unknown.err());
    }
}

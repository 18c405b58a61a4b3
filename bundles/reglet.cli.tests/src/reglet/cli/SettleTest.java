package reglet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettleTest {

    @TempDir
    Path folder;

    @Test
    void draftSettlesAParagraphThatTheLibraryMovedAndSaysWhatWasDone() throws Exception {
        Path job = Run.copy("harbour-clinic", folder.resolve("job"));
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

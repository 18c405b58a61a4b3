package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.Drafts.Draft;

class DraftsTest {
    private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
    @TempDir
    Path folder;

    @Test
    void whatWasTypedIsThereForTheNextProgramAsTyped() throws IOException {
        Path job = folder.resolve("job");
        String text = "A paragraph\twith a tab,\r\na second line, \\n as typed, and °C";
        new Drafts(folder).keep(job, new Draft("section 04 73 00", text, NOON));
        assertEquals(List.of(new Draft("section 04 73 00", text, NOON)), new Drafts(folder).of(job));
        assertEquals(List.of(), new Drafts(folder).of(folder.resolve("another job")));
    }

    @Test
    void theNewestTextOfAPlaceAloneIsKeptAndDroppingForgetsIt() throws IOException {
        Path job = folder.resolve("job");
        Drafts drafts = new Drafts(folder);
        drafts.keep(job, new Draft("one", "a", NOON));
        drafts.keep(job, new Draft("two", "b", NOON));
        drafts.keep(job, new Draft("one", "ab", NOON.plusSeconds(1)));
        assertEquals(List.of("ab", "b"), drafts.of(job).stream().map(Draft::text).toList());
        drafts.drop(job, "one");
        assertEquals(List.of("b"), drafts.of(job).stream().map(Draft::text).toList());
    }

    @Test
    void aSpoiltLineCostsOnlyItself() throws IOException {
        Path job = folder.resolve("job");
        Drafts drafts = new Drafts(folder);
        drafts.keep(job, new Draft("one", "a", NOON));
        try (var files = Files.list(folder)) {
            Files.writeString(files.findFirst().orElseThrow(), "torn\nno time\tplace\ttext\n", StandardOpenOption.APPEND);
        }
        assertEquals(List.of("a"), drafts.of(job).stream().map(Draft::text).toList());
    }
}

package reglet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;


/** Reading a sheet, confirming it into a job, and what a reviewer asks of the products then. */
class ReadVerbTest {
    private static final Path SAMPLE = Run.ROOT.resolve("sample-specs/mesa-library");
    private static final Path MAT = Run.ROOT.resolve("sample-specs/harbour-clinic/sheets/mat-10.pdf");

    @TempDir
    Path folder;
    private Path job;

    @BeforeEach
    void copy() throws IOException {
        job = folder.resolve("job");
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.filter(path -> !SAMPLE.relativize(path).startsWith("out")).toList()) {
                Path to = job.resolve(SAMPLE.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
    }

    @Test
    void aSheetIsReadWithPlacesAndNothingIsConfirmed() {
        Run read = Run.run("read", MAT.toString(), "--as", "sheet");
        assertEquals(0, read.code(), read.err());
        assertTrue(read.out().contains(": mat.thickness is 10 mm, ASTM E2925"), read.out());
        assertTrue(read.out().endsWith("Nothing is confirmed.\n"), read.out());
        JsonObject form = JsonParser.parseString(Run.run("read", MAT.toString(), "--as", "sheet", "--json").out()).getAsJsonObject();
        assertEquals("mat", form.get("component").getAsString());
        JsonObject thickness = form.getAsJsonArray("values").get(0).getAsJsonObject();
        assertEquals(0.01, thickness.get("value").getAsDouble(), 1e-12);
        assertEquals("m", thickness.get("unit").getAsString());
        assertEquals(4, thickness.getAsJsonArray("box").size());
        assertFalse(thickness.get("confirmed").getAsBoolean());
    }

    @Test
    void whatIsNoSheetOrNoKindEndsWithTheReason() {
        Run absent = Run.run("read", folder.resolve("absent.pdf").toString(), "--as", "sheet");
        assertEquals(2, absent.code());
        assertTrue(absent.err().contains("there is no such file; expected"), absent.err());
        Run other = Run.run("read", MAT.toString(), "--as", "poem");
        assertEquals(2, other.code());
        assertTrue(other.err().contains("expected: sheet"), other.err());
    }

    @Test
    void confirmedValuesAreWrittenAndCanBeComparedSideBySide() throws IOException {
        Run confirmed = Run.run("read", MAT.toString(), "--as", "sheet", "--confirm", job.toString(), "--id", "mat-new", "--only",
            "mat.thickness,mat.compressive");
        assertEquals(0, confirmed.code(), confirmed.err());
        assertTrue(confirmed.out().strip().endsWith("\n" + job.resolve("products/mat-new.yaml")), confirmed.out());
        assertTrue(confirmed.out().contains("takes") && confirmed.out().contains("leaves"), confirmed.out());
        String text = Files.readString(job.resolve("products/mat-new.yaml"));
        assertTrue(text.contains("confirmed: yes") && text.contains("thickness:") && !text.contains("drainage_efficiency"), text);
        Run beside = Run.run("compare", job.toString(), "--candidates", "mat-6,mat-new");
        assertTrue(beside.out().contains("W1 mat.drainage_efficiency: mat-6 94%, ") && beside.out().contains("| mat-new not shown"),
            beside.out());
        assertEquals(List.of("mat-6", "mat-new"), JsonParser.parseString(Run.run("compare", job.toString(), "--candidates", "mat-6,mat-new",
            "--json").out())
            .getAsJsonObject().getAsJsonArray("candidates").asList().stream().map(one -> one.getAsString()).toList());
    }

    @Test
    void candidatesForDifferentPlacesAreRefused() {
        Run run = Run.run("compare", job.toString(), "--candidates", "mat-6,screw");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("name products for one component"), run.err());
        assertEquals(2, Run.run("compare", job.toString()).code());
    }

    @Test
    void aResubmittalIsComparedWithTheLast() throws IOException {
        Run.run("read", MAT.toString(), "--as", "sheet", "--confirm", job.toString(), "--id", "mat-new");
        Path again = job.resolve("submittals/04-73-00-02");
        Files.createDirectories(again);
        String submittal = Files.readString(job.resolve("submittals/04-73-00-01/submittal.yaml"));
        Files.writeString(again.resolve("submittal.yaml"), submittal.replaceAll("\\bmat-6\\b", "mat-new"));
        Run since = Run.run("compare", job.toString(), "04-73-00-02", "--last", "04-73-00-01");
        assertTrue(since.out().contains("changed: W1 mat.thickness: 6.4 mm, meets -> 10 mm, meets"), since.out() + since.err());
        JsonObject form = JsonParser.parseString(Run.run("compare", job.toString(), "04-73-00-02", "--last", "04-73-00-01", "--json").out())
            .getAsJsonObject();
        assertEquals("04-73-00-01", form.get("last").getAsString());
        assertTrue(form.getAsJsonArray("changes").size() > 5);
    }
}

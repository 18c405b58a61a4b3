package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Finding;
import reglet.model.PaperRule;
import reglet.model.RegisterItem;

/** The register of a whole job: what a person changed in it stands when the job changes, and nothing of it is lost without a word. */
class RegisterOfJobsTest {
    @TempDir
    Path folder;

    private static RegisterItem item(OpenJob job, String id) throws Exception {
        return job.register().items().stream().filter(item -> item.id().equals(id)).findFirst().orElseThrow();
    }

    private OpenJob changed(String old, String text) throws Exception {
        Path job = folder.resolve("job");
        Samples.copy("harbour-clinic", job);
        Path file = job.resolve("register.yaml");
        assertTrue(Files.readString(file).contains(old), old);
        Files.writeString(file, Files.readString(file).replace(old, text));
        return Samples.desk().open(job);
    }

    /** Outside source for the dates: busday_offset of NumPy 2.4.6 with the same days off, run once. */
    @Test
    void theSampleSplitsItsSamplesAndHasDates() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        RegisterItem range = item(job, "veneer.range");
        assertEquals(RegisterItem.Sort.SELECTION, range.sort());
        assertEquals(LocalDate.parse("2026-03-12"), range.timing().orElseThrow().submitBy());
        assertEquals(range.paragraph(), item(job, "veneer.panel").paragraph());
        assertEquals(LocalDate.parse("2026-04-02"), item(job, "base_screed.product-data").timing().orElseThrow().submitBy());
        assertEquals("returned: 04-73-00-01, conforms as noted, 2026-03-13", item(job, "base_screed.product-data").status());
        assertEquals("handed in: 07-92-00-01", item(job, "sealant.product-data").status());
        assertEquals(List.of(), job.register().lost());
    }

    @Test
    void aChangeStandsWhenTheWallChanges() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        String other = job.pack().component("mat").orElseThrow().options().get(0).id();
        OpenJob after = job.choosing("W1", "mat", List.of(other));
        assertEquals("split: the owner chooses the colour before the panel is set (A. Quill, architect (invented))",
            item(after, "veneer.range").note());
    }

    @Test
    void aChangeOfAnItemThatIsGoneIsAFindingAtItsLine() throws Exception {
        OpenJob job = changed("split: veneer.sample", "split: veneer.samples");
        List<Finding> found = job.checked().findings().stream().filter(finding -> finding.rule().equals(PaperRule.REGISTER.id())).toList();
        assertEquals(2, found.size(), found.toString());
        assertEquals("register.yaml", found.get(0).at().file());
        assertTrue(found.get(0).at().line() > 10);
        assertTrue(found.get(0).says().contains("the owner chooses the colour"), found.get(0).says());
        assertTrue(found.get(0).fix().contains("veneer.sample"), found.get(0).fix());
        assertTrue(job.register().items().stream().anyMatch(item -> item.id().equals("veneer.sample")), "the item itself stays");
    }

    @Test
    void aJobWithoutARegisterFileHasNeitherDatesNorCodes() throws Exception {
        List<RegisterItem> items = Samples.open("mesa-library").register().items();
        assertTrue(items.size() > 10);
        assertTrue(items.stream().allMatch(item -> item.timing().isEmpty() && item.code().isEmpty() && item.note().isEmpty()));
    }

    @Test
    void theFederalSchemeGivesCodesAndItsSchemaTakesThem() throws Exception {
        OpenJob job = changed("days: working", "scheme: federal\ndays: working");
        FormsTest.valid("register", Forms.register("04 73 00", job.register("04 73 00")));
        assertEquals("SD-03", item(job, "lath.product-data").code());
        assertEquals("SD-05", item(job, "fasteners.calculation").code());
        assertTrue(RegisterReport.dates(job, job.job().sections()).startsWith("2026-03-12, for 2026-06-01: 04 73 00 1.4.M Units, range"));
    }
}

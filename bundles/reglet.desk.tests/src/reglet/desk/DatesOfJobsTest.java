package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import com.google.gson.JsonObject;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Box;
import reglet.model.Change;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Finding;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.UnusableInput;

/** Dates on their way through a job: typed, checked, printed, read from a sheet and compared. */
class DatesOfJobsTest {
    private static final String LATH = "lath: {accept: [glass], report: \"yes\", report_number: R-1, "
        + "report_editions: [\"2021\", \"2024\"], report_until: 2027-10-29, report_spacing: 16 in, report_weight: 15 psf}";
    @TempDir
    Path folder;
    private OpenJob job;

    @BeforeEach
    void aWallWithGlassFibreLathWhoseReportEndsOnTheLastDayOfTheWork() throws Exception {
        Path copy = Samples.copy("harbour-clinic", folder.resolve("harbour-clinic"));
        Path wall = copy.resolve("walls/W2.yaml");
        Files.writeString(wall, Files.readString(wall).replaceFirst("(?m)^lath: .*$", LATH.replace("$", "\\$")));
        Path page = copy.resolve("job.yaml");
        Files.writeString(page, Files.readString(page) + "terms: {work_ends: 2027-10-29}\n");
        job = Samples.desk().open(copy);
    }

    private static List<Finding> expired(OpenJob job) {
        return job.checked().findings().stream().filter(finding -> finding.rule().equals("lath.report-expiry")).toList();
    }

    @Test
    void aReportThatEndsTheDayBeforeTheWorkDoesIsToldWithBothDays() throws Exception {
        assertEquals(List.of(), expired(job));
        OpenJob short1 = Saving.set(job, "W2", "lath", "report_until", "2027-10-28");
        Finding finding = expired(short1).get(0);
        assertEquals("Evaluation report R-1 of the glass fibre lath ends on 2027-10-28, 1 d before the last day of the work, 2027-10-29.",
            finding.says());
        JsonObject form = Forms.check(short1.job(), short1.checked());
        FormsTest.valid("check", form);
        JsonObject facts = form.getAsJsonArray("findings").asList().stream().map(one -> one.getAsJsonObject())
            .filter(one -> one.get("rule").getAsString().equals("lath.report-expiry")).findFirst().orElseThrow().getAsJsonObject("facts");
        assertEquals("2027-10-28", facts.getAsJsonObject("lath.report_until").get("value").getAsString());
    }

    @Test
    void aDateIsTypedAsPeopleTypeItAndStandsInTheFileInOneForm() throws Exception {
        OpenJob set = Saving.set(job, "W2", "lath", "report_until", "Oct 28, 2027");
        assertTrue(Saving.text(set, "walls/W2.yaml").contains("report_until: 2027-10-28,"), Saving.text(set, "walls/W2.yaml"));
        OpenJob moved = Saving.apply(set, List.of(new Change("terms.work_ends", "10/28/27")));
        assertTrue(Saving.text(moved, "job.yaml").contains("work_ends: 2027-10-28"));
        assertEquals(List.of(), expired(moved));
    }

    @Test
    void aDateThatMayBeSeveralIsExplainedAndTheFileIsUntouched() throws Exception {
        String before = Saving.text(job, "walls/W2.yaml");
        for (Map.Entry<String, String> typed : Map.of("3/4/2028", "write 2028-03-04 or 2028-04-03, whichever is meant", "2026-02-30",
            "February 2026 has 28 days", "spring 2028", "expected year, month and day", "2028",
            "write 2028-12-31 for its last day").entrySet()) {
            UnusableInput refused = assertThrows(UnusableInput.class, () -> Saving.set(job, "W2", "lath", "report_until", typed.getKey()));
            assertTrue(refused.getMessage().contains("\"" + typed.getKey() + "\" is no date; ") && refused.getMessage()
                .contains(typed.getValue()), refused.getMessage());
            assertEquals(before, Saving.text(job, "walls/W2.yaml"));
        }
    }

    @Test
    void aJobThatCountsInYearsIsToldWhatToWriteInstead() throws Exception {
        Path page = job.folder().resolve("job.yaml");
        Files.writeString(page, Files.readString(page).replace("work_ends: 2027-10-29", "work_year: 2027"));
        Path wall = job.folder().resolve("walls/W2.yaml");
        Files.writeString(wall, Files.readString(wall).replace("report_until: 2027-10-29", "report_until: 2028"));
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Samples.desk().open(job.folder()));
        assertTrue(refused.getMessage().contains("unknown name \"work_year\"; did you mean 'work_ends'?"), refused.getMessage());
        assertTrue(refused.getMessage().contains("\"2028\" is no date; a year is no day; write 2028-12-31 for its last day"),
            refused.getMessage());
    }

    @Test
    void theSectionPrintsTheDay() throws Exception {
        String section = Outputs.of(job).section("04 73 00").make().stream().filter(output -> output.name().endsWith(".md")).findFirst()
            .map(output -> new String(output.bytes(), StandardCharsets.UTF_8)).orElseThrow();
        assertTrue(section.contains("In force until: [2027-10-29 or later](slot:lath.report_until)"), section);
    }

    @Test
    void aSheetsDateIsReadCorrectedAndComparedToTheDay() throws Exception {
        Path sheet = folder.resolve("glass.pdf");
        LinesOnASheet.write(sheet, List.of("Glass fiber lath GL-1 (invented)", "Evaluation report: R-1",
            "Report valid until: October 28, 2027"));
        SheetReading reading = DataSheets.read(sheet, job.pack(), "lath");
        Found until = reading.values().stream().filter(found -> found.value().property().equals("lath.report_until")).findFirst()
            .orElseThrow();
        assertEquals("2027-10-28", until.value().value().text());
        assertTrue(until.value().box().isPresent());
        FormsTest.valid("sheet", SheetForms.sheet(reading, List.of()));
        Confirming start = Confirming.of(job, sheet, reading, "", "glass");
        OpenJob held = start.take("lath.report_until").write(job);
        assertEquals("It is 1 day earlier.", row(held).note());
        assertEquals(Result.FALLS_SHORT, row(held).result());
        OpenJob renewed = Confirming.of(job, sheet, reading, "", "glass").add(job.pack(), "lath.report_until", "29 Oct 2027", 1,
            new Box(72, 90, 200, 12)).write(held);
        assertEquals(Result.MEETS, row(renewed).result());
        UnusableInput refused = assertThrows(UnusableInput.class, () -> start.correct(job.pack(), "lath.report_until", "June 2028"));
        assertTrue(refused.getMessage().contains("a month is no day; write 2028-06-30 for its last day"), refused.getMessage());
    }

    private static Row row(OpenJob job) throws UnusableInput {
        return Reviews.all(job).rows().stream().filter(row -> row.requirement().wall().equals("W2")
            && row.requirement().path().equals("lath.report_until")).findFirst().orElseThrow();
    }
}

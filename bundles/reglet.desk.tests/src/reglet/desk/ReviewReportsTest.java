package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Office;
import reglet.model.Submittal;

/** The report of a review says what the reviewer wrote, and nothing that the reviewer didn't. */
class ReviewReportsTest {
    private static final String MASONRY = "04-73-00-01";
    @TempDir
    Path folder;

    private static Submittal submittal(OpenJob job, String id) {
        return job.submittal(id).orElseThrow();
    }

    private static List<String> pages(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            List<String> pages = new java.util.ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
            return pages;
        }
    }

    private Path copy() throws Exception {
        return Samples.copy("harbour-clinic", folder.resolve("job"));
    }

    private static void edit(Path file, String old, String text) throws Exception {
        assertTrue(Files.readString(file).contains(old), old);
        Files.writeString(file, Files.readString(file).replace(old, text));
    }

    @Test
    void theReportHasDatesRecommendationActionNotesAndFlaggedSheets() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        byte[] pdf = ReviewReports.pdf(job, submittal(job, MASONRY), Office.none());
        assertArrayEquals(pdf, ReviewReports.pdf(job, submittal(job, MASONRY), Office.none()));
        List<String> pages = pages(pdf);
        String first = pages.get(0);
        assertTrue(first.contains("Received 2026-03-03 Due 2026-03-17 Returned 2026-03-13"), first);
        assertTrue(first.contains("Consultant recommends conforms as noted, B. Marl"), first);
        assertTrue(first.contains("Architect acts conforms as noted, A. Quill"), first);
        String whole = String.join(" ", pages);
        assertTrue(whole.contains("Measure the depth of the cavity at the screed"), "the note on the row");
        assertTrue(whole.contains("It is no check of quantities, dimensions, means and methods, or safety on site"), "the caution");
        String sheet = pages.stream().filter(page -> page.contains("Nominal weight")).findFirst().orElseThrow();
        assertTrue(sheet.contains("2, 6: see note"), sheet);
        assertTrue(sheet.contains("page 11 of " + pages.size()), sheet);
    }

    @Test
    void withoutAReviewNoActionIsChosen() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Submittal sealant = submittal(job, "07-92-00-01");
        assertTrue(pages(ReviewReports.pdf(job, sealant, Office.none())).get(0).contains("Action Not chosen yet."));
        JsonObject form = ReviewReports.form(job, sealant);
        assertFalse(form.has("review"));
        assertTrue(form.get("action needed").getAsBoolean());
        assertTrue(Outputs.of(job).all().make().stream().noneMatch(output -> output.name().startsWith("07-92-00-01-review")));
    }

    @Test
    void itemsForInformationNeedNoAction() throws Exception {
        Path job = copy();
        edit(job.resolve("submittals/07-92-00-01/submittal.yaml"),
            "items: [sealant.product-data, sealant.test-report, sealant.compatibility-statement, backer_rod.product-data]",
            "items: [sealant.test-report, sealant.compatibility-statement]");
        OpenJob open = Samples.desk().open(job);
        assertTrue(pages(ReviewReports.pdf(open, submittal(open, "07-92-00-01"), Office.none())).get(0)
            .contains("None is needed: what is covered is for information."));
        assertFalse(ReviewReports.form(open, submittal(open, "07-92-00-01")).get("action needed").getAsBoolean());
    }

    @Test
    void aResubmittalShowsWhatChangedAndLateAnswersAndUnconfirmedValuesAreSaid() throws Exception {
        Path job = copy();
        Path again = job.resolve("submittals/04-73-00-02");
        Files.createDirectories(again);
        Files.writeString(again.resolve("submittal.yaml"), """
            section: 04 73 00
            items: [lath.product-data]
            products: [lath-metal]
            replaces: 04-73-00-01
            review: {due: 2026-03-17, returned: 2026-03-20, notes: {W9.lath.weight: A note on a wall that went.}}
            """);
        Path product = job.resolve("products/lath-metal.yaml");
        edit(product, "value: \"1.85 kg/m²\"", "value: \"1.2 kg/m²\"");
        Files.writeString(product, Files.readString(product).replace("confirmed: yes", "confirmed: no"));
        OpenJob open = Samples.desk().open(job);
        Submittal now = submittal(open, "04-73-00-02");
        String report = String.join(" ", pages(ReviewReports.pdf(open, now, Office.none())));
        assertTrue(report.contains("Returned 2026-03-20 (3 days after it was due)"), report);
        assertTrue(report.contains("What changed since 04-73-00-01"), report);
        assertTrue(report.contains("read from the sheets and confirmed by nobody"), report);
        assertTrue(report.contains("falls short, not confirmed"), "the flag on the sheet says so");
        assertTrue(report.contains("W9.lath.weight: A note on a wall that went."), report);
        JsonObject form = ReviewReports.form(open, now);
        FormsTest.valid("review", form);
        assertTrue(form.get("unconfirmed").getAsInt() > 0);
        assertEquals("A note on a wall that went.", form.getAsJsonObject("notes without row").get("W9.lath.weight").getAsString());
        assertEquals(1, ReviewReports.unplaced(open, now).size());
        boolean dropped = false;
        for (JsonElement change : form.getAsJsonObject("since").getAsJsonArray("changes")) {
            dropped |= change.getAsJsonObject().get("kind").getAsString().equals("dropped");
        }
        assertTrue(dropped, "the other products are not in the resubmittal");
    }
}

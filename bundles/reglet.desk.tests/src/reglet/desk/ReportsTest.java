package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonObject;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Comparison;
import reglet.model.ReportCheck;
import reglet.model.Submittal;

/** Evaluation reports that stand in product data: whether they are in force on a submittal's day, and their conditions of use. */
class ReportsTest {
    /** A submittal of 2026-04-14 stands in the sample; the report ended 44 days before: 30 of March and 14 of April. */
    private static final String REPORT = """
        report:
          number: "MER-1 (invented)"
          ends: "2026-03-01"
        conditions:
          - text: "Studs are spaced at most 24 in."
            number: "5.1"
            page: 1
            box: [72.0, 100.0, 300.0, 12.0]
            limits:
              lath.weight: {value: "3.4 lb/yd2", compare: at least}
          - text: "The lath is kept dry until it is covered."
            number: "5.2"
            page: 2
            box: [72.0, 120.0, 300.0, 12.0]
          - text: "Not used above grade 9."
            page: 2
            box: [72.0, 140.0, 300.0, 12.0]
            limits:
              terms.work_ends: {value: "2026-12-31", compare: at most}
        """;
    @TempDir
    Path folder;
    private OpenJob job;
    private Submittal submittal;

    @BeforeEach
    void aLathWithAReport() throws Exception {
        Path copy = Samples.copy("mesa-library", folder.resolve("mesa-library"));
        Path product = copy.resolve("products/lath-light.yaml");
        Files.writeString(product, Files.readString(product).stripTrailing() + "\n" + REPORT);
        job = Samples.desk().open(copy);
        submittal = job.submittal("04-73-00-01").orElseThrow();
    }

    @Test
    void aReportThatEndedBeforeTheSubmittalIsToldInDays() {
        ReportCheck check = DataSheets.reports(job, submittal).get(0);
        assertEquals(-44, check.daysLeft().orElseThrow());
        assertTrue(check.ended());
        assertFalse(check.isClean());
        String words = DataSheets.reports(List.of(check));
        assertTrue(words.contains("lath-light: Report MER-1 (invented) ended 2026-03-01, 44 days before the submittal of 2026-04-14."),
            words);
    }

    @Test
    void aConditionIsHeldAgainstWhatTheJobRequiresOrIsLeftToAPerson() {
        ReportCheck check = DataSheets.reports(job, submittal).get(0);
        assertEquals(List.of("W1 lath.weight meets"), check.checks().stream().map(one -> one.wall() + " " + one.limit().property() + " "
            + one.result().text()).toList());
        assertEquals(List.of("The lath is kept dry until it is covered.", "Not used above grade 9."), check.byAPerson().stream()
            .map(condition -> condition.text()).toList());
        String words = DataSheets.reports(List.of(check));
        assertTrue(words.contains("W1: condition 5.1 asks for lath.weight at least 3.4 lb/yd²; the job requires at least 3.4 lb/yd²: meets"),
            words);
        assertTrue(words.contains("condition 5.2, page 2, a person has to check: The lath is kept dry until it is covered."), words);
        assertTrue(words.contains("condition, page 2, a person has to check: Not used above grade 9."), words);
    }

    @Test
    void programsAreToldTheSameAndWithoutReportsNothingNew() throws Exception {
        JsonObject form = Forms.comparison(job, job.compare(submittal), DataSheets.reports(job, submittal));
        FormsTest.valid("compare", form);
        JsonObject report = form.getAsJsonArray("reports").get(0).getAsJsonObject();
        assertEquals("lath-light", report.get("product").getAsString());
        assertEquals(-44, report.get("days left").getAsInt());
        assertEquals("2026-03-01", report.get("last day").getAsString());
        JsonObject first = report.getAsJsonArray("conditions").get(0).getAsJsonObject();
        assertEquals("meets", first.getAsJsonArray("checks").get(0).getAsJsonObject().get("result").getAsString());
        assertFalse(first.get("needs a person").getAsBoolean());
        assertTrue(report.getAsJsonArray("conditions").get(1).getAsJsonObject().get("needs a person").getAsBoolean());
        OpenJob without = Samples.open("mesa-library");
        Submittal same = without.submittal("04-73-00-01").orElseThrow();
        JsonObject plain = Forms.comparison(without, without.compare(same), DataSheets.reports(without, same));
        assertFalse(plain.has("reports"));
    }

    @Test
    void theComparisonPrintsThemToo() throws Exception {
        Outputs.of(job).comparison(submittal).write(Progress.NONE);
        try (var pdf = Loader.loadPDF(job.folder().resolve("out/04-73-00-01-comparison.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("44 days before the submittal of 2026-04-14"), text);
            assertTrue(text.contains("a person has to check"), text);
        }
    }

    @Test
    void allProductsAreComparedAsTheirSubmittalsAreAndWhatHasNoProductIsNotShown() throws Exception {
        OpenJob clinic = Samples.open("harbour-clinic");
        Comparison all = Reviews.all(clinic);
        for (Submittal one : clinic.job().submittals()) {
            Comparison of = clinic.compare(one);
            for (Comparison.Row row : of.rows()) {
                if (!row.product().isEmpty()) {
                    assertTrue(all.rows().contains(row), one.id() + ": " + row.id());
                }
            }
        }
        Comparison library = Reviews.all(Samples.open("mesa-library"));
        assertTrue(library.rows().stream().filter(row -> row.product().isEmpty())
            .allMatch(row -> row.result() == Comparison.Result.NOT_SHOWN));
        assertTrue(library.rows().stream().anyMatch(row -> row.product().isEmpty() && row.requirement().component().equals("sealant")));
    }
}

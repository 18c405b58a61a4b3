package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.ConditionCheck;
import reglet.model.ProductData;
import reglet.model.SheetReading;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;

/** Sheets read, printed for programs, and confirmed into a job. */
class DataSheetsTest {
    @TempDir
    Path folder;

    private OpenJob copy(String name) throws Exception {
        return Samples.desk().open(Samples.copy(name, folder.resolve(name)));
    }

    private static void valid(JsonObject form) throws IOException {
        try (InputStream in = SheetForms.class.getResourceAsStream("schema/sheet.json")) {
            assertEquals(Set.of(), JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in)
                .validate(Forms.text(form), InputFormat.JSON));
        }
    }

    @Test
    void resultsByTwoMethodsArePrintedForProgramsOneWithinTheOther() throws Exception {
        Path sheet = folder.resolve("paper.pdf");
        write(sheet, List.of("Brindle kraft building paper, an invented product", "Water vapor permeance, ASTM E96 Procedure A: 7 perms",
            "Water vapor permeance, ASTM E96 Procedure B: 21 perms", "Exposure: 60 days"));
        SheetReading reading = DataSheets.read(sheet, copy("mesa-library").pack(), "inner_ply");
        JsonObject form = SheetForms.sheet(reading);
        valid(form);
        JsonObject shown = form.getAsJsonArray("values").asList().stream().map(JsonElement::getAsJsonObject).filter(one ->
            one.get("property")
            .getAsString().equals("inner_ply.permeance")).findFirst().orElseThrow();
        assertEquals("ASTM E96 Procedure A", shown.get("method").getAsString());
        JsonObject also = shown.getAsJsonArray("also shown").get(0).getAsJsonObject();
        assertEquals("ASTM E96 Procedure B", also.get("method").getAsString());
        assertTrue(also.has("box") && also.has("confidence") && !also.get("confirmed").getAsBoolean());
        assertEquals(3 * shown.get("value").getAsDouble(), also.get("value").getAsDouble(), 1e-14);
        assertTrue(DataSheets.report(sheet, reading).contains("also shown on page 1: 21 perm"), DataSheets.report(sheet, reading));
    }

    private static void write(Path file, List<String> lines) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream text = new PDPageContentStream(document, page)) {
                text.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 10);
                for (int i = 0; i < lines.size(); i++) {
                    text.beginText();
                    text.newLineAtOffset(72, 700 - 24 * i);
                    text.showText(lines.get(i));
                    text.endText();
                }
            }
            document.save(file.toFile());
        }
    }

    @Test
    void everySheetOfTheSamplesIsReadAsItsProductDataSays() throws Exception {
        for (String name : List.of("mesa-library", "harbour-clinic")) {
            OpenJob job = Samples.open(name);
            int stated = 0;
            int read = 0;
            for (ProductData product : job.job().products()) {
                SheetReading reading = DataSheets.read(job.folder().resolve(product.sheet()), job.pack(), "");
                valid(SheetForms.sheet(reading));
                assertEquals(product.component(), reading.component(), product.id());
                stated += product.values().size();
                for (SheetReading.Found found : reading.values()) {
                    SheetValue truth = product.values().stream().filter(value -> value.property().equals(found.value().property()))
                        .findFirst().orElse(null);
                    if (truth == null) {
                        // what the head of a sheet says in passing
                        assertTrue(found.confidence() < 0.9, product.id() + ": " + found);
                        continue;
                    }
                    assertEquals(truth.value().text(), found.value().value().text(), product.id() + " " + truth.property());
                    assertEquals(truth.method(), found.value().method(), product.id() + " " + truth.property());
                    assertEquals(truth.page(), found.value().page(), product.id() + " " + truth.property());
                    assertFalse(found.value().confirmed());
                    read++;
                }
            }
            assertTrue(read >= 0.95 * stated, name + ": " + read + " of " + stated);
        }
    }

    @Test
    void confirmedValuesStandInTheJobAndAreCompared() throws Exception {
        OpenJob job = copy("mesa-library");
        Path sheet = Samples.open("harbour-clinic").folder().resolve("sheets/mat-10.pdf");
        SheetReading reading = DataSheets.read(sheet, job.pack(), "");
        OpenJob after = DataSheets.confirm(job, sheet, reading, DataSheets.ofModel(sheet, reading, "", "mat-new"));
        ProductData product = after.job().products().stream().filter(one -> one.id().equals("mat-new")).findFirst().orElseThrow();
        assertEquals("sheets/mat-10.pdf", product.sheet());
        assertEquals(reading.values().size(), product.values().size());
        assertTrue(product.values().stream().allMatch(SheetValue::confirmed));
        assertEquals(-1, Files.mismatch(sheet, job.folder().resolve("sheets/mat-10.pdf")));
        // once more changes nothing
        String text = Files.readString(job.folder().resolve("products/mat-new.yaml"));
        DataSheets.confirm(after, sheet, reading, DataSheets.ofModel(sheet, reading, "", "mat-new"));
        assertEquals(text, Files.readString(job.folder().resolve("products/mat-new.yaml")));
    }

    @Test
    void anotherProductOfTheSameNameIsNotOverwritten() throws Exception {
        OpenJob job = copy("mesa-library");
        Path sheet = Samples.open("harbour-clinic").folder().resolve("sheets/mat-10.pdf");
        SheetReading reading = DataSheets.read(sheet, job.pack(), "");
        String before = Files.readString(job.folder().resolve("products/mat-6.yaml"));
        assertThrows(UnusableInput.class, () -> DataSheets.confirm(job, sheet, reading, DataSheets.ofModel(sheet, reading, "", "mat-6")));
        assertEquals(before, Files.readString(job.folder().resolve("products/mat-6.yaml")));
        assertFalse(Files.exists(job.folder().resolve("sheets/mat-10.pdf")));
    }

    @Test
    void aModelThatTheSheetDoesNotShowIsRefused() throws Exception {
        Path sheet = Samples.open("mesa-library").folder().resolve("sheets/mat-6.pdf");
        SheetReading reading = DataSheets.read(sheet, Samples.open("mesa-library").pack(), "");
        assertThrows(UnusableInput.class, () -> DataSheets.ofModel(sheet, reading, "X-1", ""));
        assertThrows(UnusableInput.class, () -> DataSheets.read(sheet, Samples.open("mesa-library").pack(), "roof"));
    }

    @Test
    void conditionsOfAReportAreHeldAgainstTheJob() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Path sheet = folder.resolve("report.pdf");
        List<String> lines = List.of("Evaluation Report MER-0911 (invented)", "Report holder: Oxbow Papers",
            "Water resistance class: Type II, ASTM E2556",
            "Water-resistive barrier", "CONDITIONS OF USE", "5.1 Horizontal laps must be at least 2 inches.",
                "5.2 End laps must be at least 9 inches.");
        LinesOnASheet.write(sheet, lines);
        SheetReading reading = DataSheets.read(sheet, job.pack(), "inner_ply");
        List<ConditionCheck> checks = DataSheets.conditions(job, reading);
        valid(SheetForms.sheet(reading, checks));
        List<String> told = checks.stream().map(check -> check.condition().number() + " " + check.limit().property() + " "
            + check.result().text()).distinct().toList();
        assertEquals(List.of("5.1 inner_ply.lap meets", "5.2 inner_ply.end_lap cannot compare"), told, DataSheets.report(checks));
    }
}

package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Choice;
import reglet.model.Comparison.Result;
import reglet.model.Finding;
import reglet.model.Quantity;
import reglet.model.SectionDocument;
import reglet.model.Stated;
import reglet.model.Submittal;
import reglet.model.WallType;

class PapersTest {

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library"})
    void aCleanSampleHasNoConflictNoGapAndFewCautions(String name) throws Exception {
        OpenJob job = Samples.open(name);
        List<String> findings = job.checked().findings().stream().map(Finding::says).toList();
        assertTrue(job.checked().isClean(), String.join("\n", findings));
        job.job().walls().forEach(wall -> assertTrue(job.checked().findings().stream()
            .filter(finding -> finding.wall().isEmpty() || finding.wall().equals(wall.id())).count() <= 5,
            "a flood of cautions on " + wall.id()));
    }

    @Test
    void aSectionMarksWhatTheLibraryKnowsFromMemoryAndNobodySet() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        String mark = "To be confirmed before issue, known from memory only: Paragraph 3.6.A.1, lap of edges and ends, at least 1 in "
            + "(25.4 mm); see "
            + "ASTM C1063 2021, laps of metal plaster bases.";
        assertTrue(job.section("04 73 00").cautions().contains(mark), String.join("\n", job.section("04 73 00").cautions()));
        OpenJob set = job.with(job.job().with(wall(job.job().wall("W1").orElseThrow()))
            .with(wall(job.job().wall("W2").orElseThrow())));
        assertTrue(set.section("04 73 00").cautions().stream().noneMatch(caution -> caution.contains("lap of edges and ends")));
    }

    /** The same wall with the lap of its lath set by a person. */
    private static WallType wall(WallType wall) {
        Choice lath = wall.choice("lath").orElseThrow();
        return wall.with(new Choice("lath", lath.accept(), Map.of("lap", new Stated(Quantity.parse("1 in").orElseThrow(), lath.at())),
            lath.by(), lath.because(), lath.at()));
    }

    @Test
    void everyPlantedMistakeIsFoundAndNothingElse() throws Exception {
        List<String> expected = new ArrayList<>();
        for (String line : Files.readAllLines(Samples.job("orchard-row").resolve("expected.yaml"))) {
            if (line.startsWith("- {")) {
                String meeting = line.contains("meeting: ") ? "/" + word(line, "meeting") : "";
                expected.add(word(line, "kind") + " " + word(line, "rule") + " " + word(line, "wall") + meeting);
            }
        }
        List<String> found = new ArrayList<>();
        Samples.open("orchard-row").checked().findings().forEach(finding -> found.add(finding.kind().text() + " " + finding.key()));
        expected.sort(null);
        found.sort(null);
        assertEquals(expected, found);
        assertTrue(expected.size() >= 8);
    }

    private static String word(String line, String key) {
        return line.replaceFirst(".*[{ ]" + key + ": ([^,}]*).*", "$1");
    }

    @Test
    void theSameJobGivesTheSameBytes() throws Exception {
        Map<String, byte[]> first = bytes(Samples.open("mesa-library"));
        Map<String, byte[]> second = bytes(Samples.open("mesa-library"));
        assertEquals(first.keySet(), second.keySet());
        first.forEach((name, bytes) -> assertTrue(java.util.Arrays.equals(bytes, second.get(name)), name + " differs"));
    }

    private static Map<String, byte[]> bytes(OpenJob job) throws Exception {
        Map<String, byte[]> bytes = new TreeMap<>();
        Outputs.of(job).all().make().forEach(output -> bytes.put(output.name(), output.bytes()));
        return bytes;
    }

    @Test
    void everyPaperSaysWhoDecides(@TempDir Path temp) throws Exception {
        OpenJob job = Samples.open("mesa-library");
        for (Map.Entry<String, byte[]> paper : bytes(job).entrySet()) {
            String text = paper.getKey().endsWith(".pdf") ? pdf(paper.getValue())
                : paper.getKey().endsWith(".md") || paper.getKey().endsWith(".html") ? new String(paper.getValue(), StandardCharsets.UTF_8)
                : "licensed professional";
            assertTrue(text.replaceAll("\\s+", " ").contains("licensed professional"), paper.getKey() + " lacks the caution");
        }
    }

    private static String pdf(byte[] bytes) throws Exception {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertTrue(document.getNumberOfPages() > 0);
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void everySlotOfADraftedSectionOfACleanSampleIsFilled() throws Exception {
        for (String name : List.of("harbour-clinic", "mesa-library")) {
            for (SectionDocument section : Samples.open(name).sections()) {
                section.paragraphs().forEach(paragraph -> assertTrue(!paragraph.plain().contains("not decided")
                    && !paragraph.plain().contains("${"), name + " " + paragraph.path() + ": " + paragraph.plain()));
            }
        }
    }

    @Test
    void aPackageHoldsEverySheetWithItsMark() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Submittal submittal = job.submittal("04-73-00-01").orElseThrow();
        String text = pdf(Outputs.of(job).submittalPackage(submittal).make().get(0).bytes());
        for (String product : submittal.products()) {
            String title = job.job().products().stream().filter(data -> data.id().equals(product)).findFirst().orElseThrow().name();
            assertTrue(text.contains(title), title + " is not in the package");
        }
        assertTrue(text.contains("Submittal 04-73-00-01"), "no page marks");
    }

    @Test
    void theReviewerIsShownWhatFallsShortInTheSample() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        Map<String, Result> results = new TreeMap<>();
        job.compare(job.job().submittals().get(0)).rows().forEach(row -> results.put(row.requirement().path(), row.result()));
        assertEquals(Result.FALLS_SHORT, results.get("lath.weight"));
        assertEquals(Result.DIFFERENT_METHOD, results.get("mat.drainage_efficiency"));
        assertEquals(Result.NOT_SHOWN, results.get("setting_bed.mortar"));
        assertEquals(Result.MEETS, results.get("veneer.weight"));
    }

    @Test
    void theSubmittalOfTheCleanSampleMeetsEverything() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        for (Submittal submittal : job.job().submittals()) {
            job.compare(submittal).rows().forEach(row -> assertEquals(Result.MEETS, row.result(),
                submittal.id() + " " + row.requirement().wall() + " " + row.requirement().path() + " " + row.note()));
        }
    }
}

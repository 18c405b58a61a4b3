package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Box;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Report;
import reglet.model.UnusableInput;
import reglet.reading.Child;
import reglet.reading.Made;
import reglet.reading.sheet.SheetFixtures.Fixture;
import reglet.reading.sheet.SheetJudge.Score;

/** Invented data sheets in many layouts, and what a person gets of them. */
class SheetsTest {
    @TempDir
    Path folder;

    /** Readings of sheets, which many tests look at. */
    private static final Map<String, SheetReading> READ = new HashMap<>();

    private SheetReading read(Fixture fixture, String component) throws Exception {
        String key = fixture.name() + " " + component;
        if (!READ.containsKey(key)) {
            READ.put(key, take(fixture, component));
        }
        return READ.get(key);
    }

    private SheetReading take(Fixture fixture, String component) throws Exception {
        Path sheet = Made.file(folder, fixture.name() + ".pdf", fixture.pdf());
        return SheetReader.read(SheetFixtures.pages(sheet), SheetFixtures.pack(), component);
    }

    private SheetReading read(String name) throws Exception {
        return read(SheetFixtures.named(name), "");
    }

    private Score score(boolean aside) throws Exception {
        Set<String> setAside = SheetFixtures.setAside("set-aside.txt");
        Score total = new Score(0, 0, 0, 0, 0, List.of());
        for (Fixture fixture : SheetFixtures.all()) {
            if (setAside.contains(fixture.name()) == aside) {
                total = total.plus(SheetJudge.judge(fixture, read(fixture, "")));
            }
        }
        System.out.printf("%s: %d of %d values found, %d of %d shown are right, %d wrong ones are shown as sure%n",
            aside ? "sheets set aside at first" : "sheets tuned on", total.found(), total.truths(), total.right(), total.shown(),
                total.sure());
        return total;
    }

    @Test
    void valuesOfTheSheetsThatTheReaderIsTunedOnAreFoundAndRight() throws Exception {
        Score score = score(false);
        assertEquals(List.of(), score.faults());
    }

    @Test
    void valuesOfTheSheetsSetAsideAreFoundAndRight() throws Exception {
        Score score = score(true);
        assertTrue(score.share() >= 0.95, score.found() + " of " + score.truths());
        assertTrue(score.correctness() >= 0.99, score.right() + " of " + score.shown());
        assertEquals(0, score.sure());
    }

    @Test
    void aThirdOfTheSheetsAtLeastIsNotTunedOnAndThereAreThirtyOfThem() throws Exception {
        List<String> names = SheetFixtures.all().stream().map(Fixture::name).toList();
        assertTrue(names.size() >= 30);
        assertTrue(names.containsAll(SheetFixtures.setAside("set-aside.txt")));
        assertTrue(SheetFixtures.setAside("set-aside.txt").size() * 4 > names.size(), names.size() + " sheets");
    }

    /** The words in the rectangle are looked up by another way through the PDF library. */
    @Test
    void theRectangleOfAValueHoldsItsWords() throws Exception {
        for (Fixture fixture : SheetFixtures.all()) {
            if (fixture.name().matches("(?:15|16|48|60)-.*")) {
                // turned text is looked up by its drawn place instead
                continue;
            }
            SheetReading reading = read(fixture, "");
            try (PDDocument document = Loader.loadPDF(fixture.pdf())) {
                for (Found found : reading.values()) {
                    Box box = found.value().box().orElseThrow();
                    PDFTextStripperByArea area = new PDFTextStripperByArea();
                    area.setSortByPosition(true);
                    area.addRegion("value", new Rectangle2D.Double(box.x() - 1, box.y() - 2, box.width() + 2, box.height() + 3));
                    area.extractRegions(document.getPage(found.value().page() - 1));
                    String words = area.getTextForRegion("value").replaceAll("[\\s–]+", "");
                    String start = found.value().text().replaceAll("[\\s–]+", "");
                    assertTrue(words.contains(start.substring(0, Math.min(3, start.length()))), fixture.name() + ": " + found + " in "
                        + words);
                }
            }
        }
    }

    @Test
    void valuesThatAreNotGivenAreNotShown() throws Exception {
        assertEquals(List.of("mat.thickness", "mat.fabric"), read("17-missing-values").values().stream().map(found -> found.value()
            .property()).toList());
    }

    @Test
    void aPageWithoutTextNeedsAPerson() throws Exception {
        assertTrue(read("22-scan").unread().contains(new SheetReading.Unread(2, Optional.empty(), "", "picture without text")));
    }

    @Test
    void aTextThatLeavesTwoValuesOpenIsTakenDownAsUnread() throws Exception {
        SheetReading reading = read("49-lath-prose");
        assertTrue(reading.unread().stream().anyMatch(unread -> unread.text().contains("2.5 or 3.4") && unread.box().isPresent()));
        assertTrue(reading.values().stream().noneMatch(found -> found.value().property().equals("lath.weight")));
    }

    @Test
    void modelsAreToldApart() throws Exception {
        assertEquals(List.of("ML-25", "ML-34", "RL-34"), read("05-lath-models-columns").models());
        assertEquals(List.of("Ledge", "Ashlar"), read("47-veneer-two-tables").models());
    }

    @Test
    void productAndMakerAreNamed() throws Exception {
        SheetReading reading = read("01-lath-ruled");
        assertEquals("Tamarack Diamond Lath", reading.product());
        assertEquals("Tamarack Lath Works", reading.maker());
    }

    @Test
    void aComponentThatAPersonNamesIsTaken() throws Exception {
        SheetReading reading = read(SheetFixtures.named("12-ply-dual-models"), "inner_ply");
        assertEquals("inner_ply", reading.component());
        assertTrue(reading.values().stream().allMatch(found -> found.value().property().startsWith("inner_ply.")));
    }

    @Test
    void anEvaluationReportTellsNumberHolderCodesDatesAndConditions() throws Exception {
        Report report = read("21-evaluation-report").report().orElseThrow();
        assertEquals("MER-0417", report.number());
        assertEquals("Hollin Sheet Goods", report.holder());
        assertEquals("Weftguard 60 water-resistive barrier", report.subject());
        assertEquals(List.of("IBC 2021", "IRC 2018"), report.codes());
        assertEquals("2024-03-01", report.issued());
        assertEquals("2026-03-01", report.ends());
        assertEquals(List.of("5.1", "5.2", "5.3"), report.conditions().stream().map(Condition::number).toList());
    }

    @Test
    void conditionsOfUseBecomeRequirements() throws Exception {
        List<String> limits = read("21-evaluation-report").report().orElseThrow().conditions().stream()
            .flatMap(condition -> condition.limits().stream())
            .map(limit -> limit.property() + " " + limit.compare().orElseThrow().text() + " " + limit.value().text()).toList();
        assertEquals(List.of("inner_ply.lap at least 2 in", "inner_ply.end_lap at least 6 in", "inner_ply.exposure at most 90 d"), limits);
        assertEquals(List.of("lath.lap at least 1 in", "lath.tie at most 9 in"), read("53-lath-report").report().orElseThrow()
            .conditions().stream()
            .flatMap(condition -> condition.limits().stream()).map(limit -> limit.property() + " " + limit.compare().orElseThrow().text()
                + " "
                + limit.value().text()).toList());
    }

    @Test
    void aCertificateIsReadAsOne() throws Exception {
        Report report = read("54-mortar-certificate").report().orElseThrow();
        assertEquals("CC-2210", report.number());
        assertEquals("2026-02-10", report.ends());
        assertFalse(read("01-lath-ruled").report().isPresent());
    }

    @Test
    void theSameSheetIsReadTheSameThroughTheProcess() throws Exception {
        Fixture fixture = SheetFixtures.named("05-lath-models-columns");
        Path sheet = Made.file(folder, "through.pdf", fixture.pdf());
        long started = System.nanoTime();
        SheetReading reading = Child.usual().read(sheet, SheetFixtures.pack(), "");
        System.out.printf("a sheet of one page took %d ms with its process%n", (System.nanoTime() - started) / 1_000_000);
        assertEquals(read(fixture, ""), reading);
    }

    @Test
    void aFileThatIsNoSheetIsRefusedWithTheReason() throws IOException {
        Path letter = Made.file(folder, "letter.pdf", "Dear reader".getBytes(StandardCharsets.UTF_8));
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Child.usual().read(letter, SheetFixtures.pack(), ""));
        assertTrue(refused.getMessage().contains("it is no PDF"), refused.getMessage());
        assertThrows(UnusableInput.class, () -> Child.usual().read(folder.resolve("absent.pdf"), SheetFixtures.pack(), ""));
    }
}

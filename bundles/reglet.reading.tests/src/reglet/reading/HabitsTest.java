package reglet.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** A package of sheets in all habits of makers and programs, put together once and read back. */
@TestInstance(Lifecycle.PER_CLASS)
class HabitsTest {
    private static final int MADE = 60;
    private static final int OFFICE = 3;
    private static final int SHEETS = MADE + OFFICE;

    @TempDir
    static Path folder;

    private List<Habits.Sheet> sheets;
    private List<Measure> measures;
    private PackagePlan plan;
    private Path written;

    @BeforeAll
    void bind() throws IOException {
        sheets = new ArrayList<>(Habits.make(folder, MADE));
        sheets.addAll(OfficeSheets.make(folder, MADE, OFFICE));
        measures = Child.usual().measure(sheets.stream().map(Habits.Sheet::file).toList());
        plan = Habits.plan(sheets, measures);
        written = folder.resolve("package.out");
        try (OutputStream out = Files.newOutputStream(written)) {
            Child.usual().assemble(plan, out);
        }
    }

    private PDDocument bound() throws IOException {
        return Loader.loadPDF(written.toFile());
    }

    @Test
    void everySheetGoesInAsItCanOrTellsWhyNot() {
        for (int i = 0; i < SHEETS; i++) {
            assertEquals(sheets.get(i).pages(), measures.get(i).pages(), sheets.get(i).habit() + ": " + measures.get(i).problem());
            assertEquals(sheets.get(i).pages() == 0, !measures.get(i).problem().isEmpty(), sheets.get(i).habit());
        }
        assertTrue(measures.stream().filter(Measure::usable).count() > SHEETS / 2);
        assertEquals(List.of("its maker forbids binding it into another document", "it is encrypted and opens only with a password",
            "its end is missing: it was cut off; get a whole copy", "it has no pages", "it is no PDF", "it is no PDF",
            "its pages are made by a forms program when it is opened (dynamic XFA); print it to a plain PDF"),
            measures.subList(0, Habits.ALL.size()).stream().map(Measure::problem).filter(problem -> !problem.isEmpty()).toList());
    }

    @Test
    void everyPageIsThereWithItsWordAndItsOwnNumbers() throws IOException {
        try (PDDocument bound = bound()) {
            assertEquals(plan.total(), bound.getNumberOfPages());
            int page = 1;
            for (int i = 0; i < SHEETS; i++) {
                assertTrue(PageLook.of(bound.getPage(page)).text().contains("Divider " + (i + 1)));
                page++;
                for (int own = 1; own <= sheets.get(i).pages(); own++) {
                    String text = PageLook.of(bound.getPage(page)).text();
                    assertTrue(text.contains("Sheet " + i + ", page " + own + " of " + sheets.get(i).pages() + " - package page "
                        + (page + 1)),
                        sheets.get(i).habit() + ": " + text);
                    assertTrue(sheets.get(i).words().isEmpty() || text.contains(sheets.get(i).words().get(own - 1)), text);
                    page++;
                }
            }
            assertEquals(page, bound.getNumberOfPages());
        }
    }

    @Test
    void everyWordIsHighlightedWhereItStandsAndHasItsNumber() throws IOException {
        try (PDDocument bound = bound()) {
            int page = 1;
            int number = 0;
            for (Habits.Sheet sheet : sheets) {
                page++;
                for (int own = 0; own < sheet.pages(); own++, page++) {
                    PageLook look = PageLook.of(bound.getPage(page));
                    assertEquals(sheet.words().isEmpty() ? 0 : 1, look.highlights().size(), sheet.habit());
                    if (!sheet.words().isEmpty()) {
                        covers(look, sheet.words().get(own), sheet.habit());
                        assertTrue(look.text().contains("N" + ++number), sheet.habit() + ": " + look.text());
                    }
                }
            }
            assertTrue(number > SHEETS / 2);
        }
    }

    private static void covers(PageLook look, String word, String habit) {
        Rectangle2D marked = look.highlights().get(0);
        for (Point2D letter : look.letters(word)) {
            assertTrue(marked.contains(letter), habit + ": " + marked + " is not at " + letter);
        }
        assertTrue(marked.getWidth() < 90 && marked.getHeight() < 90, habit + ": as large as the word, but " + marked);
        for (String other : List.of("Weight", "lb")) {
            assertFalse(marked.contains(look.letters(other).get(0)), habit + " marks " + other);
        }
    }

    @Test
    void everyLinkLandsOnTheWordsPageBesideTheWord() throws IOException {
        try (PDDocument bound = bound()) {
            List<PDAnnotation> links = bound.getPage(0).getAnnotations();
            assertEquals(plan.links().size(), links.size());
            for (int i = 0; i < links.size(); i++) {
                PDPageXYZDestination to = (PDPageXYZDestination) ((PDActionGoTo) ((PDAnnotationLink) links.get(i)).getAction())
                    .getDestination();
                assertEquals(plan.links().get(i).target(), to.retrievePageNumber() + 1);
                PDPage page = bound.getPage(to.retrievePageNumber());
                Rectangle2D marked = PageLook.of(page).highlights().get(0);
                double far = new Point2D.Double(marked.getCenterX(), marked.getCenterY()).distance(to.getLeft(), to.getTop());
                assertTrue(far < 170, "the upper left corner of the view is " + far + " from the word, turned " + page.getRotation());
            }
        }
    }

    @Test
    void everyBookmarkLandsOnTheFirstPageOfItsPart() throws IOException {
        try (PDDocument bound = bound()) {
            int seen = 0;
            for (PDOutlineItem item : bound.getDocumentCatalog().getDocumentOutline().children()) {
                seen++;
                assertTrue(PageLook.of(bound.getPage(page(item))).text().contains(item.getTitle()));
                for (PDOutlineItem below : item.children()) {
                    seen++;
                    assertTrue(PageLook.of(bound.getPage(page(below))).text().contains(below.getTitle() + ", page 1 of"), below.getTitle());
                }
            }
            assertEquals(plan.parts().size(), seen);
        }
    }

    private static int page(PDOutlineItem item) throws IOException {
        return ((PDPageDestination) item.getDestination()).retrievePageNumber();
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws IOException {
        assertTrue(Arrays.equals(Files.readAllBytes(written), Child.usual().assemble(plan)));
    }

    /** qpdf, from Debian, reads the package on its own and finds nothing wrong in its structure. */
    @Test
    void anIndependentReaderFindsNothingWrong() throws Exception {
        assertTrue(Arrays.stream(System.getenv("PATH").split(File.pathSeparator)).anyMatch(place -> Files.isExecutable(
            Path.of(place, "qpdf"))), "qpdf is not installed; releng/setup installs it");
        Process process = new ProcessBuilder("qpdf", "--check", written.toString()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue(), said);
    }

    @Test
    void aSheetThatStopsTheProcessIsReplacedAndThePackageIsMade() throws IOException {
        Path bad = Made.file(folder, "bad.pdf", Made.pdf("stops it"));
        Path good = Made.file(folder, "good.pdf", Made.pdf("goes in"));
        PackagePlan asked = new PackagePlan("Package", Made.pdf("Cover"), List.of(Made.own("Cover", 1, 1), Made.sheet("Sheet 1", 1, bad),
            Made.sheet("Sheet 2", 1, good)), List.of());
        byte[] made = Child.of(Misbehaving.StopsOnce.class, new Child.Limits(64, Duration.ofSeconds(60),
            Duration.ofSeconds(60), 1 << 30)).assemble(asked);
        try (PDDocument bound = Loader.loadPDF(made)) {
            assertTrue(Made.text(bound, 2).contains("could not be bound in: reading it broke off without an answer"), Made.text(bound, 2));
            assertTrue(Made.text(bound, 3).startsWith("goes in"));
        }
    }
}

package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Box;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.ProductData;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/** The package of a sample job, handed in again with more, read back from its file. */
class PackagesTest {
    private static final String AGAIN = "04-73-00-02";

    @TempDir
    static Path folder;

    private static OpenJob job;
    private static Submittal submittal;
    private static byte[] whole;

    @BeforeAll
    static void bind() throws Exception {
        Samples.copy("harbour-clinic", folder);
        String text = Files.readString(folder.resolve("submittals/04-73-00-01/submittal.yaml"));
        int review = text.indexOf("\nreview:");
        text = (review < 0 ? text : text.substring(0, review + 1)).replace("items: [", "items: [fasteners.calculation, ")
            .replace("products: [lath-metal", "products: [lath-light, lath-metal");
        Files.copy(folder.resolve("sheets/ply-inner.pdf"), folder.resolve("sheets/mat-report.pdf"));
        for (String file : List.of("products/lath-light.yaml", "sheets/lath-light.pdf")) {
            Files.copy(Samples.job("mesa-library").resolve(file), folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        // the light lath as one that falls short of what wall type W2 requires too
        Path light = folder.resolve("products/lath-light.yaml");
        Files.writeString(light, Files.readString(light).replace("value: \"2.5 lb/yd²\"", "value: \"1.9 lb/yd²\""));
        Files.createDirectories(folder.resolve("submittals").resolve(AGAIN));
        Files.writeString(folder.resolve("submittals").resolve(AGAIN).resolve("submittal.yaml"), text + """
            replaces: 04-73-00-01
            papers:
              - {file: sheets/mat-report.pdf, kind: test report, for: mat, title: Drainage of the mat}
            colours: {stone-ledge: Invented grey}
            substitutions:
              - {product: lath-light, for: lath, cost: less by 40 dollars, reason: stock at hand}
            """);
        job = Samples.desk().open(folder);
        submittal = job.submittal(AGAIN).orElseThrow();
        whole = Outputs.of(job).submittalPackage(submittal).make().get(0).bytes();
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ").strip();
    }

    private static String within(PDPage page, double x, double y, double width, double height) throws IOException {
        PDFTextStripperByArea stripper = new PDFTextStripperByArea();
        stripper.addRegion("box", new Rectangle2D.Double(x, y, width, height));
        stripper.extractRegions(page);
        return stripper.getTextForRegion("box").replaceAll("\\s+", " ").strip();
    }

    /** Pages by title of their bookmark, counted from 1. */
    private static Map<String, Integer> bookmarks(PDDocument document) throws IOException {
        Map<String, Integer> pages = new LinkedHashMap<>();
        for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
            pages.put(item.getTitle(), ((PDPageDestination) item.getDestination()).retrievePageNumber() + 1);
            for (PDOutlineItem below : item.children()) {
                pages.put("- " + below.getTitle(), ((PDPageDestination) below.getDestination()).retrievePageNumber() + 1);
            }
        }
        return pages;
    }

    /** A link with the words under it. */
    private record Link(String words, int target) {
    }

    private static List<Link> links(PDDocument document, int page) throws IOException {
        List<Link> links = new ArrayList<>();
        PDPage from = document.getPage(page - 1);
        for (PDAnnotation annotation : from.getAnnotations()) {
            PDRectangle box = annotation.getRectangle();
            links.add(new Link(within(from, box.getLowerLeftX(), from.getMediaBox().getHeight() - box.getUpperRightY(), box.getWidth(),
                box.getHeight()), ((PDPageDestination) ((PDActionGoTo) ((PDAnnotationLink) annotation).getAction()).getDestination())
                .retrievePageNumber() + 1));
        }
        return links;
    }

    @Test
    void bookmarksNameEveryGroupAndSheetAndLandOnTheirTitle() throws Exception {
        try (PDDocument document = Loader.loadPDF(whole)) {
            Map<String, Integer> pages = bookmarks(document);
            assertTrue(List.copyOf(pages.keySet()).containsAll(List.of("Transmittal", "What changed since 04-73-00-01", "Contents",
                "Register items covered", "Compliance table", "Missing evidence", "Data sheets", "Certificates and reports",
                "- Drainage of the mat", "Criteria: Lath fasteners, calculation", "Worksheets", "Details")), pages.toString());
            for (Map.Entry<String, Integer> page : pages.entrySet()) {
                String title = page.getKey().equals("Transmittal") ? "Submittal 04-73-00-02" : page.getKey().replaceFirst("^- ", "");
                assertTrue(text(document, page.getValue()).contains(title), page + ": " + text(document, page.getValue()));
            }
        }
    }

    @Test
    void theContentsCiteThePageThatTheirLinksLeadTo() throws Exception {
        try (PDDocument document = Loader.loadPDF(whole)) {
            List<Link> links = links(document, bookmarks(document).get("Contents"));
            assertTrue(links.size() > 30);
            for (int i = 0; i < links.size(); i += 2) {
                assertEquals(links.get(i).target(), links.get(i + 1).target());
                assertEquals(String.valueOf(links.get(i).target()), links.get(i + 1).words());
            }
        }
    }

    @Test
    void everyRowOfTheComplianceTableCitesThePageAndTheNumberWhereItsValueStands() throws Exception {
        List<Row> shown = job.compare(submittal).rows().stream().filter(row -> row.submitted().isPresent()).toList();
        try (PDDocument document = Loader.loadPDF(whole)) {
            List<Link> links = new ArrayList<>();
            Map<String, Integer> pages = bookmarks(document);
            int end = pages.values().stream().filter(page -> page > pages.get("Compliance table")).min(Integer::compare).orElseThrow();
            for (int page = pages.get("Compliance table"); page < end; page++) {
                links.addAll(links(document, page));
            }
            assertEquals(2 * shown.size(), links.size());
            for (int i = 0; i < shown.size(); i++) {
                SheetValue value = shown.get(i).submitted().orElseThrow();
                Link page = links.get(2 * i);
                assertEquals(String.valueOf(page.target()), page.words());
                PDPage sheet = document.getPage(page.target() - 1);
                Box box = value.box().orElseThrow();
                assertTrue(within(sheet, box.x(), box.y(), box.width(), box.height()).startsWith(value.text()), value.text());
                // the number stands in the margin at the height of the value
                String number = links.get(2 * i + 1).words();
                assertTrue(List.of(within(sheet, 0, box.y() + box.height() / 2 - 6, 45, 12).split(" ")).contains(number),
                    shown.get(i).id() + ": " + number);
                assertTrue(text(document, page.target()).contains("page " + value.page() + " of "), "the page of its own sheet");
            }
        }
    }

    @Test
    void theComplianceTableAgreesWithTheComparison() throws Exception {
        try (PDDocument document = Loader.loadPDF(whole)) {
            Map<String, Integer> pages = bookmarks(document);
            int end = pages.values().stream().filter(page -> page > pages.get("Compliance table")).min(Integer::compare).orElseThrow();
            StringBuilder table = new StringBuilder();
            for (int page = pages.get("Compliance table"); page < end; page++) {
                table.append(text(document, page)).append(' ');
            }
            for (Result result : Result.values()) {
                long rows = job.compare(submittal).rows().stream().filter(row -> row.result() == result).count();
                assertEquals(rows, table.toString().split("[●▼○◊□] " + result.text(), -1).length - 1, result.text());
            }
            assertTrue(job.compare(submittal).rows().stream().anyMatch(row -> row.result() == Result.FALLS_SHORT));
        }
    }

    @Test
    void whatFallsShortHasAFormWithWhatIsSaidAndBlanksForTheRest() throws Exception {
        try (PDDocument document = Loader.loadPDF(whole)) {
            Map<String, Integer> pages = bookmarks(document);
            String title = pages.keySet().stream().filter(found -> found.startsWith("Substitution asked for")).findFirst().orElseThrow();
            String form = text(document, pages.get(title));
            for (String said : List.of("Ridgeback 250", "at least 2.5 lb/yd²", "1.9 lb/yd²", "falls short by", "Cost less by 40 dollars",
                "Time Work of others Reason stock at hand")) {
                assertTrue(form.contains(said), said + " in " + form);
            }
        }
    }

    @Test
    void theCriteriaOfADelegatedDesignAreThereAndSealedCalculationsAreAskedFor() throws Exception {
        try (PDDocument document = Loader.loadPDF(whole)) {
            Map<String, Integer> pages = bookmarks(document);
            String criteria = text(document, pages.get("Criteria: Lath fasteners, calculation"));
            assertTrue(criteria.contains("Calculations sealed by a professional licensed where the building stands are asked for"),
                criteria);
            assertTrue(criteria.contains("Wind at the corners: basic wind speed of the risk category 115 mph"), criteria);
            assertTrue(text(document, pages.get("Missing evidence")).contains("Lath fasteners: calculation is asked for"));
            assertFalse(text(document, pages.get("Missing evidence")).contains("mat: test report"), "its report is enclosed");
        }
    }

    @Test
    void aDividedPackageLeadsFromEachPartToTheOthersAndCitesTheirPages() throws Exception {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Outputs.of(job).submittalPackage(submittal, PackageDivision.read("", "kind"), larger -> { }).make()
            .forEach(output -> files.put(output.name(), output.bytes()));
        assertEquals(4, files.size());
        int followed = 0;
        try (PDDocument first = Loader.loadPDF(files.get(AGAIN + "-package-1-of-4.pdf"))) {
            assertTrue(text(first, 1).contains("Part 1 of 4"));
            PDPage contents = first.getPage(bookmarks(first).get("Contents") - 1);
            for (PDAnnotation annotation : contents.getAnnotations()) {
                if (((PDAnnotationLink) annotation).getAction() instanceof PDActionRemoteGoTo other) {
                    PDRectangle box = annotation.getRectangle();
                    String words = within(contents, box.getLowerLeftX(), contents.getMediaBox().getHeight() - box.getUpperRightY(),
                        box.getWidth(), box.getHeight());
                    int page = ((COSArray) other.getD()).getInt(0) + 1;
                    String name = other.getFile().getFile();
                    try (PDDocument beside = Loader.loadPDF(files.get(name))) {
                        assertTrue(words.endsWith(", page " + page) && words.startsWith("part " + name.replaceAll(".*-(\\d)-of.*", "$1"))
                            || text(beside, page).contains(words), words + " leads to page " + page + " of " + name);
                        followed++;
                    }
                }
            }
        }
        assertTrue(followed > 20);
    }

    @Test
    void noFileOfAPackageIsLargerThanItsLimitWhereItsPagesAllowIt() throws Exception {
        Path large = Samples.copy("harbour-clinic", Files.createDirectories(folder.resolve("large")));
        large(large.resolve("sheets/ply-inner.pdf"));
        OpenJob other = Samples.desk().open(large);
        Submittal two = other.submittal("07-25-00-01").orElseThrow();
        List<Output> files = Outputs.of(other).submittalPackage(two, PackageDivision.read("400kB", ""), larger -> { }).make();
        assertTrue(files.size() >= 3, "1.2 MB in files of 0.4, but " + files);
        StringBuilder all = new StringBuilder();
        for (Output file : files) {
            assertTrue(file.bytes().length <= 400_000, file.toString());
            try (PDDocument document = Loader.loadPDF(file.bytes())) {
                all.append(new PDFTextStripper().getText(document).replaceAll("\\s+", " "));
            }
        }
        assertTrue(all.toString().contains("This sheet alone is larger than a part may be, so that its pages are divided"), "it says so");
        for (int page = 1; page <= 12; page++) {
            assertTrue(all.toString().contains("page " + page + " of 12 · Submittal 07-25-00-01"), "page " + page);
        }
    }

    /** A sheet of twelve pages of 100 kB each. */
    private static void large(Path file) throws IOException {
        Random random = new Random(3);
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < 12; i++) {
                PDPage page = new PDPage(PDRectangle.LETTER);
                document.addPage(page);
                byte[] noise = new byte[100_000];
                random.nextBytes(noise);
                COSDictionary pictures = new COSDictionary();
                pictures.setItem("Noise", new PDStream(document, new ByteArrayInputStream(noise)));
                page.setResources(new PDResources());
                page.getResources().getCOSObject().setItem(COSName.XOBJECT, pictures);
            }
            document.save(file.toFile());
        }
    }

    @Test
    void theSameJobGivesTheSamePackage() throws Exception {
        Output again = Outputs.of(Samples.desk().open(folder)).submittalPackage(submittal).make().get(0);
        assertEquals(new Output(again.name(), whole), again);
    }

    @Test
    void aSizeOrKindThatIsNoneIsRefused() {
        assertThrows(UnusableInput.class, () -> PackageDivision.read("20", ""));
        assertThrows(UnusableInput.class, () -> PackageDivision.read("0MB", ""));
        assertThrows(UnusableInput.class, () -> PackageDivision.read("", "colour"));
    }

    @Test
    void modelsAreMarkedWhereTheirWordsStandOrTheDividerSaysThatTheyWereNotFound() throws Exception {
        ProductData mat = job.job().products().stream().filter(product -> product.id().equals("mat-10")).findFirst().orElseThrow();
        try (PDDocument document = Loader.loadPDF(whole)) {
            Map<String, Integer> pages = bookmarks(document);
            String divider = text(document, pages.get("- " + mat.name() + ", " + mat.maker()));
            assertFalse(divider.contains("was not found"), divider);
            String light = text(document, pages.get("- Ridgeback 250, Tamarack Lath Works"));
            assertTrue(light.contains("\"RB-250\" was not found on the sheet"), light);
        }
    }
}

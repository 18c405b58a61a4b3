package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
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
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionRemoteGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Submittal;

/** A sample package with worksheets and details, divided for an owner who takes small files only. */
class DividedPackagesTest {
    private static final String ID = "04-73-00-01";

    @TempDir
    static Path folder;

    private static final List<String> TOLD = new ArrayList<>();
    private static Map<String, byte[]> files;

    @BeforeAll
    static void divide() throws Exception {
        files = files(Samples.open("harbour-clinic"), ID, "150kB", TOLD);
    }

    private static Map<String, byte[]> files(OpenJob job, String id, String limit, List<String> told) throws Exception {
        Submittal submittal = job.submittal(id).orElseThrow();
        Map<String, byte[]> files = new LinkedHashMap<>();
        Outputs.of(job).submittalPackage(submittal, PackageDivision.read(limit, ""), told::add).make()
            .forEach(output -> files.put(output.name(), output.bytes()));
        return files;
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ").strip();
    }

    @Test
    void ourOwnPagesAreDividedWhereTheyAloneAreLargerThanAFileMayBe() throws Exception {
        assertEquals(List.of(), TOLD);
        files.forEach((name, bytes) -> assertTrue(bytes.length <= 150_000, name + " has " + bytes.length));
        StringBuilder titles = new StringBuilder();
        int number = 0;
        int pages = 0;
        for (byte[] bytes : files.values()) {
            number++;
            try (PDDocument document = Loader.loadPDF(bytes)) {
                document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> titles.append(item.getTitle()).append('\n'));
                pages += document.getNumberOfPages();
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    String numbered = "art " + number + " of " + files.size() + ", page " + page + " of " + document.getNumberOfPages();
                    assertTrue(text(document, page).contains(numbered), numbered);
                }
            }
        }
        assertTrue(titles.toString().matches("(?s).*Worksheets, pages 1 to \\d+\n.*Details, pages 1 to \\d+\n.*"), titles.toString());
        // nothing is lost, and each part but the first begins with a page of its own
        try (PDDocument whole = Loader.loadPDF(files(Samples.open("harbour-clinic"), ID, "", TOLD).get(ID + "-package.pdf"))) {
            assertEquals(whole.getNumberOfPages() + files.size() - 1, pages);
        }
    }

    @Test
    void theContentsLeadToEachPieceOfWhatIsDivided() throws Exception {
        int followed = 0;
        try (PDDocument first = Loader.loadPDF(files.values().iterator().next())) {
            for (PDPage page : first.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    if (annotation instanceof PDAnnotationLink link && link.getAction() instanceof PDActionRemoteGoTo other) {
                        try (PDDocument beside = Loader.loadPDF(files.get(other.getFile().getFile()))) {
                            int target = ((COSArray) other.getD()).getInt(0);
                            assertTrue(target < beside.getNumberOfPages(), other.getFile().getFile() + " has no page " + (target + 1));
                            followed++;
                        }
                    }
                }
            }
        }
        assertTrue(followed > 20, followed + " links to other parts");
    }

    @Test
    void aPageThatCannotBeDividedIsToldWithWhatItIs() throws Exception {
        Path job = Samples.copy("harbour-clinic", folder);
        try (PDDocument sheet = new PDDocument()) {
            PDPage page = new PDPage();
            sheet.addPage(page);
            byte[] noise = new byte[500_000];
            new Random(3).nextBytes(noise);
            PDResources resources = new PDResources();
            COSDictionary pictures = new COSDictionary();
            pictures.setItem("Noise", new PDStream(sheet, new ByteArrayInputStream(noise)));
            resources.getCOSObject().setItem(COSName.XOBJECT, pictures);
            page.setResources(resources);
            sheet.save(job.resolve("sheets/ply-inner.pdf").toFile());
        }
        List<String> told = new ArrayList<>();
        Map<String, byte[]> divided = files(Samples.desk().open(job), "07-25-00-01", "400kB", told);
        assertEquals(1, told.size(), told.toString());
        String name = told.get(0).substring(0, told.get(0).indexOf(':'));
        assertTrue(told.get(0).matches(".*-package-\\d-of-\\d.pdf: 5\\d\\d kB are more than the limit of 400 kB; it holds \".*\" and page "
            + "1 of sheets/ply-inner.pdf, besides the fonts and contents that every part needs, and can't be divided further"),
                told.get(0));
        divided.forEach((file, bytes) -> assertEquals(file.equals(name), bytes.length > 400_000, file));
    }
}

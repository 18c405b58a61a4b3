package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Submittal;

/** Packages, reviews and forms on an office's paper. */
class OfficePapersTest {
    private static final String NAME = "Lantern Row Architects (invented)";
    private static final String ID = "04-73-00-01";

    @TempDir
    Path folder;

    private static List<Output> papers(OpenJob job, Path office) throws Exception {
        Submittal submittal = job.submittal(ID).orElseThrow();
        return Outputs.of(job).office(office).submittalPackage(submittal).review(submittal).forms().make();
    }

    private static PDDocument pdf(List<Output> papers, String name) throws IOException {
        return Loader.loadPDF(papers.stream().filter(output -> output.name().equals(name)).findFirst().orElseThrow().bytes());
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ").strip();
    }

    @Test
    void packageReviewAndFormsBearTheOfficesNameHeadAndPictureAndKeepTheirNumbers() throws Exception {
        List<Output> papers = papers(Samples.open("harbour-clinic"), Samples.job("office"));
        for (String name : List.of(ID + "-package.pdf", ID + "-review.pdf", "forms.pdf")) {
            try (PDDocument document = pdf(papers, name)) {
                String first = text(document, 1);
                assertTrue(first.contains(NAME + ": Harbour clinic") && first.contains("14 Lantern Row Northquay"), name + ": " + first);
                assertTrue(first.contains("page 1 of " + document.getNumberOfPages()), name + ": " + first);
                assertTrue(document.getPage(0).getResources().getXObjectNames().iterator().hasNext(), name + " has the picture");
                assertTrue(text(document, 2).contains(NAME + ": Harbour clinic"), name);
            }
        }
        for (Output form : papers.stream().filter(output -> output.name().endsWith(".docx")).toList()) {
            List<String> parts = new ArrayList<>();
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(form.bytes()))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    parts.add(entry.getName());
                    if (entry.getName().equals("word/document.xml")) {
                        assertTrue(new String(zip.readAllBytes(), StandardCharsets.UTF_8).contains(NAME), form.name());
                    }
                }
            }
            assertEquals(1, parts.stream().filter(part -> part.startsWith("word/media/")).count(), form.name() + " has the picture: "
                + parts);
            assertTrue(parts.contains("word/header1.xml") && parts.contains("word/footer1.xml"), form.name() + ": " + parts);
        }
        try (PDDocument document = pdf(papers, ID + "-package.pdf")) {
            assertTrue(text(document, 3).contains("Submittal " + ID + ", page 3 of " + document.getNumberOfPages()), text(document, 3));
        }
    }

    /**
     * Checked by LibreOffice Writer, which lays the file out, and poppler's pdffonts, which names the fonts used; the font is Debian's
     * fonts-liberation.
     */
    @Test
    void aFormOfTheWordProcessorBearsTheOfficesHeadFootAndFontWhenOpenedFromOutside() throws Exception {
        Path office = folder.resolve("office");
        Files.createDirectories(office);
        Files.writeString(office.resolve("office.yaml"), "format: 1\nname: " + NAME + "\naddress: [Quay]\npaper: A4\n"
            + "fonts: {regular: mono.ttf}\n");
        Files.copy(Path.of("/usr/share/fonts/truetype/liberation/LiberationMono-Regular.ttf"), office.resolve("mono.ttf"));
        Files.writeString(office.resolve("header.ftl"), "${office.name}: ${job.title}\n\n${section.title}\n");
        Files.writeString(office.resolve("footer.ftl"), "Foot of ${office.name}\n");
        Output form = Outputs.of(Samples.open("harbour-clinic")).office(office).forms().make().stream()
            .filter(output -> output.name().equals("forms/touching.docx")).findFirst().orElseThrow();
        Path file = folder.resolve("touching.docx");
        Files.write(file, form.bytes());
        run("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to", "pdf", "--outdir",
            folder.toString(), file.toString());
        Path pdf = folder.resolve("touching.pdf");
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            assertEquals(842, document.getPage(0).getMediaBox().getWidth(), 1, "A4, lying");
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                String text = text(document, page);
                assertTrue(text.contains(NAME + ": Harbour clinic"), text);
                assertTrue(text.contains("Foot of " + NAME) && text.contains("page " + page + " of " + pages), text);
            }
        }
        String fonts = run("pdffonts", pdf.toString());
        assertTrue(fonts.contains("LiberationMono") && !fonts.contains("LiberationSans") && !fonts.contains("LiberationSerif"), fonts);
    }

    private static String run(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), String.join(" ", command) + ": " + said);
        return said;
    }

    @Test
    void theJobsOwnOfficeAppliesWithoutBeingAskedForAndItsPaperToo() throws Exception {
        Path own = Samples.copy("harbour-clinic", folder.resolve("job"));
        Path office = Samples.copyFolder(Samples.job("office"), own.resolve("office"));
        Path file = office.resolve("office.yaml");
        Files.writeString(file, Files.readString(file).replace("paper: letter", "paper: A4"));
        List<Output> papers = papers(Samples.desk().open(own), null);
        try (PDDocument bound = pdf(papers, ID + "-package.pdf"); PDDocument review = pdf(papers, ID + "-review.pdf");
            PDDocument forms = pdf(papers, "forms.pdf")) {
            assertEquals(842, bound.getPage(0).getMediaBox().getHeight(), 1);
            assertEquals(842, review.getPage(0).getMediaBox().getWidth(), 1);
            assertEquals(595, forms.getPage(1).getMediaBox().getHeight(), 1);
            assertTrue(text(bound, 1).contains(NAME));
        }
        for (Output again : papers(Samples.desk().open(own), null)) {
            assertArrayEquals(papers.stream().filter(output -> output.name().equals(again.name())).findFirst().orElseThrow().bytes(),
                again.bytes(), again.name());
        }
    }

    @Test
    void aPackageThatCannotBeSentSaysSoWhateverTheOfficePrints() throws Exception {
        Path job = Samples.copy("harbour-clinic", folder.resolve("job"));
        Path file = job.resolve("submittals").resolve(ID).resolve("submittal.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("(?m)^statement:.*\n(?:[ \t]+.*\n)*", ""));
        OpenJob open = Samples.desk().open(job);
        List<Output> papers = Outputs.of(open).office(Samples.job("office")).submittalPackage(open.submittal(ID).orElseThrow()).make();
        try (PDDocument document = pdf(papers, ID + "-package.pdf")) {
            for (int page : List.of(2, 3, document.getNumberOfPages())) {
                assertTrue(text(document, page).contains("NOT READY · Submittal " + ID + ", page " + page), text(document, page));
            }
        }
    }
}

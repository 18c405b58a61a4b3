package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.dom.HtmlDocumentBuilder;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Paragraph;

/**
 * The papers of two sample jobs as programs see them that know nothing of this one: veraPDF (validator of ISO 19005), the HTML parser of
 * the Nu validator (WHATWG HTML, "parse errors"), LibreOffice and poppler's pdftotext.
 */
class PapersFromOutsideTest {
    private static final List<String> JOBS = List.of("harbour-clinic", "mesa-library");
    private static final String SECTION = "04 73 00";
    private static final Map<String, Map<String, byte[]>> PAPERS = new TreeMap<>();

    @BeforeAll
    static void make() throws Exception {
        for (String name : JOBS) {
            OpenJob job = Samples.open(name);
            Outputs outputs = Outputs.of(job).worksheets().details();
            job.job().sections().forEach(outputs::section);
            job.job().submittals().forEach(outputs::comparison);
            Map<String, byte[]> papers = new TreeMap<>();
            outputs.make().forEach(output -> papers.put(output.name(), output.bytes()));
            Outputs.of(job).office(Samples.ROOT.resolve("sample-specs/office")).section(job.job().sections().get(1)).make()
                .forEach(output -> papers.put("with an office/" + output.name(), output.bytes()));
            PAPERS.put(name, papers);
        }
    }

    @Test
    void everyPdfOfOurOwnPagesMayBeKeptForLong() throws Exception {
        List<String> wrong = new ArrayList<>();
        int judged = 0;
        for (Map.Entry<String, Map<String, byte[]>> job : PAPERS.entrySet()) {
            for (Map.Entry<String, byte[]> paper : job.getValue().entrySet()) {
                if (paper.getKey().endsWith(".pdf")) {
                    faults(paper.getValue()).forEach(fault -> wrong.add(job.getKey() + "/" + paper.getKey() + ": " + fault));
                    judged++;
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(judged >= 14, judged + " papers");
    }

    /** What veraPDF finds against PDF/A-2u. */
    private static List<String> faults(byte[] pdf) throws Exception {
        ClassLoader before = Thread.currentThread().getContextClassLoader();
        // Its XML binding is looked for by the thread's class loader.
        Thread.currentThread().setContextClassLoader(VeraGreenfieldFoundryProvider.class.getClassLoader());
        try {
            VeraGreenfieldFoundryProvider.initialise();
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_2_U);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_U, false)) {
                ValidationResult result = validator.validate(parser);
                assertTrue(result.getTotalAssertions() > 100, "it looked at nothing");
                List<String> faults = result.getTestAssertions().stream().filter(one -> one.getStatus() == TestAssertion.Status.FAILED)
                    .map(one -> one.getRuleId().getClause() + " " + one.getMessage()).distinct().collect(Collectors.toList());
                if (faults.isEmpty() && !result.isCompliant()) {
                    faults.add("not compliant");
                }
                return faults;
            }
        } finally {
            Thread.currentThread().setContextClassLoader(before);
        }
    }

    @Test
    void everyHtmlSectionIsValidAndAllItsLinksLeadSomewhere() throws Exception {
        int links = 0;
        for (Map.Entry<String, Map<String, byte[]>> job : PAPERS.entrySet()) {
            for (Map.Entry<String, byte[]> paper : job.getValue().entrySet()) {
                if (paper.getKey().endsWith(".html")) {
                    links += links(job.getKey() + "/" + paper.getKey(), paper.getValue());
                }
            }
        }
        assertTrue(links > 5, links + " links");
        String first = new String(PAPERS.get("mesa-library").get("04-73-00.html"), StandardCharsets.UTF_8);
        assertTrue(first.contains("<section id=\"details\"") && first.contains("<svg"), "the details stand behind the section");
    }

    private static int links(String name, byte[] html) throws Exception {
        HtmlDocumentBuilder builder = new HtmlDocumentBuilder(XmlViolationPolicy.FATAL);
        builder.setErrorHandler(new Strict(name));
        Document page = builder.parse(new InputSource(new ByteArrayInputStream(html)));
        NodeList all = page.getElementsByTagName("*");
        List<String> ids = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.hasAttribute("id")) {
                ids.add(element.getAttribute("id"));
            }
            if (element.hasAttribute("href")) {
                targets.add(java.net.URLDecoder.decode(element.getAttribute("href").substring(1), StandardCharsets.UTF_8));
            }
        }
        assertEquals(List.of(), ids.stream().filter(id -> ids.indexOf(id) != ids.lastIndexOf(id)).distinct().toList(), name
            + ": ids that stand twice");
        assertTrue(ids.containsAll(targets), name + ": " + targets.stream().filter(target -> !ids.contains(target)).toList());
        return targets.size();
    }

    private record Strict(String name) implements ErrorHandler {
        @Override
        public void warning(SAXParseException wrong) {
            error(wrong);
        }

        @Override
        public void error(SAXParseException wrong) {
            throw new AssertionError(name + ":" + wrong.getLineNumber() + ": " + wrong.getMessage());
        }

        @Override
        public void fatalError(SAXParseException wrong) {
            error(wrong);
        }
    }

    @Test
    void anotherWordProcessorCountsTheSameNumbersAndPrintsTheSameTextAsOurPdf(@TempDir Path temp) throws Exception {
        List<String> command = new ArrayList<>(List.of("soffice", "-env:UserInstallation=" + temp.resolve("profile").toUri(), "--headless",
            "--convert-to", "pdf", "--outdir", temp.resolve("converted").toString()));
        for (String name : JOBS) {
            command.add(Files.write(temp.resolve(name + ".docx"), PAPERS.get(name).get("04-73-00.docx")).toString());
        }
        run(command, "libreoffice-writer-nogui");
        for (String name : JOBS) {
            SectionDocument section = Samples.open(name).section(SECTION);
            Path own = Files.write(temp.resolve(name + "-own.pdf"), PAPERS.get(name).get("04-73-00.pdf"));
            assertInOrder(section, text(temp.resolve("converted").resolve(name + ".pdf")), name + " in the word processor");
            assertInOrder(section, text(own), name + " in our PDF");
        }
    }

    /** Marks, headings and paragraphs of a section stand in a text one after the other and nothing between them is left out. */
    private static void assertInOrder(SectionDocument section, String text, String where) {
        List<String> expected = new ArrayList<>();
        section.parts().forEach(part -> {
            expected.add("PART " + part.number() + " - " + part.title());
            for (Article article : part.articles()) {
                expected.add(article.number() + article.title());
                article.paragraphs().forEach(paragraph -> lines(paragraph, expected));
            }
        });
        expected.add("END OF SECTION " + section.number());
        String all = squeezed(String.join("", expected));
        int from = text.indexOf(squeezed(expected.get(0)));
        assertTrue(from >= 0, where + ": Part 1 isn't there");
        String found = text.substring(from, Math.min(text.length(), from + all.length()));
        int same = 0;
        while (same < found.length() && found.charAt(same) == all.charAt(same)) {
            same++;
        }
        assertEquals(all.substring(same, Math.min(all.length(), same + 60)), found.substring(same,
            Math.min(found.length(), same + 60)), where);
    }

    private static void lines(Paragraph paragraph, List<String> lines) {
        String end = paragraph.level() < 4 ? "." : ")";
        lines.add(paragraph.number() + end + paragraph.plain());
        paragraph.children().forEach(child -> lines(child, lines));
    }

    /** Text between the heads and feet of letter sheets, without white space: lines break elsewhere in each program. */
    private static String text(Path pdf) throws Exception {
        Path text = Path.of(pdf.toString().replace(".pdf", ".txt"));
        run(List.of("pdftotext", "-raw", "-enc", "UTF-8", "-r", "72", "-x", "0", "-y", "60", "-W", "612", "-H", "670", pdf.toString(),
            text.toString()), "poppler-utils");
        return squeezed(Files.readString(text));
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00A0\\f]+", "");
    }

    private static void run(List<String> command, String from) throws Exception {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(command.get(0) + " did not end");
            }
            assertEquals(0, process.exitValue(), command.get(0));
        } catch (java.io.IOException missing) {
            throw new AssertionError(command.get(0) + " is missing: install " + from + ", or run releng/setup tests", missing);
        }
    }

    /**
     * Sections that a person has read. When one changes, read what changed, and put the new one in its place, from the checkout's folder:
     * {@code for j in harbour-clinic mesa-library; do releng/reglet draft sample-specs/$j --section "04 73 00";
     * cp sample-specs/$j/out/04-73-00.md bundles/reglet.desk.tests/src/reglet/desk/sections/$j.md; done}
     */
    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library"})
    void theSectionsAreThoseThatWereRead(String name) throws Exception {
        try (InputStream read = PapersFromOutsideTest.class.getResourceAsStream("sections/" + name + ".md")) {
            assertNotNull(read, name);
            assertEquals(new String(read.readAllBytes(), StandardCharsets.UTF_8), new String(PAPERS.get(name).get("04-73-00.md"),
                StandardCharsets.UTF_8));
        }
    }
}

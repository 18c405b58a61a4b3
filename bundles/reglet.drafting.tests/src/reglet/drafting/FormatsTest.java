package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTLvl;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSdtRun;

import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.ListItem;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

class FormatsTest {
    private static final String TEXTS =
        "declare namespace w='http://schemas.openxmlformats.org/wordprocessingml/2006/main' .//w:t";
    private static final String LONG =
        "The lath is lapped over the flange of the screed and wrapped round corners without a joint. ".repeat(12).strip();

    /** A section with alternatives, five levels, own text, letters beyond ASCII and paragraphs over several pages. */
    private static Sample sample() {
        Sample sample = Sample.small();
        sample.title = "Größe & Söhne <Halle> „Süd“ №7, ≥ 3 m²";
        sample.wall("W2", "30 ft", "framing=wood-24", "lath=metal-3.4,woven-17", "sealant=class-50")
            .uses("lath.kind", "lath", "Lath of kind ${lath.kind}, „façade“ Ωμέγα & <plain>.", "W1 lath=metal-2.5", "W2 lath=metal-3.4",
            "W2 lath=woven-17")
            .uses("seal", "units", "Sealant of class ${sealant.class} for use ${sealant.use}, ${std.ASTM_C90}.", "W1 sealant=class-50",
            "W2 sealant=class-50");
        for (int i = 0; i < 12; i++) {
            sample.uses("deep" + i, "lath-installation", LONG
                + " See ${see.lath}.\n\n1. One ${framing.material}:\n   1. two ${sealant.class.value}:\n"
                + "      1. three:\n         1. four ${wall.height}.\n2. Other.\n", "W1", "W2");
        }
        return sample.change(TextChange.Kind.CHANGE, "seal", "My own **words** for ${sealant.class}; see ${see.deep3}.");
    }

    private static SectionDocument section() throws UnusableInput {
        return Drafter.draft(sample().assembly(), Sample.SECTION, "100% set");
    }

    private static List<Slot> slots(SectionDocument section) {
        return section.paragraphs().stream().flatMap(paragraph -> paragraph.text().stream()).filter(Slot.class::isInstance)
            .map(Slot.class::cast).toList();
    }

    @Test
    void sameSectionGivesTheSameBytesInEveryFormat() throws UnusableInput {
        assertEquals(Markdown.of(section()), Markdown.of(section()));
        assertEquals(Html.of(section()), Html.of(section()));
        assertArrayEquals(Docx.of(section()), Docx.of(section()));
        assertArrayEquals(Pdf.of(section()), Pdf.of(section()));
    }

    @Test
    void smallSectionReadsAsThisMarkdown() throws UnusableInput {
        String markdown = Markdown.of(Drafter.draft(Sample.small().assembly(), Sample.SECTION, ""));
        assertEquals("""
            # Section 04 73 00: Manufactured Stone Masonry

            Harbour clinic, draft

            Invented for tests.

            ## PART 1 - GENERAL

            ### 1.1 SUMMARY

            - **A.** Related sections: <!-- related -->
              - **1.** [Section 06 10 00, Rough Carpentry](see:06_10_00): Framing. <!-- related/06_10_00 -->
              - **2.** [Section 07 92 00, Joint Sealants](see:07_92_00). <!-- related/07_92_00 -->

            ### 1.2 REFERENCES

            - **A.** [ASTM C847](std:ASTM_C847)-2018, Standard Specification for Metal Lath. <!-- references.ASTM_C847 -->

            ### 1.3 ACTION SUBMITTALS

            - **A.** Lath: Product data showing kind and weight. <!-- lath.product-data -->
            - **B.** Lath: one piece of [light expanded metal lath](slot:lath), full width. <!-- lath.sample -->

            ## PART 2 - PRODUCTS

            ### 2.1 LATH AND ACCESSORIES

            - **A.** Lath: Self-furring [expanded metal](slot:lath.kind) lath, galvanized. <!-- lath.metal -->
              - **1.** Weight: [at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847](slot:lath.weight). <!-- lath.metal/1 -->

            ## PART 3 - EXECUTION

            ### 3.1 LATH INSTALLATION

            - **A.** Fasten lath of [Article 2.1](see:lath) to [wood studs](slot:framing), \
            studs [at most 16 in (406 mm)](slot:framing.spacing) apart; seal as [Section 07 92 00, Joint Sealants](see:07_92_00) says. <!-- lath.fastening -->
              - **1.** Over [2.5 lb/yd² (1.36 kg/m²)](slot:lath.weight.value): <!-- lath.fastening/1 -->
                - **a.** [ASTM C847](slot:lath.weight.method) lath lies flat. <!-- lath.fastening/1/1 -->

            END OF SECTION 04 73 00

            ## Cautions

            - This paper replaces neither the local building code nor the judgement of a licensed professional.
            """, markdown);
    }

    @Test
    void markdownReadsBackWithMarksLevelsAndSlots() throws UnusableInput {
        SectionDocument section = section();
        List<String> read = new ArrayList<>();
        List<String> refs = new ArrayList<>();
        String markdown = Markdown.of(section).replaceFirst("(?s)\n## Cautions.*", "");
        read(Parser.builder().build().parse(markdown), 0, read, refs);
        assertEquals(section.paragraphs().stream().map(paragraph -> paragraph.level() + " " + Marks.of(paragraph)).toList(), read);
        assertEquals(slots(section).stream().map(slot -> slot.ref() + " " + slot.text()).toList(), refs);
    }

    private static void read(Node parent, int level, List<String> marks, List<String> refs) {
        for (Node node : parent.getChildren()) {
            int depth = node instanceof ListItem ? level + 1 : level;
            if (node instanceof ListItem) {
                marks.add(depth + " " + ((StrongEmphasis) node.getFirstChild().getFirstChild()).getText());
            } else if (node instanceof Link link && link.getUrl().startsWith("slot:")) {
                refs.add(link.getUrl().unescape().substring("slot:".length()) + " " + link.getText().unescape());
            }
            read(node, depth, marks, refs);
        }
    }

    @Test
    void htmlHasEverySlotAndAnAnchorForEachParagraph() throws UnusableInput {
        SectionDocument section = section();
        String html = Html.of(section);
        Matcher found = Pattern.compile("<span data-slot=\"([^\"]*)\">([^<]*)</span>").matcher(html);
        List<String> slots = found.results().map(match -> match.group(1) + " " + plain(match.group(2))).toList();
        assertEquals(slots(section).stream().map(slot -> slot.ref() + " " + slot.text()).toList(), slots);
        section.paragraphs().forEach(paragraph -> assertTrue(html.contains("<li id=\"" + paragraph.id() + "\""), paragraph.id()));
        assertFalse(html.contains("<script") || html.contains("http"), "one file without outside parts");
        assertTrue(html.contains("Größe &amp; Söhne &lt;Halle&gt;"));
        assertTrue(html.contains("<a href=\"#lath\">Article 2.1</a>"));
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    }

    @Test
    void pdfPrintsEveryMarkAndSlotInOrder() throws Exception {
        SectionDocument section = section();
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section))) {
            String text = body(pdf, section);
            int from = 0;
            for (Paragraph paragraph : section.paragraphs()) {
                String wanted = single(Marks.of(paragraph) + " " + paragraph.plain());
                int at = text.indexOf(wanted, from);
                assertTrue(at >= 0, "'" + wanted + "' is not in order in the PDF");
                from = at + wanted.length();
            }
            assertTrue(text.indexOf("END OF SECTION 04 73 00", from) > 0);
        }
    }

    /** Text of all pages without their running heads and feet. */
    private static String body(PDDocument pdf, SectionDocument section) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            text.append(' ').append(single(stripper.getText(pdf)).replace(single(section.job() + " Issue: " + section.issue()), "")
                .replace("04 73 00 Manufactured Stone Masonry", "").replace("page " + page + " of " + pdf.getNumberOfPages(), ""));
        }
        return single(text.toString());
    }

    private static String single(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    @Test
    void pdfHasTitleLanguageBookmarksLinksAndEmbeddedFonts() throws Exception {
        SectionDocument section = section();
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section))) {
            assertEquals("Section 04 73 00, Manufactured Stone Masonry", pdf.getDocumentInformation().getTitle());
            assertEquals("en-US", pdf.getDocumentCatalog().getLanguage());
            assertTrue(pdf.getNumberOfPages() > 3);
            List<String> bookmarks = new ArrayList<>();
            for (PDOutlineItem part : pdf.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(part.getTitle());
                part.children().forEach(article -> bookmarks.add(article.getTitle()));
            }
            List<String> expected = new ArrayList<>();
            section.parts().forEach(part -> {
                expected.add("PART " + part.number() + " - " + part.title());
                part.articles().forEach(article -> expected.add(article.number() + " " + article.title()));
            });
            assertEquals(expected, bookmarks);
            int links = 0;
            for (PDPage page : pdf.getPages()) {
                links += (int) page.getAnnotations().stream().filter(PDAnnotationLink.class::isInstance).count();
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                }
                assertEquals(612, page.getMediaBox().getWidth());
                assertEquals(792, page.getMediaBox().getHeight());
            }
            // Thirteen references to the lath's article and one to a paragraph; a link over two lines has two boxes.
            assertTrue(links >= 14, links + " links");
            assertNotNull(pdf.getDocumentCatalog().findNamedDestinationPage(new PDNamedDestination("lath")),
                "the article is a destination");
        }
    }

    @Test
    void headingsAndFirstLinesNeverEndAPage() throws Exception {
        SectionDocument section = section();
        List<String> headings = new ArrayList<>();
        section.parts().forEach(part -> part.articles().forEach(article -> headings.add(article.number() + " " + article.title())));
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section))) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                List<String> lines = stripper.getText(pdf).lines().map(String::strip).filter(line -> !line.isEmpty()
                    && !line.startsWith("04 73 00") && !line.startsWith("page ")).toList();
                String last = lines.get(lines.size() - 1);
                assertFalse(headings.contains(single(last)) || last.startsWith("PART"), "page " + page + " ends with " + last);
            }
        }
    }

    @Test
    void charactersThatTheFontsLackAreSeenToBeMissing() throws Exception {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5").uses("odd", "lath", "Text 日 end.", "W1");
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(Drafter.draft(sample.assembly(), Sample.SECTION, "")))) {
            assertTrue(new PDFTextStripper().getText(pdf).contains("Text □ end."));
        }
    }

    @Test
    void docxCountsItsListsToTheSameNumbers() throws Exception {
        SectionDocument section = section();
        List<String> expected = new ArrayList<>();
        section.parts().forEach(part -> {
            expected.add("PART " + part.number() + " - " + part.title());
            part.articles().forEach(article -> {
                expected.add(article.number() + " " + article.title());
                article.paragraphs().forEach(paragraph -> lines(paragraph, expected));
            });
        });
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(Docx.of(section)))) {
            assertEquals(expected, numbered(docx));
        }
    }

    private static void lines(Paragraph paragraph, List<String> lines) {
        lines.add(Marks.of(paragraph) + " " + paragraph.plain());
        paragraph.children().forEach(child -> lines(child, lines));
    }

    /** Paragraphs of the section's list with the marks that a word processor counts for them (ECMA-376, 17.9). */
    private static List<String> numbered(XWPFDocument docx) {
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        List<String> lines = new ArrayList<>();
        for (XWPFParagraph paragraph : docx.getParagraphs()) {
            if (!BigInteger.valueOf(DocxParts.SECTION_LIST).equals(paragraph.getNumID())) {
                continue;
            }
            int level = paragraph.getNumIlvl().intValue();
            counts.merge(level, 1, Integer::sum);
            counts.keySet().removeIf(deeper -> deeper > level);
            XWPFAbstractNum list = docx.getNumbering().getAbstractNum(docx.getNumbering().getAbstractNumID(paragraph.getNumID()));
            String mark = list.getCTAbstractNum().getLvlArray(level).getLvlText().getVal();
            for (CTLvl shown : list.getCTAbstractNum().getLvlArray()) {
                int at = shown.getIlvl().intValue();
                mark = mark.replace("%" + (at + 1), counts.containsKey(at) ? count(shown.getNumFmt().getVal().toString(), counts.get(at))
                    : "");
            }
            lines.add(mark + " " + text(paragraph));
        }
        return lines;
    }

    private static String count(String format, int count) {
        String letters = String.valueOf((char) ('A' + (count - 1) % 26)).repeat((count - 1) / 26 + 1);
        return switch (format) {
            case "upperLetter" -> letters;
            case "lowerLetter" -> letters.toLowerCase(java.util.Locale.ROOT);
            default -> String.valueOf(count);
        };
    }

    /** All text of a paragraph, content controls and links included, field codes left out. */
    private static String text(XWPFParagraph paragraph) {
        return Arrays.stream(paragraph.getCTP().selectPath(TEXTS))
            .map(text -> ((org.apache.xmlbeans.SimpleValue) text).getStringValue()).collect(Collectors.joining());
    }

    @Test
    void docxHasEverySlotAsAContentControlAndParagraphsAsBookmarks() throws Exception {
        SectionDocument section = section();
        List<String> controls = new ArrayList<>();
        List<String> bookmarks = new ArrayList<>();
        StringBuilder fields = new StringBuilder();
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(Docx.of(section)))) {
            for (XWPFParagraph paragraph : docx.getParagraphs()) {
                for (CTSdtRun control : paragraph.getCTP().getSdtArray()) {
                    controls.add(control.getSdtPr().getTag().getVal() + " " + control.getSdtContent().getRArray(0).getTArray(0)
                        .getStringValue());
                }
                paragraph.getCTP().getBookmarkStartList().forEach(bookmark -> bookmarks.add(bookmark.getName()));
                paragraph.getRuns().forEach(run -> run.getCTR().getInstrTextList().forEach(code -> fields.append(code.getStringValue())));
            }
            assertEquals("Größe & Söhne <Halle> „Süd“ №7, ≥ 3 m²\tIssue: 100% set", docx.getHeaderList().get(0).getText().strip());
            assertTrue(docx.getFooterList().get(0)._getHdrFtr().xmlText().contains("NUMPAGES"));
        }
        assertEquals(slots(section).stream().map(slot -> slot.ref() + " " + slot.text()).toList(), controls);
        assertTrue(bookmarks.containsAll(section.paragraphs().stream().map(paragraph -> Docx.bookmark(paragraph.id())).toList()));
        assertEquals(bookmarks.size(), bookmarks.stream().distinct().count());
        assertTrue(bookmarks.stream().allMatch(name -> name.matches("[A-Za-z][A-Za-z0-9_]{0,39}")), "names that word processors take");
        assertTrue(fields.toString().contains("REF " + Docx.bookmark("lath") + " \\n \\h"));
    }

    @Test
    void everyFormatPrintsTheCautionsAndAnEmptyPart() throws Exception {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5").uses("only", "lath", "Only text.", "W1");
        sample.cautions.add("Wet cement burns the skin.");
        SectionDocument section = Drafter.draft(sample.assembly(), Sample.SECTION, "");
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section));
            XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(Docx.of(section)))) {
            for (String text : List.of(Markdown.of(section), Html.of(section), new PDFTextStripper().getText(pdf),
                docx.getParagraphs().stream().map(XWPFParagraph::getText).collect(Collectors.joining("\n")))) {
                assertTrue(text.contains("Wet cement burns the skin."), text);
                assertTrue(text.contains("Not used."), "Part 3 is empty");
            }
        }
    }
}

package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Layout;
import reglet.model.Layout.References;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;

/** How a job lays out its sections: references as a list, as a table or not at all, and articles in another order. */
class LayoutTest {

    private static Sample sample(References references) {
        Sample sample = Sample.small().uses("units", "units", "Units: To ${std.ASTM_C90} and as ${see.references} lists.", "W1");
        sample.layout = new Layout(references, Map.of());
        return sample;
    }

    private static SectionDocument draft(Sample sample) throws UnusableInput {
        return Drafter.draft(sample.assembly(), Sample.SECTION, "");
    }

    private static List<String> numbered(SectionDocument section) {
        return section.parts().stream().flatMap(part -> part.articles().stream()).map(article -> article.number() + " " + article.id())
            .toList();
    }

    @Test
    void aTableHoldsTheParagraphsOfTheListWithNumberTitleAndWhereEachIsCited() throws UnusableInput {
        SectionDocument list = draft(sample(References.LIST));
        SectionDocument table = draft(sample(References.TABLE));
        assertEquals(list.paragraphs(), table.paragraphs());
        Article article = table.parts().get(0).articles().get(1);
        assertTrue(article.table());
        List<String> rows = new ArrayList<>();
        ReferenceTable.rows(table, article).forEach(row -> rows.add(text(row.number()) + " | " + text(row.title()) + " | "
            + text(row.cited())));
        assertEquals(List.of("ASTM C90 | Standard Specification for Loadbearing Concrete Masonry Units. | 2.2.A",
            "ASTM C847-2018 | Standard Specification for Metal Lath. | 2.1.A.1, 3.1.A.1.a"), rows);
    }

    private static String text(List<? extends SectionDocument.Span> spans) {
        return spans.stream().map(SectionDocument.Span::text).reduce((one, other) -> spans.get(0) instanceof SectionDocument.CrossReference
            ? one + ", " + other : one + other).orElse("");
    }

    @Test
    void aTableInMarkdownReadsBackWithWhatAPersonAddedToIt() throws UnusableInput {
        Sample sample = sample(References.TABLE).change(Kind.ADD, "references.ASTM_C847",
            "Own | text, with a bar.\n\n1. One below.\n   1. Two below.");
        SectionDocument section = draft(sample);
        String markdown = Markdown.of(section);
        assertTrue(markdown.contains("| **B.** | [ASTM C847](std:ASTM_C847)-2018 | Standard Specification for Metal Lath. "
            + "<!-- references.ASTM_C847 --> | [2.1.A.1](see:lath.metal/1), [3.1.A.1.a](see:lath.fastening/1/1) |"), markdown);
        assertTrue(markdown.contains("| **C. 1. a.** |  | Two below. <!-- references.ASTM_C847+1/1/1 (own text) --> |  |"), markdown);
        SectionDocument read = MarkdownReader.read("section.md", Sample.plan(), markdown);
        assertEquals(markdown, Markdown.of(read));
        assertEquals(section.paragraphs().stream().map(Paragraph::plain).toList(), read.paragraphs().stream().map(Paragraph::plain)
            .toList());
        assertEquals(section.paragraphs().stream().map(Paragraph::path).toList(), read.paragraphs().stream().map(Paragraph::path).toList());
        assertTrue(read.parts().get(0).articles().get(1).table());
    }

    @Test
    void aTableInAWordProcessorRepeatsItsHeadAndCountsWithTheList() throws Exception {
        SectionDocument section = draft(sample(References.TABLE).change(Kind.ADD, "references.ASTM_C847", "Own text.\n\n1. Below."));
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(Docx.of(section)))) {
            XWPFTable table = docx.getTables().get(0);
            assertEquals(4, table.getNumberOfRows());
            assertTrue(table.getRow(0).isRepeatHeader() && !table.getRow(1).isRepeatHeader());
            assertEquals(List.of("Number", "Title", "Cited in"),
                table.getRow(0).getTableCells().stream().map(cell -> cell.getText()).toList());
            assertEquals("ASTM C847-2018", table.getRow(2).getCell(0).getText());
            assertEquals("1", table.getRow(2).getCell(0).getParagraphs().get(0).getNumID().toString());
            assertEquals("2", table.getRow(2).getCell(0).getParagraphs().get(0).getNumIlvl().toString());
            // the addresses of citing paragraphs are fields, one for each step
            assertEquals(7, table.getRow(2).getCell(2).getParagraphs().get(0).getCTP().getRList().stream()
                .filter(run -> run.sizeOfInstrTextArray() > 0).count());
            assertEquals(1, table.getRow(3).getTableCells().size());
            assertEquals(List.of("Own text.", "Below."),
                table.getRow(3).getCell(0).getParagraphs().stream().map(XWPFParagraph::getText).toList());
        }
    }

    @Test
    void aTableOnPaperLeadsToWhatCites() throws Exception {
        SectionDocument section = draft(sample(References.TABLE));
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section))) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("Number Title Cited in A. ASTM C90 Standard Specification for Loadbearing Concrete Masonry "
                + "Units. 2.2.A"), text);
            List<String> links = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                page.getAnnotations(one -> one instanceof PDAnnotationLink).forEach(link -> links.add(link.getCOSObject().toString()));
            }
            // three citing paragraphs, the article of lath, the article of references
            assertEquals(5, links.size());
        }
        String html = Html.of(section);
        assertTrue(html.contains("<tr id=\"references.ASTM_C90\"><td><span class=\"mark\">A.</span> "
            + "<span data-standard=\"ASTM C90\">ASTM C90</span>"
            + "</td><td>Standard Specification for Loadbearing Concrete Masonry Units.</td><td><a href=\"#units\">2.2.A</a></td></tr>"),
                html);
    }

    @Test
    void whereReferencesAreOffTheFollowingArticlesMoveUpAndNothingRefersToThem() throws UnusableInput {
        assertEquals(List.of("1.1 summary", "1.2 references", "1.3 action"), numbered(draft(sample(References.LIST))).subList(0, 3));
        SectionDocument off = draft(sample(References.OFF));
        assertEquals(List.of("1.1 summary", "1.2 action"), numbered(off).subList(0, 2));
        assertTrue(off.paragraphs().stream().anyMatch(one -> one.plain().equals("Units: To ASTM C90 and as this Section lists.")));
        Assembly assembly = sample(References.OFF).change(Kind.ADD, "lath.metal", "Nails: To ASTM F1667.").assembly();
        assertEquals(List.of(), PaperCheck.findings(assembly, List.of(Drafter.draft(assembly, Sample.SECTION, ""))).stream()
            .filter(finding -> finding.rule().equals("paper.cited")).toList());
    }

    @Test
    void articlesInAnotherOrderAreNumberedAndReferredToThere() throws Exception {
        Sample sample = sample(References.LIST);
        sample.layout = new Layout(References.LIST, Map.of(Sample.SECTION, List.of("references", "summary", "units", "lath")));
        SectionDocument section = draft(sample);
        assertEquals(List.of("1.1 references", "1.2 summary", "1.3 action", "2.1 units", "2.2 lath", "3.1 lath-installation"),
            numbered(section));
        assertTrue(section.paragraphs().stream().anyMatch(one -> one.plain().contains("Fasten lath of Article 2.2 to")));
        assertTrue(section.paragraphs().stream().anyMatch(one -> one.plain().contains("as Article 1.1 lists")));
        String html = Html.of(section);
        assertTrue(html.indexOf("<h3 id=\"units\"><span class=\"mark\">2.1</span>")
            < html.indexOf("<h3 id=\"lath\"><span class=\"mark\">2.2</span>"));
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(section))) {
            List<String> bookmarks = new ArrayList<>();
            pdf.getDocumentCatalog().getDocumentOutline().children().forEach(part -> StreamSupport.stream(part.children()
                .spliterator(), false)
                .forEach(article -> bookmarks.add(article.getTitle())));
            assertEquals(List.of("1.1 REFERENCES", "1.2 SUMMARY", "1.3 ACTION SUBMITTALS", "2.1 UNITS", "2.2 LATH AND ACCESSORIES",
                "3.1 LATH INSTALLATION"), bookmarks);
        }
        assertFalse(Markdown.of(section).contains("### 1.1 SUMMARY"));
    }
}

package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;

import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.LinkBox;
import reglet.drafting.SubmittalPages.Pages;
import reglet.drafting.SubmittalPages.Part;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Comparison;

class SubmittalPagesTest {
    private static final String REVIEWED = "The contractor has reviewed this submittal.";

    @Test
    void partsAreInTheOrderOfThePackageWithItsPages() throws Exception {
        Pages pages = SubmittalPages.of(PackageSample.contents(REVIEWED));
        assertEquals(List.of(
            new Part("transmittal", "Transmittal", 1, 1, 1, 1), new Part("contents", "Contents", 1, 2, 1, 2),
            new Part("register", "Register items covered", 1, 3, 1, 3), new Part("compliance", "Compliance table", 1, 4, 1, 4),
            new Part("divider/" + PackageSample.SHEET, "Lath A", 1, 5, 1, 5), new Part(PackageSample.SHEET, "Lath A", 2, 0, 3, 6),
            new Part("divider/" + PackageSample.BROKEN, "Lath B", 1, 6, 1, 9),
            new Part("missing", "Missing evidence", 1, 7, 1, 10)), pages.parts());
        assertEquals(10, pages.total());
        assertEquals(7, pageTexts(pages).size());
    }

    @Test
    void footersCountTheWholePackage() throws Exception {
        List<String> texts = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED)));
        assertTrue(texts.get(4).contains("page 5 of 10"), texts.get(4));
        assertTrue(texts.get(5).contains("page 9 of 10"), texts.get(5));
    }

    @Test
    void missingStatementMarksThePackageNotReady() throws Exception {
        assertTrue(pageTexts(SubmittalPages.of(PackageSample.contents(""))).get(0).contains("NOT READY"));
        String reviewed = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(0);
        assertFalse(reviewed.contains("NOT READY"));
        assertTrue(reviewed.contains(REVIEWED) && reviewed.contains("No deviations are listed."));
        assertTrue(reviewed.contains("1 value that falls short"), "an unlisted deviation is said on the first page");
    }

    @Test
    void complianceTableSaysResultsInWordsAndNamesUnconfirmedValues() throws Exception {
        String table = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(3);
        assertTrue(table.contains("● meets (value not confirmed)"), table);
        assertTrue(table.contains("▼ falls short"), table);
        assertTrue(table.contains("at least 1.9 lb/yd² (1.03 kg/m²), ASTM C847"), table);
        assertTrue(table.contains("2.1.A.1"), table);
    }

    @Test
    void missingEvidenceIsListed() throws Exception {
        String missing = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(6);
        assertTrue(missing.contains("the file is damaged at its end"), missing);
        assertTrue(missing.contains("no value for Lath: weight (at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847, paragraph 2.1.A.1)"), missing);
    }

    @Test
    void linksStandOnTheNumbersThatTheyLeadTo() throws Exception {
        Pages pages = SubmittalPages.of(PackageSample.contents(REVIEWED));
        try (PDDocument pdf = Loader.loadPDF(pages.pdf())) {
            for (LinkBox link : pages.links()) {
                Part target = pages.parts().stream().filter(part -> part.id().equals(link.target())).findFirst().orElseThrow();
                assertTrue(link.targetPage() <= target.pages());
                PDFTextStripperByArea stripper = new PDFTextStripperByArea();
                stripper.addRegion("box", new java.awt.geom.Rectangle2D.Double(link.box().x(), link.box().y(), link.box().width(),
                    link.box().height()));
                stripper.extractRegions(pdf.getPage(link.page() - 1));
                String text = stripper.getTextForRegion("box").strip();
                int number = target.packagePage() + link.targetPage() - 1;
                assertTrue(text.equals(String.valueOf(number)) || text.startsWith(target.title()), "'" + text + "' leads to page "
                    + number);
            }
        }
        assertTrue(pages.links().contains(new LinkBox(4, boxOf(pages, PackageSample.SHEET, 3), PackageSample.SHEET, 3)));
    }

    private static reglet.model.Box boxOf(Pages pages, String target, int page) {
        return pages.links().stream().filter(link -> link.target().equals(target) && link.targetPage() == page).findFirst().orElseThrow()
            .box();
    }

    @Test
    void longPackagesKeepTheirNumbers() throws Exception {
        Contents small = PackageSample.contents(REVIEWED);
        List<Sheet> sheets = java.util.stream.IntStream.range(0, 120).mapToObj(i -> new Sheet("sheets/" + i + ".pdf", "Sheet " + i, 9, ""))
            .toList();
        Comparison rows = new Comparison("04-73-00-01", Collections.nCopies(200, small.comparison().rows().get(1)));
        Pages pages = SubmittalPages.of(new Contents(small.assembly(), small.submittal(), small.items(), rows, sheets, List.of(), List.of()));
        assertTrue(pages.parts().stream().filter(part -> part.id().equals("contents") || part.id().equals("compliance"))
            .allMatch(part -> part.pages() > 1), "124 lines and 200 rows take more than a page");
        int next = 1;
        for (Part part : pages.parts()) {
            assertEquals(next, part.packagePage(), part.id());
            next += part.pages();
        }
        List<String> texts = pageTexts(pages);
        Part last = pages.parts().get(pages.parts().size() - 2);
        assertTrue(texts.get(last.firstPage() - 1).contains("page " + last.packagePage() + " of " + pages.total()));
    }

    @Test
    void sameContentsGiveTheSameBytes() throws Exception {
        assertArrayEquals(SubmittalPages.of(PackageSample.contents("")).pdf(), SubmittalPages.of(PackageSample.contents("")).pdf());
    }

    @Test
    void comparisonPrintsRowsCountsShortfallAndWhoDecides() throws Exception {
        Contents contents = PackageSample.contents(REVIEWED);
        byte[] pdf = ComparisonPages.of(contents.assembly(), contents.submittal(), contents.comparison());
        assertArrayEquals(pdf, ComparisonPages.of(contents.assembly(), contents.submittal(), contents.comparison()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("meets: 1 falls short: 1 not shown: 1 different method: 0 cannot compare: 0"), text);
            // 2.5 - 1.9 lb/yd² is 0.6 lb/yd², 24 per cent of 2.5.
            assertTrue(text.contains("0.6 lb/yd² (24%)"), text);
            assertTrue(text.contains("It decides nothing: the reviewer does."), text);
            assertTrue(text.contains("This paper replaces neither"), text);
            assertEquals(792, document.getPage(0).getMediaBox().getWidth());
        }
    }

    private static List<String> pageTexts(Pages pages) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(pages.pdf())) {
            List<String> texts = new java.util.ArrayList<>();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(pdf).replaceAll("\\s+", " "));
            }
            return texts;
        }
    }
}

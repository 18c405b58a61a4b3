package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

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
        assertEquals(List.of(front("transmittal", "Transmittal", 1), front("contents", "Contents", 2),
            front("register", "Register items covered", 3), front("compliance", "Compliance table", 4),
            front("substitution/lath-a", "Substitution asked for: Lath A, Example Metals", 5), front("missing", "Missing evidence", 6),
            new Part("group/data", "Data sheets", 1, PackageGroup.DATA, true, 7, 1, 1, 7, 1),
            new Part("divider/" + PackageSample.SHEET, "Lath A", 2, PackageGroup.DATA, true, 8, 1, 1, 8, 1),
            new Part(PackageSample.SHEET, "Lath A", 0, PackageGroup.DATA, false, 1, 3, 1, 9, 1),
            new Part("divider/" + PackageSample.BROKEN, "Lath B", 2, PackageGroup.DATA, true, 9, 1, 1, 12, 1)), pages.parts());
        assertEquals(12, pages.total(1));
        assertEquals(9, pageTexts(pages).size());
    }

    private static Part front(String id, String title, int page) {
        return new Part(id, title, 1, PackageGroup.FRONT, true, page, 1, 1, page, 1);
    }

    @Test
    void footersCountTheWholePackage() throws Exception {
        List<String> texts = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED)));
        assertTrue(texts.get(6).contains("page 7 of 12"), texts.get(6));
        assertTrue(texts.get(8).contains("page 12 of 12"), texts.get(8));
    }

    @Test
    void missingStatementMarksThePackageNotReady() throws Exception {
        assertTrue(pageTexts(SubmittalPages.of(PackageSample.contents(""))).get(0).contains("NOT READY"));
        String reviewed = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(0);
        assertFalse(reviewed.contains("NOT READY"));
        assertTrue(reviewed.contains(REVIEWED) && reviewed.contains("No deviations: the contractor lists none."));
        assertTrue(reviewed.contains("1 value that falls short"), "an unlisted deviation is said on the first page");
    }

    @Test
    void everyFrontPageOfAPackageWithoutStatementSaysThatItIsNotReady() throws Exception {
        List<String> texts = pageTexts(SubmittalPages.of(PackageSample.contents("")));
        texts.subList(0, 6).forEach(text -> assertTrue(text.contains("NOT READY"), text));
    }

    @Test
    void theSubstitutionFormSetsRequiredAndProposedSideBySideAndAsksForTheRest() throws Exception {
        String form = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(4);
        for (String said : List.of("Required", "Proposed", "at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847", "at least 1.9 lb/yd²",
            "falls short by 0.6 lb/yd² (24%)", "Cost", "Time", "Work of others", "Reason", "Asked by", "Answered by")) {
            assertTrue(form.contains(said), said + " in " + form);
        }
    }

    @Test
    void filesOfADividedPackageAreNotLargerThanTheirLimitAndKeepSheetsWhole() {
        List<Volumes.Block> blocks = List.of(block(PackageGroup.FRONT, 4, 0, 0), block(PackageGroup.DATA, 1, 10, 5_000),
            block(PackageGroup.DATA, 1, 10, 4_000), block(PackageGroup.DATA, 1, 10, 25_000), block(PackageGroup.REPORTS, 1, 2, 100));
        List<Volumes.Run> runs = new Volumes(false, 10_000).divide(blocks, 500);
        assertEquals(List.of(new Volumes.Run(0, 1, 1, 4, 1, 0), new Volumes.Run(1, 1, 1, 1, 1, 10), new Volumes.Run(2, 2, 1, 1, 1, 10),
            new Volumes.Run(3, 3, 1, 1, 1, 3), new Volumes.Run(3, 4, 1, 0, 4, 3), new Volumes.Run(3, 5, 1, 0, 7, 4),
            new Volumes.Run(4, 6, 1, 1, 1, 2)), runs);
        assertEquals(List.of(1, 2, 2, 2, 3), new Volumes(true, 0).divide(blocks, 500).stream().map(Volumes.Run::volume).toList());
    }

    private static Volumes.Block block(PackageGroup group, int ownPages, int sheetPages, long sheetBytes) {
        return new Volumes.Block(group, Collections.nCopies(ownPages, 100L), sheetPages, sheetBytes);
    }

    @Test
    void ownPagesAreDividedOnlyWhereTheyAloneAreLargerThanAFileMayBe() {
        List<Volumes.Block> blocks = List.of(block(PackageGroup.FRONT, 3, 0, 0),
            new Volumes.Block(PackageGroup.WORK, List.of(400L, 300L, 2_000L, 200L, 100L), 0, 0), block(PackageGroup.WORK, 2, 0, 0));
        List<Volumes.Run> runs = new Volumes(false, 1_000).divide(blocks, 200);
        // the third page of the second block is larger than a file may be and can't be divided
        assertEquals(List.of(new Volumes.Run(0, 1, 1, 3, 1, 0), new Volumes.Run(1, 2, 1, 2, 1, 0), new Volumes.Run(1, 3, 3, 1, 1, 0),
            new Volumes.Run(1, 4, 4, 2, 1, 0), new Volumes.Run(2, 4, 1, 2, 1, 0)), runs);
    }

    @Test
    void pagesOfADividedPackageAreCitedWithTheirPart() throws Exception {
        Pages pages = SubmittalPages.of(PackageSample.contents(REVIEWED), new Volumes(true, 0));
        assertEquals(2, pages.volumes());
        List<String> texts = pageTexts(pages);
        // part 2 begins with a page of its own and the group's, then the divider and the sheet
        assertTrue(texts.get(3).contains("part 2, page 6"), texts.get(3));
        String second = texts.get(pages.volume(2).get(0).firstPage() - 1);
        assertTrue(second.contains("Part 2 of 2 of submittal 04-73-00-01"), second);
        assertTrue(second.contains("part 2 of 2, page 1 of 7"), second);
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
        String missing = pageTexts(SubmittalPages.of(PackageSample.contents(REVIEWED))).get(5);
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
                assertTrue(text.isEmpty() || text.equals(String.valueOf(number)) || text.startsWith(target.title()), "'" + text
                    + "' leads to page "
                    + number);
            }
        }
        assertTrue(pages.links().contains(new LinkBox(4, boxOf(pages, PackageSample.SHEET, 3), PackageSample.SHEET, 3, Optional.empty())));
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
        Pages pages = SubmittalPages.of(new Contents(small.assembly(), small.submittal(), small.items(), rows, sheets, List.of(),
            List.of()));
        assertTrue(pages.parts().stream().filter(part -> part.id().equals("contents") || part.id().equals("compliance"))
            .allMatch(part -> part.pages() > 1), "124 lines and 200 rows take more than a page");
        int next = 1;
        for (Part part : pages.parts()) {
            assertEquals(next, part.packagePage(), part.id());
            next += part.pages();
        }
        List<String> texts = pageTexts(pages);
        Part last = pages.parts().get(pages.parts().size() - 2);
        assertTrue(texts.get(last.firstPage() - 1).contains("page " + last.packagePage() + " of " + pages.total(1)));
    }

    @Test
    void sameContentsGiveTheSameBytes() throws Exception {
        assertArrayEquals(SubmittalPages.of(PackageSample.contents("")).pdf(), SubmittalPages.of(PackageSample.contents("")).pdf());
    }

    @Test
    void comparisonPrintsRowsCountsShortfallAndWhoDecides() throws Exception {
        Contents contents = PackageSample.contents(REVIEWED);
        byte[] pdf = ComparisonPages.of(contents.assembly(), contents.submittal(), contents.comparison(), List.of());
        assertArrayEquals(pdf, ComparisonPages.of(contents.assembly(), contents.submittal(), contents.comparison(), List.of()));
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

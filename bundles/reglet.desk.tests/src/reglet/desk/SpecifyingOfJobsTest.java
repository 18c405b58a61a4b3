package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Comparison;
import reglet.model.Finding;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;

/** How products are specified, and alternates, through all papers of a job. */
class SpecifyingOfJobsTest {
    private static final String LATH = "specify: basis of design, product: Ridgeback 340, maker: Tamarack Lath Works";
    private static final String SECTION = "04 73 00";

    @TempDir
    Path folder;

    /** The library with another text in place of one in a file. */
    private OpenJob changed(String file, String old, String text) throws Exception {
        Samples.copy("mesa-library", folder);
        String before = Files.readString(folder.resolve(file));
        assertTrue(before.contains(old), old);
        Files.writeString(folder.resolve(file), before.replace(old, text));
        return Samples.desk().open(folder);
    }

    private static String paragraph(OpenJob job, String id) throws Exception {
        return job.section(SECTION).paragraphs().stream().filter(paragraph -> paragraph.id().equals(id)).map(Paragraph::plain).findFirst()
            .orElse("");
    }

    private static List<Comparison.Row> rows(OpenJob job, String path) throws Exception {
        return job.compare(job.job().submittals().get(0)).rows().stream().filter(row -> row.requirement().path().equals(path)).toList();
    }

    @Test
    void theNamedProductStandsInItsParagraphInTheRegisterAndBesideComparableProducts() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        String basis = paragraph(job, "lath.specified-basis");
        assertTrue(basis.contains("Ridgeback 340; maker: Tamarack Lath Works"), basis);
        assertTrue(basis.contains("Comparable products"), basis);
        assertTrue(paragraph(job, "lath.product-data").contains("product name"));
        assertEquals(List.of(), rows(job, "lath.product"), "another product is judged by its values");
        assertFalse(rows(job, "lath.weight").isEmpty());
    }

    @Test
    void anotherProductThanTheProprietaryOneFallsShortInItsParagraph() throws Exception {
        OpenJob job = changed("walls/W1.yaml", "basis of design", "proprietary");
        Comparison.Row row = rows(job, "lath.product").get(0);
        assertEquals(Comparison.Result.FALLS_SHORT, row.result());
        SectionDocument section = job.section(SECTION);
        assertEquals(row.paragraph(), section.paragraphs().stream().filter(paragraph -> paragraph.id().equals("lath.specified-proprietary"))
            .findFirst().orElseThrow().path());
    }

    @Test
    void theStandardGovernsWhereItIsTheReference() throws Exception {
        OpenJob job = changed("walls/W1.yaml", LATH, "specify: reference standard");
        assertTrue(paragraph(job, "lath.specified-standard").contains("ASTM C847"));
        assertEquals(Comparison.Result.MEETS, rows(job, "lath.standards").get(0).result(), "the sheet names ASTM C847 for its weight");
    }

    @Test
    void aProductThatNobodyNamesIsAGap() throws Exception {
        OpenJob job = changed("walls/W1.yaml", LATH, "specify: proprietary");
        Finding gap = job.checked().findings().stream().filter(finding ->
            finding.rule().equals("lath.specified")).findFirst().orElseThrow();
        assertEquals(Finding.Kind.GAP, gap.kind());
        assertEquals(List.of("lath.product", "lath.maker"), gap.missing());
        assertTrue(paragraph(job, "lath.specified-proprietary").contains("[Lath, product name: not decided]"));
    }

    @Test
    void anAlternateStandsBehindTheParagraphThatItReplacesAndIsListed() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        List<String> ids = job.section(SECTION).paragraphs().stream().map(Paragraph::id).toList();
        assertEquals(ids.indexOf("lath.metal/1") + 1, ids.indexOf("lath.metal~alternate-1"));
        assertTrue(paragraph(job, "lath.metal~alternate-1").startsWith("Alternate No. 1: Lath: 3.4 lb self-furring stainless steel lath"));
        assertFalse(ids.contains("lath.install~alternate-1"), "equal texts print once");
        String listed = paragraph(job, "alternates-1");
        String path = job.section(SECTION).paragraphs().get(ids.indexOf("lath.metal~alternate-1")).path();
        assertTrue(listed.startsWith("Alternate No. 1, stainless lath") && listed.contains("Paragraph " + path), listed);
        assertTrue(paragraph(job, "unit-prices-1").contains("Unit of measure: ft²"));
        assertTrue(job.section("07 92 00").paragraphs().stream().noneMatch(paragraph -> paragraph.id().startsWith("alternates")),
            "a section that it changes nothing in doesn't list it");
    }

    @Test
    void theRulesLookAtAnAlternateAsAWholeWall() throws Exception {
        assertEquals(List.of(), Samples.open("mesa-library").checked().findings().stream().filter(finding ->
            !finding.alternates().isEmpty()).toList());
        OpenJob job = changed("walls/W1.yaml", "metal-3.4-stainless", "metal-1.75");
        List<Finding> brought = job.checked().findings().stream().filter(finding -> finding.alternates().equals(List.of(1))).toList();
        Finding light = brought.stream().filter(finding -> finding.rule().equals("lath.light")).findFirst().orElseThrow();
        assertTrue(light.says().startsWith("Alternate No. 1: "), light.says());
        assertFalse(job.checked().isClean());
        assertFalse(job.checked().findings().stream().anyMatch(finding -> finding.rule().equals("lath.light")
            && finding.alternates().isEmpty()));
    }

    @Test
    void anAlternateTakenUpIsWhatASubmittalIsMeasuredAgainst() throws Exception {
        assertEquals("galvanized", rows(Samples.open("mesa-library"), "lath.corrosion").get(0).requirement().value().text());
        OpenJob job = changed("job.yaml", "title: stainless lath", "taken: yes, title: stainless lath");
        Comparison.Row row = rows(job, "lath.corrosion").get(0);
        assertEquals("stainless steel", row.requirement().value().text());
        assertEquals(Comparison.Result.FALLS_SHORT, row.result());
        assertEquals(row.paragraph(), job.section(SECTION).paragraphs().stream()
            .filter(paragraph -> paragraph.id().equals("lath.metal")).findFirst().orElseThrow().path());
    }
}

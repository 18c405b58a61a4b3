package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.Finding;
import reglet.model.SectionDocument.Paragraph;

/** Three and more offered alternates, looked at together. */
class AlternatesTogetherTest extends ThreeAlternates {

    /** Four offered ones; no two of mat, sheathing and screws are too much for the screws, and all three are. */
    private void fourAlternates() throws Exception {
        change("walls/W1.yaml", "sheathing: {accept: [glass-mat-5-8], by: architect}",
            "sheathing: {accept: [glass-mat-1-2], by: architect, alternates: {4: {accept: [glass-mat-5-8]}}}");
        change("job.yaml", "alternates:\n", "alternates:\n  - {number: 4, title: thicker sheathing, kind: alternate}\n");
    }

    @Test
    void aConflictThatOnlyThreeOfFourAlternatesTogetherBringNamesTheThree() throws Exception {
        fourAlternates();
        OpenJob job = open();
        for (List<Integer> fewer : List.of(List.of(2), List.of(3), List.of(4), List.of(2, 3), List.of(2, 4), List.of(3, 4))) {
            assertEquals(List.of(), brought(job, fewer.toArray(Integer[]::new)), fewer.toString());
        }
        assertEquals(List.of("lath_fastener.past-steel"), brought(job, 2, 3, 4).stream().map(Finding::rule).toList());
        assertTrue(brought(job, 2, 3, 4).get(0).says().startsWith("Alternates No. 2, No. 3 and No. 4 together: "));
        for (int number : List.of(2, 3, 4)) {
            taken(number, "yes");
        }
        assertEquals(List.of("lath_fastener.past-steel"), brought(open(), 2, 3, 4).stream().map(Finding::rule).toList(),
            "accepted ones are named as well");
    }

    @Test
    void alternatesThatCannotStandTogetherSayWhichAndTheyAreListedByNumber() throws Exception {
        fourAlternates();
        OpenJob job = open();
        assertTrue(paragraph(job, "alternates-1").endsWith("It can't be accepted together with Alternate No. 3."),
            paragraph(job, "alternates-1"));
        assertFalse(paragraph(job, "alternates-2").contains("can't be accepted"), paragraph(job, "alternates-2"));
        assertEquals(List.of("alternates-1", "alternates-2", "alternates-3", "alternates-4"), job.section(SECTION).paragraphs().stream()
            .map(Paragraph::id).filter(id -> id.startsWith("alternates-")).toList());
        taken(3, "yes");
        OpenJob accepted = open();
        assertTrue(paragraph(accepted, "alternates-1").endsWith("It can't be accepted together with Alternate No. 3."),
            paragraph(accepted, "alternates-1"));
        assertEquals(List.of(), brought(accepted, 1, 3), "what can't stand together isn't looked at together");
    }

    @Test
    void ofManyAlternatesTheCombinationsThatWereLeftOutAreTold() throws Exception {
        StringBuilder list = new StringBuilder("alternates:\n");
        StringBuilder versions = new StringBuilder("alternates: {1: {accept: [screw-steel-stainless], by: specifier}");
        for (int number = 10; number < 20; number++) {
            list.append("  - {number: " + number + ", title: screws, kind: alternate}\n");
            versions.append(", " + number + ": {accept: [screw-steel-stainless], by: specifier}");
        }
        change("job.yaml", "alternates:\n", list.toString());
        change("walls/W1.yaml", "alternates: {1: {accept: [screw-steel-stainless], by: specifier}", versions.toString());
        Finding told = open().checked().findings().stream().filter(found -> found.rule().equals("alternates.combinations")).findFirst()
            .orElseThrow();
        assertEquals(Finding.Kind.CAUTION, told.kind());
        assertTrue(told.says().contains("up to 2 of them at a time"), told.says());
    }
}

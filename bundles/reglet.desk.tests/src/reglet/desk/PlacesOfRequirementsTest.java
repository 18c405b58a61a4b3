package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.SectionDocument;
import reglet.model.Submittal;

class PlacesOfRequirementsTest {
    @TempDir
    Path folder;


    @Test
    void everyRowOfAComparisonNamesAParagraphOfItsSection() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        for (Submittal submittal : job.job().submittals()) {
            assertEquals(List.of(), job.compare(submittal).rows().stream().filter(row -> row.paragraph().isEmpty())
                .map(row -> row.requirement().wall() + "." + row.requirement().path()).toList());
        }
    }

    @Test
    void noProductIsHeldToAValueThatTheSectionDoesNotStateAnyMore() throws Exception {
        Path folder = Samples.copy("harbour-clinic", this.folder.resolve("job"));
        Files.createDirectories(folder.resolve("sections"));
        Path changes = folder.resolve("sections/04-73-00.md");
        Row before = weight(Samples.desk().open(folder));
        assertEquals(Result.MEETS, before.result());
        Files.writeString(changes, "## strike lath.metal@W2/1\n");
        OpenJob gap = Samples.desk().open(folder);
        assertEquals(List.of("gap lath.weight"), gap.checked().findings().stream().filter(finding -> finding.rule().equals("paper.printed"))
            .map(finding -> finding.kind().text() + " " + String.join(", ", finding.missing())).toList());
        assertEquals(Result.CANNOT_COMPARE, weight(gap).result());
        assertEquals("", weight(gap).paragraph());
        assertTrue(weight(gap).note().startsWith("Section 04 73 00 does not state it any more (sections/04-73-00.md:1:1). "
            + "Against the choice it would be \"meets\"."), weight(gap).note());
        Files.writeString(changes, "## strike lath.metal@W2/1\n\n## leave out lath.weight\nThe owner has the lath in store\n");
        OpenJob meant = Samples.desk().open(folder);
        assertEquals(List.of(), meant.paper());
        assertTrue(weight(meant).note().startsWith("Section 04 73 00 leaves it out on purpose: The owner has the lath in store. "),
            weight(meant).note());
    }

    private static Row weight(OpenJob job) throws Exception {
        return job.compare(job.job().submittals().get(0)).rows().stream().filter(row -> row.place().equals("W2.lath.weight")).findFirst()
            .orElseThrow();
    }

    @Test
    void aKindThatTheOptionsTitleSaysIsFoundWhereTheOptionIsNamedForThatWallAndAlternative() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        SectionDocument section = job.section("04 73 00");
        Submittal submittal = job.submittal("04-73-00-01").orElseThrow();
        List<Row> kinds = job.compare(submittal).rows().stream().filter(row -> row.requirement().path().equals("lath.kind")).toList();
        assertEquals(List.of("lath.metal@W1~metal-3.4", "lath.metal@W2"), kinds.stream().map(row -> section.paragraphs().stream()
            .filter(paragraph -> paragraph.path().equals(row.paragraph())).findFirst().orElseThrow().id()).toList());
    }
}

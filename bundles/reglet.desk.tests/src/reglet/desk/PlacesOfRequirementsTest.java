package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.Comparison.Row;
import reglet.model.SectionDocument;
import reglet.model.Submittal;

class PlacesOfRequirementsTest {

    @Test
    void everyRowOfAComparisonNamesAParagraphOfItsSection() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        for (Submittal submittal : job.job().submittals()) {
            assertEquals(List.of(), job.compare(submittal).rows().stream().filter(row -> row.paragraph().isEmpty())
                .map(row -> row.requirement().wall() + "." + row.requirement().path()).toList());
        }
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

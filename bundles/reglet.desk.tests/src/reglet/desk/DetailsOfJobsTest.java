package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Drawing;
import reglet.model.Drawing.Leader;
import reglet.model.SectionDocument;
import reglet.model.WallType;

/** Drawings and sections of one job say the same. */
class DetailsOfJobsTest {
    private static final Pattern PLACE = Pattern.compile(".*, (\\d\\d \\d\\d \\d\\d), (\\S+)");

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void everyNoteLeadsToAParagraphThatSpecifiesWhatItPointsAt(String name) throws Exception {
        OpenJob job = Samples.open(name);
        int led = 0;
        for (WallType wall : job.job().walls()) {
            for (Drawing drawing : job.details(wall.id())) {
                for (Drawing.Shape shape : drawing.shapes()) {
                    if (shape instanceof Leader leader) {
                        Matcher place = PLACE.matcher(leader.text());
                        if (place.matches()) {
                            SectionDocument section = job.section(place.group(1));
                            Optional<String> paragraph = job.assembly().requirements().stream().filter(requirement ->
                                requirement.component().equals(leader.key())).flatMap(requirement -> section.pathOf(requirement).stream())
                                .filter(place.group(2)::equals).findFirst();
                            assertTrue(paragraph.isPresent(), drawing.id() + ": " + leader.text());
                            led++;
                        }
                    }
                }
            }
        }
        assertTrue(led > 30, "only " + led + " notes lead to a paragraph");
    }

    @Test
    void everyDrawingComesAsSvgAndDxfAndOnASheet() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Map<String, Output> outputs = Outputs.of(job).details().make().stream().collect(Collectors.toMap(Output::name, output -> output));
        for (WallType wall : job.job().walls()) {
            List<Drawing> drawings = job.details(wall.id());
            for (Drawing drawing : drawings) {
                assertTrue(outputs.containsKey("details/" + wall.id() + "-" + drawing.id() + ".svg"), drawing.id());
                assertTrue(outputs.containsKey("details/" + wall.id() + "-" + drawing.id() + ".dxf"), drawing.id());
            }
            try (PDDocument sheets = Loader.loadPDF(outputs.get("details/" + wall.id() + ".pdf").bytes())) {
                assertEquals(drawings.size(), sheets.getNumberOfPages());
            }
        }
    }

    @Test
    void theFirstSectionHasTheDetailsAsItsAppendixAndTheOthersHaveNone() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        List<String> sections = job.job().sections();
        for (String number : sections) {
            byte[] pdf = Outputs.of(job).section(number).make().stream().filter(output -> output.name().endsWith(".pdf")).findFirst()
                .orElseThrow().bytes();
            try (PDDocument document = Loader.loadPDF(pdf)) {
                String text = new PDFTextStripper().getText(document);
                boolean first = number.equals(sections.get(0));
                assertTrue(text.contains("END OF SECTION"), number);
                assertEquals(first, text.contains("not a shop drawing"), number);
            }
        }
    }

    /** Drawings that a person has looked at as pictures: when one changes, look at it again, and put the new one in its place. */
    @ParameterizedTest
    @ValueSource(strings = {"W1-layers", "W1-base-1", "W1-window-1.head", "W1-top-1", "W1-corner-1"})
    void theDrawingsAreThoseThatWereLookedAt(String name) throws Exception {
        Output made = Outputs.of(Samples.open("harbour-clinic")).details().make().stream()
            .filter(output -> output.name().equals("details/" + name + ".svg")).findFirst().orElseThrow();
        try (InputStream looked = DetailsOfJobsTest.class.getResourceAsStream("drawings/" + name + ".svg")) {
            assertEquals(new String(looked.readAllBytes(), StandardCharsets.UTF_8), new String(made.bytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void theDrawingFollowsTheChoice() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        OpenJob deep = job.choosing("W1", "mat", List.of("filament-3-4"));
        assertFalse(job.details("W1").equals(deep.details("W1")));
        Set<String> ids = job.details("W1").stream().map(Drawing::id).collect(Collectors.toSet());
        assertEquals(ids, deep.details("W1").stream().map(Drawing::id).collect(Collectors.toSet()));
    }
}

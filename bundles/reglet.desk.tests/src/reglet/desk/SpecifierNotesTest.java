package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.Clause;
import reglet.model.SectionDocument.Paragraph;

class SpecifierNotesTest {
    private static final String SECTION = "04 73 00";

    @Test
    void theNotesStandByTheNumbersOfTheParagraphsThatTheyAreAbout() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        String notes = notes(job);
        Clause lath = job.pack().clauses().stream().filter(clause -> clause.id().equals("lath.metal")).findFirst().orElseThrow();
        Paragraph printed = job.section(SECTION).paragraphs().stream().filter(found -> found.id().startsWith("lath.metal@")).findFirst()
            .orElseThrow();
        assertTrue(notes.contains("- **" + printed.path() + "** " + lath.note()), notes);
    }

    @Test
    void anOptionThatIsChosenTellsWhatToKnowOfItAndOneThatIsNotStaysOut() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        assertTrue(notes(job).contains("Embeds well and spans studs at 24 in when stretched taut."));
        OpenJob other = job.choosing("W1", "lath", List.of("metal-3.4"));
        assertFalse(notes(other).contains("Embeds well and spans studs at 24 in when stretched taut."));
    }

    @Test
    void aChoiceThatAQuestionBroughtAboutNamesTheQuestionAndItsAnswer() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        String notes = new String(Outputs.of(job).notes("07 92 00").make().get(0).bytes(), StandardCharsets.UTF_8);
        Paragraph rod = job.section("07 92 00").paragraphs().stream().filter(found -> found.path().startsWith("2.")
            && found.id().startsWith("backer_rod")).findFirst().orElseThrow();
        String note = "- **" + rod.path() + "** Wall type W1, Joint backing: chosen by RFI 1, 2026-02-20: No, closed cells only, for the "
            + "sealant's sake.";
        assertTrue(notes.contains(note), notes);
        assertEquals(notes.indexOf("chosen by RFI 1"), notes.lastIndexOf("chosen by RFI 1"));
        assertFalse(new String(Outputs.of(job).notes(SECTION).make().get(0).bytes(), StandardCharsets.UTF_8).contains("chosen by RFI"));
    }

    @Test
    void noNoteGoesOutWithASection() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        List<Output> made = Outputs.of(job).section(SECTION).make();
        assertEquals(0, made.stream().filter(output -> output.name().contains("notes")).count());
        String printed = new String(made.get(0).bytes(), StandardCharsets.UTF_8);
        job.pack().clauses().stream().map(Clause::note).filter(note -> !note.isEmpty())
            .forEach(note -> assertFalse(printed.contains(note), note));
    }

    private static String notes(OpenJob job) throws Exception {
        return new String(Outputs.of(job).notes(SECTION).make().get(0).bytes(), StandardCharsets.UTF_8);
    }
}

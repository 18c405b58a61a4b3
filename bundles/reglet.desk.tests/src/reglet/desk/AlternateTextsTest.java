package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.UnusableInput;

/** What a person writes for the paragraphs of alternates. */
class AlternateTextsTest extends ThreeAlternates {

    /** Writes a person's text of the section. */
    private void own(String text) throws Exception {
        Files.createDirectories(folder.resolve("sections"));
        Files.writeString(folder.resolve("sections/04-73-00.md"), text);
    }

    @Test
    void aPersonsTextForAnAlternatesParagraphPrintsTheAlternatesValuesAndStaysWhenItIsAccepted() throws Exception {
        own("## change lath.metal\nBase lath of ${lath}.\n\n"
            + "## change lath.metal~alternate-1\nRust-free lath, ${lath}, ${lath.corrosion}.\n\n"
            + "## add after lath.metal~alternate-1\nKeep it apart from galvanized steel.\n");
        OpenJob offered = open();
        assertEquals("Alternate No. 1: Rust-free lath, 3.4 lb self-furring stainless steel lath, stainless steel.",
            paragraph(offered, "lath.metal~alternate-1"));
        assertEquals("Alternate No. 1: Keep it apart from galvanized steel.", paragraph(offered, "lath.metal~alternate-1+1"));
        assertTrue(paragraph(offered, "lath.metal").startsWith("Base lath of 3.4 lb self-furring expanded metal lath"));
        String added = offered.section(SECTION).paragraphs().stream().filter(one -> one.id().equals("lath.metal~alternate-1+1")).findFirst()
            .orElseThrow().path();
        assertTrue(paragraph(offered, "alternates-1").contains("Paragraph " + added), "the article names what was added too");

        taken(1, "yes");
        OpenJob accepted = open();
        assertEquals("Rust-free lath, 3.4 lb self-furring stainless steel lath, stainless steel.", paragraph(accepted, "lath.metal"));
        assertEquals("Keep it apart from galvanized steel.", paragraph(accepted, "lath.metal+1"));
        assertTrue(accepted.section(SECTION).paragraphs().stream().noneMatch(one -> one.plain().startsWith("Base lath")));
    }

    @Test
    void aPersonsTextForADeclinedAlternateWaitsAndOneForNoAlternateIsTold() throws Exception {
        own("## change lath.metal~alternate-1\nRust-free lath, ${lath}.\n");
        taken(1, "no");
        OpenJob declined = open();
        assertTrue(declined.section(SECTION).paragraphs().stream().noneMatch(one -> one.plain().contains("Rust-free")));
        assertEquals(List.of(), declined.paper());
        own("## change lath.metal~alternate-9\nRust-free lath, ${lath}.\n");
        OpenJob lost = open();
        assertTrue(lost.paper().stream().anyMatch(found -> found.at().toString().startsWith("sections/04-73-00.md:1")),
            lost.paper().toString());
    }

    @Test
    void whatAPersonsTextForAnAlternateNoLongerStatesOrStatesOtherwiseIsFoundAtItsLine() throws Exception {
        own("## change lath.metal~alternate-1\nLath: ${lath}, weight at least 2.5 lb/yd2.\n");
        OpenJob job = open();
        List<String> found = job.paper().stream().map(finding -> finding.rule() + " " + finding.at().line() + " " + finding.says())
            .toList();
        assertTrue(found.stream().anyMatch(says -> says.startsWith("paper.values 2 ")), found.toString());
        assertTrue(found.stream().anyMatch(says -> says.startsWith("paper.printed 1 Alternate No. 1: ") && says.contains("corrosion")),
            found.toString());
        own("## change lath.metal~alternate-1\nLath: ${lath}, ${lath.weight}, ${lath.corrosion}.\n\n## add after mat.material~alternate-2\n"
            + "Mat thickness: at least 3/8 in.\n");
        assertEquals(List.of(), open().paper());
    }

    @Test
    void anAlternatesParagraphIsNotMovedAndTheReasonNamesTheLine() throws Exception {
        own("## move lath.metal~alternate-1 after mat.material\n");
        OpenJob job = open();
        String why = assertThrows(UnusableInput.class, () -> job.section(SECTION)).problems().get(0).toString();
        assertTrue(why.startsWith("sections/04-73-00.md:1:") && why.contains("stands behind the one that it would replace")
            && why.contains("move that one"), why);
    }

    @Test
    void anAlternatesParagraphIsWrittenFromThePageWithoutItsName() throws Exception {
        OpenJob job = open();
        SectionPage.Line line = SectionPage.of(job, SECTION).line("lath.metal~alternate-1").orElseThrow();
        assertEquals("", line.fixed());
        assertTrue(line.written().startsWith("Lath: ${lath}"), line.written());
        OpenJob changed = OwnTexts.change(job, SECTION, "lath.metal~alternate-1", "Stainless lath: ${lath}, ${lath.corrosion}.");
        SectionPage.Line own = SectionPage.of(changed, SECTION).line("lath.metal~alternate-1").orElseThrow();
        assertEquals(SectionPage.Standing.OWN, own.standing());
        assertTrue(own.paragraph().plain().startsWith("Alternate No. 1: Stainless lath: 3.4 lb self-furring stainless"),
            own.paragraph().plain());
        OwnTexts.giveBack(changed, SECTION, "lath.metal~alternate-1");
        assertFalse(Files.exists(folder.resolve("sections/04-73-00.md"))
            && Files.readString(folder.resolve("sections/04-73-00.md")).contains("alternate-1"));
        assertThrows(UnusableInput.class, () -> OwnTexts.down(job, SECTION, "lath.metal~alternate-1"));
    }
}

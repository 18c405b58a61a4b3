package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.SectionChanges;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

class SectionPageTest {
    private static final String MASONRY = "04 73 00";
    private static final String FILE = SectionEdits.file(MASONRY);
    private static final String WATER = "mortar.water";

    @TempDir
    Path folder;
    private OpenJob job;

    @BeforeEach
    void open() throws Exception {
        job = Samples.desk().open(Samples.copy("harbour-clinic", folder.resolve("job")));
    }

    private static List<String> ids(OpenJob job) throws UnusableInput {
        return job.section(MASONRY).paragraphs().stream().map(Paragraph::id).toList();
    }

    private static Line line(OpenJob job, String id) throws UnusableInput {
        return SectionPage.of(job, MASONRY).line(id).orElseThrow();
    }

    @Test
    void withoutChangesThePageIsTheDraftAndAllOfItTheLibrarys() throws Exception {
        SectionPage page = SectionPage.of(job, MASONRY);
        assertEquals(job.section(MASONRY).paragraphs(), page.lines().stream().map(Line::paragraph).toList());
        assertTrue(page.lines().stream().noneMatch(Line::isOwn));
        assertTrue(page.lines().stream().anyMatch(line -> !line.notes().isEmpty()));
        assertFalse(page.line("references.ASTM_C144").orElseThrow().fixed().isEmpty());
    }

    @Test
    void aStruckParagraphStandsWhereItWasAndTheOthersHaveTheNumbersThatPrint() throws Exception {
        List<String> before = ids(job);
        OpenJob struck = OwnTexts.strike(job, MASONRY, WATER);
        SectionPage page = SectionPage.of(struck, MASONRY);
        assertEquals(before, page.lines().stream().map(Line::id).toList());
        assertEquals(Standing.STRUCK, page.line(WATER).orElseThrow().standing());
        Map<String, String> printed = struck.section(MASONRY).paragraphs().stream()
            .collect(Collectors.toMap(Paragraph::id, Paragraph::path));
        page.lines().stream().filter(line -> line.standing() != Standing.STRUCK)
            .forEach(line -> assertEquals(printed.get(line.id()), line.paragraph().path()));
        assertEquals(WATER, page.line(WATER).orElseThrow().block().orElseThrow().paragraph());
    }

    @Test
    void anOwnTextStandsBesideTheLibrarysWordByWord() throws Exception {
        OpenJob changed = OwnTexts.change(job, MASONRY, WATER, "Water: Clean, and fit to wash in.");
        Line own = line(changed, WATER);
        assertEquals(Standing.OWN, own.standing());
        assertEquals(List.of("drink"), own.differences().stream().filter(run -> run.edit() == SectionChanges.Edit.DELETED)
            .map(run -> run.span().text().strip()).toList());
        assertEquals("wash in", own.differences().stream().filter(run -> run.edit() == SectionChanges.Edit.INSERTED)
            .map(run -> run.span().text()).collect(Collectors.joining()).strip());
        Line added = line(OwnTexts.add(changed, MASONRY, WATER, "Ice: As required."), WATER + "+1");
        assertEquals(Standing.ADDED, added.standing());
        assertTrue(added.findings().stream().anyMatch(finding -> finding.rule().equals("paper.wording")), added.findings().toString());
    }

    @Test
    void whereTheLibraryMovedThePersonsTextMayStayAsItWasWritten() throws Exception {
        OpenJob old = Saving.restore(job, Map.of(FILE, "## change mortar.water\n> Water: Clean, and fit to wash in.\n\n"
            + "Mixing water: Clean, and fit to wash in.\n"));
        SectionPage.LibraryMoved moved = line(old, WATER).move().orElseThrow();
        assertEquals("Water: Clean, and fit to drink.", moved.today());
        assertTrue(moved.takenIn());
        assertEquals("Mixing water: Clean, and fit to drink.", moved.prints());
        OpenJob kept = OwnTexts.keep(old, MASONRY, WATER);
        assertTrue(line(kept, WATER).move().isEmpty());
        assertEquals("Mixing water: Clean, and fit to wash in.", line(kept, WATER).paragraph().plain());
    }

    @Test
    void aParagraphMovesUpAndDownAndBackLeavesNoTrace() throws Exception {
        List<String> before = ids(job);
        int at = before.indexOf(WATER);
        OpenJob up = OwnTexts.up(job, MASONRY, WATER);
        assertEquals(at - 1, ids(up).indexOf(WATER));
        assertTrue(line(up, WATER).moved() || line(up, before.get(at - 1)).moved());
        assertEquals("", Saving.text(OwnTexts.down(up, MASONRY, WATER), FILE));
        OpenJob top = OwnTexts.up(OwnTexts.up(job, MASONRY, WATER), MASONRY, WATER);
        assertEquals(at - 2, ids(top).indexOf(WATER));
        UnusableInput first = assertThrows(UnusableInput.class, () -> OwnTexts.up(top, MASONRY, WATER));
        assertTrue(first.getMessage().contains("stands first"), first.getMessage());
        assertEquals(before, ids(OwnTexts.down(OwnTexts.down(top, MASONRY, WATER), MASONRY, WATER)));
    }

    @Test
    void whatWasAddedBehindAParagraphGoesAlongWithItAndMovesAmongItsLike() throws Exception {
        OpenJob added = OwnTexts.add(OwnTexts.add(job, MASONRY, WATER, "Ice: None."), MASONRY, WATER, "Snow: None.");
        List<String> ids = ids(added);
        String file = Saving.text(added, FILE);
        int at = ids.indexOf(WATER);
        OpenJob up = OwnTexts.up(added, MASONRY, WATER);
        assertEquals(List.of(WATER, WATER + "+1", WATER + "+2", ids.get(at - 1)), ids(up).subList(at - 1, at + 3));
        OpenJob swapped = OwnTexts.up(Saving.restore(up, Map.of(FILE, file)), MASONRY, WATER + "+2");
        assertEquals(List.of(WATER, WATER + "+2", WATER + "+1"), ids(swapped).subList(at, at + 3));
    }

    @Test
    void aTextThatCannotBePrintedIsRefusedAndWritesNothing() throws Exception {
        UnusableInput wrong = assertThrows(UnusableInput.class, () -> OwnTexts.change(job, MASONRY, WATER, "Water: ${mortar.wather}."));
        assertTrue(wrong.getMessage().contains("mortar.wather"), wrong.getMessage());
        assertThrows(UnusableInput.class, () -> OwnTexts.add(job, MASONRY, WATER, "- a list\n- alone"));
        assertEquals("", Saving.text(job, FILE));
    }

    @Test
    void aTextThatSaysWhatTheLibrarySaysIsTheLibrarysAgain() throws Exception {
        OpenJob changed = OwnTexts.change(job, MASONRY, WATER, "Water: Any.");
        assertEquals("", Saving.text(OwnTexts.change(changed, MASONRY, WATER, "Water: Clean, and fit to drink."), FILE));
    }

    @Test
    void strikingOneOfTwoParagraphsThatCameTogetherLeavesTheOther() throws Exception {
        OpenJob added = OwnTexts.add(job, MASONRY, WATER, "Ice: None.\n\nSnow: None.");
        OpenJob struck = OwnTexts.strike(added, MASONRY, WATER + "+1");
        assertEquals(List.of("Snow: None."), struck.section(MASONRY).paragraphs().stream().filter(one -> one.id().startsWith(WATER + "+"))
            .map(Paragraph::plain).toList());
    }
}

package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.SectionDocument.Paragraph;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

class OwnTextsTest {
    private static final String MASONRY = "04 73 00";
    private static final String FILE = SectionEdits.file(MASONRY);

    @TempDir
    Path folder;
    private OpenJob job;

    @BeforeEach
    void open() throws Exception {
        job = Samples.desk().open(Samples.copy("harbour-clinic", folder.resolve("job")));
    }

    private static List<Paragraph> paragraphs(OpenJob job) throws UnusableInput {
        return job.section(MASONRY).paragraphs();
    }

    private static String plain(OpenJob job, String id) throws UnusableInput {
        return paragraphs(job).stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow().plain();
    }

    private static List<String> ids(OpenJob job) throws UnusableInput {
        return paragraphs(job).stream().map(Paragraph::id).toList();
    }

    @Test
    void theTextOfAnyParagraphWrittenBackAsItIsPrintsTheSame() throws Exception {
        String file = "";
        for (String id : ids(job)) {
            if (!id.startsWith("references.")) {
                OwnTexts.OwnText text = OwnTexts.of(job, MASONRY, id);
                file = SectionEdits.change(file, id, text.text(), text.library());
            }
        }
        OpenJob changed = Saving.restore(job, Map.of(FILE, file));
        assertEquals(ids(job), ids(changed));
        assertEquals(paragraphs(job).stream().map(Paragraph::plain).toList(), paragraphs(changed).stream().map(Paragraph::plain).toList());
        assertEquals(List.of(), changed.paper().stream().filter(finding -> finding.rule().equals("paper.library")).toList());
    }

    @Test
    void aParagraphIsChangedMovedStruckAndGivenBackAndEachCanBeUndone() throws Exception {
        List<String> before = ids(job);
        OpenJob changed = OwnTexts.change(job, MASONRY, "mortar.water", "Water: From the main.");
        assertEquals("Water: From the main.", plain(changed, "mortar.water"));
        OwnTexts.OwnText text = OwnTexts.of(changed, MASONRY, "mortar.water");
        assertEquals("Water: Clean, and fit to drink.", text.library());
        assertEquals("Water: From the main.", text.text());
        String once = Saving.text(changed, FILE);
        OpenJob added = OwnTexts.add(changed, MASONRY, "mortar.water", "Ice: None.");
        OpenJob again = OwnTexts.change(added, MASONRY, "mortar.water+1", "Ice: Not in the water.");
        assertEquals("Ice: Not in the water.", plain(again, "mortar.water+1"));
        assertFalse(Saving.text(again, FILE).contains("Ice: None."));
        String other = before.get(before.indexOf("mortar.water") - 1);
        OpenJob moved = OwnTexts.move(again, MASONRY, other, "mortar.water+1");
        assertTrue(ids(moved).indexOf(other) > ids(moved).indexOf("mortar.water"));
        OpenJob struck = OwnTexts.strike(moved, MASONRY, "mortar.water+1");
        assertFalse(ids(struck).contains("mortar.water+1"));
        OpenJob undone = Saving.restore(struck, Map.of(FILE, once));
        assertEquals("Water: From the main.", plain(undone, "mortar.water"));
        assertEquals(before, ids(OwnTexts.giveBack(undone, MASONRY, "mortar.water")));
        assertEquals("", Saving.text(undone, FILE));
    }

    @Test
    void whatCannotBeDoneIsSaidAndWritesNothing() throws Exception {
        UnusableInput wrong = assertThrows(UnusableInput.class, () -> OwnTexts.change(job, MASONRY, "mortar.wather", "Water."));
        assertTrue(wrong.getMessage().contains("did you mean 'mortar.water'"), wrong.getMessage());
        assertThrows(UnusableInput.class, () -> OwnTexts.change(job, MASONRY, "mortar.water", " "));
        assertThrows(UnusableInput.class, () -> OwnTexts.settle(job, MASONRY, "mortar.water"));
        assertEquals("", Saving.text(job, FILE));
    }

    @Test
    void whatAnotherProgramWroteSinceIsNotWrittenOver() throws Exception {
        String others = "## change mortar.water\n> Water: Clean, and fit to drink.\n\nWater: From elsewhere.\n";
        Path file = job.folder().resolve(FILE);
        Files.createDirectories(file.getParent());
        Files.writeString(file, others);
        UnusableInput wrong = assertThrows(UnusableInput.class, () -> OwnTexts.change(job, MASONRY, "mortar.water", "Water: Mine."));
        assertTrue(wrong.getMessage().contains("changed by another program"), wrong.getMessage());
        assertEquals(others, Saving.text(job, FILE));
    }

    @Test
    void settlingWritesDownTheMergedTextAndClearsTheCaution() throws Exception {
        OpenJob old = Saving.restore(job, Map.of(FILE,
            "## change mortar.water\n> Water: Clean, and fit to wash in.\n\nMixing water: Clean, and fit to wash in.\n"));
        assertTrue(old.paper().stream().anyMatch(finding -> finding.rule().equals("paper.library")));
        OwnTexts.Settled settled = OwnTexts.settle(old, MASONRY, "mortar.water");
        assertEquals("## change mortar.water\n> Water: Clean, and fit to drink.\n\nMixing water: Clean, and fit to drink.\n",
            Saving.text(settled.job(), FILE));
        assertTrue(settled.says().contains("took in the new words"), settled.says());
        assertEquals(List.of(), settled.job().paper());
        assertTrue(OwnTexts.settle(settled.job(), MASONRY, "mortar.water").says().contains("nothing to settle"));
    }

    @Test
    void settlingAStruckParagraphLeavesItStruck() throws Exception {
        OpenJob old = Saving.restore(job, Map.of(FILE, "## strike mortar.water\n> Water: Any.\n"));
        OpenJob settled = OwnTexts.settle(old, MASONRY, "mortar.water").job();
        assertEquals("## strike mortar.water\n> Water: Clean, and fit to drink.\n", Saving.text(settled, FILE));
        assertFalse(ids(settled).contains("mortar.water"));
    }
}

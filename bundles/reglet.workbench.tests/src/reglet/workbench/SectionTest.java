package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A specifier writes in the drafted section. */
@ExtendWith(Workbench.class)
class SectionTest {
    private static final String STATE = "About the paragraph";
    private static final String FULL = "About the paragraph, in full";
    private static final String WRONG = "What is wrong with the paragraph";
    private static final String WATER = "Water: Clean, and fit to drink.";
    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        ui(() -> {
            PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().resetPerspective();
            return null;
        });
        open("");
    }

    /** Opens the clinic with this file of its section. */
    private void open(String changes) throws IOException {
        Path job = Samples.copy("harbour-clinic", folder.resolve(changes.isEmpty() ? "plain" : "changed"));
        file = job.resolve("sections/04-73-00.md");
        if (!changes.isEmpty()) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, changes);
        }
        ui(() -> {
            Hands.session().close();
            return null;
        });
        await("no job is open", () -> Hands.session().snapshot().isEmpty() && !isShown("Section"));
        reopen(job);
    }

    static void reopen(Path job) {
        Hands.open(job);
        ui(() -> {
            Hands.session().look(Hands.session().focus().onSection("04 73 00"));
            return null;
        });
        await("the section is drafted", () -> isShown("Section") && prose("Section").contains("MANUFACTURED STONE MASONRY"));
    }

    /** Puts the keyboard before the first place where these words stand. */
    static void stand(String words) {
        ui(() -> {
            StyledText text = (StyledText) Hands.control("Section");
            int place = text.getText().indexOf(words);
            assertTrue(place >= 0, () -> "\"" + words + "\" doesn't stand in the section");
            text.forceFocus();
            text.setSelection(place);
            text.showSelection();
            return null;
        });
        Hands.pause();
    }

    /** The editor that is open, by the start of its name; "" for none. */
    static String editor() {
        return ui(() -> {
            StyledText text = (StyledText) Hands.control("Section");
            return text.getChildren().length == 0 ? ""
                : (String) ((Composite) text.getChildren()[0]).getChildren()[0].getData(Ui.NAME);
        });
    }

    static void letters(String words) {
        words.chars().forEach(letter -> press(letter));
    }

    static String line(String part) {
        return prose("Section").lines().filter(line -> line.contains(part)).findFirst().orElse("");
    }

    private String kept() {
        try {
            return Files.exists(file) ? Files.readString(file) : "";
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void aParagraphIsWrittenInWhereItStandsAndUndoTakesItBack() {
        stand(WATER);
        assertTrue(label(STATE).endsWith("the library's text."), label(STATE));
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        press(SWT.HOME, SWT.CTRL);
        letters("Mixing water, ");
        picture("section-writing");
        press(SWT.CR, SWT.CTRL);
        await("the text is taken over", () -> editor().isEmpty() && prose("Section").contains("Mixing water, " + WATER),
            () -> prose(WRONG));
        assertTrue(kept().contains("> " + WATER + "\n\nMixing water, " + WATER), kept());
        assertTrue(label(STATE).contains("your own text in place of the library's"), label(STATE));
        assertTrue(prose(FULL).contains("The library says\n" + WATER), prose(FULL));
        assertTrue(prose(FULL).contains("Mixing water, Water"), prose(FULL));
        await("it stands in sight, all of it", () -> {
            StyledText text = (StyledText) Hands.control("Section");
            int end = text.getText().indexOf(WATER) + WATER.length();
            return text.getLocationAtOffset(end).y + text.getLineHeight() <= text.getClientArea().height;
        });
        picture("section-own-text");
        press('z', SWT.CTRL);
        await("the library's text is back", () -> !prose("Section").contains("Mixing water") && prose("Section").contains(WATER));
        assertEquals("", kept());
        press('y', SWT.CTRL);
        await("it is written again", () -> prose("Section").contains("Mixing water, " + WATER));
        stand("Mixing water");
        press(SWT.BS, SWT.CTRL);
        await("it is given back", () -> !prose("Section").contains("Mixing water"));
        assertEquals("", kept());
    }

    @Test
    void escapeLeavesAParagraphAsItWas() {
        stand(WATER);
        press(SWT.CR);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        letters("xyz");
        press(SWT.ESC);
        await("it is closed", () -> editor().isEmpty() && prose("Section").contains(WATER));
        assertEquals("", kept());
    }

    @Test
    void theLetterThatOpensAParagraphIsTypedInItAndTakenBackLikeAnyOther() {
        stand(WATER);
        letters("abc");
        await("the paragraph is open with what was typed", () -> editor().startsWith("Text of 2.") && field().getText().endsWith("abc"),
            () -> editor());
        String all = ui(() -> field().getText());
        for (int i = 0; i < 3; i++) {
            press('z', SWT.CTRL);
        }
        await("all three letters are taken back", () -> field().getText().equals(all.substring(0, all.length() - 3)),
            () -> field().getText());
        press(SWT.ESC);
        await("it is closed", () -> editor().isEmpty() && prose("Section").contains(WATER));
        assertEquals("", kept());
    }

    @Test
    void aValueIsNotWrittenInAndTheWayToItsChoiceIsOffered() {
        stand("at least 3.4 lb/yd²");
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        ui(() -> {
            StyledText field = (StyledText) Hands.control(editorName());
            int place = field.getText().indexOf("3.4 lb");
            field.setSelection(place);
            return null;
        });
        press('9');
        await("it is explained", () -> isShown(WRONG) && label(WRONG).contains("chosen, not typed"));
        picture("section-value");
        take("Go to the choice");
        await("the build-up is at the lath", () -> Hands.selectedRow("Build-up, inside to outside").startsWith("Lath |"));
        await("the paragraph is closed", () -> editor().isEmpty());
        assertEquals("", kept());
    }

    private static String editorName() {
        return editor();
    }

    @Test
    void paragraphsAreAddedMovedStruckAndGivenBackAndNumbersFollow() {
        stand(WATER);
        String before = line(WATER);
        press(SWT.INSERT);
        await("a new paragraph is open", () -> editor().startsWith("New paragraph behind 2."));
        letters("Ice: None in the water.");
        picture("section-adding");
        press(SWT.CR, SWT.CTRL);
        await("it stands there", () -> editor().isEmpty() && prose("Section").contains("Ice: None in the water."));
        assertTrue(label(STATE).contains("a paragraph that you added"), label(STATE));
        String added = line("Ice: None");
        assertEquals(before.charAt(0) + 1, added.charAt(0), added);
        press(SWT.ARROW_DOWN, SWT.ALT);
        await("it stands one lower", () -> !line("Ice: None").equals(added));
        assertTrue(label(STATE).contains("moved here"), label(STATE));
        picture("section-moved");
        press(SWT.ARROW_UP, SWT.ALT);
        await("it stands where it was", () -> line("Ice: None").equals(added));
        assertFalse(kept().contains("## move"), kept());
        press(SWT.DEL);
        await("it is gone", () -> !prose("Section").contains("Ice: None"));
        assertEquals("", kept());
        stand(WATER);
        String next = prose("Section").lines().dropWhile(line -> !line.contains(WATER)).skip(1).findFirst().orElseThrow();
        press(SWT.DEL);
        await("it is struck", () -> line(WATER).startsWith("—"));
        assertTrue(label(STATE).startsWith("Struck"), label(STATE));
        assertTrue(prose("Section").contains(before.charAt(0) + next.substring(1)), "the next paragraph doesn't move up");
        picture("section-struck");
        press(SWT.DEL);
        await("it is given back", () -> line(WATER).equals(before));
        assertEquals("", kept());
    }

    @Test
    void wordsAreFoundWithTheirCount() {
        stand("SECTION 04 73 00");
        press('f', SWT.CTRL);
        await("the bar is open", () -> isShown("Find in the section"));
        letters("sealant");
        await("they are counted", () -> label("Find, how many").matches("1 of \\d\\d+"), () -> label("Find, how many"));
        press(SWT.CR);
        await("the next is found", () -> label("Find, how many").startsWith("2 of "));
        assertEquals("sealant", ui(() -> ((StyledText) Hands.control("Section")).getSelectionText().toLowerCase(java.util.Locale.ROOT)));
        picture("section-find");
        letters("qq");
        await("it isn't found", () -> label("Find, how many").equals("not found"));
        press(SWT.ESC);
        await("the bar is closed", () -> !isShown("Find in the section"));
    }

    @Test
    void whereTheLibraryMovedThePersonDecidesBetweenTheTexts() throws IOException {
        open("## change mortar.water\n> Water: Clean, and fit to wash in.\n\nMixing water: Clean, and fit to wash in.\n");
        await("the page shows it", () -> prose("Section").contains("Mixing water: Clean, and fit to drink."));
        stand("SECTION 04 73 00");
        press(SWT.ARROW_DOWN, SWT.CTRL);
        await("the own text is found", () -> label(STATE).contains("△ The library's text has changed since"), () -> label(STATE));
        assertTrue(prose(FULL).contains("The library's text of today\n" + WATER), prose(FULL));
        assertTrue(prose(FULL).contains("Mixing water: Clean, and fit to wash in."), prose(FULL));
        picture("section-library-moved");
        take("Take the new words in");
        await("it is settled", () -> !label(STATE).contains("△"));
        assertTrue(kept().contains("> " + WATER + "\n\nMixing water: Clean, and fit to drink."), kept());
    }

    @Test
    void whatCannotBeReadIsExplainedWhereItWasWritten() {
        stand(WATER);
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        letters(" With ${mortar.wather}.");
        press(SWT.CR, SWT.CTRL);
        await("it is explained", () -> isShown(WRONG) && label(WRONG).contains("mortar.wather"));
        assertEquals("", kept());
        picture("section-wrong");
        press(SWT.ESC);
        await("it is closed", () -> editor().isEmpty());
    }

    @Test
    void aReferenceIsFollowedAndTheWayBackIsKnown() throws IOException {
        open("## add after mortar.water\n\nIce: Made of what ${see.mortar.water} asks for.\n");
        await("the page shows it", () -> prose("Section").contains("Ice: Made of what Paragraph 2.5.C asks for."),
            () -> prose("Section"));
        stand("Ice: Made");
        String from = label(STATE);
        press(SWT.F4);
        await("it is followed", () -> label(STATE).startsWith("2.5.C: "));
        press(SWT.ARROW_LEFT, SWT.ALT);
        await("it is back", () -> label(STATE).equals(from));
    }

    @Test
    void theNoteToTheSpecifierStandsBelow() {
        stand("at least 3.4 lb/yd²");
        assertTrue(label(STATE).contains("note to the specifier"), label(STATE));
        press('i', SWT.CTRL);
        await("it stands there", () -> isShown(FULL) && prose(FULL).contains("Note to the specifier"));
        picture("section-note");
        press('i', SWT.CTRL);
        await("it is gone", () -> !isShown(FULL));
    }

    @Test
    void whatWasBeingWrittenWhenTheProgramEndedIsOfferedAgain() {
        stand(WATER);
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        letters(" Cold.");
        Path job = file.getParent().getParent();
        ui(() -> {
            Hands.session().close();
            return null;
        });
        await("no job is open", () -> !isShown("Section"));
        reopen(job);
        await("it is asked", () -> isShown("Question") && label("Question").contains("Cold."), () -> Hands.session().message());
        picture("section-kept");
        take("Take it back");
        await("it is written", () -> prose("Section").contains("drink. Cold."));
    }

    @Test
    void aValueIsCutOutAndPutElsewhereAsAValueAndTypingIsTakenBackByItself() {
        stand("at least 3.4 lb/yd²");
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        String before = ui(() -> field().getText());
        int value = before.indexOf("at least 3.4");
        select(value, before.length() - 1);
        press('x', SWT.CTRL);
        await("it is cut out", () -> field().getText().equals("Weight: ."), () -> field().getText());
        select(0, 0);
        press('v', SWT.CTRL);
        await("it is put in front", () -> field().getText().startsWith("at least 3.4"), () -> field().getText());
        picture("section-value-moved");
        press('z', SWT.CTRL);
        press('z', SWT.CTRL);
        await("the text is as before", () -> field().getText().equals(before), () -> field().getText());
        press('y', SWT.CTRL);
        press('y', SWT.CTRL);
        await("and as it was then", () -> field().getText().startsWith("at least 3.4"), () -> field().getText());
        press(SWT.CR, SWT.CTRL);
        await("it is taken over", () -> editor().isEmpty() && kept().contains("${lath.weight}Weight: ."), () -> kept());
        press('z', SWT.CTRL);
        await("the library's text is back", () -> kept().isEmpty());
    }

    private static StyledText field() {
        return ui(() -> (StyledText) Hands.control(editor()));
    }

    private static void select(int start, int end) {
        ui(() -> {
            field().setSelection(start, end);
            return null;
        });
    }

    @Test
    void leavingAParagraphTakesItOverAndTheWindowAnswersAllTheWhile() {
        stand(WATER);
        try (Watch watch = new Watch()) {
            press(SWT.F2);
            await("the paragraph is open", () -> editor().startsWith("Text of 2."));
            letters(" Cold.");
            Hands.clickControl("Job");
            await("the text is taken over", () -> editor().isEmpty() && prose("Section").contains("drink. Cold."));
            stand(WATER.substring(0, 12));
            press(SWT.DEL);
            await("the paragraph is struck", () -> line(WATER.substring(0, 12)).startsWith("—"));
            assertEquals(List.of(), watch.misplaced());
            assertEquals(List.of(), watch.tooLong());
        }
    }

    @Test
    void whenAnotherProgramWritesTheFileWhileSomebodyWritesThePersonIsAsked() throws IOException {
        stand(WATER);
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        letters(" Cold.");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "## change mortar.water\n> " + WATER + "\n\nWater: From elsewhere.\n");
        await("it is asked", () -> isShown("Question") && label("Question").contains("sections/04-73-00.md"));
        assertTrue(ui(() -> field().getText()).endsWith("Cold."), "what was typed is gone");
        picture("section-outside");
        take("Read the other one in");
        await("the other text is read in, and what was typed is still there", () -> Hands.session().message().startsWith("Read in")
            && field().getText().endsWith("Cold."), () -> Hands.session().message());
        press(SWT.ESC);
    }

    @Test
    void everySampleJobIsWrittenInAlike() throws IOException {
        for (String sample : List.of("mesa-library", "orchard-row")) {
            Path job = Samples.copy(sample, folder.resolve("others"));
            ui(() -> {
                Hands.session().close();
                return null;
            });
            await("no job is open", () -> Hands.session().snapshot().isEmpty() && !isShown("Section"));
            reopen(job);
            file = job.resolve("sections/04-73-00.md");
            await("the section is drafted", () -> isShown("Section") && prose("Section").contains(WATER));
            stand(WATER);
            press(SWT.INSERT);
            await("a new paragraph is open", () -> editor().startsWith("New paragraph behind 2."));
            letters("Ice: None.");
            press(SWT.CR, SWT.CTRL);
            await("it stands there", () -> editor().isEmpty() && prose("Section").contains("Ice: None."));
            assertTrue(kept().startsWith("## add after mortar.water"), kept());
            picture("section-" + sample);
        }
    }

    @Test
    void everyControlOfTheSectionHasANameAndNothingIsCutOff() {
        stand(WATER);
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
        press(SWT.ESC);
        press('f', SWT.CTRL);
        await("the bar is open", () -> isShown("Find in the section"));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        ui(() -> ((Text) Hands.control("Find in the section")).forceFocus());
        press(SWT.ESC);
    }
}

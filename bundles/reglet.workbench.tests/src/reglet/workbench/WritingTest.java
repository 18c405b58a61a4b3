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
import static reglet.workbench.SectionTest.editor;
import static reglet.workbench.SectionTest.letters;
import static reglet.workbench.SectionTest.line;
import static reglet.workbench.SectionTest.stand;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A specifier writes at length: lists, other articles, what is left out on purpose, and the section in the width of a page. */
@ExtendWith(Workbench.class)
class WritingTest {
    private static final String STATE = "About the paragraph";
    private static final String WATER = "Water: Clean, and fit to drink.";
    @TempDir
    Path folder;
    private Path file;

    private void open(String changes) throws IOException {
        ui(() -> {
            PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().resetPerspective();
            Hands.session().close();
            return null;
        });
        await("no job is open", () -> Hands.session().snapshot().isEmpty() && !isShown("Section"));
        Path job = Samples.copy("harbour-clinic", folder);
        file = job.resolve("sections/04-73-00.md");
        if (!changes.isEmpty()) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, changes);
        }
        SectionTest.reopen(job);
    }

    @AfterEach
    void backToTheWall() {
        press('d', SWT.CTRL, SWT.SHIFT);
        press('2', SWT.CTRL);
        await("the wall stands there again", () -> isShown("Build-up, inside to outside"));
    }

    private String kept() {
        try {
            return Files.exists(file) ? Files.readString(file) : "";
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static StyledText text() {
        return (StyledText) Hands.control("Section");
    }

    private static boolean isInSight(int place) {
        int y = text().getLocationAtOffset(place).y;
        return y >= 0 && y + text().getLineHeight() <= text().getClientArea().height;
    }

    @Test
    void ofAListOnlyTheItemAtHandIsOpenedAndTheRestStaysInSight() throws IOException {
        String block = "## change mortar.water\n> " + WATER + "\n\nWater: Clean.\n\n- Warm in winter.\n  - Above 40 degrees.\n"
            + "- Cool in summer.\n\nIce: None.\n";
        open(block);
        await("the page shows it", () -> prose("Section").contains("Cool in summer."));
        stand("Warm in winter.");
        press(SWT.F2);
        await("the item is open", () -> editor().startsWith("Text of 2."));
        assertEquals("Warm in winter.", ui(() -> ((StyledText) Hands.control(editor())).getText()));
        assertTrue(prose("Section").contains("Above 40 degrees."), "the item below it is gone");
        assertTrue(prose("Section").contains("Water: Clean."), "the paragraph above it is gone");
        letters(" Ask first.");
        picture("writing-item");
        press(SWT.CR, SWT.CTRL);
        await("it is taken over", () -> editor().isEmpty() && prose("Section").contains("Warm in winter. Ask first."));
        assertEquals(block.replace("Warm in winter.", "Warm in winter. Ask first."), kept());
        stand("Ice: None.");
        press(SWT.F2);
        await("the second paragraph is open", () -> editor().startsWith("Text of 2."));
        assertEquals("Ice: None.", ui(() -> ((StyledText) Hands.control(editor())).getText()));
        press(SWT.ESC);
        await("it is closed", () -> editor().isEmpty());
        press('z', SWT.CTRL);
        await("the list is as it was", () -> kept().equals(block));
    }

    @Test
    void aParagraphMovesIntoTheNextArticleAndItIsSaidAndComesBackWithoutTrace() throws IOException {
        open("");
        stand(WATER);
        String here = label(STATE).replaceFirst(":.*", "");
        int steps = 0;
        while (!label(STATE).contains("Moved out of Article")) {
            String before = label(STATE);
            press(SWT.ARROW_DOWN, SWT.ALT);
            await("it moved", () -> !label(STATE).equals(before) && !prose("Section").isEmpty(), () -> label(STATE));
            assertTrue(++steps < 20, "it never leaves its article: " + label(STATE));
        }
        assertTrue(label(STATE).contains("Moved out of Article 2.5, MORTAR MATERIALS, into Article 2.6, "), label(STATE));
        for (int i = 0; i < 10; i++) {
            // what is said below the text takes room from it first
            Hands.pause();
        }
        await("it is in sight", () -> isInSight(text().getCaretOffset()), () -> text().getLocationAtOffset(text().getCaretOffset()) + " in "
            + text().getClientArea());
        assertTrue(kept().lines().filter(one -> one.startsWith("## move")).count() == 1, kept());
        assertEquals("A.", line(WATER).strip().substring(0, 2), "it is the article's first");
        picture("writing-other-article");
        for (int i = 0; i < steps; i++) {
            String before = kept();
            press(SWT.ARROW_UP, SWT.ALT);
            await("it moved back", () -> !kept().equals(before));
        }
        await("it stands where it stood", () -> label(STATE).startsWith(here + ":"), () -> label(STATE));
        assertEquals("", kept());
    }

    @Test
    void aRequirementIsLeftOutOnPurposeWithReasonAndName() throws IOException {
        open("");
        stand("at least 3.4 lb/yd²");
        press(SWT.DEL, SWT.CTRL);
        await("it is asked", () -> isShown("Reason for leaving out"));
        assertTrue(label("What is left out").contains("weight"), label("What is left out"));
        assertTrue(label("What the form lacks").contains("A reason and a name are needed"), label("What the form lacks"));
        assertFalse(ui(() -> Hands.control("Leave the requirements out").isEnabled()));
        await("what is left out is in sight", () -> isInSight(text().getCaretOffset()));
        letters("Owner has it in store");
        press(SWT.TAB);
        letters("A. Person");
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        picture("writing-leave-out");
        take("Leave the requirements out");
        await("it is struck", () -> line("at least 3.4 lb/yd²").strip().startsWith("—"), () -> line("at least 3.4 lb/yd²"));
        await("it says why", () -> label(STATE).contains("Left out on purpose: Owner has it in store (A. Person)."), () -> label(STATE));
        assertFalse(isShown("Reason for leaving out"));
        assertTrue(kept().contains("## leave out lath.weight\nOwner has it in store (A. Person)\n"), kept());
        picture("writing-left-out");
        press('z', SWT.CTRL);
        await("the library's text is back", () -> kept().isEmpty() && !line("at least 3.4 lb/yd²").strip().startsWith("—"));
        press('y', SWT.CTRL);
        await("it is struck again", () -> line("at least 3.4 lb/yd²").strip().startsWith("—"));
        press(SWT.DEL);
        await("given back, nothing is left", () -> kept().isEmpty() && !line("at least 3.4 lb/yd²").strip().startsWith("—"));
    }

    @Test
    void whatStatesNothingOfTheChoicesIsNotLeftOut() throws IOException {
        open("");
        stand(WATER);
        press(SWT.DEL, SWT.CTRL);
        await("it is explained", () -> label(STATE).contains("states nothing of the choices"), () -> label(STATE));
        assertFalse(isShown("Reason for leaving out"));
    }

    @Test
    void theSectionHasTheWidthOfAPageAndTheCaretStaysWhereItStood() throws IOException {
        open("");
        stand(WATER);
        int caret = ui(() -> text().getCaretOffset());
        int narrow = ui(() -> text().getClientArea().width);
        press('4', SWT.CTRL, SWT.SHIFT);
        await("the section is wide", () -> isShown("Section") && text().getClientArea().width > 1.6 * narrow && text().isFocusControl(),
            () -> text().getClientArea());
        // 6-1/2 in between the margins of a letter page, at 96 points an inch
        assertTrue(ui(() -> text().getClientArea().width) >= 6.5 * 96, ui(() -> text().getClientArea()).toString());
        assertEquals(caret, ui(() -> text().getCaretOffset()));
        await("the caret is in sight", () -> isInSight(caret));
        picture("writing-page");
        press(SWT.F2);
        await("the paragraph is open", () -> editor().startsWith("Text of 2."));
        letters(" Cold.");
        picture("writing-page-open");
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
        press('d', SWT.CTRL, SWT.SHIFT);
        await("the wall stands beside it", () -> isShown("Build-up, inside to outside") && isShown("Section"));
        press('4', SWT.CTRL, SWT.SHIFT);
        await("the section is wide again", () -> isShown("Section") && !isShown("Build-up, inside to outside"));
        await("what was written is there", () -> prose("Section").contains("drink. Cold.") || !editor().isEmpty()
            && ((StyledText) Hands.control(editor())).getText().endsWith("Cold."));
        press('4', SWT.CTRL);
        press(SWT.ESC);
        press('2', SWT.CTRL);
        await("the build-up is one key away", () -> isShown("Build-up, inside to outside") && !isShown("Section"));
        picture("writing-page-wall");
        press('4', SWT.CTRL);
        await("and the section another", () -> isShown("Section") && text().isFocusControl());
    }

    @Test
    void whoWritesKeepsTheKeyboardOnTheWayToTheWidthOfAPageAndBack() throws IOException {
        open("");
        stand(WATER);
        press('4', SWT.CTRL, SWT.SHIFT);
        await("the section is wide", () -> !isShown("Build-up, inside to outside") && isShown("Section") && text().isFocusControl());
        press('d', SWT.CTRL, SWT.SHIFT);
        await("the wall stands beside it", () -> isShown("Build-up, inside to outside") && isShown("Section"));
        await("the keyboard is still there", () -> text().isFocusControl(), () -> Workbench.display().getFocusControl());
        letters("S");
        await("a letter opens the paragraph", () -> editor().startsWith("Text of 2."));
        press(SWT.ESC);
    }
}

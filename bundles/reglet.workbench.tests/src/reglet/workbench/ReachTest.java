package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.selectedRow;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Words that lead somewhere are reached by the keyboard, and what is said of a paragraph is said of the one that somebody is at. */
@ExtendWith(Workbench.class)
class ReachTest {
    private static final String BUILD_UP = "Build-up, inside to outside";
    private static final String LIGHT = "1.75 lb expanded metal lath";
    private static final String ABOUT = "About the paragraph";
    private static final String FULL = "About the paragraph, in full";
    @TempDir
    Path folder;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        Hands.open(Samples.copy("harbour-clinic", folder));
    }

    @AfterEach
    void bringTheWallBack() {
        press('d', SWT.CTRL, SWT.SHIFT);
        press('4', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall is on top", () -> isShown(BUILD_UP));
    }

    private static void takeLightLath() {
        clickRow(BUILD_UP, "Lath |");
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(LIGHT)));
        clickRow("Options", LIGHT);
        press(SWT.CR);
        await("there are conflicts", () -> prose("Why").contains("≠"), () -> prose("Why"));
    }

    private static String selected(String pane) {
        return ui(() -> ((StyledText) Hands.control(pane)).getSelectionText());
    }

    private static String spoken(String pane) {
        return ui(() -> Inspection.spoken(Hands.control(pane)));
    }

    private static boolean hasKeyboard(String name) {
        return ui(() -> Hands.control(name).isFocusControl());
    }

    @Test
    void tabGoesFromOneWordThatLeadsSomewhereToTheNextAndEnterFollowsIt() {
        takeLightLath();
        clickControl("Why");
        assertEquals("Why", spoken("Why"));
        press(SWT.TAB);
        await("the first finding is reached", () -> selected("Why").startsWith("The lath "), () -> selected("Why"));
        String first = selected("Why");
        assertTrue(spoken("Why").startsWith("Why, link 1 of 2: The lath ") && spoken("Why").endsWith("Enter follows it."), spoken("Why"));
        press(SWT.TAB);
        await("the second is reached", () -> !selected("Why").equals(first) && !selected("Why").isEmpty());
        assertTrue(spoken("Why").startsWith("Why, link 2 of 2: "), spoken("Why"));
        picture("why-link");
        press(SWT.TAB, SWT.SHIFT);
        await("the first is reached again", () -> selected("Why").equals(first));
        press(SWT.CR);
        await("the reason of the finding stands there", () -> prose("Why").contains("The rule") && prose("Why").startsWith(first));
        await("the keyboard is still there", () -> hasKeyboard("Why"));
        press(SWT.TAB);
        await("a value that was read is reached", () -> selected("Why").startsWith("Lath: "), () -> selected("Why"));
        press(SWT.CR);
        await("its component is in focus", () -> prose("Why").startsWith("Lath\n"), () -> prose("Why"));
    }

    @Test
    void behindTheLastWordThatLeadsSomewhereTabLeavesThePane() {
        takeLightLath();
        clickControl("Why");
        press(SWT.TAB, SWT.SHIFT);
        await("it is left backwards", () -> !hasKeyboard("Why"));
        clickControl("Why");
        press(SWT.TAB);
        press(SWT.TAB);
        assertTrue(hasKeyboard("Why"));
        press(SWT.TAB);
        await("it is left", () -> !hasKeyboard("Why"));
        assertEquals("", selected("Why"));
    }

    @Test
    void wordsThatLeadSomewhereAreReachedInWorksheetsComparisonAndHelpToo() {
        press('7', SWT.CTRL);
        await("the worksheets stand there", () -> isShown("Worksheet") && prose("Worksheet").contains("Inputs"));
        clickControl("Worksheet");
        press(SWT.TAB);
        await("where an input comes from is reached", () -> !selected("Worksheet").isEmpty());
        assertTrue(spoken("Worksheet").startsWith("Worksheet, link 1 of "), spoken("Worksheet"));
        picture("worksheet-link");
        press('0', SWT.CTRL, SWT.SHIFT);
        await("the comparison stands there", () -> isShown("Why this result") && prose("Why this result").contains("Paragraph"));
        clickControl("Why this result");
        press(SWT.TAB);
        await("the paragraph is reached", () -> selected("Why this result").startsWith("Section "), () -> selected("Why this result"));
        press(SWT.CR);
        await("the section stands there", () -> isShown("Section"));
    }

    @Test
    void whatIsSaidOfTheParagraphIsSaidOfTheOneThatThePersonLooksAt() {
        clickRow(BUILD_UP, "Veneer units |");
        await("the section of the veneer stands there", () -> prose("Section").contains("PART 2"));
        String veneer = label(ABOUT);
        assertTrue(veneer.startsWith("2."), veneer);
        clickRow(BUILD_UP, "Lath |");
        await("it tells of the lath's paragraph", () -> !label(ABOUT).equals(veneer) && label(ABOUT).startsWith("2."), () -> label(ABOUT));
        String lath = label(ABOUT);
        picture("about-lath");
        clickRow(BUILD_UP, "Veneer units |");
        await("it tells of the veneer's again", () -> label(ABOUT).equals(veneer), () -> label(ABOUT));
        clickRow(BUILD_UP, "Lath |");
        await("it tells of the lath's again", () -> label(ABOUT).equals(lath), () -> label(ABOUT));
        // whoever goes into the section stands where it told of, and it follows the keyboard there
        clickControl("Section");
        assertEquals(lath, label(ABOUT));
        // a paragraph takes several rows
        for (int i = 0; i < 5; i++) {
            press(SWT.ARROW_DOWN);
        }
        await("it follows the keyboard", () -> !label(ABOUT).equals(lath), () -> label(ABOUT));
        assertFalse(selectedRow(BUILD_UP).isEmpty());
    }

    @Test
    void belowAnOwnTextTheLibrarysStandsWithRoomToBeRead() {
        clickRow(BUILD_UP, "Lath |");
        await("the section stands there", () -> isShown("Section") && prose("Section").contains("Clean, and fit"));
        SectionTest.stand("Water: Clean");
        press(SWT.F2);
        await("the paragraph is open", () -> SectionTest.editor().startsWith("Text of 2."));
        press(SWT.HOME, SWT.CTRL);
        SectionTest.letters("Mixing water, ");
        press(SWT.CR, SWT.CTRL);
        await("the text is taken over", () -> SectionTest.editor().isEmpty() && prose("Section").contains("Mixing water, Water"));
        await("the library's text has room", () -> isShown(FULL) && room(FULL) >= 3);
        picture("about-own");
    }

    /** How many rows of a text fit into its pane. */
    private static int room(String pane) {
        return ui(() -> {
            StyledText text = (StyledText) Hands.control(pane);
            return text.getClientArea().height / text.getLineHeight();
        });
    }
}

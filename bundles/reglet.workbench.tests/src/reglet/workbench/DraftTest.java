package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickLine;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.lines;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.selectedRow;
import static reglet.workbench.Hands.type;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A specifier drafts a wall in the window, with the pointer and the keyboard. */
@ExtendWith(Workbench.class)
class DraftTest {
    private static final String LIGHT = "1.75 lb expanded metal lath";
    @TempDir
    Path folder;
    private Path job;
    private Path wall;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        // other tests leave other views in front
        Hands.ui(() -> {
            PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().resetPerspective();
            return null;
        });
        job = Samples.copy("harbour-clinic", folder);
        wall = job.resolve("walls/W1.yaml");
        Hands.open(job);
    }

    private void lookAtLath() {
        clickRow("Build-up, inside to outside", "Lath |");
        await("the options of the lath are worked out", () -> rows("Options").size() > 5 && rows("Options").stream()
            .noneMatch(row -> row.endsWith("…")));
    }

    @Test
    void theTitleNamesTheJobAndTheBuildUpRunsFromInsideToOutside() {
        assertEquals("Reglet – Harbour clinic", Hands.title());
        assertTrue(rows("Build-up, inside to outside").get(0).startsWith("Framing | "), rows("Build-up, inside to outside").get(0));
        assertTrue(lines("Job").stream().anyMatch(line -> line.startsWith("W1 Street front")), lines("Job").toString());
        assertTrue(lines("Job").contains("04-73-00-01"), lines("Job").toString());
    }

    @Test
    void anOptionSaysWhatItWouldBringBeforeItIsAccepted() {
        lookAtLath();
        assertTrue(rows("Options").stream().anyMatch(row -> row.equals("● 3.4 lb self-furring expanded metal lath: fits")),
            rows("Options").toString());
        assertTrue(rows("Options").stream().anyMatch(row -> row.contains(LIGHT + ": ≠ ") && row.contains("lath.light")), rows("Options")
            .toString());
        picture("options");
    }

    @Test
    void aBadChoiceShowsItsConflictAtOnceAndUndoTakesBothBack() throws IOException {
        String before = Files.readString(wall);
        lookAtLath();
        clickRow("Options", LIGHT);
        press(SWT.CR);
        await("the conflict stands among the findings", () -> isShown("Findings") && lines("Findings").stream()
            .anyMatch(line -> line.startsWith("≠ conflict: ")));
        await("the row says so", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | " + LIGHT + " | ≠ ")));
        assertTrue(Files.readString(wall).contains("lath: {accept: [metal-1.75], by: specifier"), Files.readString(wall));
        assertTrue(Files.readString(wall).contains("# heavier than the span needs"), "the comment is gone");
        picture("conflict");
        press('z', SWT.CTRL);
        await("the row fits again", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | 3.4 lb self-furring") && row.endsWith("| fits")));
        assertEquals(before, Files.readString(wall));
        press('y', SWT.CTRL);
        await("the choice is made again", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | " + LIGHT)));
    }

    @Test
    void undoLeavesAFileAloneThatAnotherProgramChanged() throws IOException {
        lookAtLath();
        clickRow("Options", LIGHT);
        press(' ');
        await("the choice is made", () -> rows("Build-up, inside to outside").stream().anyMatch(row -> row.startsWith("Lath | " + LIGHT)));
        String outside = Files.readString(wall) + "# from elsewhere\n";
        Files.writeString(wall, outside);
        press('z', SWT.CTRL);
        await("the window says why", () -> Hands.session().isTrouble() && Hands.session().message().contains("changed outside"));
        assertEquals(outside, Files.readString(wall));
    }

    @Test
    void aValueInTheWrongUnitIsExplainedBelowItsFieldAndChangesNothing() throws IOException {
        String before = Files.readString(wall);
        lookAtLath();
        clickControl("weight");
        type("3.4 lb");
        press(SWT.CR);
        await("the field is explained", () -> isShown("weight, what is wrong"));
        assertTrue(label("weight, what is wrong").contains("lb/yd²"), label("weight, what is wrong"));
        assertEquals(before, Files.readString(wall));
        picture("wrong-unit");
        type("4 lb/yd2");
        press(SWT.CR);
        await("the value is taken over", () -> prose("Section").contains("at least 4 lb/yd²"));
        assertTrue(Files.readString(wall).contains("weight: 4 lb/yd2"), Files.readString(wall));
        assertFalse(isShown("weight, what is wrong"));
    }

    @Test
    void whateverIsSelectedIsFollowedEverywhere() throws IOException {
        Hands.open(Samples.copy("orchard-row", folder));
        clickLine("Findings", "spans");
        await("the lath is in focus", () -> selectedRow("Build-up, inside to outside").startsWith("Lath |"));
        await("the reason stands there", () -> isShown("Why") && prose("Why").contains("What to do"));
        await("the section shows the lath", () -> isShown("Section") && ui(() -> marked((StyledText) Hands.control("Section")))
            .contains("ath"));
        assertTrue(prose("Why").contains("ASTM C1063 2021"), prose("Why"));
        assertTrue(prose("Why").contains("from memory"), prose("Why"));
        assertTrue(prose("Why").contains("Framing: "), prose("Why"));
        picture("why");
    }

    /** The lines with a background of their own. */
    private static String marked(StyledText text) {
        StringBuilder lines = new StringBuilder();
        for (int line = 0; line < text.getLineCount(); line++) {
            if (text.getLineBackground(line) != null) {
                lines.append(text.getLine(line)).append('\n');
            }
        }
        return lines.toString();
    }

    @Test
    void filesChangedOutsideAreReadWhenAsked() throws IOException {
        Files.writeString(wall, Files.readString(wall).replace("lath: {accept: [metal-3.4, woven-17]", "lath: {accept: [rib-3.4]"));
        press(SWT.F5);
        await("the new choice stands there", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | 3.4 lb rib lath")));
    }

    @Test
    void aFileThatCannotBeUsedIsToldWithItsPlaceAndTheWindowKeepsWhatItHad() throws IOException {
        Files.writeString(wall, Files.readString(wall).replace("metal-3.4", "metal-34"));
        press(SWT.F5);
        await("the window says where", () -> Hands.session().isTrouble() && Hands.session().message().contains("W1.yaml:"));
        assertTrue(rows("Build-up, inside to outside").stream().anyMatch(row -> row.startsWith("Lath | 3.4 lb self-furring")));
    }

    @Test
    void withoutAJobTheWindowOffersToOpenOneAndEveryPaneSaysWhatBelongsThere() {
        press('w', SWT.CTRL);
        await("the job is closed", () -> isShown("Open a job folder"));
        assertEquals("Reglet", Hands.title());
        assertTrue(isShown("Open harbour-clinic"), "the job isn't among those opened before");
        assertTrue(label("Open a job folder, what it does").contains("job.yaml"));
        picture("welcome");
    }
}

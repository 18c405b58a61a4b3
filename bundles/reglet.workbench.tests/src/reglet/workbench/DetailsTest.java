package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.description;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.selectedRow;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Change;

/** Drawings and calculations follow what is chosen and what is looked at. */
@ExtendWith(Workbench.class)
class DetailsTest {
    private static final String LIGHT = "1.75 lb expanded metal lath";
    @TempDir
    Path folder;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        Hands.open(Samples.copy("harbour-clinic", folder));
    }

    @AfterEach
    void bringTheSectionBack() {
        press('4', SWT.CTRL);
        await("the paper is back on top", () -> !isShown("Detail") && !isShown("Worksheet"));
    }

    private void lookAtDetails() {
        press('6', SWT.CTRL);
        await("the details are drawn", () -> isShown("Detail") && rows("Drawings").size() > 5 && !notes().isEmpty());
        // whichever drawing was looked at before
        clickRow("Drawings", rows("Drawings").get(0));
        await("the first is drawn", () -> notes().containsKey("lath"));
    }

    private static java.util.Map<String, Rectangle> notes() {
        return ui(() -> ((DrawingCanvas) Hands.control("Detail")).notes());
    }

    private void takeLightLath() {
        clickRow("Build-up, inside to outside", "Lath |");
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(LIGHT)));
        clickRow("Options", LIGHT);
        press(SWT.CR);
    }

    @Test
    void theArrowsStepThroughTheDrawingsOfTheWall() {
        lookAtDetails();
        clickControl("Detail");
        press(SWT.ARROW_RIGHT);
        String second = rows("Drawings").get(1);
        await("the second drawing is chosen", () -> selectedRow("Drawings").equals(second));
        String title = second.replaceFirst("  .*", "");
        assertTrue(description("Detail").startsWith(title), description("Detail"));
        press(SWT.ARROW_LEFT);
        press(SWT.ARROW_LEFT);
        String last = rows("Drawings").get(rows("Drawings").size() - 1);
        await("the last drawing follows around the end", () -> selectedRow("Drawings").equals(last));
    }

    @Test
    void aClickIntoTheDrawingSelectsTheComponentEverywhere() {
        clickRow("Build-up, inside to outside", "Framing |");
        lookAtDetails();
        Rectangle note = notes().get("lath");
        Hands.clickAt("Detail", note.x + note.width / 2, note.y + note.height / 2);
        await("the lath is in focus", () -> selectedRow("Build-up, inside to outside").startsWith("Lath |"));
        assertTrue(description("Detail").contains("selected: Lath"), description("Detail"));
        picture("details");
    }

    @Test
    void aConflictIsMarkedOnTheDrawingInShapeAndWordUntilItIsGone() {
        lookAtDetails();
        assertFalse(description("Detail").contains("≠"), description("Detail"));
        takeLightLath();
        await("the drawing says so", () -> description("Detail").contains("Lath, ≠ ") && description("Detail").contains("conflict"));
        await("the list says so", () -> rows("Drawings").stream().anyMatch(row -> row.contains("≠")));
        picture("details-conflict");
        press('z', SWT.CTRL);
        await("the drawing is clean again", () -> !description("Detail").contains("≠"));
    }

    @Test
    void aRemedyClearsItsFindingInOneStepAndUndoTakesItBack() {
        takeLightLath();
        await("the conflict stands among the findings", () -> isShown("Findings") && Hands.lines("Findings").stream()
            .anyMatch(line -> line.startsWith("≠ conflict: ")));
        press(SWT.F8);
        await("remedies are found", () -> !rows("Remedies").isEmpty());
        picture("remedies");
        String best = rows("Remedies").get(0);
        assertTrue(best.startsWith("Lath: "), rows("Remedies").toString());
        String options = best.replaceFirst(";.*", "").substring("Lath: ".length());
        clickRow("Remedies", best);
        press(SWT.CR);
        await("the remedy is made", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | " + options) && row.endsWith("| fits")));
        press('z', SWT.CTRL);
        await("it is taken back", () -> rows("Build-up, inside to outside").stream()
            .anyMatch(row -> row.startsWith("Lath | " + LIGHT + " | ≠ ")));
    }

    @Test
    void aRemedyOverSeveralFilesIsTakenBackInOneStep() throws IOException {
        Path site = folder.resolve("harbour-clinic/job.yaml");
        Path wall = folder.resolve("harbour-clinic/walls/W1.yaml");
        String siteBefore = Files.readString(site);
        String wallBefore = Files.readString(wall);
        ui(() -> {
            Hands.session().choosing().remedy("both", List.of(new Change("W1.wall.height", "20 ft"), new Change("site.climate", "dry")));
            return null;
        });
        await("the wall is lower", () -> Hands.session().job().job().wall("W1").orElseThrow().facts().get("height").value().text()
            .equals("20 ft"));
        assertTrue(Files.readString(site).contains("climate: dry"), Files.readString(site));
        press('z', SWT.CTRL);
        await("the wall is as high as before", () -> Hands.session().job().job().wall("W1").orElseThrow().facts().get("height").value()
            .text().equals("26 ft"));
        assertEquals(siteBefore, Files.readString(site));
        assertEquals(wallBefore, Files.readString(wall));
    }

    @Test
    void aWorksheetShowsItsStepsAndFollowsTheChoices() {
        press('7', SWT.CTRL);
        await("the worksheets are made", () -> isShown("Worksheets") && !rows("Worksheets").isEmpty());
        String weight = rows("Worksheets").stream().filter(row -> row.toLowerCase(java.util.Locale.ROOT).contains("weight")).findFirst()
            .orElseGet(() -> rows("Worksheets").get(0));
        clickRow("Worksheets", weight);
        await("its steps stand there", () -> prose("Worksheet").contains("Steps\n") && prose("Worksheet").contains("Inputs\n"));
        assertTrue(prose("Worksheet").contains("Results\n"), prose("Worksheet"));
        picture("worksheets");
        String before = prose("Worksheet");
        clickRow("Build-up, inside to outside", "Veneer units |");
        await("options of the veneer", () -> rows("Options").stream().filter(row -> !row.startsWith("●")).count() > 1);
        String other = rows("Options").stream().filter(row -> !row.startsWith("●")).findFirst().orElseThrow().strip()
            .replaceFirst(":.*", "");
        clickRow("Options", other);
        press(SWT.CR);
        await("the worksheet is made anew", () -> !prose("Worksheet").equals(before));
        assertEquals(selectedRow("Worksheets").replaceFirst(" \\|.*", ""), prose("Worksheet").lines().findFirst().orElseThrow());
    }
}

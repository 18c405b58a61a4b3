package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.workbench.sheets.SheetsView;

/** Answers about a data sheet that aren't written are not lost, and a sheet that was copied into the job goes with what brought it. */
@ExtendWith(Workbench.class)
class SheetAnswersTest {
    private static final String VALUES = "Values of the sheet";
    @TempDir
    Path folder;
    private Path job;
    private Path sheet;

    @BeforeEach
    void openACopyOfTheLibrary() throws IOException {
        job = Samples.copy("mesa-library", folder);
        sheet = folder.resolve("airway.pdf");
        Files.copy(Path.of(System.getProperty("reglet.root")).resolve("sample-specs/harbour-clinic/sheets/mat-10.pdf"), sheet);
        Hands.open(job);
        press('0', SWT.CTRL);
        await("the data sheets stand there", () -> isShown("Data sheet"));
    }

    @AfterEach
    void backToTheWall() {
        press('d', SWT.CTRL, SWT.SHIFT);
        await("the wall stands there again", () -> isShown("Build-up, inside to outside"));
    }

    private void open() {
        ui(() -> {
            try {
                ((SheetsView) PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().showView(SheetsView.ID)).open(sheet);
                return null;
            } catch (PartInitException unavailable) {
                throw new AssertionError(unavailable);
            }
        });
        await("the sheet is read", () -> !rows(VALUES).isEmpty());
    }

    private static long count(String start) {
        return rows(VALUES).stream().filter(row -> row.startsWith(start)).count();
    }

    private void answer() {
        open();
        clickRow(VALUES, "○ open | Thickness");
        press(SWT.F2);
        await("the field stands over the cell", () -> isShown("Thickness, value"));
        Hands.type("7/16 in");
        press(SWT.CR);
        await("it is corrected", () -> count("✓ corrected | Thickness | 7/16 | in |") == 1);
        press(SWT.DEL);
        await("the next is left out", () -> count("– left out") == 1);
        press(SWT.CR);
        await("the one behind it is taken", () -> count("✓ taken") == 1);
    }

    @Test
    void whatIsAnsweredAndNotWrittenStandsThereAgainAfterTheJobWasClosed() {
        answer();
        List<String> answered = rows(VALUES);
        ui(() -> {
            Hands.session().close();
            return null;
        });
        await("the job is closed", () -> Hands.session().snapshot().isEmpty());
        Hands.open(job);
        assertFalse(Files.exists(job.resolve("sheets/airway.pdf")), "what isn't written is not in the job");
        press('0', SWT.CTRL);
        await("the data sheets stand there", () -> isShown("Data sheet"));
        open();
        await("the answers stand there again", () -> rows(VALUES).equals(answered), () -> rows(VALUES) + " instead of " + answered);
        picture("sheet-answers-kept");
        press(SWT.F7);
        await("they are in the job", () -> count("✓ in the job") == 2, () -> rows(VALUES));
        ui(() -> {
            Hands.session().close();
            return null;
        });
        await("the job is closed", () -> Hands.session().snapshot().isEmpty());
        Hands.open(job);
        press('0', SWT.CTRL);
        sheet = job.resolve("sheets/airway.pdf");
        open();
        await("what is written is the job's own, and what isn't stands as it was left", () -> count("✓ in the job") == 1
            && count("= job's own stays | Thickness") == 1 && count("– left out") == 1 && count("✓ taken") == 0, () -> rows(VALUES));
    }

    @Test
    void undoTakesTheCopiedSheetBackWithItsValuesAndRedoBringsItAgain() throws IOException {
        answer();
        byte[] bytes = Files.readAllBytes(sheet);
        Path copy = job.resolve("sheets/airway.pdf");
        press(SWT.F7);
        await("they are in the job", () -> count("✓ in the job") == 2, () -> rows(VALUES) + label("How the sheet stands"));
        assertArrayEquals(bytes, Files.readAllBytes(copy));
        Path product = job.resolve("products").resolve(ui(() -> ((Text) Hands.control("Name in products")).getText()) + ".yaml");
        assertTrue(Files.exists(product));
        press('z', SWT.CTRL);
        await("the values are to be written again", () -> count("✓ in the job") == 0 && count("✓ taken") == 1, () -> rows(VALUES));
        assertFalse(Files.exists(copy), "undo left the copy behind");
        assertFalse(Files.exists(product));
        assertTrue(Files.exists(sheet), "the sheet itself is nobody's to remove");
        press('y', SWT.CTRL);
        await("they are in the job again", () -> count("✓ in the job") == 2, () -> rows(VALUES));
        assertArrayEquals(bytes, Files.readAllBytes(copy));
        press('z', SWT.CTRL);
        await("the values are to be written again", () -> count("✓ in the job") == 0);
        press(SWT.F7);
        await("they can be written anew", () -> count("✓ in the job") == 2, () -> rows(VALUES));
        assertArrayEquals(bytes, Files.readAllBytes(copy));
        Files.write(copy, new byte[] {1, 2, 3});
        press('z', SWT.CTRL);
        await("the values are to be written again", () -> count("✓ in the job") == 0);
        assertEquals(3, Files.size(copy), "a file that somebody changed is left alone");
    }

    @Test
    void aSheetThatWasInTheJobBeforeStaysThereWhenItsValuesAreTakenBack() throws IOException {
        Path own = job.resolve("sheets/airway.pdf");
        Files.copy(sheet, own);
        answer();
        press(SWT.F7);
        await("they are in the job", () -> count("✓ in the job") == 2, () -> rows(VALUES));
        press('z', SWT.CTRL);
        await("the values are to be written again", () -> count("✓ in the job") == 0);
        assertTrue(Files.exists(own));
    }
}

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
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.type;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A date is typed into a field as people type it; the file has it as ISO 8601 does. */
@ExtendWith(Workbench.class)
class DatesTypedTest {
    private static final String FIELD = "last day of the veneer's work";
    @TempDir
    Path folder;
    private Path job;

    @BeforeEach
    void openACopyOfTheClinicAndTheFactsOfTheJob() throws IOException {
        job = Samples.copy("harbour-clinic", folder);
        Hands.open(job);
        press('8', SWT.CTRL);
        await("the facts stand there", () -> isShown("Facts") && rows("Facts").stream().anyMatch(row -> row.contains("Terms of the work")));
        clickRow("Facts", "the job | Terms of the work");
        await("the field stands there", () -> isShown(FIELD));
    }

    @AfterEach
    void asBefore() {
        press('2', SWT.CTRL);
        await("the wall is on top", () -> isShown("Build-up, inside to outside"));
    }

    private String file() {
        try {
            return Files.readString(job.resolve("job.yaml"));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String field() {
        return ui(() -> ((Text) Hands.control(FIELD)).getText());
    }

    @Test
    void aDateIsTakenAsItIsTypedAndOneThatMayBeSeveralIsExplainedInPlace() {
        assertEquals("such as 2026-11-29", ui(() -> ((Text) Hands.control(FIELD)).getMessage()));
        clickControl(FIELD);
        type("3/4/2027");
        press(SWT.CR);
        await("it is explained", () -> isShown(FIELD + ", what is wrong"));
        assertTrue(label(FIELD + ", what is wrong").contains("write 2027-03-04 or 2027-04-03, whichever is meant"),
            label(FIELD + ", what is wrong"));
        assertFalse(file().contains("work_ends"));
        picture("date-explained");
        press('a', SWT.CTRL);
        type("Oct 29, 2027");
        press(SWT.CR);
        await("it is written", () -> file().contains("work_ends: 2027-10-29"), this::file);
        await("the field shows it as the file has it", () -> field().equals("2027-10-29"), DatesTypedTest::field);
        await("nothing is wrong any more", () -> !isShown(FIELD + ", what is wrong"));
        picture("date-taken");
    }
}

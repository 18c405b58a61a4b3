package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.type;
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

/** A person gives sections out, changes something, answers a question, and reads what changed. */
@ExtendWith(Workbench.class)
class IssuesTest {
    @TempDir
    Path folder;
    private Path job;

    @BeforeEach
    void open() throws IOException {
        job = Samples.copy("harbour-clinic", folder);
        Files.writeString(job.resolve("questions.yaml"), """
            # asked on site
            format: 1
            questions:
              12:
                from: general contractor
                asked: 2026-03-02
                about: [W1.lath]
                question: May the lath of wall type W1 be heavier?
            """);
        Hands.open(job);
        ui(() -> {
            try {
                return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(IssuesView.ID);
            } catch (PartInitException unavailable) {
                throw new AssertionError(unavailable);
            }
        });
        await("the draft as it stands is listed", () -> isShown("Issues") && rows("Issues").size() == 1 && rows("Issues").get(0).startsWith("present draft"));
    }

    /** The view stands where the wall does, which other tests look at. */
    @AfterEach
    void close() {
        ui(() -> {
            var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
            page.hideView(page.findView(IssuesView.ID));
            page.activate(page.findView(WallView.ID));
            return null;
        });
    }

    private static String words() {
        return ui(() -> ((Text) Hands.control("What changed, or was answered")).getText());
    }

    private static void put(String field, String words) {
        ui(() -> {
            ((Text) Hands.control(field)).setText(words);
            return null;
        });
    }

    @Test
    void whatChangedSinceAnIssueIsTold() {
        assertTrue(words().startsWith("Nothing was given out yet"), words());
        ui(() -> {
            ((org.eclipse.swt.widgets.Button) Hands.control("Though conflicts stand")).setSelection(true);
            return null;
        });
        put("Name of the issue", "Bid set");
        take("Give the sections out");
        await("the issue is listed", () -> rows("Issues").size() == 2, () -> rows("Issues"));
        assertTrue(Files.exists(job.resolve("issues/Bid set/issue.yaml")));
        await("nothing changed since", () -> words().contains("No paragraph changed."), IssuesTest::words);
        ui(() -> {
            Session session = Hands.session();
            session.choosing().set("W1", "lath", "weight", "4 lb/yd2", why -> { });
            return null;
        });
        await("the change is told as it was and as it is", () -> words().contains("+ ") && words().contains("4 lb/yd²")
            && words().contains("W1.lath"), IssuesTest::words);
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
        Hands.picture("issues");
    }

    @Test
    void aNameThatIsTakenIsRefusedInWords() {
        put("Name of the issue", "a/b");
        take("Give the sections out");
        await("why it can't be given out stands below", () -> Hands.isShown("Giving out, what is wrong")
            && !Hands.label("Giving out, what is wrong").isEmpty());
        assertFalse(Files.exists(job.resolve("issues")));
    }

    @Test
    void aQuestionIsAnsweredAndTheAnswerCanBeTakenBack() throws IOException {
        clickRow("Questions", "RFI 12");
        await("the question stands there whole", () -> words().contains("May the lath of wall type W1 be heavier?")
            && words().contains("No answer yet."), IssuesTest::words);
        clickControl("Answer");
        type("Yes, 3.4 lb.");
        press(SWT.CR);
        await("it is answered", () -> rows("Questions").get(0).contains("● answered"), () -> rows("Questions"));
        assertTrue(Files.readString(job.resolve("questions.yaml")).contains("Yes, 3.4 lb."));
        assertTrue(Files.readString(job.resolve("questions.yaml")).startsWith("# asked on site"));
        Hands.picture("question");
        ui(() -> {
            Hands.session().undo();
            return null;
        });
        await("it is open again", () -> rows("Questions").get(0).contains("○ open"), () -> rows("Questions"));
    }
}

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
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.core.commands.operations.UndoContext;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.Drafts;

/** Other programs change the job's files, and this one ends before its time. */
@ExtendWith(Workbench.class)
class OutsideTest {
    @TempDir
    Path folder;
    private Path job;
    private Path wall;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        job = Samples.copy("harbour-clinic", folder);
        wall = job.resolve("walls/W1.yaml");
        Hands.open(job);
    }

    private static String height() {
        return Hands.session().snapshot().orElseThrow().wall("W1").orElseThrow().facts().get("height").value().text();
    }

    private void outside(String from, String to) throws IOException {
        String text = Files.readString(wall);
        assertTrue(text.contains(from));
        Files.writeString(wall, text.replace(from, to));
    }

    private static void chooseLath(String id) {
        ui(() -> {
            Hands.session().choosing().choose("W1", "lath",
                List.of(Hands.session().snapshot().orElseThrow().component("lath").orElseThrow().option(id)
                .orElseThrow()));
            return null;
        });
        await("the lath is chosen", () -> accepted().equals(List.of(id)));
    }

    private static List<String> accepted() {
        return Hands.session().snapshot().orElseThrow().wall("W1").orElseThrow().choice("lath").orElseThrow().accept();
    }

    @Test
    void aFileThatOnlyAnotherProgramChangedIsReadInWithoutAsking() throws IOException {
        outside("height: 26 ft", "height: 28 ft");
        await("the change is noticed by itself", () -> height().equals("28 ft"));
        assertFalse(isShown(AskBar.NAME));
    }

    @Test
    void anEditorThatKeptWhatTheWindowDidIsReadInWithoutAsking() throws IOException {
        chooseLath("metal-2.5");
        outside("height: 26 ft", "height: 28 ft");
        await("both changes stand", () -> height().equals("28 ft") && accepted().equals(List.of("metal-2.5")));
        assertFalse(isShown(AskBar.NAME));
    }

    @Test
    void aTextThatLostTheWindowsChangeIsAskedAboutAndPuttingItBackCanBeUndone() throws IOException {
        String old = Files.readString(wall);
        chooseLath("metal-2.5");
        Files.writeString(wall, old.replace("height: 26 ft", "height: 28 ft"));
        await("the window asks", () -> isShown(AskBar.NAME));
        assertTrue(label(AskBar.NAME).contains("walls/W1.yaml was changed by another program, and in this window too."),
            label(AskBar.NAME));
        assertEquals("26 ft", height());
        picture("asked");
        take("Put this window's back");
        await("the window's text is on disk", () -> !isShown(AskBar.NAME) && text(wall).contains("accept: [metal-2.5]"));
        press('z', SWT.CTRL);
        await("the other program's text is back", () -> text(wall).contains("height: 28 ft"));
    }

    @Test
    void theOtherTextCanBeReadInInstead() throws IOException {
        String old = Files.readString(wall);
        chooseLath("metal-2.5");
        Files.writeString(wall, old.replace("height: 26 ft", "height: 28 ft"));
        await("the window asks", () -> isShown(AskBar.NAME));
        take("Read the other one in");
        await("the other text stands", () -> height().equals("28 ft") && accepted().equals(List.of("metal-3.4", "woven-17")));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void whatWasTypedAndNotTakenOverIsOfferedAfterACrash() {
        Path state = folder.resolve("state");
        Session crashed = another(state);
        ui(() -> {
            crashed.open(job);
            return null;
        });
        await("the first program has the job", () -> crashed.snapshot().isPresent());
        ui(() -> {
            crashed.typing().typed("value W1.scratch_coat.thickness", "5/8 in");
            return null;
        });
        await("the text is kept", () -> !new Drafts(state).of(job).isEmpty());
        // the first program is gone without closing anything; the next one starts on the same state folder
        Session next = another(state);
        ui(() -> {
            next.open(job);
            return null;
        });
        await("the next program offers it", () -> next.asks().first().isPresent());
        Asks.Ask ask = ui(() -> next.asks().first().orElseThrow());
        assertTrue(ask.words().contains("W1.scratch_coat.thickness and not taken over: \"5/8 in\""), ask.words());
        ui(() -> {
            next.asks().answer(ask, ask.answers().get(0));
            return null;
        });
        await("it is taken back", () -> text(wall).contains("thickness: 5/8 in"));
        await("it is not offered again", () -> new Drafts(state).of(job).isEmpty());
        crashed.end();
        next.end();
    }

    @Test
    void aFieldKeepsWhatIsTypedUntilItIsTakenOver() {
        clickRow("Build-up, inside to outside", "Lath |");
        await("the values of the lath stand there", () -> isShown("weight"));
        clickControl("weight");
        ui(() -> {
            ((Text) Hands.control("weight")).setText("4 lb/yd2");
            return null;
        });
        assertTrue(ui(() -> Hands.session().typing().isOpen("value W1.lath.")));
        press(SWT.ESC);
        await("nothing is typed any more", () -> !Hands.session().typing().isOpen("value W1.lath."));
    }

    private static Session another(Path state) {
        DefaultOperationHistory history = new DefaultOperationHistory();
        UndoContext context = new UndoContext();
        return ui(() -> new Session(Workbench.display(), () -> history, () -> context, new Recent(InstanceScope.INSTANCE.getNode(
            "reglet.workbench.tests")), new Drafts(state)));
    }
}

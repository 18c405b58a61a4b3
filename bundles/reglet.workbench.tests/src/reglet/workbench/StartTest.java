package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.type;
import static reglet.workbench.Hands.ui;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Finding;

/** A person comes to the window without a job. */
@ExtendWith(Workbench.class)
class StartTest {
    @TempDir
    Path folder;

    @BeforeEach
    void closeWhatIsOpen() {
        ui(() -> {
            Hands.session().close();
            return null;
        });
        await("no job is open", () -> Hands.session().snapshot().isEmpty() && isShown("New job"));
    }

    @AfterEach
    void closeDialogs() {
        ui(() -> {
            for (Shell shell : Workbench.display().getShells()) {
                if (shell.getData() instanceof WizardDialog dialog) {
                    dialog.close();
                }
            }
            return null;
        });
    }

    private static WizardDialog wizard() {
        for (Shell shell : Workbench.display().getShells()) {
            if (shell.getData() instanceof WizardDialog dialog) {
                return dialog;
            }
        }
        return null;
    }

    private static boolean isPage(String name) {
        return wizard() != null && wizard().getCurrentPage() != null && wizard().getCurrentPage().getName().equals(name);
    }

    private static void button(String words) {
        Workbench.display().asyncExec(() -> pushed(wizard().getShell(), words));
        Hands.pause();
    }

    private static boolean pushed(Control control, String words) {
        if (control instanceof Button button && button.getText().replace("&", "").startsWith(words)) {
            button.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return true;
        }
        if (control instanceof org.eclipse.swt.widgets.Composite composite) {
            for (Control child : composite.getChildren()) {
                if (pushed(child, words)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void choose(String name, String word) {
        ui(() -> {
            ((Combo) Hands.control(name)).setText(word);
            Hands.control(name).notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
    }

    private static void write(String name, String words) {
        ui(() -> {
            ((Text) Hands.control(name)).setText(words);
            return null;
        });
    }

    @Test
    void aNewJobIsAskedForOnlyWhatTheRulesNeedAndOpensWithItsGapsListed() {
        take("New job");
        await("the first page stands there", () -> isPage("job"));
        assertFalse(ui(() -> wizard().getCurrentPage().isPageComplete()));
        clickControl("Name");
        type("Ferry house");
        await("a folder is proposed", () -> ((Text) Hands.control("Folder")).getText().endsWith("ferry-house"));
        write("Folder", folder.toString() + "/made");
        picture("new-job-1");
        button("Next");
        await("the facts are asked", () -> isPage("facts"));
        choose("code", "IBC");
        choose("edition", "2021");
        choose("moisture regime", "moist");
        write("basic wind speed", "115 psi");
        await("the wrong unit is explained", () -> wizard().getCurrentPage().getMessage() != null
            && wizard().getCurrentPage().getMessage().startsWith("≠ \"115 psi\" is no basic wind speed; expected a number, such as 10 mph"));
        assertFalse(ui(() -> wizard().getCurrentPage().isPageComplete()));
        picture("new-job-2-wrong");
        write("basic wind speed", "115");
        await("the answer will do", () -> wizard().getCurrentPage().isPageComplete());
        picture("new-job-2");
        button("Next");
        await("the wall is asked", () -> isPage("wall"));
        write("Where it stands", "Street front");
        choose("Framing", "wood studs at 16 in on centre");
        picture("new-job-3");
        button("Finish");
        await("the job is open", () -> Hands.session().snapshot().map(now -> now.job().job().title().equals("Ferry house")).orElse(false));
        await("its gaps are listed", () -> Hands.session().focus().wall().equals("W1") && isShown("Findings"));
        Snapshot now = Hands.session().snapshot().orElseThrow();
        assertEquals("115 mph", now.job().job().fact("site", "wind_speed").orElseThrow().text());
        assertTrue(now.findings().stream().allMatch(finding -> finding.kind() != Finding.Kind.CONFLICT), now.findings().toString());
        assertTrue(now.findings().stream().anyMatch(finding -> finding.kind() == Finding.Kind.GAP));
        assertTrue(Files.exists(folder.resolve("made/walls/W1.yaml")));
        picture("new-job-open");
    }

    @Test
    void aFolderThatHoldsFilesIsRefusedWhileItIsTyped() throws Exception {
        Files.writeString(folder.resolve("letter.txt"), "keep me");
        take("New job");
        await("the first page stands there", () -> isPage("job"));
        write("Name", "Ferry house");
        write("Folder", folder.toString());
        assertTrue(ui(() -> wizard().getCurrentPage().getMessage()).contains("holds files already"));
        assertFalse(ui(() -> wizard().getCurrentPage().isPageComplete()));
        picture("new-job-refused");
    }

    @Test
    void aSampleIsCopiedBeforeItIsOpened() {
        ui(() -> {
            ((WallView) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().findView(WallView.ID)).start().copyTo(folder);
            return null;
        });
        picture("start");
        take("Sample Harbour clinic");
        await("the copy is open", () -> Hands.session().snapshot().map(now -> now.job().folder().equals(folder.resolve("harbour-clinic")))
            .orElse(false));
        assertTrue(Files.exists(folder.resolve("harbour-clinic/sheets")));
    }
}

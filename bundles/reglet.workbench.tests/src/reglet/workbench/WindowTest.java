package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.commands.Command;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.workbench.settings.Settings;

/** The window's own manners: keys, names, help, settings, work that can be stopped. */
@ExtendWith(Workbench.class)
class WindowTest {
    @TempDir
    Path folder;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        Hands.open(Samples.copy("harbour-clinic", folder));
    }

    @AfterEach
    void asBefore() {
        ui(() -> {
            for (Shell shell : Workbench.display().getShells()) {
                if (shell.getData() instanceof PreferenceDialog dialog) {
                    dialog.close();
                }
            }
            List.of(Settings.THEME, Settings.TEXT, Settings.UNITS).forEach(Settings.store()::setToDefault);
            return null;
        });
    }

    private static void set(String key, String value) {
        ui(() -> {
            Settings.store().setValue(key, value);
            return null;
        });
    }

    @Test
    void everyControlThatTakesTheKeyboardOrDrawsHasAName() {
        press('8', SWT.CTRL);
        await("the facts stand there", () -> isShown("Facts"));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        press('9', SWT.CTRL);
        await("all walls stand there", () -> isShown("All wall types"));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        press('7', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall stands there", () -> isShown("Build-up, inside to outside"));
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals("Build-up, inside to outside", ui(() -> Inspection.spoken(Hands.control("Build-up, inside to outside"))));
    }

    @Test
    void everyCommandOfTheWindowHasAKeyOrAPlaceInAMenuWithALetter() {
        List<String> inMenus = new ArrayList<>();
        List<String> letterless = new ArrayList<>();
        for (IConfigurationElement contribution : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.menus")) {
            if (contribution.getContributor().getName().equals("reglet.workbench")) {
                inMenus(contribution, inMenus, letterless);
            }
        }
        assertEquals(List.of(), letterless);
        List<String> unreachable = ui(() -> {
            // also those that hold only where something is written
            Set<String> bound = Arrays.stream(PlatformUI.getWorkbench().getService(IBindingService.class).getBindings())
                .filter(binding -> binding.getSchemeId().startsWith("reglet.") && binding.getParameterizedCommand() != null)
                .map(binding -> binding.getParameterizedCommand().getId()).collect(Collectors.toSet());
            return Arrays.stream(PlatformUI.getWorkbench().getService(ICommandService.class).getDefinedCommands())
                .map(Command::getId).filter(id -> id.startsWith("reglet.")).filter(id -> !bound.contains(id))
                .filter(id -> !inMenus.contains(id)).toList();
        });
        assertEquals(List.of(), unreachable);
    }

    private static void inMenus(IConfigurationElement element, List<String> ids, List<String> letterless) {
        for (IConfigurationElement child : element.getChildren()) {
            String label = child.getAttribute("label");
            if (child.getName().equals("command")) {
                ids.add(child.getAttribute("commandId"));
            }
            if (label != null && !label.contains("&")) {
                letterless.add(label);
            }
            inMenus(child, ids, letterless);
        }
    }

    @Test
    void theHelpPageOfTheViewInFocusIsOneKeyAway() {
        clickControl("Job");
        ui(() -> {
            Hands.control("Build-up, inside to outside").forceFocus();
            return null;
        });
        press(SWT.F1);
        await("the page of the wall stands there", () -> isShown("Help") && prose("Help").startsWith("Wall\n"));
        picture("help");
        ui(() -> {
            org.eclipse.swt.widgets.List pages = (org.eclipse.swt.widgets.List) Hands.control("Help pages");
            assertEquals(14, pages.getItemCount());
            pages.select(pages.indexOf("Keys"));
            pages.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
        await("the keys are listed", () -> prose("Help").contains("F8: Next finding"));
        assertTrue(prose("Help").contains("Ctrl+N: New job"), prose("Help"));
        assertTrue(prose("Help").contains("Ctrl+Enter: Take over what is written (in a paragraph that is written)"), prose("Help"));
        assertFalse(prose("Help").contains("{keys}"));
        picture("keys");
        ui(() -> {
            var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
            page.hideView(page.findView("reglet.workbench.help"));
            return null;
        });
    }

    @Test
    void theSettingsStandInThePlatformsDialogAndHoldAtOnce() {
        clickControl("Job");
        press(',', SWT.CTRL);
        await("the dialog stands there", () -> Arrays.stream(Workbench.display().getShells())
            .anyMatch(shell -> shell.getData() instanceof PreferenceDialog));
        Hands.pause();
        picture("settings");
    }

    @Test
    void theTextGrowsWithoutBeingCutOff() {
        int before = ui(() -> Hands.control("Job").getFont().getFontData()[0].getHeight());
        set(Settings.TEXT, "150");
        await("the text is larger", () -> Hands.control("Job").getFont().getFontData()[0].getHeight() == Math.round(before * 1.5f));
        press('2', SWT.CTRL);
        await("nothing of the wall is cut off", () -> isShown("Options") && Inspection.cutOff(Hands.shell()).isEmpty(),
            () -> Inspection.cutOff(Hands.shell()));
        picture("text-150");
        press('8', SWT.CTRL);
        await("nothing of the facts is cut off", () -> isShown("Facts") && Inspection.cutOff(Hands.shell()).isEmpty(),
            () -> Inspection.cutOff(Hands.shell()));
        picture("text-150-facts");
        press('9', SWT.CTRL);
        await("nothing of all walls is cut off", () -> isShown("All wall types") && Inspection.cutOff(Hands.shell()).isEmpty(),
            () -> Inspection.cutOff(Hands.shell()));
        picture("text-150-walls");
        press('2', SWT.CTRL);
        set(Settings.TEXT, "100");
        await("the text is as before", () -> Hands.control("Job").getFont().getFontData()[0].getHeight() == before);
    }

    @Test
    void theDarkThemeReachesEveryPane() {
        set(Settings.THEME, "dark");
        await("lists are dark", () -> Workbench.display().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRed() < 100);
        for (int i = 0; i < 15; i++) {
            Hands.pause();
        }
        picture("dark");
        set(Settings.THEME, "light");
        await("lists are light", () -> Workbench.display().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRed() > 200);
    }

    @Test
    void workUnderWayIsToldInTheStatusLineAndCanBeStopped() {
        ui(() -> {
            Hands.session().work().run("Counting slowly", true, monitor -> {
                monitor.beginTask("", 1000);
                for (int i = 0; i < 1000 && !monitor.isCanceled(); i++) {
                    monitor.subTask("number " + i);
                    monitor.worked(1);
                    Hands.pause();
                }
                Hands.session().say(monitor.isCanceled() ? "stopped when asked" : "ran to its end", false);
            });
            return null;
        });
        await("it is told", () -> isShown(RunningItem.CANCEL));
        picture("running");
        take(RunningItem.CANCEL);
        await("it has stopped", () -> Hands.session().message().equals("stopped when asked") && !isShown(RunningItem.CANCEL));
    }
}

package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.workbench.settings.Settings;
import reglet.workbench.sheets.PageCanvas;
import reglet.workbench.sheets.SheetsView;

/** The window on a screen of 200 %: nothing is cut off, and what is drawn is drawn with all dots of the screen. */
@ExtendWith(Workbench.class)
@EnabledIfEnvironmentVariable(named = "GDK_SCALE", matches = "2", disabledReason = "runs by itself, with the toolkit started at 200 %")
class ScaleTest {
    private static final String DRAWN = "Section through the wall";
    /** Lines, letters and round shapes differ within a point along their edges; a picture made for 100 % does nowhere. */
    private static final double FINE = 0.2;
    @TempDir
    Path folder;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        assertEquals(200, ui(() -> Hands.shell().getMonitor().getZoom()));
        Hands.open(Samples.copy("harbour-clinic", folder));
    }

    @AfterEach
    void backToTheWall() {
        ui(() -> {
            for (Shell shell : Workbench.display().getShells()) {
                if (shell.getData() instanceof Window dialog && shell != Hands.shell()) {
                    dialog.close();
                }
            }
            return null;
        });
        press('d', SWT.CTRL, SWT.SHIFT);
        press('4', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall stands there again", () -> isShown("Build-up, inside to outside"));
    }

    /** Leaves a picture of what stands there, and looks at every control of it. */
    private static void look(String state) {
        await("nothing is cut off", () -> cutOff().isEmpty(), ScaleTest::cutOff);
        assertEquals(List.of(), ui(() -> Inspection.lowRows(Hands.shell())));
        Hands.pause();
        picture("scale-200-" + state);
    }

    private static List<String> cutOff() {
        return Arrays.stream(Workbench.display().getShells()).filter(Shell::isVisible).flatMap(shell -> Inspection.cutOff(shell).stream())
            .toList();
    }

    /** The place of a control on the screen, in points, without its edge. */
    private static Rectangle place(String name) {
        return ui(() -> {
            Control control = Hands.control(name);
            Rectangle area = ((Composite) control).getClientArea();
            Rectangle at = Workbench.display().map(control, null, area);
            return new Rectangle(at.x + 2, at.y + 2, at.width - 4, at.height - 4);
        });
    }

    private static void assertFine(String what, Rectangle at) throws IOException {
        double fine = Dots.fine(Hands.screen(), at);
        assertTrue(fine > FINE, what + " is drawn for 100 %: in only " + fine + " of its points the dots differ");
    }

    @Test
    void theWallAndItsFindings() throws IOException {
        clickRow("Build-up, inside to outside", "Lath |");
        await("the section is drawn", () -> isShown(DRAWN) && description(DRAWN).contains("selected: Lath"));
        look("wall");
        assertFine("the drawing beside the build-up", place(DRAWN));
        String light = "1.75 lb expanded metal lath";
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(light)));
        clickRow("Options", light);
        press(SWT.CR);
        await("the conflict stands among the findings", () -> isShown("Findings") && Hands.lines("Findings").stream()
            .anyMatch(line -> line.startsWith("≠ conflict: ")));
        press(SWT.F8);
        await("remedies are found", () -> !rows("Remedies").isEmpty());
        look("findings");
    }

    @Test
    void theSectionWithAnOpenParagraph() {
        ui(() -> {
            Hands.session().look(Hands.session().focus().onSection("04 73 00"));
            return null;
        });
        String words = "at least 3.4 lb/yd²";
        await("the section is drafted", () -> isShown("Section") && prose("Section").contains(words));
        ui(() -> {
            StyledText text = (StyledText) Hands.control("Section");
            text.forceFocus();
            text.setSelection(text.getText().indexOf(words));
            text.showSelection();
            return null;
        });
        press(SWT.F2);
        await("the paragraph is open", () -> ui(() -> ((StyledText) Hands.control("Section")).getChildren().length == 1));
        look("section");
        press(SWT.ESC);
    }

    @Test
    void factsAllWallsAndIssues() {
        press('8', SWT.CTRL);
        await("the facts stand there", () -> isShown("Facts"));
        look("facts");
        press('9', SWT.CTRL);
        await("all walls stand there", () -> isShown("All wall types"));
        look("walls");
        press('i', SWT.CTRL, SWT.SHIFT);
        await("the issues stand there", () -> isShown("Issues"));
        look("issues");
    }

    @Test
    void detailsAndWorksheets() throws IOException {
        press('6', SWT.CTRL);
        await("the details are drawn", () -> isShown("Detail") && !ui(() -> ((DrawingCanvas) Hands.control("Detail")).notes()).isEmpty());
        look("detail");
        assertFine("the detail", place("Detail"));
        press('7', SWT.CTRL);
        await("the worksheets are made", () -> isShown("Worksheets") && !rows("Worksheets").isEmpty());
        for (String row : rows("Worksheets")) {
            if (prose("Worksheet").indexOf('\uFFFC') < 0) {
                clickRow("Worksheets", row.replaceFirst(" \\|.*", ""));
                String title = row.replaceFirst(" \\|.*", "");
                await("the worksheet stands there", () -> prose("Worksheet").startsWith(title));
            }
        }
        assertTrue(prose("Worksheet").indexOf('\uFFFC') > 0, "no worksheet has a chart");
        Rectangle chart = ui(() -> {
            StyledText text = (StyledText) Hands.control("Worksheet");
            int place = text.getText().indexOf('\uFFFC');
            text.setTopIndex(text.getLineAtOffset(place));
            return Workbench.display().map(text, null, text.getTextBounds(place, place));
        });
        for (int i = 0; i < 20; i++) {
            Hands.pause();
        }
        look("worksheet");
        Rectangle seen = chart.intersection(place("Worksheet"));
        assertFine("the chart", seen);
    }

    @Test
    void textHalfAsLargeAgainOnTop() {
        ui(() -> {
            Settings.store().setValue(Settings.TEXT, "150");
            return null;
        });
        try {
            await("the text is larger", () -> Ui.larger(Hands.control("Job")) == 1.5);
            press('6', SWT.CTRL);
            await("the details are drawn", () -> isShown("Detail") && !((DrawingCanvas) Hands.control("Detail")).notes().isEmpty());
            await("all notes stand on the sheet", () -> {
                Rectangle sheet = ((DrawingCanvas) Hands.control("Detail")).getClientArea();
                return ((DrawingCanvas) Hands.control("Detail")).notes().values().stream()
                    .allMatch(note -> note.y > 0 && note.y + note.height <= sheet.height && note.x + note.width <= sheet.width);
            }, () -> ((DrawingCanvas) Hands.control("Detail")).notes());
            assertEquals(ui(() -> Hands.control("Detail").getFont().getFontData()[0].getHeight()),
                ui(() -> Ui.strong(Hands.control("Detail")).getFontData()[0].getHeight()));
            look("text-150");
        } finally {
            ui(() -> {
                Settings.store().setToDefault(Settings.TEXT);
                return null;
            });
        }
        await("the text is as before", () -> Ui.larger(Hands.control("Job")) == 1);
    }

    @Test
    void aDataSheetThatIsConfirmed() throws IOException {
        press('0', SWT.CTRL);
        await("the data sheets stand there", () -> isShown("Data sheet"));
        Path sheet = Path.of(System.getProperty("reglet.root")).resolve("sample-specs/harbour-clinic/sheets/flashing-butyl.pdf");
        ui(() -> {
            try {
                ((SheetsView) PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().showView(SheetsView.ID)).open(sheet);
                return null;
            } catch (PartInitException unavailable) {
                throw new AssertionError(unavailable);
            }
        });
        String page = "Page of the sheet";
        await("the page stands there", () -> !rows("Values of the sheet").isEmpty()
            && ((PageCanvas) Hands.control(page)).focusOnScreen().isPresent());
        press(SWT.F6);
        look("sheet");
        assertFine("the page of the sheet", place(page));
    }

    @Test
    void theComparison() throws IOException {
        Hands.open(Samples.copy("mesa-library", folder));
        press('0', SWT.CTRL, SWT.SHIFT);
        await("the comparison stands there", () -> isShown("Requirements and what is shown") && !rows("Requirements and what is shown")
            .isEmpty());
        clickRow("Requirements and what is shown", "W1 | Lath: weight");
        await("the page with the value stands there", () -> ((PageCanvas) Hands.control("Page with the value")).description()
            .contains("Marked: "));
        look("comparison");
        assertFine("the page with the value", place("Page with the value"));
    }

    @Test
    void helpSettingsAndANewJob() {
        clickControl("Job");
        press(SWT.F1);
        await("the help stands there", () -> isShown("Help"));
        look("help");
        ui(() -> {
            var shown = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
            shown.hideView(shown.findView("reglet.workbench.help"));
            return null;
        });
        press(',', SWT.CTRL);
        await("the settings stand there", () -> Arrays.stream(Workbench.display().getShells())
            .anyMatch(shell -> shell.getData() instanceof PreferenceDialog));
        look("settings");
        press(SWT.ESC);
        await("they are gone", () -> Arrays.stream(Workbench.display().getShells())
            .noneMatch(shell -> shell.getData() instanceof PreferenceDialog));
        press('n', SWT.CTRL);
        await("a new job is asked for", () -> isShown("Folder"));
        look("new-job");
    }

    @Test
    void everyViewHasAnIconForThisScale() {
        for (IViewDescriptor view : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
            if (view.getId().startsWith("reglet.")) {
                var icon = view.getImageDescriptor();
                assertEquals(2 * icon.getImageData(100).width, icon.getImageData(200).width, view.getLabel());
                Rectangle whole = new Rectangle(0, 0, icon.getImageData(100).width, icon.getImageData(100).height);
                assertTrue(Dots.fine(icon.getImageData(200), whole) > FINE, view.getLabel());
            }
        }
    }
}

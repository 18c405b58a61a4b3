package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Option;
import reglet.workbench.settings.Settings;
import reglet.workbench.sheets.PageCanvas;

/** A person compares what the walls require with what products show, in the window. */
@ExtendWith(Workbench.class)
class ComparisonTest {
    private static final String ROWS = "Requirements and what is shown";
    private static final String WHY = "Why this result";
    private static final String PAGE = "Page with the value";
    @TempDir
    Path folder;

    private Path open(String name) throws IOException {
        Path job = Samples.copy(name, folder);
        Hands.open(job);
        press('0', SWT.CTRL, SWT.SHIFT);
        await("the comparison stands there", () -> isShown(ROWS) && ((Table) Hands.control(ROWS)).getItemCount() > 5);
        return job;
    }

    @AfterEach
    void backToTheWall() {
        if (isShown("Which results are shown")) {
            choose("Which results are shown", "All results");
        }
        press('d', SWT.CTRL, SWT.SHIFT);
        await("the wall stands there again", () -> isShown("Build-up, inside to outside"));
    }

    private static void choose(String combo, String words) {
        ui(() -> {
            Combo box = (Combo) Hands.control(combo);
            assertTrue(box.indexOf(words) >= 0, List.of(box.getItems()).toString());
            box.select(box.indexOf(words));
            box.notifyListeners(SWT.Selection, new Event());
            return null;
        });
    }

    private static String row(String start) {
        return rows(ROWS).stream().filter(row -> row.startsWith(start)).findFirst().orElse("");
    }

    private static String description() {
        return ui(() -> ((PageCanvas) Hands.control(PAGE)).description());
    }

    @Test
    void eachRequirementSaysItsResultInWordsAndShapeWithWhatIsMissing() throws IOException {
        open("mesa-library");
        // 2.5 lb/yd² where 3.4 lb/yd² are asked for: 0.9/3.4 = 26 %
        String lath = row("W1 | Lath: weight");
        assertTrue(lath.contains("at least 3.4 lb/yd²") && lath.contains("2.5 lb/yd² (1.36 kg/m²)"), lath);
        assertTrue(lath.contains(" | ▼ falls short by 0.9 lb/yd² (26%) | "), lath);
        assertTrue(row("W1 | Drainage and ventilation mat: drainage efficiency").contains(" | ◊ different method | "),
            rows(ROWS).toString());
        assertTrue(rows(ROWS).stream().anyMatch(row -> row.contains(" | ○ not shown | ")), rows(ROWS).toString());
        assertTrue(rows(ROWS).stream().anyMatch(row -> row.contains(" | ● meets (value not confirmed) | ")), rows(ROWS).toString());
        clickRow(ROWS, "W1 | Lath: weight");
        await("the page with the value stands there", () -> description().contains("Marked: "), ComparisonTest::description);
        await("the reason stands there", () -> prose(WHY).contains("falls short"), () -> prose(WHY));
        assertTrue(prose(WHY).contains("Section 04 73 00, 2."), prose(WHY));
        assertTrue(prose(WHY).contains("confirmed by a person"), prose(WHY));
        assertEquals("lath", Hands.session().focus().component());
        picture("comparison");
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
    }

    @Test
    void onlyWhatIsNotMetIsShownWhenAskedForAndF9WalksIt() throws IOException {
        open("mesa-library");
        int all = rows(ROWS).size();
        choose("Which results are shown", "Falls short");
        assertFalse(rows(ROWS).isEmpty());
        assertTrue(rows(ROWS).stream().allMatch(row -> row.contains("▼ falls short")), rows(ROWS).toString());
        assertTrue(label("How the comparison stands").contains("of " + all), label("How the comparison stands"));
        choose("Which results are shown", "All results");
        ui(() -> {
            ((Table) Hands.control(ROWS)).setSelection(0);
            return null;
        });
        press(SWT.F9);
        await("a requirement that is not met is selected", () -> !selectedRow(ROWS).contains(" | ● meets | ")
            && !selectedRow(ROWS).isEmpty());
        String first = selectedRow(ROWS);
        press(SWT.F9);
        await("the next one is", () -> !selectedRow(ROWS).equals(first));
        press(SWT.F9, SWT.SHIFT);
        await("the one before is again", () -> selectedRow(ROWS).equals(first));
    }

    @Test
    void theThemeChangesAfterLinesOfTheComparisonHaveComeAndGone() throws IOException {
        open("mesa-library");
        for (String results : List.of("Falls short", "All results", "Falls short", "All results")) {
            choose("Which results are shown", results);
            Hands.pause();
            Hands.pause();
        }
        Hands.open(Samples.copy("harbour-clinic", folder));
        await("the other job's comparison stands there", () -> isShown(ROWS) && Hands.title().contains("clinic"));
        theme("dark");
        await("lists are dark", () -> Workbench.display().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRed() < 100);
        theme("light");
        await("all is light", () -> Hands.shell().getBackground().getRed() > 200
            && Hands.control(ROWS).getParent().getBackground().getRed() > 200);
    }

    private static void theme(String name) {
        ui(() -> {
            Settings.store().setValue(Settings.THEME, name);
            return null;
        });
    }

    @Test
    void aChoiceAndAConfirmationChangeTheResultAtOnce() throws IOException {
        Path job = open("mesa-library");
        assertTrue(row("W1 | Lath: weight").contains("▼ falls short"), row("W1 | Lath: weight"));
        Option lighter = ui(() -> Hands.session().snapshot().orElseThrow().component("lath").orElseThrow().option("metal-2.5")
            .orElseThrow());
        ui(() -> {
            Hands.session().choosing().choose("W1", "lath", List.of(lighter));
            return null;
        });
        await("the lighter lath will do", () -> row("W1 | Lath: weight").contains(" | ● meets | "), () -> row("W1 | Lath: weight"));
        Path product = job.resolve("products/stone-ashlar.yaml");
        Files.writeString(product, Files.readString(product).replace("confirmed: no", "confirmed: yes"));
        press(SWT.F5);
        await("nothing is unconfirmed any more", () -> rows(ROWS).stream().noneMatch(row -> row.contains("not confirmed")));
    }

    @Test
    void enterLeadsToTheParagraphInTheSection() throws IOException {
        open("mesa-library");
        clickRow(ROWS, "W1 | Lath: weight");
        press(SWT.CR);
        await("the section stands there", () -> isShown("Section") && prose("Section").contains("at least 3.4 lb/yd²"));
        picture("comparison-section");
        ui(() -> {
            var page = org.eclipse.ui.PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
            page.resetPerspective();
            return null;
        });
    }

    @Test
    void productsForTheSamePlaceStandSideBySide() throws IOException {
        open("harbour-clinic");
        choose("What is compared", ui(() -> List.of(((Combo) Hands.control("What is compared")).getItems()).stream()
            .filter(words -> words.endsWith("2 products side by side")).findFirst().orElseThrow()));
        await("both have a column", () -> ui(() -> ((Table) Hands.control(ROWS)).getColumnCount() == 5 && rows(ROWS).size() > 5));
        String kind = rows(ROWS).stream().filter(row -> row.contains(": kind")).findFirst().orElseThrow();
        assertTrue(kind.contains("● meets") && kind.contains("▼ falls short"), kind);
        clickRow(ROWS, kind.substring(0, kind.indexOf(" | ", kind.indexOf(": kind"))));
        await("the page of one stands there", () -> description().contains("Marked: "), ComparisonTest::description);
        String before = description();
        press(SWT.ARROW_RIGHT);
        await("the page of the other stands there", () -> description().contains("Marked: ") && !description().equals(before),
            ComparisonTest::description);
        picture("comparison-candidates");
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
    }
}

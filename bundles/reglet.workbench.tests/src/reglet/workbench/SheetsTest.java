package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickLine;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.selectedRow;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.workbench.sheets.PageCanvas;
import reglet.workbench.sheets.SheetsView;

/** A person goes through a data sheet in the window: takes, corrects and leaves out values beside the picture of their page. */
@ExtendWith(Workbench.class)
class SheetsTest {
    private static final String VALUES = "Values of the sheet";
    private static final String PAGE = "Page of the sheet";
    private static final String WRONG = "Data sheet, what is wrong";
    @TempDir
    Path folder;
    private Path job;
    private int keys;

    @BeforeEach
    void openACopyOfTheLibrary() throws IOException {
        job = Samples.copy("mesa-library", folder);
        Hands.open(job);
        press('0', SWT.CTRL);
        await("the data sheets stand there", () -> isShown("Data sheet"));
    }

    @AfterEach
    void backToTheWall() {
        press('d', SWT.CTRL, SWT.SHIFT);
        await("the wall stands there again", () -> isShown("Build-up, inside to outside"));
    }

    /** Presses a key and counts it; keys held down meanwhile are one press with it. */
    private void key(int key, int... held) {
        keys++;
        press(key, held);
    }

    private static Path sheet(String name) {
        return Path.of(System.getProperty("reglet.root")).resolve("sample-specs/harbour-clinic/sheets").resolve(name + ".pdf");
    }

    /** As a file that is dropped onto the view. */
    private static void open(Path file) {
        show(file);
        await("the sheet is read", () -> !rows(VALUES).isEmpty() || !label("How the sheet stands").contains("Reading "));
    }

    private static void show(Path file) {
        ui(() -> {
            try {
                ((SheetsView) PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().showView(SheetsView.ID)).open(file);
                return null;
            } catch (PartInitException unavailable) {
                throw new AssertionError(unavailable);
            }
        });
    }

    private static String description() {
        return ui(() -> ((PageCanvas) Hands.control(PAGE)).description());
    }

    private static void awaitPage(String words) {
        await("the page shows " + words, () -> description().contains(words) && marked().isPresent(), SheetsTest::description);
    }

    private static Optional<Rectangle> marked() {
        return ui(() -> ((PageCanvas) Hands.control(PAGE)).focusOnScreen());
    }

    @Test
    void aSheetOfTenValuesIsConfirmedInAtMostTwentyFiveKeyPressesAndUndoneInOne() throws IOException {
        Path ten = folder.resolve("ridge.pdf");
        Files.write(ten, tenValues());
        open(ten);
        int values = (int) rows(VALUES).stream().filter(row -> row.startsWith("○ open")).count();
        assertTrue(values >= 10, rows(VALUES).toString());
        awaitPage("The sheet says");
        picture("sheet");
        key(SWT.F6);
        assertTrue(selectedRow(VALUES).startsWith("○ open"), "the first that isn't sure is in focus: " + selectedRow(VALUES));
        for (int i = 0; i < values && rows(VALUES).stream().anyMatch(row -> row.startsWith("○ open")); i++) {
            key(SWT.CR);
        }
        // and one corrected on top: its number is typed over, the unit stays
        key(SWT.HOME);
        key(SWT.F2);
        "11.6".chars().forEach(this::key);
        key(SWT.CR);
        await("the number is corrected", () -> rows(VALUES).stream().anyMatch(row -> row.contains(" 11.6 | psf")), () -> rows(VALUES));
        assertEquals(List.of(), rows(VALUES).stream().filter(row -> row.startsWith("○ open")).toList());
        key(SWT.F7);
        await("they are in the job", () -> rows(VALUES).stream().filter(row -> row.startsWith("✓ in the job")).count() == values,
            () -> rows(VALUES) + label("How the sheet stands"));
        Path written = job.resolve("products").resolve(ui(() -> ((Text) Hands.control("Name in products")).getText()) + ".yaml");
        String text = Files.readString(written);
        // never a number without its place
        assertEquals(values, text.split("page: ").length - 1, text);
        assertEquals(values, text.split("box: \\[").length - 1, text);
        assertEquals(values, text.split("confirmed: yes").length - 1, text);
        String chosen = ui(() -> ((Combo) Hands.control("Data sheet")).getText());
        assertTrue(chosen.startsWith("ridge.pdf  ·  Stonefold Ridge, 10 values confirmed"), chosen);
        System.out.println("Key presses for " + values + " values of a sheet: " + keys);
        assertTrue(keys <= 25, keys + " key presses");
        picture("sheet-written");
        press('z', SWT.CTRL);
        await("the values are to be written again", () -> rows(VALUES).stream().noneMatch(row -> row.startsWith("✓ in the job")));
        assertFalse(Files.exists(written), "undo left the product data behind");
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
    }

    @Test
    void aValueIsCorrectedInPlaceAndAWrongOneIsExplainedThere() {
        open(sheet("mat-10"));
        clickRow(VALUES, "○ open | Thickness");
        awaitPage("hickness");
        press(SWT.F2);
        await("the field stands over the cell", () -> isShown("Thickness, value"));
        Hands.type("11 lb");
        press(SWT.CR);
        await("it is explained", () -> isShown(WRONG) && label(WRONG).contains("expected a length with its unit"),
            () -> isShown(WRONG) ? label(WRONG) : "nothing");
        picture("sheet-wrong");
        assertTrue(isShown("Thickness, value"), "the field is gone");
        Hands.type("7/16 in");
        press(SWT.CR);
        await("it is corrected", () -> rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ corrected | Thickness | 7/16 | in |")),
            () -> rows(VALUES));
        assertFalse(isShown(WRONG));
        clickRow(VALUES, "✓ corrected | Thickness");
        press(SWT.F2);
        await("the field stands there again", () -> isShown("Thickness, value"));
        // the number alone is typed over; its unit stays
        press('5');
        press('/');
        press('8');
        press(SWT.CR);
        await("the number is another", () -> rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ corrected | Thickness | 5/8 | in |")),
            () -> rows(VALUES));
        clickRow(VALUES, "✓ corrected | Thickness");
        press(SWT.F2);
        await("the field stands there once more", () -> isShown("Thickness, value"));
        press(SWT.ESC);
        await("nothing is changed", () -> !isShown("Thickness, value"));
        assertTrue(rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ corrected | Thickness | 5/8 | in |")));
    }

    @Test
    void deleteLeavesAValueOutAndTheNextOneIsInFocusAndInSight() {
        open(sheet("mat-10"));
        String first = selectedRow(VALUES);
        assertTrue(first.startsWith("○ open"), first);
        awaitPage("The sheet says");
        Rectangle before = marked().orElseThrow();
        press(SWT.DEL);
        await("it is left out", () -> rows(VALUES).stream().anyMatch(row -> row.startsWith("– left out")));
        assertTrue(selectedRow(VALUES).startsWith("○ open"), selectedRow(VALUES));
        await("another place is marked", () -> marked().isPresent() && !marked().get().equals(before));
        Rectangle area = ui(() -> ((org.eclipse.swt.widgets.Composite) Hands.control(PAGE)).getClientArea());
        Rectangle at = marked().orElseThrow();
        assertTrue(area.contains(at.x, at.y) && area.contains(at.x + at.width - 1, at.y + at.height - 1), at + " is not in " + area);
    }

    @Test
    void aSheetOfSeveralModelsAsksWhichOneIsMeantBeforeAnythingIsTaken() {
        open(Path.of(System.getProperty("reglet.root")).resolve("bundles/reglet.reading.tests/src/reglet/reading/sheets/second")
            .resolve("s05-lath-models-rows.pdf"));
        await("it asks for the model", () -> label("How the sheet stands").contains("choose the one that is meant"),
            () -> label("How the sheet stands"));
        assertEquals(List.of(), rows(VALUES));
        picture("sheet-models");
        choose("Model of the sheet", ui(() -> ((Combo) Hands.control("Model of the sheet")).getItem(1)));
        await("its values stand there", () -> !rows(VALUES).isEmpty());
    }

    @Test
    void aPageWithoutTextNeedsAPersonWhoMarksTheValueWhereItStands() throws IOException {
        Path scan = job.resolve("sheets/scan.pdf");
        Files.write(scan, pictureOnly());
        open(scan);
        await("it says so", () -> label("How the sheet stands").contains("No component fits"), () -> label("How the sheet stands"));
        assertTrue(rows(VALUES).stream().anyMatch(row -> row.contains("The whole page") && row.contains("needs a person")), rows(VALUES)
            .toString());
        choose("Component of the sheet", "Lath");
        await("it is a picture", () -> label("How the sheet stands").contains("picture without text"), () -> label("How the sheet stands"));
        picture("sheet-scan");
        await("the page stands there", () -> ui(() -> ((PageCanvas) Hands.control(PAGE)).description()).startsWith("Page 1"));
        // by the keyboard alone: a rectangle, moved and sized, then what stands there
        ui(() -> Hands.control(PAGE).forceFocus());
        press(SWT.INSERT);
        press(SWT.ARROW_RIGHT);
        press(SWT.ARROW_DOWN, SWT.SHIFT);
        press(SWT.CR);
        await("it asks what stands there", () -> isShown("Property at the place marked"));
        choose("Property at the place marked", "Weight");
        Hands.clickControl("Value at the place marked");
        Hands.type("heavy");
        press(SWT.CR);
        await("it explains", () -> isShown(WRONG) && label(WRONG).contains("lb/yd"), () -> isShown(WRONG) ? label(WRONG) : "");
        Hands.type("3.4 lb/yd2");
        press(SWT.CR);
        await("the value stands there", () -> rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ added | Weight | 3.4 | lb/yd²")),
            () -> rows(VALUES));
        picture("sheet-marked");
        press(SWT.F7);
        await("it is in the job", () -> rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ in the job | Weight")),
            () -> rows(VALUES) + (isShown(WRONG) ? label(WRONG) : ""));
        String text = Files.readString(job.resolve("products/scan.yaml"));
        assertTrue(text.contains("page: 1") && text.contains("box: ["), text);
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

    /** A page with a picture on it and no text. */
    private static byte[] pictureOnly() {
        return pdf("<</XObject<</I 5 0 R>>>>", "q 500 0 0 600 56 96 cm /I Do Q", List.of(
            "<</Type/XObject/Subtype/Image/Width 2/Height 2/ColorSpace/DeviceGray/BitsPerComponent 8/Length 4>>stream\nAzAz\nendstream"));
    }

    /** A sheet of ten values: nine in a table, the kind in its title. Invented. */
    private static byte[] tenValues() {
        List<List<String>> lines = List.of(List.of("Maximum saturated weight", "11.4 psf", ""),
            List.of("Average thickness", "2-3/8 in", ""), List.of("Largest face", "168 in\u00b2", ""), List.of("Longest unit", "22 in", ""),
            List.of("Average compressive strength", "2650 psi", "ASTM C1670"), List.of("Freezing and thawing", "Passed", ""),
            List.of("Drying shrinkage", "0.07%", "ASTM C1670"), List.of("Absorption of water", "17%", ""),
            List.of("Corner units", "Yes", ""));
        StringBuilder page = new StringBuilder("BT /F 20 Tf 72 700 Td (Stonefold Ridge) Tj ET\n"
            + "BT /F 11 Tf 72 676 Td (Stonefold Units) Tj ET\nBT /F 11 Tf 72 652 Td (Manufactured stone, adhered masonry veneer.) Tj ET\n");
        int y = 610;
        for (List<String> line : lines) {
            int x = 72;
            for (String cell : line) {
                page.append("BT /F 11 Tf ").append(x).append(' ').append(y).append(" Td (").append(cell).append(") Tj ET\n");
                x += 180;
            }
            y -= 22;
        }
        return pdf("<</Font<</F 5 0 R>>>>", page.toString(), List.of(
            "<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>"));
    }

    /** A page, from the objects of which it is made (ISO 32000-1, 7.5). */
    private static byte[] pdf(String resources, String content, List<String> more) {
        List<String> objects = new ArrayList<>(List.of("<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Kids[3 0 R]/Count 1>>",
            "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R/Resources" + resources + ">>",
            "<</Length " + content.length() + ">>stream\n" + content + "\nendstream"));
        objects.addAll(more);
        StringBuilder file = new StringBuilder("%PDF-1.4\n");
        StringBuilder places = new StringBuilder("xref\n0 " + (objects.size() + 1) + "\n0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            places.append(String.format("%010d 00000 n \n", file.length()));
            file.append(i + 1).append(" 0 obj").append(objects.get(i)).append("\nendobj\n");
        }
        int start = file.length();
        file.append(places).append("trailer<</Size ").append(objects.size() + 1).append("/Root 1 0 R>>\nstartxref\n").append(start)
            .append("\n%%EOF\n");
        return file.toString().getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    }

    @Test
    void enterOnAProductLeadsIntoItsSheetWithWhatIsConfirmed() {
        clickLine("Job", "Ridgeback 250");
        press(SWT.CR);
        await("its values stand there", () -> isShown(VALUES) && rows(VALUES).stream().anyMatch(row -> row.startsWith("✓ in the job")));
        assertTrue(label("How the sheet stands").startsWith("Ridgeback 250"), label("How the sheet stands"));
        assertEquals("lath-light", ui(() -> ((Text) Hands.control("Name in products")).getText()));
        picture("sheet-held");
        String weight = rows(VALUES).stream().filter(row -> row.contains("| Weight | 2.5 | lb/yd² |")).findFirst().orElseThrow();
        assertTrue(weight.startsWith("✓ in the job"), weight);
    }

    @Test
    void aSheetThatIsNoPdfIsRefusedInWords() throws IOException {
        Path nonsense = folder.resolve("nonsense.pdf");
        Files.writeString(nonsense, "no PDF at all");
        open(nonsense);
        await("it says why", () -> label("How the sheet stands").startsWith("≠ "), () -> label("How the sheet stands"));
        assertEquals(List.of(), rows(VALUES));
    }

    @Test
    void readingKeepsTheWindowAliveAndIsToldInTheStatus() {
        try (Watch watch = new Watch()) {
            show(sheet("stone-ledge"));
            await("it is told that a sheet is read, and can be stopped", () -> isShown(RunningItem.CANCEL));
            picture("sheet-reading");
            // the newest question alone is answered
            open(sheet("brick-thin"));
            awaitPage("The sheet says");
            assertTrue(label("How the sheet stands").startsWith("Stonefold Thin Brick"), label("How the sheet stands"));
            press(SWT.F6);
            press(SWT.ARROW_UP);
            press(SWT.ARROW_UP);
            assertEquals(List.of(), watch.misplaced());
            assertEquals(List.of(), watch.tooLong());
        }
    }
}

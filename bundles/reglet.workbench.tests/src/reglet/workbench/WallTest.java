package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.description;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.lines;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.selectedRow;
import static reglet.workbench.Hands.take;
import static reglet.workbench.Hands.type;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A wall beside its drawing, what it meets, all walls beside each other, and findings that are accepted. */
@ExtendWith(Workbench.class)
class WallTest {
    private static final String BUILD_UP = "Build-up, inside to outside";
    private static final String LIGHT = "1.75 lb expanded metal lath";
    private static final String DRAWN = "Section through the wall";
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

    @AfterEach
    void bringTheWallBack() {
        press('4', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall is on top", () -> isShown(BUILD_UP));
    }

    private void takeLightLath() {
        clickRow(BUILD_UP, "Lath |");
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(LIGHT)));
        clickRow("Options", LIGHT);
        press(SWT.CR);
        await("the lath is the light one", () -> rows(BUILD_UP).stream().anyMatch(row -> row.startsWith("Lath | " + LIGHT + " | ≠ ")));
    }

    /** Chooses words in a field that offers them, as a click into its list does. */
    private static void choose(String name, String words) {
        ui(() -> {
            Combo combo = (Combo) Hands.control(name);
            combo.select(Arrays.asList(combo.getItems()).indexOf(words));
            combo.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
    }

    @Test
    void theDrawingBesideTheBuildUpFollowsItAndLeadsIt() {
        await("the section is drawn", () -> isShown(DRAWN) && description(DRAWN).contains("Lath"));
        clickRow(BUILD_UP, "Scratch coat |");
        await("the drawing shows the scratch coat", () -> description(DRAWN).contains("selected: Scratch coat"));
        picture("wall-drawing");
        clickControl(DRAWN);
        press(SWT.ARROW_DOWN);
        await("the next component is in focus everywhere", () -> !selectedRow(BUILD_UP).startsWith("Scratch coat")
            && description(DRAWN).contains("selected: " + selectedRow(BUILD_UP).replaceFirst(" \\|.*", "")));
        takeLightLath();
        await("the drawing says what stands against it", () -> description(DRAWN).contains("Lath, ≠ "));
    }

    @Test
    void whoFixedAChoiceAndWhyAreTypedBesideItsValuesAndTakenBack() throws IOException {
        String before = Files.readString(wall);
        clickRow(BUILD_UP, "Lath |");
        await("its remarks stand there", () -> isShown("Because"));
        clickControl("Because");
        type("RFI 12, by phone");
        press(SWT.CR);
        await("the reason is written", () -> text(wall).contains("because: \"RFI 12, by phone\"}"));
        clickControl("Fixed by");
        type("owner");
        press(SWT.CR);
        await("the name is written", () -> text(wall).contains("by: owner, because: \"RFI 12, by phone\"}"));
        await("the reason page tells both", () -> Hands.prose("Why").contains("Fixed by owner: RFI 12, by phone."));
        picture("wall-because");
        press('z', SWT.CTRL);
        press('z', SWT.CTRL);
        await("both are taken back", () -> text(wall).equals(before));
    }

    private static String text(Path file) {
        try {
            return Files.exists(file) ? Files.readString(file) : "";
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void aFindingIsAcceptedWithAReasonAndANameListedAsAcceptedAndTakenBack() {
        Path accepted = job.resolve("accepted.yaml");
        takeLightLath();
        await("the findings stand there", () -> isShown("Findings"));
        press(SWT.F8);
        await("it can be accepted", () -> ui(() -> Hands.control("Accept with a reason").isEnabled()));
        take("Accept with a reason");
        await("the form is open", () -> isShown("Reason for accepting"));
        assertFalse(ui(() -> Hands.control("Accept the finding").isEnabled()), "accepted without a reason");
        assertTrue(label("What the form lacks").contains("a name"), label("What the form lacks"));
        clickControl("Reason for accepting");
        type("shown on the mock-up");
        clickControl("Name of who accepts");
        type("A. Reviewer");
        picture("accept-form");
        press(SWT.CR);
        await("it is listed as accepted", () -> lines("Findings").contains("● Accepted with a reason: 1"));
        assertTrue(text(accepted).contains("  because: shown on the mock-up\n  by: A. Reviewer\n"), text(accepted));
        await("the reason stands beside it", () -> isShown("Why it is accepted")
            && label("Why it is accepted").equals("Accepted by A. Reviewer:\nshown on the mock-up"));
        picture("accepted");
        press('z', SWT.CTRL);
        await("undo takes it back, and the file with it", () -> !Files.exists(accepted) && lines("Findings").stream()
            .noneMatch(line -> line.startsWith("● Accepted")));
        press('y', SWT.CTRL);
        await("and redo brings it again", () -> isShown("Take the acceptance back"));
        take("Take the acceptance back");
        await("it stands again", () -> !Files.exists(accepted) && lines("Findings").stream()
            .noneMatch(line -> line.startsWith("● Accepted")));
    }

    private void lookAtAllWalls() {
        press('9', SWT.CTRL);
        await("all walls stand beside each other", () -> isShown("All wall types") && rows("All wall types").size() > 20);
    }

    @Test
    void wallTypesStandBesideEachOtherWithTheirDifferencesMarked() {
        lookAtAllWalls();
        clickRow("All wall types", "Lath |");
        assertTrue(selectedRow("All wall types").contains("| ◇ 2.5 lb"), selectedRow("All wall types"));
        assertTrue(selectedRow("All wall types").endsWith("| ◇ 2 ways"), selectedRow("All wall types"));
        assertTrue(rows("All wall types").stream().anyMatch(row -> row.endsWith("| same everywhere")), rows("All wall types").toString());
        picture("all-walls");
        press(SWT.ARROW_RIGHT);
        await("W2 is in focus and W1 the one that differs", () -> Hands.session().focus().wall().equals("W2")
            && selectedRow("All wall types").startsWith("Lath | ◇ 3.4 lb"));
        press(SWT.ARROW_LEFT);
        await("W1 is in focus again", () -> Hands.session().focus().wall().equals("W1"));
    }

    @Test
    void selectedRowsAreMadeTheSameOnAnotherWallInOneStepThatUndoTakesBack() {
        Path other = job.resolve("walls/W2.yaml");
        String before = text(other);
        lookAtAllWalls();
        ui(() -> {
            Table table = (Table) Hands.control("All wall types");
            for (int i = 0; i < table.getItemCount(); i++) {
                if (table.getItem(i).getText().equals("Lath") || table.getItem(i).getText().equals("Drainage and ventilation mat")) {
                    table.select(i);
                }
            }
            table.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
        take("Make the same");
        await("the lath is the same everywhere", () -> rows("All wall types").stream()
            .anyMatch(row -> row.startsWith("Lath |") && row.endsWith("| same everywhere")));
        assertTrue(text(other).contains("lath: {accept: [metal-3.4, woven-17], by: specifier, because: stiffer under the trowel}"),
            text(other));
        press('z', SWT.CTRL);
        await("undo takes all of it back", () -> text(other).equals(before));
    }

    @Test
    void aWallTypeIsDuplicatedAndTakenAwayAndUndoBringsItBack() {
        lookAtAllWalls();
        clickControl("Title of the new wall type");
        type("Stair tower");
        take("Duplicate the wall type");
        await("there are three", () -> ui(() -> ((Table) Hands.control("All wall types")).getColumnCount()) == 5);
        assertTrue(text(job.resolve("walls/W3.yaml")).contains("title: Stair tower"), text(job.resolve("walls/W3.yaml")));
        assertTrue(lines("Job").stream().anyMatch(line -> line.startsWith("W3 Stair tower")), lines("Job").toString());
        picture("all-walls-three");
        ui(() -> {
            Hands.session().look(Hands.session().focus().onWall("W3"));
            return null;
        });
        take("Take the wall type away");
        await("it is gone", () -> !Files.exists(job.resolve("walls/W3.yaml")));
        press('z', SWT.CTRL);
        await("undo brings it back", () -> text(job.resolve("walls/W3.yaml")).contains("title: Stair tower"));
    }

    @Test
    void thirtyWallTypesStandBesideEachOtherWithWhatEachHas() throws IOException {
        lookAtAllWalls();
        String all = "W1, W2";
        for (int i = 3; i <= 30; i++) {
            Files.copy(job.resolve("walls/W2.yaml"), job.resolve("walls/W" + i + ".yaml"));
            all += ", W" + i;
        }
        Files.writeString(job.resolve("job.yaml"), text(job.resolve("job.yaml")).replace("walls: [W1, W2]", "walls: [" + all + "]"));
        Hands.open(job);
        lookAtAllWalls();
        await("all stand there", () -> ui(() -> ((Table) Hands.control("All wall types")).getColumnCount()) == 32
            && rows("All wall types").stream().anyMatch(row -> row.startsWith("Lath |"))
            && rows("All wall types").stream().noneMatch(row -> row.endsWith(" | ")));
        List<String> heads = ui(() -> Arrays.stream(((Table) Hands.control("All wall types")).getColumns()).map(TableColumn::getText)
            .toList());
        for (int i = 1; i <= 30; i++) {
            assertTrue(heads.get(i).replace("● ", "").startsWith("W" + i + " "), heads.toString());
        }
        String[] lath = rows("All wall types").stream().filter(row -> row.startsWith("Lath |")).findFirst().orElseThrow().split(" \\| ");
        assertFalse(lath[2].isBlank(), String.join("|", lath));
        assertEquals(lath[2], lath[30], "the last is as the one that it was copied from");
    }

    private void lookAtFacts() {
        press('8', SWT.CTRL);
        await("the facts stand there", () -> isShown("Facts") && rows("Facts").stream().anyMatch(row -> row.startsWith("base-1 |")));
    }

    @Test
    void whatTheWallMeetsIsAddedDescribedAndTakenAway() throws IOException {
        String before = Files.readString(wall);
        lookAtFacts();
        choose("Kind of what it meets", "Base of wall");
        take("Add what it meets");
        await("it stands in the list and lacks facts", () -> selectedRow("Facts").startsWith("base-3 | Base of wall | ○ "));
        assertTrue(text(wall).contains("  base-3: {as: base}\n"), text(wall));
        choose("surface below", "paving");
        await("the surface is written", () -> text(wall).contains("base-3: {as: base, over: paving}"));
        clickControl("clearance to the surface below");
        type("3 lb");
        press(SWT.CR);
        await("a wrong unit is explained", () -> isShown("clearance to the surface below, what is wrong"));
        picture("facts");
        type("1/2 in");
        press(SWT.CR);
        await("the clearance is written", () -> text(wall).contains("base-3: {as: base, over: paving, clearance: 1/2 in}"));
        await("it is too little over paving", () -> selectedRow("Facts").contains("≠ "));
        take("Take what it meets away");
        await("it is gone", () -> text(wall).equals(before));
        press('z', SWT.CTRL);
        await("it is back", () -> text(wall).contains("  base-3: {"));
        await("and stands in the list", () -> rows("Facts").stream().anyMatch(row -> row.startsWith("base-3 |")));
        clickRow("Facts", "base-3 |");
        press(SWT.DEL);
        await("Delete takes it away too", () -> text(wall).equals(before));
    }

    @Test
    void aFactOfTheSiteIsTypedAndUndoPutsItBack() throws IOException {
        String before = text(job.resolve("job.yaml"));
        lookAtFacts();
        ui(() -> {
            Table table = (Table) Hands.control("Facts");
            for (int i = 0; i < table.getItemCount(); i++) {
                if (table.getItem(i).getText(1).equals("Site")) {
                    table.setSelection(i);
                    org.eclipse.swt.widgets.Event event = new org.eclipse.swt.widgets.Event();
                    event.item = table.getItem(i);
                    table.notifyListeners(SWT.Selection, event);
                }
            }
            return null;
        });
        choose("moisture regime", "dry");
        await("the site is dry", () -> text(job.resolve("job.yaml")).contains("climate: dry")
            && rows("Facts").stream().anyMatch(row -> row.contains("moisture regime dry")));
        clickControl("Facts");
        press('z', SWT.CTRL);
        await("it is as before", () -> text(job.resolve("job.yaml")).equals(before));
    }

    private void lookAtWorksheet(String start) {
        press('7', SWT.CTRL);
        await("the worksheets are made", () -> isShown("Worksheets") && rows("Worksheets").stream().anyMatch(row -> row.startsWith(start)));
        clickRow("Worksheets", start);
        await("it stands there", () -> Hands.prose("Worksheet").startsWith(start));
    }

    @Test
    void aWorksheetShowsItsPicturesAndLeadsFromAnInputToItsChoice() {
        String pictured = ui(() -> Hands.session().job().calculated().stream().filter(sheet -> sheet.worksheet().wall().equals("W1")
            && !sheet.charts().isEmpty()).findFirst().orElseThrow().worksheet().title());
        lookAtWorksheet(pictured);
        await("its chart has a place", () -> Hands.prose("Worksheet").contains("\uFFFC"));
        await("and is drawn in ink", () -> ink("Worksheet") > 1500);
        picture("worksheet-chart");
        String drawn = ui(() -> Hands.session().job().calculated().stream().filter(sheet -> sheet.worksheet().wall().equals("W1")
            && !sheet.drawings().isEmpty()).findFirst().orElseThrow().worksheet().title());
        lookAtWorksheet(drawn);
        await("the section is drawn in ink", () -> ink("Worksheet") > 200);
        picture("worksheet-section");
    }

    /** Dots of the picture in a text that are black, as only lines of drawings and charts are here; the text is painted anew for it. */
    private static int ink(String name) {
        return ui(() -> {
            StyledText text = (StyledText) Hands.control(name);
            int line = text.getLineAtOffset(text.getText().indexOf('\uFFFC'));
            text.setTopIndex(line);
            int top = Math.max(0, text.getLinePixel(line));
            int bottom = Math.min(text.getLinePixel(line + 1), text.getClientArea().height);
            Image image = new Image(text.getDisplay(), text.getSize().x, text.getSize().y);
            GC gc = new GC(image);
            text.print(gc);
            gc.dispose();
            ImageData data = image.getImageData();
            image.dispose();
            // printing leaves the control unpainted on its own place
            text.setVisible(false);
            text.setVisible(true);
            int dark = 0;
            for (int y = top; y < bottom; y++) {
                for (int x = 0; x < text.getClientArea().width; x++) {
                    RGB dot = data.palette.getRGB(data.getPixel(x, y));
                    dark += dot.red + dot.green + dot.blue < 150 ? 1 : 0;
                }
            }
            return dark;
        });
    }

    @Test
    void theQuantitiesAreATableSortedByTheColumnThatIsClicked() {
        String takeoff = ui(() -> Hands.session().job().worksheets().made().stream().filter(sheet -> sheet.name().equals("takeoff")
            && sheet.wall().equals("W1")).findFirst().orElseThrow().title());
        lookAtWorksheet(takeoff);
        await("the table stands there", () -> isShown("Quantities") && rows("Quantities").size() > 3);
        ui(() -> {
            ((Table) Hands.control("Quantities")).getColumn(0).notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
        assertEquals(rows("Quantities").stream().sorted().toList(), rows("Quantities"));
        picture("quantities");
    }

    @Test
    void theWindowStaysAliveWhileAChoiceIsWorkedOut() {
        clickRow(BUILD_UP, "Lath |");
        await("the options are worked out", () -> rows("Options").stream().noneMatch(row -> row.endsWith("…")));
        chooseLath(LIGHT, "≠ ");
        press('z', SWT.CTRL);
        await("it fits again", () -> rows(BUILD_UP).stream().anyMatch(row -> row.startsWith("Lath |") && row.endsWith("| fits")));
        try (Watch watch = new Watch()) {
            chooseLath(LIGHT, "≠ ");
            await("the drawing tells", () -> description(DRAWN).contains("Lath, ≠ "));
            chooseLath("2.5 lb self-furring expanded metal lath", "fits");
            assertEquals(List.of(), watch.misplaced());
            assertEquals(List.of(), watch.tooLong());
        }
        assertEquals("W1", Hands.session().focus().wall());
    }

    private static void chooseLath(String title, String state) {
        ui(() -> {
            Hands.session().choosing().choose("W1", "lath",
                Hands.session().snapshot().orElseThrow().component("lath").orElseThrow().options().stream()
                .filter(option -> option.title().equals(title)).toList());
            return null;
        });
        await("the row tells", () -> rows(BUILD_UP).stream().anyMatch(row -> row.startsWith("Lath | " + title + " | " + state)));
    }
}

package reglet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reglet.workbench.Hands.await;
import static reglet.workbench.Hands.clickControl;
import static reglet.workbench.Hands.clickLine;
import static reglet.workbench.Hands.clickRow;
import static reglet.workbench.Hands.isShown;
import static reglet.workbench.Hands.label;
import static reglet.workbench.Hands.lines;
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
import static reglet.workbench.Hands.rows;
import static reglet.workbench.Hands.type;
import static reglet.workbench.Hands.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.workbench.settings.Settings;
import reglet.workbench.sheets.SheetsView;

/**
 * The units shown first, changed while a job is open. Numbers by the definitions of the inch, foot and pound: 3.4 lb/yd² is
 * 3.4 × 0.45359237 / 0.9144² = 1.8445 kg/m², of which a requirement of at least that much shows 1.85.
 */
@ExtendWith(Workbench.class)
class UnitsShownTest {
    private static final String BUILD_UP = "Build-up, inside to outside";
    private static final String LIGHT = "1.75 lb expanded metal lath";
    @TempDir
    Path folder;
    private Path job;

    @BeforeEach
    void openACopyOfTheClinic() throws IOException {
        job = Samples.copy("harbour-clinic", folder);
        Hands.open(job);
    }

    @AfterEach
    void asBefore() {
        ui(() -> {
            Settings.store().setToDefault(Settings.UNITS);
            return null;
        });
        press('d', SWT.CTRL, SWT.SHIFT);
        press('4', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall is on top", () -> isShown(BUILD_UP));
    }

    private static void units(String word) {
        ui(() -> {
            Settings.store().setValue(Settings.UNITS, word);
            return null;
        });
    }

    private static String field(String name) {
        return ui(() -> ((Text) Hands.control(name)).getText());
    }

    private Map<String, String> files() {
        try (Stream<Path> all = Files.walk(job)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                texts.put(job.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
            return texts;
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void fieldsShowTheUnitsSetWithTheOtherBesideAndTakeWhatIsTypedAsItIsTyped() {
        clickRow(BUILD_UP, "Lath |");
        await("the weight stands there", () -> isShown("weight") && field("weight").equals("3.4 lb/yd²"));
        assertEquals("= 1.85 kg/m²", label("weight, in the other unit"));
        picture("units-job-fields");
        Map<String, String> before = files();
        units("metric");
        await("the weight is metric", () -> field("weight").equals("1.85 kg/m²"), () -> field("weight"));
        assertEquals("= 3.4 lb/yd²", label("weight, in the other unit"));
        picture("units-metric-fields");
        // in and out of the field, and Enter in it: nothing was typed
        clickControl("weight");
        press(SWT.CR);
        clickControl("Because");
        Hands.pause();
        assertEquals(before, files());
        clickControl("weight");
        type("4 lb/yd2");
        press(SWT.CR);
        await("the weight is another", () -> field("weight").equals("2.17 kg/m²"), () -> field("weight"));
        assertTrue(files().get("walls/W1.yaml").contains("weight: 4 lb/yd2"), files().get("walls/W1.yaml"));
        clickControl("weight");
        type("2 kg/m2");
        press(SWT.CR);
        await("the weight is as typed", () -> files().get("walls/W1.yaml").contains("weight: 2 kg/m2"), () -> files().get("walls/W1.yaml"));
        // 2 / 0.45359237 × 0.9144² = 3.687 lb/yd², rounded up: at least
        await("beside it stands the unit of the trade", () -> label("weight, in the other unit").equals("= 3.69 lb/yd²"),
            () -> label("weight, in the other unit"));
        units("inch-pound");
        await("the weight is in pounds", () -> field("weight").equals("3.69 lb/yd²"), () -> field("weight"));
        assertTrue(files().get("walls/W1.yaml").contains("weight: 2 kg/m2"), "the setting changed what is stored");
        press('4', SWT.CTRL);
        await("the paper says it in both, in the trade's unit", () -> prose("Section").contains("at least 2 kg/m² (3.69 lb/yd²)"));
        picture("units-inches-fields");
    }

    @Test
    void allWallsFactsFindingsAndRemediesFollowWhatIsSetLive() {
        clickRow(BUILD_UP, "Lath |");
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(LIGHT)));
        clickRow("Options", LIGHT);
        press(SWT.CR);
        await("there is a conflict", () -> lines("Findings").stream().anyMatch(line -> line.contains("weighs 1.75 lb/yd²")),
            () -> lines("Findings"));
        clickControl("weight");
        type("1.7 lb/yd2");
        press(SWT.CR);
        await("the weight is set", () -> lines("Findings").stream().anyMatch(line -> line.contains("weighs 1.7 lb/yd²")),
            () -> lines("Findings"));
        press('8', SWT.CTRL);
        await("the facts stand there", () -> isShown("Facts"));
        clickRow("Facts", "base-2 |");
        await("the clearance stands there", () -> isShown("clearance to the surface below"), () -> rows("Facts"));
        clickControl("clearance to the surface below");
        type("60 mm");
        press(SWT.CR);
        await("the base stands too low", () -> lines("Findings").stream().anyMatch(line -> line.contains("60 mm")),
            () -> lines("Findings"));
        clickLine("Findings", "60 mm");
        await("there is a remedy in inches", () -> !rows("Remedies").isEmpty() && rows("Remedies").get(0).matches(".*\\d in\\b.*"),
            () -> rows("Remedies"));
        Map<String, String> before = files();
        units("metric");
        await("the findings are metric", () -> lines("Findings").stream().anyMatch(line -> line.contains("weighs 0.922 kg/m²"))
            && lines("Findings").stream().noneMatch(line -> line.contains("lb/yd²")), () -> lines("Findings"));
        await("the remedies are", () -> !rows("Remedies").isEmpty() && rows("Remedies").get(0).matches(".*\\d mm\\b.*"),
            () -> rows("Remedies"));
        await("the reason is", () -> prose("Why").contains("mm"), () -> prose("Why"));
        await("the facts are", () -> rows("Facts").stream().anyMatch(row -> row.startsWith("window-1") && row.contains("width 1220 mm")),
            () -> rows("Facts"));
        picture("units-metric-facts");
        press('9', SWT.CTRL);
        await("all walls are", () -> isShown("All wall types") && rows("All wall types").stream().anyMatch(row -> row.contains(
            "weight 0.922 kg/m²")), () -> rows("All wall types"));
        picture("units-metric-walls");
        units("inch-pound");
        await("all walls are in inches", () -> rows("All wall types").stream().anyMatch(row -> row.contains("weight 1.7 lb/yd²")),
            () -> rows("All wall types"));
        await("the findings are in inches", () -> lines("Findings").stream().anyMatch(line -> line.contains("2.36 in")),
            () -> lines("Findings"));
        picture("units-inches-walls");
        units("both");
        await("all walls show both", () -> rows("All wall types").stream().anyMatch(row -> row.contains("weight 1.7 lb/yd² (0.922 kg/m²)")),
            () -> rows("All wall types"));
        await("the findings show both", () -> lines("Findings").stream().anyMatch(line -> line.contains("60 mm (2.36 in)")),
            () -> lines("Findings"));
        picture("units-both-walls");
        assertEquals(before, files());
    }

    @Test
    void detailsAndWorksheetsFollowWhatIsSetLive() {
        press('6', SWT.CTRL);
        await("the details are drawn", () -> isShown("Detail") && rows("Drawings").size() > 5);
        String window = rows("Drawings").stream().filter(row -> row.startsWith("Window jamb")).findFirst()
            .orElseThrow(() -> new AssertionError(rows("Drawings")));
        clickRow("Drawings", window);
        await("its dimensions are in inches", () -> dimensions().contains(" in") && !dimensions().contains("mm"),
            UnitsShownTest::dimensions);
        picture("units-inches-details");
        units("metric");
        await("its dimensions are metric", () -> dimensions().contains("mm") && !dimensions().matches("(?s).*\\d in\\b.*"),
            UnitsShownTest::dimensions);
        await("so is the section through the wall", () -> Hands.description("Section through the wall").contains(" mm")
            && !Hands.description("Section through the wall").matches("(?s).*measured:[^.]* in\\b.*"),
            () -> Hands.description("Section through the wall"));
        picture("units-metric-details");
        press('7', SWT.CTRL);
        await("the worksheets stand there", () -> isShown("Worksheets"));
        String takeoff = rows("Worksheets").stream().filter(row -> row.contains("Quantities")).findFirst()
            .orElseThrow(() -> new AssertionError(rows("Worksheets")));
        clickRow("Worksheets", takeoff.replaceFirst(" \\|.*", ""));
        await("the quantities are metric", () -> isShown("Quantities") && rows("Quantities").stream().anyMatch(row -> row.endsWith("| m²"))
            && rows("Quantities").stream().noneMatch(row -> row.contains("ft")), () -> rows("Quantities"));
        picture("units-metric-quantities");
        units("both");
        await("the quantities show both", () -> rows("Quantities").stream().anyMatch(row -> row.matches(".*\\| ft² \\(.* m²\\)")),
            () -> rows("Quantities"));
        picture("units-both-quantities");
    }

    private static String dimensions() {
        return Hands.description("Detail").replaceFirst(".*measured: ", "").replaceFirst("\\. Too thin.*", "");
    }

    /** Rows with inches or pounds that stand in no parentheses. */
    private static List<String> inchesFirst() {
        return rows("Requirements and what is shown").stream().filter(row -> row.replaceAll("\\([^)]*\\)", "").matches(
            ".*\\d (in|lb/yd²|psi|ft)\\b.*")).toList();
    }

    @Test
    void dataSheetsAndTheComparisonFollowWhatIsSetLive() {
        Map<String, String> before = files();
        press('0', SWT.CTRL, SWT.SHIFT);
        await("the comparison stands there", () -> isShown("Requirements and what is shown")
            && rows("Requirements and what is shown").stream().anyMatch(row -> row.contains("Lath: weight | at least 3.4 lb/yd²")));
        units("metric");
        await("the comparison is metric", () -> rows("Requirements and what is shown").stream()
            .anyMatch(row -> row.contains("Lath: weight | at least 1.85 kg/m² | 1.85 kg/m²")),
            () -> rows("Requirements and what is shown").stream().filter(row -> row.contains("Lath: weight")).toList());
        // what a product shows has the other unit beside it, so that it can be held against the paper
        assertTrue(inchesFirst().isEmpty(), inchesFirst().toString());
        assertTrue(rows("Requirements and what is shown").stream().anyMatch(row -> row.contains("1.85 kg/m² (3.41 lb/yd²)")),
            rows("Requirements and what is shown").toString());
        picture("units-metric-comparison");
        units("inch-pound");
        press('0', SWT.CTRL);
        await("the data sheets stand there", () -> isShown("Data sheet"));
        ui(() -> {
            try {
                ((SheetsView) PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().showView(SheetsView.ID))
                    .open(job.resolve("sheets/lath-metal.pdf"));
                return null;
            } catch (PartInitException unavailable) {
                throw new AssertionError(unavailable);
            }
        });
        await("the sheet is read", () -> !rows("Values of the sheet").isEmpty());
        String weight = rows("Values of the sheet").stream().filter(row -> row.contains("| Weight |")).findFirst().orElseThrow();
        assertTrue(weight.contains("3.41 | lb/yd² |"), weight);
        picture("units-inches-sheet");
        clickRow("Values of the sheet", weight.replaceFirst(" \\|.*", "") + " | Weight");
        press(SWT.F2);
        await("the field stands over the cell", () -> isShown("Weight, value"));
        press(SWT.CR);
        await("it is as it was", () -> !isShown("Weight, value"));
        units("job");
        await("the value is the sheet's own", () -> rows("Values of the sheet").stream().anyMatch(row -> row.contains("Weight")
            && row.contains("1.85 | kg/m² |")), () -> rows("Values of the sheet"));
        assertFalse(rows("Values of the sheet").stream().anyMatch(row -> row.startsWith("✓ corrected")), rows("Values of the sheet")
            .toString());
        assertEquals(before, files());
    }
}

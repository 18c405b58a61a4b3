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
import static reglet.workbench.Hands.picture;
import static reglet.workbench.Hands.press;
import static reglet.workbench.Hands.prose;
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
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.Bid;

/** What bidders price apart: offered from the wall, changed there, beside the base bid, accepted, declined, removed. */
@ExtendWith(Workbench.class)
class AlternatesTest {
    private static final String BUILD_UP = "Build-up, inside to outside";
    private static final String DRAWN = "Section through the wall";
    private static final String BESIDE = "Base bid and alternate";
    @TempDir
    Path folder;
    private Path wall;
    private Path list;

    @BeforeEach
    void openACopyOfTheLibrary() throws IOException {
        Path job = Samples.copy("mesa-library", folder);
        wall = job.resolve("walls/W1.yaml");
        list = job.resolve("job.yaml");
        Hands.open(job);
    }

    @AfterEach
    void bringTheWallBack() {
        ui(() -> {
            Hands.session().showAs(Bid.AGREED);
            return null;
        });
        press('4', SWT.CTRL);
        press('2', SWT.CTRL);
        await("the wall is on top", () -> isShown(BUILD_UP));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String mat() {
        return ui(() -> Hands.session().snapshot().orElseThrow().component("mat").orElseThrow().option("filament-3-4").orElseThrow()
            .title());
    }

    private static void selectTheThickMat() {
        clickRow(BUILD_UP, ui(() -> Hands.session().snapshot().orElseThrow().component("mat").orElseThrow().title()) + " |");
        String option = mat();
        await("the options of the mat stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(option)));
        clickRow("Options", option);
    }

    private void offerTheThickMat() {
        selectTheThickMat();
        press('a', SWT.CTRL, SWT.SHIFT);
        await("the form is open", () -> isShown("Title of the alternate"));
        clickControl("Title of the alternate");
        type("thick mat");
        clickControl("Reason for the alternate");
        type("drains more");
        press(SWT.CR);
        await("the alternate is written", () -> text(list).contains("{number: 2, kind: alternate, title: thick mat"));
        await("the alternate is selected", () -> selectedRow("Alternates").startsWith("No. 2, thick mat | offered"));
    }

    /** Chooses words in a field that offers them, as a click into its list does. */
    private static void choose(String name, String start) {
        ui(() -> {
            Combo combo = (Combo) Hands.control(name);
            int at = Arrays.asList(combo.getItems()).stream().map(item -> item.startsWith(start)).toList().indexOf(true);
            assertTrue(at >= 0, start + " is none of " + List.of(combo.getItems()));
            combo.select(at);
            combo.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
            return null;
        });
    }

    private static void showAs(String start) {
        choose("Shown as", start);
        await("the wall is shown so", () -> ui(() -> ((Combo) Hands.control("Shown as")).getText().startsWith(start)
            && Hands.session().bid().words(Hands.session().snapshot().orElseThrow().job().job()).startsWith(start)));
    }

    @Test
    void anOptionIsOfferedFromTheWallWithNumberTitleAndReasonAndUndoneInOneStep() {
        String before = text(wall);
        String jobBefore = text(list);
        selectTheThickMat();
        press('a', SWT.CTRL, SWT.SHIFT);
        await("the form is open", () -> isShown("Title of the alternate"));
        assertEquals("2", ui(() -> ((Text) Hands.control("Number of the alternate")).getText()), "the next free number is proposed");
        assertTrue(ui(() -> ((Text) Hands.control("What the alternate changes")).getText()).contains(mat()), "what changes is proposed");
        assertFalse(ui(() -> Hands.control("Offer the alternate").isEnabled()), "offered without a title");
        assertTrue(label("What the alternate lacks").startsWith("≠ A title is needed"), label("What the alternate lacks"));
        clickControl("Number of the alternate");
        type("1");
        assertTrue(label("What the alternate lacks").contains("Alternate No. 1, stainless lath, is there already"),
            label("What the alternate lacks"));
        type("two");
        assertTrue(label("What the alternate lacks").contains("\"two\" is no number"), label("What the alternate lacks"));
        picture("alternate-form");
        type("2");
        clickControl("Title of the alternate");
        type("thick mat");
        clickControl("Reason for the alternate");
        type("drains more");
        press(SWT.CR);
        await("both files are written", () -> text(list).contains("{number: 2, kind: alternate, title: thick mat, description: ")
            && text(wall).contains("alternates: {2: {accept: [filament-3-4], because: drains more}}"));
        await("it is beside the base bid", () -> rows(BESIDE).stream().anyMatch(row -> row.startsWith("Paragraph ")));
        picture("alternate-offered");
        press('z', SWT.CTRL);
        await("one step takes it back", () -> text(wall).equals(before) && text(list).equals(jobBefore));
    }

    @Test
    void theChooserShowsWallDrawingWorksheetsAndSectionWithTheAlternateAndWhatIsChangedThereIsTheAlternates() {
        offerTheThickMat();
        press('2', SWT.CTRL);
        await("the wall is there", () -> isShown(BUILD_UP));
        await("the base bid keeps its mat", () -> rows(BUILD_UP).stream()
            .anyMatch(row -> row.contains("Alternate No. 2, offered: " + mat())));
        showAs("With Alternate No. 2");
        await("the wall has the thick mat", () -> rows(BUILD_UP).stream().anyMatch(row -> row.contains(" | " + mat())
            && row.contains("Alternate No. 2, in place of ")));
        await("the drawing follows", () -> description(DRAWN).contains("≠"));
        press('4', SWT.CTRL);
        await("the section follows", () -> prose("Section").contains("3/4 in")
            && label("Shown as, here").startsWith("With Alternate No. 2, thick mat"));
        clickControl("Section");
        press(SWT.F2);
        await("nobody writes in it", () -> label("About the paragraph").contains("to be looked at"));
        picture("alternate-shown");
        press('2', SWT.CTRL);
        clickRow(BUILD_UP, "Lath |");
        String before = text(wall);
        String woven = ui(() -> Hands.session().snapshot().orElseThrow().component("lath").orElseThrow().option("woven-17").orElseThrow()
            .title());
        await("the options of the lath stand there", () -> rows("Options").stream().anyMatch(row -> row.contains(woven)));
        clickRow("Options", woven);
        press(SWT.CR);
        await("the alternate has a lath of its own", () -> text(wall).contains("2: {accept: [woven-17]}"));
        await("the wall shows it", () -> rows(BUILD_UP).stream().anyMatch(row -> row.startsWith("Lath | " + woven)));
        await("its values follow", () -> isShown("Because"));
        clickControl("Because");
        type("lighter to hang");
        press(SWT.CR);
        await("the reason is the alternate's", () -> text(wall).contains("2: {accept: [woven-17], because: lighter to hang}")
            || text(wall).contains("2: {because: lighter to hang, accept: [woven-17]}"));
        picture("alternate-changed");
        clickRow("Options", woven);
        press(SWT.DEL);
        await("the base bid's lath holds again", () -> text(wall).equals(before));
        press('b', SWT.CTRL, SWT.SHIFT);
        await("the next bid is the base bid", () -> Hands.session().bid().equals(Bid.AGREED));
    }

    @Test
    void anAlternateStandsBesideTheBaseBidAndItsTitleIsTyped() {
        offerTheThickMat();
        await("all kinds of rows are there", () -> rows(BESIDE).stream().anyMatch(row -> row.startsWith("≠ lath_fastener.past-steel, W1"))
            && rows(BESIDE).stream().anyMatch(row -> row.startsWith("Paragraph ")));
        clickRow(BESIDE, "≠ lath_fastener.past-steel, W1");
        assertTrue(prose("As the base bid has it").contains("not at all"), prose("As the base bid has it"));
        assertTrue(prose("As the alternate has it").length() > 60, prose("As the alternate has it"));
        clickRow(BESIDE, "Paragraph ");
        assertTrue(prose("As the alternate has it").contains("3/4 in"), prose("As the alternate has it"));
        assertFalse(prose("As the base bid has it").contains("3/4 in"), prose("As the base bid has it"));
        picture("alternate-beside");
        clickRow("Alternates", "No. 2");
        press(SWT.F2);
        type("mat of 3/4 in");
        press(SWT.CR);
        await("the title is written", () -> text(list).contains("title: mat of 3/4 in"));
        clickControl("Title");
        press('a', SWT.CTRL);
        press(SWT.DEL);
        press(SWT.CR);
        await("an empty title is refused in place", () -> isShown("Title, what is wrong")
            && label("Title, what is wrong").contains("needs a title"));
        picture("alternate-title-refused");
        press(SWT.ESC);
        assertEquals(List.of(), ui(() -> Inspection.nameless(Hands.shell())));
        assertEquals(List.of(), ui(() -> Inspection.cutOff(Hands.shell())));
    }

    @Test
    void threeThatDoNotFitTogetherSaySoInTheListAndAnAlternatesParagraphIsWrittenInPlace() throws IOException {
        Files.writeString(list, text(list).replace("alternates:\n", "alternates:\n  - {number: 2, kind: alternate, title: thicker mat}\n"
            + "  - {number: 3, kind: alternate, title: thicker sheathing}\n  - {number: 4, kind: alternate, title: shorter screws}\n"));
        Files.writeString(wall, text(wall).replace("{accept: [glass-mat-5-8], by: architect}",
            "{accept: [glass-mat-1-2], by: architect, alternates: {3: {accept: [glass-mat-5-8]}}}")
            .replace("mat: {accept: [filament-1-4], by: specifier}",
                "mat: {accept: [filament-1-4], alternates: {2: {accept: [filament-3-8]}}}")
            .replace("1: {accept: [screw-steel-stainless], by: specifier}",
                "1: {accept: [screw-steel-stainless]}, 4: {accept: [screw-steel-1-1-4]}"));
        press(SWT.F5);
        await("all four are there", () -> Hands.session().snapshot().orElseThrow().job().job().alternate(4).isPresent());
        press('9', SWT.CTRL, SWT.SHIFT);
        await("the three are named", () -> rows("Alternates").stream().anyMatch(row -> row.startsWith("No. 2, thicker mat")
            && row.endsWith("with No. 3 and No. 4: ≠ 1 conflict")));
        picture("alternate-three-together");
        clickRow("Alternates", "No. 1");
        press(SWT.CR);
        await("the wall is shown with it", () -> Hands.session().bid().equals(Bid.with(1)));
        press('b', SWT.CTRL, SWT.SHIFT);
        await("the next one", () -> Hands.session().bid().equals(Bid.with(2)));
        ui(() -> {
            Hands.session().showAs(Bid.AGREED);
            Hands.session().look(Hands.session().focus().onComponent("mat"));
            return null;
        });
        press('4', SWT.CTRL);
        await("the alternate's paragraph stands there", () -> prose("Section").contains("Alternate No. 2: Drainage and ventilation mat"));
        ui(() -> {
            org.eclipse.swt.custom.StyledText page = (org.eclipse.swt.custom.StyledText) Hands.control("Section");
            page.forceFocus();
            page.setCaretOffset(page.getText().indexOf("Alternate No. 2: Drainage and ventilation mat") + 20);
            return null;
        });
        press(SWT.F2);
        await("it is written in", () -> ui(() -> Workbench.display().getFocusControl() instanceof org.eclipse.swt.custom.StyledText field
            && field.getEditable()));
        picture("alternate-paragraph");
        press(SWT.END, SWT.CTRL);
        "Keep it dry.".chars().forEach(letter -> press(letter));
        press(SWT.CR, SWT.CTRL);
        Path own = wall.getParent().getParent().resolve("sections/04-73-00.md");
        await("the block names the alternate's paragraph", () -> Files.exists(own)
            && text(own).contains("## change mat.material~alternate-2") && text(own).contains("Keep it dry."));
        await("it prints with the alternate's name", () -> prose("Section").replace("\u00a0", " ").contains("Alternate No. 2: Drainage")
            && prose("Section").contains("Keep it dry."));
        picture("alternate-paragraph-own");
    }

    @Test
    void theOwnersWordIsOneCommandEachAndARemovedAlternateIsGoneFromAllFiles() {
        String before = text(wall);
        String jobBefore = text(list);
        offerTheThickMat();
        clickRow("Alternates", "No. 2");
        press(SWT.CR, SWT.CTRL);
        await("it is accepted", () -> text(list).contains("taken: yes") && selectedRow("Alternates").contains("| accepted |"));
        picture("alternate-accepted");
        press(SWT.BS, SWT.CTRL);
        await("it is offered again", () -> !text(list).contains("taken:") && selectedRow("Alternates").contains("| offered |"));
        press(SWT.DEL, SWT.CTRL);
        await("it is declined", () -> text(list).contains("taken: no"));
        press('z', SWT.CTRL);
        await("undo takes the owner's word back", () -> !text(list).contains("taken:"));
        clickRow("Alternates", "No. 2");
        press(SWT.DEL);
        await("it is gone", () -> text(wall).equals(before) && text(list).equals(jobBefore));
        await("the list has the other one", () -> rows("Alternates").size() == 1);
    }

    @Test
    void twoThatChooseDifferentlyCannotBothBeAcceptedAndBothPlacesAreNamed() throws IOException {
        Files.writeString(list, text(list).replace("alternates:\n",
            "alternates:\n  - {number: 3, kind: alternate, title: woven lath, taken: yes}\n"));
        Files.writeString(wall, text(wall).replace("alternates: {1: {accept: [metal-3.4-stainless], by: specifier}}",
            "alternates: {1: {accept: [metal-3.4-stainless], by: specifier}, 3: {accept: [woven-17]}}"));
        press(SWT.F5);
        await("the third is there", () -> Hands.session().snapshot().orElseThrow().job().job().alternate(3).isPresent());
        press('9', SWT.CTRL, SWT.SHIFT);
        await("the alternates are there", () -> isShown("Alternates"));
        clickRow("Alternates", "No. 1");
        take("Accept the alternate");
        await("it is refused in place", () -> isShown("Alternates, what is wrong")
            && label("Alternates, what is wrong").contains("Alternate No. 3"));
        assertFalse(text(list).contains("{number: 1, kind: alternate, taken"), "nothing is written");
        picture("alternate-refused");
    }
}

package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.Confirming.Answer;
import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.ProductData;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;

/** A person going through a sheet's values. */
class ConfirmingTest {
    @TempDir
    Path folder;

    private Path sheet;

    @BeforeEach
    void sheetOfAnotherJob() throws Exception {
        sheet = Samples.open("harbour-clinic").folder().resolve("sheets/mat-10.pdf");
    }

    private OpenJob job() throws Exception {
        return Samples.desk().open(Samples.copy("mesa-library", folder.resolve("mesa-library")));
    }

    private static ProductData product(OpenJob job) {
        return job.job().products().stream().filter(one -> one.id().equals("mat-new")).findFirst().orElseThrow();
    }

    private static Answer answer(Confirming confirming, String property) {
        return confirming.proposals().stream().filter(one -> one.property().equals(property)).findFirst().orElseThrow().answer();
    }

    @Test
    void valuesAreTakenCorrectedAndLeftOutOneByOne() throws Exception {
        OpenJob job = job();
        SheetReading reading = DataSheets.read(sheet, job.pack(), "");
        Confirming start = Confirming.of(job, sheet, reading, "", "mat-new");
        assertTrue(start.going().isEmpty());
        assertThrows(UnusableInput.class, () -> start.write(job));
        Confirming done = start.take("mat.drainage_efficiency").correct(job.pack(), "mat.thickness", "11 mm").leaveOut("mat.compressive");
        OpenJob after = done.write(job);
        assertEquals(List.of("mat.drainage_efficiency", "mat.thickness"),
            product(after).values().stream().map(SheetValue::property).sorted()
            .toList());
        SheetValue thickness = product(after).value("thickness").orElseThrow();
        assertEquals("11 mm", thickness.value().text());
        assertTrue(thickness.confirmed() && thickness.box().isPresent());
        assertThrows(UnusableInput.class, () -> start.correct(job.pack(), "mat.thickness", "eleven"));
    }

    @Test
    void whatAPersonConfirmedStaysUntilItIsTakenAnew() throws Exception {
        OpenJob job = job();
        SheetReading reading = DataSheets.read(sheet, job.pack(), "");
        OpenJob first = Confirming.of(job, sheet, reading, "", "mat-new").correct(job.pack(), "mat.thickness", "11 mm").write(job);
        Confirming again = Confirming.of(first, sheet, reading, "", "mat-new");
        assertEquals(Answer.HELD, answer(again, "mat.thickness"));
        OpenJob second = again.takeOpen().write(first);
        assertEquals("11 mm", product(second).value("thickness").orElseThrow().value().text());
        assertTrue(product(second).values().size() > 2);
        String text = Files.readString(second.folder().resolve("products/mat-new.yaml"));
        OpenJob third = Confirming.of(second, sheet, reading, "", "mat-new").takeOpen().write(second);
        assertEquals(text, Files.readString(third.folder().resolve("products/mat-new.yaml")));
        OpenJob anew = Confirming.of(third, sheet, reading, "", "mat-new").take("mat.thickness").write(third);
        assertTrue(!product(anew).value("thickness").orElseThrow().value().text().equals("11 mm"));
    }

    @Test
    void onlySureValuesWithoutDoubtAreTakenTogether() throws Exception {
        OpenJob job = job();
        Confirming sure = Confirming.of(job, sheet, DataSheets.read(sheet, job.pack(), ""), "", "mat-new").takeSure();
        assertTrue(!sure.going().isEmpty());
        assertTrue(sure.going().stream().allMatch(one -> one.found().confidence() >= Confirming.SURE && one.found().doubt().isEmpty()));
    }

    @Test
    void anotherValueThatTheSheetStatesIsTakenInPlaceOfTheOneShown() throws Exception {
        OpenJob job = job();
        SheetReading read = DataSheets.read(sheet, job.pack(), "");
        Found shown = read.values().stream().filter(one -> one.value().property().equals("mat.thickness")).findFirst().orElseThrow();
        Found other = new Found(new SheetValue("mat.thickness", job.pack().property("mat.thickness").orElseThrow().type().read("6 mm")
            .orElseThrow(), Optional.empty(), "", "", "6 mm", 1, shown.value().box(), false), "Thickness at the edge", shown.model(), 0.9,
                "");
        SheetReading reading = new SheetReading(read.product(), read.maker(), read.components(), read.values().stream().map(one ->
            one != shown
            ? one : new Found(one.value(), one.label(), one.model(), 0.6, "The sheet also states 6 mm on page 1.",
                List.of(other))).toList(),
            read.unread(), read.report());
        assertTrue(DataSheets.report(sheet, reading).contains("also shown on page 1: 6 mm; \"Thickness at the edge: 6 mm\""));
        Confirming start = Confirming.of(job, sheet, reading, "", "mat-new");
        assertEquals(Answer.OPEN, answer(start.takeSure(), "mat.thickness"));
        assertTrue(start.table().contains("also"));
        Confirming done = start.takeInstead("mat.thickness", other);
        OpenJob after = done.write(job);
        assertEquals("6 mm", product(after).value("thickness").orElseThrow().value().text());
        Found beside = done.going().get(0).found().also().get(0);
        assertEquals(shown.value(), beside.value());
        assertEquals(shown.value().value(), product(done.takeInstead("mat.thickness", beside).write(after)).value("thickness").orElseThrow()
            .value());
        assertEquals(start, start.takeInstead("mat.thickness", beside));
    }

    @Test
    void conditionsOfUseAreKeptWithTheProductAndReadBackTheSame() throws Exception {
        OpenJob job = job();
        SheetReading read = DataSheets.read(sheet, job.pack(), "");
        SheetValue limit = new SheetValue("framing.spacing", job.pack().property("framing.spacing").orElseThrow().type().read("16 in")
            .orElseThrow(), Optional.of(Compare.AT_MOST), "", "", "Studs: at most 16 in.", 2, Optional.of(new Box(72, 100, 200, 12)),
            false);
        Report report = new Report("R-1: a", "Marrow", "", List.of("IBC 2021"), "2024-03", "05/2025", List.of(new Condition("5.2",
            "Studs: at most 16 in.", 2, new Box(72, 100, 200, 12), List.of(limit)), new Condition("", "Kept dry.", 2, new Box(72, 120, 90,
                12),
                List.of())));
        SheetReading reading = new SheetReading(read.product(), read.maker(), read.components(), read.values(), read.unread(), Optional.of(
            report));
        OpenJob after = Confirming.of(job, sheet, reading, "", "mat-new").takeOpen().write(job);
        assertEquals(Optional.of(report), product(after).report());
        String text = Files.readString(after.folder().resolve("products/mat-new.yaml"));
        Confirming.of(after, sheet, reading, "", "mat-new").write(after);
        assertEquals(text, Files.readString(after.folder().resolve("products/mat-new.yaml")));
    }

    @Test
    void whatWasNotReadIsAddedWithItsPlaceAndAWrongTextIsExplained() throws Exception {
        OpenJob job = job();
        Confirming start = Confirming.of(job, sheet, DataSheets.read(sheet, job.pack(), ""), "", "mat-new").leaveOut("mat.thickness");
        Box box = new Box(10, 20, 30, 12);
        UnusableInput refused = assertThrows(UnusableInput.class, () -> start.add(job.pack(), "mat.thickness", "11 lb", 2, box));
        assertTrue(refused.getMessage().contains("expected a length with its unit"), refused.getMessage());
        Confirming added = start.add(job.pack(), "mat.thickness", "11 mm", 2, box);
        assertEquals(start.proposals().size(), added.proposals().size());
        SheetValue thickness = product(added.write(job)).value("thickness").orElseThrow();
        assertEquals("11 mm", thickness.value().text());
        assertEquals(2, thickness.page());
        assertEquals(Optional.of(box), thickness.box());
        assertTrue(thickness.confirmed());
    }

    @Test
    void theStandardThatAValueIsShownByIsCorrectedToo() throws Exception {
        OpenJob job = job();
        Confirming done = Confirming.of(job, sheet, DataSheets.read(sheet, job.pack(), ""), "", "mat-new")
            .shownBy("mat.drainage_efficiency", " ASTM E2273 ").correct(job.pack(), "mat.drainage_efficiency", "95%");
        SheetValue value = product(done.write(job)).value("drainage_efficiency").orElseThrow();
        assertEquals("ASTM E2273", value.method());
        assertEquals("95%", value.value().text());
    }

    @Test
    void answersStayWhenTheJobIsAnotherMeanwhile() throws Exception {
        OpenJob job = job();
        Confirming taken = Confirming.of(job, sheet, DataSheets.read(sheet, job.pack(), ""), "", "mat-new").take("mat.thickness");
        OpenJob written = taken.write(job);
        Confirming after = taken.beside(written);
        assertTrue(after.proposals().stream().filter(one -> one.property().equals("mat.thickness")).allMatch(Confirming.Proposal::isHeld));
        assertEquals(Answer.OPEN, answer(after, "mat.drainage_efficiency"));
        Confirming undone = after.beside(job);
        assertEquals(Answer.TAKEN, answer(undone, "mat.thickness"));
        assertTrue(undone.proposals().stream().noneMatch(Confirming.Proposal::isHeld));
    }

    @Test
    void itsPagesAreCounted() throws Exception {
        assertEquals(2, Confirming.pages(sheet));
        Path nonsense = folder.resolve("nonsense.pdf");
        Files.writeString(nonsense, "no PDF");
        assertThrows(UnusableInput.class, () -> Confirming.pages(nonsense));
    }

    @Test
    void aPageComesAsAPicture() throws Exception {
        byte[] png = Confirming.picture(sheet, 1, 50);
        assertEquals("PNG", new String(png, 1, 3, StandardCharsets.US_ASCII));
        assertThrows(UnusableInput.class, () -> Confirming.picture(sheet, 99, 50));
    }
}

package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.SheetReading;
import reglet.model.SheetReading.Report;
import reglet.model.UnusableInput;
import reglet.reading.Child;
import reglet.reading.Made;
import reglet.reading.sheet.DrawnSheet.Truth;
import reglet.reading.sheet.SheetFixtures.Fixture;

/** Sheets laid out by another hand than the first ones, by a word processor and by two PDF libraries; a third is not tuned on. */
class SecondSheetsTest {
    @TempDir
    Path folder;

    private SheetReading read(String name) throws Exception {
        Fixture fixture = SheetFixtures.set("second").stream().filter(one -> one.name().startsWith(name)).findFirst().orElseThrow();
        return SheetReader.read(SheetFixtures.pages(Made.file(folder, "one.pdf", fixture.pdf())), SheetFixtures.pack(), "");
    }

    private static String limits(Report report) {
        return report.conditions().stream().flatMap(condition -> condition.limits().stream().map(limit -> condition.number() + " "
            + limit.property() + " " + limit.compare().orElseThrow().text() + " " + limit.value().text()))
            .collect(Collectors.joining("; "));
    }

    @Test
    void conditionsAskAlsoOfOtherPartsOfTheWall() throws Exception {
        Report report = read("s09").report().orElseThrow();
        assertEquals("5.2 framing.spacing at most 16 in; 5.3 veneer.weight at most 15 psf", limits(report));
        assertEquals("NBR-2291", report.number());
        assertEquals("05/2023", report.issued());
        assertEquals("05/2025", report.ends());
        assertEquals(List.of("IBC 2021", "IBC 2018", "IBC 2015", "IRC 2021", "IRC 2018"), report.codes());
    }

    @Test
    void aReportThatNamesCodesByTheirLettersIsReadToo() throws Exception {
        Report report = read("s33").report().orElseThrow();
        assertEquals(List.of("IBC 2021", "IBC 2018", "IRC 2021"), report.codes());
        assertEquals("March 31, 2025", report.ends());
        assertEquals("a inner_ply.lap at least 6 in; b inner_ply.end_lap at least 12 in; c inner_ply.exposure at most 120 d",
            limits(report));
    }

    @Test
    void whatHeadAndSentencesSayIsNeverShownAsSure() throws Exception {
        assertTrue(read("s33").values().stream().allMatch(found -> found.confidence() < 0.9));
        assertTrue(read("s25").values().stream().allMatch(found -> found.confidence() < 0.9));
    }

    @Test
    void aPageIsDrawnByTheProcess() throws Exception {
        Fixture fixture = SheetFixtures.set("second").get(0);
        Path sheet = Made.file(folder, "drawn.pdf", fixture.pdf());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(Child.usual().picture(sheet, 1, 72)));
        assertEquals(SheetFixtures.pages(sheet).get(0).width(), image.getWidth(), 1);
        Truth first = fixture.truths().get(0);
        int dark = 0;
        for (int x = (int) first.box().x(); x < first.box().x() + first.box().width(); x++) {
            for (int y = (int) first.box().y(); y < first.box().y() + first.box().height(); y++) {
                dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        assertTrue(dark > 3, "nothing is drawn where the value stands");
        assertThrows(UnusableInput.class, () -> Child.usual().picture(sheet, 9, 72));
        assertTrue(ImageIO.read(new ByteArrayInputStream(Child.usual().picture(sheet, 1, 100_000))).getWidth() < 2_400);
    }

    @Test
    void aThirdOfThemIsSetAside() throws Exception {
        List<String> names = SheetFixtures.set("second").stream().map(Fixture::name).toList();
        assertTrue(names.containsAll(SheetFixtures.setAside("second/set-aside.txt")));
        assertTrue(SheetFixtures.setAside("second/set-aside.txt").size() * 3 > names.size(), names.size() + " sheets");
    }
}

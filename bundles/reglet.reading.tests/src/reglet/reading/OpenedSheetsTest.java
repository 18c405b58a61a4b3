package reglet.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that are opened once for all that a package needs of them, and copied into it where they stand. */
class OpenedSheetsTest {
    private static final int NOISE = 40_000;

    @TempDir
    Path folder;

    /** A sheet of one page with a picture of noise that is as large as it would be in a photograph. */
    private Path sheet(String name, long seed, String text) throws IOException {
        return Made.file(folder, name, Made.pdf(document -> {
            byte[] noise = new byte[NOISE];
            new Random(seed).nextBytes(noise);
            PDStream picture = new PDStream(document, new ByteArrayInputStream(noise));
            picture.getCOSObject().setItem(COSName.SUBTYPE, COSName.FORM);
            COSDictionary pictures = new COSDictionary();
            pictures.setItem("Noise", picture);
            document.getPage(0).getResources().getCOSObject().setItem(COSName.XOBJECT, pictures);
        }, text));
    }

    private static PackagePlan plan(List<Path> sheets) throws IOException {
        List<PackagePlan.Part> parts = new ArrayList<>(List.of(Made.own("Cover", 1, 1)));
        for (Path sheet : sheets) {
            parts.add(Made.sheet(sheet.getFileName().toString(), 1, sheet));
        }
        return new PackagePlan("Package", Made.pdf("Cover"), parts, List.of());
    }

    private static byte[] assembled(OpenedSheets opened, PackagePlan plan) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        opened.assemble(plan, out);
        return out.toByteArray();
    }

    @Test
    void sheetsAreMeasuredAndSearchedAtOnceAsTheyAreAlone() throws IOException {
        List<Path> sheets = new ArrayList<>();
        List<List<String>> words = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            sheets.add(i == 7 ? Made.file(folder, "7.pdf", "no PDF".getBytes()) : sheet(i + ".pdf", i, "model CB-" + i));
            words.add(i % 5 == 4 ? List.of() : List.of("CB-" + i));
        }
        try (OpenedSheets opened = Child.usual().open(sheets, words)) {
            assertEquals(Child.usual().measure(sheets), opened.measures());
            assertEquals(Child.usual().find(sheets, words), opened.found());
            assertEquals(List.of(1, 1, 1, 1, 0, 1, 1, 0, 1, 0), opened.found().subList(0, 10).stream().map(List::size).toList());
        }
    }

    @Test
    void noSheetsNeedNoProcess() throws IOException {
        try (OpenedSheets opened = Child.usual().open(List.of(), List.of())) {
            assertEquals(List.of(), opened.measures());
            assertEquals(List.of(), opened.found());
        }
    }

    @Test
    void aPackageIsTheSameWhetherItsSheetsWereOpenBeforeOrNot() throws IOException {
        List<Path> sheets = List.of(sheet("a.pdf", 1, "first"), sheet("b.pdf", 2, "second"));
        PackagePlan plan = plan(sheets);
        byte[] fresh = Child.usual().assemble(plan);
        try (OpenedSheets opened = Child.usual().open(sheets, Collections.nCopies(2, List.of("first")))) {
            assertArrayEquals(fresh, assembled(opened, plan));
            // the sheets were given away and are opened again
            assertArrayEquals(fresh, assembled(opened, plan));
        }
    }

    @Test
    void aSheetThatStopsTheProcessIsToldAndTheOthersAreMeasured() throws IOException {
        List<Path> sheets = List.of(Made.file(folder, "bad.pdf", Made.pdf("bad")), Made.file(folder, "good.pdf", Made.pdf("good")));
        Child child = Child.of(Misbehaving.Hangs.class, new Child.Limits(24, Duration.ofSeconds(2), Duration.ofSeconds(2), 2 << 20));
        try (OpenedSheets opened = child.open(sheets, Collections.nCopies(2, List.of()))) {
            assertEquals(List.of(new Measure(sheets.get(0), 0, "reading it took too long and was stopped"),
                new Measure(sheets.get(1), 7, "")), opened.measures());
        }
    }

    @Test
    void streamsAreCopiedByteForByte() throws IOException {
        Path sheet = sheet("a.pdf", 5, "noise");
        byte[] noise = new byte[NOISE];
        new Random(5).nextBytes(noise);
        try (PDDocument bound = Loader.loadPDF(Child.usual().assemble(plan(List.of(sheet))))) {
            COSStream picture = (COSStream) bound.getPage(1).getResources().getXObject(COSName.getPDFName("Noise")).getCOSObject();
            assertArrayEquals(noise, picture.createInputStream().readAllBytes());
        }
    }

    @Test
    void aChangeInTheMiddleOfASheetGivesThePackageAnotherIdentity() throws IOException {
        Path sheet = sheet("a.pdf", 5, "noise");
        PackagePlan plan = plan(List.of(sheet));
        COSString before = identity(Child.usual().assemble(plan));
        assertEquals(before, identity(Child.usual().assemble(plan)));
        byte[] bytes = Files.readAllBytes(sheet);
        byte[] noise = new byte[NOISE];
        new Random(5).nextBytes(noise);
        int picture = IntStream.range(0, bytes.length - 16)
            .filter(i -> Arrays.equals(bytes, i, i + 16, noise, 0, 16)).findFirst().orElseThrow();
        bytes[picture + NOISE / 2] ^= 1;
        Files.write(sheet, bytes);
        assertNotEquals(before, identity(Child.usual().assemble(plan)));
    }

    private static COSString identity(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            COSString one = (COSString) document.getDocument().getDocumentID().getObject(0);
            assertEquals(one, document.getDocument().getDocumentID().getObject(1));
            // two check sums of four bytes and a length of eight
            assertEquals(16, one.getBytes().length);
            return one;
        }
    }

    @Test
    void aSheetThatIsWrittenBetweenLookingAndBindingIsToldAndNotBoundHalf() throws IOException {
        Path sheet = sheet("a.pdf", 5, "before");
        try (OpenedSheets opened = Child.usual().open(List.of(sheet), List.of(List.of()))) {
            Files.delete(sheet);
            sheet("a.pdf", 6, "afterwards");
            String told = assertThrows(IOException.class, () -> assembled(opened, plan(List.of(sheet)))).getMessage();
            assertTrue(told.contains("a.pdf was written while the package was put together"), told);
        }
    }
}

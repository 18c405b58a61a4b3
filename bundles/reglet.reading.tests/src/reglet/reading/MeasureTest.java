package reglet.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A first look at sheets, good ones and bad ones. */
class MeasureTest {
    @TempDir
    Path folder;

    @Test
    void pagesOfGoodSheetsAreCountedInTheOrderAsked() throws IOException {
        Path two = Made.file(folder, "two.pdf", Made.pdf("a", "b"));
        Path one = Made.file(folder, "one.pdf", Made.pdf("a"));
        assertEquals(List.of(new Measure(two, 2, ""), new Measure(one, 1, "")), Child.usual().measure(List.of(two, one)));
    }

    @Test
    void noSheetsNeedNoProcess() throws IOException {
        assertEquals(List.of(), Child.usual().measure(List.of()));
    }

    @Test
    void eachBadSheetIsToldWhyAndTheOthersAreStillMeasured() throws IOException {
        byte[] good = Made.pdf("a", "b", "c");
        List<Path> sheets = List.of(
            folder.resolve("absent.pdf"),
            Made.file(folder, "empty.pdf", new byte[0]),
            Made.file(folder, "letter.pdf", "Dear reader".getBytes(StandardCharsets.UTF_8)),
            Made.file(folder, "cut.pdf", Arrays.copyOf(good, good.length - 200)),
            Made.file(folder, "locked.pdf", Made.pdf(document -> protect(document, "secret", true), "a")),
            Made.file(folder, "no pages.pdf", Made.pdf()),
            Made.file(folder, "dynamic.pdf", Made.pdf(MeasureTest::dynamic, "Please wait")),
            Made.file(folder, "good.pdf", good));
        assertEquals(List.of("there is no such file", "it is no PDF", "it is no PDF",
            "its end is missing: it was cut off; get a whole copy",
            "it is encrypted and opens only with a password", "it has no pages",
            "its pages are made by a forms program when it is opened (dynamic XFA); print it to a plain PDF", ""),
            Child.usual().measure(sheets).stream().map(Measure::problem).toList());
    }

    @Test
    void aSheetWithAHoleInTheMiddleIsDamaged() throws IOException {
        byte[] bytes = Made.pdf("a");
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        byte[] holed = text.substring(0, 12).concat(text.substring(text.lastIndexOf("startxref")))
            .getBytes(StandardCharsets.ISO_8859_1);
        Measure measure = Child.usual().measure(List.of(Made.file(folder, "holed.pdf", holed))).get(0);
        assertEquals(0, measure.pages());
        assertEquals("it is damaged and can't be read as a PDF", measure.problem());
    }

    @Test
    void aSheetThatAnybodyMayOpenAndBindIsUsableThoughItIsEncrypted() throws IOException {
        Path sheet = Made.file(folder, "open.pdf", Made.pdf(document -> protect(document, "", true), "Readable"));
        assertTrue(Child.usual().measure(List.of(sheet)).get(0).usable());
        try (PDDocument document = Made.bound(sheet, 1)) {
            assertTrue(Made.text(document, 2).contains("Readable"));
        }
    }

    @Test
    void aSheetWhoseMakerForbidsBindingIsNotBound() throws IOException {
        Path sheet = Made.file(folder, "forbidden.pdf", Made.pdf(document -> protect(document, "", false), "a"));
        assertEquals("its maker forbids binding it into another document", Child.usual().measure(List.of(sheet)).get(0).problem());
    }

    private static void protect(PDDocument document, String password, boolean assemble) throws IOException {
        AccessPermission permission = new AccessPermission();
        permission.setCanAssembleDocument(assemble);
        permission.setCanModify(assemble);
        StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", password, permission);
        policy.setEncryptionKeyLength(128);
        document.protect(policy);
    }

    private static void dynamic(PDDocument document) throws IOException {
        PDAcroForm form = new PDAcroForm(document);
        COSStream xfa = new COSStream();
        try (var out = xfa.createOutputStream()) {
            out.write("<xdp/>".getBytes(StandardCharsets.UTF_8));
        }
        form.getCOSObject().setItem(COSName.XFA, xfa);
        form.getCOSObject().setItem(COSName.FIELDS, new COSArray());
        document.getDocumentCatalog().setAcroForm(form);
    }
}

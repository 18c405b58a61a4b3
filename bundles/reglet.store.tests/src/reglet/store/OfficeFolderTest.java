package reglet.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Office;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

class OfficeFolderTest {
    /** A picture of one point. */
    private static final byte[] PNG = Base64.getDecoder().decode(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @TempDir
    private Path folder;

    private void yaml(String text) throws Exception {
        Files.writeString(folder.resolve("office.yaml"), text);
    }

    private List<Problem> problems() {
        return assertThrows(UnusableInput.class, () -> OfficeFolder.read(folder, "office")).problems();
    }

    /** A file with the three tables that are looked at, laid out as ISO/IEC 14496-22 says; it has no outlines in it. */
    static byte[] font(int fsType, String family) {
        byte[] name = family.getBytes(StandardCharsets.UTF_16BE);
        ByteBuffer font = ByteBuffer.allocate(256);
        font.putInt(0x00010000).putShort((short) 3).putShort((short) 0).putShort((short) 0).putShort((short) 0);
        table(font, "OS/2", 100, 12);
        table(font, "glyf", 112, 4);
        table(font, "name", 116, 18 + name.length);
        font.position(108).putShort((short) fsType);
        font.position(116).putShort((short) 0).putShort((short) 1).putShort((short) 18);
        font.putShort((short) 3).putShort((short) 1).putShort((short) 0x409).putShort((short) 1).putShort((short) name.length)
            .putShort((short) 0).put(name);
        return font.array();
    }

    private static void table(ByteBuffer font, String tag, int at, int length) {
        font.put(tag.getBytes(StandardCharsets.ISO_8859_1)).putInt(0).putInt(at).putInt(length);
    }

    @Test
    void anOfficeIsReadWithItsLetterheadFontsAndTemplates() throws Exception {
        yaml("format: 1\nname: Quay & Field\naddress: ['14 Lantern Row, Northquay']\nletterhead: head.png\npaper: A4\n"
            + "fonts: {regular: a.ttf}\n");
        Files.write(folder.resolve("head.png"), PNG);
        Files.write(folder.resolve("a.ttf"), font(8, "Quay Sans"));
        Files.writeString(folder.resolve("header.ftl"), "${office.name}");
        Office office = OfficeFolder.read(folder, "office");
        assertEquals("Quay & Field", office.name());
        assertEquals(List.of("14 Lantern Row, Northquay"), office.address());
        assertEquals(Office.Paper.A4, office.paper());
        assertArrayEquals(PNG, office.letterhead().orElseThrow().bytes());
        assertEquals("Quay Sans", office.fonts().get(Office.Face.REGULAR).family());
        assertEquals(Map.of(Office.HEADER, "${office.name}"), office.templates());
        assertEquals(new Place("office/header.ftl", 2, 3), office.place(Office.HEADER, 2, 3));
    }

    /** fsType: 0 installable, 2 restricted, 4 print and preview, 8 editable; 0x100 no part, 0x200 bitmaps only (ISO/IEC 14496-22, OS/2). */
    @ParameterizedTest
    @CsvSource({"0, true", "4, true", "8, true", "2, false", "256, false", "260, false", "512, false"})
    void onlyFontsThatPapersMayCarryAreTaken(int fsType, boolean allowed) throws Exception {
        yaml("format: 1\nname: A\nfonts: {regular: a.ttf}\n");
        Files.write(folder.resolve("a.ttf"), font(fsType, "Quay Sans"));
        if (allowed) {
            assertEquals(1, OfficeFolder.read(folder, "office").fonts().size());
        } else {
            Problem problem = problems().get(0);
            assertEquals(new Place("office/office.yaml", 3, 18), problem.at());
            assertTrue(problem.what().contains("forbids") && problem.what().contains("fsType " + fsType), problem.what());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "format: 2, name: A                        | office/office.yaml:1:10: format 2 is newer than this program",
        "format: 1                                 | office/office.yaml:1:1: \"name\" is missing",
        "format: 1, name: A, papers: A4            | office/office.yaml:1:22: unknown name \"papers\"; did you mean",
        "format: 1, name: A, paper: A5             | office/office.yaml:1:29: unknown word \"A5\"",
        "format: 1, name: A, letterhead: no.png    | office/no.png: there is no such file",
        "format: 1, name: A, letterhead: text.png  | office/office.yaml:1:34: \"text.png\" is no PNG picture",
        "format: 1, name: A, letterhead: ../x.png  | office/office.yaml:1:34: \"../x.png\" leads out of the office's folder",
        "format: 1, name: A, fonts: {regular: text.png} | office/office.yaml:1:39: \"text.png\" is no font with TrueType outlines",
        "format: 1, name: A, fonts: {bold: b.ttf}  | office/office.yaml:1:29: \"regular\" is missing"})
    void whatIsWrongIsSaidWithItsPlace(String text, String said) throws Exception {
        yaml("{" + text + "}");
        Files.writeString(folder.resolve("text.png"), "This is text.");
        List<String> all = problems().stream().map(Problem::toString).toList();
        assertTrue(all.stream().anyMatch(one -> one.startsWith(said)), all.toString());
    }

    @Test
    void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path outside) throws Exception {
        Files.writeString(outside.resolve("secret"), "${office.name}");
        yaml("format: 1\nname: A\n");
        Files.createSymbolicLink(folder.resolve("header.ftl"), outside.resolve("secret"));
        assertTrue(problems().get(0).toString().startsWith("office/header.ftl: leads out of the folder"));
    }

    @Test
    void aTemplateThatNothingPrintsIsAMistake() throws Exception {
        yaml("format: 1\nname: A\n");
        Files.writeString(folder.resolve("headr.ftl"), "x");
        assertTrue(problems().get(0).toString().contains("header.ftl"), problems().toString());
    }

    @Test
    void hugePicturesAreRefusedBeforeTheyAreOpened() throws Exception {
        byte[] huge = PNG.clone();
        ByteBuffer.wrap(huge).putInt(16, 1_000_000);
        Files.write(folder.resolve("head.png"), huge);
        yaml("format: 1\nname: A\nletterhead: head.png\n");
        assertTrue(problems().get(0).what().contains("1000000 by 1"), problems().toString());
    }

    @Test
    void brokenFontsNeverBreakTheReader() throws Exception {
        yaml("format: 1\nname: A\nfonts: {regular: a.ttf}\n");
        byte[] whole = font(0, "Quay Sans");
        for (int length = 0; length < whole.length; length++) {
            Files.write(folder.resolve("a.ttf"), java.util.Arrays.copyOf(whole, length));
            try {
                assertEquals("Quay Sans", OfficeFolder.read(folder, "office").fonts().get(Office.Face.REGULAR).family());
            } catch (UnusableInput refused) {
                assertTrue(refused.problems().get(0).what().startsWith("\"a.ttf\""), refused.getMessage());
            }
        }
    }
}

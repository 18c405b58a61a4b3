package reglet.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Pack;

class PackBytesTest {
    private static final Path PACK = Path.of(System.getProperty("reglet.root", "../..")).resolve("bundles/reglet.pack.adheredveneer/pack");

    @TempDir
    Path folder;

    @Test
    void aKeptPackIsThePackThatWasRead() throws Exception {
        Pack pack = Packs.read(PACK).pack();
        byte[] bytes = PackBytes.write(pack);
        assertEquals(pack, PackBytes.read(bytes));
        assertArrayEquals(bytes, PackBytes.write(PackBytes.read(bytes)));
    }

    @Test
    void aPackKeptByAModelOfAnotherShapeIsRefused() throws Exception {
        byte[] bytes = PackBytes.write(Packs.read(new SmallPack().write(folder).resolve("pack")).pack());
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int part = text.indexOf(" version:java.lang.String");
        bytes[part + 1] = 'V';
        assertThrows(IOException.class, () -> PackBytes.read(bytes));
    }

    @Test
    void bytesThatBreakOffOrAreNoPackAreRefused() throws Exception {
        byte[] bytes = PackBytes.write(Packs.read(new SmallPack().write(folder).resolve("pack")).pack());
        for (int length : new int[] {0, 1, 10, bytes.length / 2, bytes.length - 1}) {
            assertThrows(IOException.class, () -> PackBytes.read(Arrays.copyOf(bytes, length)), length + " bytes");
        }
        assertThrows(IOException.class, () -> PackBytes.read("no pack at all".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theDigestChangesWithContentAndNameAndWithNothingElse() throws Exception {
        Path pack = new SmallPack().write(folder).resolve("pack");
        String digest = Packs.digest(pack);
        Files.writeString(pack.resolve("notes.txt"), "not of the pack");
        assertEquals(digest, Packs.digest(pack));
        Path rule = pack.resolve("rules/lath.light.yaml");
        Files.move(rule, pack.resolve("rules/lath.lighter.yaml"));
        assertNotEquals(digest, Packs.digest(pack));
        Files.move(pack.resolve("rules/lath.lighter.yaml"), rule);
        assertEquals(digest, Packs.digest(pack));
        Files.writeString(rule, Files.readString(rule) + "\n");
        assertNotEquals(digest, Packs.digest(pack));
    }
}

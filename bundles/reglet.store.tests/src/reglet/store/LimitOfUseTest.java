package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** A property whose value is a limit of use, such as the lowest temperature for work. */
class LimitOfUseTest {
    private static final String WALL = "pack/subjects/wall.yaml";
    private static final String PROPERTIES = "  height: {unit: ft, compare: exactly}\n";
    @TempDir
    Path folder;

    private Pack read(String property) throws Exception {
        return Packs.read(new SmallPack().replacing(WALL, PROPERTIES, PROPERTIES + "  coldest: " + property + "\n").write(folder).resolve(
            "pack")).pack();
    }

    @Test
    void aLimitIsReadAndKeptWithThePack() throws Exception {
        Pack pack = read("{unit: degF, compare: at most, limit: true}");
        assertTrue(pack.property("wall.coldest").orElseThrow().limit());
        assertFalse(pack.property("wall.height").orElseThrow().limit());
        assertEquals(pack, PackBytes.read(PackBytes.write(pack)));
    }

    @Test
    void onlyAnAmountCanBeOneAndItSaysTrueOrNothing() {
        assertEquals(List.of("\"limit\" says only that there is one"), faults("{unit: degF, compare: at most, limit: no}"));
        assertEquals(List.of("only a quantity can be a limit of use"), faults("{word: [cold, warm], limit: true}"));
    }

    private List<String> faults(String property) {
        return assertThrows(UnusableInput.class, () -> read(property)).problems().stream().map(Problem::what).toList();
    }
}

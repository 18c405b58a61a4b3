package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.Shelf.ShelvedPack;
import reglet.model.Finding;
import reglet.rules.Engine;
import reglet.store.Packs;
import reglet.store.StoredPack;
import reglet.worksheets.Worksheets;

class BuiltPackTest {
    @TempDir
    Path folder;

    private Path pack() throws IOException {
        return Samples.copyFolder(Samples.PACK, folder.resolve("pack"));
    }

    private List<String> findings(Path pack, Optional<Path> built, String cache) throws Exception {
        Desk desk = new Desk(new Shelf(List.of(new ShelvedPack("adheredveneer", pack, built))), folder.resolve(cache));
        return desk.open(Samples.job("orchard-row")).checked().findings().stream().map(Finding::says).toList();
    }

    @Test
    void aBuiltPackFindsTheSameAsItsTextAndNothingIsMadeAnew() throws Exception {
        Path pack = pack();
        StoredPack read = Packs.read(pack);
        Path built = folder.resolve("built.pack");
        BuiltPack.write(built, read, Engine.compile(read.pack(), Worksheets::run));
        assertEquals(findings(pack, Optional.empty(), "text"), findings(pack, Optional.of(built), "built"));
        assertFalse(Files.exists(folder.resolve("built")), "the pack was made anew");
        assertTrue(Files.exists(folder.resolve("text")), "the pack made from text was not kept");
    }

    @Test
    void aChangedTextCountsMoreThanWhatWasBuiltFromTheOldOne() throws Exception {
        Path pack = pack();
        StoredPack read = Packs.read(pack);
        Path built = folder.resolve("built.pack");
        BuiltPack.write(built, read, Engine.compile(read.pack(), Worksheets::run));
        Path rule = pack.resolve("rules/lath.weight.yaml");
        Files.writeString(rule, Files.readString(rule).replaceFirst("(?m)^says: .*$", "says: changed words"));
        assertTrue(findings(pack, Optional.of(built), "cache").contains("changed words"));
    }

    @Test
    void aBrokenKeptPackIsMadeAnew() throws Exception {
        Path pack = pack();
        List<String> expected = findings(pack, Optional.empty(), "cache");
        try (Stream<Path> kept = Files.list(folder.resolve("cache"))) {
            Path file = kept.findFirst().orElseThrow();
            Files.write(file, java.util.Arrays.copyOf(Files.readAllBytes(file), 5_000));
        }
        assertEquals(expected, findings(pack, Optional.empty(), "cache"));
    }
}

package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Pack;
import reglet.model.Rule;
import reglet.model.Subject;
import reglet.model.Table;
import reglet.model.WallType;
import reglet.store.Jobs;
import reglet.store.Packs;

/** In which order walls stand in a job, rules in a pack and files in a folder tells nothing and changes nothing. */
class OrderTest {
    private static final int ROUNDS = 10;

    private static List<String> found(Engine engine, Job job) {
        return engine.check(job).findings().stream().map(finding -> finding.key() + " " + finding.kind() + " " + finding.says()
            + " " + finding.options() + " " + finding.missing()).toList();
    }

    private static List<String> sorted(List<String> list) {
        return list.stream().sorted().toList();
    }

    private static Job sample(String name) throws Exception {
        return Jobs.read(SampleJob.ROOT.resolve("sample-specs").resolve(name), RealPack.PACK);
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        List<T> shuffled = new ArrayList<>(list);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    @Test
    void theOrderOfWallsChangesNoFindingButTheirOrder() throws Exception {
        Job job = broken(sample("harbour-clinic"), sample("orchard-row"));
        List<String> expected = sorted(found(RealPack.ENGINE, job));
        Random random = new Random(11);
        for (int round = 0; round < ROUNDS; round++) {
            List<WallType> walls = shuffled(job.walls(), random);
            List<Finding> findings = RealPack.ENGINE.check(with(job, walls)).findings();
            assertEquals(expected, sorted(found(RealPack.ENGINE, with(job, walls))));
            assertEquals(walls.stream().map(WallType::id).filter(id -> findings.stream().anyMatch(finding -> finding.wall().equals(id)))
                .toList(),
                findings.stream().map(Finding::wall).filter(wall -> !wall.isEmpty()).distinct().toList());
        }
    }

    /** The clinic with the mistakes of the row houses on a third wall. */
    private static Job broken(Job clinic, Job row) {
        WallType house = row.walls().get(0);
        List<WallType> walls = new ArrayList<>(clinic.walls());
        walls.add(new WallType("W3", house.title(), house.facts(), house.meetings(), house.choices(), house.at()));
        return with(clinic, walls);
    }

    private static Job with(Job job, List<WallType> walls) {
        return new Job(job.title(), job.note(), job.pack(), job.facts(), walls, job.sections(), job.changes(), job.accepted(),
            job.products(),
            job.submittals(), job.register(), job.questions(), job.at());
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void theOrderOfRulesComponentsSubjectsAndTablesChangesNoFinding(String name) throws Exception {
        Job job = sample(name);
        List<String> expected = found(RealPack.ENGINE, job);
        Random random = new Random(13);
        for (int round = 0; round < ROUNDS; round++) {
            List<Subject> subjects = shuffled(RealPack.PACK.subjects(), random);
            List<Component> components = shuffled(RealPack.PACK.components(), random);
            List<Rule> rules = shuffled(RealPack.PACK.rules(), random);
            List<Table> tables = shuffled(RealPack.PACK.tables(), random);
            Engine engine = RealPack.ENGINE.amended(RealPack.PACK.with(subjects, components, rules, tables));
            assertEquals(expected, found(engine, job));
        }
    }

    @Test
    void theOrderInWhichFilesCameIntoAFolderChangesNothing(@TempDir Path folder) throws Exception {
        Path from = SampleJob.ROOT.resolve("bundles/reglet.pack.adheredveneer/pack");
        Path job = SampleJob.ROOT.resolve("sample-specs/orchard-row");
        Random random = new Random(17);
        for (int round = 0; round < 2; round++) {
            Pack pack = Packs.read(copy(from, folder.resolve("pack" + round), random)).pack();
            assertEquals(RealPack.PACK, pack);
            assertEquals(found(RealPack.ENGINE, sample("orchard-row")),
                found(RealPack.ENGINE, Jobs.read(copy(job, folder.resolve("job" + round), random), pack)));
        }
    }

    private static Path copy(Path from, Path to, Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(from)) {
            files = walk.filter(Files::isRegularFile).filter(file -> !from.relativize(file).startsWith("out")).sorted().toList();
        }
        for (Path file : shuffled(files, random)) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
        return to;
    }
}

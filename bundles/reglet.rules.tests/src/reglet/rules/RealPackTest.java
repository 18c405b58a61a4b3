package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Choice;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Pack;
import reglet.model.Quantity;
import reglet.model.Rule;
import reglet.model.Stated;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.store.Jobs;
import reglet.store.Packs;
import reglet.worksheets.Worksheets;

/** The pack of this checkout and its sample jobs. */
class RealPackTest {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../.."));
    private static Pack pack;
    private static Engine engine;

    @BeforeAll
    static void read() throws Exception {
        pack = Packs.read(ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        engine = Engine.compile(pack, Worksheets::run);
    }

    private static Job job(String name) throws Exception {
        return Jobs.read(ROOT.resolve("sample-specs").resolve(name), pack);
    }

    private static List<String> keys(Engine engine, Job job) {
        return engine.check(job).findings().stream().map(finding -> finding.key() + " " + finding.kind() + " " + finding.says()).toList();
    }

    @Test
    void theExamplesOfEveryRuleComeOutAsStated() {
        assertEquals(List.of(), Examples.failures(engine));
        assertTrue(pack.rules().size() >= 150);
    }

    @Test
    void checkedTreesThatWereKeptFindTheSame() throws Exception {
        Engine kept = Engine.load(pack, engine.checkedTrees(), Worksheets::run);
        for (String name : List.of("harbour-clinic", "mesa-library", "orchard-row")) {
            assertEquals(keys(engine, job(name)), keys(kept, job(name)));
            assertEquals(engine.resolve(job(name)), kept.resolve(job(name)));
        }
    }

    @Test
    void theOrderOfWallsFactsAndChoicesChangesNoFinding() throws Exception {
        Job job = job("orchard-row");
        List<String> expected = keys(engine, job);
        Random random = new Random(7);
        for (int round = 0; round < 20; round++) {
            assertEquals(expected, keys(engine, shuffled(job, random)));
        }
    }

    private static Job shuffled(Job job, Random random) {
        List<WallType> walls = job.walls().stream().map(wall -> {
            List<Meeting> meetings = new ArrayList<>(wall.meetings());
            Collections.shuffle(meetings, random);
            return new WallType(wall.id(), wall.title(), shuffled(wall.facts(), random), meetings, shuffled(wall.choices(), random),
                wall.at());
        }).toList();
        return new Job(job.title(), job.note(), job.pack(), shuffled(job.facts(), random), walls, job.sections(), job.changes(),
            job.accepted(), job.products(), job.submittals(), job.register(), job.questions(), job.at());
    }

    private static <T> Map<String, T> shuffled(Map<String, T> map, Random random) {
        List<String> keys = new ArrayList<>(map.keySet());
        Collections.shuffle(keys, random);
        Map<String, T> shuffled = new LinkedHashMap<>();
        keys.forEach(key -> shuffled.put(key, map.get(key)));
        return shuffled;
    }

    @Test
    void eitherSystemOfUnitsGivesTheSameFindings() throws Exception {
        Job job = job("orchard-row");
        List<String> rules = engine.check(job).findings().stream().map(Finding::key).toList();
        List<WallType> walls = job.walls().stream().map(wall -> new WallType(wall.id(), wall.title(), converted(wall.facts()),
            wall.meetings().stream().map(meeting -> new Meeting(meeting.id(), meeting.subject(), converted(meeting.facts()), meeting.at()))
                .toList(), choices(wall), wall.at())).toList();
        Map<String, Map<String, Stated>> facts = new LinkedHashMap<>();
        job.facts().forEach((subject, values) -> facts.put(subject, converted(values)));
        Job metric = new Job(job.title(), job.note(), job.pack(), facts, walls, job.sections(), job.changes(), job.accepted(),
            job.products(),
            job.submittals(), job.register(), job.questions(), job.at());
        assertEquals(rules, engine.check(metric).findings().stream().map(Finding::key).toList());
    }

    private static Map<String, Choice> choices(WallType wall) {
        Map<String, Choice> choices = new LinkedHashMap<>();
        wall.choices().forEach((id, choice) -> choices.put(id, new Choice(id, choice.accept(), converted(choice.values()), choice.by(),
            choice.because(), choice.at())));
        return choices;
    }

    private static Map<String, Stated> converted(Map<String, Stated> facts) {
        Map<String, Stated> converted = new LinkedHashMap<>();
        facts.forEach((name, stated) -> converted.put(name, new Stated(converted(stated.value()), stated.at())));
        return converted;
    }

    private static Value converted(Value value) {
        return value instanceof Quantity quantity && quantity.unit().other().isPresent()
            ? new Quantity(quantity.si(), quantity.unit().other().get(), quantity.amount()) : value;
    }

    /**
     * Clearances and the screed of adhered veneer on stud walls, at the number and just below it. Source: IRC R703.12.1 and R703.12.2
     * (2018 text, read in a public copy); the 26 gauge thickness and 3-1/2 in leg stand in IBC 2021 2512.1.2 too.
     */
    @ParameterizedTest
    @CsvSource({"base-1, clearance, 4 in, true", "base-1, clearance, 3.9 in, false", "base-2, clearance, 2 in, true",
        "base-2, clearance, 1.9 in, false"})
    void clearancesOfTheResidentialCodeAreKeptToTheTenthOfAnInch(String meeting, String property, String value, boolean right)
            throws Exception {
        Job job = job("orchard-row");
        WallType wall = job.wall("W1").orElseThrow();
        List<Meeting> meetings = wall.meetings().stream().map(met -> {
            if (!met.id().equals(meeting)) {
                return met;
            }
            Map<String, Stated> facts = new LinkedHashMap<>(met.facts());
            facts.put(property, new Stated(Quantity.parse(value).orElseThrow(), met.at()));
            return new Meeting(met.id(), met.subject(), facts, met.at());
        }).toList();
        Job changed = job.with(new WallType(wall.id(), wall.title(), wall.facts(), meetings, wall.choices(), wall.at()));
        boolean found = engine.check(changed).findings().stream().anyMatch(finding -> finding.meeting().equals(meeting)
            && finding.rule().startsWith("base.clearance"));
        assertEquals(right, !found);
    }

    @Test
    void everyRuleSaysWhereItComesFromAndWhatToDo() {
        for (Rule rule : pack.rules()) {
            assertTrue(!rule.basis().isEmpty() && !rule.fix().isBlank() && !rule.since().isBlank(), rule.id());
        }
    }
}

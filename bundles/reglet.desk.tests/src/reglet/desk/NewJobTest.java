package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Finding;
import reglet.model.Pack;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;

class NewJobTest {
    private static final Map<String, Map<String, String>> FACTS = Map.of("code", Map.of("name", "IBC", "edition", "2021"), "site",
        Map.of("climate", "moist", "wind_speed", "115 mph"));
    @TempDir
    Path folder;

    private static Pack pack() throws Exception {
        return Samples.desk().pack("");
    }

    private static NewJob job(String title) {
        return new NewJob(title, FACTS, "Street front", Map.of("height", "26 ft"), Map.of("framing", "wood-16"));
    }

    @Test
    void aNewJobOpensWithItsAnswersAndEverythingLeftOpenIsAGap() throws Exception {
        Path made = folder.resolve("made");
        List<Path> written = job("Ferry house").write(made, pack());
        assertEquals(List.of(made.resolve("walls/W1.yaml"), made.resolve("job.yaml")), written);
        OpenJob opened = Samples.desk().open(made);
        assertEquals("Ferry house", opened.job().title());
        assertEquals("115 mph", opened.job().fact("site", "wind_speed").orElseThrow().text());
        assertEquals(List.of("wood-16"), opened.job().wall("W1").orElseThrow().choice("framing").orElseThrow().accept());
        List<Finding> findings = opened.checked().findings();
        assertTrue(findings.stream().anyMatch(finding -> finding.kind() == Finding.Kind.GAP), findings.toString());
        assertTrue(findings.stream().noneMatch(finding -> finding.kind() == Finding.Kind.CONFLICT), findings.toString());
        assertTrue(findings.stream().anyMatch(finding -> finding.rule().equals("lath.decided")), findings.toString());
        assertTrue(findings.stream().flatMap(finding -> finding.missing().stream()).noneMatch("site.climate"::equals));
    }

    @Test
    void titlesWithSignsThatYamlReadsAreKeptAsTyped() throws Exception {
        for (String title : List.of("Mill: phase \"two\" #3", "- dash", "yes", "[a, b]", "Größe 5 °C", "{x}", "'quoted'", "1.0")) {
            Path made = FreshFolder.free(folder.resolve("title"));
            new NewJob(title, Map.of(), title, Map.of(), Map.of()).write(made, pack());
            assertEquals(title, Samples.desk().open(made).job().title());
            assertEquals(title, Samples.desk().open(made).job().wall("W1").orElseThrow().title());
        }
    }

    @Test
    void aFolderThatHoldsAnythingIsLeftAsItIs() throws Exception {
        Files.writeString(folder.resolve("letter.txt"), "keep me");
        UnusableInput refused = assertThrows(UnusableInput.class, () -> job("Ferry house").write(folder, pack()));
        assertTrue(refused.getMessage().contains("holds files already"), refused.getMessage());
        try (var entries = Files.list(folder)) {
            assertEquals(List.of(folder.resolve("letter.txt")), entries.toList());
        }
        assertEquals(folder.resolve("new"), FreshFolder.free(folder.resolve("new")));
        Path taken = Files.createDirectories(folder.resolve("taken"));
        Files.writeString(taken.resolve("a"), "");
        assertEquals(folder.resolve("taken-2"), FreshFolder.free(taken));
    }

    @Test
    void noFileIsPutOutsideTheFolder() {
        Path made = folder.resolve("made");
        assertThrows(UnusableInput.class, () -> FreshFolder.fill(made, Map.of("../escaped.yaml", new byte[0])));
        assertFalse(Files.exists(folder.resolve("escaped.yaml")));
        assertFalse(Files.exists(made));
    }

    @Test
    void everythingThatCannotBeReadIsToldAtOnceAndNothingIsWritten() throws Exception {
        NewJob wrong = new NewJob(" ", Map.of("site", Map.of("wind_speed", "115 psi", "climate", "wet")), "Front", Map.of(),
            Map.of("framing",
            "bamboo"));
        UnusableInput refused = assertThrows(UnusableInput.class, () -> wrong.write(folder.resolve("made"), pack()));
        assertEquals(4, refused.problems().size(), refused.getMessage());
        assertFalse(Files.exists(folder.resolve("made")));
    }

    @Test
    void onlyWhatSomethingInThePackReadsIsAsked() throws Exception {
        List<String> asked = NeededFacts.ofJob(pack()).stream().map(NeededFact::name).toList();
        assertTrue(asked.containsAll(List.of("code.name", "site.climate", "site.wind_speed", "site.exposure", "site.seismic")), asked
            .toString());
        // terms are the office's to set and have usual values; what applies under a condition is asked once it holds
        assertTrue(asked.stream().noneMatch(name -> name.startsWith("terms.") || name.equals("site.sds")), asked.toString());
        List<NeededFact> site = NeededFacts.ofJob(pack()).stream().filter(fact -> fact.subject().id().equals("site")).toList();
        List<Boolean> needed = site.stream().map(NeededFact::isNeeded).toList();
        assertEquals(needed.stream().sorted(java.util.Comparator.reverseOrder()).toList(), needed);
        assertTrue(NeededFacts.ofWall(pack()).stream().map(NeededFact::name).toList().containsAll(List.of("wall.height",
            "wall.construction")));
        assertEquals("framing", NeededFacts.ofBacking(pack()).id());
    }

    @Test
    void theQuestionsAnsweredLeaveNoGapOfTheirOwn() throws Exception {
        Map<String, Map<String, String>> facts = new LinkedHashMap<>();
        for (NeededFact fact : NeededFacts.ofJob(pack())) {
            String answer = fact.words().isEmpty() ? fact.written("60", UnitSystem.INCH_POUND) : fact.words().get(0);
            facts.computeIfAbsent(fact.subject().id(), id -> new LinkedHashMap<>()).put(fact.property().name(), answer);
        }
        Path made = folder.resolve("made");
        new NewJob("All answered", facts, "Front", Map.of(), Map.of()).write(made, pack());
        List<String> missing = Samples.desk().open(made).checked().findings().stream().flatMap(finding -> finding.missing().stream())
            .toList();
        assertTrue(missing.stream().noneMatch(name -> asked().contains(name)), missing.toString());
    }

    private static List<String> asked() {
        try {
            return NeededFacts.ofJob(pack()).stream().map(NeededFact::name).toList();
        } catch (Exception unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void aBareNumberIsTakenInTheUnitsChosenAndAWrongOneIsExplained() throws Exception {
        NeededFact height = NeededFacts.ofWall(pack()).stream().filter(one -> one.name().equals("wall.height")).findFirst().orElseThrow();
        assertEquals("26 ft", height.written("26", UnitSystem.INCH_POUND));
        assertEquals("8 m", height.written(" 8 ", UnitSystem.SI));
        assertEquals("8 m", height.written("8 m", UnitSystem.INCH_POUND));
        assertEquals("", height.wrong("", UnitSystem.SI));
        assertEquals("", height.wrong("12-1/2 ft", UnitSystem.SI));
        assertTrue(height.wrong("high", UnitSystem.SI).endsWith("expected a number, such as 10 m."), height.wrong("high", UnitSystem.SI));
        assertTrue(height.wrong("3 psi", UnitSystem.SI).startsWith("\"3 psi\" is no height"), height.wrong("3 psi", UnitSystem.SI));
    }

    @Test
    void theOrderOfTheAnswersMakesNoDifferenceToTheFiles() throws Exception {
        Map<String, String> there = new LinkedHashMap<>();
        there.put("climate", "moist");
        there.put("exposure", "B");
        Map<String, String> back = new LinkedHashMap<>();
        back.put("exposure", "B");
        back.put("climate", "moist");
        new NewJob("Ferry house", Map.of("site", there), "Front", Map.of(), Map.of()).write(folder.resolve("one"), pack());
        new NewJob("Ferry house", Map.of("site", back), "Front", Map.of(), Map.of()).write(folder.resolve("two"), pack());
        assertEquals(Files.readString(folder.resolve("one/job.yaml")), Files.readString(folder.resolve("two/job.yaml")));
    }
}

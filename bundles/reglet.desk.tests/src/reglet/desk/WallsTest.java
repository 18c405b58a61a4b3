package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Accepted;
import reglet.model.Change;
import reglet.model.Finding;
import reglet.model.Place;
import reglet.model.UnusableInput;
import reglet.model.WallType;

class WallsTest {
    @TempDir
    Path folder;

    private OpenJob open() throws Exception {
        return Samples.desk().open(Samples.copy("harbour-clinic", folder.resolve("job")));
    }

    private static List<String> walls(OpenJob job) {
        return job.job().walls().stream().map(WallType::id).toList();
    }

    @Test
    void aWallTypeIsDuplicatedWithAllThatItSaysAndTakenAwayAgain() throws Exception {
        OpenJob job = open();
        String list = Saving.text(job, "job.yaml");
        OpenJob more = Walls.duplicate(job, "W1", "W3", "Stair: north");
        assertEquals(List.of("W1", "W3", "W2"), walls(more));
        assertEquals("Stair: north", more.job().wall("W3").orElseThrow().title());
        assertEquals(more.job().wall("W1").orElseThrow().choices().keySet(), more.job().wall("W3").orElseThrow().choices().keySet());
        assertTrue(Saving.text(more, "walls/W3.yaml").contains("# heavier than the span needs"));
        OpenJob less = Walls.remove(more, "W3");
        assertEquals(List.of("W1", "W2"), walls(less));
        assertFalse(Files.exists(job.folder().resolve("walls/W3.yaml")));
        assertEquals(list, Saving.text(less, "job.yaml"));
    }

    @Test
    void aNewWallTypeHasEverythingToDecide() throws Exception {
        OpenJob more = Walls.add(open(), "W3", "Plinth");
        assertEquals(List.of("W1", "W2", "W3"), walls(more));
        assertTrue(more.checked().findings().stream().anyMatch(finding -> finding.wall().equals("W3")
            && finding.rule().equals("lath.decided")));
    }

    @Test
    void aNameThatIsTakenOrCantBeAFileIsRefusedAndTheLastWallTypeStays() throws Exception {
        OpenJob job = open();
        assertThrows(UnusableInput.class, () -> Walls.add(job, "W2", "Again"));
        assertThrows(UnusableInput.class, () -> Walls.add(job, "../W3", "Out"));
        OpenJob one = Walls.remove(job, "W2");
        assertThrows(UnusableInput.class, () -> Walls.remove(one, "W1"));
    }

    @Test
    void choicesAreMadeTheSameOnOtherWallsAlsoWhereThereIsNone() throws Exception {
        OpenJob job = Saving.undecide(open(), "W1", "mockup");
        OpenJob same = Walls.same(job, "W1", List.of("W2"), List.of("lath", "sealant", "mockup"));
        for (String component : List.of("lath", "sealant")) {
            assertEquals(same.job().wall("W1").orElseThrow().choice(component).orElseThrow().accept(),
                same.job().wall("W2").orElseThrow().choice(component).orElseThrow().accept());
        }
        assertTrue(same.job().wall("W2").orElseThrow().choice("mockup").isEmpty());
    }

    @Test
    void aMeetingIsAddedDescribedAndTakenAway() throws Exception {
        OpenJob job = open();
        String before = Saving.text(job, "walls/W1.yaml");
        OpenJob met = Walls.meet(job, "W1", "base-3", "base");
        OpenJob described = Saving.apply(met, List.of(new Change("W1.base-3.over", "roof"), new Change("W1.base-3.clearance", "2 in")));
        assertTrue(Saving.text(described, "walls/W1.yaml").contains("  base-3: {as: base, over: roof, clearance: 2 in}\n"));
        assertEquals(before, Saving.text(Walls.unmeet(described, "W1", "base-3"), "walls/W1.yaml"));
        assertThrows(UnusableInput.class, () -> Walls.meet(job, "W1", "base-1", "base"));
        assertThrows(UnusableInput.class, () -> Walls.meet(job, "W1", "base 9", "base"));
    }

    @Test
    void whoFixedAChoiceAndWhyAreWrittenAndTakenAway() throws Exception {
        OpenJob job = Walls.remark(open(), "W1", "lath", "because", "the owner's wish, RFI 12");
        assertEquals("the owner's wish, RFI 12", job.job().wall("W1").orElseThrow().choice("lath").orElseThrow().because());
        OpenJob less = Walls.remark(job, "W1", "lath", "because", " ");
        assertEquals("", less.job().wall("W1").orElseThrow().choice("lath").orElseThrow().because());
    }

    private static Finding accepted(OpenJob job) {
        return job.checked().accepted().get(0);
    }

    @Test
    void anAcceptedFindingIsTakenBackAndTheFileIsGoneWithTheLast() throws Exception {
        OpenJob job = Saving.choose(open(), "W1", "lath", List.of("metal-1.75"));
        Finding finding = job.checked().findings().get(0);
        OpenJob saved = Saving.accept(job, new Accepted(finding.rule(), "W1", "tested, on the mock-up", "A. Reviewer", Place.of("")));
        OpenJob back = Saving.takeBack(saved, accepted(saved));
        assertTrue(back.checked().accepted().isEmpty());
        assertTrue(back.checked().findings().contains(finding));
        assertFalse(Files.exists(job.folder().resolve("accepted.yaml")));
    }

    @Test
    void theRegisterOfExceptionsSaysWhatWhyAndWho() throws Exception {
        OpenJob job = Saving.choose(open(), "W1", "lath", List.of("metal-1.75"));
        String rule = job.checked().findings().get(0).rule();
        OpenJob saved = Saving.accept(job, new Accepted(rule, "W1", "tested, on the mock-up", "A. Reviewer", Place.of("")));
        Map<String, String> papers = new java.util.LinkedHashMap<>();
        for (Output output : Outputs.of(saved).exceptions().make()) {
            papers.put(output.name(), new String(output.bytes(), StandardCharsets.UTF_8));
        }
        assertEquals(List.of("exceptions.md", "exceptions.csv", "exceptions.pdf"), List.copyOf(papers.keySet()));
        String says = accepted(saved).says();
        assertTrue(papers.get("exceptions.md").contains(rule + ", wall type W1") && papers.get("exceptions.md").contains(says));
        assertTrue(papers.get("exceptions.md").contains("- Reason: tested, on the mock-up\n- Accepted by: A. Reviewer\n"));
        // RFC 4180: a cell with a comma is quoted
        assertTrue(papers.get("exceptions.csv").contains(",\"tested, on the mock-up\",A. Reviewer,"), papers.get("exceptions.csv"));
        OpenJob mended = Saving.choose(saved, "W1", "lath", List.of("metal-3.4"));
        assertTrue(new String(Outputs.of(mended).exceptions().make().get(1).bytes(), StandardCharsets.UTF_8)
            .contains("Nothing is found now"));
    }
}

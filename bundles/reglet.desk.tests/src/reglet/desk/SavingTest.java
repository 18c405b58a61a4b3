package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Accepted;
import reglet.model.Change;
import reglet.model.Place;
import reglet.model.UnusableInput;

class SavingTest {

    @TempDir
    Path folder;

    private OpenJob open() throws Exception {
        return Samples.desk().open(Samples.copy("harbour-clinic", folder.resolve("job")));
    }

    @Test
    void aChoiceIsSavedAndReadBackAsWhatIfPromised() throws Exception {
        OpenJob job = open();
        OpenJob whatIf = job.choosing("W1", "lath", List.of("metal-1.75"));
        OpenJob saved = Saving.choose(job, "W1", "lath", List.of("metal-1.75"));
        assertEquals(keys(whatIf), keys(saved));
        assertEquals(List.of("metal-1.75"), Samples.desk().open(job.folder()).job().wall("W1").orElseThrow().choice("lath").orElseThrow()
            .accept());
        assertTrue(saved.checked().findings().stream().anyMatch(finding -> finding.component().equals("lath")));
    }

    private static List<String> keys(OpenJob job) {
        return job.checked().findings().stream().map(finding -> finding.key() + " " + finding.says()).toList();
    }

    @Test
    void commentsAndOrderOfTheFileStay() throws Exception {
        OpenJob job = open();
        String before = Saving.text(job, "walls/W1.yaml");
        OpenJob saved = Saving.choose(job, "W1", "lath", List.of("metal-2.5"));
        String after = Saving.text(saved, "walls/W1.yaml");
        assertEquals(before.replace("lath: {accept: [metal-3.4, woven-17]", "lath: {accept: [metal-2.5]"), after);
    }

    @Test
    void aValueThatCannotBeReadIsRefusedAndTheFileIsUntouched() throws Exception {
        OpenJob job = open();
        String before = Saving.text(job, "walls/W1.yaml");
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Saving.set(job, "W1", "scratch_coat", "thickness", "3 psi"));
        assertTrue(refused.getMessage().contains("is a pressure and not a length"), refused.getMessage());
        assertEquals(before, Saving.text(job, "walls/W1.yaml"));
    }

    @Test
    void anAcceptedFindingMovesToTheAcceptedOnes() throws Exception {
        OpenJob job = Saving.choose(open(), "W1", "lath", List.of("metal-1.75"));
        String rule = job.checked().findings().get(0).rule();
        OpenJob saved = Saving.accept(job, new Accepted(rule, "W1", "tested on the mock-up", "A. Reviewer", Place.of("")));
        assertTrue(saved.checked().findings().stream().noneMatch(finding -> finding.rule().equals(rule)));
        assertTrue(saved.checked().accepted().stream().anyMatch(finding -> finding.rule().equals(rule)));
    }

    @Test
    void changesOfFactsAndChoicesAreSavedTogetherAsTheyWouldBeTried() throws Exception {
        OpenJob job = open();
        List<Change> changes = List.of(new Change("W1.lath", "metal-2.5"), new Change("W1.wall.height", "20 ft"),
            new Change("W1.base-1.clearance", "3 in"), new Change("site.climate", "dry"));
        assertEquals(List.of("walls/W1.yaml", "job.yaml"), Saving.files(job, changes));
        OpenJob saved = Saving.apply(job, changes);
        assertEquals(keys(job.after(changes)), keys(saved));
        assertTrue(Saving.text(saved, "walls/W1.yaml").contains("base-1: {as: base, over: paving, clearance: 3 in, below_plate"));
        assertTrue(Saving.text(saved, "job.yaml").contains("climate: dry"));
    }

    @Test
    void whenOneChangeIsRefusedNoneIsMade() throws Exception {
        OpenJob job = open();
        String wall = Saving.text(job, "walls/W1.yaml");
        String site = Saving.text(job, "job.yaml");
        assertThrows(UnusableInput.class, () -> Saving.apply(job, List.of(new Change("W1.lath", "metal-2.5"),
            new Change("site.climate", "on the moon"))));
        assertEquals(wall, Saving.text(job, "walls/W1.yaml"));
        assertEquals(site, Saving.text(job, "job.yaml"));
    }

    @Test
    void aValueSetOverAnOptionIsTakenAwayAgain() throws Exception {
        OpenJob job = open();
        OpenJob set = Saving.set(job, "W1", "lath", "weight", "4 lb/yd2");
        OpenJob gone = Saving.apply(set, List.of(new Change("W1.lath.weight", "")));
        assertTrue(gone.job().wall("W1").orElseThrow().choice("lath").orElseThrow().values().isEmpty());
        assertEquals(keys(job), keys(gone));
    }

    @Test
    void anUndecidedComponentIsAGap() throws Exception {
        OpenJob job = Saving.undecide(open(), "W1", "lath");
        assertTrue(job.checked().findings().stream().anyMatch(finding -> finding.rule().equals("lath.decided")));
    }

    @Test
    void anOptionWithAnotherValueIsNotSpecifiedByItsTitleAlone() throws Exception {
        OpenJob job = Saving.set(open(), "W2", "unit_joint", "width", "1/4 in");
        String text = job.section("04 73 00").paragraphs().stream().map(paragraph -> paragraph.plain()).reduce("", (all, one) -> all
            + "\n" + one);
        assertTrue(text.contains("joints of 3/8 in pointed with type N mortar, changed to the values required here"), text);
        assertTrue(text.contains("at most 1/4 in"), text);
    }
}

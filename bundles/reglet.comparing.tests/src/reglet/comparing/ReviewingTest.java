package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Candidates;
import reglet.model.Compare;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.Resubmittal;

/** Candidates side by side, and a resubmittal beside the last. */
class ReviewingTest {
    private static final Property KIND = Sample.property("kind", Sample.value("rib"), Compare.EXACTLY, "", Evidence.PRODUCT_DATA,
        "expanded metal", "rib");
    private static final Property WEIGHT = Sample.property("weight", Sample.value("2.5 lb/yd2"), Compare.AT_LEAST, "",
        Evidence.PRODUCT_DATA);

    private static Sample sample() {
        return new Sample().component("lath", List.of(KIND, WEIGHT),
                Sample.option("light", "kind", "expanded metal", "weight", "2.5 lb/yd2"), Sample.option("rib", "kind", "rib"))
            .wall("W1", Map.of("lath", List.of("light"))).wall("W2", Map.of("lath", List.of("rib")))
            .product("good", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight", "3.4 lb/yd2", ""))
            .product("thin", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight", "1.9 lb/yd2", ""))
            .product("bare", "lath", Sample.sheet("lath.kind", "expanded metal", ""))
            .product("ribbed", "lath", Sample.sheet("lath.kind", "rib", ""));
    }

    @Test
    void eachCandidateStandsBesideTheOthersOnEveryWall() {
        Assembly assembly = sample().assembly();
        Candidates candidates = Reviewing.candidates(assembly, assembly.job().products(), requirement -> "");
        assertEquals(List.of("good", "thin", "bare", "ribbed"), candidates.products());
        assertEquals(List.of("W1 lath.kind", "W1 lath.weight", "W2 lath.kind"),
            candidates.lines().stream().map(line -> line.wall() + " " + line.property()).toList());
        assertEquals(List.of(Result.MEETS, Result.FALLS_SHORT, Result.NOT_SHOWN, Result.NOT_SHOWN),
            candidates.products().stream().map(id -> candidates.lines().get(1).rows().get(id).result()).toList());
        assertFalse(candidates.complies("good"), "no lath fits both walls");
        assertEquals(2, candidates.count("good", Result.MEETS));
    }

    @Test
    void aCandidateThatMeetsAllComplies() {
        Sample sample = sample();
        sample.walls.remove(1);
        Assembly assembly = sample.assembly();
        Candidates candidates = Reviewing.candidates(assembly, assembly.job().products(), requirement -> "");
        assertEquals(List.of("good"), candidates.products().stream().filter(candidates::complies).toList());
    }

    private static Comparison submitted(String product) {
        Sample sample = sample();
        sample.walls.remove(1);
        return sample.compare(List.of(), product);
    }

    private static List<String> kinds(String last, String now) {
        return Reviewing.since(submitted(last), submitted(now)).changes().stream().map(change -> change.property() + " " + change.kind()
            .text()).toList();
    }

    @Test
    void aResubmittalTellsWhatIsMendedLostAndStillOpen() {
        assertEquals(List.of("lath.kind same", "lath.weight mended"), kinds("thin", "good"));
        assertEquals(List.of("lath.kind same", "lath.weight lost"), kinds("good", "bare"));
        assertEquals(List.of("lath.kind same", "lath.weight still open"), kinds("thin", "bare"));
        assertTrue(Reviewing.since(submitted("thin"), submitted("good")).isSettled());
        assertFalse(Reviewing.since(submitted("good"), submitted("thin")).isSettled());
    }

    @Test
    void anotherValueThatMeetsTooIsAChange() {
        Sample sample = sample().product("heavy", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight",
            "4 lb/yd2", ""));
        sample.walls.remove(1);
        Resubmittal resubmittal = Reviewing.since(sample.compare(List.of(), "good"), sample.compare(List.of(), "heavy"));
        assertEquals("changed", resubmittal.changes().get(1).kind().text());
    }

    @Test
    void whatIsNoLongerShownAtAllIsDropped() {
        Comparison nothing = new Comparison("04-73-00-02", List.of());
        Resubmittal resubmittal = Reviewing.since(submitted("good"), nothing);
        assertEquals(List.of("dropped", "dropped"), resubmittal.changes().stream().map(change -> change.kind().text()).toList());
        assertEquals(List.of("added", "added"), Reviewing.since(nothing, submitted("good")).changes().stream()
            .map(change -> change.kind().text()).toList());
        assertFalse(resubmittal.isSettled());
    }
}

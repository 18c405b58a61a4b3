package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Change;
import reglet.model.Checked;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.Remedies;
import reglet.model.Remedy;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.model.WhatIf;

/** A remedy clears its finding and adds none; a kept check is worth a new one. */
class RemediesTest {

    private static Job sample(String name) throws Exception {
        return SampleJob.of(name).read(RealPack.PACK);
    }

    private static Set<String> keys(Checked checked) {
        return checked.findings().stream().map(Finding::key).collect(Collectors.toSet());
    }

    /** Whether changes clear a finding and add none. */
    private static boolean mends(Check check, Finding finding, List<Change> changes) throws UnusableInput {
        Set<String> after = keys(RealPack.ENGINE.check(check.after(changes).job()));
        return !after.contains(finding.key()) && keys(check.checked()).containsAll(after);
    }

    private static void sound(Check check, Finding finding) throws UnusableInput {
        Remedies remedies = check.remedies(finding);
        assertTrue(remedies.all().isEmpty() != remedies.none().isEmpty(), finding.key() + " has remedies or a reason why not");
        for (Remedy remedy : remedies.all()) {
            assertTrue(mends(check, finding, remedy.changes()), finding.key() + " by " + remedy.text());
            assertTrue(remedy.clears().contains(finding.key()), remedy.text());
            for (Change left : remedy.changes()) {
                List<Change> fewer = new ArrayList<>(remedy.changes());
                fewer.remove(left);
                // a value set after its option can't be made without the option
                assertFalse(!fewer.isEmpty() && mends(check, finding, fewer), remedy.text() + " does as well without " + left.text());
            }
        }
    }

    @Test
    void everyPlantedMistakeOfTheSampleHasARemedyThatClearsItAndAddsNone() throws Exception {
        Check check = RealPack.ENGINE.open(sample("orchard-row"));
        for (Finding finding : check.checked().findings()) {
            sound(check, finding);
            assertFalse(check.remedies(finding).all().isEmpty(), finding.key());
        }
    }

    /** The fault of every rule's mutant: one of each rule of the pack. */
    @Test
    void theFaultOfEveryRuleHasASoundRemedyOrAReasonWhyThereIsNone() throws Exception {
        Map<String, String> without = new TreeMap<>();
        for (String rule : Mutants.ALL.keySet()) {
            Check check = RealPack.ENGINE.open(Mutants.ALL.get(rule).job().read(RealPack.PACK));
            for (Finding finding : check.checked().findings()) {
                sound(check, finding);
                Remedies remedies = check.remedies(finding);
                if (remedies.all().isEmpty()) {
                    without.put(finding.rule(), remedies.none());
                }
            }
        }
        // facts of the world, such as a climate that the map doesn't have, are for a person to state right
        assertTrue(without.size() <= Mutants.ALL.size() / 10, without.toString());
        assertTrue(without.values().stream().filter(none -> none.startsWith("No change")).count() <= Mutants.ALL.size() / 20,
            without.toString());
    }

    @Test
    void theSmallestRemedyComesFirstAndOfEquallySmallOnesTheCheapest() throws Exception {
        Check check = RealPack.ENGINE.open(sample("orchard-row"));
        for (Finding finding : check.checked().findings()) {
            List<Remedy> all = check.remedies(finding).all();
            for (int i = 1; i < all.size(); i++) {
                int smaller = Integer.compare(all.get(i - 1).changes().size(), all.get(i).changes().size());
                assertTrue(smaller < 0 || smaller == 0 && all.get(i - 1).cost() <= all.get(i).cost(), all.toString());
            }
        }
    }

    /** Light lath over wide studs, ASTM C1063's span table: closer studs or a lath that spans them. */
    @Test
    void aLathTooLightForItsSpanIsMendedByAnotherLathOrCloserStuds() throws Exception {
        Check check = RealPack.ENGINE.open(sample("orchard-row"));
        Finding light = check.checked().findings().stream().filter(finding -> finding.rule().equals("lath.weight")).findFirst()
            .orElseThrow();
        Set<String> first = check.remedies(light).all().stream().map(remedy -> remedy.changes().get(0).set()).collect(Collectors.toSet());
        assertTrue(first.contains("W1.lath") && (first.contains("W1.framing") || first.contains("W1.framing.spacing")), first.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void aCheckKeptAndChangedFindsWhatANewOneFinds(String name) throws Exception {
        Check check = RealPack.ENGINE.open(sample(name));
        Check walked = check;
        for (WallType wall : check.job().walls()) {
            for (Component component : RealPack.PACK.components()) {
                for (Option option : component.options()) {
                    List<Change> change = List.of(new Change(wall.id() + "." + component.id(), option.id()));
                    Check after = check.after(change);
                    assertEquals(RealPack.ENGINE.check(after.job()), after.checked(), change.toString());
                    walked = walked.after(change);
                }
                assertEquals(RealPack.ENGINE.check(walked.job()), walked.checked(), component.id());
            }
        }
        for (Change change : List.of(new Change("site.climate", "marine"), new Change("code.edition", "2018"),
            new Change("W1.wall.cavity", "none"), new Change("W1.base-1.clearance", "1 in"), new Change("W1.mat", ""))) {
            Check after = check.after(List.of(change));
            assertEquals(RealPack.ENGINE.check(after.job()), after.checked(), change.text());
        }
    }

    @Test
    void whatEveryOptionNotTakenWouldDoIsWhatChoosingItDoes() throws Exception {
        Check check = RealPack.ENGINE.open(sample("harbour-clinic"));
        Set<String> before = keys(check.checked());
        int told = 0;
        for (Component component : RealPack.PACK.components()) {
            for (WhatIf one : check.whatIf("W1", component.id())) {
                Set<String> after = keys(check.after(List.of(new Change("W1." + component.id(), one.option()))).checked());
                assertEquals(after.stream().filter(key -> !before.contains(key)).collect(Collectors.toSet()),
                    one.brings().stream().map(Finding::key).collect(Collectors.toSet()), one.option());
                told += one.fits() ? 0 : 1;
            }
        }
        assertTrue(told > 20, "only " + told + " options would not fit");
    }

    @Test
    void aChangeThatCannotBeMadeIsAnsweredWithWhatThereIs() throws Exception {
        Check check = RealPack.ENGINE.open(sample("harbour-clinic"));
        Map<Change, String> wrong = Map.of(new Change("W1.lat", "woven-17"), "did you mean 'lath'",
            new Change("W1.lath", "woven"), "woven-17, woven-18", new Change("W9.lath", "woven-17"), "no wall type or fact \"W9\"",
            new Change("W1.base-1.clearance", "4 psf"), "expected a value such as 1 in", new Change("site.climate", "wet"),
                "dry, moist, marine",
            new Change("W1.insulation.thickness", "1 in"), "choose an option before setting a value");
        wrong.forEach((change, says) -> {
            UnusableInput refused = assertThrows(UnusableInput.class, () -> check.after(List.of(change)));
            assertTrue(refused.getMessage().contains(says), refused.getMessage());
        });
    }
}

package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.Proposal;
import reglet.model.Proposal.Fixed;
import reglet.model.UnusableInput;
import reglet.model.WallType;

/** From a bare description to a wall that works, the cheapest there is; or to the choices that can't stand together. */
class ProposalsTest {

    /** The job with none but some of its choices. */
    private static Job bare(Job job, Set<String> kept) {
        Job bare = job;
        for (WallType wall : job.walls()) {
            Map<String, Choice> choices = new LinkedHashMap<>(wall.choices());
            choices.keySet().retainAll(kept);
            bare = bare.with(new WallType(wall.id(), wall.title(), wall.facts(), wall.meetings(), choices, wall.at()));
        }
        return bare;
    }

    private static Job sample(String name) throws Exception {
        return SampleJob.of(name).read(RealPack.PACK);
    }

    /** The job with a proposal's picks as choices. */
    private static Check taken(Check check, Proposal proposal) throws UnusableInput {
        List<Change> changes = new ArrayList<>();
        proposal.picks().forEach((wall, picks) -> picks.forEach((component, pick) -> changes.add(new Change(wall + "." + component,
            pick.option()))));
        return check.after(changes);
    }

    private static void worksFromNothing(Check check) throws UnusableInput {
        Proposal proposal = check.propose();
        assertTrue(proposal.stands(), () -> "can't stand together: " + proposal.together());
        List<Finding> after = taken(check, proposal).checked().findings();
        assertEquals(List.of(), after.stream().filter(finding -> finding.kind() != Finding.Kind.CAUTION).map(Finding::key).toList());
        assertTrue(proposal.optimal());
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library"})
    void fromSiteFramingAndConditionsAloneAWallWithoutConflictOrGapIsProposed(String name) throws Exception {
        worksFromNothing(RealPack.ENGINE.open(bare(sample(name), Set.of("framing"))));
    }

    /** Twelve bare descriptions of other codes, editions, climates, framings and purposes of the cavity. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "harbour-clinic | wood-16 | code.edition=2024",
        "harbour-clinic | wood-16 | code.edition=2018; site.zone=3",
        "harbour-clinic | wood-16 | code.name=IRC; code.edition=2018",
        "harbour-clinic | wood-16-fir | site.zone=6; site.freezing=severe",
        "harbour-clinic | wood-16 | W1.wall.cavity=drained; W2.wall.cavity=drained",
        "harbour-clinic | wood-16 | W1.wall.barrier=two 60-minute plies; W2.wall.barrier=two 60-minute plies",
        "harbour-clinic | wood-16 | W1.wall.barrier=one ply and drained space; W2.wall.barrier=one ply and drained space",
        "harbour-clinic | wood-16-treated | site.climate=moist",
        "harbour-clinic | wood-16 | site.coast=yes",
        "mesa-library | steel-16 | code.edition=2021",
        "mesa-library | steel-16-33 | code.edition=2018",
        "mesa-library | steel-16 | site.freezing=moderate; site.driving_rain=severe"})
    void otherCodesClimatesFramingsAndCavitiesGetAWallTooOrAReason(String name, String framing, String facts) throws Exception {
        List<Change> changes = new ArrayList<>();
        for (String fact : facts.split(";")) {
            changes.add(new Change(fact.substring(0, fact.indexOf('=')).strip(), fact.substring(fact.indexOf('=') + 1).strip()));
        }
        Job job = bare(sample(name), Set.of());
        job.walls().forEach(wall -> changes.add(new Change(wall.id() + ".framing", framing)));
        worksFromNothing(RealPack.ENGINE.open(job).after(changes));
    }

    /** Every way to fill some components of the sample, the others kept: none that stands is cheaper than what is proposed. */
    @ParameterizedTest
    @ValueSource(strings = {"lath lath_fastener mat", "sealant backer_rod flexible_flashing", "inner_ply outer_ply",
        "veneer setting_bed unit_joint",
        "base_screed casing_bead top_vent"})
    void theOptimumIsWhatTryingEverythingFinds(String free) throws Exception {
        Job job = sample("harbour-clinic");
        Job one = new Job(job.title(), job.note(), job.pack(), job.facts(), List.of(job.walls().get(1)), job.sections(), job.changes(),
            job.accepted(), job.products(), job.submittals(), job.register(), job.questions(), job.at());
        Set<String> components = new TreeSet<>(List.of(free.split(" ")));
        Set<String> kept = RealPack.PACK.components().stream().map(Component::id).filter(id -> !components.contains(id))
            .collect(Collectors.toSet());
        Check check = RealPack.ENGINE.open(bare(one, kept));
        Proposal proposal = check.propose();
        assertTrue(proposal.stands() && proposal.optimal());
        assertEquals(cheapest(check, List.copyOf(components)), cost(taken(check, proposal)));
    }

    private static int cheapest(Check check, List<String> components) throws UnusableInput {
        if (components.isEmpty()) {
            return check.checked().isClean() ? cost(check) : Integer.MAX_VALUE;
        }
        int best = Integer.MAX_VALUE;
        Component component = RealPack.PACK.component(components.get(0)).orElseThrow();
        List<String> members = new ArrayList<>(component.options().stream().map(Option::id).toList());
        members.add("");
        for (String member : members) {
            Check next = check.after(List.of(new Change("W2." + component.id(), member)));
            best = Math.min(best, cheapest(next, components.subList(1, components.size())));
        }
        return best;
    }

    /** Cost classes of all choices, and two for each caution. */
    private static int cost(Check check) {
        int choices = check.job().walls().stream().flatMap(wall -> wall.choices().values().stream()).mapToInt(choice -> choice.accept()
            .stream()
            .mapToInt(option -> RealPack.PACK.component(choice.component()).orElseThrow().option(option).orElseThrow().cost()).max()
            .orElse(0))
            .sum();
        return choices + 2 * (int) check.checked().findings().stream().filter(finding -> finding.kind() == Finding.Kind.CAUTION).count();
    }

    @Test
    void aChoiceThatNoWallCanHaveIsNamedAlone() throws Exception {
        Proposal proposal = RealPack.ENGINE.open(sample("orchard-row")).propose();
        assertEquals(List.of(new Fixed("W1", "veneer", "stone-large")), proposal.together());
        assertTrue(proposal.smallest());
    }

    /** Random small packs: the choices named are as few as trying every set of them finds. */
    @Test
    void theChoicesThatCannotStandTogetherAreAsFewAsTryingEverySetFinds() throws Exception {
        Random random = new Random(41);
        int impossible = 0;
        for (int trial = 0; trial < 40; trial++) {
            SmallPack pack = new SmallPack();
            for (int rule = 0; rule < 5; rule++) {
                String[] facts = {"framing.option == \"close\"", "framing.option == \"wide\"", "mat.option == \"thin\"",
                    "mat.option == \"thick\"",
                    "lath.option == \"light\"", "lath.option == \"heavy\"", "lath.option == \"wire\""};
                pack.rule("r" + rule, "each: wall", "", "!(" + facts[random.nextInt(7)] + " && " + facts[random.nextInt(7)] + ")");
            }
            Engine engine = pack.engine();
            Job job = pack.job();
            Set<Set<String>> bad = new java.util.HashSet<>();
            List<String> all = List.of("framing", "mat", "lath");
            for (int set = 0; set < 8; set++) {
                Set<String> fixed = new TreeSet<>();
                for (int i = 0; i < 3; i++) {
                    if ((set >> i & 1) == 1) {
                        fixed.add(all.get(i));
                    }
                }
                if (!possible(engine, bare(job, fixed), all)) {
                    bad.add(fixed);
                }
            }
            Proposal proposal = engine.open(job).propose();
            assertEquals(bad.isEmpty(), proposal.stands(), "trial " + trial);
            if (!bad.isEmpty()) {
                impossible++;
                int least = bad.stream().mapToInt(Set::size).min().orElseThrow();
                Set<String> named = proposal.together().stream().map(Fixed::component).collect(Collectors.toCollection(TreeSet::new));
                assertEquals(least, named.size(), "trial " + trial + ": " + named + " of " + bad);
                assertTrue(bad.contains(named), named.toString());
                assertTrue(proposal.smallest());
            }
        }
        assertTrue(impossible > 5 && impossible < 40, impossible + " of the packs are impossible");
    }

    private static boolean possible(Engine engine, Job job, List<String> components) throws UnusableInput {
        Check check = engine.open(job);
        return fill(engine, check, components.stream().filter(component -> job.walls().get(0).choice(component).isEmpty()).toList());
    }

    private static boolean fill(Engine engine, Check check, List<String> components) throws UnusableInput {
        if (components.isEmpty()) {
            return check.checked().isClean();
        }
        for (Option option : engine.pack().component(components.get(0)).orElseThrow().options()) {
            if (fill(engine, check.after(List.of(new Change("W1." + components.get(0), option.id()))), components.subList(1,
                components.size()))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyPickSaysWhichRulesDecidedIt() throws Exception {
        Proposal proposal = RealPack.ENGINE.open(bare(sample("mesa-library"), Set.of("framing", "sheathing"))).propose();
        assertTrue(proposal.picks().get("W1").get("lath").because().contains("lath.light")
            || proposal.picks().get("W1").get("lath").because().contains("lath.weight"), proposal.picks().toString());
        assertFalse(proposal.picks().get("W1").get("lath_fastener").because().isEmpty());
    }

    @Test
    void theSameJobGetsTheSameProposal() throws Exception {
        Job job = bare(sample("harbour-clinic"), Set.of("framing"));
        assertEquals(RealPack.ENGINE.open(job).propose(), RealPack.ENGINE.open(job).propose());
    }
}

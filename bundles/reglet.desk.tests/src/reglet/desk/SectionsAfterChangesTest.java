package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.Stated;
import reglet.model.UnusableInput;
import reglet.model.WallType;

/** What is taken over from the draft before a change is what drafting from nothing prints. */
class SectionsAfterChangesTest extends ThreeAlternates {
    private static final int STEPS = 32;

    /** The job with something else in it: a choice, a fact of a wall type or of the job, or something it meets. */
    private static Job changed(OpenJob open, Random random) {
        Job job = open.job();
        WallType wall = job.walls().get(random.nextInt(job.walls().size()));
        return switch (random.nextInt(6)) {
            case 0 -> job.with(new WallType(wall.id(), wall.title(), doubled(wall.facts(), random), wall.meetings(), wall.choices(),
                wall.at()));
            case 1 -> {
                List<Meeting> meetings = new ArrayList<>(wall.meetings());
                Collections.rotate(meetings, 1);
                yield job.with(new WallType(wall.id(), wall.title(), wall.facts(), meetings.subList(0, Math.max(1, meetings.size() - 1)),
                    wall.choices(), wall.at()));
            }
            case 2 -> {
                Map<String, Map<String, Stated>> facts = new LinkedHashMap<>(job.facts());
                List<String> subjects = List.copyOf(facts.keySet());
                facts.computeIfPresent(subjects.get(random.nextInt(subjects.size())), (subject, old) -> doubled(old, random));
                yield job.with(facts);
            }
            case 3 -> {
                List<Requirement> asked = open.assembly().requirements().stream().filter(one -> one.wall().equals(wall.id())
                    && one.value() instanceof Quantity).toList();
                Requirement one = asked.get(random.nextInt(asked.size()));
                Choice choice = wall.choice(one.component()).orElseThrow();
                Map<String, Stated> values = new LinkedHashMap<>(choice.values());
                values.put(one.property().name(), doubled(new Stated(one.value(), one.at())));
                yield job.with(wall.with(choice.setting(values)));
            }
            default -> {
                List<String> chosen = List.copyOf(wall.choices().keySet());
                Component component = open.pack().component(chosen.get(random.nextInt(chosen.size()))).orElseThrow();
                List<String> options = new ArrayList<>(component.options().stream().map(Option::id).toList());
                Collections.shuffle(options, random);
                yield open.choosing(wall.id(), component.id(), options.subList(0, Math.min(options.size(), 1 + random.nextInt(2)))).job();
            }
        };
    }

    private static Map<String, Stated> doubled(Map<String, Stated> facts, Random random) {
        Map<String, Stated> changed = new LinkedHashMap<>(facts);
        List<String> amounts = facts.keySet().stream().filter(name -> facts.get(name).value() instanceof Quantity).toList();
        if (!amounts.isEmpty()) {
            changed.computeIfPresent(amounts.get(random.nextInt(amounts.size())), (name, stated) -> doubled(stated));
        }
        return changed;
    }

    private static Stated doubled(Stated stated) {
        Quantity amount = (Quantity) stated.value();
        return new Stated(Quantity.of(2 * amount.in(amount.unit()), amount.unit()), stated.at());
    }

    /** The sections as printed, or what keeps them from being printed. */
    private static List<Object> drafted(OpenJob job) {
        try {
            return List.copyOf(job.sections());
        } catch (UnusableInput unprintable) {
            return List.copyOf(unprintable.problems().stream().map(Problem::what).toList());
        }
    }

    private static Desk another(Path cache) throws Exception {
        return new Desk(new Shelf(Shelf.folders(List.of(Samples.PACK))), cache);
    }

    private void compare(Path folder, Path cache, long seed) throws Exception {
        Random random = new Random(seed);
        OpenJob open = Samples.desk().open(folder);
        List<Job> jobs = new ArrayList<>();
        List<List<Object>> drafts = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            jobs.add(open.job());
            drafts.add(drafted(open));
            open = open.with(changed(open, random));
        }
        // texts are taken over within one pack alone, so that drafts of two packs by turns take over nothing
        OpenJob other = another(cache).open(folder);
        int printed = 0;
        for (int step = 0; step < STEPS; step++) {
            drafted(open.with(open.job()));
            assertEquals(drafted(other.with(jobs.get(step))), drafts.get(step), folder.getFileName() + ", step " + step);
            printed += drafts.get(step).get(0) instanceof SectionDocument ? 1 : 0;
        }
        assertTrue(printed > STEPS / 2, "only " + printed + " of " + STEPS + " could be printed");
    }

    @Test
    void aSectionAfterAChangeReadsAsIfItHadBeenDraftedFromNothing() throws Exception {
        Path cache = folder.resolve("cache");
        for (String name : Samples.JOBS) {
            compare(Samples.job(name), cache, 47);
        }
    }

    @Test
    void aSectionWithOfferedAndAcceptedAlternatesReadsSoToo() throws Exception {
        compare(folder, folder.resolve("cache"), 73);
        taken(1, "yes");
        compare(folder, folder.resolve("cache"), 7300);
    }
}

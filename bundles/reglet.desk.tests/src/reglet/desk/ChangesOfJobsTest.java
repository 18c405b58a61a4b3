package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.comparing.Changing;
import reglet.drafting.Docx;
import reglet.drafting.MarkedDocx;
import reglet.model.Component;
import reglet.model.IssueChanges;
import reglet.model.Option;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Sort;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.UnusableInput;
import reglet.model.WallType;

/** The changes between drafts of the sample jobs, whose choices are changed at random from fixed seeds. */
class ChangesOfJobsTest {
    private static final int PAIRS = 16;

    /** A job with up to eight choices changed. */
    private static OpenJob changed(OpenJob job, Random random) {
        OpenJob changed = job;
        int changes = 1 + random.nextInt(8);
        for (int i = 0; i < changes; i++) {
            List<WallType> walls = changed.job().walls();
            WallType wall = walls.get(random.nextInt(walls.size()));
            List<String> components = new ArrayList<>(wall.choices().keySet());
            Component component = job.pack().component(components.get(random.nextInt(components.size()))).orElseThrow();
            List<String> options = new ArrayList<>(component.options().stream().map(Option::id).toList());
            Collections.shuffle(options, random);
            changed = changed.choosing(wall.id(), component.id(), options.subList(0, Math.min(options.size(), 1 + random.nextInt(2))));
        }
        return changed;
    }

    /** What differs in each section; nothing when some of the choices together can't be drafted, which other tests look at. */
    private static List<SectionChanges> between(OpenJob before, OpenJob after) {
        try {
            List<SectionChanges> changes = new ArrayList<>();
            for (String section : before.job().sections()) {
                changes.add(Changing.between(Optional.of(before.section(section)), Optional.of(after.section(section))));
            }
            return changes;
        } catch (UnusableInput unprintable) {
            return List.of();
        }
    }

    private static List<String> paper(SectionDocument section) throws Exception {
        List<String> paragraphs = new ArrayList<>(Tracked.taken(Docx.of(section)));
        assertEquals(paragraphs, Tracked.refused(Docx.of(section)));
        return paragraphs;
    }

    @Test
    void takingAllTrackedChangesGivesTheLaterSectionAndRefusingThemTheEarlier() throws Exception {
        Random random = new Random(4707);
        int sections = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            OpenJob job = Samples.open(Samples.JOBS.get(pair % Samples.JOBS.size()));
            for (SectionChanges section : between(changed(job, random), changed(job, random))) {
                byte[] docx = MarkedDocx.of(section, "Marks", Optional.empty());
                List<String> taken = new ArrayList<>(Tracked.taken(docx));
                List<String> refused = new ArrayList<>(Tracked.refused(docx));
                // the paper's own last line
                assertEquals("JobNote||Marks.", taken.remove(taken.size() - 1));
                assertEquals("JobNote||Marks.", refused.remove(refused.size() - 1));
                assertEquals(String.join("\n", paper(section.after().orElseThrow())), String.join("\n", taken), "pair " + pair);
                assertEquals(String.join("\n", paper(section.before().orElseThrow())), String.join("\n", refused), "pair " + pair);
                sections += section.provisions().isEmpty() ? 0 : 1;
            }
        }
        assertTrue(sections > PAIRS, "only " + sections + " sections differ");
    }

    @Test
    void everyChangeIsOneOfAParagraphWhoseTextOrPlaceDiffersAndNoneIsMissed() throws Exception {
        Random random = new Random(815);
        for (int pair = 0; pair < PAIRS; pair++) {
            OpenJob job = Samples.open(Samples.JOBS.get(pair % Samples.JOBS.size()));
            for (SectionChanges section : between(changed(job, random), changed(job, random))) {
                Map<String, String> before = texts(section.before().orElseThrow());
                Map<String, String> after = texts(section.after().orElseThrow());
                Set<String> told = new HashSet<>();
                section.provisions().forEach(line -> {
                    line.before().ifPresent(side -> told.add("- " + side.id()));
                    line.after().ifPresent(side -> told.add("+ " + side.id()));
                });
                before.forEach((id, text) -> assertTrue(told.contains("- " + id) || stands(id, text, after), "- " + id));
                after.forEach((id, text) -> assertTrue(told.contains("+ " + id) || stands(id, text, before), "+ " + id));
                section.provisions().stream().filter(line -> line.kind() != Kind.MOVED && line.side().sort() == Sort.PARAGRAPH)
                    .forEach(line -> assertNotEquals(line.before().map(side -> before.get(side.id())),
                        line.after().map(side -> after.get(side.id())), line.side().id()));
            }
        }
    }

    /** Whether a draft has the same text under this id, or for other walls or alternatives of the same clause. */
    private static boolean stands(String id, String text, Map<String, String> draft) {
        String stem = id.replaceFirst("[@~][^/]*", "");
        return draft.entrySet().stream().anyMatch(other -> other.getKey().replaceFirst("[@~][^/]*", "").equals(stem)
            && other.getValue().equals(text));
    }

    /** Texts by id, where a reference stands as what it leads to. */
    private static Map<String, String> texts(SectionDocument section) {
        return section.paragraphs().stream().collect(Collectors.toMap(Paragraph::id, paragraph -> paragraph.text().stream()
            .map(span -> span instanceof SectionDocument.CrossReference reference ? "{" + reference.target() + "}"
                : span instanceof SectionDocument.Strong ? "*" + span.text() : span.text()).collect(Collectors.joining())));
    }

    @Test
    void aJobDoesNotDifferFromItself() throws Exception {
        for (String name : Samples.JOBS) {
            List<SectionChanges> changes = between(Samples.open(name), Samples.open(name));
            assertFalse(changes.isEmpty());
            changes.forEach(section -> section.lines().forEach(line -> assertEquals(Kind.SAME, line.kind(), line.side().plain())));
        }
    }

    @Test
    void theSameChangesMakeTheSameBytes() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        OpenJob after = job.choosing("W1", "lath", List.of("metal-3.4"));
        IssueChanges changes = ChangePapers.between(Issues.present(job), Issues.present(after));
        assertFalse(changes.isEmpty());
        List<Output> once = ChangePapers.of(changes, "");
        List<Output> twice = ChangePapers.of(ChangePapers.between(Issues.present(Samples.open("harbour-clinic")),
            Issues.present(after)), "");
        assertEquals(once.size(), twice.size());
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(once.get(i).bytes(), twice.get(i).bytes(), once.get(i).name());
        }
    }
}

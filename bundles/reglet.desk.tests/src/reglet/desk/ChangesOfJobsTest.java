package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import reglet.comparing.Changing;
import reglet.drafting.Docx;
import reglet.drafting.MarkedDocx;
import reglet.model.Component;
import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.Job;
import reglet.model.Layout;
import reglet.model.Office;
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
        List<Output> once = ChangePapers.of(changes, "", Office.none());
        List<Output> twice = ChangePapers.of(ChangePapers.between(Issues.present(Samples.open("harbour-clinic")),
            Issues.present(after)), "", Office.none());
        assertEquals(once.size(), twice.size());
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(once.get(i).bytes(), twice.get(i).bytes(), once.get(i).name());
        }
    }

    @Test
    void anOfficesPaperLetterheadAndTypeAreThoseOfThePapersOfChangesToo() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        IssueChanges changes = ChangePapers.between(Issues.present(job), Issues.present(job.choosing("W1", "lath", List.of("metal-3.4"))));
        Office office = Offices.find(job.folder(), Optional.of(Samples.ROOT.resolve("sample-specs/office")));
        Office a4 = new Office(office.folder(), office.name(), office.address(), office.letterhead(), Office.Paper.A4, office.fonts(),
            office.templates());
        List<Output> papers = ChangePapers.of(changes, "", a4);
        assertEquals(List.of("changes.md", "changes.docx", "changes.pdf", "changes.json", "04-73-00-marked.md", "04-73-00-marked.docx",
            "04-73-00-marked.pdf"), papers.stream().map(Output::name).toList());
        for (Output paper : papers) {
            if (paper.name().endsWith(".pdf")) {
                try (PDDocument pdf = Loader.loadPDF(paper.bytes())) {
                    // A4 is 210 by 297 mm (ISO 216), in points of 1/72 in
                    assertEquals(210 / 25.4 * 72, pdf.getPage(0).getMediaBox().getWidth(), 0.5);
                    assertEquals(297 / 25.4 * 72, pdf.getPage(0).getMediaBox().getHeight(), 0.5);
                    assertTrue(new PDFTextStripper().getText(pdf).contains(office.name()));
                    assertTrue(pdf.getPage(0).getResources().getXObjectNames().iterator().hasNext(), "the letterhead's picture");
                }
            } else if (paper.name().endsWith(".docx")) {
                String body = "";
                int pictures = 0;
                try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(paper.bytes()))) {
                    for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                        body = entry.getName().equals("word/document.xml") ? new String(zip.readAllBytes(), StandardCharsets.UTF_8) : body;
                        pictures += entry.getName().startsWith("word/media/") ? 1 : 0;
                    }
                }
                assertTrue(body.contains("w:w=\"11906\""), body);
                assertEquals(1, pictures);
                assertTrue(body.indexOf("<w:drawing>") > 0 && body.indexOf("<w:drawing>") < body.indexOf(office.name())
                    && body.indexOf(office.name()) < body.indexOf("SectionTitle"), body);
            }
        }
    }

    @Test
    void cautionsThatComeAndGoAreToldAndTheirNumbersAreNot() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Issue before = Issues.present(job);
        SectionDocument old = before.sections().get(0);
        List<String> cautions = new ArrayList<>(List.of("Lift bags by two.", "To be confirmed: Paragraph 3.6.A.1, lap, at least 1 in."));
        Issue earlier = with(before, cautions);
        cautions.set(1, "To be confirmed: Paragraph 3.7.B, lap, at least 1 in.");
        assertTrue(with(before, cautions).sections().get(0).cautions().size() == 2);
        assertTrue(ChangePapers.between(earlier, with(before, cautions)).sections().get(0).cautions().isEmpty());
        cautions.set(0, "Fence off what falls.");
        cautions.add("Fall protection above 6 ft.");
        IssueChanges changes = ChangePapers.between(earlier, with(before, cautions));
        Map<String, String> texts = ChangePapers.of(changes, "", Office.none()).stream().filter(one -> one.name().matches(".*(md|json)"))
            .collect(Collectors.toMap(Output::name, one -> new String(one.bytes(), StandardCharsets.UTF_8)));
        assertTrue(texts.get("changes.md").contains("Add to the cautions: “Fall protection above 6 ft.”"), texts.get("changes.md"));
        assertTrue(texts.get("changes.json").contains("\"after\": \"Fall protection above 6 ft.\"")
            || texts.get("changes.json").contains("\"after\":\"Fall protection above 6 ft.\""), texts.get("changes.json"));
        String marked = texts.get(Outputs.fileName(old.number()) + "-marked.md");
        assertTrue(marked.contains("## Cautions") && marked.contains("<ins>Fall protection above 6 ft.</ins>"), marked);
        assertTrue(ChangePapers.report(changes).startsWith("no paragraph changed\n04 73 00 cautions: "), ChangePapers.report(changes));
    }

    private static Issue with(Issue issue, List<String> cautions) {
        SectionDocument section = issue.sections().get(0);
        return new Issue(issue.name(), issue.kind(), issue.order(), issue.number(), issue.date(), issue.note(), issue.job(),
            issue.jobNote(),
            issue.pack(), issue.packDigest(), issue.findings(), issue.choices(), issue.questions(), issue.cautions(),
            List.of(new SectionDocument(section.number(), section.title(), section.job(), section.note(), section.issue(), cautions,
                section.parts())));
    }

    @Test
    void anotherOrderOfArticlesIsToldAsThatAndNumbersAloneAreNoChange() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Job text = job.job();
        OpenJob other = job.with(new Job(text.title(), text.note(), text.pack(), text.facts(), text.walls(), text.sections(),
            text.changes(),
            text.accepted(), text.products(), text.submittals(), text.register(), text.questions(), text.alternates(),
            new Layout(Layout.References.TABLE, Map.of("04 73 00", List.of("references", "summary"))), text.at()));
        IssueChanges changes = ChangePapers.between(Issues.present(job), Issues.present(other));
        // a table for a list is no change, nor is a number; of two that change places one is told
        assertEquals(List.of("moved SUMMARY"), changes.sections().stream().flatMap(section -> section.provisions().stream())
            .map(line -> line.kind().text() + " " + line.side().plain()).toList());
    }
}

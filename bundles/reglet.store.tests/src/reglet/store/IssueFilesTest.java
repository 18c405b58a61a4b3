package reglet.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Component;
import reglet.model.Issue;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.Question;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Strong;
import reglet.model.UnusableInput;

/** What is frozen reads back as it was, and stays as it is. */
class IssueFilesTest {
    private static Pack pack;

    @TempDir
    Path job;

    private static synchronized Pack pack() {
        if (pack == null) {
            try {
                pack = Packs.read(Path.of(System.getProperty("reglet.root",
                    "../..")).resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
            } catch (UnusableInput | IOException e) {
                throw new IllegalStateException(e);
            }
        }
        return pack;
    }

    /** Every value that an option of the pack gives, each in a slot of its own. */
    private static List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>();
        for (Component component : pack().components()) {
            for (Option option : component.options()) {
                for (Property property : component.properties()) {
                    Optional.ofNullable(option.values().get(property.name())).ifPresent(value -> all.add(new Requirement("W1",
                        component.id(),
                        option.id(), property, value, new Place("walls/W1.yaml", 7, 3))));
                }
            }
        }
        return all;
    }

    static SectionDocument section() {
        List<SectionDocument.Span> slots = new ArrayList<>();
        requirements().forEach(requirement -> slots.add(new Slot(requirement.path(), requirement.value().text(), List.of(requirement))));
        Paragraph deep = new Paragraph("a.b@W1~x&y/1", "1", "2.1.A.1", 2, true, List.of(new Strong("“bold” "),
            new Plain(" <a> & \\ \"q\"\n\t: # [x] \u2028é№"),
            new Plain(""), new Cited("ASTM C847", "ASTM C847-2018"), new CrossReference("lath", "Article 2.4"), new Slot("lath",
                "- yes", List.of())),
            List.of());
        return new SectionDocument("04 73 00", "Title: with # marks", "Job", "", "Bid set", List.of("First.", "Second: yes."),
            List.of(new Part(1, "GENERAL", List.of()), new Part(2, "PRODUCTS", List.of(new Article("lath", "2.1", "LATH",
                List.of(new Paragraph("slots", "A", "2.1.A", 1, false, slots, List.of(deep))))))));
    }

    static Issue issue(String name) {
        return new Issue(name, Issue.Kind.ADDENDUM, 2, 1, Optional.of(LocalDate.of(2026, 3, 2)), "A note: yes", "Job", "Invented.",
            pack().name(), "digest", List.of("walls/W1.yaml:1:1: conflict: it's \"so\""), Map.of("W1.lath", new Issue.Made("metal-3.4",
                "RFI 12")),
            List.of(new Question(12, "contractor", Optional.of(LocalDate.of(2026, 2, 1)), "Why?", List.of("W1.lath"), "So.",
                Optional.of(LocalDate.of(2026, 2, 3)), Place.of("x")), new Question(13, "", Optional.empty(), "And?", List.of(), "",
                    Optional.empty(),
                Place.of("x"))), List.of("Take care."), List.of(section()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private Path freeze(String name) throws Exception {
        IssueFiles.freeze(job, issue(name), Map.of("04-73-00.pdf", bytes("a paper")));
        return job.resolve("issues").resolve(name);
    }

    @Test
    void aFrozenSectionReadsBackWithEverySpanSlotAndRequirement() throws Exception {
        assertTrue(requirements().size() > 300, requirements().size() + " requirements");
        Issue read = IssueFiles.read(freeze("Bid set"), pack());
        assertEquals(List.of(section()), read.sections());
        Issue written = issue("Bid set");
        assertEquals(written.choices(), read.choices());
        assertEquals(written.findings(), read.findings());
        assertEquals(written.date(), read.date());
        assertEquals(List.of("Bid set", "A note: yes", "Job", "Invented.", pack().name(), "digest"),
            List.of(read.name(), read.note(), read.job(), read.jobNote(), read.pack(), read.packDigest()));
        assertEquals(List.of("So.", ""), read.questions().stream().map(Question::answer).toList());
        assertEquals(List.of(2, 1), List.of(read.order(), read.number()));
    }

    @Test
    void theSameIssueMakesTheSameBytes() throws Exception {
        byte[] once = Files.readAllBytes(freeze("Bid set").resolve("issue.yaml"));
        Path other = Files.createDirectories(job.resolve("other"));
        IssueFiles.freeze(other, issue("Bid set"), Map.of("04-73-00.pdf", bytes("a paper")));
        assertArrayEquals(once, Files.readAllBytes(other.resolve("issues/Bid set/issue.yaml")));
    }

    @Test
    void anIssueIsNeverWrittenTwice() throws Exception {
        Path folder = freeze("Bid set");
        byte[] before = Files.readAllBytes(folder.resolve("issue.yaml"));
        UnusableInput refused = assertThrows(UnusableInput.class, () -> IssueFiles.freeze(job, issue("Bid set"), Map.of("x.pdf",
            bytes("x"))));
        assertTrue(refused.getMessage().contains("issues/Bid set: is issued already and stays as it is; give the next issue another name"),
            refused.getMessage());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("issue.yaml")));
        assertFalse(Files.exists(folder.resolve("x.pdf")));
    }

    @Test
    void aFolderThatIsNoIssueIsLeftAlone() throws Exception {
        Files.writeString(Files.createDirectories(job.resolve("issues/Mine")).resolve("note.txt"), "mine");
        assertThrows(UnusableInput.class, () -> IssueFiles.freeze(job, issue("Mine"), Map.of()));
        assertEquals(List.of(), IssueFiles.folders(job));
    }

    @Test
    void aFileThatWasChangedOrTakenAwayIsNoticed() throws Exception {
        Path folder = freeze("Bid set");
        Files.writeString(folder.resolve("04-73-00.pdf"), "another paper");
        String changed = assertThrows(UnusableInput.class, () -> IssueFiles.read(folder, pack())).getMessage();
        assertEquals("04-73-00.pdf: was changed after it was issued; put the issued file back, or give out a new issue", changed);
        Files.delete(folder.resolve("04-73-00.pdf"));
        assertTrue(assertThrows(UnusableInput.class, () -> IssueFiles.read(folder,
            pack())).getMessage().contains("is missing from the issue"));
    }

    @Test
    void aNewerIssueIsRefusedWithTheReason() throws Exception {
        Path folder = freeze("Bid set");
        Path head = folder.resolve("issue.yaml");
        Files.writeString(head, Files.readString(head).replace("format: 1", "format: 2"));
        assertTrue(assertThrows(UnusableInput.class, () -> IssueFiles.read(folder,
            pack())).getMessage().startsWith("issue.yaml:1:9: format 2 is newer"));
    }

    @Test
    void aQuestionWithoutItsTextOrWithAnUnknownNameIsRefusedWithItsPlace() {
        Problems problems = new Problems();
        Cursor.parse("questions.yaml",
            "format: 1\nquestions:\n  12: {asker: me}\n  x: {question: y}\n  3: {question: a, answered: 2026-01-01}\n", 0,
            problems).ifPresent(QuestionFiles::read);
        String all = assertThrows(UnusableInput.class, problems::throwIfAny).getMessage();
        assertTrue(all.contains("questions.yaml:3:8: unknown name \"asker\""), all);
        assertTrue(all.contains("\"question\" is missing"), all);
        assertTrue(all.contains("\"x\" is no number of a question"), all);
        assertTrue(all.contains("questions.yaml:5:30: the question was answered with nothing"), all);
    }
}

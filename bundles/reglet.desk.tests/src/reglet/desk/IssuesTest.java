package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Change;
import reglet.model.Finding;
import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.UnusableInput;

/** Issues, questions and the addendum that answers them, on a copy of a sample job. */
class IssuesTest {
    private static final String QUESTIONS = """
        format: 1
        questions:
          # asked on site
          12:
            from: general contractor
            asked: 2026-03-02
            about: [W1.lath]
            question: May wall type W1 go without the alternative of woven lath?
        """;

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws Exception {
        Samples.copy("harbour-clinic", folder);
        Files.writeString(folder.resolve("questions.yaml"), QUESTIONS);
    }

    private OpenJob open() throws Exception {
        return Samples.desk().open(folder);
    }

    private static Issues.Request request(String name, Issue.Kind kind) {
        return new Issues.Request(name, kind, Optional.of(LocalDate.of(2026, 3, 9)), "", false);
    }

    private List<Path> freeze(String name, Issue.Kind kind) throws Exception {
        return Issues.freeze(open(), request(name, kind), Progress.NONE);
    }

    private OpenJob answered() throws Exception {
        return Questions.answer(open(), 12, List.of(new Change("W1.lath", "metal-3.4")), "Yes, expanded metal only.",
            Optional.of(LocalDate.of(2026, 3, 5)));
    }

    private String text(String name) throws Exception {
        return Files.readString(folder.resolve(name), StandardCharsets.UTF_8);
    }

    private static String pdf(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static void valid(String schema, JsonElement form) throws Exception {
        try (InputStream in = Forms.class.getResourceAsStream("schema/" + schema + ".json")) {
            assertEquals(Set.of(), JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in)
                .validate(Forms.text(form), InputFormat.JSON));
        }
    }

    @Test
    void anAnswerChangesTheChoiceAndIsCitedByIt() throws Exception {
        OpenJob job = answered();
        assertEquals(QUESTIONS.replace("    from:", "    answer: \"Yes, expanded metal only.\"\n    answered: 2026-03-05\n    from:"),
            text("questions.yaml"));
        assertTrue(text("walls/W1.yaml").contains("lath: {accept: [metal-3.4], by: RFI 12, because: \"Yes, expanded metal only.\"}"),
            text("walls/W1.yaml"));
        assertTrue(text("walls/W1.yaml").contains("# heavier than the span needs"));
        assertEquals(List.of("W1.lath"), Questions.changed(job.job(), job.job().question(12).orElseThrow()));
        assertTrue(job.checked().isClean());
        valid("questions", QuestionForms.of(job.job()));
    }

    @Test
    void anAnswerThatCannotBeMadeChangesNothing() throws Exception {
        String wall = text("walls/W1.yaml");
        assertThrows(UnusableInput.class, () -> Questions.answer(open(), 12, List.of(new Change("W1.lath", "gold")), "Yes.",
            Optional.empty()));
        UnusableInput none = assertThrows(UnusableInput.class, () -> Questions.answer(open(), 11, List.of(), "Yes.", Optional.empty()));
        assertEquals("questions.yaml: there is no question 11; expected one of: 12", none.getMessage());
        assertEquals(wall, text("walls/W1.yaml"));
        assertEquals(QUESTIONS, text("questions.yaml"));
    }

    @Test
    void aChoiceThatCitesAQuestionWhichIsNotThereIsAGapAndAnOpenOneACaution() throws Exception {
        Path wall = folder.resolve("walls/W1.yaml");
        Files.writeString(wall, text("walls/W1.yaml").replace("lath: {accept: [metal-3.4, woven-17], by: specifier",
            "lath: {accept: [metal-3.4, woven-17], by: RFI 99").replace("mat: {accept: [filament-3-8], by: specifier",
            "mat: {accept: [filament-3-8], by: RFI 12"));
        List<Finding> found = open().checked().findings().stream().filter(finding -> finding.rule().equals("paper.question")).toList();
        assertEquals(List.of("mat caution", "lath gap"), found.stream().map(finding -> finding.component() + " "
            + finding.kind().text()).toList());
        assertEquals("The choice of lath cites RFI 99, which is not among the job's questions.", found.get(1).says());
        assertEquals("walls/W1.yaml", found.get(1).at().file());
    }

    @Test
    void anAddendumTellsWhatChangedSinceTheLastIssueAndWhichQuestionItAnswers() throws Exception {
        freeze("Bid set", Issue.Kind.ISSUE);
        answered();
        freeze("", Issue.Kind.ADDENDUM);
        Path issue = folder.resolve("issues/Addendum 1");
        String told = Files.readString(issue.resolve("changes/changes.md"));
        assertTrue(told.startsWith("# Addendum 1\n\nHarbour clinic\n"), told);
        assertTrue(told.contains("- Changes: Bid set, 2026-03-09\n"), told);
        assertTrue(told.contains("Delete Paragraph 2.4.C and all below it, which begins “Wall type W1, Contractor's option"), told);
        assertTrue(told.contains("In 2.4.A, delete “, Contractor's option”. (by RFI 12)"), told);
        assertTrue(told.contains("**RFI 12, general contractor, 2026-03-02**\n\n> May wall type W1 go without"), told);
        assertTrue(told.contains("replaces neither the local building code"), told);
        String page = pdf(Files.readAllBytes(issue.resolve("changes/changes.pdf")));
        assertTrue(page.contains("Addendum 1") && page.contains("Questions answered") && page.contains("Cautions"), page);
        JsonObject form = JsonParser.parseString(Files.readString(issue.resolve("changes/changes.json"))).getAsJsonObject();
        valid("changes", form);
        assertTrue(form.toString().contains("\"at\":\"2.4.C.1\",\"kind\":\"deleted\",\"before\":\"Wire: at least 0.051 in (1.3 mm).\",\"by\":[\"RFI 12\"]"),
            form.toString());
        // the name stands in the head of every sheet
        assertTrue(pdf(Files.readAllBytes(issue.resolve("04-73-00.pdf"))).contains("Issue: Addendum 1"));
        assertTrue(pdf(Files.readAllBytes(issue.resolve("changes/04-73-00-marked.pdf"))).contains("Changes from Bid set to Addendum 1"));
        assertEquals(List.of("Bid set 1 1", "Addendum 1 2 1"), Issues.of(open()).stream().map(one -> one.name() + " " + one.order() + " "
            + one.number()).toList());
    }

    @Test
    void anIssueReadsBackAsWhatWasDraftedThen() throws Exception {
        OpenJob job = open();
        freeze("Bid set", Issue.Kind.ISSUE);
        answered();
        Issue issue = Issues.last(open()).orElseThrow();
        assertEquals(job.issued("Bid set").sections(), issue.sections());
        assertTrue(ChangePapers.between(Issues.present(job), issue).isEmpty());
        IssueChanges changes = ChangePapers.between(issue, Issues.present(open()));
        assertFalse(changes.isEmpty());
        assertEquals("RFI 12", changes.choices().get("W1.lath"));
    }

    @Test
    void theSameJobMakesTheSameIssueByteByByte() throws Exception {
        List<Path> once = freeze("Bid set", Issue.Kind.ISSUE);
        Path other = Files.createDirectories(folder.resolve("out/other"));
        Samples.copy("harbour-clinic", other);
        Files.writeString(other.resolve("questions.yaml"), QUESTIONS);
        List<Path> twice = Issues.freeze(Samples.desk().open(other), request("Bid set", Issue.Kind.ISSUE), Progress.NONE);
        assertEquals(once.size(), twice.size());
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(Files.readAllBytes(once.get(i)), Files.readAllBytes(twice.get(i)), once.get(i).toString());
        }
    }

    @Test
    void addendaCountThemselvesAndNeedAnIssueBefore() throws Exception {
        assertTrue(assertThrows(UnusableInput.class, () -> freeze("",
            Issue.Kind.ADDENDUM)).getMessage().contains("nothing was issued yet"));
        freeze("Bid set", Issue.Kind.ISSUE);
        assertEquals("issues/Addendum 3: is not the next of its kind; expected Addendum 1",
            assertThrows(UnusableInput.class, () -> freeze("Addendum 3", Issue.Kind.ADDENDUM)).getMessage());
        freeze("addendum 1", Issue.Kind.ADDENDUM);
        freeze("", Issue.Kind.ADDENDUM);
        freeze("", Issue.Kind.BULLETIN);
        assertEquals(List.of("Bid set", "addendum 1", "Addendum 2", "Bulletin 1"), Issues.of(open()).stream().map(Issue::name).toList());
        for (String wrong : List.of("", "../x", "a/b", ".hidden", "x ", "CON:1")) {
            assertTrue(assertThrows(UnusableInput.class, () -> freeze(wrong,
                Issue.Kind.ISSUE)).getMessage().contains("can't be the name"), wrong);
        }
    }

    @Test
    void aJobWithOpenConflictsIsIssuedOnlyWhenSaidSoAndListsThem() throws Exception {
        Path other = Samples.copy("orchard-row", Files.createDirectories(folder.resolve("out/other")));
        OpenJob job = Samples.desk().open(other);
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Issues.freeze(job, request("Bid set", Issue.Kind.ISSUE),
            Progress.NONE));
        assertTrue(refused.getMessage().contains("clear them, accept them with a reason, or issue with --with-open-conflicts"),
            refused.getMessage());
        assertFalse(Files.exists(other.resolve("issues")));
        Issues.freeze(job, new Issues.Request("Bid set", Issue.Kind.ISSUE, Optional.empty(), "", true), Progress.NONE);
        Issue issue = Issues.last(job).orElseThrow();
        assertEquals(job.checked().findings().stream().map(Report::line).toList(), issue.findings());
        assertTrue(issue.findings().stream().anyMatch(line -> line.contains(": conflict: ")));
        assertTrue(issue.date().isEmpty());
    }

    @Test
    void everythingOfAJobHoldsItsChangesSinceTheLastIssue() throws Exception {
        assertEquals(List.of(), Outputs.of(open()).changes().make());
        freeze("Bid set", Issue.Kind.ISSUE);
        answered();
        List<String> names = Outputs.of(open()).changes().make().stream().map(Output::name).toList();
        assertTrue(names.containsAll(List.of("changes/changes.pdf", "changes/changes.docx", "changes/changes.md", "changes/changes.json",
            "changes/04-73-00-marked.docx", "changes/04-73-00-marked.pdf", "changes/04-73-00-marked.md")), names.toString());
    }
}

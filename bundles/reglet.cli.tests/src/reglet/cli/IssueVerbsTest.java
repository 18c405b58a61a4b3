package reglet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The verbs around issues: issue, changes, questions, answer. */
class IssueVerbsTest {

    @TempDir
    Path folder;

    private String job() throws IOException {
        Path job = Run.copy("harbour-clinic", folder.resolve("job"));
        Files.writeString(job.resolve("questions.yaml"),
            "format: 1\nquestions:\n  7: {from: mason, about: [W1.lath], question: Only one lath?}\n");
        return job.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"issue", "changes", "questions", "answer"})
    void everyVerbExplainsItself(String verb) {
        Run run = Run.run(verb, "--help");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("Usage: reglet " + verb), run.out());
    }

    @Test
    void aQuestionIsAnsweredIssuedAndTold() throws IOException {
        String job = job();
        Run issued = Run.run("issue", job, "Bid set", "--date", "2026-03-02");
        assertEquals(0, issued.code(), issued.err());
        assertTrue(issued.out().endsWith(Path.of(job, "issues", "Bid set", "issue.yaml") + System.lineSeparator()), issued.out());
        Run again = Run.run("issue", job, "Bid set");
        assertEquals(2, again.code());
        assertEquals(job + "/issues/Bid set: is issued already and stays as it is; give the next issue another name, such as an addendum's",
            again.err().lines().reduce((first, last) -> last).orElse(""));
        assertTrue(Run.run("questions", job).out().contains("RFI 7, mason, about W1.lath: Only one lath?"));
        Run answered = Run.run("answer", job, "7", "--set", "W1.lath=metal-3.4", "--because", "Yes.", "--date", "2026-03-03");
        assertEquals(0, answered.code(), answered.err());
        assertTrue(Run.run("questions", job).out().contains("Yes. (2026-03-03); changed W1.lath"));
        String bid = Path.of(job, "issues", "Bid set").toString();
        Run changes = Run.run("changes", bid, job);
        assertEquals(0, changes.code(), changes.err());
        assertTrue(changes.out().contains("04 73 00 2.4.C.1: deleted, by RFI 7: Wire: at least 0.051 in (1.3 mm)."), changes.out());
        Run json = Run.run("changes", bid, job, "--json", "--out", folder.resolve("told").toString());
        JsonObject form = JsonParser.parseString(json.out()).getAsJsonObject();
        assertEquals("Bid set", form.get("from").getAsString());
        assertEquals(changes.out().lines().count(), form.getAsJsonArray("changes").size());
        for (String file : List.of("changes.docx", "changes.pdf", "changes.md", "04-73-00-marked.docx", "04-73-00-marked.pdf",
            "04-73-00-marked.md")) {
            assertTrue(Files.size(folder.resolve("told").resolve(file)) > 200, file);
        }
        assertEquals("no paragraph changed\n", Run.run("changes", bid, bid).out());
    }

    @Test
    void aFrozenFileThatWasChangedIsNamed() throws IOException {
        String job = job();
        Run.run("issue", job, "Bid set");
        Path file = Path.of(job, "issues", "Bid set", "04-73-00.md");
        Files.writeString(file, "changed");
        Run run = Run.run("changes", file.getParent().toString(), job);
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith(file + ": was changed after it was issued; "), run.err());
    }

    @Test
    void wrongWordsAreAnsweredWithWhatWasExpected() throws IOException {
        String job = job();
        assertTrue(Run.run("issue", job, "x", "--kind", "adendum").err().contains("did you mean 'addendum'?"));
        assertTrue(Run.run("issue", job, "x", "--date", "March 2").err().contains("\"March 2\" is no date; expected year, month and day"));
        assertTrue(Run.run("answer", job, "8", "--because",
            "x").err().contains("questions.yaml: there is no question 8; expected one of: 7"));
    }
}

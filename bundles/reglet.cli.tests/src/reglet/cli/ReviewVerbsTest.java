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

/** The verbs for the register, the review and the forms. */
class ReviewVerbsTest {
    @TempDir
    Path folder;

    private Path copy() throws IOException {
        return Run.copy("harbour-clinic", folder);
    }

    private static void edit(Path file, String old, String text) throws IOException {
        assertTrue(Files.readString(file).contains(old), old);
        Files.writeString(file, Files.readString(file).replace(old, text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"register", "review", "forms"})
    void everyVerbExplainsItself(String verb) {
        Run run = Run.run(verb, "--help");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("Usage: reglet " + verb), run.out());
    }

    @Test
    void theRegisterIsWrittenAndSortedByDate() throws IOException {
        String job = copy().toString();
        assertEquals(0, Run.run("register", job).code());
        assertTrue(Files.size(folder.resolve("out/register.xlsx")) > 1000);
        assertTrue(Files.readString(folder.resolve("out/register.csv"))
            .startsWith("section,paragraph,item,kind,sort,code,sends,sender,status,alternate,"
            + "submit by,"));
        List<String> dates = Run.run("register", job, "--dates").out().lines().map(line -> line.substring(0, 10)).toList();
        assertEquals(dates.stream().sorted().toList(), dates);
        assertTrue(dates.size() > 50);
    }

    @Test
    void aChangeThatFindsItsItemNoMoreIsToldAndEndsWithOne() throws IOException {
        edit(copy().resolve("register.yaml"), "split: veneer.sample", "split: veneer.pattern");
        Run run = Run.run("register", folder.toString());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("register.yaml:15:5: The register has no item \"veneer.pattern\" to split; the reason was: the owner "
            + "chooses the colour"), run.err());
        assertTrue(Files.exists(folder.resolve("out/register.csv")), "the rest is written all the same");
    }

    @Test
    void aReviewIsWrittenAndPrinted() throws IOException {
        String job = copy().toString();
        Run run = Run.run("review", job, "04-73-00-01");
        assertEquals(0, run.code(), run.err());
        assertTrue(Files.size(folder.resolve("out/04-73-00-01-review.pdf")) > 10_000);
        JsonObject form = JsonParser.parseString(Run.run("review", job, "04-73-00-01", "--json").out()).getAsJsonObject();
        assertEquals("conforms as noted", form.getAsJsonObject("review").get("action").getAsString());
    }

    @Test
    void aNoteOnARowThatIsNotThereIsTold() throws IOException {
        edit(copy().resolve("submittals/04-73-00-01/submittal.yaml"), "W1.mat.thickness:", "W1.mat.depth:");
        Run run = Run.run("review", folder.toString(), "04-73-00-01", "--json");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("the comparison has no row \"W1.mat.depth\" that this note is for"), run.err());
    }

    @Test
    void anActionThatTheOfficeDoesNotUseIsRefused() throws IOException {
        edit(copy().resolve("submittals/04-73-00-01/submittal.yaml"), "  action: conforms as noted", "  action: conform as noted");
        Run run = Run.run("review", folder.toString(), "04-73-00-01");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("did you mean 'conforms as noted'"), run.err());
    }

    @Test
    void formsAreWrittenAsOnePdfAndEachForAWordProcessor() throws IOException {
        assertEquals(0, Run.run("forms", copy().toString()).code());
        assertTrue(Files.size(folder.resolve("out/forms.pdf")) > 10_000);
        for (String form : List.of("hold-barrier", "hold-flashing", "hold-lath", "hold-scratch-coat", "hold-units",
            "hold-sealant", "closeout",
            "extra-stock", "touching")) {
            assertTrue(Files.size(folder.resolve("out/forms/" + form + ".docx")) > 2000, form);
        }
    }
}

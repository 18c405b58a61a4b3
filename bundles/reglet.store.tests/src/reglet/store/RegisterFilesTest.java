package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Job;
import reglet.model.Problem;
import reglet.model.RegisterFile;
import reglet.model.RegisterItem.Sort;
import reglet.model.Review;
import reglet.model.UnusableInput;

/** A job's register.yaml and the reviews in its submittals, right and wrong. */
class RegisterFilesTest {
    private static final String REGISTER = """
        format: 1
        scheme: federal
        days: calendar
        review: 2 weeks
        plan:
          - {section: 04 73 00, on_site: 2026-06-01, lead: 30 days, sender: Mason}
        changes:
          - split: lath.sample
            into: [{id: a, item: A, sort: sample for selection}, {id: b, item: B}]
            because: two colours
            by: A. Person
        actions: {conforms: settled, send again: again}
        """;
    private static final String SUBMITTAL = """
        section: 04 73 00
        items: [lath.sample]
        review:
          action: conforms
          by: A. Person
          received: 2026-03-03
          returned: 2026-03-13
          recommends: {action: send again, by: B. Person}
          notes: {W1.lath.weight: Weighed.}
        """;

    @TempDir
    Path folder;

    private Job read(String register, String submittal) throws Exception {
        new SmallPack().with("job/register.yaml", register).with("job/submittals/01/submittal.yaml", submittal).write(folder);
        return Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack());
    }

    @Test
    void aRightFileIsRead() throws Exception {
        Job job = read(REGISTER, SUBMITTAL);
        RegisterFile register = job.register();
        assertEquals(RegisterFile.Scheme.FEDERAL, register.scheme());
        assertEquals(OptionalInt.of(14), register.review(), "two weeks of seven calendar days");
        RegisterFile.Plan plan = register.plan("04 73 00", List.of("lath.sample"));
        assertEquals(LocalDate.parse("2026-06-01"), plan.onSite().orElseThrow());
        assertEquals(OptionalInt.of(30), plan.lead());
        assertEquals(OptionalInt.of(14), plan.review());
        assertEquals(Sort.SELECTION, register.changes().get(0).into().get(0).sort().orElseThrow());
        Review review = job.submittals().get(0).review().orElseThrow();
        assertEquals("conforms", review.action());
        assertEquals("send again", review.recommends().orElseThrow().action());
        assertEquals("Weighed.", review.notes().get("W1.lath.weight").text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "2 weeks | soon | register.yaml:4:9: \"soon\" is no time; expected whole days or weeks, such as \"10 days\" or \"6 weeks\"",
        "2026-06-01 | 06/01/2026 | register.yaml:6:34: \"06/01/2026\" is no date; write 2026-06-01 or 2026-01-06, whichever is meant",
        "section: 04 73 00, | | register.yaml:6:5: a plan is for a section or for an item; write \"section: …\" or \"item: …\"",
        "because: two colours | | register.yaml:8:5: \"because\" is missing; add a line \"because: …\"",
        "`, {id: b, item: B}` | | register.yaml:8:5: split makes 1 items; expected \"into\" with two or more items",
        "split: | divide: | register.yaml:8:5: unknown name \"divide\"; expected one of: add, split, merge, strike, alter, into, because, "
            + "by",
        "conforms: settled | conforms: done | register.yaml:12:21: unknown word \"done\"; expected one of: settled, again"})
    void aWrongRegisterSaysWhereAndWhatIsExpected(String right, String wrong, String told) {
        UnusableInput unusable = assertThrows(UnusableInput.class,
            () -> read(REGISTER.replace(right, wrong == null ? "" : wrong), SUBMITTAL));
        assertEquals(told, unusable.problems().get(0).toString());
    }

    @Test
    void anActionIsOneOfTheOfficesWordsAndSomebodysOwn() throws Exception {
        assertEquals(List.of("submittals/01/submittal.yaml:4:11: this is none of the office's words: \"fine\"; "
            + "expected one of: conforms, send again"),
            problems(REGISTER, SUBMITTAL.replace("action: conforms", "action: fine")));
        assertEquals(List.of("submittals/01/submittal.yaml:4:3: nobody acts; add a line \"by: …\" with who chose the action"),
            problems(REGISTER, SUBMITTAL.replace("  by: A. Person\n", "")));
        assertEquals("the job lists no words for actions; add the office's own under \"actions\" in register.yaml",
            problems(REGISTER.replaceAll("actions: .*\n", ""), SUBMITTAL).get(0).replaceFirst("^\\S+ ", ""));
    }

    @Test
    void aResubmittalNamesAnotherSubmittalOfTheJob() throws Exception {
        assertEquals(List.of("submittals/01/submittal.yaml:1:11: there is no other submittal \"01\"; none is allowed here"),
            problems(REGISTER, "replaces: 01\n" + SUBMITTAL));
    }

    private List<String> problems(String register, String submittal) {
        return assertThrows(UnusableInput.class, () -> read(register, submittal)).problems().stream().map(Problem::toString).toList();
    }
}

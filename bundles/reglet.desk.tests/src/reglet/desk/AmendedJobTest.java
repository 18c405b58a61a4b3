package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Finding;
import reglet.model.UnusableInput;

/** A sample job in a town, made up, whose rules differ from the model code. */
class AmendedJobTest {
    private static final String AMENDMENTS = """
        format: 1
        jurisdiction: Town of Northquay
        amendments:
          - table: base_clearance
            rows: [{over: paving, clearance: 4 in}]
            basis: [{document: Building Rules, edition: "2023", at: "4.2", known: read}]
          - usual: terms.protection_time
            value: 72 h
            basis: [{document: Building Rules, edition: "2023", at: "4.3", known: read}]
          - usual: code.amendments
            value: Building Rules of 2023
            basis: [{document: Building Rules, edition: "2023", at: "1.1", known: read}]
          - rule: base.clearance.walking
            let: {least: 'q("2 in")'}
            examples:
              holds: [{base.over: walking surface, base.clearance: 2 in}]
              breaks: [{base.over: walking surface, base.clearance: 1 in}]
              gap: [{base.over: walking surface}]
            basis: [{document: Building Rules, edition: "2023", at: "4.4", known: read}]
          - strike: top_vent.opening
            basis: [{document: Building Rules, edition: "2023", at: "4.5", known: read}]
          - add:
              id: local.mockup
              kind: conflict
              each: wall
              component: mockup
              holds: 'mockup.kind == "freestanding"'
              says: 'The mock-up is {mockup.kind}; the town looks at a freestanding one.'
              fix: Build a freestanding one.
              basis: [{document: Building Rules, edition: "2023", at: "4.6", known: read}]
              examples:
                holds: [{mockup.kind: freestanding}]
                breaks: [{mockup.kind: in place}]
                gap: [{site.freezing: none}]
        """;
    @TempDir
    Path folder;

    private OpenJob open(String amendments) throws Exception {
        Path job = folder.resolve("job");
        if (Files.notExists(job)) {
            Samples.copy("harbour-clinic", job);
        }
        Files.writeString(job.resolve("amendments.yaml"), amendments);
        return Samples.desk().open(job);
    }

    private static List<String> keys(OpenJob job) {
        return job.checked().findings().stream().map(Finding::key).toList();
    }

    @Test
    void theCheckFollowsTheTownAndSaysWhereItSaysSo() throws Exception {
        OpenJob job = open(AMENDMENTS);
        assertEquals(List.of("base.clearance.ground W1/base-1", "local.mockup W1", "base.clearance.walking W2/base-1", "local.mockup W2"),
            keys(job));
        Finding clearance = job.checked().findings().get(0);
        assertTrue(clearance.says().contains("4 in"), clearance.says());
        assertEquals("Town of Northquay, Building Rules 2023, 4.2 (read)", clearance.basis().get(0).text());
        assertTrue(Report.markdown(job).contains("## Local amendments: Town of Northquay\n\n- Changes the table base_clearance, "
            + "paving: 4 in "
            + "instead of 2 in; Town of Northquay, Building Rules 2023, 4.2 (read); amendments.yaml:4:5"), Report.markdown(job));
    }

    @Test
    void aStruckRuleFindsNothingAndAnExplanationOfAChangedOneNamesTheTown() throws Exception {
        OpenJob job = open(AMENDMENTS);
        OpenJob narrow = Saving.set(job, "W2", "top_vent", "opening", "1/8 in");
        assertEquals(keys(job), keys(narrow));
        String explained = Report.explanation(job.pack().rule("base.clearance.walking").orElseThrow(),
            job.explain("base.clearance.walking"));
        assertTrue(explained.contains("Town of Northquay, Building Rules 2023, 4.4 (read)") && explained.contains("least comes to 2 in"),
            explained);
    }

    @Test
    void sectionsPrintTheValuesOfTheTown() throws Exception {
        String text = open(AMENDMENTS).section("04 73 00").paragraphs().stream().map(paragraph -> paragraph.plain()).reduce("",
            String::concat);
        assertTrue(text.contains("Build to Building Rules of 2023 too"), text);
        assertTrue(text.contains("Time after placing: at least 72 h") && !text.contains("placing: at least 48 h"), text);
    }

    @Test
    void otherJobsOfTheSamePackKeepThePacksRules() throws Exception {
        open(AMENDMENTS);
        assertEquals(List.of(), keys(Samples.open("harbour-clinic")));
    }

    @Test
    void aRuleOfTheTownThatCannotBeReadOrContradictsItsExamplesIsRefused() throws Exception {
        UnusableInput wrong = assertThrows(UnusableInput.class,
            () -> open(AMENDMENTS.replace("holds: 'mockup.kind ==", "holds: 'mockup.knd ==")));
        assertTrue(wrong.getMessage().startsWith("amendments.yaml:23:7: ") && wrong.getMessage().contains("did you mean 'mockup.kind'?"),
            wrong.getMessage());
        wrong = assertThrows(UnusableInput.class, () -> open(AMENDMENTS.replace("breaks: [{mockup.kind: in place}]",
            "breaks: [{mockup.kind: freestanding}]")));
        assertTrue(wrong.getMessage().contains("the example of local.mockup comes to \"holds\""), wrong.getMessage());
    }
}

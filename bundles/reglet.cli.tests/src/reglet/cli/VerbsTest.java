package reglet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;


/** What each verb prints, writes and ends with. */
class VerbsTest {

    @TempDir
    Path folder;

    private static String sample(String name) {
        return Run.ROOT.resolve("sample-specs").resolve(name).toString();
    }

    private Path copy(String name) throws IOException {
        return Run.copy(name, folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "draft", "register", "assemble", "compare", "worksheets", "worksheet", "details", "try",
        "propose", "all"})
    void everyVerbExplainsItself(String verb) {
        Run run = Run.run(verb, "--help");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("Usage: reglet " + verb), run.out());
    }

    @Test
    void worksheetsOfAJobAreWrittenAndSummedUp() throws IOException {
        Run run = Run.run("worksheets", copy("harbour-clinic").toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("W2: Fastening of the lath: margin 1.1"), run.out());
        for (String file : List.of("worksheets.pdf", "worksheets.json", "quantities.csv", "quantities.xlsx", "W1-lath_fastening.svg")) {
            assertTrue(Files.size(folder.resolve("out").resolve(file)) > 200, file);
        }
    }

    @Test
    void worksheetsThatCannotBeMadeSayWhatTheyLackAndEndWithOne() {
        Run text = Run.run("worksheets", sample("orchard-row"), "--json");
        assertEquals(1, text.code());
        JsonObject undone = JsonParser.parseString(text.out()).getAsJsonObject().getAsJsonArray("undone").get(0).getAsJsonObject();
        assertEquals("lath_fastening", undone.get("name").getAsString());
        assertTrue(undone.get("why").getAsString().contains("leaves 0.6875 in in the framing"), undone.toString());
    }

    @Test
    void tryShowsWhatAChangeClearsAndBringsAndWritesNothing() throws IOException {
        Run text = Run.run("try", sample("orchard-row"), "W1.lath=woven-17");
        assertEquals(1, text.code());
        assertTrue(text.out().contains("cleared: ") && text.out().contains("[lath.weight"), text.out());
        Run form = Run.run("try", sample("orchard-row"), "W1.lath=woven-17", "--json");
        JsonObject tried = JsonParser.parseString(form.out()).getAsJsonObject();
        assertEquals(1, tried.getAsJsonArray("before").size() - tried.getAsJsonArray("after").size());
        assertTrue(Files.readString(Run.ROOT.resolve("sample-specs/orchard-row/walls/W1.yaml")).contains("metal-2.5"));
        assertTrue(Run.run("try", sample("harbour-clinic"), "W1.lath").out().contains("metal-1.75, "));
        Run wrong = Run.run("try", sample("orchard-row"), "W1.lat=woven-17");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("did you mean 'lath'"), wrong.err());
    }

    @Test
    void findingsCarryTheirRemediesForProgramsAndOnRequestForPeople() {
        Run form = Run.run("check", sample("orchard-row"), "--json");
        JsonObject first = JsonParser.parseString(form.out()).getAsJsonObject().getAsJsonArray("findings").get(0).getAsJsonObject();
        JsonObject remedy = first.getAsJsonArray("remedies").get(0).getAsJsonObject();
        assertTrue(remedy.getAsJsonArray("changes").get(0).getAsJsonObject().get("set").getAsString().startsWith("W1."), remedy.toString());
        assertEquals(first.get("rule").getAsString(), remedy.getAsJsonArray("clears").get(0).getAsString());
        assertTrue(Run.run("check", sample("orchard-row"), "--remedies").out().contains("  remedy: W1."));
    }

    @Test
    void proposeFillsWhatIsUndecidedOrNamesWhatCannotStandTogether() throws IOException {
        Run cannot = Run.run("propose", sample("orchard-row"), "--json");
        assertEquals(1, cannot.code());
        assertTrue(cannot.out().contains("\"option\": \"stone-large\""), cannot.out());
        Path job = copy("mesa-library");
        Path wall = job.resolve("walls/W1.yaml");
        Files.writeString(wall, String.join("\n", Files.readAllLines(wall).stream().filter(line -> !line.startsWith("lath:")).toList())
            + "\n");
        Run filled = Run.run("propose", job.toString(), "--json");
        assertEquals(0, filled.code(), filled.out());
        JsonObject lath = JsonParser.parseString(filled.out()).getAsJsonObject().getAsJsonObject("walls").getAsJsonObject("W1")
            .getAsJsonObject("lath");
        assertEquals("proposed", lath.get("status").getAsString());
    }

    @Test
    void detailsAreDrawnIntoTheOutFolder() throws IOException {
        Run run = Run.run("details", copy("mesa-library").toString());
        assertEquals(0, run.code(), run.err());
        for (String file : List.of("W1.pdf", "W1-layers.svg", "W1-layers.dxf")) {
            assertTrue(Files.size(folder.resolve("out/details").resolve(file)) > 1000, file);
        }
    }

    @Test
    void aWorksheetRunsAloneOnTypedInputs() {
        Run run = Run.run("worksheet", "wind", "speed=115mph", "exposure=B", "height=30ft", "zone=5", "area=10ft2");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("suction") && run.out().contains("licensed professional"), run.out());
        assertTrue(Run.run("worksheet", "--list").out().startsWith("weight "));
        assertTrue(Run.run("worksheet", "wind", "--inputs").out().contains("85 mph to 250 mph"));
    }

    @Test
    void wrongInputsOfAWorksheetAreToldAtOnceWithTheRange() {
        Run run = Run.run("worksheet", "wind", "speed=400mph", "height=30ft", "colour=red");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("85 mph to 250 mph") && run.err().contains("exposure is missing")
            && run.err().contains("colour is no input"), run.err());
        assertEquals(2, Run.run("worksheet", "snow").code());
        assertEquals(2, Run.run("worksheet").code());
        assertEquals(2, Run.run("worksheet", "wind", "115mph").code());
        assertEquals(2, Run.run("worksheet", "wind", "speed=115mph", "speed=90mph").code());
    }

    @Test
    void aWorksheetThatFallsShortEndsWithOne() {
        Run run = Run.run("worksheet", "weight", "unit_weight=22 psf", "edition=2021");
        assertEquals(1, run.code(), run.out());
        assertTrue(run.out().contains("falls short"), run.out());
    }

    @Test
    void withoutAVerbTheVerbsAreListed() {
        Run run = Run.run();
        assertEquals(0, run.code());
        assertTrue(run.out().contains("assemble") && run.out().contains("licensed professional"), run.out());
    }

    @Test
    void aCleanJobEndsWithZeroAndMistakesWithOne() {
        assertEquals(0, Run.run("check", sample("harbour-clinic")).code());
        Run mistakes = Run.run("check", sample("orchard-row"));
        assertEquals(1, mistakes.code());
        assertTrue(mistakes.out().contains("walls/W1.yaml:29:7: conflict: W1: 2.5 lb/yd² expanded metal lath spans 16 in at most"),
            mistakes.out());
    }

    @Test
    void findingsForProgramsAreJson() {
        JsonObject form = JsonParser.parseString(Run.run("check", sample("orchard-row"), "--json").out()).getAsJsonObject();
        assertEquals("IRC", form.getAsJsonObject("code").get("name").getAsString());
        assertTrue(form.getAsJsonArray("findings").size() >= 8);
    }

    @Test
    void aRuleIsExplainedWithItsBasisAndTheValuesItRead() {
        Run run = Run.run("check", sample("orchard-row"), "--explain", "lath.weight");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("ASTM C1063") && run.out().contains("framing.spacing is 24 in") && run.out().contains("W1: breaks"),
            run.out());
    }

    @Test
    void anUnknownRuleIsAnsweredWithTheNearest() {
        Run run = Run.run("check", sample("orchard-row"), "--explain", "lath.wieght");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("did you mean 'lath.weight'?"), run.err());
    }

    @Test
    void aFaultInOwnTextIsToldByCheckAndDraftWithItsPlace() throws IOException {
        Path job = copy("mesa-library");
        Files.createDirectories(job.resolve("sections"));
        Files.writeString(job.resolve("sections/04-73-00.md"), "## add after veneer.install\nFollow Article 2.19.\n");
        String line = job + "/sections/04-73-00.md:2:8: conflict: Paragraph 3.9.C of Section 04 73 00 refers to Article 2.19";
        for (String verb : List.of("check", "draft", "all")) {
            Run run = Run.run(verb, job.toString());
            assertEquals(1, run.code(), verb);
            assertTrue(run.out().contains(line), verb + ": " + run.out());
        }
        Run explained = Run.run("check", job.toString(), "--explain", "paper.reference");
        assertEquals(0, explained.code());
        assertTrue(explained.out().startsWith("paper.reference: conflict, looked at for each section that the job writes\n  holds  articles,")
            && explained.out().contains("sections: breaks\n  sections/04-73-00.md:2:8: Paragraph 3.9.C"), explained.out());
        assertEquals("breaks", JsonParser.parseString(Run.run("check", job.toString(), "--explain", "paper.reference", "--json").out())
            .getAsJsonArray().get(0).getAsJsonObject().get("result").getAsString());
    }

    @Test
    void aStruckRuleIsExplainedByTheAmendmentThatStruckIt() throws IOException {
        Path job = copy("mesa-library");
        Files.writeString(job.resolve("amendments.yaml"), """
            format: 1
            jurisdiction: Town of Northquay
            amendments:
              - strike: mockup.size
                basis: [{document: Building Rules, edition: "2023", at: "4.5", known: read}]
            """);
        assertEquals("Strikes the rule mockup.size; Town of Northquay, Building Rules 2023, 4.5 (read); amendments.yaml:4:5\n",
            Run.run("check", job.toString(), "--explain", "mockup.size").out());
    }

    @Test
    void aFolderThatIsNotThereEndsWithTwo() {
        Run run = Run.run("check", folder.resolve("none").toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("there is no such folder; expected a job folder"), run.err());
    }

    @Test
    void aWrongOptionEndsWithTwoAndTheUsage() {
        Run run = Run.run("check", sample("harbour-clinic"), "--jsno");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--jsno"), run.err());
    }

    @Test
    void aWrongFileIsAnsweredWithItsPlaceOneProblemALine() throws IOException {
        Path job = copy("harbour-clinic");
        Path wall = job.resolve("walls/W1.yaml");
        String wrong = Files.readString(wall).replace("base_length: 96 ft", "base_length: 96 psf").replace("accept: [wood-16]",
            "accept: [wod-16]");
        Files.writeString(wall, wrong);
        Run run = Run.run("check", job.toString());
        assertEquals(2, run.code());
        assertEquals(2, run.err().lines().count(), run.err());
        assertTrue(run.err().lines().allMatch(line -> line.matches(".*walls/W1\\.yaml:\\d+:\\d+: .*; .*")), run.err());
        assertEquals(wrong, Files.readString(wall));
    }

    @Test
    void oneSectionIsDraftedInFourFormats() throws IOException {
        Path job = copy("mesa-library");
        Run run = Run.run("draft", job.toString(), "--section", "07 92 00");
        assertEquals(0, run.code(), run.err());
        for (String ending : List.of("docx", "pdf", "html", "md")) {
            assertTrue(Files.size(job.resolve("out/07-92-00." + ending)) > 0, ending);
        }
        assertFalse(Files.exists(job.resolve("out/04-73-00.pdf")));
    }

    @Test
    void aSubmittalIsAssembledAndComparedWithItsShortfalls() throws IOException {
        Path job = copy("mesa-library");
        Run assembled = Run.run("assemble", job.toString(), "04-73-00-01");
        assertEquals(1, assembled.code());
        assertTrue(assembled.err().contains("NOT READY"), "the sample makes no statement of review");
        assertTrue(Files.size(job.resolve("out/04-73-00-01-package.pdf")) > 10_000);
        Run compared = Run.run("compare", job.toString(), "04-73-00-01");
        assertEquals(1, compared.code());
        assertTrue(compared.out().contains("1 falls short"), compared.out());
        assertTrue(Files.exists(job.resolve("out/04-73-00-01-comparison.json")));
    }

    @Test
    void aPackageWithoutStatementOfReviewIsMadeAndSaidNotToBeReady() throws IOException {
        Path job = copy("mesa-library");
        Run run = Run.run("assemble", job.toString(), "04-73-00-01", "--split", "kind");
        assertEquals(1, run.code(), run.out() + run.err());
        assertTrue(run.err().contains("NOT READY: the contractor's statement of review is missing"), run.err());
        assertTrue(Files.size(job.resolve("out/04-73-00-01-package-2-of-2.pdf")) > 10_000);
        assertEquals(2, Run.run("assemble", job.toString(), "04-73-00-01", "--limit", "large").code());
    }

    @Test
    void partsOfAnEarlierDivisionStayAndAreTold() throws IOException {
        Path job = copy("mesa-library");
        Run first = Run.run("assemble", job.toString(), "04-73-00-01", "--split", "kind");
        assertFalse(first.err().contains("earlier"), first.err());
        Run second = Run.run("assemble", job.toString(), "04-73-00-01");
        assertTrue(second.err().contains("04-73-00-01-package-1-of-2.pdf: belongs to an earlier package of another division"),
            second.err());
        assertTrue(Files.exists(job.resolve("out/04-73-00-01-package-1-of-2.pdf")));
        assertFalse(second.err().contains("package.pdf: belongs"), second.err());
    }

    @Test
    void anUnknownSubmittalIsAnsweredWithThoseThatThereAre() {
        Run run = Run.run("assemble", sample("mesa-library"), "99");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("expected one of: 04-73-00-01"), run.err());
    }

    @Test
    void everythingOfACleanJobIsWrittenAndEndsWithZero() throws IOException {
        Path job = copy("harbour-clinic");
        Run run = Run.run("all", job.toString());
        assertEquals(0, run.code(), run.out() + run.err());
        try (Stream<Path> files = Files.walk(job.resolve("out"))) {
            assertEquals(run.out().lines().filter(line -> line.startsWith(job.toString())).count(), files.filter(Files::isRegularFile)
                .count());
        }
    }

    @Test
    void aSecondAuthorAddsARuleWithOneFile() throws IOException {
        Path pack = folder.resolve("pack");
        try (Stream<Path> files = Files.walk(Run.PACK)) {
            for (Path file : files.toList()) {
                Path target = pack.resolve(Run.PACK.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        Files.writeString(pack.resolve("rules/office.height.yaml"), """
            id: office.height
            kind: caution
            each: wall
            since: "0.1"
            holds: 'wall.height <= q("10 ft")'
            says: "{wall.height} is higher than this office likes."
            fix: Ask the partner.
            basis: [{document: office practice, known: common practice}]
            examples:
              holds: [{wall.height: 9 ft}]
              breaks: [{wall.height: 11 ft}]
              gap: [{}]
            """);
        Run run = Run.run("check", sample("harbour-clinic"), "--pack", pack.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("26 ft is higher than this office likes."), run.out());
    }
}

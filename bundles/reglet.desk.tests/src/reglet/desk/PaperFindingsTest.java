package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Finding;
import reglet.model.PaperRule;

/** One fault at a time, planted in a person's own text in a clean sample job. */
class PaperFindingsTest {
    private static final String MASONRY = "04-73-00";
    @TempDir
    Path folder;

    private OpenJob with(String section, String text) throws Exception {
        Path job = folder.resolve("job");
        if (Files.notExists(job)) {
            Samples.copy("harbour-clinic", job);
        }
        Files.createDirectories(job.resolve("sections"));
        Files.writeString(job.resolve("sections/" + section + ".md"), text);
        return Samples.desk().open(job);
    }

    private static List<String> lines(List<Finding> findings) {
        return findings.stream().map(finding -> finding.rule() + " " + finding.at()).toList();
    }

    private static Arguments fault(String section, String text, String found, String says) {
        return Arguments.of(section, text, found, says);
    }

    static Stream<Arguments> faults() {
        return Stream.of(
            fault(MASONRY, "## change mortar.water\n> Water: Clean, and fit to drink.\n\nWater: To ASTM C 1602-18.\n", "paper.cited 4:1",
                "cites ASTM C1602, which its references do not list"),
            fault(MASONRY, "## strike references.ASTM_C150\n", "paper.cited 1:1",
                "cites ASTM C150, which its references do not list any more"),
            fault(MASONRY, "## add after references.ASTM_C144\nASTM C1329, Mortar Cement.\n", "paper.listed 2:1",
                "list ASTM C1329, which nothing in the section cites"),
            fault(MASONRY, "## add after mortar.water\nJoint reinforcement: galvanized ladder wire.\n", "paper.execution 2:1",
                "\"Joint reinforcement\" of Paragraph 2.5.D of Section 04 73 00 stands in Part 2"),
            fault(MASONRY, "## strike top_vent.install\n\n## strike top_vent.cover\n\n## leave out top_vent.spacer\nThe trim is the "
                + "roofer's.\n",
                "paper.execution 1:1", "Top vent stands in Part 2"),
            fault(MASONRY, "## strike top_vent.install/1\n", "paper.printed 1:1",
                "Top vent: spacer board above the veneer at least 3/4 in"),
            fault(MASONRY, "## add after silica.plan\nSnow guards: Product data.\n", "paper.submittal 2:1", "asks for \"Snow guards\""),
            fault(MASONRY, "## change mortar.water\nWater: [from the main].\n", "paper.undecided 2:8", "leaves \"[from the main]\" open"),
            fault(MASONRY, "## add after top_vent.install\nBring lath under it.\nLap lath 2 in at its ends.\n", "paper.values 3:10",
                "says 2 in for Lath, lap of edges and ends; the choices require at least 1 in (25.4 mm) or at least 1-1/2 in (38.1 mm)"),
            fault(MASONRY, "## add after scratch_coat.install\nThickness of the setting bed: at least 1/2 in.\n", "paper.values 2:40",
                "says at least 1/2 in for Setting bed, thickness; the choices require at most 1/2 in (12.7 mm)"),
            fault(MASONRY, "## add after veneer.install\nFill their edges with polyurethane sealant.\n", "paper.sections 2:23",
                "says polyurethane for Joint sealant, base; Section 07 92 00 requires silicone"),
            fault("07-62-00", "## add after metal_flashing.install\nSealant under laps: width 3/4 in.\n", "paper.sections 2:27",
                "Section 07 92 00 requires 1/2 in"),
            fault(MASONRY, "## add after veneer.install\nDo it as Article 2.19 says.\n", "paper.reference 2:10", "refers to Article 2.19"),
            fault(MASONRY, "## add after veneer.install\nPaint under Section 09 91 13.\n", "paper.reference 2:13",
                "refers to Section 09 91 13, which this job does not write"),
            fault(MASONRY, "## strike mixes.mixing\n\n## add after veneer.install\nMix as in ${see.mixes_mixing}.\n",
                "paper.reference 4:11",
                "refers to \"mixes.mixing\", which is not printed"),
            fault(MASONRY, "## change mortar.water\n> Water: Clean.\n\nWater: Clean, from the main.\n", "paper.library 1:1",
                "your text prints as it is: \"Water: Clean, from the main.\""),
            fault(MASONRY, "## change mortar.water\n> Water: Clean, and fit to wash in.\n\nMixing water: Clean, and fit to wash in.\n",
                "paper.library 1:1", "what is new prints in yours: \"Mixing water: Clean, and fit to drink.\""),
            fault(MASONRY, "## change mortar.water\n> Water: Clean, ${lath.weight}.\n\nWater: Clean.\n", "paper.library 1:1",
                "with other slots; your text prints as it is"),
            fault(MASONRY, "## add after veneer.install\nClean units as required.\n", "paper.wording 2:13", "says \"as required\""),
            fault(MASONRY, "## add after veneer.install\nLay ${lath.wieght} flat.\n", "paper.text 1:1", "there is nothing to print for"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aFaultInOwnTextIsFoundAtItsPlaceAndNothingElse(String section, String text, String found, String says) throws Exception {
        OpenJob job = with(section, text);
        assertEquals(List.of(found.replace(" ", " sections/" + section + ".md:")), lines(job.checked().findings()),
            () -> job.checked().findings().stream().map(Finding::says).toList().toString());
        assertTrue(job.checked().findings().get(0).says().contains(says), job.checked().findings().get(0).says());
    }

    @Test
    void everyRuleForPapersIsShownByAFault() {
        List<String> shown = faults().map(fault -> ((String) fault.get()[2]).split(" ")[0]).distinct().sorted().toList();
        // what is wrong with the register and with questions stands in files of its own: see RegisterOfJobsTest, IssuesTest
        assertEquals(Stream.of(PaperRule.values()).filter(rule -> rule != PaperRule.REGISTER && rule != PaperRule.QUESTION)
            .map(PaperRule::id).sorted().toList(), shown);
    }

    @Test
    void soundOwnTextIsLeftAlone() throws Exception {
        OpenJob job = with(MASONRY, """
            ## change mortar.water
            > Water: Clean, and fit to drink.

            Water: Clean, fit to drink, and not taken from ponds.

            ## add after veneer.install
            Keep units 3 in away from downpipes. Lap lath at least 1-1/2 in where it is woven, as ASTM C1063 and ${std.ASTM_C1780} ask.
            Mat of thickness 3/8 in over sheathing of 7/16 in is what the beads are made for. Wash tools within 2 h.
            Do not use polyurethane sealant; see ${see.lath} and Section 07 92 00.

            ## add after top_vent.install
            Downpipe brackets: Fix them through casing beads, with a free opening of at least 3/8 in left in the top vent above.

            ## strike cleaning.work
            """);
        assertEquals(List.of(), job.checked().findings().stream().map(Finding::says).toList());
    }

    @Test
    void anAcceptedFindingOfAPaperDoesNotStand() throws Exception {
        with(MASONRY, "## add after veneer.install\nClean units as required.\n");
        Files.writeString(folder.resolve("job/accepted.yaml"), "- {rule: paper.wording, because: the owner's words, by: A. Reviewer}\n");
        OpenJob job = Samples.desk().open(folder.resolve("job"));
        assertEquals(List.of(), lines(job.checked().findings()));
        assertEquals(List.of("paper.wording"), job.checked().accepted().stream().map(Finding::rule).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void theLibrarysOwnTextHasNoSuchFault(String name) throws Exception {
        assertEquals(List.of(), Samples.open(name).paper().stream().map(Finding::says).toList());
    }
}

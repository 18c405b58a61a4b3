package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import reglet.model.Comparison;
import reglet.model.Finding;
import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Under;
import reglet.model.Remedies;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.UnusableInput;

/** Alternates through all papers of a job. */
class AlternatesOfJobsTest extends ThreeAlternates {
    private static final String SUBMITTAL = "submittals/04-73-00-01/submittal.yaml";

    private static RegisterItem item(OpenJob job, String id) throws Exception {
        return job.register(SECTION).stream().filter(item -> item.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void anAcceptedAlternateReplacesTheTextAndItsArticleTellsWhereItStands() throws Exception {
        taken(1, "yes");
        OpenJob job = open();
        assertTrue(paragraph(job, "lath.metal").startsWith("Lath: 3.4 lb self-furring stainless steel lath"));
        assertEquals("", paragraph(job, "lath.metal~alternate-1"));
        String path = job.section(SECTION).paragraphs().stream().filter(found -> found.id().equals("lath.metal")).findFirst().orElseThrow()
            .path();
        String told = paragraph(job, "alternates-1");
        assertTrue(told.startsWith("Alternate No. 1, stainless lath: ") && told.contains("Accepted, and part of the Work. Specified in ")
            && told.contains("Paragraph " + path), told);
        assertTrue(paragraph(job, "alternates-2").contains("If it is accepted, "), "the other is still offered");
        assertTrue(paragraph(job, "mat.material~alternate-2").startsWith("Alternate No. 2: "));
    }

    @Test
    void aDeclinedAlternateIsToldAndPrintsNothingElse() throws Exception {
        taken(2, "no");
        OpenJob job = open();
        assertEquals("Alternate No. 2, thicker mat. Declined, and no part of the Work.", paragraph(job, "alternates-2"));
        assertEquals("", paragraph(job, "mat.material~alternate-2"));
        assertEquals(Under.State.DECLINED, item(job, "mat.product-data~alternate-2").under().orElseThrow().state());
    }

    @Test
    void whatAnAlternateAsksForStandsInTheRegisterAndIsNotDueUntilItIsAccepted() throws Exception {
        Files.writeString(folder.resolve("register.yaml"), "format: 1\nreview: 10 days\nplan:\n"
            + "  - {section: 04 73 00, on_site: 2026-06-01, lead: 6 weeks}\n");
        OpenJob offered = open();
        RegisterItem apart = item(offered, "lath.product-data~alternate-1");
        assertFalse(apart.isDue());
        assertEquals("not due", apart.status());
        assertEquals("Alternate No. 1, offered", apart.under().orElseThrow().text());
        assertTrue(apart.timing().isEmpty(), "no day to hand it in");
        assertTrue(item(offered, "lath.product-data").timing().isPresent());

        taken(1, "yes");
        OpenJob accepted = open();
        RegisterItem item = item(accepted, "lath.product-data");
        assertTrue(item.isDue() && item.timing().isPresent());
        assertEquals("Alternate No. 1, accepted", item.under().orElseThrow().text());
        assertTrue(accepted.register(SECTION).stream().noneMatch(one -> one.id().endsWith("~alternate-1")));
    }

    @Test
    void whatAnAcceptedAlternateReplacesIsToldAndNoLongerDue() throws Exception {
        // without a tested mock-up there is no report of its test
        change("walls/W1.yaml", "mockup: {accept: [freestanding-tested], by: specifier}",
            "mockup: {accept: [freestanding-tested], by: specifier, alternates: {1: {accept: [none]}}}");
        taken(1, "yes");
        OpenJob job = open();
        List<String> built = job.register(SECTION).stream().filter(RegisterItem::isDue).map(RegisterItem::id).toList();
        List<RegisterItem> gone = job.register(SECTION).stream().filter(one -> one.under().filter(under -> under.state()
            == Under.State.REPLACED).isPresent()).toList();
        List<String> before = job.assembly().without().get(List.of(1)).job().walls().isEmpty() ? List.of()
            : Samples.desk().open(folder).with(job.job().taking(List.of())).register(SECTION).stream().map(RegisterItem::id).toList();
        assertEquals(before.stream().filter(id -> !built.contains(id)).collect(Collectors.toSet()),
            gone.stream().map(RegisterItem::id).collect(Collectors.toSet()), "nothing leaves without a word");
        assertFalse(gone.isEmpty());
        gone.forEach(one -> {
            assertEquals("replaced by Alternate No. 1", one.under().orElseThrow().text());
            assertEquals("not due", one.status());
        });
    }

    @Test
    void aPersonsSplitOfAnAlternatesItemSurvivesItsAcceptance() throws Exception {
        Files.writeString(folder.resolve("register.yaml"), """
            format: 1
            changes:
              - split: lath.sample~alternate-1
                into: [{id: lath.piece, item: Piece of lath}, {id: lath.lap, item: Lap of two pieces}]
                because: the owner wants to see a lap
                by: A. Person
            """);
        assertEquals(Under.State.OFFERED, item(open(), "lath.lap").under().orElseThrow().state());
        taken(1, "yes");
        OpenJob job = open();
        assertTrue(item(job, "lath.lap").isDue());
        assertEquals(List.of(), job.register().lost());
    }

    @Test
    void theRegisterPrintsTheAlternateInItsOwnColumnAndForPrograms() throws Exception {
        OpenJob job = open();
        String csv = text(Outputs.of(job).register().make(), "register.csv");
        String head = csv.substring(0, csv.indexOf("\r\n"));
        assertTrue(List.of(head.split(",")).contains("alternate"), head);
        assertTrue(csv.contains("not due,\"Alternate No. 2, offered\""), csv);
        assertTrue(Forms.text(Forms.register(SECTION, job.register(SECTION))).contains("\"alternate state\": \"offered\""));
    }

    private static String text(List<Output> outputs, String name) {
        return new String(outputs.stream().filter(output -> output.name().equals(name)).findFirst().orElseThrow().bytes(),
            StandardCharsets.UTF_8);
    }

    @Test
    void aConflictThatOnlyTwoAlternatesTogetherBringNamesBoth() throws Exception {
        OpenJob offered = open();
        assertEquals(List.of(), brought(offered, 2));
        assertEquals(List.of(), brought(offered, 3));
        Finding together = brought(offered, 2, 3).stream().filter(found -> found.rule().equals("lath_fastener.past-steel")).findFirst()
            .orElseThrow();
        assertTrue(together.says().startsWith("Alternates No. 2 and No. 3 together: "), together.says());
        taken(2, "yes");
        taken(3, "yes");
        OpenJob both = open();
        assertEquals(List.of("lath_fastener.past-steel"), brought(both, 2, 3).stream().map(Finding::rule).toList());
        assertFalse(both.checked().isClean());
    }

    @Test
    void twoAcceptedAlternatesThatChooseDifferentlyAreAnErrorWithBothPlaces() throws Exception {
        taken(1, "yes");
        taken(3, "yes");
        List<String> problems = assertThrows(UnusableInput.class, this::open).problems().stream().map(Object::toString).toList();
        assertEquals(2, problems.size(), problems.toString());
        assertTrue(problems.stream().allMatch(problem -> problem.contains("Alternate No. 1") && problem.contains("Alternate No. 3")
            && problem.contains("walls/W1.yaml:") && problem.contains("lath_fastener")), problems.toString());
    }

    @Test
    void aRemedyOfWhatAnAlternateBringsEditsTheAlternatesOwnChoice() throws Exception {
        change("walls/W1.yaml", "2: {accept: [filament-3-8]}", "2: {accept: [filament-3-4]}");
        OpenJob job = open();
        Finding finding = brought(job, 2).stream()
            .filter(found -> found.rule().equals("lath_fastener.past-steel")).findFirst().orElseThrow();
        Remedies remedies = job.remedies(finding);
        assertTrue(remedies.all().stream().flatMap(remedy -> remedy.changes().stream())
            .anyMatch(change -> change.set().equals("W1.mat.alternates.2")), remedies.toString());
        assertTrue(remedies.all().stream().flatMap(remedy -> remedy.changes().stream()).noneMatch(change -> change.set().equals("W1.mat")));
        var one = remedies.all().stream().filter(remedy -> remedy.changes().size() == 1
            && remedy.changes().get(0).set().equals("W1.mat.alternates.2")).findFirst().orElseThrow();
        OpenJob mended = Saving.apply(job, one.changes());
        assertEquals(List.of(), brought(mended, 2).stream().filter(found -> found.rule().equals("lath_fastener.past-steel")).toList());
        String wall = Files.readString(folder.resolve("walls/W1.yaml"));
        assertTrue(wall.contains("mat: {accept: [filament-1-4], by: specifier, alternates: {2: {accept: ["
            + one.changes().get(0).to() + "]}}}"),
            "the base's own line stays");
        taken(2, "yes");
        assertEquals(one.changes().get(0).to(),
            open().assembly().job().wall("W1").orElseThrow().choice("mat").orElseThrow().accept().get(0));
    }

    @Test
    void aSubmittalForAnAlternateThatIsNotAcceptedIsToldSoAndNothingIsDemanded() throws Exception {
        change(SUBMITTAL, "items: [", "items: [mat.sample~alternate-2, ");
        OpenJob job = open();
        Comparison comparison = job.compare(job.job().submittals().get(0));
        assertEquals(List.of("Covers mat.sample of Alternate No. 2, thicker mat, "
            + "which is offered and not accepted: nothing is asked for it."),
            comparison.remarks());
        assertEquals(results(Samples.open("mesa-library").compare(job.job().submittals().get(0))), results(comparison));
        assertEquals("handed in: 04-73-00-01; not due", item(job, "mat.sample~alternate-2").status());
        assertEquals(List.of(), job.register().lost());
    }

    private static List<String> results(Comparison comparison) {
        return comparison.rows().stream().map(row -> row.id() + " " + row.result() + " " + row.note()).toList();
    }

    @Test
    void aProductForWhatAnAlternateReplacedIsToldSo() throws Exception {
        taken(1, "yes");
        OpenJob job = open();
        Comparison comparison = job.compare(job.job().submittals().get(0));
        assertTrue(comparison.remarks().stream().anyMatch(told -> told.contains("comes nearer to what was required before Alternate No. 1, "
            + "stainless lath, was accepted.")), comparison.remarks().toString());
        Comparison.Row row = comparison.rows().stream().filter(one -> one.requirement().path().equals("lath.corrosion")).findFirst()
            .orElseThrow();
        assertTrue(row.note().startsWith("As Alternate No. 1 requires."), row.note());
        Comparison.Row weight = comparison.rows().stream().filter(one -> one.requirement().path().equals("lath.weight")).findFirst()
            .orElseThrow();
        assertFalse(weight.note().contains("Alternate"), "the weight is what the base required too");
    }

    @Test
    void drawingsAndWorksheetsFollowAnAcceptedAlternateAndCanBeAskedForOneThatIsOffered() throws Exception {
        OpenJob offered = open();
        OpenJob supposed = offered.supposing(List.of(2));
        taken(2, "yes");
        OpenJob accepted = open();
        assertEquals(accepted.details("W1"), supposed.details("W1"));
        assertNotEquals(offered.details("W1"), supposed.details("W1"));
        assertEquals(accepted.worksheets(), supposed.worksheets());
        assertEquals("Mesa library, as if Alternate No. 2 was accepted", supposed.job().title());
        assertEquals(folder.resolve("out/alternate-2"), supposed.out());
        assertEquals(folder.resolve("out"), accepted.out());
        assertThrows(UnusableInput.class, () -> offered.supposing(List.of(9)));
        assertThrows(UnusableInput.class, () -> offered.supposing(List.of(1, 3)));
    }

    @Test
    void quantitiesStandBesideThoseOfEachOfferedAlternate() throws Exception {
        String table = text(Outputs.of(open()).worksheets().make(), "quantities-alternates.csv");
        Map<String, List<String>> rows = table.lines().filter(line -> line.contains("thicker mat"))
            .collect(Collectors.toMap(line -> line, line -> List.of(line.replace("\"Alternate No. 2, thicker mat\",", "").split(","))));
        assertFalse(rows.isEmpty());
        rows.forEach((line, cells) -> {
            int last = cells.size();
            assertEquals(Double.parseDouble(cells.get(last - 3)) - Double.parseDouble(cells.get(last - 4)),
                Double.parseDouble(cells.get(last - 2)), 1e-6, line);
        });
    }

    @Test
    void theReviewersReportTellsWhichAlternatesAreAcceptedAndWhatTheProductWasMadeFor() throws Exception {
        taken(2, "yes");
        OpenJob job = open();
        byte[] report = Outputs.of(job).review(job.job().submittals().get(0)).make().stream()
            .filter(output -> output.name().endsWith("-review.pdf")).findFirst().orElseThrow().bytes();
        try (PDDocument pdf = Loader.loadPDF(report)) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("Alternates accepted Alternate No. 2, thicker mat"), text);
            assertTrue(text.contains("comes nearer to what was required before Alternate No. 2, thicker mat, was accepted."), text);
        }
    }

}

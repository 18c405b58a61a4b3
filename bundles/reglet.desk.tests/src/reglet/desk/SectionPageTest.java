package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.SectionChanges;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

class SectionPageTest {
    private static final String MASONRY = "04 73 00";
    private static final String FILE = SectionEdits.file(MASONRY);
    private static final String WATER = "mortar.water";

    @TempDir
    Path folder;
    private OpenJob job;

    @BeforeEach
    void open() throws Exception {
        job = Samples.desk().open(Samples.copy("harbour-clinic", folder.resolve("job")));
    }

    private static List<String> ids(OpenJob job) throws UnusableInput {
        return job.section(MASONRY).paragraphs().stream().map(Paragraph::id).toList();
    }

    private static Line line(OpenJob job, String id) throws UnusableInput {
        return SectionPage.of(job, MASONRY).line(id).orElseThrow();
    }

    @Test
    void withoutChangesThePageIsTheDraftAndAllOfItTheLibrarys() throws Exception {
        SectionPage page = SectionPage.of(job, MASONRY);
        assertEquals(job.section(MASONRY).paragraphs(), page.lines().stream().map(Line::paragraph).toList());
        assertTrue(page.lines().stream().noneMatch(Line::isOwn));
        assertTrue(page.lines().stream().anyMatch(line -> !line.notes().isEmpty()));
        assertFalse(page.line("references.ASTM_C144").orElseThrow().fixed().isEmpty());
    }

    @Test
    void aStruckParagraphStandsWhereItWasAndTheOthersHaveTheNumbersThatPrint() throws Exception {
        List<String> before = ids(job);
        OpenJob struck = OwnTexts.strike(job, MASONRY, WATER);
        SectionPage page = SectionPage.of(struck, MASONRY);
        assertEquals(before, page.lines().stream().map(Line::id).toList());
        assertEquals(Standing.STRUCK, page.line(WATER).orElseThrow().standing());
        Map<String, String> printed = struck.section(MASONRY).paragraphs().stream()
            .collect(Collectors.toMap(Paragraph::id, Paragraph::path));
        page.lines().stream().filter(line -> line.standing() != Standing.STRUCK)
            .forEach(line -> assertEquals(printed.get(line.id()), line.paragraph().path()));
        assertEquals(WATER, page.line(WATER).orElseThrow().block().orElseThrow().paragraph());
    }

    @Test
    void anOwnTextStandsBesideTheLibrarysWordByWord() throws Exception {
        OpenJob changed = OwnTexts.change(job, MASONRY, WATER, "Water: Clean, and fit to wash in.");
        Line own = line(changed, WATER);
        assertEquals(Standing.OWN, own.standing());
        assertEquals(List.of("drink"), own.differences().stream().filter(run -> run.edit() == SectionChanges.Edit.DELETED)
            .map(run -> run.span().text().strip()).toList());
        assertEquals("wash in", own.differences().stream().filter(run -> run.edit() == SectionChanges.Edit.INSERTED)
            .map(run -> run.span().text()).collect(Collectors.joining()).strip());
        Line added = line(OwnTexts.add(changed, MASONRY, WATER, "Ice: As required."), WATER + "+1");
        assertEquals(Standing.ADDED, added.standing());
        assertTrue(added.findings().stream().anyMatch(finding -> finding.rule().equals("paper.wording")), added.findings().toString());
    }

    @Test
    void whereTheLibraryMovedThePersonsTextMayStayAsItWasWritten() throws Exception {
        OpenJob old = Saving.restore(job, Map.of(FILE, "## change mortar.water\n> Water: Clean, and fit to wash in.\n\n"
            + "Mixing water: Clean, and fit to wash in.\n"));
        SectionPage.LibraryMoved moved = line(old, WATER).move().orElseThrow();
        assertEquals("Water: Clean, and fit to drink.", moved.today());
        assertTrue(moved.takenIn());
        assertEquals("Mixing water: Clean, and fit to drink.", moved.prints());
        OpenJob kept = OwnTexts.keep(old, MASONRY, WATER);
        assertTrue(line(kept, WATER).move().isEmpty());
        assertEquals("Mixing water: Clean, and fit to wash in.", line(kept, WATER).paragraph().plain());
    }

    @Test
    void aParagraphMovesUpAndDownAndBackLeavesNoTrace() throws Exception {
        List<String> before = ids(job);
        int at = before.indexOf(WATER);
        OpenJob up = OwnTexts.up(job, MASONRY, WATER);
        assertEquals(at - 1, ids(up).indexOf(WATER));
        assertTrue(line(up, WATER).moved() || line(up, before.get(at - 1)).moved());
        assertEquals("", Saving.text(OwnTexts.down(up, MASONRY, WATER), FILE));
        OpenJob top = OwnTexts.up(OwnTexts.up(job, MASONRY, WATER), MASONRY, WATER);
        assertEquals(at - 2, ids(top).indexOf(WATER));
        assertEquals(before, ids(OwnTexts.down(OwnTexts.down(top, MASONRY, WATER), MASONRY, WATER)));
    }

    private static List<SectionDocument.Article> articles(OpenJob job) throws UnusableInput {
        return job.section(MASONRY).parts().stream().flatMap(part -> part.articles().stream()).toList();
    }

    private static List<String> tops(SectionDocument.Article article) {
        return article.paragraphs().stream().map(Paragraph::id).toList();
    }

    @Test
    void pastTheEdgeOfItsArticleAParagraphMovesIntoTheNextOneAndBackLeavesNoTrace() throws Exception {
        List<SectionDocument.Article> articles = articles(job);
        for (int i = 0; i + 1 < articles.size(); i++) {
            String last = tops(articles.get(i)).get(tops(articles.get(i)).size() - 1);
            if (List.of("references", "summary").contains(articles.get(i + 1).id()) || articles.get(i).paragraphs().size() == 1
                || last.startsWith("references.")) {
                continue;
            }
            String next = articles.get(i + 1).id();
            OpenJob down = OwnTexts.down(job, MASONRY, last);
            assertEquals(last, tops(articles(down).stream().filter(one -> one.id().equals(next)).findFirst().orElseThrow()).get(0));
            assertEquals("## move " + last + " after " + next + "\n", Saving.text(down, FILE));
            OpenJob back = OwnTexts.up(down, MASONRY, last);
            assertEquals("", Saving.text(back, FILE), last);
            assertEquals(ids(job), ids(back));
        }
    }

    @Test
    void aParagraphWalksThroughWholeArticlesAndBack() throws Exception {
        List<String> before = ids(job);
        OpenJob walking = job;
        List<String> homes = new java.util.ArrayList<>();
        for (int i = 0; i < 12; i++) {
            walking = OwnTexts.down(walking, MASONRY, WATER);
            homes.add(home(walking, WATER));
        }
        assertTrue(homes.stream().distinct().count() >= 2, homes.toString());
        for (int i = 0; i < 12; i++) {
            walking = OwnTexts.up(walking, MASONRY, WATER);
        }
        assertEquals(before, ids(walking));
        assertEquals("", Saving.text(walking, FILE));
    }

    private static String home(OpenJob job, String id) throws UnusableInput {
        return articles(job).stream().filter(article -> tops(article).contains(id)).findFirst().orElseThrow().id();
    }

    @Test
    void whereNoArticleIsLeftTheParagraphStaysAndItIsSaid() throws Exception {
        List<SectionDocument.Article> articles = articles(job);
        SectionDocument.Article end = articles.get(articles.size() - 1);
        UnusableInput last = assertThrows(UnusableInput.class,
            () -> OwnTexts.down(job, MASONRY, tops(end).get(end.paragraphs().size() - 1)));
        assertTrue(last.getMessage().contains("stands last in the section"), last.getMessage());
        Paragraph listed = job.section(MASONRY).paragraphs().stream().filter(one -> !one.children().isEmpty()).findFirst().orElseThrow();
        UnusableInput below = assertThrows(UnusableInput.class, () -> OwnTexts.up(job, MASONRY, listed.children().get(0).id()));
        assertTrue(below.getMessage().contains("below the one that it belongs to"), below.getMessage());
    }

    @Test
    void ofABlockOfSeveralParagraphsAndListsOnlyTheWordsAtHandAreOpenedAndWrittenBack() throws Exception {
        String block = """
            ## change mortar.water
            > Water: Clean, and fit to drink.

            Water: Clean,
            from the main, ${lath.weight}.

            - Warm in winter,
              as **stored**.
              - Above 40 °F.
              - Below 120 °F.
            - Cool in summer.

            Ice: None.
            - Nor snow.
            """;
        OpenJob changed = Saving.restore(job, Map.of(FILE, block));
        Map<String, String> opens = Map.of(WATER, "Water: Clean,\nfrom the main, ${lath.weight}.", WATER + "/1",
            "Warm in winter,\nas **stored**.", WATER + "/1/2", "Below 120 °F.", WATER + "/2", "Cool in summer.", WATER + "+1", "Ice: None.",
            WATER + "+1/1", "Nor snow.");
        SectionPage page = SectionPage.of(changed, MASONRY);
        opens.forEach((id, text) -> assertEquals(text, page.line(id).orElseThrow().written(), id));
        Map<String, String> written = Map.of(WATER, "Water: From the well.", WATER + "/1", "Warm\nalways.", WATER + "/1/2", "Cold.",
            WATER + "/2", "Cool.", WATER + "+1", "Ice: A little.", WATER + "+1/1", "Nor hail.");
        for (String id : opens.keySet()) {
            OpenJob after = OwnTexts.change(changed, MASONRY, id, written.get(id));
            // an item's further lines stand as deep as its first
            String indent = id.contains("/1/") ? "    " : id.contains("/") ? "  " : "";
            assertEquals(block.replace(opens.get(id).replace("\n", "\n" + indent), written.get(id).replace("\n", "\n" + indent)),
                Saving.text(after, FILE), id);
            assertEquals(ids(changed), ids(after));
            assertEquals(opens.get(id), OwnTexts.of(changed, MASONRY, id).text());
            Saving.restore(after, Map.of(FILE, block));
        }
        assertEquals(opens.get(WATER), OwnTexts.of(changed, MASONRY, WATER).text());
    }

    @Test
    void paragraphsAddedInSeveralBlocksAreToldApart() throws Exception {
        String blocks = "## add after mortar.water\n\nIce: None.\n\nSnow: None.\n\n## add after mortar.water\n\nHail: None.\n\n"
            + "- Nor sleet.\n";
        OpenJob added = Saving.restore(job, Map.of(FILE, blocks));
        SectionPage page = SectionPage.of(added, MASONRY);
        assertEquals("Snow: None.", page.line(WATER + "+2").orElseThrow().written());
        assertEquals("Hail: None.", page.line(WATER + "+3").orElseThrow().written());
        assertEquals("Nor sleet.", page.line(WATER + "+3/1").orElseThrow().written());
        OpenJob fog = OwnTexts.change(added, MASONRY, WATER + "+3/1", "Nor fog.");
        assertEquals(blocks.replace("Nor sleet.", "Nor fog."), Saving.text(fog, FILE));
    }

    @Test
    void aRequirementIsLeftOutWithItsReasonAndGivingBackLeavesNoTrace() throws Exception {
        String weight = SectionPage.of(job, MASONRY).lines().stream().filter(line -> line.printed().containsKey("lath.weight"))
            .map(Line::id).findFirst().orElseThrow();
        OpenJob left = OwnTexts.leaveOut(job, MASONRY, weight, "The owner has the lath\nin store (A. Person)");
        String file = Saving.text(left, FILE);
        assertTrue(file.startsWith("## strike " + weight + "\n"), file);
        assertTrue(file.contains("## leave out lath.weight\nThe owner has the lath in store (A. Person)\n"), file);
        assertEquals(List.of(), left.paper().stream().filter(finding -> finding.rule().equals("paper.printed")).toList());
        assertEquals(List.of("The owner has the lath in store (A. Person)"), line(left, weight).leftOut());
        assertEquals("", Saving.text(OwnTexts.giveBack(left, MASONRY, weight), FILE));
    }

    @Test
    void whatATextOfAPersonsNoLongerStatesIsLeftOutWithoutStrikingIt() throws Exception {
        String weight = SectionPage.of(job, MASONRY).lines().stream().filter(line -> line.printed().containsKey("lath.weight"))
            .map(Line::id).findFirst().orElseThrow();
        OpenJob changed = OwnTexts.change(job, MASONRY, weight, "Weight: As in store.");
        assertTrue(changed.paper().stream().anyMatch(finding -> finding.rule().equals("paper.printed")));
        OpenJob left = OwnTexts.leaveOut(changed, MASONRY, weight, "In store (A. Person)");
        assertTrue(Saving.text(left, FILE).contains("Weight: As in store.\n\n## leave out lath.weight\nIn store (A. Person)\n"),
            Saving.text(left, FILE));
        assertEquals(List.of(), left.paper().stream().filter(finding -> finding.rule().equals("paper.printed")).toList());
        assertThrows(UnusableInput.class, () -> OwnTexts.leaveOut(job, MASONRY, WATER, "Nothing"));
    }

    @Test
    void whatWasAddedBehindAParagraphGoesAlongWithItAndMovesAmongItsLike() throws Exception {
        OpenJob added = OwnTexts.add(OwnTexts.add(job, MASONRY, WATER, "Ice: None."), MASONRY, WATER, "Snow: None.");
        List<String> ids = ids(added);
        String file = Saving.text(added, FILE);
        int at = ids.indexOf(WATER);
        OpenJob up = OwnTexts.up(added, MASONRY, WATER);
        assertEquals(List.of(WATER, WATER + "+1", WATER + "+2", ids.get(at - 1)), ids(up).subList(at - 1, at + 3));
        OpenJob swapped = OwnTexts.up(Saving.restore(up, Map.of(FILE, file)), MASONRY, WATER + "+2");
        assertEquals(List.of(WATER, WATER + "+2", WATER + "+1"), ids(swapped).subList(at, at + 3));
    }

    @Test
    void aTextThatCannotBePrintedIsRefusedAndWritesNothing() throws Exception {
        UnusableInput wrong = assertThrows(UnusableInput.class, () -> OwnTexts.change(job, MASONRY, WATER, "Water: ${mortar.wather}."));
        assertTrue(wrong.getMessage().contains("mortar.wather"), wrong.getMessage());
        assertThrows(UnusableInput.class, () -> OwnTexts.add(job, MASONRY, WATER, "- a list\n- alone"));
        assertEquals("", Saving.text(job, FILE));
    }

    @Test
    void aTextThatSaysWhatTheLibrarySaysIsTheLibrarysAgain() throws Exception {
        OpenJob changed = OwnTexts.change(job, MASONRY, WATER, "Water: Any.");
        assertEquals("", Saving.text(OwnTexts.change(changed, MASONRY, WATER, "Water: Clean, and fit to drink."), FILE));
    }

    @Test
    void strikingOneOfTwoParagraphsThatCameTogetherLeavesTheOther() throws Exception {
        OpenJob added = OwnTexts.add(job, MASONRY, WATER, "Ice: None.\n\nSnow: None.");
        OpenJob struck = OwnTexts.strike(added, MASONRY, WATER + "+1");
        assertEquals(List.of("Snow: None."), struck.section(MASONRY).paragraphs().stream().filter(one -> one.id().startsWith(WATER + "+"))
            .map(Paragraph::plain).toList());
    }
}

package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Finding;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;

class TextChangesTest {

    private static SectionDocument draft(Sample sample) throws UnusableInput {
        return Drafter.draft(sample.assembly(), Sample.SECTION, "");
    }

    private static List<String> ids(SectionDocument section, String article) {
        return section.parts().stream().flatMap(part -> part.articles().stream()).filter(one -> one.id().equals(article))
            .flatMap(one -> one.paragraphs().stream()).map(Paragraph::id).toList();
    }

    private static List<Finding> texts(Sample sample) throws UnusableInput {
        Assembly assembly = sample.assembly();
        return PaperCheck.findings(assembly, List.of(Drafter.draft(assembly, Sample.SECTION, ""))).stream()
            .filter(finding -> finding.rule().equals("paper.text")).toList();
    }

    @Test
    void aMovedParagraphTakesAlongWhatStandsBelowAndWhatWasAddedBehindIt() throws UnusableInput {
        Sample sample = Sample.small().change(Kind.ADD, "lath.metal", "More.").change(Kind.ADD, "lath.metal", "Yet more.");
        String below = draft(sample).paragraphs().stream().filter(one -> one.id().equals("lath.metal")).findFirst().orElseThrow().children()
            .get(0).id();
        List<String> before = ids(draft(sample), "lath");
        assertEquals(List.of("lath.metal", "lath.metal+1", "lath.metal+2"), before.subList(0, 3));
        sample.change(Kind.ADD, "lath.metal+2", "Last.").block(Kind.MOVE, "lath.metal", "", "", "lath.metal+2+1");
        // it can't follow what goes along with it
        assertEquals(4, ids(draft(sample), "lath").stream().filter(id -> id.startsWith("lath.metal")).count());
        Sample swapped = Sample.small().change(Kind.ADD, "lath.metal", "More.").change(Kind.ADD, "lath.metal", "Yet more.")
            .block(Kind.MOVE, "lath.metal+1", "", "", "lath.metal+2");
        assertEquals(List.of("lath.metal", "lath.metal+2", "lath.metal+1"), ids(draft(swapped), "lath").subList(0, 3));
        assertTrue(draft(swapped).paragraphs().stream().anyMatch(one -> one.id().equals(below)));
    }

    @Test
    void behindTheHeadingOfAnArticleAParagraphStandsFirstInIt() throws UnusableInput {
        Sample sample = Sample.small().change(Kind.ADD, "lath.product-data", "More.").change(Kind.ADD, "lath.metal", "Last.")
            .block(Kind.MOVE, "lath.product-data", "", "", "lath").block(Kind.MOVE, "lath.metal+1", "", "", "lath");
        assertEquals(List.of("lath.product-data", "lath.product-data+1", "lath.metal+1", "lath.metal"),
            ids(draft(sample), "lath").subList(0, 4));
        assertEquals(List.of(), texts(sample));
    }

    @Test
    void numbersFollowAMove() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(Kind.ADD, "lath.metal", "More.").change(Kind.ADD, "lath.metal", "Yet more.")
            .block(Kind.MOVE, "lath.metal+1", "", "", "lath.metal+2"));
        List<String> paths = section.paragraphs().stream().filter(one -> one.id().startsWith("lath.metal+")).map(Paragraph::path).toList();
        assertEquals(2, paths.size());
        assertTrue(paths.get(0).endsWith(".B") && paths.get(1).endsWith(".C"), paths.toString());
    }

    @Test
    void aTextWhoseParagraphIsGoneIsKeptMarkedAndTold() throws UnusableInput {
        Sample sample = Sample.small().change(Kind.CHANGE, "lath.mental", "Lath as in ${std.ASTM_C90}.");
        SectionDocument section = draft(sample);
        Paragraph kept = section.paragraphs().stream().filter(Paragraph::own).findFirst().orElseThrow();
        assertEquals("Kept text, its paragraph lath.mental is not drafted: Lath as in ASTM C90.", kept.plain());
        assertTrue(ids(section, "lath").contains("lath.mental+kept1"));
        assertTrue(ids(section, "references").contains("references.ASTM_C90"), "what it cites is listed");
        Finding finding = texts(sample).get(0);
        assertEquals(List.of(), PaperCheck.findings(sample.assembly(), List.of(section)).stream().map(Finding::says)
            .filter(says -> says.contains("Kept text")).toList());
        assertEquals("Section 04 73 00 has no paragraph \"lath.mental\"; your text is kept as " + kept.path() + ".", finding.says());
        assertEquals("Did you mean 'lath.metal'?", finding.fix());
        assertEquals("sections/04-73-00.md:10:1", finding.at().toString());
    }

    @Test
    void aStrikeOrMoveOfWhatIsGoneIsTold() throws UnusableInput {
        assertTrue(texts(Sample.small().change(Kind.STRIKE, "lath.mental", "")).get(0).says().endsWith("nothing is done."));
        assertTrue(texts(Sample.small().block(Kind.MOVE, "lath.metal", "", "", "lath.mental")).get(0).says()
            .contains("no paragraph \"lath.mental\""));
        assertTrue(texts(Sample.small().block(Kind.MOVE, "lath.metal", "", "", "lath.metal/1")).get(0).says().contains("stands below"));
        assertEquals(List.of(), texts(Sample.small().block(Kind.MOVE, "lath.metal", "", "", "references.ASTM_C847")));
    }

    @Test
    void aChangeOfSeveralParagraphsAndAnAddedOneHaveIdsOfTheirOwn() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(Kind.ADD, "lath.metal", "Added.").change(Kind.CHANGE, "lath.metal",
            "One.\n\nTwo."));
        List<String> ids = section.paragraphs().stream().map(Paragraph::id).toList();
        assertEquals(ids.stream().distinct().toList(), ids);
        assertTrue(ids.containsAll(List.of("lath.metal", "lath.metal+1", "lath.metal+2")), ids.toString());
    }

    @Test
    void inWhateverOrderBlocksStandTheSameIsPrintedAndEveryTextOfAPersonIsThere() throws UnusableInput {
        List<TextChange> blocks = Sample.small().change(Kind.CHANGE, "lath.metal", "Mine: ${lath.kind}.")
            .change(Kind.ADD, "lath.metal", "Behind it.").change(Kind.CHANGE, "lath.metal+1", "Behind it, changed.")
            .change(Kind.STRIKE, "lath.product-data", "").change(Kind.ADD, "lath.product-data", "Instead of what is struck.")
            .change(Kind.CHANGE, "lath.gone", "Gone.").change(Kind.CHANGE, "references.ASTM_C847", "Another reference.")
            .block(Kind.MOVE, "lath.metal+1", "", "", "references.ASTM_C847").changes;
        List<String> texts = List.of("Mine: ", "Behind it, changed.", "Instead of what is struck.", "Gone.", "Another reference.");
        Random random = new Random(3);
        String first = null;
        for (int run = 0; run < 60; run++) {
            List<TextChange> shuffled = new ArrayList<>(blocks);
            Collections.shuffle(shuffled, random);
            Sample sample = Sample.small();
            sample.changes.addAll(shuffled);
            String markdown = Markdown.of(draft(sample));
            texts.forEach(text -> assertTrue(markdown.contains(text), () -> text + " is lost in\n" + markdown));
            first = first == null ? markdown : first;
            assertEquals(first, markdown);
        }
    }

    private static String what(Sample sample, TextChange change) {
        return LibraryMove.of(sample.pack(), change).map(move -> move.kind() + " " + move.text()).orElse("none");
    }

    private static String what(String paragraph, String madeOn, String own) {
        Sample sample = Sample.small().block(Kind.CHANGE, paragraph, own, madeOn, "");
        return what(sample, sample.changes.get(0));
    }

    @Test
    void theLibrarysMoveIsSeenBelowAClauseAndAgainstAPrintedQuote() {
        String body = Sample.small().clauses.stream().filter(clause -> clause.id().equals("lath.metal")).findFirst().orElseThrow().body();
        Sample sample = Sample.small();
        assertEquals("none", what("lath.metal", body, "Mine."));
        String below = LibraryText.of(sample.pack(), Sample.SECTION, "lath.metal@W1/1").orElseThrow();
        assertTrue(body.contains(below), below);
        assertEquals("none", what("lath.metal/1", below, "Mine."));
        assertEquals("TAKEN_IN " + below + " And mine.", what("lath.metal/1", "Old " + below, "Old " + below + " And mine."));
        String first = LibraryText.first(body);
        assertEquals("none", what("lath.metal", first, "Mine."));
        String printed = SlotTemplate.without(first, "a thing of 3 in");
        assertEquals("none", what("lath.metal", printed, "Mine."), printed);
        assertTrue(what("lath.metal", "Other " + printed, "Mine.").startsWith("SLOTS"));
    }
}

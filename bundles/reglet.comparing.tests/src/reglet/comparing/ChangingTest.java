package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.Place;
import reglet.model.Question;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;

/** What counts as a change of a section, and how it is told. */
class ChangingTest {

    /** A section of one article; paragraphs as "id: text", deeper ones with leading dashes. */
    private static SectionDocument section(String... paragraphs) {
        return document(Stream.of(paragraphs).map(one -> Map.entry(one.substring(0, one.indexOf(':')),
            List.<Span>of(new Plain(one.substring(one.indexOf(':') + 2))))).toList());
    }

    private static SectionDocument document(List<Map.Entry<String, List<Span>>> paragraphs) {
        List<Paragraph> made = new ArrayList<>();
        for (Map.Entry<String, List<Span>> one : paragraphs) {
            boolean below = one.getKey().startsWith("-");
            if (below) {
                Paragraph above = made.remove(made.size() - 1);
                List<Paragraph> children = new ArrayList<>(above.children());
                String number = String.valueOf(children.size() + 1);
                children.add(new Paragraph(one.getKey().substring(1), number, above.path() + "." + number, 2, false, one.getValue(),
                    List.of()));
                made.add(new Paragraph(above.id(), above.number(), above.path(), 1, false, above.text(), children));
            } else {
                String number = String.valueOf((char) ('A' + made.size()));
                made.add(new Paragraph(one.getKey(), number, "2.1." + number, 1, false, one.getValue(), List.of()));
            }
        }
        return new SectionDocument("04 73 00", "Veneer", "Job", "", "", List.of(), List.of(new Part(1, "GENERAL", List.of()),
            new Part(2, "PRODUCTS", List.of(new Article("lath", "2.1", "LATH", made))), new Part(3, "EXECUTION", List.of())));
    }

    /** "changed 2.1.A", … */
    private static List<String> told(SectionDocument before, SectionDocument after) {
        return changes(before, after).provisions().stream().map(line -> line.kind().text() + " " + line.side().path()).toList();
    }

    private static SectionChanges changes(SectionDocument before, SectionDocument after) {
        return Changing.between(Optional.of(before), Optional.of(after));
    }

    /** The one changed line as "kept [deleted] {inserted}". */
    private static String runs(SectionChanges changes) {
        Line line = changes.provisions().get(0);
        return line.runs().stream().map(run -> switch (run.edit()) {
            case KEPT -> run.span().text();
            case DELETED -> "[" + run.span().text() + "]";
            case INSERTED -> "{" + run.span().text() + "}";
        }).collect(Collectors.joining());
    }

    @Test
    void renumberingAloneIsNoChange() {
        assertEquals(List.of("deleted 2.1.A"), told(section("a: One.", "b: Two.", "c: Three."), section("b: Two.", "c: Three.")));
        assertEquals(List.of("added 2.1.A"), told(section("b: Two.", "c: Three."), section("a: One.", "b: Two.", "c: Three.")));
    }

    @Test
    void aReferenceWhoseNumberMovedIsNoChangeAndOneThatLeadsElsewhereIs() {
        SectionDocument before = document(List.of(Map.entry("a", List.of(new Plain("See "), new CrossReference("b", "Paragraph 2.1.B"))),
            Map.entry("b", List.of(new Plain("Two.")))));
        SectionDocument moved = document(List.of(Map.entry("n", List.of(new Plain("New."))), Map.entry("a", List.of(new Plain("See "),
            new CrossReference("b", "Paragraph 2.1.C"))), Map.entry("b", List.of(new Plain("Two.")))));
        assertEquals(List.of("added 2.1.A"), told(before, moved));
        SectionDocument elsewhere = document(List.of(Map.entry("a", List.of(new Plain("See "), new CrossReference("lath", "Article 2.1"))),
            Map.entry("b", List.of(new Plain("Two.")))));
        assertEquals("See [Paragraph 2.1.B]{Article 2.1}", runs(changes(before, elsewhere)));
    }

    @Test
    void changesAreToldWordByWordAndNumbersStayWhole() {
        assertEquals("Lap at least [3/8]{1/2} in, ends {staggered and }on framing.",
            runs(changes(section("a: Lap at least 3/8 in, ends on framing."),
                section("a: Lap at least 1/2 in, ends staggered and on framing."))));
    }

    @Test
    void neighbouringWordsAreOneChange() {
        assertEquals("Use [the light lath]{a heavy mesh} here.", runs(changes(section("a: Use the light lath here."),
            section("a: Use a heavy mesh here."))));
    }

    @Test
    void aValueIsChangedWholeAndStaysASlotWhereItIsKept() {
        SectionDocument before = document(List.of(Map.entry("a", List.of(new Slot("base.clearance", "6 in (152 mm)", List.of()),
            new Plain(" over "),
            new Slot("base.over", "earth", List.of())))));
        SectionDocument after = document(List.of(Map.entry("a", List.of(new Slot("base.clearance", "8 in (203 mm)", List.of()),
            new Plain(" over "),
            new Slot("base.over", "earth", List.of())))));
        SectionChanges changes = changes(before, after);
        assertEquals("[6 in (152 mm)]{8 in (203 mm)} over earth", runs(changes));
        assertInstanceOf(Slot.class, changes.provisions().get(0).runs().get(3).span());
    }

    @Test
    void aParagraphThatStandsElsewhereHasMoved() {
        SectionDocument before = section("a: One.", "b: Two.", "c: Three.");
        assertEquals(List.of("moved 2.1.C"), told(before, section("b: Two.", "c: Three.", "a: One.")));
        // one level deeper is elsewhere too
        assertEquals(List.of("moved 2.1.A.1"), told(before, section("a: One.", "-b: Two.", "c: Three.")));
    }

    @Test
    void aParagraphThatNowStandsForOneWallOnlyIsStillThatParagraph() {
        assertEquals("{Wall type W1: }Lath.", runs(changes(section("lath: Lath."), section("lath@W1: Wall type W1: Lath."))));
        assertEquals(List.of("changed 2.1.A", "added 2.1.B", "added 2.1.B.1"), told(section("lath: Lath.", "-lath/1: Heavy."),
            section("lath@W1: W1: Lath.", "-lath@W1/1: Heavy.", "lath@W2: W2: Lath.", "-lath@W2/1: Light.")));
    }

    @Test
    void aSectionThatIsNewOrGoneIsAddedOrDeletedWhole() {
        SectionChanges added = Changing.between(Optional.empty(), Optional.of(section("a: One.")));
        assertEquals(List.of("added 2.1", "added 2.1.A"), added.provisions().stream().map(line -> line.kind().text() + " "
            + line.side().path())
            .toList());
        SectionChanges deleted = Changing.between(Optional.of(section("a: One.")), Optional.empty());
        assertEquals(List.of("deleted 2.1", "deleted 2.1.A"), deleted.provisions().stream().map(line -> line.kind().text() + " "
            + line.side().path()).toList());
    }

    @Test
    void aChangeGoesBackToTheQuestionThatItsChoiceCites() {
        SectionDocument before = document(List.of(Map.entry("a", List.of(new Slot("lath", "woven lath", List.of()))),
            Map.entry("b", List.of(new Plain("Two.")))));
        SectionDocument after = document(List.of(Map.entry("a", List.of(new Slot("lath", "metal lath", List.of()))),
            Map.entry("b", List.of(new Plain("Three.")))));
        Question question = new Question(12, "", Optional.empty(), "Which?", List.of(), "Metal.", Optional.empty(), Place.of("x"));
        IssueChanges changes = Changing.between(issue(before, "woven", "specifier", List.of()), issue(after, "metal", "RFI 12",
            List.of(question)));
        List<Line> lines = changes.sections().get(0).provisions();
        assertEquals(List.of("RFI 12"), changes.origins(lines.get(0)));
        assertEquals(List.of(), changes.origins(lines.get(1)));
        assertEquals(List.of(question), changes.answered());
        assertEquals(Map.of("W1.lath", "RFI 12"), changes.choices());
    }

    private static Issue issue(SectionDocument section, String accept, String by, List<Question> questions) {
        return new Issue("", Issue.Kind.ISSUE, 0, 0, Optional.empty(), "", "Job", "", "pack", "", List.of(),
            Map.of("W1.lath", new Issue.Made(accept, by)), questions, List.of(), List.of(section));
    }
}

package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;

class SectionEditsTest {
    private static final String FILE = SectionEdits.file("04 73 00");

    private static List<TextChange> read(String text) {
        Problems problems = new Problems();
        List<TextChange> changes = SectionText.read(FILE, "04 73 00", text, problems);
        assertEquals(List.of(), wrong(text));
        return changes;
    }

    private static List<String> wrong(String text) {
        Problems problems = new Problems();
        SectionText.read(FILE, "04 73 00", text, problems);
        try {
            problems.throwIfAny();
            return List.of();
        } catch (UnusableInput unusable) {
            return unusable.problems().stream().map(Object::toString).toList();
        }
    }

    @Test
    void aChangedParagraphQuotesWhatItWasMadeOn() {
        assertEquals("sections/04-73-00.md", FILE);
        String text = SectionEdits.change("", "lath.metal", "Lath: ${lath.kind}, stainless.", "Lath: ${lath.kind}.\n- one\n  - two");
        assertEquals("## change lath.metal\n> Lath: ${lath.kind}.\n> - one\n>   - two\n\nLath: ${lath.kind}, stainless.\n", text);
        TextChange change = read(text).get(0);
        assertEquals("Lath: ${lath.kind}.\n- one\n  - two", change.madeOn());
        assertEquals("Lath: ${lath.kind}, stainless.", change.text());
    }

    @Test
    void onlyTheBlockThatIsMeantChangesAndRemarksStay() {
        String text = "# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## change b\n> B.\n\nMine.\n\n## add after c\nMore.\n";
        assertEquals("# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## change b\n> B2.\n\nOther.\n\n## add after c\nMore.\n",
            SectionEdits.change(text, "b", "Other.", "B2."));
        assertEquals("# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## change b\n> B.\n\nOther.\n\n## add after c\nMore.\n",
            SectionEdits.rewrite(text, 7, "Other."));
        assertEquals("# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## change b\n> B2.\n\nMine.\n\n## add after c\nMore.\n",
            SectionEdits.requote(text, 7, "B2."));
        assertEquals("# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## strike b\n> B.\n\n## add after c\nMore.\n",
            SectionEdits.strike(text, "b", "B."));
        assertEquals("# Why\nThe owner asked.\n\n## strike a\n> Old.\n\n## add after c\nMore.\n", SectionEdits.giveBack(text, "b"));
        assertEquals(text.replace("\n## add after c\nMore.\n", ""), SectionEdits.remove(text, 12));
        assertEquals(text + "\n## move d after e\n", SectionEdits.move(text, "d", "e"));
        assertEquals(text + "\n## move d after f\n", SectionEdits.move(SectionEdits.move(text, "d", "e"), "d", "f"));
        assertEquals(text, SectionEdits.giveBack(SectionEdits.move(text, "d", "e"), "d"));
        assertEquals(text + "\n## add after c\nLast.\n", SectionEdits.add(text, "c", "Last."));
    }

    @Test
    void lineEndsStayAsTheyAreAndAFileWithNothingLeftIsNone() {
        assertEquals("## strike a\r\n> A.\r\n\r\n## strike b\r\n> B.\r\n",
            SectionEdits.strike("## strike a\r\n> A.\r\n", "b", "B.").replace("\n\n", "\n"));
        assertEquals("", SectionEdits.giveBack(SectionEdits.strike("", "a", "A."), "a"));
        assertEquals("# Remark\n", SectionEdits.giveBack(SectionEdits.strike("# Remark\n", "a", "A."), "a").stripTrailing() + "\n");
    }

    @Test
    void aLineThatWouldBeginABlockOrAQuoteStaysText() {
        TextChange change = read(SectionEdits.change("", "a", "First.\n## strike b\n> 5 is more.", "A.")).get(0);
        assertEquals("First.\n\\## strike b\n\\> 5 is more.", change.text());
        assertEquals("A.", change.madeOn());
        assertThrows(IllegalArgumentException.class, () -> SectionEdits.change("", "a", " ", "A."));
        assertThrows(IllegalArgumentException.class, () -> SectionEdits.remove("## strike a\n", 2));
    }

    @Test
    void aMoveIsReadAndWhatCannotBeSaysWhereAndWhy() {
        TextChange move = read("## move lath.metal after lath.paper\n").get(0);
        assertEquals(Kind.MOVE, move.kind());
        assertEquals("lath.metal", move.paragraph());
        assertEquals("lath.paper", move.after());
        assertTrue(wrong("## move a\n").get(0).contains("expected \"## change PARAGRAPH\""), wrong("## move a\n").get(0));
        assertTrue(wrong("## move a after a\n").get(0).contains("moved behind itself"));
        assertTrue(wrong("## move a after b\nText.\n").get(0).contains("a moved paragraph has a text"));
        assertTrue(wrong("## move a after b\n\n## move a after c\n").get(0).contains("moved twice"));
        assertTrue(wrong("## strike a\n\n## change a\nText.\n").get(0).contains("changed or struck twice"));
        assertEquals(List.of(), wrong("## change a\nText.\n\n## move a after b\n\n## add after a\nOne.\n\n## add after a\nTwo.\n"));
    }

    @Test
    void aRequirementIsLeftOutOnPurposeWithAReason() {
        TextChange left = read("## leave out lath.weight\nThe owner has the lath\nin store.\n").get(0);
        assertEquals(Kind.LEAVE_OUT, left.kind());
        assertEquals("lath.weight", left.paragraph());
        assertEquals("The owner has the lath\nin store.", left.text());
        assertTrue(wrong("## leave out a.b\n").get(0).contains("left out without a reason"), wrong("## leave out a.b\n").get(0));
        assertTrue(wrong("## leave out a.b\nOne.\n\n## leave out a.b\nTwo.\n").get(0).contains("left out twice"));
        String both = "## leave out a.b\nWhy.\n\n## change a.b\nText.\n";
        assertEquals(List.of(), wrong(both));
        assertEquals("## leave out a.b\nWhy.\n", SectionEdits.giveBack(both, "a.b"));
        assertEquals(both + "\n## leave out c.d\nThe owner has it.\n", SectionEdits.leaveOut(both, "c.d", "The owner has it."));
        assertEquals(both.replace("Why.", "So."), SectionEdits.leaveOut(both, "a.b", "So."));
        assertEquals("## change a.b\nText.\n", SectionEdits.stateAgain(both, "a.b"));
        assertEquals(both, SectionEdits.stateAgain(both, "c.d"));
        assertThrows(IllegalArgumentException.class, () -> SectionEdits.leaveOut(both, "c.d", " "));
    }

    @Test
    void anotherTextInABlockLeavesEveryLineAroundIt() {
        String file = "# Remark\n\n## add after a\n\n\nOld.\n\n\n## change b\n\n> Was.\n\n\nMine.\n- One.\n\n## strike c\n";
        assertEquals(file.replace("Old.", "New.\n\nMore."), SectionEdits.rewrite(file, 3, "New.\n\nMore."));
        assertEquals(file.replace("Mine.\n- One.", "Yours."), SectionEdits.rewrite(file, 9, "Yours."));
    }

    @Test
    void whateverIsDoneInWhateverOrderNoOtherBlockIsLost() {
        Random random = new Random(7);
        for (int run = 0; run < 200; run++) {
            String text = run % 2 == 0 ? "" : "# Remark\n\nStays.\n";
            List<String> ids = List.of("a", "b.c", "d@W1", "e/2");
            for (int step = 0; step < 12; step++) {
                String id = ids.get(random.nextInt(ids.size()));
                List<String> others = others(text, id);
                text = switch (random.nextInt(5)) {
                    case 0 -> SectionEdits.change(text, id, "Text " + step + ".\n\n1. below", "Was.");
                    case 1 -> SectionEdits.strike(text, id, "Was.");
                    case 2 -> SectionEdits.move(text, id, "z");
                    case 3 -> SectionEdits.giveBack(text, id);
                    default -> SectionEdits.add(text, id, "More " + step + ".");
                };
                assertEquals(others, others(text, id));
                assertTrue(run % 2 == 0 || text.startsWith("# Remark\n\nStays.\n"), text);
            }
        }
    }

    /** What is asked of all other paragraphs. */
    private static List<String> others(String text, String id) {
        List<String> others = new ArrayList<>();
        read(text).stream().filter(change -> !change.paragraph().equals(id)).forEach(change -> others.add(change.kind() + change.paragraph()
            + change.after() + change.text() + change.madeOn()));
        return others;
    }
}

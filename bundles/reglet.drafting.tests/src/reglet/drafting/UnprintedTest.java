package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Finding;
import reglet.model.SectionDocument;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;

/** What the choices require and a person's text no longer says. */
class UnprintedTest {
    private static final String BARE = "Lath: Self-furring ${lath.kind} lath, galvanized.\n\n1. Furring: 3 points each foot.";

    /** Light lath, whose weight one paragraph alone states. */
    private static Sample lath() {
        Sample sample = new Sample().wall("W1", "28 ft", "framing=wood-16", "lath=metal-2.5", "sealant=class-50");
        return sample.uses("lath.metal", "lath", "Lath: Self-furring ${lath.kind} lath, galvanized.\n\n1. Weight: ${lath.weight}.\n",
            "W1 lath=metal-2.5");
    }

    private static List<Finding> findings(Sample sample) throws UnusableInput {
        Assembly assembly = sample.assembly();
        return PaperCheck.findings(assembly, List.of(Drafter.draft(assembly, Sample.SECTION, ""))).stream()
            .filter(finding -> finding.rule().equals("paper.printed") || finding.rule().equals("paper.values")).toList();
    }

    private static Finding only(Sample sample) throws UnusableInput {
        List<Finding> all = findings(sample);
        assertEquals(1, all.size(), () -> all.stream().map(Finding::says).toList().toString());
        return all.get(0);
    }

    @Test
    void aSlotTakenOutOfATextIsAGapThatTellsValueReasonParagraphAndWhatToDo() throws UnusableInput {
        Finding gap = only(lath().change(Kind.CHANGE, "lath.metal", BARE));
        assertEquals(Finding.Kind.GAP, gap.kind());
        assertEquals("Lath: weight at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847 (wall type W1, by specifier) is required, and Section "
            + "04 73 00 no longer states it: Paragraph 2.1.A.1 (lath.metal/1) is changed.", gap.says());
        assertEquals("Put ${lath.weight} back, or write the value in your text, or leave it out on purpose: \"## leave out lath.weight\" "
            + "with the reason below it.", gap.fix());
        assertEquals(List.of("lath.weight"), gap.missing());
        assertEquals("sections/04-73-00.md:10:1", gap.at().toString());
    }

    @Test
    void strikingTheOnlyParagraphThatStatesARequirementIsAGap() throws UnusableInput {
        Finding gap = only(lath().change(Kind.STRIKE, "lath.metal", ""));
        assertEquals(List.of("lath.kind", "lath.weight"), gap.missing());
        assertTrue(gap.says().contains("kind expanded metal") && gap.says().contains("at least 2.5 lb/yd²")
            && gap.says().contains("the library's paragraph \"lath.metal/1\" is not printed any more"), gap.says());
        assertEquals(List.of("lath.weight"), only(lath().change(Kind.STRIKE, "lath.metal/1", "")).missing());
    }

    @Test
    void aRequirementThatAnotherParagraphStatesIsNotMissed() throws UnusableInput {
        assertEquals(List.of(), findings(Sample.small().change(Kind.CHANGE, "lath.metal", BARE)));
        assertEquals(List.of("lath.weight"), only(Sample.small().change(Kind.CHANGE, "lath.metal", BARE)
            .change(Kind.STRIKE, "lath.fastening/1", "")).missing());
        assertEquals(List.of(), findings(lath().change(Kind.CHANGE, "lath.metal", BARE)
            .change(Kind.ADD, "lath.metal", "Bundles: Marked ${lath.weight.value}.")));
    }

    @Test
    void aValueWrittenInOnesOwnWordsIsReadAndNotMissed() throws UnusableInput {
        for (String own : List.of("Weight: not less than 2.5 lb/yd2.", "Weight: 1.356 kg/m2.")) {
            assertEquals(List.of(), findings(lath().change(Kind.CHANGE, "lath.metal/1", own)), own);
        }
        assertEquals(List.of(), findings(lath().change(Kind.CHANGE, "lath.metal", "Expanded metal lath, 2.5 lb/yd2.")
            .change(Kind.STRIKE, "lath.metal/1", "")));
    }

    @Test
    void anotherValueWrittenInOnesOwnWordsIsTheContradictionAndNothingElse() throws UnusableInput {
        Finding conflict = only(lath().change(Kind.CHANGE, "lath.metal/1", "Weight: at least 1.75 lb/yd2."));
        assertEquals("paper.values", conflict.rule());
        assertTrue(conflict.says().contains("says at least 1.75 lb/yd²") || conflict.says().contains("says at least 1.75 lb/yd2"),
            conflict.says());
    }

    @Test
    void whatIsLeftOutOnPurposeIsNoGapAndAReasonThatNobodyNeedsIsTold() throws UnusableInput {
        assertEquals(List.of(), findings(lath().change(Kind.CHANGE, "lath.metal", BARE)
            .change(Kind.LEAVE_OUT, "lath.weight", "The lath is the owner's.")));
        Finding needless = only(lath().change(Kind.LEAVE_OUT, "lath.weight", "The lath is the owner's."));
        assertEquals(Finding.Kind.CAUTION, needless.kind());
        assertTrue(needless.says().contains("the section states it all the same"), needless.says());
    }

    @Test
    void theChosenOptionThatNoTextNamesAnyMoreIsMissed() throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5").uses("lath.metal", "lath", "Lath: ${lath}, galvanized.",
            "W1 lath=metal-2.5");
        Finding gap = only(sample.change(Kind.CHANGE, "lath.metal", "Lath: As for the stair tower."));
        assertEquals(List.of("lath"), gap.missing());
        assertTrue(gap.says().startsWith("Lath: light expanded metal lath (wall type W1, by specifier) is required"), gap.says());
    }

    @Test
    void aReasonForAComparisonIsGivenForEachRequirementThatIsNotStated() throws UnusableInput {
        Assembly assembly = lath().change(Kind.STRIKE, "lath.metal/1", "").assembly();
        SectionDocument section = Drafter.draft(assembly, Sample.SECTION, "");
        assertEquals(List.of("Section 04 73 00 does not state it any more (sections/04-73-00.md:10:1)."),
            List.copyOf(Unprinted.reasons(assembly, section).values()));
    }
}

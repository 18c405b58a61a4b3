package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Problem;
import reglet.model.RegisterItem;

class ClauseLintTest {
    @Test
    void sampleClausesAreClean() {
        assertEquals(List.of(), ClauseLint.problems(Sample.small().pack()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Lap lath 2 in over the flange.|number '2'", "Use 1/2 in thick mortar.|number '1/2'", "Type 17ga wire.|number '17ga'",
        "As Section 07 92 00 says.|number '07'", "Test per ASTM C847.|standard 'ASTM C847'",
        "Comply with ANSI A118.4.|standard 'ANSI A118.4'",
        "Comply with the IBC.|standard 'IBC'", "At least one fastener.|types 'At least'",
        "Not more than a hand apart.|types 'Not more than'",
        "A minimum of mortar.|types 'minimum'", "Class X or better.|types 'or better'"})
    void typedNumbersStandardsAndComparingWordsAreFound(String text, String says) {
        List<Problem> problems = lint(text);
        assertTrue(problems.stream().anyMatch(problem -> problem.what().contains(says)), text + ": " + problems);
        assertEquals("clauses/tried.md", problems.get(0).at().file());
    }

    @Test
    void comparingWordsAreFoundOverTheEndOfALine() {
        assertTrue(lint("Fasten with at\n  least one screw.").get(0).what().contains("types 'at"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Lath: ${lath.kind}.\n\n1. One: ${lath.weight}.\n   1. Deeper.\n   2. Deeper ${std.ASTM_C90}.\n2. Two.\n   a. Letters.",
        "Place between studs, exactly over the joint.", "Mix and administer; allow for the maximal drying.", "Enclose the lath."})
    void listMarksSlotsAndOrdinaryWordsAreAllowed(String text) {
        assertEquals(List.of(), lint(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "${lath.wieght}|did you mean 'lath.weight'?", "${std.ASTM_C874}|did you mean 'std.ASTM_C847'?",
            "${see.lath-instalation}|did you mean 'see.lath-installation'?",
        "${see.S07_92_01}|did you mean 'see.S07_92_00'?", "${lath.kind.method}|the property 'lath.kind' names no method",
        "${opening.kind}|a text that prints a fact of 'opening' stands for each meeting of that subject"})
    void slotsThatNameNothingAreFound(String text, String expected) {
        assertEquals(expected, lint(text).get(0).expected());
    }

    @Test
    void unknownArticlesAndSeveralParagraphsAreFound() {
        Sample sample = Sample.small().uses("lost", "lathh", "Text.").uses("two", "lath", "One.\n\nTwo.").uses("list", "lath", "1. One.");
        assertEquals(3, ClauseLint.problems(sample.pack()).size());
    }

    @Test
    void registerTextsAreCheckedForTheirSlots() {
        assertEquals("register.yaml", ClauseLint.problems(Sample.small().entry("x", "", RegisterItem.Kind.ACTION, "x", "${lth}").pack())
            .get(0).at().file());
    }

    private static List<Problem> lint(String text) {
        return ClauseLint.problems(Sample.small().uses("tried", "lath", text).pack());
    }
}

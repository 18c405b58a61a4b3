package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.UnusableInput;

class SlotTemplateTest {
    @ParameterizedTest
    @ValueSource(strings = {
        "<#assign x = 1>", "<#list 1..9 as i>a</#list>", "<#include \"/etc/passwd\">", "<#import \"x\" as y>", "<@macro/>",
            "<#-- hidden -->",
        "</#if>", "${\"freemarker.template.utility.Execute\"?new()(\"id\")}", "${lath?api.class}", "${lath.kind?upper_case}", "${1 + 1}",
        "${lath.weight - 1}", "${lath[\"kind\"]}", "${.data_model}", "${lath!\"none\"}", "${r\"raw\"}", "${}", "${lath",
        "${lath.kind} ${a(b)}",
        "${lath..kind}", "${a ${b}}"})
    void anythingButPlainSlotsIsRefused(String text) {
        assertTrue(SlotTemplate.refused(text).isPresent(), text);
        assertThrows(IllegalArgumentException.class, () -> SlotTemplate.fill(text, slot -> "x"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<#assign x = 1>", "${lath?api}", "<@run/>"})
    void refusedTextOfAClauseIsAProblemWithItsFile(String text) {
        UnusableInput problem = assertThrows(UnusableInput.class, () -> Drafter.draft(
            Sample.small().uses("bad", "lath", "Lath: " + text, "W1").assembly(), Sample.SECTION, ""));
        assertEquals("clauses/bad.md", problem.problems().get(0).at().toString());
        assertTrue(problem.getMessage().contains("has '" + text.split("[ >]")[0]), problem.getMessage());
    }

    @Test
    void plainTextWithMarksOfOtherLanguagesStaysAsItIs() {
        String text = "Is it flat? #{x} [#if] {lath} $5 a < b & c #1";
        assertEquals(Optional.empty(), SlotTemplate.refused(text));
        assertEquals(text, SlotTemplate.fill(text, slot -> "x"));
    }

    @Test
    void slotsAreFilledByName() {
        assertEquals("a [lath] b [see.lath-installation] c [std.ASTM_C847]",
            SlotTemplate.fill("a ${lath} b ${ see.lath-installation } c ${std.ASTM_C847}", slot -> "[" + slot + "]"));
        assertEquals(List.of("lath", "lath.weight.value"), SlotTemplate.slots("${lath}, ${lath.weight.value}"));
    }

    @Test
    void filledTextIsNotReadAgain() {
        assertEquals("${lath} <#if x>", SlotTemplate.fill("${a} ${b}", slot -> slot.equals("a") ? "${lath}" : "<#if x>"));
    }

    @Test
    void textThatGrowsBeyondTheLimitIsRefused() {
        String text = "${a}".repeat(11);
        assertThrows(IllegalArgumentException.class, () -> SlotTemplate.fill(text, slot -> "x".repeat(SlotTemplate.LONGEST / 10)));
    }
}

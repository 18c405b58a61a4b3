package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Checked;
import reglet.model.Finding;
import reglet.model.Rule.Result;
import reglet.model.UnusableInput;

/** What a rule comes to. */
class ResultsTest {
    private static final String WALL = "job/walls/W1.yaml";

    private static Result result(SmallPack files) throws Exception {
        return files.engine().explain(files.job(), "r").get(0).result();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "lath.weight >= q(\"2.5 lb/yd2\")          | HOLDS",
        "lath.weight > q(\"2.5 lb/yd2\")           | BREAKS",
        "lath.weight == q(\"1.356 kg/m2\")         | HOLDS",
        "mat.thickness == q(\"9.5 mm\")            | HOLDS",
        "mat.thickness == q(\"9 mm\")              | BREAKS",
        "mat.thickness * 2 == q(\"3/4 in\")        | HOLDS",
        "mat.thickness + q(\"1/8 in\") == q(\"1/2 in\") | HOLDS",
        "wall.height / q(\"10 ft\") == 2.0         | HOLDS",
        "1 / 2 == 0.5                              | HOLDS",
        "max(mat.thickness, q(\"1 in\")) == q(\"1 in\") | HOLDS",
        "lath.class >= \"low\"                     | HOLDS",
        "lath.class >= \"middle\"                  | BREAKS",
        "lath.class in [\"low\", \"high\"]         | HOLDS",
        "\"M\" in lath.uses                        | HOLDS",
        "\"G\" in lath.uses                        | BREAKS",
        "size(lath.uses) == 1                      | HOLDS",
        "high(lath.gauge) == q(\"1/4 in\")         | HOLDS",
        "lath.kind in [\"woven wire\"]             | BREAKS",
        "lath.option == \"light\" && lath.chosen   | HOLDS",
        "span(lath.kind, lath.weight) == q(\"16 in\") | HOLDS",
        "(site.climate == \"dry\" ? q(\"1 in\") : q(\"2 in\")) == q(\"1 in\") | HOLDS"})
    void anExpressionIsWorkedOut(String holds, Result expected) throws Exception {
        assertEquals(expected, result(new SmallPack().rule("", holds.strip())));
    }

    @Test
    void aMissingFactIsAGapThatNamesIt() throws Exception {
        SmallPack files = new SmallPack().rule("", "wall.height > q(\"10 ft\")").replacing(WALL, "height: 20 ft, ", "");
        assertEquals(Result.GAP, result(files));
        Finding gap = files.engine().check(files.job()).findings().get(0);
        assertEquals(Finding.Kind.GAP, gap.kind());
        assertEquals(List.of("wall.height"), gap.missing());
        assertEquals("wall.height.stated", gap.rule());
    }

    @Test
    void whatOneSideDecidesNeedsNoOtherSide() throws Exception {
        SmallPack files = new SmallPack().replacing(WALL, "height: 20 ft, ", "");
        assertEquals(Result.HOLDS, result(files.rule("", "wall.height > q(\"10 ft\") || lath.chosen")));
        assertEquals(Result.BREAKS, result(files.rule("", "wall.height > q(\"10 ft\") && !lath.chosen")));
        assertEquals(Result.GAP, result(files.rule("", "wall.height > q(\"10 ft\") && lath.chosen")));
    }

    @Test
    void aPropertyWithoutMeaningInWhenMeansThatTheRuleDoesNotApply() throws Exception {
        SmallPack files = new SmallPack().replacing(WALL, "[light]", "[wire]");
        assertEquals(Result.DOES_NOT_APPLY, result(files.rule("lath.weight > q(\"1 lb/yd2\")", "lath.chosen")));
    }

    @Test
    void aPropertyWithoutMeaningOutsideWhenIsAnErrorThatIsSaid() throws Exception {
        SmallPack files = new SmallPack().replacing(WALL, "[light]", "[wire]").rule("", "lath.weight > q(\"1 lb/yd2\")");
        assertEquals(Result.ERROR, result(files));
        assertTrue(files.engine().check(files.job()).findings().get(0).says().contains("lath.weight has no meaning here"));
    }

    @Test
    void aTableMissIsAGapAndNeverAGuess() throws Exception {
        SmallPack files = new SmallPack().rule("", "span(lath.kind, lath.weight) >= framing.spacing")
            .replacing("pack/components/lath.yaml", "weight: 2.5 lb/yd2", "weight: 1 lb/yd2");
        assertEquals(Result.GAP, result(files));
        assertTrue(files.engine().check(files.job()).findings().get(0).says()
            .contains("Span of lath (kind expanded metal, weight 1 lb/yd²)"));
    }

    @Test
    void divisionByZeroIsAnErrorAndDoesNotCountAsHolding() throws Exception {
        assertEquals(Result.ERROR, result(new SmallPack().rule("", "wall.height / (wall.height - wall.height) > 1.0")));
    }

    @Test
    void anUndecidedComponentIsOneGapHoweverManyRulesNeedIt() throws Exception {
        SmallPack files = new SmallPack().rule("", "lath.weight > q(\"1 lb/yd2\")").rule("s", "each: wall", "",
            "lath.chosen || lath.kind == \"woven wire\"")
            .replacing(WALL, "lath: {accept: [light]}\n", "");
        Checked checked = files.engine().check(files.job());
        assertEquals(List.of("lath.decided"), checked.findings().stream().map(Finding::rule).toList());
        assertEquals(2, checked.instances().get(Result.GAP));
    }

    @Test
    void aComponentThatIsNotNeededIsNoGapAndItsFactsDoNotApply() throws Exception {
        SmallPack files = new SmallPack().rule("mat.thickness > q(\"0 in\")", "lath.chosen").replacing(WALL, "mat: {accept: [thick]}\n", "")
            .replacing(WALL, "cavity: drained", "cavity: none");
        assertEquals(Result.DOES_NOT_APPLY, result(files));
        assertTrue(files.engine().check(files.job()).findings().isEmpty());
    }

    @Test
    void everyAcceptedAlternativeHasToPass() throws Exception {
        SmallPack files = new SmallPack().rule("lath.kind == \"expanded metal\"", "lath.weight > q(\"3 lb/yd2\")")
            .replacing(WALL, "[light]", "[heavy, light]");
        List<Finding> findings = files.engine().check(files.job()).findings();
        assertEquals(1, findings.size());
        assertEquals("light", findings.get(0).options().get("lath"));
    }

    @Test
    void aRuleForEachMeetingIsLookedAtForEachOfItsKind() throws Exception {
        SmallPack files = new SmallPack().rule("r", "each: meeting\nsubject: opening", "", "opening.flashed")
            .replacing(WALL, "framing:", "meets:\n  a: {as: opening, flashed: yes}\n  b: {as: opening, flashed: no}\n  c: {as: "
            + "opening}\nframing:");
        List<String> found = files.engine().check(files.job()).findings().stream().map(finding -> finding.kind().text() + " "
            + finding.meeting()).toList();
        assertEquals(List.of("conflict b", "gap c"), found.stream().sorted().toList());
    }

    @Test
    void anAcceptedFindingIsKeptApart() throws Exception {
        SmallPack files = new SmallPack().rule("", "!lath.chosen")
            .with("job/accepted.yaml", "- {rule: r, wall: W1, because: tested, by: someone}\n");
        Checked checked = files.engine().check(files.job());
        assertTrue(checked.findings().isEmpty());
        assertEquals("r", checked.accepted().get(0).rule());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "lath.weight > q(\"1 in\")           | no matching overload",
        "lath.wieght > q(\"1 lb/yd2\")       | did you mean 'lath.weight'?",
        "lath.kind == \"expanded\"           | \"expanded\" is never the case",
        "lath.class >= \"hihg\"              | did you mean 'high'?",
        "\"X\" in lath.uses                  | \"X\" is never the case",
        "lath.weight > q(\"heavy\")          | \"heavy\" is no quantity",
        "lath.weight                         | is of the type areal_mass and not yes or no",
        "span(lath.kind, \"x\") > q(\"1 in\") | no matching overload",
        "lath.kind.matches(\"a.*\")          | undeclared reference",
        "[1, 2].exists(x, x > 1)             | undeclared reference"})
    void aWrongExpressionIsRefusedWhenThePackIsRead(String holds, String expected) {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> new SmallPack().rule("", holds.strip()).engine());
        String message = refused.getMessage();
        assertTrue(message.startsWith("rules/r.yaml:1:1: in rule r holds"), message);
        assertTrue(message.contains(expected), message);
    }

    @Test
    void aRuleOfTheJobMayNotReadAWall() {
        assertThrows(UnusableInput.class, () -> new SmallPack().rule("r", "each: job", "", "wall.height > q(\"1 ft\")").engine());
    }

    @Test
    void aTextThatNamesAnUnknownValueIsRefused() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> new SmallPack().rule("", "lath.chosen")
            .replacing("pack/rules/r.yaml", "says: it breaks", "says: \"{lath.wieght} is wrong\"").engine());
        assertTrue(refused.getMessage().contains("did you mean 'lath.weight'?"), refused.getMessage());
    }

    @Test
    void anEndlesslyLongExpressionIsRefused() {
        String holds = "lath.chosen" + " && lath.chosen".repeat(400);
        assertThrows(UnusableInput.class, () -> new SmallPack().rule("", holds).engine());
    }
}

package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;


import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import reglet.model.Finding;
import reglet.model.Rule;
import reglet.model.UnusableInput;

/**
 * For every rule there is a job with one fault that this rule alone finds: without the rule nobody would be told. The jobs are clean
 * ones changed by what {@code mutants.yaml} says; a base there is a clean job in which more is set up, so that its mutants stay small.
 */
class MutantsTest {
    static Stream<String> bases() {
        return Mutants.BASES.keySet().stream();
    }

    static Stream<String> rules() {
        return RealPack.PACK.rules().stream().map(Rule::id);
    }

    /** Rules with a finding, by their id, each with its kind and what it says. */
    private static Map<String, String> found(SampleJob job) throws UnusableInput {
        return RealPack.ENGINE.check(job.read(RealPack.PACK)).findings().stream()
            .collect(Collectors.toMap(Finding::rule, finding -> finding.kind().text() + ": " + finding.says(), (one, other) -> one));
    }

    @Test
    void everyRuleHasOneMutantAndNoMutantIsOfAnUnknownRule() {
        Set<String> rules = rules().collect(Collectors.toCollection(TreeSet::new));
        assertEquals(rules, new TreeSet<>(Mutants.ALL.keySet()));
    }

    @ParameterizedTest
    @MethodSource("bases")
    void aBaseHasNoFaultOfItsOwn(String base) throws Exception {
        assertEquals(Map.of(), found(Mutants.BASES.get(base)), base);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aFaultIsToldByItsRuleAndWithoutTheRuleByNone(String rule) throws Exception {
        Mutants.Mutant mutant = Mutants.ALL.get(rule);
        assertTrue(mutant != null, "no mutant");
        Map<String, String> found = found(mutant.job());
        String told = found.remove(rule);
        assertTrue(told != null && told.startsWith(RealPack.PACK.rule(rule).orElseThrow().kind().text() + ": "),
            "the rule finds " + told + "; besides it there is " + found);
        // what is left is what would be told without the rule
        assertEquals(Map.of(), found);
    }
}

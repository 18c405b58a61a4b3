package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeAll;
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
    private static final Map<String, SampleJob> BASES = new LinkedHashMap<>();
    private static final Map<String, Mutant> MUTANTS = new LinkedHashMap<>();

    /**
     * A fault.
     *
     * @param of   the base that it is made in
     * @param with the changes that make it
     */
    private record Mutant(String of, Map<String, JsonNode> with) {
    }

    @BeforeAll
    static void read() throws Exception {
        try (InputStream in = MutantsTest.class.getResourceAsStream("mutants.yaml")) {
            JsonNode file = SampleJob.YAML.readTree(in);
            for (Map.Entry<String, JsonNode> entry : file.get("bases").properties()) {
                JsonNode base = entry.getValue();
                SampleJob from = base.has("of") ? BASES.get(base.get("of").asText()) : SampleJob.of(base.get("job").asText());
                BASES.put(entry.getKey(), from.with(changes(base.path("with"))).accepting(words(base.path("accepted"))));
            }
            for (Map.Entry<String, JsonNode> entry : file.get("mutants").properties()) {
                JsonNode mutant = entry.getValue();
                MUTANTS.put(entry.getKey(), new Mutant(mutant.get("of").asText(), changes(mutant.get("with"))));
            }
        }
    }

    private static Map<String, JsonNode> changes(JsonNode node) {
        Map<String, JsonNode> changes = new LinkedHashMap<>();
        node.properties().forEach(entry -> changes.put(entry.getKey(), entry.getValue()));
        return changes;
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return words;
    }

    static Stream<String> bases() {
        return BASES.keySet().stream();
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
        assertEquals(rules, new TreeSet<>(MUTANTS.keySet()));
    }

    @ParameterizedTest
    @MethodSource("bases")
    void aBaseHasNoFaultOfItsOwn(String base) throws Exception {
        assertEquals(Map.of(), found(BASES.get(base)), base);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aFaultIsToldByItsRuleAndWithoutTheRuleByNone(String rule) throws Exception {
        Mutant mutant = MUTANTS.get(rule);
        assertTrue(mutant != null, "no mutant");
        Map<String, String> found = found(BASES.get(mutant.of()).with(mutant.with()));
        String told = found.remove(rule);
        assertTrue(told != null && told.startsWith(RealPack.PACK.rule(rule).orElseThrow().kind().text() + ": "),
            "the rule finds " + told + "; besides it there is " + found);
        // what is left is what would be told without the rule
        assertEquals(Map.of(), found);
    }
}

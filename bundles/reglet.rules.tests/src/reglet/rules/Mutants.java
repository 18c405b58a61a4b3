package reglet.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.databind.JsonNode;

/** The jobs of {@code mutants.yaml}: clean ones with more set up, and one with a single fault for each rule. */
final class Mutants {
    static final Map<String, SampleJob> BASES = new LinkedHashMap<>();
    /** By rule. */
    static final Map<String, Mutant> ALL = new LinkedHashMap<>();

    /**
     * A fault.
     *
     * @param of   the base that it is made in
     * @param with the changes that make it
     */
    record Mutant(String of, Map<String, JsonNode> with) {

        SampleJob job() {
            return BASES.get(of).with(with);
        }
    }

    static {
        try (InputStream in = Mutants.class.getResourceAsStream("mutants.yaml")) {
            read(SampleJob.YAML.readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Mutants() {
    }

    private static void read(JsonNode file) throws IOException {
        for (Map.Entry<String, JsonNode> entry : file.get("bases").properties()) {
            JsonNode base = entry.getValue();
            SampleJob from = base.has("of") ? BASES.get(base.get("of").asText()) : SampleJob.of(base.get("job").asText());
            BASES.put(entry.getKey(), from.with(changes(base.path("with"))).accepting(words(base.path("accepted"))));
        }
        for (Map.Entry<String, JsonNode> entry : file.get("mutants").properties()) {
            JsonNode mutant = entry.getValue();
            ALL.put(entry.getKey(), new Mutant(mutant.get("of").asText(), changes(mutant.get("with"))));
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
}

package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schemas agree with what the reader takes; another YAML reader and a validator from the registry are the judges. */
class SchemasTest {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../.."));
    private static final Path PACK = ROOT.resolve("bundles/reglet.pack.adheredveneer/pack");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final Map<String, JsonSchema> SCHEMAS = new TreeMap<>();

    private static Set<ValidationMessage> judge(String schema, String text) throws Exception {
        if (!SCHEMAS.containsKey(schema)) {
            try (InputStream in = Packs.class.getResourceAsStream("schema/" + schema + ".json")) {
                SCHEMAS.put(schema, JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in));
            }
        }
        JsonNode node = YAML.readTree(text);
        return SCHEMAS.get(schema).validate(node);
    }

    private static String schema(Path root, Path file) {
        String name = root.relativize(file).toString().replace('\\', '/');
        String folder = name.contains("/") ? name.substring(0, name.indexOf('/')) : "";
        return switch (folder) {
            case "subjects" -> "subject";
            case "components" -> "component";
            case "rules" -> "rule";
            case "tables" -> "table";
            case "worksheets" -> "calculation";
            case "sections" -> "section";
            case "clauses" -> "clause";
            case "walls" -> "wall";
            case "products" -> "product";
            case "submittals" -> "submittal";
            default -> name.replace(".yaml", "");
        };
    }

    private static int judgeAll(Path root) throws Exception {
        int judged = 0;
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).filter(path -> !root.relativize(path).startsWith("out")).toList()) {
                String name = file.getFileName().toString();
                if (name.equals("expected.yaml") || !(name.endsWith(".yaml") || name.endsWith(".md") && file.toString().contains("clauses"))) {
                    continue;
                }
                String text = Files.readString(file);
                String yaml = name.endsWith(".md") ? text.substring(4, text.indexOf("\n---\n", 3)) : text;
                assertEquals(Set.of(), judge(schema(root, file), yaml), file.toString());
                judged++;
            }
        }
        return judged;
    }

    @Test
    void everyFileOfThePackKeepsToItsSchema() throws Exception {
        assertTrue(judgeAll(PACK) > 400);
    }

    @Test
    void everyFileOfTheSampleJobsKeepsToItsSchema() throws Exception {
        for (String job : List.of("harbour-clinic", "mesa-library", "orchard-row")) {
            assertTrue(judgeAll(ROOT.resolve("sample-specs").resolve(job)) >= 2);
        }
    }

    @Test
    void amendmentsOfEveryKindKeepToTheirSchema() throws Exception {
        String basis = "basis: [{document: d, edition: 2023, at: 4.2, known: read}]";
        String examples = "examples: {holds: [{a.b: 1}]}";
        assertEquals(Set.of(), judge("amendments", "{format: 1, jurisdiction: A, amendments: [{table: t, rows: [{a: x, b: 1 in}], " + basis
            + "}, {usual: a.b, value: 1 in, " + basis + "}, {rule: r, says: x, " + basis + "}, {rule: r, holds: x, " + examples + ", " + basis
            + "}, {strike: r, " + basis + "}, {add: {id: a, kind: caution, each: wall, holds: x, says: x, " + basis + ", " + examples + "}}]}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "job       | {format: 2, title: A, pack: p, walls: [W1]}",
        "job       | {format: 1, title: A, pack: p}",
        "wall      | {title: A, lath: {by: me}}",
        "wall      | {lath: {accept: [a]}}",
        "pack      | {format: 1, name: a, version: 1, title: A, more: x}",
        "rule      | {id: a, kind: warning, each: wall, holds: x, says: x, basis: [{document: d, known: read}], examples: {}}",
        "rule      | {id: a, kind: caution, each: wall, holds: x, says: x, basis: [], examples: {}}",
        "rule      | {id: a, kind: caution, each: wall, holds: x, says: x, basis: [{document: d, known: guessed}], examples: {}}",
        "component | {component: a, title: A, section: 1, order: 1, properties: {p: {unit: in, word: [x]}}, options: {o: {title: O}}}",
        "component | {component: a, title: A, section: 1, order: 1, properties: {}, options: {}}",
        "product   | {component: a, name: A, values: {p: {page: 1}}}",
        "accepted  | [{rule: a, by: me}]",
        "register  | {a: {section: 1, kind: urgent, sends: x, text: x}}",
        "section   | {number: 1, title: A, articles: [{id: a, part: 4, title: A}]}",
        "table     | {table: a, title: A, given: {}, gives: {x: {unit: in}}, rows: [], basis: [{document: d, known: read}]}",
        "submittal | {items: [a]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{strike: a}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{rule: a, holds: x, basis: [{document: d, known: read}]}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{table: a, rows: [], basis: [{document: d, known: read}]}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{strike: a, usual: b, value: c, basis: [{document: d, known: read}]}]}",
        "amendments | {format: 1, amendments: []}"})
    void aWrongFileIsRefusedByItsSchema(String schema, String text) throws Exception {
        assertFalse(judge(schema, text).isEmpty());
    }
}

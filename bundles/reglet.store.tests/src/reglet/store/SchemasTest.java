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

    static Set<ValidationMessage> judge(String schema, String text) throws Exception {
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
            // a pack's register and a job's bear the same name
            case "" -> name.equals("register.yaml") && Files.exists(root.resolve("job.yaml")) ? "job-register" : name.replace(".yaml", "");
            default -> name.replace(".yaml", "");
        };
    }

    private static int judgeAll(Path root) throws Exception {
        int judged = 0;
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).filter(path -> !root.relativize(path).startsWith("out")).toList()) {
                String name = file.getFileName().toString();
                if (name.equals("expected.yaml") || !(name.endsWith(".yaml") || name.endsWith(".md")
                    && file.toString().contains("clauses"))) {
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
    void aSubmittalWithPapersColoursAndSubstitutionsKeepsToItsSchema() throws Exception {
        assertEquals(Set.of(), judge("submittal", "{section: 1, papers: [{file: a.pdf, kind: test report, for: mat, title: A}], "
            + "colours: {mat: grey}, substitutions: [{product: a, for: lath, cost: 3, time: none, work: none, reason: r}]}"));
    }

    @Test
    void aJobWithALayoutKeepsToItsSchema() throws Exception {
        for (String references : List.of("list", "table", "off")) {
            assertEquals(Set.of(), judge("job", "{format: 1, title: A, pack: p, walls: [W1], references: " + references
                + ", order: {04 73 00: {1: [quality, references], 3: cleaning}}}"));
        }
    }

    @Test
    void anOfficeKeepsToItsSchema() throws Exception {
        assertEquals(Set.of(), judge("office", "{format: 1, name: A, address: [14 Lantern Row], letterhead: head.png, paper: A4, "
            + "fonts: {regular: a.ttf, bold: b.ttf, italic: c.ttf}}"));
        assertEquals(Set.of(), judge("office", "{format: 1, name: A}"));
        assertEquals(1, judgeAll(ROOT.resolve("sample-specs/office")));
    }

    @Test
    void amendmentsOfEveryKindKeepToTheirSchema() throws Exception {
        String basis = "basis: [{document: d, edition: 2023, at: 4.2, known: read}]";
        String examples = "examples: {holds: [{a.b: 1}]}";
        assertEquals(Set.of(), judge("amendments", "{format: 1, jurisdiction: A, amendments: [{table: t, rows: [{a: x, b: 1 in}], " + basis
            + "}, {usual: a.b, value: 1 in, " + basis + "}, {rule: r, says: x, " + basis + "}, {rule: r, holds: x, " + examples + ", "
                + basis
            + "}, {strike: r, " + basis + "}, {add: {id: a, kind: caution, each: wall, holds: x, says: x, " + basis + ", " + examples
                + "}}]}"));
    }

    @Test
    void whatIsFrozenAndQuestionsKeepToTheirSchemas() throws Exception {
        assertEquals(Set.of(), judge("questions",
            "{format: 1, questions: {12: {from: a, asked: 2026-01-01, question: b, about: [W1], answer: c, "
            + "answered: 2026-01-02}, 13: {question: d}}}"));
        assertEquals(Set.of(), judge("issue", IssueText.head(IssueFilesTest.issue("Bid set"), Map.of("a.pdf", "0".repeat(64)))));
        assertEquals(Set.of(), judge("issued-section", IssueText.section(IssueFilesTest.section())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "job       | {format: 2, title: A, pack: p, walls: [W1]}",
        "job       | {format: 1, title: A, pack: p}",
        "wall      | {title: A, lath: {by: me}}",
        "wall      | {lath: {accept: [a]}}",
        "wall      | {title: A, lath: {accept: [a], specify: by taste}}",
        "wall      | {title: A, lath: {accept: [a], alternates: {1: {by: me}}}}",
        "wall      | {title: A, lath: {accept: [a], alternates: {one: {accept: [b]}}}}",
        "job       | {format: 1, title: A, pack: p, walls: [W1], alternates: [{number: 1, kind: option, title: B}]}",
        "job       | {format: 1, title: A, pack: p, walls: [W1], alternates: [{kind: alternate, title: B}]}",
        "job       | {format: 1, title: A, pack: p, walls: [W1], references: none}",
        "job       | {format: 1, title: A, pack: p, walls: [W1], order: [quality]}",
        "job       | {format: 1, title: A, pack: p, walls: [W1], order: {04 73 00: {4: [quality]}}}",
        "specifying | [{id: a, text: b}]",
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
        "submittal | {section: 1, papers: [{file: a.pdf, kind: letter}]}",
        "submittal | {section: 1, papers: [{kind: certificate}]}",
        "submittal | {section: 1, substitutions: [{for: lath}]}",
        "submittal | {section: 1, substitutions: [{product: a, price: 3}]}",
        "submittal | {section: 1, review: {action: a}}",
        "submittal | {section: 1, review: {received: tomorrow}}",
        "job-register | {changes: []}",
        "job-register | {format: 1, review: soon}",
        "job-register | {format: 1, plan: [{on_site: 2026-06-01}]}",
        "job-register | {format: 1, changes: [{strike: a, by: me}]}",
        "job-register | {format: 1, changes: [{split: a, into: [{id: b}], because: x, by: me}]}",
        "job-register | {format: 1, actions: {a: done}}",
        "holdpoints | {a: {title: A, stop: x, points: [{look: x, test: x, often: x, basis: []}]}}",
        "holdpoints | {a: {title: A, stop: x, points: [{look: x, often: x}]}}",
        "touching  | [{first: a, where: x}]",
        "plausible | {lath.weight: {range: 1 to 6 lb/yd2}}",
        "stock     | [{result: a, component: b, share: c, package: d}]",
        "office    | {format: 1}",
        "office    | {format: 2, name: A}",
        "office    | {format: 1, name: A, paper: A5}",
        "office    | {format: 1, name: A, fonts: {bold: b.ttf}}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{strike: a}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{rule: a, holds: x, basis: [{document: d, known: read}]}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{table: a, rows: [], basis: [{document: d, known: read}]}]}",
        "amendments | {format: 1, jurisdiction: A, amendments: [{strike: a, usual: b, value: c, basis: [{document: d, known: read}]}]}",
        "questions  | {format: 1, questions: {12: {question: a, answered: 2026-01-02}}}",
        "questions  | {format: 1, questions: {x: {question: a}}}",
        "questions  | {format: 1, questions: {12: {asker: a, question: b}}}",
        "questions  | {questions: {12: {question: b}}}",
        "issue      | {format: 1, name: a, kind: revision, order: 1, number: 1, pack: {name: p}, sections: [], files: {}}",
        "issue      | {format: 1, name: a, kind: issue, order: 1, number: 1, pack: {name: p}, sections: [], files: {a.pdf: b}}",
        "issued-section | {format: 1, number: a, title: b, parts: [{part: 1, title: c, articles: [{id: d}]}]}",
        "amendments | {format: 1, amendments: []}"})
    void aWrongFileIsRefusedByItsSchema(String schema, String text) throws Exception {
        assertFalse(judge(schema, text).isEmpty());
    }
}

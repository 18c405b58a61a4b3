package reglet.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;

import reglet.model.Job;
import reglet.model.Pack;
import reglet.model.UnusableInput;
import reglet.store.Jobs;

/**
 * A sample job as names and values, which can be changed and then read as a job. A change names what it changes: a fact of the job
 * ({@code site.climate}), a choice ({@code W1.lath}), a value set over those of the options ({@code W1.lath.weight}), a fact of a wall type
 * ({@code W1.wall.height}), a meeting ({@code W1.meets.base-1}) or a fact of one ({@code W1.meets.base-1.clearance}). {@code all} stands
 * for every wall type, a null takes the thing away.
 */
final class SampleJob {
    static final Path ROOT = Path.of(System.getProperty("reglet.root", "../.."));
    /** Reads "yes" and "no" as the words that they are in Reglet's files. */
    static final ObjectMapper YAML = new ObjectMapper(YAMLFactory.builder()
        .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS).build());
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String JOB = "job.yaml";

    private final Map<String, ObjectNode> files;

    private SampleJob(Map<String, ObjectNode> files) {
        this.files = files;
    }

    static SampleJob of(String name) throws IOException {
        Path folder = ROOT.resolve("sample-specs").resolve(name);
        Map<String, ObjectNode> files = new LinkedHashMap<>();
        files.put(JOB, (ObjectNode) YAML.readTree(Files.readString(folder.resolve(JOB))));
        for (JsonNode wall : files.get(JOB).path("walls")) {
            String file = "walls/" + wall.asText() + ".yaml";
            files.put(file, (ObjectNode) YAML.readTree(Files.readString(folder.resolve(file))));
        }
        return new SampleJob(files);
    }

    List<String> walls() {
        List<String> walls = new ArrayList<>();
        files.get(JOB).path("walls").forEach(wall -> walls.add(wall.asText()));
        return walls;
    }

    SampleJob with(Map<String, JsonNode> changes) {
        SampleJob changed = new SampleJob(new LinkedHashMap<>());
        files.forEach((file, text) -> changed.files.put(file, text.deepCopy()));
        changes.forEach((name, value) -> {
            if (name.startsWith("all.")) {
                walls().forEach(wall -> changed.change(wall + name.substring("all".length()), value));
            } else {
                changed.change(name, value);
            }
        });
        return changed;
    }

    SampleJob with(String name, JsonNode value) {
        return with(Map.of(name, value));
    }

    /** This job with findings accepted, so that they do not stand. */
    SampleJob accepting(List<String> rules) {
        SampleJob changed = with(Map.of());
        rules.forEach(rule -> walls().forEach(wall -> changed.files.computeIfAbsent("accepted.yaml",
            file -> JSON.createObjectNode().set("all", JSON.createArrayNode())).withArray("all")
            .addObject().put("rule", rule).put("wall", wall).put("because", "sets the stage").put("by", "specifier")));
        return changed;
    }

    private void change(String name, JsonNode value) {
        String[] parts = name.split("\\.");
        boolean ofWall = walls().contains(parts[0]);
        ObjectNode node = files.get(ofWall ? "walls/" + parts[0] + ".yaml" : JOB);
        int first = ofWall ? 1 : 0;
        boolean choice = ofWall && parts.length == 2;
        for (int i = first; i < parts.length - 1; i++) {
            node = node.withObject("/" + parts[i]);
        }
        String last = parts[parts.length - 1];
        if (value.isNull()) {
            if (node.remove(last) == null) {
                throw new IllegalArgumentException(name + " is to be taken away, but is not there");
            }
        } else if (choice && !value.isObject()) {
            ArrayNode accept = node.withObject("/" + last).putArray("accept");
            (value.isArray() ? value : JSON.createArrayNode().add(value)).forEach(accept::add);
        } else {
            node.set(last, value);
        }
    }

    /** Reads this as a job of a pack; the files stand in memory only. */
    Job read(Pack pack) throws UnusableInput {
        try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
            Path folder = Files.createDirectories(memory.getPath("/job/walls")).getParent();
            for (Map.Entry<String, ObjectNode> file : files.entrySet()) {
                JsonNode text = file.getKey().equals("accepted.yaml") ? file.getValue().get("all") : file.getValue();
                // JSON is YAML too
                Files.write(folder.resolve(file.getKey()), JSON.writeValueAsString(text).getBytes(StandardCharsets.UTF_8));
            }
            // faults are planted in the base; an alternate of the sample fits the sample as it is, and is checked with it
            return Jobs.read(folder, pack).taking(List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

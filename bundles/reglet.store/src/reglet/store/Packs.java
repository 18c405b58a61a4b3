package reglet.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.PropertyType;
import reglet.model.Rule;
import reglet.model.SectionPlan;
import reglet.model.Subject;
import reglet.model.Table;
import reglet.model.UnusableInput;

/** Reads pack folders. */
public final class Packs {
    /** The newest format that this program knows. */
    static final int FORMAT = 1;

    private final Problems problems = new Problems();
    private final Folder folder;
    private final MessageDigest digest;

    private Packs(Path root) {
        this.folder = new Folder(root, problems);
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /**
     * Reads a pack.
     *
     * @throws UnusableInput with every problem found in its files
     * @throws IOException   when a file can't be reached
     */
    public static StoredPack read(Path root) throws UnusableInput, IOException {
        Packs reader = new Packs(root);
        Pack pack = reader.pack();
        reader.problems.throwIfAny();
        PackCheck.check(pack, reader.problems);
        reader.problems.throwIfAny();
        return new StoredPack(root, pack, HexFormat.of().formatHex(reader.digest.digest()));
    }

    /** The name that a pack folder gives itself, without reading the rest. */
    public static String name(Path root) throws UnusableInput, IOException {
        Packs reader = new Packs(root);
        String name = reader.yaml("pack.yaml").map(page -> reader.head(page).text("name")).orElse("");
        reader.problems.throwIfAny();
        return name;
    }

    private Fields head(Cursor page) {
        Fields fields = page.fields("format", "name", "version", "title");
        Formats.check(fields, FORMAT, "pack");
        return fields;
    }

    private Pack pack() throws IOException {
        Optional<Cursor> page = yaml("pack.yaml");
        Optional<Fields> head = page.map(this::head);
        List<Subject> subjects = each("subjects", Knowledge::subject, Subject::id);
        List<Component> components = new ArrayList<>(each("components", Knowledge::component, Component::id));
        components.sort(Comparator.comparingInt(Component::order).thenComparing(Component::id));
        Map<String, PropertyType> types = types(subjects, components);
        List<Table> tables = each("tables", RuleFiles::table, Table::id);
        List<Rule> rules = each("rules", file -> RuleFiles.rule(file, name -> Optional.ofNullable(types.get(name))), Rule::id);
        List<SectionPlan> plans = each("sections", PaperFiles::plan, plan -> plan.number().replace(' ', '-').replace('.', '-'));
        return new Pack(head.map(fields -> fields.text("name")).orElse(""), head.map(fields -> fields.text("version")).orElse(""),
            head.map(fields -> fields.text("title")).orElse(""), page("cautions.yaml", PaperFiles::cautions), subjects, components, rules,
            tables, page("standards.yaml", PaperFiles::standards), plans, clauses(), page("register.yaml", PaperFiles::register),
            page("synonyms.yaml", PaperFiles::synonyms));
    }

    private static Map<String, PropertyType> types(List<Subject> subjects, List<Component> components) {
        Map<String, PropertyType> types = new HashMap<>();
        subjects.forEach(subject -> subject.properties()
            .forEach(property -> types.put(subject.id() + "." + property.name(), property.type())));
        components.forEach(component -> component.properties()
            .forEach(property -> types.put(component.id() + "." + property.name(), property.type())));
        return types;
    }

    /** What came of a file, and what was found wrong in it. */
    private record Part<T>(Optional<T> read, Problems wrong) {
    }

    /** Makes something of each file; several at a time, for parsing is what a start waits for. What is wrong is told in order. */
    private <T> List<T> parts(List<String> files, BiFunction<String, Part<String>, Optional<T>> reader) throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String file : files) {
            text(file).ifPresent(text -> texts.put(file, text));
        }
        List<Part<T>> parts = texts.entrySet().parallelStream().map(text -> {
            Problems wrong = new Problems();
            return new Part<>(reader.apply(text.getKey(), new Part<>(Optional.of(text.getValue()), wrong)), wrong);
        }).toList();
        parts.forEach(part -> problems.addAll(part.wrong()));
        return parts.stream().flatMap(part -> part.read().stream()).toList();
    }

    /** All files of a folder, each of which must bear the id that stands in it. */
    private <T> List<T> each(String name, Function<Cursor, T> reader, Function<T, String> id) throws IOException {
        return parts(folder.files(name, ".yaml"), (file, text) ->
            Cursor.parse(file, text.read().orElseThrow(), 0, text.wrong()).map(cursor -> {
                T read = reader.apply(cursor);
                named(file, id.apply(read), ".yaml", cursor);
                return read;
            }));
    }

    private static void named(String file, String id, String ending, Cursor cursor) {
        String name = file.substring(file.lastIndexOf('/') + 1, file.length() - ending.length());
        if (!id.isEmpty() && !name.equals(id)) {
            cursor.wrong("the file says it is \"" + id + "\"", "rename the file to " + id + ending + ", or mend the id");
        }
    }

    private List<Clause> clauses() throws IOException {
        List<String> files = new ArrayList<>();
        for (String section : folder.folders("clauses")) {
            files.addAll(folder.files(section, ".md"));
        }
        return parts(files, (file, text) -> {
            Optional<Clause> clause = PaperFiles.clause(file, text.read().orElseThrow(), text.wrong());
            clause.ifPresent(found -> placed(file, found, text.wrong()));
            return clause;
        });
    }

    /** Whether a clause stands in the file of its id, in the folder of its section. */
    private static void placed(String file, Clause clause, Problems wrong) {
        String name = file.substring(file.lastIndexOf('/') + 1, file.length() - ".md".length());
        if (!clause.id().equals(name)) {
            wrong.add(clause.at(), "the file says it is \"" + clause.id() + "\"", "rename the file to " + clause.id()
                + ".md, or mend the id");
        }
        if (!file.startsWith("clauses/" + clause.section().replace(' ', '-').replace('.', '-') + "/")) {
            wrong.add(clause.at(), "the clause belongs to section " + clause.section(), "move it to that section's folder");
        }
    }

    private <T> List<T> page(String file, Function<Cursor, List<T>> reader) throws IOException {
        return folder.exists(file) ? yaml(file).map(reader).orElse(List.of()) : List.of();
    }

    private Optional<Cursor> yaml(String file) throws IOException {
        Optional<String> text = text(file);
        return text.flatMap(found -> Cursor.parse(file, found, 0, problems));
    }

    private Optional<String> text(String file) throws IOException {
        Optional<String> text = folder.text(file);
        text.ifPresent(found -> {
            digest.update((file + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(found.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        });
        return text;
    }
}

package reglet.store;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.Adler32;
import java.util.zip.CRC32;

import reglet.model.Calculation;
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

    private Packs(Path root) {
        this.folder = new Folder(root, problems);
    }

    /**
     * Reads a pack.
     *
     * @throws UnusableInput with every problem found in its files
     * @throws IOException   when a file can't be reached
     */
    public static StoredPack read(Path root) throws UnusableInput, IOException {
        // before the files are read: a file changed meanwhile must not be kept under the name of its new content
        String digest = digest(root);
        Packs reader = new Packs(root);
        Pack pack = reader.pack();
        reader.problems.throwIfAny();
        PackCheck.check(pack, reader.problems);
        reader.problems.throwIfAny();
        return new StoredPack(root, pack, digest);
    }

    /**
     * A number over names and bytes of a pack's files in sorted order: what tells whether a kept pack is still the one in the folder.
     * Reads every file and parses none. Guards against slips and not against malice, and is made at every start: two checksums that
     * the machine has in its instructions take a quarter of the time of a cryptographic one.
     */
    public static String digest(Path root) throws IOException {
        List<File> files = new ArrayList<>();
        collect(root.toFile(), files);
        files.sort(null);
        CRC32 one = new CRC32();
        Adler32 other = new Adler32();
        long length = 0;
        int from = root.toFile().getPath().length();
        for (File file : files) {
            byte[] name = file.getPath().substring(from).replace('\\', '/').getBytes(StandardCharsets.UTF_8);
            byte[] text;
            try (FileInputStream in = new FileInputStream(file)) {
                text = in.readAllBytes();
            }
            for (byte[] part : List.of(name, text)) {
                one.update(part);
                other.update(part);
                length += part.length;
            }
        }
        return Long.toHexString(one.getValue()) + "-" + Long.toHexString(other.getValue()) + "-" + Long.toHexString(length);
    }

    /** The older way to list files: it takes a third of the time of the newer one while the machine is cold. */
    private static void collect(File folder, List<File> files) throws IOException {
        File[] members = folder.listFiles();
        if (members == null) {
            throw new NoSuchFileException(folder.getPath());
        }
        for (File member : members) {
            if (member.getName().endsWith(".yaml") || member.getName().endsWith(".md")) {
                files.add(member);
            } else if (member.isDirectory()) {
                collect(member, files);
            }
        }
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
        List<Calculation> calculations = new ArrayList<>(each("worksheets", CalculationFiles::calculation, Calculation::id));
        calculations.sort(Comparator.comparingInt(Calculation::order).thenComparing(Calculation::id));
        Map<String, PropertyType> types = types(subjects, components, calculations);
        List<Table> tables = each("tables", RuleFiles::table, Table::id);
        List<Rule> rules = each("rules", file -> RuleFiles.rule(file, name -> Optional.ofNullable(types.get(name))), Rule::id);
        List<SectionPlan> plans = each("sections", PaperFiles::plan, plan -> plan.number().replace(' ', '-').replace('.', '-'));
        List<Clause> clauses = clauses();
        List<Clause> specifying = new ArrayList<>();
        for (Cursor item : page(SpecifyingTexts.FILE, Cursor::items)) {
            specifying.addAll(SpecifyingTexts.clauses(item, components, plans, clauses));
        }
        clauses.addAll(specifying);
        return new Pack(head.map(fields -> fields.text("name")).orElse(""), head.map(fields -> fields.text("version")).orElse(""),
            head.map(fields -> fields.text("title")).orElse(""), page("cautions.yaml", PaperFiles::cautions), subjects, components, rules,
            calculations, tables, page("standards.yaml", PaperFiles::standards), plans, clauses, page("register.yaml",
                PaperFiles::register),
            page("synonyms.yaml", PaperFiles::synonyms), page("holdpoints.yaml", SiteFiles::holdPoints),
            page("touching.yaml", SiteFiles::touching), page("stock.yaml", SiteFiles::stock),
            page("plausible.yaml", file -> PaperFiles.plausible(file, name -> Optional.ofNullable(types.get(name)))));
    }

    private static Map<String, PropertyType> types(List<Subject> subjects, List<Component> components, List<Calculation> calculations) {
        Map<String, PropertyType> types = new HashMap<>();
        subjects.forEach(subject -> subject.properties()
            .forEach(property -> types.put(subject.id() + "." + property.name(), property.type())));
        components.forEach(component -> component.properties()
            .forEach(property -> types.put(component.id() + "." + property.name(), property.type())));
        calculations.forEach(calculation -> calculation.results()
            .forEach(result -> types.put(Calculation.OWNER + "." + calculation.id() + "." + result.name(), result.type())));
        return types;
    }

    /** All files of a folder, each of which must bear the id that stands in it. */
    private <T> List<T> each(String name, Function<Cursor, T> reader, Function<T, String> id) throws IOException {
        List<T> all = new ArrayList<>();
        for (String file : folder.files(name, ".yaml")) {
            Optional<Cursor> cursor = yaml(file);
            if (cursor.isPresent()) {
                T read = reader.apply(cursor.get());
                named(file, id.apply(read), ".yaml", cursor.get());
                all.add(read);
            }
        }
        return all;
    }

    private static void named(String file, String id, String ending, Cursor cursor) {
        String name = file.substring(file.lastIndexOf('/') + 1, file.length() - ending.length());
        if (!id.isEmpty() && !name.equals(id)) {
            cursor.wrong("the file says it is \"" + id + "\"", "rename the file to " + id + ending + ", or mend the id");
        }
    }

    private List<Clause> clauses() throws IOException {
        List<Clause> all = new ArrayList<>();
        for (String section : folder.folders("clauses")) {
            for (String file : folder.files(section, ".md")) {
                Optional<String> text = folder.text(file);
                Optional<Clause> clause = text.flatMap(found -> PaperFiles.clause(file, found, problems));
                clause.ifPresent(found -> {
                    String name = file.substring(file.lastIndexOf('/') + 1, file.length() - 3);
                    if (!found.id().equals(name)) {
                        problems.add(found.at(), "the file says it is \"" + found.id() + "\"",
                            "rename the file to " + found.id() + ".md, or mend the id");
                    }
                    if (!section.equals("clauses/" + found.section().replace(' ', '-').replace('.', '-'))) {
                        problems.add(found.at(), "the clause belongs to section " + found.section(), "move it to that section's folder");
                    }
                    all.add(found);
                });
            }
        }
        return all;
    }

    private <T> List<T> page(String file, Function<Cursor, List<T>> reader) throws IOException {
        return folder.exists(file) ? yaml(file).map(reader).orElse(List.of()) : List.of();
    }

    private Optional<Cursor> yaml(String file) throws IOException {
        Optional<String> text = folder.text(file);
        return text.flatMap(found -> Cursor.parse(file, found, 0, problems));
    }
}

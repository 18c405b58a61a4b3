package reglet.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Accepted;
import reglet.model.Alternate;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.Question;
import reglet.model.RegisterFile;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.TextChange;
import reglet.model.UnusableInput;
import reglet.model.WallType;

/** Reads job folders. */
public final class Jobs {
    /** The newest format that this program knows. */
    static final int FORMAT = 1;
    private static final String JOB = "job.yaml";
    private static final List<String> HEAD = List.of("format", "title", "note", "pack", "walls", "sections", "alternates",
        "references", "order");

    /** What a choice says besides values of properties. */
    private static final List<String> VERSION = List.of("accept", "by", "because", "specify", "product", "maker", "comparable");
    private static final String ALTERNATES = "alternates";
    private static final List<String> CHOICE = Stream.concat(VERSION.stream(), Stream.of(ALTERNATES)).toList();

    private final Problems problems = new Problems();
    private final Folder folder;
    private final Pack pack;

    private Jobs(Path root, Pack pack) {
        this.folder = new Folder(root, problems);
        this.pack = pack;
    }

    /** The name of the pack that a job is made with, without reading the rest. */
    public static String packName(Path root) throws UnusableInput, IOException {
        Jobs reader = new Jobs(root, null);
        Optional<Cursor> file = reader.yaml(JOB);
        String name = "";
        if (file.isPresent()) {
            Fields fields = new Fields(file.get(), file.get().members());
            Formats.check(fields, FORMAT, "job");
            name = fields.text("pack");
        }
        reader.problems.throwIfAny();
        return name;
    }

    /**
     * Reads a job made with a pack.
     *
     * @throws UnusableInput with every problem found in its files
     * @throws IOException   when a file can't be reached
     */
    public static Job read(Path root, Pack pack) throws UnusableInput, IOException {
        Jobs reader = new Jobs(root, pack);
        Job job = reader.job();
        reader.problems.throwIfAny();
        return job;
    }

    private Job job() throws IOException {
        Optional<Cursor> file = yaml(JOB);
        if (file.isEmpty()) {
            if (problems.isEmpty()) {
                problems.add(Place.of(JOB), "is empty", "expected format, title, pack, walls and sections");
            }
            return new Job("", "", "", Map.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                RegisterFile.NONE, List.of(), Place.of(JOB));
        }
        List<Subject> jobWide = pack.subjects().stream().filter(subject -> subject.scope() == Scope.JOB).toList();
        List<String> known = new ArrayList<>(HEAD);
        jobWide.forEach(subject -> known.add(subject.id()));
        Fields fields = file.get().fields(known);
        Formats.check(fields, FORMAT, "job");
        Map<String, Map<String, Stated>> facts = new LinkedHashMap<>();
        for (Subject subject : jobWide) {
            fields.find(subject.id()).ifPresent(cursor -> facts.put(subject.id(), facts(cursor, subject.properties(), List.of())));
        }
        List<Alternate> alternates = AlternateFiles.read(fields, pack);
        List<WallType> walls = walls(fields, alternates);
        List<String> sections = sections(fields);
        ProductFiles products = new ProductFiles(pack, folder, problems);
        List<ProductData> data = products.products();
        RegisterFile register = !folder.exists(RegisterFile.NAME) ? RegisterFile.NONE
            : yaml(RegisterFile.NAME).map(page -> RegisterFiles.read(page, pack)).orElse(RegisterFile.NONE);
        return new Job(fields.text("title"), fields.text("note", ""), fields.text("pack"), facts, walls, sections, changes(),
            accepted(walls),
            data, new SubmittalFiles(pack, folder, register, problems).submittals(data), register, questions(), alternates,
            LayoutFiles.read(fields, pack), fields.at());
    }

    private List<WallType> walls(Fields fields, List<Alternate> alternates) throws IOException {
        List<WallType> walls = new ArrayList<>();
        List<String> listed = new ArrayList<>();
        if (fields.items("walls").isEmpty()) {
            problems.add(fields.at(), "the job has no wall types", "list them: \"walls: [W1]\", each with its file walls/W1.yaml");
        }
        for (Cursor item : fields.items("walls")) {
            String id = item.text();
            String name = "walls/" + id + ".yaml";
            if (listed.contains(id)) {
                item.wrong("wall type " + id + " stands here twice", "keep one of them");
            } else if (!folder.holds(name) || !folder.exists(name)) {
                item.wrong("wall type " + id + " has no file " + name, "add the file, or take the wall type from the list");
            } else {
                Optional<Cursor> wall = yaml(name);
                if (wall.isPresent()) {
                    walls.add(wall(id, wall.get(), alternates));
                }
            }
            listed.add(id);
        }
        for (String file : folder.files("walls", ".yaml")) {
            String id = file.substring("walls/".length(), file.length() - ".yaml".length());
            if (!listed.contains(id)) {
                problems.add(Place.of(file), "is not among the job's walls", "add " + id + " to \"walls\" in job.yaml, or remove the file");
            }
        }
        return walls;
    }

    private List<String> sections(Fields fields) {
        List<String> sections = new ArrayList<>();
        for (Cursor item : fields.items("sections")) {
            String number = item.text();
            if (pack.plan(number).isEmpty()) {
                problems.unknown(item.at(), "the pack has no section", number, pack.plans().stream().map(SectionPlan::number).toList());
            }
            sections.add(number);
        }
        return sections;
    }

    private WallType wall(String id, Cursor file, List<Alternate> alternates) {
        List<String> known = new ArrayList<>(List.of("title", "wall", "meets"));
        pack.components().forEach(component -> known.add(component.id()));
        Fields fields = file.fields(known);
        List<Property> described = pack.subjects().stream().filter(subject -> subject.scope() == Scope.WALL)
            .flatMap(subject -> subject.properties().stream()).toList();
        Map<String, Stated> facts = fields.find("wall").map(cursor -> facts(cursor, described, List.of())).orElse(Map.of());
        List<Meeting> meetings = new ArrayList<>();
        fields.members("meets").forEach((name, cursor) -> meeting(name, cursor).ifPresent(meetings::add));
        Map<String, Choice> choices = new LinkedHashMap<>();
        file.members().forEach((name, cursor) -> pack.component(name)
            .flatMap(component -> choice(component, cursor, alternates)).ifPresent(choice -> choices.put(name, choice)));
        return new WallType(id, fields.text("title"), facts, meetings, choices, file.at());
    }

    private Optional<Meeting> meeting(String name, Cursor cursor) {
        List<Subject> met = pack.subjects().stream().filter(subject -> subject.scope() == Scope.MEETING).toList();
        Cursor as = cursor.members().get("as");
        if (as == null) {
            cursor.wrong("\"as\" is missing", "expected one of: " + String.join(", ", met.stream().map(Subject::id).toList()));
            return Optional.empty();
        }
        Optional<Subject> subject = met.stream().filter(found -> found.id().equals(as.text())).findFirst();
        if (subject.isEmpty()) {
            problems.unknown(as.at(), "unknown kind of meeting", as.text(), met.stream().map(Subject::id).toList());
            return Optional.empty();
        }
        return Optional.of(new Meeting(name, subject.get().id(), facts(cursor, subject.get().properties(), List.of("as")), cursor.at()));
    }

    /** Values of properties by name; other names are known too but not read. */
    private Map<String, Stated> facts(Cursor cursor, List<Property> properties, List<String> others) {
        List<String> known = new ArrayList<>(others);
        properties.forEach(property -> known.add(property.name()));
        Fields fields = cursor.fields(known);
        Map<String, Stated> facts = new LinkedHashMap<>();
        for (Property property : properties) {
            fields.find(property.name()).ifPresent(value -> Values.read(value, property.type())
                .ifPresent(read -> facts.put(property.name(), new Stated(read, value.at()))));
        }
        return facts;
    }

    /** A choice with its other versions; a version is read without alternates, and has none of its own. */
    private Optional<Choice> choice(Component component, Cursor cursor, List<Alternate> alternates) {
        return choice(component, cursor, alternates, CHOICE);
    }

    private Optional<Choice> choice(Component component, Cursor cursor, List<Alternate> alternates, List<String> names) {
        Map<String, Stated> values = facts(cursor, component.properties(), names);
        Fields fields = new Fields(cursor, cursor.members());
        List<String> accept = new ArrayList<>();
        List<String> options = component.options().stream().map(Option::id).toList();
        for (Cursor item : fields.items("accept")) {
            if (!options.contains(item.text())) {
                problems.unknown(item.at(), "unknown option of " + component.id(), item.text(), options);
            } else if (accept.contains(item.text())) {
                item.wrong("option " + item.text() + " stands here twice", "keep one of them");
            } else {
                accept.add(item.text());
            }
        }
        if (fields.items("accept").isEmpty()) {
            cursor.wrong("nothing is accepted for " + component.id(), "write \"accept: [OPTION]\", or leave " + component.id()
                + " out while it is undecided");
        }
        Map<Integer, Choice> versions = new LinkedHashMap<>();
        if (names.contains(ALTERNATES)) {
            fields.members(ALTERNATES).forEach((number, version) -> AlternateFiles.declared(number, version, alternates)
                .ifPresent(known -> choice(component, version, alternates, VERSION).ifPresent(other -> versions.put(known, other))));
            AlternateFiles.together(versions, alternates, problems);
        }
        if (accept.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Choice(component.id(), accept, values, fields.text("by", ""), fields.text("because", ""),
            Choices.specified(fields, pack, component), versions, cursor.at()));
    }

    private List<TextChange> changes() throws IOException {
        List<TextChange> changes = new ArrayList<>();
        for (String file : folder.files("sections", ".md")) {
            String name = file.substring("sections/".length(), file.length() - ".md".length());
            Optional<SectionPlan> plan = pack.plans().stream()
                .filter(found -> found.number().replace(' ', '-').replace('.', '-').equals(name)).findFirst();
            if (plan.isEmpty()) {
                problems.add(Place.of(file), "the pack has no section of this number",
                    "expected a name such as " + pack.plans().stream().map(found -> found.number().replace(' ', '-')).findFirst().orElse("")
                    + ".md");
                continue;
            }
            folder.text(file).ifPresent(text -> changes.addAll(SectionText.read(file, plan.get().number(), text, problems)));
        }
        changes.stream().filter(change -> change.kind() == TextChange.Kind.LEAVE_OUT).forEach(this::leftOut);
        return changes;
    }

    /** What a section leaves out is a property, or with its kind a component, that it specifies. */
    private void leftOut(TextChange change) {
        List<String> known = new ArrayList<>();
        pack.components().stream().filter(component -> component.section().equals(change.section())).forEach(component -> {
            known.add(component.id());
            component.properties().forEach(property -> known.add(component.id() + "." + property.name()));
        });
        if (!known.contains(change.paragraph())) {
            problems.unknown(change.at(), "Section " + change.section() + " specifies no", change.paragraph(), known);
        }
    }

    private List<Accepted> accepted(List<WallType> walls) throws IOException {
        List<Accepted> all = new ArrayList<>();
        if (!folder.exists(Accepted.FILE)) {
            return all;
        }
        List<String> rules = new ArrayList<>(pack.rules().stream().map(Rule::id).toList());
        pack.components().forEach(component -> rules.addAll(List.of(component.id() + ".decided", component.id() + ".specified")));
        Stream.of(PaperRule.values()).map(PaperRule::id).forEach(rules::add);
        for (Cursor item : yaml(Accepted.FILE).map(Cursor::items).orElse(List.of())) {
            Fields fields = item.fields("rule", "wall", "because", "by");
            String rule = fields.text("rule");
            String wall = fields.text("wall", "");
            if (!rule.isEmpty() && !rules.contains(rule)) {
                problems.unknown(fields.find("rule").orElseThrow().at(), "unknown rule", rule, rules);
            }
            if (!wall.isEmpty() && walls.stream().noneMatch(found -> found.id().equals(wall))) {
                problems.unknown(fields.find("wall").orElseThrow().at(), "unknown wall type", wall,
                    walls.stream().map(WallType::id).toList());
            }
            all.add(new Accepted(rule, wall, fields.text("because"), fields.text("by"), item.at()));
        }
        return all;
    }

    private List<Question> questions() throws IOException {
        return folder.exists(Question.FILE) ? yaml(Question.FILE).map(QuestionFiles::read).orElse(List.of()) : List.of();
    }

    private Optional<Cursor> yaml(String file) throws IOException {
        Optional<String> text = folder.text(file);
        return text.flatMap(found -> Cursor.parse(file, found, 0, problems));
    }
}

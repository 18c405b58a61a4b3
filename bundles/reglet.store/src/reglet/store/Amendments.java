package reglet.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

import reglet.model.AmendedPack;
import reglet.model.Amendment;
import reglet.model.Amendment.What;
import reglet.model.Basis;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Rule;
import reglet.model.Subject;
import reglet.model.Table;
import reglet.model.Table.Row;
import reglet.model.UnusableInput;
import reglet.model.Value;

/**
 * Reads a job's {@code amendments.yaml}: what the jurisdiction asks otherwise than the pack. It changes values in tables, usual values
 * and rules, strikes rules and adds some; it declares no component or property, so everything else in the pack keeps its meaning.
 */
public final class Amendments {
    /** The newest format that this program knows. */
    static final int FORMAT = 1;
    private static final String FILE = "amendments.yaml";
    private static final List<String> KINDS = List.of("table", "usual", "rule", "strike", "add");
    private static final String BASIS = "basis";

    private final Problems problems = new Problems();
    private final Folder folder;
    private final Pack pack;
    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final Map<String, Table> tables = new LinkedHashMap<>();
    private final Map<String, Property> usual = new LinkedHashMap<>();
    private final List<Amendment> amendments = new ArrayList<>();
    private final Set<String> done = new HashSet<>();
    private String jurisdiction = "";

    private Amendments(Path root, Pack pack) {
        this.folder = new Folder(root, problems);
        this.pack = pack;
        pack.rules().forEach(rule -> rules.put(rule.id(), rule));
        pack.tables().forEach(table -> tables.put(table.id(), table));
    }

    /**
     * The pack as the job's jurisdiction amends it.
     *
     * @return empty when the job has no amendments
     * @throws UnusableInput with every problem found in the file
     * @throws IOException   when the file can't be reached
     */
    public static Optional<AmendedPack> read(Path root, Pack pack) throws UnusableInput, IOException {
        Amendments reader = new Amendments(root, pack);
        if (!reader.folder.exists(FILE)) {
            return Optional.empty();
        }
        AmendedPack amended = reader.amended();
        reader.problems.throwIfAny();
        PackCheck.check(amended.pack(), reader.problems);
        reader.problems.throwIfAny();
        return Optional.of(amended);
    }

    private AmendedPack amended() throws IOException {
        Optional<Cursor> file = folder.text(FILE).flatMap(text -> Cursor.parse(FILE, text, 0, problems));
        file.ifPresent(page -> {
            Fields fields = page.fields("format", "jurisdiction", "amendments");
            Formats.check(fields, FORMAT, "amendment");
            jurisdiction = fields.text("jurisdiction");
            fields.items("amendments").forEach(this::amendment);
        });
        List<Rule> all = new ArrayList<>(rules.values());
        all.sort(Comparator.comparing(Rule::id));
        return new AmendedPack(pack.with(subjects(), components(), all, List.copyOf(tables.values())), jurisdiction, amendments);
    }

    private void amendment(Cursor item) {
        List<String> kinds = KINDS.stream().filter(item.members()::containsKey).toList();
        if (kinds.size() != 1) {
            item.wrong(kinds.isEmpty() ? "says nothing that is amended" : "amends several things at once: " + String.join(", ", kinds),
                "expected one of: " + String.join(", ", KINDS));
            return;
        }
        switch (kinds.get(0)) {
            case "table" -> table(item.fields("table", "rows", BASIS));
            case "usual" -> usual(item.fields("usual", "value", BASIS));
            case "rule" -> {
                List<String> known = new ArrayList<>(RuleFiles.CHANGES);
                known.addAll(List.of("rule", BASIS));
                rule(item.fields(known));
            }
            case "strike" -> strike(item.fields("strike", BASIS));
            default -> add(item.fields("add").find("add").orElseThrow());
        }
    }

    private void table(Fields fields) {
        Optional<Table> found = named(fields, "table", "the pack has no table", pack.tables().stream().map(Table::id).toList())
            .flatMap(pack::table);
        if (found.isEmpty()) {
            return;
        }
        Table table = found.get();
        List<Basis> basis = basis(fields);
        List<Row> rows = new ArrayList<>(table.rows());
        List<String> words = new ArrayList<>();
        if (fields.items("rows").isEmpty()) {
            fields.problems().add(fields.at(), "the amendment of table " + table.id() + " changes no row",
                "write \"rows:\" with one or more");
        }
        for (Cursor written : fields.items("rows")) {
            RuleFiles.row(written, table.given(), table.gives()).ifPresent(row -> {
                List<Row> same = rows.stream().filter(old -> same(old, row)).toList();
                if (same.isEmpty()) {
                    written.wrong("table " + table.id() + " has no row for " + given(row), "it has rows for: "
                        + String.join("; ", rows.stream().map(Amendments::given).toList()));
                }
                same.forEach(old -> {
                    words.add(given(row) + ": " + row.gives().text() + " instead of " + old.gives().text());
                    rows.set(rows.indexOf(old), row);
                });
            });
        }
        List<Basis> bases = together(basis, table.basis());
        tables.put(table.id(), new Table(table.id(), table.title(), table.given(), table.gives(), rows, bases, table.at()));
        Pattern read = Pattern.compile("\\b" + Pattern.quote(table.id()) + "\\s*\\(");
        // whoever is told that a rule of this table breaks has to be told of the amendment
        rules.replaceAll((id, rule) -> reads(rule, read) ? rule.with(together(basis, rule.basis())) : rule);
        amendments.add(new Amendment(What.TABLE, table.id(), String.join("; ", words), basis, fields.at()));
    }

    private static boolean reads(Rule rule, Pattern table) {
        return table.matcher(rule.when()).find() || table.matcher(rule.holds()).find()
            || rule.let().values().stream().anyMatch(text -> table.matcher(text).find());
    }

    private static boolean same(Row one, Row other) {
        for (int i = 0; i < one.given().size(); i++) {
            Optional<Value> left = one.given().get(i);
            Optional<Value> right = other.given().get(i);
            boolean equal = left.isPresent() && right.isPresent() ? left.get() instanceof Quantity quantity
                ? quantity.compareWith((Quantity) right.get()) == 0 : left.get().text().equals(right.get().text())
                : left.isEmpty() && right.isEmpty();
            if (!equal) {
                return false;
            }
        }
        return true;
    }

    private static String given(Row row) {
        return String.join(", ", row.given().stream().map(cell -> cell.map(Value::text).orElse("any")).toList());
    }

    private void usual(Fields fields) {
        List<String> paths = new ArrayList<>();
        pack.subjects().forEach(subject -> subject.properties().forEach(property -> paths.add(subject.id() + "." + property.name())));
        pack.components().forEach(component -> component.properties().forEach(property -> paths.add(component.id() + "."
            + property.name())));
        Optional<String> path = named(fields, "usual", "the pack has no property", paths);
        Optional<Cursor> value = fields.find("value");
        if (value.isEmpty()) {
            fields.problems().add(fields.at(), "\"value\" is missing", "add a line \"value: …\"");
        }
        if (path.isEmpty() || value.isEmpty()) {
            return;
        }
        Property property = pack.property(path.get()).orElseThrow();
        List<Basis> basis = basis(fields);
        Values.read(value.get(), property.type()).ifPresent(read -> {
            usual.put(path.get(), property.usually(read, together(basis, property.basis())));
            amendments.add(new Amendment(What.USUAL, path.get(), read.text()
                + property.usual().map(before -> " instead of " + before.text()).orElse(""), basis, fields.at()));
        });
    }

    private void rule(Fields fields) {
        named(fields, "rule", "the pack has no rule", pack.rules().stream().map(Rule::id).toList()).ifPresent(id -> {
            List<String> changed = RuleFiles.CHANGES.stream().filter(part -> fields.find(part).isPresent()).toList();
            if (changed.isEmpty()) {
                fields.problems().add(fields.at(), "the amendment of rule " + id + " changes nothing",
                    "expected one or more of: " + String.join(", ", RuleFiles.CHANGES));
            }
            List<Basis> basis = basis(fields);
            rules.put(id, RuleFiles.changed(fields, rules.get(id), together(basis, rules.get(id).basis()), types()));
            amendments.add(new Amendment(What.RULE, id, "in what it " + String.join(", ", changed), basis, fields.at()));
        });
    }

    private void strike(Fields fields) {
        named(fields, "strike", "the pack has no rule", pack.rules().stream().map(Rule::id).toList()).ifPresent(id -> {
            rules.remove(id);
            amendments.add(new Amendment(What.STRIKE, id, "", basis(fields), fields.at()));
        });
    }

    private void add(Cursor item) {
        Rule rule = RuleFiles.rule(item, types());
        if (rule.id().isEmpty()) {
            return;
        }
        if (pack.rule(rule.id()).isPresent()) {
            item.wrong("the pack has a rule " + rule.id() + " already", "give this one another id, or write \"rule: " + rule.id()
                + "\" to change that one");
        } else if (done.add("rule " + rule.id())) {
            List<Basis> basis = rule.basis().stream().map(this::here).toList();
            rules.put(rule.id(), rule.with(basis));
            amendments.add(new Amendment(What.ADD, rule.id(), "", basis, rule.at()));
        } else {
            item.wrong("rule " + rule.id() + " is added twice", "keep one of them");
        }
    }

    /** What an amendment names, if it is there and not amended before. */
    private Optional<String> named(Fields fields, String kind, String missing, List<String> known) {
        String name = fields.text(kind);
        Cursor at = fields.find(kind).orElseThrow();
        if (!known.contains(name)) {
            problems.unknown(at.at(), missing, name, known);
            return Optional.empty();
        }
        if (!done.add((kind.equals("strike") ? "rule" : kind) + " " + name)) {
            at.wrong(name + " is amended twice", "put both changes into one amendment");
            return Optional.empty();
        }
        return Optional.of(name);
    }

    private List<Basis> basis(Fields fields) {
        List<Basis> basis = Knowledge.basis(fields);
        if (basis.isEmpty()) {
            fields.problems().add(fields.at(), "the amendment has no basis", "say in \"basis:\" where it stands, and how that is known");
        }
        return basis.stream().map(this::here).toList();
    }

    private Basis here(Basis basis) {
        return new Basis(jurisdiction + ", " + basis.document(), basis.edition(), basis.at(), basis.known());
    }

    private static List<Basis> together(List<Basis> first, List<Basis> then) {
        List<Basis> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    private Function<String, Optional<PropertyType>> types() {
        return name -> pack.property(name).map(Property::type);
    }

    private List<Subject> subjects() {
        return pack.subjects().stream().map(subject -> subject.with(properties(subject.id(), subject.properties()))).toList();
    }

    private List<Component> components() {
        return pack.components().stream().map(component -> new Component(component.id(), component.title(), component.section(),
            component.order(), component.needed(), properties(component.id(), component.properties()), component.options(), component.at()))
            .toList();
    }

    private List<Property> properties(String owner, List<Property> properties) {
        return properties.stream().map(property -> usual.getOrDefault(owner + "." + property.name(), property)).toList();
    }
}

package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import reglet.model.Basis;
import reglet.model.Finding;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Rule;
import reglet.model.Rule.Example;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Table;
import reglet.model.Table.Column;
import reglet.model.Table.Match;
import reglet.model.Table.Row;
import reglet.model.Value;

/** Reads the files that say what must hold: rules and the tables that they look up. */
final class RuleFiles {
    private static final PropertyType ANY_WORD = new PropertyType(Kind.WORD, Optional.empty(), List.of());
    private static final PropertyType FLAG = new PropertyType(Kind.FLAG, Optional.empty(), List.of());

    private RuleFiles() {
    }

    /** @param types the type of each name that an expression may read */
    static Rule rule(Cursor file, Function<String, Optional<PropertyType>> types) {
        Fields fields = file.fields("id", "kind", "each", "subject", "component", "since", "when", "let", "holds", "says", "fix", "basis",
            "examples");
        Scope each = fields.oneOf("each", Words.RULE_SCOPE, Scope.WALL);
        String subject = subject(fields, each);
        if (Knowledge.basis(fields).isEmpty()) {
            file.wrong("the rule has no basis", "say in \"basis:\" where it comes from, and how that is known");
        }
        return new Rule(fields.text("id"), fields.oneOf("kind", Words.RULE_KINDS, Finding.Kind.CONFLICT), each, subject,
            fields.text("component", ""), fields.text("when", ""), fields.textsByName("let"), fields.text("holds"), fields.text("says"),
            fields.text("fix", ""), Knowledge.basis(fields), examples(fields, types), fields.text("since", ""), fields.at());
    }

    /** The parts of a rule that {@link #changed} takes. */
    static final List<String> CHANGES = List.of("kind", "when", "let", "holds", "says", "fix", "examples");
    private static final List<String> LOGIC = List.of("when", "let", "holds");

    /** A rule with those parts changed that are written; when it is to hold otherwise, it needs examples of its own. */
    static Rule changed(Fields fields, Rule rule, List<Basis> basis, Function<String, Optional<PropertyType>> types) {
        boolean otherwise = LOGIC.stream().anyMatch(part -> fields.find(part).isPresent());
        Map<String, String> let = new LinkedHashMap<>(rule.let());
        let.putAll(fields.textsByName("let"));
        return new Rule(rule.id(), fields.oneOf("kind", Words.RULE_KINDS).orElse(rule.kind()), rule.each(), rule.subject(),
            rule.component(),
            fields.text("when", rule.when()), let, fields.text("holds", rule.holds()), fields.text("says", rule.says()),
            fields.text("fix", rule.fix()), basis, otherwise || fields.find("examples").isPresent() ? examples(fields, types)
                : rule.examples(),
            rule.since(), fields.at());
    }

    /** The subject that a rule or clause for each meeting needs. */
    static String subject(Fields fields, Scope each) {
        String subject = fields.text("subject", "");
        if (each == Scope.MEETING && subject.isEmpty()) {
            fields.problems().add(fields.at(), "\"subject\" is missing", "name the subject whose meetings are meant, such as opening");
        }
        if (each != Scope.MEETING && !subject.isEmpty()) {
            fields.problems().add(fields.find("subject").orElseThrow().at(), "\"subject\" has no use here",
                "it goes with \"each: meeting\"");
        }
        return subject;
    }

    private static List<Example> examples(Fields fields, Function<String, Optional<PropertyType>> types) {
        List<Example> examples = new ArrayList<>();
        Optional<Cursor> written = fields.find("examples");
        if (written.isEmpty()) {
            fields.problems().add(fields.at(), "the rule has no examples", "give some that hold, break and leave a gap");
            return examples;
        }
        written.get().fields(Words.RESULTS.keySet());
        written.get().members().forEach((result, list) -> {
            Rule.Result meant = Words.RESULTS.get(result);
            if (meant != null) {
                list.items().forEach(item -> examples.add(new Example(facts(item, types), meant, item.at())));
            }
        });
        return examples;
    }

    private static Map<String, Stated> facts(Cursor item, Function<String, Optional<PropertyType>> types) {
        Map<String, Stated> facts = new LinkedHashMap<>();
        item.members().forEach((name, value) -> {
            Optional<PropertyType> type = name.endsWith(".option") ? Optional.of(ANY_WORD)
                : name.endsWith(".chosen") ? Optional.of(FLAG) : types.apply(name);
            if (type.isEmpty()) {
                value.wrong("unknown fact \"" + name + "\"", "expected a name such as lath.weight that the pack declares");
            } else {
                Values.read(value, type.get()).ifPresent(read -> facts.put(name, new Stated(read, value.at())));
            }
        });
        return facts;
    }

    static Table table(Cursor file) {
        Fields fields = file.fields("table", "title", "given", "gives", "rows", "basis");
        List<Column> given = new ArrayList<>();
        fields.members("given").forEach((name, column) -> column(name, column, true).ifPresent(given::add));
        List<Column> gives = new ArrayList<>();
        fields.members("gives").forEach((name, column) -> column(name, column, false).ifPresent(gives::add));
        if (given.isEmpty() || gives.size() != 1) {
            file.wrong("a table has one or more columns \"given\" and one that it \"gives\"",
                "found " + given.size() + " and " + gives.size());
            return new Table("", "", List.of(), new Column("", ANY_WORD, Match.EXACTLY), List.of(), List.of(), file.at());
        }
        List<Row> rows = new ArrayList<>();
        fields.items("rows").forEach(row -> row(row, given, gives.get(0)).ifPresent(rows::add));
        if (Knowledge.basis(fields).isEmpty()) {
            file.wrong("the table has no basis", "say in \"basis:\" where it comes from, and how that is known");
        }
        return new Table(fields.text("table"), fields.text("title"), given, gives.get(0), rows, Knowledge.basis(fields), fields.at());
    }

    private static Optional<Column> column(String name, Cursor cursor, boolean matched) {
        Fields fields = cursor.fields("unit", "word", "grade", "set", "flag", "date", "match");
        Match match = matched ? fields.oneOf("match", Words.MATCHES, Match.EXACTLY) : Match.EXACTLY;
        return Knowledge.type(cursor, fields).map(type -> new Column(name, type, match));
    }

    static Optional<Row> row(Cursor cursor, List<Column> given, Column gives) {
        List<String> known = new ArrayList<>(given.stream().map(Column::name).toList());
        known.add(gives.name());
        Fields fields = cursor.fields(known);
        List<Optional<Value>> cells = new ArrayList<>();
        for (Column column : given) {
            Optional<Cursor> cell = fields.find(column.name());
            if (cell.isEmpty()) {
                cursor.wrong("the row says nothing of \"" + column.name() + "\"", "give a value, or any");
                return Optional.empty();
            }
            boolean any = !cell.get().isList() && cell.get().text().equals("any");
            cells.add(any ? Optional.empty() : Values.read(cell.get(), column.type()));
        }
        Optional<Cursor> result = fields.find(gives.name());
        if (result.isEmpty()) {
            cursor.wrong("the row gives no \"" + gives.name() + "\"", "give a value");
            return Optional.empty();
        }
        return Values.read(result.get(), gives.type()).map(value -> new Row(cells, value, cursor.at()));
    }
}

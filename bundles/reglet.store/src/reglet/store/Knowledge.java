package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Basis;
import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Evidence;
import reglet.model.Known;
import reglet.model.Method;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Scope;
import reglet.model.Subject;
import reglet.model.Unit;
import reglet.model.Value;

/** Reads the files that say what there is to decide and to describe: subjects and components with their properties. */
final class Knowledge {
    private static final Map<String, Kind> TYPE_KEYS = Map.of("unit", Kind.QUANTITY, "range", Kind.RANGE, "word", Kind.WORD, "grade",
        Kind.GRADE, "set", Kind.SET, "flag", Kind.FLAG, "date", Kind.DATE);
    private static final List<String> PROPERTY = List.of("label", "unit", "range", "word", "grade", "set", "flag", "date", "compare",
        "limit", "method", "evidence", "only", "usual", "help", "basis");
    private static final Set<Compare> OF_DATES = Set.of(Compare.AT_LEAST, Compare.AT_MOST, Compare.EXACTLY);
    /** Names that a job file or an option uses for other things. */
    private static final Set<String> TAKEN = Set.of("title", "cost", "note", "accept", "by", "because", "option", "chosen",
        "specify", "product", "maker", "comparable", "standards", "alternates");

    private Knowledge() {
    }

    static Subject subject(Cursor file) {
        Fields fields = file.fields("subject", "title", "each", "given", "properties");
        List<Property> properties = properties(fields);
        return new Subject(fields.text("subject"), fields.text("title"), fields.oneOf("each", Words.SUBJECT_SCOPE, Scope.JOB), properties,
            given(fields, properties.stream().map(Property::name).toList()), fields.at());
    }

    /** Names of properties, or "all". */
    private static List<String> given(Fields fields, List<String> names) {
        Optional<Cursor> written = fields.find("given");
        if (written.isEmpty()) {
            return List.of();
        }
        if (!written.get().isList() && written.get().text().equals("all")) {
            return names;
        }
        List<String> given = written.get().texts();
        given.stream().filter(name -> !names.contains(name))
            .forEach(name -> fields.problems().unknown(written.get().at(), "unknown property", name, names));
        return given;
    }

    static Component component(Cursor file) {
        Fields fields = file.fields("component", "title", "section", "order", "needed", "properties", "options");
        List<Property> properties = properties(fields);
        List<Option> options = new ArrayList<>();
        fields.members("options").forEach((id, option) -> options.add(option(id, option, properties)));
        if (options.isEmpty()) {
            file.wrong("the component has no options", "give it \"options:\" with one or more");
        }
        return new Component(fields.text("component"), fields.text("title"), fields.text("section"), fields.number("order", 0),
            fields.text("needed", ""), properties, options, fields.at());
    }

    private static List<Property> properties(Fields fields) {
        List<Property> properties = new ArrayList<>();
        fields.members("properties").forEach((name, property) -> {
            if (TAKEN.contains(name)) {
                property.wrong("a property can't be named \"" + name + "\"", "this word has another use in choices and options");
            }
            property(name, property).ifPresent(properties::add);
        });
        return properties;
    }

    private static Optional<Property> property(String name, Cursor cursor) {
        Fields fields = cursor.fields(PROPERTY);
        Optional<PropertyType> type = type(cursor, fields);
        if (type.isEmpty()) {
            return Optional.empty();
        }
        Kind kind = type.get().kind();
        Optional<Compare> compare = fields.oneOf("compare", Words.COMPARE);
        if (kind == Kind.QUANTITY && compare.isEmpty()) {
            cursor.wrong("a quantity needs \"compare\"", "expected one of: " + String.join(", ", Words.COMPARE.keySet()));
        }
        if (kind == Kind.DATE && !OF_DATES.contains(compare.orElse(Compare.EXACTLY))) {
            fields.find("compare").orElseThrow().wrong("a date can't be compared so", "expected one of: at least, at most, exactly");
        }
        Compare usual = kind == Kind.GRADE ? Compare.AT_LEAST : kind == Kind.RANGE ? Compare.BETWEEN : Compare.EXACTLY;
        Optional<Value> value = fields.find("usual").flatMap(found -> Values.read(found, type.get()));
        return Optional.of(new Property(name, fields.text("label", name.replace('_', ' ')), type.get(), compare.orElse(usual),
            fields.find("limit").map(found -> limit(found, kind)).orElse(false),
            fields.find("method").map(Knowledge::method).orElse(Method.NONE),
            fields.oneOf("evidence", Words.EVIDENCE).orElse(Evidence.NONE), fields.text("only", ""), value, fields.text("help", ""),
            basis(fields), cursor.at()));
    }

    /** Whether "limit: true" stands with a quantity; with anything else it is a fault. */
    private static boolean limit(Cursor cursor, Kind kind) {
        if (kind != Kind.QUANTITY) {
            cursor.wrong("only a quantity can be a limit of use", "leave \"limit\" out, or give the property a unit");
        } else if (cursor.isList() || !cursor.text().equals("true")) {
            cursor.wrong("\"limit\" says only that there is one", "expected true");
        }
        return true;
    }

    private static Method method(Cursor cursor) {
        if (cursor.isMap()) {
            Fields fields = cursor.fields("standard", "part");
            return new Method(fields.text("standard"), fields.text("part", ""));
        }
        return new Method(cursor.text(), "");
    }

    /** The type that a property or table column declares by one of "unit", "range", "word", "grade", "set", "flag" and "date". */
    static Optional<PropertyType> type(Cursor cursor, Fields fields) {
        List<String> named = TYPE_KEYS.keySet().stream().filter(key -> fields.find(key).isPresent()).sorted().toList();
        if (named.size() != 1) {
            cursor.wrong(named.isEmpty() ? "says no type" : "says more than one type: " + String.join(", ", named),
                "expected one of: unit, range, word, grade, set, flag, date");
            return Optional.empty();
        }
        Kind kind = TYPE_KEYS.get(named.get(0));
        Cursor value = fields.find(named.get(0)).orElseThrow();
        return switch (kind) {
            case QUANTITY, RANGE -> unit(value).map(unit -> new PropertyType(kind, Optional.of(unit), List.of()));
            case FLAG, DATE -> {
                if (value.isList() || !value.text().equals("true")) {
                    value.wrong("\"" + named.get(0) + "\" says only that there is one", "expected true");
                }
                yield Optional.of(new PropertyType(kind, Optional.empty(), List.of()));
            }
            case WORD, SET -> Optional.of(new PropertyType(kind, Optional.empty(),
                !value.isList() && value.text().equals("any") ? List.of() : different(value)));
            case GRADE -> Optional.of(new PropertyType(kind, Optional.empty(), different(value)));
        };
    }

    private static List<String> different(Cursor list) {
        Set<String> words = new LinkedHashSet<>(list.texts());
        if (words.size() < list.items().size()) {
            list.wrong("a word stands here twice", "keep one of them");
        }
        return List.copyOf(words);
    }

    private static Optional<Unit> unit(Cursor cursor) {
        Optional<Unit> unit = cursor.text().equals("1") ? Optional.of(Unit.ONE) : Unit.of(cursor.text());
        if (unit.isEmpty()) {
            cursor.problems().unknown(cursor.at(), "unknown unit", cursor.text(),
                java.util.Arrays.stream(Unit.values()).map(Unit::symbol).filter(symbol -> !symbol.isEmpty()).toList());
        }
        return unit;
    }

    private static Option option(String id, Cursor cursor, List<Property> properties) {
        List<String> known = new ArrayList<>(List.of("title", "cost", "note"));
        properties.forEach(property -> known.add(property.name()));
        Fields fields = cursor.fields(known);
        Map<String, Value> values = new LinkedHashMap<>();
        for (Property property : properties) {
            fields.find(property.name()).flatMap(value -> Values.read(value, property.type()))
                .ifPresent(value -> values.put(property.name(), value));
        }
        return new Option(id, fields.text("title"), values, fields.number("cost", 1), fields.text("note", ""), cursor.at());
    }

    /** The "basis" list of anything. */
    static List<Basis> basis(Fields fields) {
        List<Basis> basis = new ArrayList<>();
        for (Cursor item : fields.items("basis")) {
            Fields one = item.fields("document", "edition", "at", "known");
            basis.add(new Basis(one.text("document"), one.text("edition", ""), one.text("at", ""),
                one.oneOf("known", Words.KNOWN, Known.FROM_MEMORY)));
        }
        return basis;
    }
}

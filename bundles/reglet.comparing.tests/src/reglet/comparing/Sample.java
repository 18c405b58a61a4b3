package reglet.comparing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Compare;
import reglet.model.Comparison;
import reglet.model.Component;
import reglet.model.Day;
import reglet.model.Enclosures;
import reglet.model.Evidence;
import reglet.model.Grade;
import reglet.model.Job;
import reglet.model.Method;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.RegisterEntry;
import reglet.model.RegisterFile;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Standard;
import reglet.model.Stated;
import reglet.model.Submittal;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.WordSet;

/** A small invented pack and job, put together in code, that tests change as they need. */
final class Sample {
    static final Place AT = Place.of("sample");
    static final String SECTION = "04 73 00";
    static final List<String> CLASSES = List.of("12.5", "25", "35", "50", "100/50");

    final List<Component> components = new ArrayList<>();
    final List<WallType> walls = new ArrayList<>();
    final List<ProductData> products = new ArrayList<>();
    final List<RegisterEntry> entries = new ArrayList<>();
    String codeEdition = "2021";

    static Value value(String text) {
        String[] ends = text.split(" to ");
        if (ends.length == 2 && Quantity.parse(ends[0]).isPresent() && Quantity.parse(ends[1]).isPresent()) {
            return new Range(Quantity.parse(ends[0]).get(), Quantity.parse(ends[1]).get());
        }
        if (text.startsWith("class ")) {
            return new Grade(text.substring("class ".length()), CLASSES);
        }
        if (text.startsWith("[")) {
            return new WordSet(List.of(text.substring(1, text.length() - 1).split(", ")));
        }
        Optional<Day> day = Day.parse(text);
        if (day.isPresent()) {
            return day.get();
        }
        Optional<Quantity> quantity = Quantity.parse(text);
        return quantity.isPresent() ? quantity.get() : new Word(text);
    }

    /** A property whose type fits a value; words are free unless listed, "flag" makes a flag, "limit" an amount that is a limit of use. */
    static Property property(String name, Value value, Compare compare, String method, Evidence evidence, String... listed) {
        Kind kind = value instanceof Quantity ? Kind.QUANTITY : value instanceof Range ? Kind.RANGE : value instanceof Grade ? Kind.GRADE
            : value instanceof Day ? Kind.DATE : value instanceof WordSet ? Kind.SET
            : List.of(listed).equals(List.of("flag")) ? Kind.FLAG : Kind.WORD;
        Optional<Unit> unit = value instanceof Quantity quantity ? Optional.of(quantity.unit())
            : value instanceof Range range ? Optional.of(range.low().unit()) : Optional.empty();
        List<String> words = kind == Kind.GRADE ? CLASSES : kind == Kind.FLAG ? List.of() : List.of(listed);
        int space = method.indexOf(" part ");
        return new Property(name, name, new PropertyType(kind, unit, words), compare, List.of(listed).equals(List.of("limit")),
            method.isEmpty() ? Method.NONE
            : space < 0 ? new Method(method, "") : new Method(method.substring(0, space), method.substring(space + 6)), evidence, "",
            Optional.empty(), "", List.of(), AT);
    }

    static Option option(String id, Object... values) {
        Map<String, Value> map = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i += 2) {
            map.put((String) values[i], value((String) values[i + 1]));
        }
        return new Option(id, "option " + id, map, 1, "", AT);
    }

    static SheetValue sheet(String property, String value, String method) {
        return new SheetValue(property, value(value), Optional.empty(), method, "", value, 1, Optional.empty(), true);
    }

    static SheetValue with(SheetValue value, Compare compare, String edition, boolean confirmed) {
        return new SheetValue(value.property(), value.value(), Optional.ofNullable(compare), value.method(), edition, value.text(),
            value.page(), value.box(), confirmed);
    }

    Sample component(String id, List<Property> properties, Option... options) {
        components.add(new Component(id, id, SECTION, components.size(), "", properties, List.of(options), AT));
        return this;
    }

    Sample wall(String id, Map<String, List<String>> accepted) {
        Map<String, Choice> choices = new LinkedHashMap<>();
        accepted.forEach((component, options) -> choices.put(component, new Choice(component, options, Map.of(), "", "", AT)));
        walls.add(new WallType(id, id, Map.of(), List.of(), choices, AT));
        return this;
    }

    Sample product(String id, String component, SheetValue... values) {
        products.add(new ProductData(id, component, id, "Example Makers", "", "sheets/" + id + ".pdf", List.of(values), AT));
        return this;
    }

    Assembly assembly() {
        Pack pack = new Pack("sample", "1", "Sample", List.of(), List.of(), components, List.of(), List.of(), List.of(),
            List.of(new Standard("ASTM C847", "Metal lath", Map.of("IBC 2021", "2018"), List.of(), AT),
                new Standard("ASTM E96", "Vapour transmission", Map.of(), List.of(), AT)), List.of(), List.of(), entries, List.of(),
                    List.of(), List.of(), List.of(), List.of());
        Job job = new Job("Job", "", "sample", Map.of("code", Map.of("name", new Stated(new Word("IBC"), AT), "edition",
            new Stated(new Word(codeEdition), AT))), walls, List.of(SECTION), List.of(), List.of(), products, List.of(), RegisterFile.NONE,
            List.of(), AT);
        List<Requirement> requirements = new ArrayList<>();
        for (WallType wall : walls) {
            for (Component component : components) {
                wall.choice(component.id()).ifPresent(choice -> choice.accept().forEach(id -> {
                    Option option = component.option(id).orElseThrow();
                    component.properties().forEach(property -> option.value(property.name()).ifPresent(value -> requirements
                        .add(new Requirement(wall.id(), component.id(), id, property, value, AT))));
                }));
            }
        }
        return new Assembly(pack, job, List.of(), requirements, entries, List.of());
    }

    Comparison compare(List<String> items, String... products) {
        return Comparing.compare(assembly(), new Submittal("04-73-00-01", SECTION, items, List.of(products), "", "", "", List.of(), "",
            List.of(),
            "", Enclosures.NONE, Optional.empty(), AT),
            requirement -> "2.3." + requirement.property().name());
    }

    /** What one value on a sheet says of one requirement. */
    static Comparison.Row one(Property property, String required, SheetValue submitted) {
        return new Sample().component("part", List.of(property), option("a", property.name(), required))
            .wall("W1", Map.of("part", List.of("a"))).product("p", "part", submitted).compare(List.of(), "p").rows().get(0);
    }
}

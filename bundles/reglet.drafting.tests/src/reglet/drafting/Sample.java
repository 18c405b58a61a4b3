package reglet.drafting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Choice;
import reglet.model.Clause;
import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Evidence;
import reglet.model.Grade;
import reglet.model.HoldPoint;
import reglet.model.Job;
import reglet.model.Layout;
import reglet.model.Meeting;
import reglet.model.Method;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.RegisterEntry;
import reglet.model.RegisterFile;
import reglet.model.RegisterItem;
import reglet.model.Requirement;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Made;
import reglet.model.Standard;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Submittal;
import reglet.model.TextChange;
import reglet.model.Touching;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.model.WordSet;

/** A small invented pack and job, put together in code, that tests change as they need. */
final class Sample {
    static final Place AT = Place.of("sample");
    static final String SECTION = "04 73 00";
    private static final List<String> CLASSES = List.of("12-1/2", "25", "50", "100/50");

    final List<Clause> clauses = new ArrayList<>();
    final List<ClauseUse> uses = new ArrayList<>();
    final List<WallType> walls = new ArrayList<>();
    final List<TextChange> changes = new ArrayList<>();
    final List<RegisterEntry> entries = new ArrayList<>();
    final List<Submittal> submittals = new ArrayList<>();
    final List<ProductData> products = new ArrayList<>();
    final List<String> cautions = new ArrayList<>(List.of(
        "This paper replaces neither the local building code nor the judgement of a licensed professional."));
    String title = "Harbour clinic";
    String codeEdition = "2021";
    Layout layout = Layout.USUAL;

    static Quantity q(String text) {
        return Quantity.parse(text).orElseThrow(() -> new IllegalArgumentException(text));
    }

    static Grade sealantClass(String step) {
        return new Grade(step, CLASSES);
    }

    static Property quantity(String name, String label, Unit unit, Compare compare, String standard, Evidence evidence) {
        return property(name, label, new PropertyType(PropertyType.Kind.QUANTITY, Optional.of(unit), List.of()), compare,
            standard.isEmpty() ? Method.NONE : new Method(standard, ""), evidence);
    }

    static Property word(String name, String label, Evidence evidence) {
        return property(name, label, new PropertyType(PropertyType.Kind.WORD, Optional.empty(), List.of()), Compare.EXACTLY, Method.NONE,
            evidence);
    }

    static Property property(String name, String label, PropertyType type, Compare compare, Method method, Evidence evidence) {
        return new Property(name, label, type, compare, false, method, evidence, "", Optional.empty(), "", List.of(), AT);
    }

    static Option option(String id, String title, Object... values) {
        Map<String, Value> map = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i += 2) {
            map.put((String) values[i], (Value) values[i + 1]);
        }
        return new Option(id, title, map, 1, "", AT);
    }

    static final Component FRAMING = new Component("framing", "Framing", "06 10 00", 10, "",
        List.of(word("material", "material", Evidence.NONE),
        quantity("spacing", "spacing of studs", Unit.IN, Compare.AT_MOST, "", Evidence.NONE)),
        List.of(option("wood-16", "wood studs", "material", new Word("wood"), "spacing", q("16 in")),
            option("wood-24", "wood studs set wide", "material", new Word("wood"), "spacing", q("24 in"))), AT);

    static final Component LATH = new Component("lath", "Lath", SECTION, 90, "",
        List.of(word("kind", "kind", Evidence.PRODUCT_DATA),
            quantity("weight", "weight", Unit.LB_YD2, Compare.AT_LEAST, "ASTM C847", Evidence.PRODUCT_DATA)),
        List.of(option("metal-2.5", "light expanded metal lath", "kind", new Word("expanded metal"), "weight", q("2.5 lb/yd2")),
            option("metal-3.4", "heavy expanded metal lath", "kind", new Word("expanded metal"), "weight", q("3.4 lb/yd2")),
            option("woven-17", "woven wire lath", "kind", new Word("woven wire"))), AT);

    static final Component SEALANT = new Component("sealant", "Joint sealant", "07 92 00", 120, "",
        List.of(property("class", "movement class", new PropertyType(PropertyType.Kind.GRADE, Optional.empty(), CLASSES), Compare.AT_LEAST,
                new Method("ASTM C920", ""), Evidence.TEST_REPORT),
            property("use", "use", new PropertyType(PropertyType.Kind.SET, Optional.empty(), List.of("M", "G", "A", "O")), Compare.EXACTLY,
                new Method("ASTM C920", ""), Evidence.NONE)),
        List.of(option("class-50", "silicone sealant", "class", sealantClass("50"), "use", new WordSet(List.of("M", "A", "O")))), AT);

    final List<HoldPoint> holdPoints = new ArrayList<>();
    final List<Touching> touching = new ArrayList<>();
    /** What the job says of its register. */
    RegisterFile register = RegisterFile.NONE;

    static final Subject CODE = new Subject("code", "Building code", Scope.JOB,
        List.of(word("name", "code", Evidence.NONE), word("edition", "edition", Evidence.NONE)), List.of(), AT);
    static final Subject WALL = new Subject("wall", "Wall type", Scope.WALL,
        List.of(quantity("height", "height", Unit.FT, Compare.EXACTLY, "", Evidence.NONE)), List.of(), AT);
    static final Subject OPENING = new Subject("opening", "Opening", Scope.MEETING, List.of(word("kind", "kind", Evidence.NONE)), List.of(),
        AT);

    Pack pack() {
        return new Pack("sample", "1", "Sample", cautions.stream().map(text -> new Pack.Caution("c", text, "", List.of(), AT)).toList(),
            List.of(CODE, WALL, OPENING), List.of(FRAMING, LATH, SEALANT), List.of(), List.of(), List.of(),
            List.of(new Standard("ASTM C847", "Standard Specification for Metal Lath", Map.of("IBC 2021", "2018"), List.of(), AT),
                new Standard("ASTM C90", "Standard Specification for Loadbearing Concrete Masonry Units", Map.of(), List.of(), AT),
                new Standard("ASTM C920", "Standard Specification for Elastomeric Joint Sealants", Map.of("IBC 2021", "2014"), List.of(),
                AT)),
            List.of(plan(), new SectionPlan("06 10 00", "Rough Carpentry", List.of(), AT),
                new SectionPlan("07 92 00", "Joint Sealants",
                    List.of(new SectionPlan.Article("sealant", 2, "SEALANTS", Made.NOTHING)), AT)),
            clauses, entries, List.of(), holdPoints, touching, List.of(), List.of());
    }

    static SectionPlan plan() {
        return new SectionPlan(SECTION, "Manufactured Stone Masonry", List.of(
            new SectionPlan.Article("summary", 1, "SUMMARY", Made.RELATED_SECTIONS),
            new SectionPlan.Article("references", 1, "REFERENCES", Made.REFERENCES),
            new SectionPlan.Article("action", 1, "ACTION SUBMITTALS", Made.ACTION_SUBMITTALS),
            new SectionPlan.Article("informational", 1, "INFORMATIONAL SUBMITTALS", Made.INFORMATIONAL_SUBMITTALS),
            new SectionPlan.Article("lath", 2, "LATH AND ACCESSORIES", Made.NOTHING),
            new SectionPlan.Article("units", 2, "UNITS", Made.NOTHING),
            new SectionPlan.Article("lath-installation", 3, "LATH INSTALLATION", Made.NOTHING)), AT);
    }

    Clause clause(String id, String article, Scope each, String body) {
        Clause clause = new Clause(id, SECTION, article, each, each == Scope.MEETING ? "opening" : "", clauses.size(), "", body, "",
            List.of(),
            Place.of("clauses/" + id + ".md"));
        clauses.add(clause);
        return clause;
    }

    /** A clause with the settings in which it applies, given as walls and the options read there: "W1 lath=metal-2.5". */
    Sample uses(String id, String article, String body, String... settings) {
        Clause clause = clause(id, article, settings.length == 1 && settings[0].isEmpty() ? Scope.JOB
            : Arrays.stream(settings).anyMatch(setting -> setting.contains("/")) ? Scope.MEETING : Scope.WALL, body);
        for (String setting : settings) {
            String[] words = setting.split(" ");
            Map<String, String> options = new LinkedHashMap<>();
            for (int i = 1; i < words.length; i++) {
                options.put(words[i].split("=")[0], words[i].split("=")[1]);
            }
            String[] wall = words[0].split("/");
            uses.add(new ClauseUse(clause, wall[0], wall.length > 1 ? wall[1] : "", options));
        }
        return this;
    }

    /** A wall with its choices: "lath=metal-2.5,metal-3.4". */
    Sample wall(String id, String height, String... choices) {
        return wall(id, height, List.of(), choices);
    }

    Sample wall(String id, String height, List<Meeting> meetings, String... choices) {
        Map<String, Choice> made = new LinkedHashMap<>();
        for (String choice : choices) {
            String[] sides = choice.split("=");
            made.put(sides[0], new Choice(sides[0], List.of(sides[1].split(",")), Map.of(), "specifier", "", AT));
        }
        walls.add(new WallType(id, "Wall " + id, Map.of("height", new Stated(q(height), AT)), meetings, made,
            Place.of("walls/" + id + ".yaml")));
        return this;
    }

    static Meeting opening(String id, String kind) {
        return new Meeting(id, "opening", Map.of("kind", new Stated(new Word(kind), AT)), AT);
    }

    Sample change(TextChange.Kind kind, String paragraph, String text) {
        Place at = new Place("sections/04-73-00.md", 10 + changes.size(), 1);
        changes.add(new TextChange(SECTION, paragraph, kind, text, "", "", at, at));
        return this;
    }

    /** A block that moves a paragraph, or one that quotes what it was made on. */
    Sample block(TextChange.Kind kind, String paragraph, String text, String madeOn, String after) {
        Place at = new Place("sections/04-73-00.md", 10 + changes.size(), 1);
        changes.add(new TextChange(SECTION, paragraph, kind, text, madeOn, after, at, at));
        return this;
    }

    Sample entry(String id, String component, RegisterItem.Kind kind, String sends, String text) {
        entries.add(new RegisterEntry(id, SECTION, component, kind, RegisterItem.Sort.NONE, sends, "", text, Place.of("register.yaml")));
        return this;
    }

    Assembly assembly() {
        Pack pack = pack();
        Job job = new Job(title, "Invented for tests.", "sample", Map.of("code",
            Map.of("name", new Stated(new Word("IBC"), AT), "edition", new Stated(new Word(codeEdition), AT))),
            walls, List.of(SECTION), changes, List.of(), products, submittals, register, List.of(), List.of(), layout,
            Place.of("job.yaml"));
        List<Requirement> requirements = new ArrayList<>();
        for (WallType wall : walls) {
            for (Component component : pack.components()) {
                for (String accepted : wall.choice(component.id()).map(Choice::accept).orElse(List.of())) {
                    Option option = component.option(accepted).orElseThrow();
                    component.properties().forEach(property -> option.value(property.name()).ifPresent(value -> requirements
                        .add(new Requirement(wall.id(), component.id(), accepted, property, value, wall.at()))));
                }
            }
        }
        return new Assembly(pack, job, uses, requirements, entries, pack.cautions());
    }

    /** One wall with light lath, as in the smallest job. */
    static Sample small() {
        return new Sample().wall("W1", "28 ft", "framing=wood-16", "lath=metal-2.5", "sealant=class-50")
            .uses("lath.metal", "lath", "Lath: Self-furring ${lath.kind} lath, galvanized.\n\n1. Weight: ${lath.weight}.\n",
            "W1 lath=metal-2.5")
            .uses("lath.fastening", "lath-installation", "Fasten lath of ${see.lath} to ${framing}, studs ${framing.spacing} apart; "
                + "seal as ${see.S07_92_00} says.\n\n1. Over ${lath.weight.value}:\n   a. ${lath.weight.method} lath lies flat.\n",
                "W1 lath=metal-2.5 framing=wood-16")
            .entry("lath.sample", "lath", RegisterItem.Kind.ACTION, "sample", "Lath: one piece of ${lath}, full width.");
    }
}

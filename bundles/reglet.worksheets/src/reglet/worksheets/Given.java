package reglet.worksheets;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Dimension;
import reglet.model.Numbers;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;
import reglet.model.Worksheet;
import reglet.model.Worksheet.Supplied;

/**
 * The edge between texts or records and a calculation: what was given for each input, checked against its range, and the same as
 * the record that the calculation reads. The names of the record's components are the keys, so that nothing is mapped by hand.
 */
final class Given {
    /** Standard gravity, m/s², by definition (ISO 80000-3): people weigh walls in lb/ft² and in psf and mean the same. */
    static final double GRAVITY = 9.80665;
    private static final String USUAL = "usual value";
    private static final int LONGEST_LIST = 200;
    private static final Pattern JOINT = Pattern.compile("(" + Numbers.pattern() + ")\\s*(\\S+)\\s+(.+)");

    private final List<InputSpec> specs;
    private final Map<String, Worksheet.Input> inputs = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final String name;
    private final String origin;
    private Optional<UnitSystem> system = Optional.empty();

    private Given(String name, List<InputSpec> specs, String origin) {
        this.name = name;
        this.specs = specs;
        this.origin = origin;
    }

    /** Reads texts; every problem found is told at once. */
    static Given read(String name, List<InputSpec> specs, Map<String, String> typed, String origin) throws UnusableInput {
        Given given = new Given(name, specs, origin);
        given.refuseUnknown(typed.keySet());
        for (InputSpec spec : specs) {
            String text = typed.getOrDefault(spec.key(), "").strip();
            String from = text.isEmpty() ? USUAL : origin;
            if (text.isEmpty() && spec.required()) {
                given.problem(spec.key(), "is missing", given.expected(spec));
            } else if (!text.isEmpty() || !spec.usual().isEmpty()) {
                given.put(spec, text.isEmpty() ? spec.usual() : text, from);
            }
        }
        given.refuseIfAny();
        return given;
    }

    /** Takes values of a job, each with where it comes from; the ranges hold for them as they do for texts. */
    static Given supplied(String name, List<InputSpec> specs, Map<String, Supplied> supplied, UnitSystem system) throws UnusableInput {
        Given given = new Given(name, specs, "the job");
        given.system = Optional.of(system);
        given.refuseUnknown(supplied.keySet());
        for (InputSpec spec : specs) {
            Supplied one = supplied.get(spec.key());
            if (one == null && spec.required()) {
                given.problem(spec.key(), "is missing", given.expected(spec));
            } else if (one == null && !spec.usual().isEmpty()) {
                given.put(spec, spec.usual(), USUAL);
            } else if (one != null && one.value() instanceof Quantity quantity && spec.kind() == InputSpec.Kind.QUANTITY
                && understood(spec.unit().orElseThrow().dimension(), quantity.dimension())) {
                given.put(spec, (Value) quantity, one.from());
            } else if (one != null) {
                given.put(spec, one.value() instanceof WordSet items ? String.join("; ", items.words()) : one.value().text(), one.from());
            }
        }
        given.refuseIfAny();
        return given;
    }

    /** Takes a record whose numbers are in SI units; the ranges hold for it as they do for texts. */
    static Given of(String name, List<InputSpec> specs, Record inputs) throws UnusableInput {
        Given given = new Given(name, specs, "typed");
        for (RecordComponent component : inputs.getClass().getRecordComponents()) {
            InputSpec spec = given.spec(key(component));
            Object value = get(component, inputs);
            if (value instanceof Double si) {
                given.put(spec, si);
            } else if (value instanceof OptionalDouble si) {
                if (si.isPresent()) {
                    given.put(spec, si.getAsDouble());
                }
            } else if (value instanceof Worded word) {
                given.put(spec, new Word(word.text()), "typed");
            } else if (value instanceof Boolean yes) {
                given.put(spec, new Word(yes ? "yes" : "no"), "typed");
            } else if (value instanceof List<?> items) {
                if (!items.isEmpty()) {
                    given.put(spec, new WordSet(items.stream().map(Given::text).toList()), "typed");
                }
            } else {
                throw new IllegalArgumentException("no input is given as " + value);
            }
        }
        given.refuseIfAny();
        return given;
    }

    Map<String, Worksheet.Input> inputs() {
        return inputs;
    }

    /** The system asked for; else that of everything typed, inch-pound when both are mixed or nothing typed has one. */
    UnitSystem system() {
        if (system.isPresent()) {
            return system.get();
        }
        List<UnitSystem> written = inputs.values().stream().filter(input -> !input.from().equals(USUAL))
            .map(Worksheet.Input::value).filter(Quantity.class::isInstance).map(value -> ((Quantity) value).unit().system())
            .flatMap(Optional::stream).distinct().toList();
        return written.equals(List.of(UnitSystem.SI)) ? UnitSystem.SI : UnitSystem.INCH_POUND;
    }

    /** What to throw when an input can't stand beside the others. */
    UnusableInput refusal(String key, String what, String expected) {
        return new UnusableInput(new Problem(Place.of(origin), name + " " + key + " " + what, expected));
    }

    /** What was given, as the record that the calculation reads. */
    <R extends Record> R as(Class<R> type) {
        Shape shape = Shape.of(type);
        Object[] values = shape.parts.stream().map(this::component).toArray();
        try {
            return type.cast(shape.canonical.newInstance(values));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " can't be made from its own components", e);
        }
    }

    /** A component of a record of inputs, under its key. */
    private record Part(String key, Class<?> type) {
    }

    /** What reflection says of a record, asked for once. */
    private record Shape(List<Part> parts, Constructor<?> canonical) {
        private static final Map<Class<?>, Shape> KNOWN = new ConcurrentHashMap<>();

        static Shape of(Class<? extends Record> type) {
            return KNOWN.computeIfAbsent(type, asked -> {
                RecordComponent[] components = asked.getRecordComponents();
                try {
                    return new Shape(Arrays.stream(components).map(one -> new Part(Given.key(one), one.getType())).toList(),
                        asked.getDeclaredConstructor(Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new)));
                } catch (NoSuchMethodException e) {
                    throw new IllegalStateException(asked + " has no canonical constructor", e);
                }
            });
        }
    }

    private Object component(Part part) {
        InputSpec spec = spec(part.key());
        Class<?> type = part.type();
        Optional<Value> value = Optional.ofNullable(inputs.get(spec.key())).map(Worksheet.Input::value);
        if (type == double.class) {
            return si(spec, (Quantity) value.orElseThrow());
        }
        if (type == OptionalDouble.class) {
            return value.map(given -> OptionalDouble.of(si(spec, (Quantity) given))).orElse(OptionalDouble.empty());
        }
        if (type == boolean.class) {
            return value.orElseThrow().text().equals("yes");
        }
        if (type == List.class) {
            Function<String, Optional<?>> reader = spec.kind() == InputSpec.Kind.JOINTS ? Given::joint : Given::rectangle;
            return value.map(given -> ((WordSet) given).words().stream().map(reader).map(Optional::orElseThrow).toList()).orElse(List.of());
        }
        return Arrays.stream(type.getEnumConstants()).filter(word -> ((Worded) word).text().equals(value.orElseThrow().text())).findFirst()
            .orElseThrow();
    }

    private void put(InputSpec spec, double si) {
        if (!Double.isFinite(si)) {
            problem(spec.key(), "is " + si, expected(spec));
            return;
        }
        Unit unit = spec.unit().orElseThrow();
        // Ten figures, so that 15 ft given as 4.572 m doesn't fall outside a range by the last binary digit.
        put(spec, Quantity.of(Double.parseDouble(Numbers.plain(unit.fromSi(si))), unit), "typed");
    }

    private void put(InputSpec spec, String text, String from) {
        Optional<? extends Value> value = switch (spec.kind()) {
            case QUANTITY -> Quantity.parse(text).filter(quantity -> understood(spec.unit().orElseThrow().dimension(),
                quantity.dimension()));
            case WORD -> spec.words().stream().filter(word -> word.equalsIgnoreCase(text)).findFirst().map(Word::new);
            case RECTANGLES -> list(text, Given::rectangle);
            case JOINTS -> list(text, Given::joint);
        };
        if (value.isPresent()) {
            put(spec, value.get(), from);
        } else {
            problem(spec.key(), "can't be " + text, expected(spec));
        }
    }

    private void put(InputSpec spec, Value value, String from) {
        if (value instanceof Quantity quantity && spec.range().isPresent()) {
            InputSpec.Limits limits = spec.range().get();
            double si = si(spec, quantity);
            double low = spec.unit().orElseThrow().toSi(limits.low());
            double high = spec.unit().orElseThrow().toSi(limits.high());
            double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
            if (si < low - slack || si > high + slack) {
                problem(spec.key(), "of " + quantity.text() + " is outside the range", "from " + spec.rangeText());
            }
        }
        inputs.put(spec.key(), new Worksheet.Input(spec.label(), value, from));
    }

    private void problem(String key, String what, String expected) {
        problems.add(new Problem(Place.of(origin), name + " " + key + " " + what, expected));
    }

    private void refuseUnknown(Set<String> keys) {
        for (String key : keys) {
            if (specs.stream().noneMatch(spec -> spec.key().equals(key))) {
                problem(key, "is no input of this worksheet",
                    "it takes " + specs.stream().map(InputSpec::key).collect(Collectors.joining(", ")));
            }
        }
    }

    private void refuseIfAny() throws UnusableInput {
        if (!problems.isEmpty()) {
            throw new UnusableInput(problems);
        }
    }

    private String expected(InputSpec spec) {
        return switch (spec.kind()) {
            case QUANTITY -> "give the " + spec.label() + " with its unit"
                + spec.unit().filter(unit -> !unit.symbol().isEmpty()).map(unit -> ", such as " + unit.symbol()).orElse("")
                + (spec.range().isPresent() ? ", from " + spec.rangeText() : "");
            case WORD -> "one of: " + String.join(", ", spec.words());
            case RECTANGLES -> "give width x height, and x count when there are several, such as \"40 ft x 10 ft; 3 ft x 5 ft x 4\"";
            case JOINTS -> "give place and reason, such as \"12 ft backing joint; 24 ft designer's layout\"; reasons: "
                + String.join(", ", spec.words());
        };
    }

    private InputSpec spec(String key) {
        return specs.stream().filter(spec -> spec.key().equals(key)).findFirst()
            .orElseThrow(() -> new IllegalStateException(name + " describes no input " + key));
    }

    private static double si(InputSpec spec, Quantity quantity) {
        Dimension wanted = spec.unit().orElseThrow().dimension();
        if (wanted == quantity.dimension()) {
            return quantity.si();
        }
        return wanted == Dimension.PRESSURE ? quantity.si() * GRAVITY : quantity.si() / GRAVITY;
    }

    private static boolean understood(Dimension wanted, Dimension written) {
        return wanted == written || wanted == Dimension.PRESSURE && written == Dimension.AREAL_MASS
            || wanted == Dimension.AREAL_MASS && written == Dimension.PRESSURE;
    }

    private static Optional<WordSet> list(String text, Function<String, Optional<?>> reader) {
        List<String> items = Arrays.stream(text.split("\\s*;\\s*|\\s*,\\s+")).filter(item -> !item.isBlank()).toList();
        boolean readable = !items.isEmpty() && items.size() <= LONGEST_LIST && items.stream().map(reader).allMatch(Optional::isPresent);
        return readable ? Optional.of(new WordSet(items)) : Optional.empty();
    }

    private static Optional<Rectangle> rectangle(String text) {
        String[] parts = text.split("\\s*[x×]\\s*");
        if (parts.length < 2 || parts.length > 3) {
            return Optional.empty();
        }
        Optional<Double> width = length(parts[0]);
        Optional<Double> height = length(parts[1]);
        Optional<Double> count = parts.length == 3 ? Numbers.number(parts[2]) : Optional.of(1.0);
        boolean usable = width.filter(m -> m > 0).isPresent() && height.filter(m -> m > 0).isPresent()
            && count.filter(n -> n >= 1 && n <= 100_000 && n == Math.rint(n)).isPresent();
        return usable ? Optional.of(new Rectangle(width.get(), height.get(), count.get().intValue())) : Optional.empty();
    }

    private static Optional<JointLine> joint(String text) {
        Matcher matcher = JOINT.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Optional<JointLine.Reason> reason = Arrays.stream(JointLine.Reason.values())
            .filter(known -> known.text().equalsIgnoreCase(matcher.group(3).strip())).findFirst();
        return length(matcher.group(1) + " " + matcher.group(2)).flatMap(at -> reason.map(why -> new JointLine(at, why)));
    }

    private static Optional<Double> length(String text) {
        return Quantity.parse(text).filter(quantity -> quantity.dimension() == Dimension.LENGTH).map(Quantity::si);
    }

    private static String text(Object item) {
        if (item instanceof Rectangle rectangle) {
            return feet(rectangle.width()) + " x " + feet(rectangle.height()) + (rectangle.count() == 1 ? "" : " x " + rectangle.count());
        }
        JointLine joint = (JointLine) item;
        return feet(joint.at()) + " " + joint.reason().text();
    }

    private static String feet(double metres) {
        return Quantity.of(Unit.FT.fromSi(metres), Unit.FT).text();
    }

    /** "unitWeight" to "unit_weight". */
    private static String key(RecordComponent component) {
        return component.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static Object get(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " can't be read", e);
        }
    }
}

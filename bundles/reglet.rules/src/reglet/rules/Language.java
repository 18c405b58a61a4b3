package reglet.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import dev.cel.checker.CelStandardDeclarations;
import dev.cel.checker.CelStandardDeclarations.StandardFunction;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOptions;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.OpaqueType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelMacro;
import dev.cel.parser.CelMacroExprFactory;

import reglet.model.Dates;
import reglet.model.Day;
import reglet.model.Dimension;
import reglet.model.PropertyType;
import reglet.model.Quantity;
import reglet.model.Table;

/**
 * The expression language as packs may use it: one opaque type for each dimension, so that a weight compared with a length fails
 * when the pack is read; {@code q("2.5 lb/yd2")} for a quantity, {@code date("2026-11-29")} for a day; tables as functions. No loops, no
 * text functions, no clock: a rule can't read today, and comes to the same on every day.
 */
final class Language {
    private static final int LONGEST = 2_000;
    private static final int DEEPEST = 40;
    private static final String QUANTITY = "quantity_of_";
    private static final String DAY = "day_of_text";
    private static final OpaqueType GRADE = OpaqueType.create("grade");
    private static final OpaqueType DATE = OpaqueType.create("date");
    private static final Map<Dimension, OpaqueType> QUANTITIES = new EnumMap<>(Dimension.class);
    private static final Map<Dimension, OpaqueType> RANGES = new EnumMap<>(Dimension.class);

    static {
        for (Dimension dimension : Dimension.values()) {
            String name = dimension.name().toLowerCase(Locale.ROOT);
            QUANTITIES.put(dimension, OpaqueType.create(name));
            RANGES.put(dimension, OpaqueType.create("range_of_" + name));
        }
    }

    private final List<CelFunctionDecl> functions;
    private final Map<Names, CelCompiler> compilers = new HashMap<>();

    Language(List<Table> tables) {
        this.functions = functions(tables);
    }

    /** A compiler that knows these facts and intermediate values. */
    CelCompiler compiler(Names names, Map<String, CelType> lets) {
        CelCompiler plain = compilers.computeIfAbsent(names, this::build);
        if (lets.isEmpty()) {
            return plain;
        }
        var builder = plain.toCompilerBuilder();
        lets.forEach(builder::addVar);
        return builder.build();
    }

    private CelCompiler build(Names names) {
        var builder = CelCompilerFactory.standardCelCompilerBuilder()
            .setOptions(CelOptions.current()
                .maxExpressionCodePointSize(LONGEST)
                .maxParseRecursionDepth(DEEPEST)
                .enableComprehension(false)
                .enableHeterogeneousNumericComparisons(true)
                .build())
            .setStandardEnvironmentEnabled(false)
            .setStandardDeclarations(CelStandardDeclarations.newBuilder().includeFunctions(StandardFunction.LOGICAL_AND,
                StandardFunction.LOGICAL_OR, StandardFunction.LOGICAL_NOT, StandardFunction.CONDITIONAL, StandardFunction.EQUALS,
                StandardFunction.NOT_EQUALS, StandardFunction.IN).build())
            .addMacros(CelMacro.newGlobalMacro("q", 1, (factory, call, arguments) -> Optional.of(quantity(factory, arguments.get(0)))),
                CelMacro.newGlobalMacro("date", 1, (factory, call, arguments) -> Optional.of(day(factory, arguments.get(0)))))
            .addFunctionDeclarations(functions);
        for (String name : names.all()) {
            builder.addVar(name, type(names.type(name).orElseThrow()));
        }
        return builder.build();
    }

    private static CelExpr quantity(CelMacroExprFactory factory, CelExpr argument) {
        if (!isText(argument)) {
            return factory.reportError("q(…) takes a quantity in quotes, such as q(\"2.5 lb/yd2\")");
        }
        Optional<Quantity> quantity = Quantity.parse(argument.constant().stringValue());
        if (quantity.isEmpty()) {
            return factory.reportError("\"" + argument.constant().stringValue() + "\" is no quantity, such as \"2.5 lb/yd2\"");
        }
        return factory.newGlobalCall(QUANTITY + quantity.get().dimension().name().toLowerCase(Locale.ROOT), argument);
    }

    private static CelExpr day(CelMacroExprFactory factory, CelExpr argument) {
        if (!isText(argument)) {
            return factory.reportError("date(…) takes a day in quotes, such as date(\"2026-11-29\")");
        }
        String text = argument.constant().stringValue();
        return Day.parse(text).isPresent() ? factory.newGlobalCall(DAY, argument)
            : factory.reportError("\"" + text + "\" is no date; " + Dates.expected(text));
    }

    private static boolean isText(CelExpr argument) {
        return argument.getKind() == CelExpr.ExprKind.Kind.CONSTANT && argument.constant().getKind() == CelConstant.Kind.STRING_VALUE;
    }

    /** The day that a call made by date(…) means. */
    static Optional<Day> day(CelExpr.CelCall call) {
        return call.function().equals(DAY) ? Day.parse(call.args().get(0).constant().stringValue()) : Optional.empty();
    }

    /** The quantity that a call made by q(…) means. */
    static Optional<Quantity> quantity(CelExpr.CelCall call) {
        return call.function().startsWith(QUANTITY) ? Quantity.parse(call.args().get(0).constant().stringValue()) : Optional.empty();
    }

    static CelType type(PropertyType type) {
        return switch (type.kind()) {
            case QUANTITY -> QUANTITIES.get(type.unit().orElseThrow().dimension());
            case RANGE -> RANGES.get(type.unit().orElseThrow().dimension());
            case WORD -> SimpleType.STRING;
            case GRADE -> GRADE;
            case SET -> ListType.create(SimpleType.STRING);
            case FLAG -> SimpleType.BOOL;
            case DATE -> DATE;
        };
    }

    /** The overloads of all functions, collected by function. */
    private static List<CelFunctionDecl> functions(List<Table> tables) {
        Map<String, List<CelOverloadDecl>> overloads = new LinkedHashMap<>();
        QUANTITIES.forEach((dimension, type) -> quantities(overloads, type, RANGES.get(dimension)));
        grades(overloads);
        dates(overloads, QUANTITIES.get(Dimension.TIME));
        numbers(overloads);
        add(overloads, "size", SimpleType.INT, ListType.create(SimpleType.STRING));
        for (Table table : tables) {
            CelType[] given = table.given().stream().map(column -> type(column.type())).toArray(CelType[]::new);
            add(overloads, table.id(), type(table.gives().type()), given);
        }
        List<CelFunctionDecl> declared = new ArrayList<>();
        overloads.forEach((name, list) -> declared.add(CelFunctionDecl.newFunctionDeclaration(name, list)));
        return declared;
    }

    private static void quantities(Map<String, List<CelOverloadDecl>> overloads, OpaqueType type, OpaqueType range) {
        add(overloads, QUANTITY + type.name(), type, SimpleType.STRING);
        for (Operation comparison : List.of(Operation.LESS, Operation.LESS_OR_EQUAL, Operation.MORE, Operation.MORE_OR_EQUAL)) {
            add(overloads, comparison.function(), SimpleType.BOOL, type, type);
        }
        for (Operation same : List.of(Operation.PLUS, Operation.MINUS, Operation.MIN, Operation.MAX)) {
            add(overloads, same.function(), type, type, type);
        }
        add(overloads, Operation.OVER.function(), SimpleType.DOUBLE, type, type);
        for (CelType number : List.of(SimpleType.DOUBLE, SimpleType.INT)) {
            add(overloads, Operation.TIMES.function(), type, type, number);
            add(overloads, Operation.TIMES.function(), type, number, type);
            add(overloads, Operation.OVER.function(), type, type, number);
        }
        add(overloads, Operation.ABS.function(), type, type);
        add(overloads, Operation.LOW.function(), type, range);
        add(overloads, Operation.HIGH.function(), type, range);
    }

    private static void grades(Map<String, List<CelOverloadDecl>> overloads) {
        for (Operation comparison : List.of(Operation.LESS, Operation.LESS_OR_EQUAL, Operation.MORE, Operation.MORE_OR_EQUAL)) {
            add(overloads, comparison.function(), SimpleType.BOOL, GRADE, SimpleType.STRING);
            add(overloads, comparison.function(), SimpleType.BOOL, SimpleType.STRING, GRADE);
            add(overloads, comparison.function(), SimpleType.BOOL, GRADE, GRADE);
        }
        for (Operation equality : List.of(Operation.EQUAL, Operation.UNEQUAL)) {
            add(overloads, equality.function(), SimpleType.BOOL, GRADE, SimpleType.STRING);
            add(overloads, equality.function(), SimpleType.BOOL, SimpleType.STRING, GRADE);
        }
        add(overloads, Operation.IN.function(), SimpleType.BOOL, GRADE, ListType.create(SimpleType.STRING));
    }

    /** Dates are compared; their difference is a time in days; a time added to one, or taken from it, gives another. */
    private static void dates(Map<String, List<CelOverloadDecl>> overloads, OpaqueType time) {
        add(overloads, DAY, DATE, SimpleType.STRING);
        for (Operation comparison : List.of(Operation.LESS, Operation.LESS_OR_EQUAL, Operation.MORE, Operation.MORE_OR_EQUAL)) {
            add(overloads, comparison.function(), SimpleType.BOOL, DATE, DATE);
        }
        add(overloads, Operation.MINUS.function(), time, DATE, DATE);
        add(overloads, Operation.MINUS.function(), DATE, DATE, time);
        add(overloads, Operation.PLUS.function(), DATE, DATE, time);
        add(overloads, Operation.PLUS.function(), DATE, time, DATE);
        add(overloads, Operation.MIN.function(), DATE, DATE, DATE);
        add(overloads, Operation.MAX.function(), DATE, DATE, DATE);
    }

    /** Plain numbers are all of one kind at run time, so that 1/2 is a half; the language's own whole-number division is left out. */
    private static void numbers(Map<String, List<CelOverloadDecl>> overloads) {
        for (CelType one : List.of(SimpleType.DOUBLE, SimpleType.INT)) {
            for (CelType other : List.of(SimpleType.DOUBLE, SimpleType.INT)) {
                for (Operation arithmetic : List.of(Operation.PLUS, Operation.MINUS, Operation.TIMES, Operation.OVER, Operation.MIN,
                    Operation.MAX)) {
                    add(overloads, arithmetic.function(), SimpleType.DOUBLE, one, other);
                }
                for (Operation comparison : List.of(Operation.LESS, Operation.LESS_OR_EQUAL, Operation.MORE, Operation.MORE_OR_EQUAL)) {
                    add(overloads, comparison.function(), SimpleType.BOOL, one, other);
                }
            }
            add(overloads, Operation.NEGATE.function(), SimpleType.DOUBLE, one);
            add(overloads, Operation.ABS.function(), SimpleType.DOUBLE, one);
        }
    }

    private static void add(Map<String, List<CelOverloadDecl>> overloads, String function, CelType result, CelType... arguments) {
        StringBuilder id = new StringBuilder("reglet_").append(function);
        for (CelType argument : arguments) {
            id.append('_').append(argument instanceof ListType ? "list" : argument.name());
        }
        overloads.computeIfAbsent(function, name -> new ArrayList<>())
            .add(CelOverloadDecl.newGlobalOverload(id.toString(), result, arguments));
    }
}

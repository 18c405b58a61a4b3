package reglet.drafting;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Compare;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Component;
import reglet.model.Numbers;
import reglet.model.Option;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Value;

/** How the rows of a comparison print. */
public final class Results {
    private Results() {
    }

    /** The result as a shape and a word, so that it reads without colour; a value that nobody confirmed says so. */
    public static String result(Row row) {
        boolean unconfirmed = row.submitted().isPresent() && !row.submitted().get().confirmed();
        return shape(row.result()) + " " + row.result().text() + (unconfirmed ? " (value not confirmed)" : "");
    }

    static String shape(Result result) {
        return switch (result) {
            case MEETS -> "●";
            case FALLS_SHORT -> "▼";
            case NOT_SHOWN -> "○";
            case DIFFERENT_METHOD -> "◊";
            case CANNOT_COMPARE -> "□";
        };
    }

    /** What the sheet states: "at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847-2018". */
    public static String submitted(Row row) {
        return submitted(row, ShownUnits.BOTH);
    }

    /** The same with its quantities in some units. */
    public static String submitted(Row row, ShownUnits units) {
        if (row.submitted().isEmpty()) {
            return "no value";
        }
        SheetValue value = row.submitted().get();
        String sense = value.compare().filter(compare -> compare == Compare.AT_LEAST || compare == Compare.AT_MOST)
            .map(compare -> compare.text() + " ").orElse("");
        String method = value.method().isEmpty() ? "" : ", " + value.method() + (value.edition().isEmpty() ? "" : "-" + value.edition());
        return sense + Phrases.fact(row.requirement().property(), value.value(), units) + method;
    }

    /** "0.6 lb/yd² (24%)" in the requirement's unit; "" when nothing falls short by a number. */
    public static String shortBy(Row row) {
        return shortBy(row, ShownUnits.AS_WRITTEN);
    }

    /** The same in some units. */
    public static String shortBy(Row row, ShownUnits units) {
        return row.shortBy().map(by -> {
            String share = Numbers.significant(by.ofRequired() * 100, 2, Numbers.Side.NEAREST) + "%";
            // Degrees have different zeros, so a difference is converted as one.
            return quantity(row.requirement().value())
                .map(asked -> units.turned(asked, Sense.required(row.requirement().property())).unit())
                .map(unit -> new Quantity(by.si(), unit,
                    Numbers.significant(unit.fromSi(by.si()) - unit.fromSi(0), 3, Numbers.Side.NEAREST)).text() + " (" + share + ")")
                .orElse(share);
        }).orElse("");
    }

    private static Optional<Quantity> quantity(Value value) {
        return value instanceof Quantity quantity ? Optional.of(quantity)
            : value instanceof Range range ? Optional.of(range.low()) : Optional.empty();
    }

    /** "Lath: weight", with the option where the wall accepts several. */
    static String property(Assembly assembly, Requirement requirement) {
        Component component = assembly.pack().component(requirement.component()).orElseThrow();
        boolean alternative = assembly.job().wall(requirement.wall()).flatMap(wall -> wall.choice(requirement.component()))
            .map(Choice::accept)
            .filter(accepted -> accepted.size() > 1).isPresent();
        return component.title() + ": " + requirement.property().label() + (alternative
            ? " (option: " + component.option(requirement.option()).map(Option::title).orElse(requirement.option()) + ")" : "");
    }

    /** "Lath: weight" for "lath.weight". */
    static String label(Assembly assembly, String path) {
        return assembly.pack().component(path.substring(0, path.indexOf('.'))).map(Component::title).orElse("") + ": "
            + assembly.pack().property(path).map(Property::label).orElse(path);
    }

    static String product(Assembly assembly, String id) {
        return assembly.job().products().stream().filter(product -> product.id().equals(id)).findFirst()
            .map(Results::name).orElse(id);
    }

    /** "Ribbed lath 34, Example Metals, model B". */
    static String name(ProductData product) {
        return product.name() + (product.maker().isEmpty() ? "" : ", " + product.maker())
            + (product.model().isEmpty() ? "" : ", model " + product.model());
    }

    /** How often each result came, results that didn't come included. */
    static Map<Result, Long> counts(Comparison comparison) {
        Map<Result, Long> counts = new LinkedHashMap<>();
        for (Result result : Result.values()) {
            counts.put(result, comparison.rows().stream().filter(row -> row.result() == result).count());
        }
        return counts;
    }
}

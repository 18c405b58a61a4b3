package reglet.comparing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Option;
import reglet.model.ProductData;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.WallType;

/** Compares a submittal with what a job requires. */
public final class Comparing {
    /** Evidence that a product brings with it; the rest is made, drawn or looked at on site. */
    private static final Set<Evidence> OF_PRODUCT = EnumSet.of(Evidence.PRODUCT_DATA, Evidence.TEST_REPORT, Evidence.CERTIFICATE,
        Evidence.EVALUATION_REPORT, Evidence.COMPATIBILITY);
    private static final String PRODUCT_DATA_ITEM = ".product-data";

    private final Assembly assembly;
    private final Function<Requirement, String> paragraphOf;

    private Comparing(Assembly assembly, Function<Requirement, String> paragraphOf) {
        this.assembly = assembly;
        this.paragraphOf = paragraphOf;
    }

    /**
     * One row for each requirement of each product submitted, on each wall type that uses the product's component, and for each
     * requirement of a component that the submittal covers without a product. Where several options are accepted, a product
     * complies when it meets one of them whole; the rows are those of the option that it comes nearest to.
     *
     * @param paragraphOf the number of the paragraph that prints a requirement; "" when none does
     */
    public static Comparison compare(Assembly assembly, Submittal submittal, Function<Requirement, String> paragraphOf) {
        Comparing comparing = new Comparing(assembly, paragraphOf);
        List<Row> rows = new ArrayList<>();
        List<ProductData> products = submittal.products().stream()
            .flatMap(id -> assembly.job().products().stream().filter(product -> product.id().equals(id))).toList();
        products.forEach(product -> rows.addAll(comparing.rows(product.component(), Optional.of(product))));
        for (String item : submittal.items()) {
            if (item.endsWith(PRODUCT_DATA_ITEM)) {
                String component = item.substring(0, item.length() - PRODUCT_DATA_ITEM.length());
                if (products.stream().noneMatch(product -> product.component().equals(component))) {
                    rows.addAll(comparing.rows(component, Optional.empty()));
                }
            }
        }
        return new Comparison(submittal.id(), rows);
    }

    private List<Row> rows(String component, Optional<ProductData> product) {
        List<Row> rows = new ArrayList<>();
        for (WallType wall : assembly.job().walls()) {
            wall.choice(component).ifPresent(choice -> rows.addAll(nearest(wall, choice, product)));
        }
        return rows;
    }

    /** The rows of the accepted option that the product comes nearest to. */
    private List<Row> nearest(WallType wall, Choice choice, Optional<ProductData> product) {
        List<List<Row>> alternatives = choice.accept().stream().map(option -> rows(wall, choice, option, product)).toList();
        return alternatives.stream().min(Comparator.comparingLong(Comparing::unmet)).orElse(List.of());
    }

    private static long unmet(List<Row> rows) {
        return rows.stream().filter(row -> row.result() != Result.MEETS).count();
    }

    private List<Row> rows(WallType wall, Choice choice, String option, Optional<ProductData> product) {
        List<Row> rows = new ArrayList<>();
        for (Requirement requirement : assembly.requirements(wall.id(), choice.component(), option)) {
            Optional<SheetValue> submitted = product.flatMap(data -> data.value(requirement.property().name()));
            if (submitted.isPresent() || OF_PRODUCT.contains(requirement.property().evidence())) {
                Verdict verdict = submitted.map(value -> Verdict.of(requirement, value, edition(requirement))).orElse(
                    new Verdict(Result.NOT_SHOWN, Optional.empty(), product.isPresent() ? "The sheet does not show it."
                        : "No product was submitted for it."));
                rows.add(new Row(product.map(ProductData::id).orElse(""), paragraphOf.apply(requirement), requirement, submitted,
                    verdict.result(), verdict.shortBy(), note(verdict.note(), choice, option)));
            }
        }
        return rows;
    }

    private String note(String note, Choice choice, String option) {
        if (choice.accept().size() < 2) {
            return note;
        }
        String title = assembly.pack().component(choice.component()).flatMap((Component component) -> component.option(option))
            .map(Option::title).orElse(option);
        return ("Compared with the accepted alternative \"" + title + "\". " + note).strip();
    }

    /** The edition of a requirement's method that the job's code lists; "" when that isn't known. */
    private String edition(Requirement requirement) {
        String name = assembly.job().fact("code", "name").map(value -> value.text()).orElse("");
        String year = assembly.job().fact("code", "edition").map(value -> value.text()).orElse("");
        return assembly.pack().standard(requirement.property().method().standard()).flatMap(standard -> standard.edition(name, year))
            .orElse("");
    }
}

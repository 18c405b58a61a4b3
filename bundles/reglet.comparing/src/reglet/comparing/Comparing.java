package reglet.comparing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import reglet.model.Alternate;
import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Option;
import reglet.model.ProductData;
import reglet.model.RegisterEntry;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.WallType;

/** Compares a submittal with what a job requires. */
public final class Comparing {
    /** Evidence that a product brings with it on paper; the rest is made, drawn, calculated or looked at on site. */
    private static final Set<Evidence> ON_PAPER = EnumSet.of(Evidence.PRODUCT_DATA, Evidence.TEST_REPORT, Evidence.CERTIFICATE,
        Evidence.EVALUATION_REPORT, Evidence.COMPATIBILITY);
    /** The nearest first: met whole, fewest contradictions, fewest open questions, most that is met. */
    static final Comparator<List<Row>> NEAREST = Comparator.<List<Row>, Boolean>comparing(List::isEmpty)
        .thenComparing(rows -> count(rows, Result.MEETS) < rows.size()).thenComparing(rows -> count(rows, Result.FALLS_SHORT))
        .thenComparing(rows -> rows.size() - count(rows, Result.MEETS)).thenComparing(rows -> -count(rows, Result.MEETS));

    private final Assembly assembly;
    private final Function<Requirement, String> paragraphOf;

    private Comparing(Assembly assembly, Function<Requirement, String> paragraphOf) {
        this.assembly = assembly;
        this.paragraphOf = paragraphOf;
    }

    /**
     * One row for each requirement of each product submitted, on each wall type that uses the product's component; of several
     * products for one component each is compared on the wall types that it comes nearest to. A requirement
     * whose evidence isn't paper that comes with a product has a row only when the sheet states it all the same. What the
     * submittal's register items ask of a component that no product was submitted for is "not shown".
     *
     * <p>Where several options are accepted, a product complies when it meets one of them whole; the rows are those of the option
     * that it comes nearest to, and name it.
     *
     * @param paragraphOf the number of the paragraph that prints a requirement; "" when none does
     */
    public static Comparison compare(Assembly assembly, Submittal submittal, Function<Requirement, String> paragraphOf) {
        Comparing comparing = new Comparing(assembly, paragraphOf);
        List<Row> rows = new ArrayList<>();
        List<ProductData> products = submittal.products().stream().distinct()
            .flatMap(id -> assembly.job().products().stream().filter(product -> product.id().equals(id))).toList();
        products.forEach(product -> rows.addAll(comparing.ofProduct(product, products)));
        comparing.asked(submittal).forEach((component, evidence) -> {
            if (products.stream().noneMatch(product -> product.component().equals(component))) {
                rows.addAll(comparing.withoutProduct(component, evidence));
            }
        });
        return new Comparison(submittal.id(), rows, SubmittedAlternates.remarks(assembly, submittal, products));
    }

    /** The rows of a product on every wall that uses its component, as if it were the only one. */
    static List<Row> everywhere(Assembly assembly, ProductData product, Function<Requirement, String> paragraphOf) {
        Comparing comparing = new Comparing(assembly, paragraphOf);
        return assembly.job().walls().stream().flatMap(wall -> comparing.onWall(wall, product).stream()).toList();
    }

    /** The rows of a product on one wall, those of the option that it comes nearest to. */
    static List<Row> on(Assembly assembly, String wall, ProductData product) {
        return assembly.job().wall(wall).map(found -> new Comparing(assembly, requirement -> "").onWall(found, product)).orElse(List.of());
    }

    /** The rows of a product on the walls that it is meant for: those where no other product of the submittal comes nearer; else all. */
    private List<Row> ofProduct(ProductData product, List<ProductData> products) {
        List<ProductData> rivals = products.stream()
            .filter(other -> other.component().equals(product.component()) && !other.id().equals(product.id())).toList();
        List<Row> all = new ArrayList<>();
        List<Row> meant = new ArrayList<>();
        for (WallType wall : assembly.job().walls()) {
            List<Row> own = onWall(wall, product);
            all.addAll(own);
            if (rivals.stream().noneMatch(rival -> NEAREST.compare(onWall(wall, rival), own) < 0)) {
                meant.addAll(own);
            }
        }
        return meant.isEmpty() ? all : meant;
    }

    private List<Row> onWall(WallType wall, ProductData product) {
        return wall.choice(product.component()).map(choice -> choice.accept().stream()
            .map(option -> rows(wall, choice, option, product)).min(NEAREST).orElse(List.of())).orElse(List.of());
    }

    private List<Row> rows(WallType wall, Choice choice, String option, ProductData product) {
        List<Row> rows = new ArrayList<>();
        for (Requirement requirement : assembly.requirements(wall.id(), choice.component(), option)) {
            if (Named.concerns(requirement)) {
                Named.of(requirement, choice.specified(), product)
                    .ifPresent(verdict -> rows.add(row(product.id(), requirement, Optional.empty(), verdict, choice)));
                continue;
            }
            Optional<SheetValue> submitted = product.value(requirement.property().name());
            if (submitted.isPresent() || ON_PAPER.contains(requirement.property().evidence()) && !requirement.asksNothing()) {
                Verdict verdict = submitted.map(value -> Verdict.of(requirement, value, edition(requirement)))
                    .orElseGet(() -> new Verdict(Result.NOT_SHOWN, notShown(requirement)));
                rows.add(row(product.id(), requirement, submitted, verdict, choice));
            }
        }
        return rows;
    }

    private static String notShown(Requirement requirement) {
        Evidence evidence = requirement.property().evidence();
        return evidence == Evidence.PRODUCT_DATA ? "The sheet does not show it."
            : "The sheet does not show it; evidence asked for: " + evidence.text() + ".";
    }

    /** Evidence on paper that the submittal's register items ask for, by component, in the order of the items. */
    private Map<String, Set<Evidence>> asked(Submittal submittal) {
        Map<String, Set<Evidence>> asked = new LinkedHashMap<>();
        for (String written : submittal.items()) {
            String item = SubmittedAlternates.item(assembly, written);
            Optional<RegisterEntry> entry = assembly.entries().stream().filter(found -> found.id().equals(item)).findFirst();
            int dot = item.lastIndexOf('.');
            String component = entry.map(RegisterEntry::component).orElse(item.substring(0, Math.max(0, dot)));
            String sends = entry.map(RegisterEntry::sends).orElse(item.substring(dot + 1).replace('-', ' '));
            ON_PAPER.stream().filter(evidence -> evidence.text().equals(sends))
                .forEach(evidence -> asked.computeIfAbsent(component, id -> EnumSet.noneOf(Evidence.class)).add(evidence));
        }
        return asked;
    }

    private List<Row> withoutProduct(String component, Set<Evidence> evidence) {
        List<Row> rows = new ArrayList<>();
        Verdict verdict = new Verdict(Result.NOT_SHOWN, "No product was submitted for it.");
        for (WallType wall : assembly.job().walls()) {
            wall.choice(component).ifPresent(choice -> choice.accept().stream()
                .map(option -> assembly.requirements(wall.id(), component, option).stream()
                    .filter(requirement -> evidence.contains(requirement.property().evidence()) && !requirement.asksNothing())
                    .map(requirement -> row("", requirement, Optional.empty(), verdict, choice)).toList())
                .filter(found -> !found.isEmpty()).findFirst().ifPresent(rows::addAll));
        }
        return rows;
    }

    private Row row(String product, Requirement requirement, Optional<SheetValue> submitted, Verdict verdict, Choice choice) {
        List<Integer> alternates = assembly.broughtBy(requirement);
        String note = ((alternates.isEmpty() ? "" : "As " + Alternate.names(alternates) + " requires. ")
            + (choice.accept().size() < 2 ? "" : "Compared with the accepted option \"" + title(requirement) + "\". ")
            + verdict.note()).strip();
        return new Row(product, paragraphOf.apply(requirement), requirement, submitted, verdict.result(), verdict.shortBy(), note);
    }

    private String title(Requirement requirement) {
        return assembly.pack().component(requirement.component()).flatMap(component -> component.option(requirement.option()))
            .map(Option::title).orElse(requirement.option());
    }

    /** The edition of a requirement's method that the job's code lists; "" when that isn't known. */
    private String edition(Requirement requirement) {
        String name = assembly.job().fact("code", "name").map(value -> value.text()).orElse("");
        String year = assembly.job().fact("code", "edition").map(value -> value.text()).orElse("");
        return assembly.pack().standard(requirement.property().method().standard()).flatMap(standard -> standard.edition(name, year))
            .orElse("");
    }

    private static int count(List<Row> rows, Result result) {
        return (int) rows.stream().filter(row -> row.result() == result).count();
    }
}

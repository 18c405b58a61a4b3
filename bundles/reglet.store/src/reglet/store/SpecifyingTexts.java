package reglet.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Scope;
import reglet.model.SectionPlan;

/**
 * The texts that say how a product is specified. A pack writes each once for all components, with "it" for the component; every
 * component that has a product paragraph gets them as clauses of its own behind that paragraph.
 */
final class SpecifyingTexts {
    static final String FILE = "specifying.yaml";
    private static final String MARK = ".specified-";
    private static final int PRODUCTS = 2;

    private SpecifyingTexts() {
    }

    /** Whether a component has a paragraph that says how it is specified. */
    static boolean has(Pack pack, Component component) {
        return pack.clauses().stream().anyMatch(clause -> clause.id().startsWith(component.id() + MARK));
    }

    /** The clauses that one text of the file makes. */
    static List<Clause> clauses(Cursor item, List<Component> components, List<SectionPlan> plans, List<Clause> clauses) {
        Fields fields = item.fields("id", "when", "text", "note", "basis");
        String id = fields.text("id");
        String when = fields.text("when");
        String text = fields.text("text");
        List<Clause> made = new ArrayList<>();
        for (Component component : components) {
            product(component, plans, clauses).ifPresent(beside -> made.add(new Clause(component.id() + MARK + id, component.section(),
                beside.article(), Scope.WALL, "", beside.order(), when.replaceAll("\\bit\\.", component.id() + "."),
                text.replace("${it}", component.title()).replace("${it.", "${" + component.id() + "."), fields.text("note", ""),
                Knowledge.basis(fields), fields.at())));
        }
        return made;
    }

    /** The last of the clauses that say what product to provide: those of Part 2 that print the option, else any of its values. */
    private static Optional<Clause> product(Component component, List<SectionPlan> plans, List<Clause> clauses) {
        List<String> articles = plans.stream().filter(plan -> plan.number().equals(component.section()))
            .flatMap(plan -> plan.articles().stream()).filter(article -> article.part() == PRODUCTS).map(SectionPlan.Article::id).toList();
        List<Clause> own = clauses.stream().filter(clause -> clause.section().equals(component.section()) && clause.each() == Scope.WALL
            && articles.contains(clause.article())).toList();
        List<Clause> printing = own.stream().filter(clause -> clause.body().contains("${" + component.id() + "}")).toList();
        Comparator<Clause> order = Comparator.<Clause>comparingInt(clause -> articles.indexOf(clause.article()))
            .thenComparingInt(Clause::order);
        return printing.isEmpty()
            ? own.stream().filter(clause -> clause.id().equals(component.id() + ".material")).findFirst()
            : printing.stream().filter(clause -> clause.article().equals(printing.stream().min(order).orElseThrow().article())).max(order);
    }
}

package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

import reglet.drafting.LastDraft.Entry;
import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Clause;
import reglet.model.Nearest;
import reglet.model.Problem;
import reglet.model.SectionPlan;

/**
 * The paragraphs of a section's clauses. Those of a clause that reads nothing of what has changed since the section was last drafted
 * are taken over from then, so that a choice drafts anew what speaks of it and not the whole section.
 */
final class ClauseDrafts {
    private final Assembly assembly;
    private final SectionPlan plan;
    private final List<String> articles;
    private final Slots slots;
    private final List<Problem> problems;

    /** @param problems takes what is wrong with clauses */
    ClauseDrafts(Assembly assembly, SectionPlan plan, Slots slots, List<Problem> problems) {
        this.assembly = assembly;
        this.plan = plan;
        this.articles = plan.articles().stream().map(SectionPlan.Article::id).toList();
        this.slots = slots;
        this.problems = problems;
    }

    /**
     * Drafts all clauses in their order.
     *
     * @param version what of the job is drafted: "" for the job itself, else a name of its own for each alternate looked at
     * @param add     takes an article's id with paragraphs that belong there
     */
    void all(String version, BiConsumer<String, List<Draft>> add) {
        Map<String, List<ClauseUse>> uses = new LinkedHashMap<>();
        assembly.clauses().stream().filter(use -> use.clause().section().equals(plan.number()))
            .forEach(use -> uses.computeIfAbsent(use.clause().id(), id -> new ArrayList<>()).add(use));
        String name = plan.number() + version;
        Map<String, Entry> standing = LastDraft.standing(name, assembly);
        Map<String, Entry> drafted = new LinkedHashMap<>();
        uses.values().forEach(same -> {
            Clause clause = same.get(0).clause();
            if (hasArticle(clause)) {
                Optional<Entry> entry = Optional.ofNullable(standing.get(clause.id())).filter(kept -> kept.uses().equals(same))
                    .or(() -> draft(clause, same));
                entry.ifPresent(made -> {
                    drafted.put(clause.id(), made);
                    add.accept(clause.article(), made.paragraphs());
                });
            }
        });
        LastDraft.keep(name, new LastDraft(assembly, drafted));
    }

    private boolean hasArticle(Clause clause) {
        if (articles.contains(clause.article())) {
            return true;
        }
        problems.add(new Problem(clause.at(), name(clause) + " stands in article '" + clause.article() + "', which section "
            + plan.number() + " doesn't have", Nearest.hint(clause.article(), articles)));
        return false;
    }

    private static String name(Clause clause) {
        return "clause '" + clause.id() + "'";
    }

    /** Empty where the clause can't be printed, which is then among the problems. */
    private Optional<Entry> draft(Clause clause, List<ClauseUse> uses) {
        try {
            return Body.check(assembly.pack(), plan.number(), clause.each(), clause.subject(), name(clause), clause.body(), clause.at(),
                problems).map(body -> Entry.of(assembly, clause, body, uses, paragraphs(clause, body, uses)));
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(clause.at(), name(clause) + ": " + e.getMessage(), ""));
            return Optional.empty();
        }
    }

    private List<Draft> paragraphs(Clause clause, Body body, List<ClauseUse> uses) {
        List<Merge.Use> filled = new ArrayList<>();
        uses.stream().collect(Collectors.groupingBy(ClauseUse::wall, LinkedHashMap::new, Collectors.toList()))
            .forEach((wall, same) -> filled.addAll(assembly.on(wall)
                .map(on -> Filled.of(on).get(clause.id(), unknown -> filled(body, same))).orElseGet(() -> filled(body, same))));
        return new Merge(assembly, slots, clause).paragraphs(filled);
    }

    /** The texts of a clause on a wall type, or outside of all. */
    private List<Merge.Use> filled(Body body, List<ClauseUse> uses) {
        List<Merge.Use> filled = new ArrayList<>();
        for (ClauseUse use : uses) {
            List<Setting> settings = slots.settings(new Setting(use.wall(), use.meeting(), use.options()), body.slots());
            // Outside a wall all settings make one text; on a wall each makes its own, to be merged.
            List<List<Setting>> each = use.wall().isEmpty() ? List.of(settings) : settings.stream().map(List::of).toList();
            each.forEach(some -> filled.add(Merge.Use.of(some.get(0), body.one(slots, some))));
        }
        return filled;
    }
}

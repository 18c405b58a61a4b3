package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Alternate.State;
import reglet.model.Nearest;
import reglet.model.Assembly;
import reglet.model.Clause;
import reglet.model.Layout;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.RegisterEntry;
import reglet.model.RegisterItem;
import reglet.model.Scope;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Made;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

/** Drafts a section from an assembly. */
public final class Drafter {
    private final Assembly assembly;
    private final SectionPlan plan;
    private final Slots slots;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, List<Draft>> articles = new LinkedHashMap<>();

    /** @param version as {@link ClauseDrafts#all} takes it */
    private Drafter(Assembly assembly, SectionPlan plan, String version) {
        this.assembly = assembly;
        this.plan = plan;
        this.slots = new Slots(assembly, plan.number());
        plan.articles().forEach(article -> articles.put(article.id(), List.of()));
        new ClauseDrafts(assembly, plan, slots, problems).all(version, this::add);
        submittals();
    }

    /**
     * Drafts a section.
     *
     * @param section number of a section that the pack plans
     * @param issue   name of the issue; "" for a draft
     * @throws UnusableInput with every clause and every text of a person that can't be printed
     */
    public static SectionDocument draft(Assembly assembly, String section, String issue) throws UnusableInput {
        SectionPlan plan = plan(assembly, section);
        List<TextChange> asked = asked(assembly, section);
        Drafter drafter = new Drafter(assembly, plan, "");
        List<TextChange> lost = drafter.place(asked, List.of());
        if (!lost.isEmpty()) {
            // What is kept may cite standards too, so that all is placed anew.
            drafter = new Drafter(assembly, plan, "");
            drafter.place(asked, lost);
        }
        return drafter.document(issue);
    }

    /** The section as the library alone drafts it, without what a person changed in it. */
    static SectionDocument library(Assembly assembly, String section) throws UnusableInput {
        Drafter drafter = new Drafter(assembly, plan(assembly, section), "");
        drafter.place(List.of(), List.of());
        return drafter.document("");
    }

    private static SectionPlan plan(Assembly assembly, String section) throws UnusableInput {
        Optional<SectionPlan> plan = assembly.pack().plan(section);
        if (plan.isEmpty()) {
            List<String> numbers = assembly.pack().plans().stream().map(SectionPlan::number).toList();
            throw new UnusableInput(new Problem(assembly.job().at(), "the pack '" + assembly.pack().name() + "' plans no section "
                + section,
                Nearest.of(section, numbers).map(number -> "did you mean " + number + "?")
                .orElse("it plans " + String.join(", ", numbers))));
        }
        return assembly.job().layout().ordered(plan.get());
    }

    /** What a person asks of a section's paragraphs. */
    private static List<TextChange> asked(Assembly assembly, String section) {
        return assembly.job().changes().stream()
            .filter(change -> change.section().equals(section) && change.kind() != TextChange.Kind.LEAVE_OUT).toList();
    }

    /** What a person asks of a section and can't be done, as its paragraph isn't drafted. */
    static List<TextChange> lost(Assembly assembly, String section) {
        return assembly.pack().plan(section).map(assembly.job().layout()::ordered)
            .map(plan -> new Drafter(assembly, plan, "").place(asked(assembly, section), List.of())).orElse(List.of());
    }

    /**
     * Puts everything in its place.
     *
     * @param asked what a person asks of its paragraphs
     * @param lost  what has no place; its text is kept at an article's end
     * @return what has no place
     */
    private List<TextChange> place(List<TextChange> asked, List<TextChange> lost) {
        Alternates alternates = new Alternates(assembly, plan.number());
        for (int number : assembly.job().versions(State.OFFERED)) {
            Drafter taken = new Drafter(assembly.alternates().get(number), plan, " with " + number);
            problems.addAll(taken.problems);
            alternates.compare(number, articles, taken.articles);
        }
        assembly.without().forEach((numbers, other) -> {
            if (numbers.size() == 1) {
                Drafter base = new Drafter(other, plan, " without " + numbers.get(0));
                alternates.accepted(numbers.get(0), articles, base.articles);
            }
        });
        TextChanges changes = new TextChanges(assembly.pack(), slots, problems);
        asked.stream().filter(change -> change.alternate() > 0 && change.kind() == TextChange.Kind.MOVE).forEach(change ->
            problems.add(new Problem(change.at(), "paragraph '" + change.paragraph() + "' is an alternate's, which stands behind the one "
                + "that it would replace", "move that one, or take this block away")));
        List<TextChange> left = new ArrayList<>(changes.apply(articles, asked.stream().filter(change -> change.alternate() == 0).toList()));
        left.addAll(alternates.change(asked.stream().filter(change -> change.alternate() > 0 && change.kind() != TextChange.Kind.MOVE)
            .toList(), problems));
        lost.forEach(change -> changes.keep(articles, home(change.paragraph()), change));
        alternates.insert(articles);
        List<String> drafted = paragraphs().stream().map(Draft::id).toList();
        for (Made made : List.of(Made.ALTERNATES, Made.ALLOWANCES, Made.UNIT_PRICES)) {
            make(made, alternates.listed(made, drafted));
        }
        // Only now is it known what the paragraphs cite and speak of.
        List<Draft> drafts = paragraphs();
        make(Made.RELATED_SECTIONS, Related.of(assembly, plan.number(), drafts));
        if (assembly.job().layout().references() != Layout.References.OFF) {
            make(Made.REFERENCES, References.of(assembly, drafts));
        }
        return changes.apply(articles, left);
    }

    private SectionDocument document(String issue) throws UnusableInput {
        if (!problems.isEmpty()) {
            throw new UnusableInput(problems);
        }
        List<SectionDocument.Part> parts = Numbering.parts(plan, articles, assembly.job().layout());
        List<String> cautions = new ArrayList<>(assembly.cautions().stream().map(Pack.Caution::text).toList());
        cautions.addAll(Unread.of(assembly, parts));
        return new SectionDocument(plan.number(), plan.title(), assembly.job().title(), assembly.job().note(), issue, cautions, parts);
    }

    private List<Draft> paragraphs() {
        return articles.values().stream().flatMap(List::stream).flatMap(draft -> draft.all().stream()).toList();
    }

    /** The article that comes nearest to where a paragraph stood: that of its clause or entry, or of what else is said of its component. */
    private String home(String paragraph) {
        String id = paragraph.replaceFirst("[@~/+].*", "");
        List<Clause> clauses = assembly.pack().clauses().stream().filter(clause -> clause.section().equals(plan.number())).toList();
        return clauses.stream().filter(clause -> clause.id().equals(id)).findFirst()
            .or(() -> clauses.stream().filter(clause -> OwnText.head(clause.id()).equals(OwnText.head(id))).findFirst())
            .map(Clause::article).filter(articles::containsKey)
            .or(() -> assembly.pack().entries().stream().filter(entry -> entry.section().equals(plan.number()) && entry.id().equals(id))
                .findFirst().flatMap(entry -> article(entry.kind())))
            .or(() -> plan.articles().stream().map(SectionPlan.Article::id).filter(OwnText.head(id)::equals).findFirst())
            .orElseGet(() -> plan.articles().get(plan.articles().size() - 1).id());
    }

    private void submittals() {
        for (Evidences.Asked asked : Evidences.of(assembly, plan.number())) {
            Optional<String> article = article(asked.kind());
            if (article.isPresent()) {
                text(asked).ifPresent(text -> add(article.get(), List.of(new Draft(asked.id(), false, text, List.of(), List.of()))));
            }
        }
    }

    /** The article for a kind of submittal; a section without one of its own lists it with the other submittals. */
    private Optional<String> article(RegisterItem.Kind kind) {
        Made made = switch (kind) {
            case ACTION -> Made.ACTION_SUBMITTALS;
            case INFORMATIONAL -> Made.INFORMATIONAL_SUBMITTALS;
            case CLOSEOUT -> Made.CLOSEOUT_SUBMITTALS;
        };
        List<Made> any = List.of(Made.ACTION_SUBMITTALS, Made.INFORMATIONAL_SUBMITTALS, Made.CLOSEOUT_SUBMITTALS);
        return plan.articles().stream().filter(article -> article.made() == made).findFirst()
            .or(() -> plan.articles().stream().filter(article -> any.contains(article.made())).findFirst())
            .map(SectionPlan.Article::id);
    }

    private Optional<List<Span>> text(Evidences.Asked asked) {
        String labels = Phrases.list(asked.labels(), "and");
        if (asked.entry() == null) {
            String sends = Character.toUpperCase(asked.sends().charAt(0)) + asked.sends().substring(1);
            return Optional.of(List.of(new Plain(asked.item() + ": " + sends + " showing " + labels + ".")));
        }
        RegisterEntry entry = asked.entry();
        Optional<Body> body = Body.check(assembly.pack(), plan.number(), Scope.JOB, "", "register entry '" + entry.id() + "'", entry.text(),
            entry.at(), problems);
        if (body.isEmpty()) {
            return Optional.empty();
        }
        try {
            List<Span> text = new ArrayList<>(body.get().one(slots, slots.settings(new Setting("", "", Map.of()), body.get().slots()))
                .text());
            if (!labels.isEmpty()) {
                text.add(new Plain(" Show " + labels + "."));
            }
            return Optional.of(text);
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(entry.at(), "register entry '" + entry.id() + "': " + e.getMessage(), ""));
            return Optional.empty();
        }
    }

    private void make(Made made, List<Draft> drafts) {
        plan.articles().stream().filter(article -> article.made() == made).findFirst().ifPresent(article -> add(article.id(), drafts));
    }

    private void add(String article, List<Draft> drafts) {
        List<Draft> all = new ArrayList<>(articles.get(article));
        all.addAll(drafts);
        articles.put(article, all);
    }
}
